#include "braille_pairs.h"
#include "reports/braille_cells.h"
#include "reports/braille_pages.h"
#include "reports/writers.h"
#include <gmock/gmock.h>
#include <sstream>
#include <thread>

using namespace reports;
using model::ErrorCode;
using testing::Each;
using testing::ElementsAre;
using testing::HasSubstr;

namespace {

Document paragraph(const std::string &words) {
    return Document{.title = "Test", .blocks = {Paragraph{plain(words)}}};
}

std::vector<std::string> linesOf(const std::string &brf) {
    std::vector<std::string> lines;
    std::istringstream stream(brf);
    for (std::string line; std::getline(stream, line);) {
        if (line.starts_with('\f'))
            line.erase(0, 1);
        if (line.ends_with('\r'))
            line.pop_back();
        if (!line.empty())
            lines.push_back(line);
    }
    return lines;
}

/// The lines of a document without the page number and without empty lines.
std::vector<std::string> brf(const Document &document, int grade = 2) {
    std::vector<std::string> lines = linesOf(writeBrf(document, {.grade = grade}).value());
    lines.pop_back();
    return lines;
}

std::string ascii(const char *unicode) {
    std::string cells;
    for (const char *byte = unicode; *byte != 0; byte += 3) {
        const int dots = ((byte[1] & 0x03) << 6) | (byte[2] & 0x3f);
        cells += " A1B'K2L@CIF/MSP\"E3H9O6R^DJG>NTQ,*5<-U8V.%[$+X!&;:4\\0Z7(_?W]#Y)="[dots];
    }
    return cells;
}

class BraillePairs : public testing::TestWithParam<BraillePair> {};

TEST_P(BraillePairs, comeOutContracted) {
    EXPECT_THAT(brf(paragraph(GetParam().print), 2),
                ElementsAre("  " + std::string(GetParam().contractedAscii)))
        << GetParam().source;
    EXPECT_EQ(ascii(GetParam().contracted), GetParam().contractedAscii);
}

TEST_P(BraillePairs, comeOutUncontracted) {
    EXPECT_THAT(brf(paragraph(GetParam().print), 1), ElementsAre("  " + ascii(GetParam().uncontracted)))
        << GetParam().source;
}

TEST_P(BraillePairs, areLabels) {
    EXPECT_EQ(brailleLabel(GetParam().print, 2).value(), GetParam().contracted);
    EXPECT_EQ(brailleLabel(GetParam().print, 1).value(), GetParam().uncontracted);
}

INSTANTIATE_TEST_SUITE_P(All, BraillePairs, testing::ValuesIn(braillePairs),
                         [](const auto &pair) { return std::string(pair.param.id); });

} // namespace

// Each cell is proved through the characters of its dots: the code table of North American Braille ASCII,
// with the dot numbers of ISO 11548-1 (cell = U+2800 + 2^(dot-1)).
TEST(BrailleAscii, writesEachOfThe64CellsAsItsDotsSay) {
    struct Row {
        char ascii;
        const char *dots;
    };
    constexpr Row rows[] = {
        {' ', ""},     {'A', "1"},     {'1', "2"},     {'B', "12"},     {'\'', "3"},   {'K', "13"},
        {'2', "23"},   {'L', "123"},   {'@', "4"},     {'C', "14"},     {'I', "24"},   {'F', "124"},
        {'/', "34"},   {'M', "134"},   {'S', "234"},   {'P', "1234"},   {'"', "5"},    {'E', "15"},
        {'3', "25"},   {'H', "125"},   {'9', "35"},    {'O', "135"},    {'6', "235"},  {'R', "1235"},
        {'^', "45"},   {'D', "145"},   {'J', "245"},   {'G', "1245"},   {'>', "345"},  {'N', "1345"},
        {'T', "2345"}, {'Q', "12345"}, {',', "6"},     {'*', "16"},     {'5', "26"},   {'<', "126"},
        {'-', "36"},   {'U', "136"},   {'8', "236"},   {'V', "1236"},   {'.', "46"},   {'%', "146"},
        {'[', "246"},  {'$', "1246"},  {'+', "346"},   {'X', "1346"},   {'!', "2346"}, {'&', "12346"},
        {';', "56"},   {':', "156"},   {'4', "256"},   {'\\', "1256"},  {'0', "356"},  {'Z', "1356"},
        {'7', "2356"}, {'(', "12356"}, {'_', "456"},   {'?', "1456"},   {'W', "2456"}, {']', "12456"},
        {'#', "3456"}, {'Y', "13456"}, {')', "23456"}, {'=', "123456"},
    };
    EXPECT_EQ(std::size(rows), 64u);
    for (const Row &row : rows) {
        char32_t cell = 0x2800;
        for (const char *dot = row.dots; *dot != 0; ++dot)
            cell += 1u << (*dot - '1');
        EXPECT_EQ(asciiBraille({cell}), std::string(1, row.ascii)) << row.dots;
        EXPECT_EQ(cellsOfAscii(std::string(1, row.ascii)).value(), Cells(1, cell)) << row.dots;
    }
}

