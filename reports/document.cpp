#include "reports/writers.h"
#include <sstream>

namespace reports {

std::string joined(const Text &text) {
    std::string all;
    for (const Run &run : text)
        all += run.text;
    return all;
}

Document documentFromText(const std::string &text, const std::string &language) {
    Document document;
    document.language = language;
    std::string words;
    const auto close = [&] {
        if (!words.empty())
            document.blocks.emplace_back(Paragraph{plain(std::exchange(words, ""))});
    };
    std::istringstream lines(text);
    for (std::string line; std::getline(lines, line);) {
        if (line.find_first_not_of(" \t\r") == std::string::npos)
            close();
        else
            words += (words.empty() ? "" : " ") + line;
    }
    close();
    return document;
}

Text cautionWords(const CautionBlock &block) {
    Text words{Run{"Caution: ", "", true, ""}};
    words.insert(words.end(), block.text.begin(), block.text.end());
    return words;
}

std::string drawingName(const Figure &figure) {
    std::string names;
    for (const Figure::Box &box : figure.boxes)
        if (!box.label.empty())
            names += (names.empty() ? "" : ", ") + box.label;
    return names.empty() ? "Drawing. The words after it say the same."
                         : "Drawing with the parts " + names + ". The words after it say the same.";
}

Text pictureWords(const Figure &figure) {
    if (figure.words.empty())
        return {};
    return {Run{"Picture: ", "", true, ""}, Run{figure.words, "", false, ""}};
}

} // namespace reports
