#include "pdf_reading.h"
#include "random_document.h"
#include "reports/braille_pages.h"
#include "reports/writers.h"
#include <gmock/gmock.h>

using namespace reports;

namespace {

class RandomDocument : public testing::TestWithParam<unsigned> {};

void expectLimits(const std::string &brf, const BrailleLayout &layout) {
    std::size_t column = 0;
    int line = 0;
    for (std::size_t i = 0; i < brf.size(); ++i) {
        const char c = brf[i];
        if (c == '\r') {
            ASSERT_EQ(brf.at(i + 1), '\n');
            ASSERT_TRUE(i == 0 || brf[i - 1] != ' ') << "blanks at the end of a line";
        } else if (c == '\n') {
            ASSERT_LE(column, std::size_t(layout.cells));
            column = 0;
            ++line;
        } else if (c == '\f') {
            ASSERT_EQ(line, layout.lines);
            line = 0;
        } else {
            ASSERT_TRUE(c >= 0x20 && c <= 0x5f) << int(c);
            ++column;
        }
    }
    ASSERT_TRUE(brf.ends_with('\f'));
}

/// All cells in order, without blanks and page numbers.
Cells cellsOf(const std::vector<BraillePage> &pages) {
    Cells all;
    for (const BraillePage &page : pages)
        for (std::size_t i = 0; i + 1 < page.size(); ++i)
            for (const char32_t cell : page[i])
                if (cell != blankCell)
                    all += cell;
    return all;
}

/// What two long texts say where they part, or nothing.
std::string difference(const std::string &one, const std::string &other) {
    const auto [left, right] = std::mismatch(one.begin(), one.end(), other.begin(), other.end());
    if (left == one.end() && right == other.end())
        return {};
    const auto place = std::size_t(left - one.begin());
    const std::size_t from = place < 40 ? 0 : place - 40;
    return one.substr(from, 80) + " / " + other.substr(from, 80);
}

std::string withoutBlanks(std::string text) {
    std::erase_if(text, [](char c) { return c == ' ' || c == '\n'; });
    return text;
}

} // namespace

TEST_P(RandomDocument, keepsTheLimitsOfBraillePagesAndLosesNothing) {
    const Document document = randomDocument(GetParam(), LongWords::Some);
    for (const int grade : {1, 2}) {
        const Cells wide =
            cellsOf(braillePages(document, {.grade = grade, .cells = 100, .lines = 100}).value());
        EXPECT_FALSE(wide.empty());
        for (const auto &[cells, lines] : {std::pair{40, 25}, {28, 20}, {12, 5}}) {
            const BrailleLayout layout{.grade = grade, .cells = cells, .lines = lines};
            expectLimits(writeBrf(document, layout).value(), layout);
            EXPECT_EQ(cellsOf(braillePages(document, layout).value()), wide);
        }
    }
}

TEST_P(RandomDocument, saysTheSameWordsInLargePrintAsInPlainText) {
    const Document document = randomDocument(GetParam(), LongWords::None);
    EXPECT_EQ(difference(pdf_reading::words(writePdf(document, {}).value()),
                         pdf_reading::collapsed(writeText(document).value())),
              "");
}

TEST_P(RandomDocument, losesNothingOfALongWord) {
    const Document document = randomDocument(GetParam(), LongWords::Some);
    EXPECT_EQ(difference(withoutBlanks(pdf_reading::words(writePdf(document, {.bodyPoints = 40}).value())),
                         withoutBlanks(writeText(document).value())),
              "");
}

INSTANTIATE_TEST_SUITE_P(Seeds, RandomDocument, testing::Range(1u, 9u));
