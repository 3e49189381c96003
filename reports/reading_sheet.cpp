#include "reports/reading_sheet.h"
#include "model/sight.h"
#include "model/typed.h"
#include "reports/paper_fields.h"

namespace reports {

using namespace model;

namespace {

constexpr int rulerParts = 10;
constexpr double partLength = 10, rulerHeight = 6; // mm

Figure ruler() {
    Figure figure;
    figure.trueToScale = true;
    figure.width = rulerParts * partLength;
    figure.height = rulerHeight;
    for (int part = 0; part < rulerParts; ++part)
        figure.boxes.push_back(
            {.x = part * partLength, .width = partLength, .height = rulerHeight, .label = ""});
    figure.words = "Ten boxes in a row, together 100 millimetres long.";
    return figure;
}

struct Line {
    LogMar size;
    Millimetres height;
    Points points;
    std::string sentence;
};

/// None if a height or a size cannot be.
Result<std::vector<Line>> linesOf(ReadingVersion version, Centimetres distance) {
    std::vector<Line> lines;
    for (const std::string &sentence : readingSentences(version)) {
        const LogMar size = readingSize(static_cast<int>(lines.size()) + 1);
        const auto height = letterHeight(size, distance, 1);
        if (!height)
            return tl::unexpected(height.error());
        const auto points = pointSize(*height, paperXHeightRatio);
        if (!points)
            return tl::unexpected(points.error());
        lines.push_back({size, *height, *points, sentence});
    }
    return lines;
}

std::vector<Fields> lineFields(const std::vector<Line> &lines) {
    std::vector<Fields> list;
    for (const Line &line : lines) {
        Fields fields;
        fields.named["number"] = std::to_string(list.size() + 1);
        fields.named["logMar"] = typed::words(line.size.value, 1, typed::Zeros::Keep);
        fields.named["m"] = typed::words(mUnits(line.height), 2, typed::Zeros::Keep);
        fields.named["millimetres"] = typed::words(line.height.value, 2, typed::Zeros::Keep);
        fields.named["sentence"] = line.sentence;
        list.push_back(std::move(fields));
    }
    return list;
}

/// Gives each sentence its own size. The template says where it stands, not how large it is.
void setSizes(Document &document, const std::vector<Line> &lines) {
    for (Block &block : document.blocks)
        if (auto *paragraph = std::get_if<Paragraph>(&block))
            for (const Line &line : lines)
                if (joined(paragraph->text) == line.sentence + ".")
                    paragraph->points = line.points.value;
}

} // namespace

Result<Document> readingSheet(ReadingVersion version, Centimetres distance, Date on,
                              const std::string &madeBy) {
    if (!(distance.value >= 20 && distance.value <= 50))
        return fail(ErrorCode::OutOfRange,
                    "A reading sheet is made for a distance of 20 to 50 cm. Try 40 cm.");
    const auto lines = linesOf(version, distance);
    if (!lines)
        return tl::unexpected(lines.error());
    Fields fields;
    fields.named["version"] = nameOf(version);
    fields.named["date"] = dateInWords(on);
    fields.named["distance"] = typed::words(distance.value, 1) + " cm";
    addText(fields, "maker", madeBy);
    addList(fields, "lines", lineFields(*lines));
    auto document = fillTemplate("reading_sheet", fields, {{"ruler", ruler()}});
    if (!document)
        return document;
    document->date = isoDate(on);
    document->author = madeBy;
    setSizes(*document, *lines);
    return document;
}

Result<std::string> readingSheetPdf(ReadingVersion version, Centimetres distance, Date on,
                                    const std::string &madeBy) {
    return readingSheet(version, distance, on, madeBy).and_then([](const Document &document) {
        PrintLayout layout;
        layout.marginMm = 15; // the longest word of the first line fits
        return writePdf(document, layout);
    });
}

std::string readingSheetName(ReadingVersion version, Centimetres distance) {
    return "reading-sheet-" + nameOf(version) + "-" + typed::words(distance.value, 0) + "cm.pdf";
}

} // namespace reports
