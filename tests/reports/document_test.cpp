#include "reports/writers.h"
#include <gmock/gmock.h>
#include <limits>

using namespace reports;
using model::ErrorCode;
using testing::HasSubstr;
using testing::Not;

namespace {

Document of(std::vector<Block> blocks) {
    return Document{.title = "Test", .blocks = std::move(blocks)};
}

} // namespace

TEST(PlainText, saysEveryBlock) {
    const Document document =
        of({Heading{1, plain("Kitchen")}, Paragraph{plain("One\n  line.")},
            Steps{{plain("milk"), plain("salt")}, true}, Steps{{plain("soup")}, false},
            Table{"Things", {"Thing", "Shelf", ""}, {{plain("rice"), plain("3"), plain("dot")}}},
            Figure{1, 1, {}, "Two shelves."}, CautionBlock{plain("Hot.")}});
    EXPECT_EQ(writeText(document).value(),
              "Kitchen\n\nOne line.\n\n1. milk\n2. salt\n\n• soup\n\nThings\n\nrice\n"
              "  Shelf: 3\n  dot\n\nPicture: Two shelves.\n\nCaution: Hot.\n");
}

TEST(PlainText, spellsAddressesBehindTheirWords) {
    const reports::Run mail{"write", "", false, "mailto:k@example.org"};
    const reports::Run page{"https://example.org/a", "", false, "https://example.org/a"};
    EXPECT_EQ(writeText(of({Paragraph{{mail, {", ", "", false, ""}, page}}})).value(),
              "write (k@example.org), https://example.org/a\n");
}

TEST(Writers, refuseADocumentWithoutWords) {
    for (const Document &document : {of({}), of({Paragraph{plain(" \n ")}, Steps{{plain("")}, true}})}) {
        EXPECT_EQ(writeText(document).error().code, ErrorCode::Missing);
        EXPECT_EQ(writeHtml(document).error().code, ErrorCode::Missing);
        EXPECT_EQ(writePdf(document, {}).error().code, ErrorCode::Missing);
    }
}

TEST(Writers, refuseWhatIsNoText) {
    EXPECT_EQ(writeText(of({Paragraph{plain("a\xff")}})).error().code, ErrorCode::NotUnderstood);
    const auto control = writeText(of({Paragraph{plain("a\x07")}}));
    EXPECT_EQ(control.error().code, ErrorCode::NotUnderstood);
    EXPECT_THAT(control.error().sentence, HasSubstr("U+0007"));
}

TEST(Writers, refuseASkippedHeadingLevelAndAShortRow) {
    EXPECT_EQ(writeText(of({Heading{2, plain("a")}})).error().code, ErrorCode::OutOfRange);
    EXPECT_EQ(writeText(of({Heading{1, plain("a")}, Heading{3, plain("b")}})).error().code,
              ErrorCode::OutOfRange);
    EXPECT_EQ(writeText(of({Heading{0, plain("a")}})).error().code, ErrorCode::OutOfRange);
    EXPECT_EQ(writeText(of({Table{"", {"a", "b"}, {{plain("x")}}}})).error().code, ErrorCode::OutOfRange);
}

TEST(Writers, refuseWhatIsNoLanguageAndNoDate) {
    for (const char *language : {"", "english language", "en_GB", "en-", "9", "abcdefghi", "\" onload=\"x"}) {
        Document document = of({Paragraph{plain("milk")}});
        document.language = language;
        EXPECT_EQ(writeText(document).error().code, ErrorCode::NotUnderstood) << language;
    }
    for (const char *date : {"25.11.2026", "2026-02-30", "25 November 2026", "soon"}) {
        Document document = of({Paragraph{plain("milk")}});
        document.date = date;
        EXPECT_EQ(writeText(document).error().code, ErrorCode::NotUnderstood) << date;
    }
}

TEST(Writers, takeLineSeparatorsAsBlanksAndDropSoftHyphens) {
    EXPECT_EQ(writeText(documentFromText("\ufeffone\u2028two\u2029three\u0085fo\u00adur", "en")).value(),
              "one two three four\n");
}

TEST(DocumentFromText, beginsAParagraphAfterABlankLine) {
    const Document document = documentFromText("one\ntwo\r\n\n \nthree", "cy");
    EXPECT_EQ(document.language, "cy");
    EXPECT_EQ(document.blocks,
              (std::vector<Block>{Paragraph{plain("one two\r")}, Paragraph{plain("three")}}));
    EXPECT_EQ(writeText(document).value(), "one two\n\nthree\n");
    EXPECT_TRUE(documentFromText("", "en").blocks.empty());
}

TEST(WebPage, namesLanguageHeadingsAndScope) {
    Document document = of({Heading{1, plain("Kitchen")}, Paragraph{{reports::Run{"llaeth", "cy", true, ""}}},
                            Table{"Things", {"Thing", "Shelf"}, {{plain("rice"), plain("3")}}}});
    document.language = "en-GB";
    const std::string html = writeHtml(document).value();
    EXPECT_THAT(html, HasSubstr("<html lang=\"en-GB\">"));
    EXPECT_THAT(html, HasSubstr("<title>Test</title>"));
    EXPECT_THAT(html, HasSubstr("<h1>Kitchen</h1>"));
    EXPECT_THAT(html, HasSubstr("<span lang=\"cy\" dir=\"auto\"><strong>llaeth</strong></span>"));
    EXPECT_THAT(html, HasSubstr("<caption>Things</caption>"));
    EXPECT_THAT(html, HasSubstr("<th scope=\"col\">Thing</th><th scope=\"col\">Shelf</th>"));
    EXPECT_THAT(html, HasSubstr("<th scope=\"row\">rice</th><td>3</td>"));
}

TEST(WebPage, drawsTheFigureAndSaysItsWords) {
    const std::string html =
        writeHtml(of({Figure{20, 10, {{0, 0, 5, 5, "A&B", true}}, "Two shelves."}})).value();
    EXPECT_THAT(html, HasSubstr("<svg role=\"img\" aria-label=\"Drawing with the parts A&amp;B."));
    EXPECT_THAT(html, HasSubstr("<figcaption><strong>Picture: </strong>Two shelves.</figcaption>"));
}

TEST(WebPage, takesWordsAsWords) {
    const std::string html =
        writeHtml(of({Paragraph{plain("<script>alert(1)</script> & \"x\"")},
                      Paragraph{{reports::Run{"here", "", false, "javascript:alert(1)"}}}}))
            .value();
    EXPECT_THAT(html, Not(HasSubstr("<script")));
    EXPECT_THAT(html, HasSubstr("&lt;script&gt;alert(1)&lt;/script&gt; &amp; &quot;x&quot;"));
    EXPECT_THAT(html, Not(HasSubstr("href")));
}

TEST(WebPage, keepsLinks) {
    const std::string html =
        writeHtml(of({Paragraph{{reports::Run{"write", "", false, "mailto:k@example.org"}}}})).value();
    EXPECT_THAT(html, HasSubstr("<a href=\"mailto:k@example.org\">write</a>"));
}