TEST(Braille, setsHeadingsInTheMiddleInCellFiveAndInCellSeven) {
    const Document document{.blocks = {Heading{1, plain("milk")}, Heading{2, plain("salt")},
                                       Heading{3, plain("soup")}, Paragraph{plain("sofa")}}};
    EXPECT_THAT(brf(document), ElementsAre(std::string(18, ' ') + "MILK", "    SALT", "      S\\P", "  S(A"));
}

TEST(Braille, leavesALineBeforeAHeadingAndAfterACentredOne) {
    const Document document{.blocks = {Heading{1, plain("milk")}, Paragraph{plain("x")},
                                       Heading{2, plain("salt")}, Steps{{plain("soup")}, false},
                                       Paragraph{plain("sofa")}}};
    const auto page = braillePages(document, {}).value().front();
    std::vector<std::string> lines;
    for (std::size_t i = 0; i < 9; ++i)
        lines.push_back(asciiBraille(page[i]));
    EXPECT_THAT(lines, ElementsAre(std::string(18, ' ') + "MILK", "", "  ;X", "", "    SALT", "S\\P", "",
                                   "  S(A", ""));
}

TEST(Braille, beginsParagraphsInCellThreeAndListsInCellOne) {
    const std::string words = "milk milk milk milk milk milk milk milk milk";
    EXPECT_THAT(brf(paragraph(words)), ElementsAre("  MILK MILK MILK MILK MILK MILK MILK", "MILK MILK"));
    const Document list{.blocks = {Steps{{plain(words), plain("salt")}, false}}};
    EXPECT_THAT(brf(list), ElementsAre("MILK MILK MILK MILK MILK MILK MILK MILK", "  MILK", "SALT"));
    const Document steps{.blocks = {Steps{{plain("milk"), plain("salt")}, true}}};
    EXPECT_THAT(brf(steps), ElementsAre("#A4 MILK", "#B4 SALT"));
}

TEST(Braille, writesARowAsOneItemAndKeepsItsNumbersApart) {
    const Document table{
        .blocks = {Table{"", {"Thing", "shelf", "count"}, {{plain("milk 3"), plain("3"), plain("2")}}}}};
    EXPECT_THAT(brf(table, 1), ElementsAre("MILK #C3 SHELF #C2 COUNT #B"));
}

TEST(Braille, neverJoinsTwoNumbersWithABlankBetween) {
    EXPECT_THAT(brf(paragraph("shelf 3 2 tins"), 1), ElementsAre("  SHELF #C #B TINS"));
    EXPECT_THAT(brf(paragraph("shelf 3 2 tins"), 2), ElementsAre("  %ELF #C #B T9S"));
}

TEST(Braille, writesADrawingAsItsWordsAndACautionWithItsName) {
    const Document document{
        .blocks = {Figure{10, 10, {{0, 0, 5, 5, "A", false}}, "salt"}, CautionBlock{plain("hot")}}};
    EXPECT_THAT(brf(document, 1), ElementsAre("  ,PICTURE3 SALT", "  ,CAUTION3 HOT"));
}

// UEB 2013, rule 5.3: dots 56 56 is the grade 1 word indicator.
TEST(Braille, writesAddressesUncontractedWithTheIndicator) {
    EXPECT_THAT(brf(paragraph("and and@child.org and"), 2), ElementsAre("  & ;;AND@ACHILD4ORG &"));
    EXPECT_THAT(brf(paragraph("and and@child.org and"), 1), ElementsAre("  AND AND@ACHILD4ORG AND"));
}

TEST(Braille, pairsTypewriterQuotes) {
    EXPECT_THAT(brf(paragraph("a \"milk\", b"), 1), ElementsAre("  A 8MILK01 B"));
}

TEST(Braille, putsThePageNumberAtTheEndOfTheLastLine) {
    const std::string text = writeBrf(paragraph("milk"), {}).value();
    std::string page = "  MILK\r\n";
    for (int i = 0; i < 23; ++i)
        page += "\r\n";
    EXPECT_EQ(text, page + std::string(38, ' ') + "#A\r\n\f");
}

TEST(Braille, keepsAHeadingWithTheTextAfterIt) {
    const Document document{.blocks = {Heading{1, plain("milk")},
                                       Steps{std::vector<Text>(20, plain("milk")), false},
                                       Heading{2, plain("salt")}, Paragraph{plain("soup")}}};
    const auto pages = braillePages(document, {}).value();
    ASSERT_EQ(pages.size(), 2u);
    EXPECT_EQ(asciiBraille(pages[1][0]), "    SALT");
    EXPECT_EQ(asciiBraille(pages[1][1]), "  S\\P");
}

TEST(Braille, neverSplitsAnItemOverPagesIfAPageHoldsIt) {
    const std::string twoLines = "milk milk milk milk milk milk milk milk milk";
    std::vector<Text> items(23, plain("milk"));
    items.push_back(plain(twoLines));
    const auto pages = braillePages(Document{.blocks = {Steps{items, false}}}, {}).value();
    ASSERT_EQ(pages.size(), 2u);
    EXPECT_TRUE(pages[0][23].empty());
    EXPECT_EQ(asciiBraille(pages[1][1]), "  MILK");
}

