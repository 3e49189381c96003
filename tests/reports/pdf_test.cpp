#include "pdf_reading.h"
#include "reports/writers.h"
#include <gmock/gmock.h>
#include <limits>
#include <thread>

using namespace reports;
using model::ErrorCode;
using testing::HasSubstr;
using testing::Not;

namespace {

Document sample() {
    return Document{
        .title = "Kitchen & larder",
        .date = "2026-11-25",
        .author = "T. Demo",
        .blocks = {
            Heading{1, plain("Kitchen")},
            Paragraph{{{"Write ", "", false, ""}, {"to us", "", false, "mailto:k@example.org"}}},
            Heading{2, plain("Shelves")}, Steps{{plain("Flour, office, fish"), plain("Salt")}, true},
            Figure{80, 40, {{0, 0, 40, 40, "1", true}}, "One shelf."},
            CautionBlock{plain("The plate is hot.")},
            Table{"Things", {"Thing", "Shelf"}, {{plain("Rice"), plain("3")}}},
            Paragraph{{{"Tea is ", "", false, ""}, {"चाय", "hi", false, ""}, {" there.", "", false, ""}}}}};
}

Document words(const std::string &text) {
    return Document{.title = "Test", .blocks = {Paragraph{plain(text)}}};
}

std::size_t countOf(const std::string &text, const std::string &part) {
    std::size_t count = 0;
    for (std::size_t place = 0; (place = text.find(part, place)) != std::string::npos; place += part.size())
        ++count;
    return count;
}

} // namespace

TEST(LargePrint, isTheSameBytesForTheSameDocument) {
    const std::string first = writePdf(sample(), {}).value();
    EXPECT_EQ(first, writePdf(sample(), {}).value());
    Document later = sample();
    later.date = "2026-11-26";
    EXPECT_NE(first, writePdf(later, {}).value());
    Document undated = sample();
    undated.date.clear();
    EXPECT_EQ(writePdf(undated, {}).value(), writePdf(undated, {}).value());
}

TEST(LargePrint, saysTheWordsOfThePlainText) {
    EXPECT_EQ(pdf_reading::words(writePdf(sample(), {}).value()),
              pdf_reading::collapsed(writeText(sample()).value()));
}

TEST(LargePrint, tagsEveryKindOfBlock) {
    const std::string tags = pdf_reading::output("pdfinfo -struct-text PDF", writePdf(sample(), {}).value());
    EXPECT_THAT(tags, HasSubstr("H1 (block)\n    \"Kitchen\""));
    EXPECT_THAT(tags, HasSubstr("H2 (block)\n    \"Shelves\""));
    EXPECT_THAT(tags, HasSubstr("/ListNumbering /Decimal"));
    EXPECT_THAT(
        tags, HasSubstr("Lbl (block)\n        \"1.\"\n      LBody (block)\n        \"Flour, office, fish\""));
    EXPECT_THAT(tags, HasSubstr("Figure:\n     /BBox"));
    EXPECT_THAT(tags, HasSubstr("\"Caution: The plate is hot.\""));
    EXPECT_THAT(tags, HasSubstr("Link (inline)\n      \"to us\"\n      Object"));
    EXPECT_THAT(tags, HasSubstr("P (block)\n          \"Rice\"\n        P (block)\n          \"Shelf: 3\""));
    EXPECT_THAT(tags, Not(HasSubstr("Page 1"))); // the page number is an artifact
}

TEST(LargePrint, holdsWhatReadersAskForBesideTheWords) {
    const std::string objects =
        pdf_reading::output("qpdf --qdf --object-streams=disable PDF -", writePdf(sample(), {}).value());
    EXPECT_THAT(objects, HasSubstr("/Alt (Drawing with the parts 1. The words after it say the same.)"));
    EXPECT_THAT(objects, HasSubstr("/Lang (en-GB)"));
    EXPECT_THAT(objects, HasSubstr("/Lang (hi)"));
    EXPECT_THAT(objects, HasSubstr("/DisplayDocTitle true"));
    EXPECT_THAT(objects, HasSubstr("<pdfuaid:part>1</pdfuaid:part>"));
    EXPECT_THAT(objects, HasSubstr("<rdf:li xml:lang=\"x-default\">Kitchen &amp; larder</rdf:li>"));
    EXPECT_THAT(objects, HasSubstr("/URI (mailto:k@example.org)"));
    EXPECT_THAT(objects, HasSubstr("/Contents (to us)"));
    EXPECT_THAT(objects, HasSubstr("/Title (Shelves)")); // a bookmark
    EXPECT_EQ(countOf(objects, "/Tabs /S"), countOf(objects, "/Type /Page\n"));
}

