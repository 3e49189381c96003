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

} // namespace reports