TEST(Braille, cutsOnlyAWordThatIsLongerThanALineAndLosesNothing) {
    const std::string word(10000, 'k');
    std::string cells;
    for (std::string line : linesOf(writeBrf(paragraph(word), {.grade = 1}).value())) {
        EXPECT_LE(line.size(), 40u);
        line.erase(0, line.find_first_not_of(' '));
        if (!line.starts_with('#'))
            cells += line;
    }
    EXPECT_EQ(cells, std::string(10000, 'K'));
}

TEST(Braille, namesTheCharactersThatItCannotWrite) {
    for (const int grade : {1, 2}) {
        const auto answer = writeBrf(paragraph("Żak likes 😀 and milk"), {.grade = grade});
        ASSERT_FALSE(answer);
        EXPECT_EQ(answer.error().code, ErrorCode::NotUnderstood);
        EXPECT_THAT(answer.error().sentence, HasSubstr("Ż (U+017B), 😀 (U+1F600)"));
    }
}

TEST(Braille, writesTheAccentsOfTheTable) {
    // UEB 2013, rule 4.2: acute 45 34, grave 45 16, diaeresis 45 25.
    EXPECT_THAT(brf(paragraph("café crème"), 1), ElementsAre("  CAF^/E CR^*EME"));
    EXPECT_THAT(brf(paragraph("Zoë"), 1), ElementsAre("  ,ZO^3E"));
}

TEST(Braille, refusesALayoutThatCannotBe) {
    for (const BrailleLayout &layout :
         {BrailleLayout{.cells = 3}, BrailleLayout{.cells = 101}, BrailleLayout{.lines = 4},
          BrailleLayout{.lines = 101}, BrailleLayout{.grade = 3}}) {
        const auto answer = writeBrf(paragraph("milk"), layout);
        ASSERT_FALSE(answer);
        EXPECT_EQ(answer.error().code, ErrorCode::OutOfRange);
    }
}

TEST(Braille, refusesADocumentWithoutWords) {
    EXPECT_EQ(writeBrf(Document{}, {}).error().code, ErrorCode::Missing);
    EXPECT_EQ(brailleLabel("  ", 2).error().code, ErrorCode::Missing);
}

TEST(Braille, refusesALabelThatItCannotWrite) {
    EXPECT_EQ(brailleLabel("☎", 2).error().code, ErrorCode::NotUnderstood);
    EXPECT_EQ(brailleLabel("milk", 0).error().code, ErrorCode::OutOfRange);
}

TEST(Braille, isReadBack) {
    const std::string words = "Shelf 3: milk, coffee and 500 g sugar. Write to kitchen@example.org now.";
    EXPECT_EQ(readBrfBack(writeBrf(paragraph(words), {.grade = 2}).value(), 2).value(), words);
    EXPECT_EQ(readBrfBack(writeBrf(paragraph(words), {.grade = 1}).value(), 1).value(), words);
    EXPECT_EQ(readBrfBack("MILK\x01", 2).error().code, ErrorCode::NotUnderstood);
}

TEST(Braille, isTheSameInUnicodeAndInPef) {
    const Document document{
        .title = "Milk & salt", .date = "2026-11-25", .blocks = {Paragraph{plain("milk")}}};
    EXPECT_THAT(writeUnicodeBraille(document, {}).value(), testing::StartsWith("⠀⠀⠍⠊⠇⠅\n"));
    const std::string pef = writePef(document, {}).value();
    // PEF 2008-1: root, namespace, format, volume attributes; a row holds only U+2800 to U+28FF.
    EXPECT_THAT(pef, HasSubstr("xmlns=\"http://www.daisy.org/ns/2008/pef\""));
    EXPECT_THAT(pef, HasSubstr("version=\"2008-1\""));
    EXPECT_THAT(pef, HasSubstr("<dc:format>application/x-pef+xml</dc:format>"));
    EXPECT_THAT(pef, HasSubstr("<dc:title>Milk &amp; salt</dc:title>"));
    EXPECT_THAT(pef, HasSubstr("<volume cols=\"40\" rows=\"25\" rowgap=\"0\" duplex=\"false\">"));
    EXPECT_THAT(pef, HasSubstr("<row>⠀⠀⠍⠊⠇⠅</row>"));
    EXPECT_EQ(pef, writePef(document, {}).value());
}

// liblouis keeps its state in global variables, so calls from several threads have to wait for each other.
TEST(Braille, isRightFromSeveralThreadsAtOnce) {
    const std::string expected = writeBrf(paragraph("coffee and flour"), {}).value();
    std::vector<std::string> answers(4);
    {
        std::vector<std::jthread> threads;
        for (std::string &answer : answers)
            threads.emplace_back([&answer] {
                for (int i = 0; i < 20; ++i)
                    answer = writeBrf(paragraph("coffee and flour"), {.grade = i % 2 + 1}).value();
            });
    }
    EXPECT_THAT(answers, Each(expected));
}
