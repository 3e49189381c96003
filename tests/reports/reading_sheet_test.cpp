#include "model/reading_sentences.h"
#include "model/sight.h"
#include "reports/reading_sheet.h"
#include "tests/reports/pdf_reading.h"
#include <algorithm>
#include <gmock/gmock.h>
#include <set>
#include <sstream>

namespace reports {

namespace {

using model::ReadingVersion;
using testing::HasSubstr;

constexpr ReadingVersion versions[] = {ReadingVersion::A, ReadingVersion::B, ReadingVersion::C};

std::vector<std::string> words(const std::string &sentence) {
    std::istringstream stream(sentence);
    return {std::istream_iterator<std::string>(stream), {}};
}

} // namespace

TEST(ReadingSentences, keepTheRuleOfEqualLengthAndBuild) {
    std::set<std::string> all;
    for (const ReadingVersion version : versions) {
        std::set<std::string> who, what, where;
        const auto sentences = model::readingSentences(version);
        ASSERT_EQ(sentences.size(), std::size_t(model::readingLines));
        for (const std::string &sentence : sentences) {
            EXPECT_EQ(sentence.size(), std::size_t(model::readingCharacters)) << sentence;
            const auto parts = words(sentence);
            ASSERT_EQ(parts.size(), 10u) << sentence;
            for (const std::string &word : parts)
                EXPECT_LE(word.size(), 11u) << word;
            EXPECT_EQ(std::count_if(sentence.begin(), sentence.end(), isupper), 1) << sentence;
            EXPECT_EQ(sentence.find_first_not_of("abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ "),
                      std::string::npos);
            EXPECT_TRUE(all.insert(sentence).second) << sentence;
            EXPECT_TRUE(who.insert(parts[0] + parts[1]).second) << sentence;
            EXPECT_TRUE(what.insert(parts[2]).second || parts[2].size() < 5) << sentence;
            EXPECT_TRUE(where.insert(parts[6] + parts[7] + parts[8] + parts[9]).second) << sentence;
        }
    }
    EXPECT_EQ(all.size(), 36u);
}

TEST(ReadingSheet, hasEachSentenceInTheSizeThatItsHeadingSays) {
    const auto sheet = readingSheet(ReadingVersion::B, {40}, *model::parseDate("2026-11-25"));
    ASSERT_TRUE(sheet) << sheet.error().sentence;
    std::vector<double> points;
    for (const Block &block : sheet->blocks)
        if (const auto *paragraph = std::get_if<Paragraph>(&block); paragraph && paragraph->points)
            points.push_back(*paragraph->points);
    ASSERT_EQ(points.size(), 12u);
    // 1.3 logMAR at 40 cm: 11.61 mm (h = 2 d tan(angle / 2), Bach); each step 10^0.1, a face of 0.536 em.
    EXPECT_NEAR(points.front() * 25.4 / 72 * 0.536, 11.61, 0.006);
    EXPECT_NEAR(points.back() * 25.4 / 72 * 0.536, 0.92, 0.006); // 0.2 logMAR at 40 cm
    for (std::size_t i = 1; i < points.size(); ++i)
        EXPECT_NEAR(points[i - 1] / points[i], 1.2589, 0.003); // preferred numbers, 10^0.1
}

TEST(ReadingSheet, isRefusedWhereItCannotBePrinted) {
    for (const double distance : {0.0, 19.0, 51.0, 400.0}) {
        const auto sheet = readingSheet(ReadingVersion::A, {distance}, *model::parseDate("2026-11-25"));
        ASSERT_FALSE(sheet) << distance;
        EXPECT_THAT(sheet.error().sentence, HasSubstr("40 cm"));
    }
}

TEST(ReadingSheet, isAPdfThatNamesNoClient) {
    for (const ReadingVersion version : versions)
        for (const double distance : {20.0, 40.0, 50.0}) {
            const auto pdf = readingSheetPdf(version, {distance}, *model::parseDate("2026-11-25"));
            ASSERT_TRUE(pdf) << pdf.error().sentence;
            EXPECT_THAT(*pdf, testing::StartsWith("%PDF-1."));
        }
    EXPECT_EQ(readingSheetName(ReadingVersion::C, {40}), "reading-sheet-C-40cm.pdf");
}

} // namespace reports