TEST(LargePrint, embedsEveryFont) {
    const std::string fonts = pdf_reading::output("pdffonts PDF", writePdf(sample(), {}).value());
    EXPECT_GE(countOf(fonts, "yes yes yes"), 3u);
    EXPECT_EQ(countOf(fonts, " no "), 0u) << fonts;
}

TEST(LargePrint, namesTitleAndAuthor) {
    const std::string facts = pdf_reading::output("pdfinfo PDF", writePdf(sample(), {}).value());
    EXPECT_THAT(facts, HasSubstr("Kitchen & larder"));
    EXPECT_THAT(facts, HasSubstr("T. Demo"));
    EXPECT_THAT(facts, HasSubstr("Tagged:          yes"));
}

TEST(LargePrint, cutsOnlyAWordThatIsLongerThanALine) {
    const std::string longWord(10000, 'k');
    std::string found = pdf_reading::words(writePdf(words("before " + longWord + " after"), {}).value());
    EXPECT_TRUE(found.starts_with("before k"));
    EXPECT_TRUE(found.ends_with("k after"));
    EXPECT_EQ(std::count(found.begin(), found.end(), 'k'), 10000);
    const std::string dates = "2026-12-01 and/or well-known k@example.org ";
    EXPECT_EQ(pdf_reading::words(writePdf(words(dates + dates + dates), {.bodyPoints = 40}).value()),
              pdf_reading::collapsed(dates + dates + dates));
}

TEST(LargePrint, namesTheCharactersThatNoFontHas) {
    const auto answer = writePdf(words("milk \uE123 and \U000F1234"), {});
    ASSERT_FALSE(answer);
    EXPECT_EQ(answer.error().code, ErrorCode::NotUnderstood);
    EXPECT_THAT(answer.error().sentence, HasSubstr("U+E123, U+F1234"));
}

TEST(LargePrint, isRightFromTwoThreadsAtOnce) {
    const std::string expected = writePdf(sample(), {}).value();
    std::string other;
    std::jthread thread([&] { other = writePdf(sample(), {}).value(); });
    EXPECT_EQ(writePdf(sample(), {}).value(), expected);
    thread.join();
    EXPECT_EQ(other, expected);
}

TEST(LargePrint, refusesALayoutThatCannotBe) {
    const double none = std::numeric_limits<double>::quiet_NaN();
    for (const PrintLayout &layout :
         {PrintLayout{.bodyPoints = 11.9}, PrintLayout{.bodyPoints = 73}, PrintLayout{.bodyPoints = none},
          PrintLayout{.pageWidthMm = -1}, PrintLayout{.marginMm = 200}, PrintLayout{.marginMm = -1},
          PrintLayout{.bodyPoints = 72, .pageWidthMm = 100}, PrintLayout{.marginMm = 100}}) {
        const auto answer = writePdf(sample(), layout);
        ASSERT_FALSE(answer);
        EXPECT_EQ(answer.error().code, ErrorCode::OutOfRange);
    }
}

TEST(LargePrint, writesEverySizeThatItPromises) {
    for (const double points : {12.0, 18.0, 36.0, 50.0})
        EXPECT_EQ(pdf_reading::words(writePdf(sample(), {.bodyPoints = points}).value()),
                  pdf_reading::collapsed(writeText(sample()).value()))
            << points;
}

namespace {

/// How often the word stands on the first page, in a list of items that hold it `each` times, one to a line.
std::size_t onTheFirstPage(int each) {
    std::string item;
    for (int i = 0; i < each; ++i)
        item += i == 0 ? "cupboards" : " cupboards";
    const Document list{.title = "Test", .blocks = {Steps{std::vector<Text>(9, plain(item)), false}}};
    const std::string pdf = writePdf(list, {.bodyPoints = 48}).value();
    return countOf(pdf_reading::output("pdftotext -l 1 PDF -", pdf), "cupboards");
}

} // namespace

TEST(LargePrint, splitsALongItemRatherThanLeaveHalfAPageEmpty) {
    EXPECT_GT(onTheFirstPage(5), 5) << "an item of five lines, and a part of the next";
    EXPECT_EQ(onTheFirstPage(2) % 2, 0) << "a short item stays whole";
}
