#include "reports/markdown.h"
#include "reports/template.h"
#include <QDirIterator>
#include <gmock/gmock.h>

using namespace reports;
using model::ErrorCode;
using testing::AllOf;
using testing::HasSubstr;

namespace {

model::Result<Document> filled(const std::string &text, const Fields &fields = {}) {
    return fillText(text, "test", fields, {{"kitchen", Figure{10, 10, {}, "Two shelves."}}});
}

std::vector<Block> blocks(const std::string &text, const Fields &fields = {}) {
    auto document = filled(text, fields);
    EXPECT_TRUE(document) << document.error().sentence;
    return document ? document->blocks : std::vector<Block>{};
}

} // namespace

TEST(Template, readsEveryKindOfBlock) {
    EXPECT_EQ(blocks("# One\n\nTwo **strong** [three](https://example.org)\nfour\n\n1. a\n1. b\n\n- c\n\n"
                     "> Caution: hot\n\n```figure\nkitchen\n```\n"),
              (std::vector<Block>{Heading{1, plain("One")},
                                  Paragraph{{{"Two ", "", false, ""},
                                             {"strong", "", true, ""},
                                             {" ", "", false, ""},
                                             {"three", "", false, "https://example.org"},
                                             {" four", "", false, ""}}},
                                  Steps{{plain("a"), plain("b")}, true}, Steps{{plain("c")}, false},
                                  CautionBlock{plain("hot")}, Figure{10, 10, {}, "Two shelves."}}));
}

TEST(Template, readsATableWithItsCaption) {
    EXPECT_EQ(blocks("Table: Things\n\n| Thing | Shelf |\n| --- | --- |\n| rice | 3 |\n| salt | |\n"),
              (std::vector<Block>{
                  Table{"Things", {"Thing", "Shelf"}, {{plain("rice"), plain("3")}, {plain("salt"), {}}}}}));
}

TEST(Template, repeatsAListAndChoosesByASwitch) {
    const Fields fields{{{"things", std::vector<Fields>{{{{"name", "milk"}}}, {{{"name", "salt"}}}}},
                         {"cold", true},
                         {"none", std::vector<Fields>{}},
                         {"unit", "shelf"}}};
    EXPECT_EQ(blocks("{{#things}}\n- {{name}} on the {{unit}}\n{{/things}}\n\n{{#cold}}\nCold.\n{{/cold}}\n"
                     "{{^none}}\nNone.\n{{/none}}\n",
                     fields),
              (std::vector<Block>{Steps{{plain("milk on the shelf"), plain("salt on the shelf")}, false},
                                  Paragraph{plain("Cold. None.")}}));
}

TEST(Template, takesTheTitleFromTheFirstHeading) {
    EXPECT_EQ(filled("# One **two**\n\n## Three\n")->title, "One two");
}

class ClientWords : public testing::TestWithParam<const char *> {};

TEST_P(ClientWords, areNeverReadAsMarkdown) {
    const Fields fields{{{"words", std::string(GetParam())}}};
    EXPECT_EQ(blocks("{{words}}\n", fields), (std::vector<Block>{Paragraph{plain(GetParam())}}));
    EXPECT_EQ(blocks("- {{words}}\n", fields), (std::vector<Block>{Steps{{plain(GetParam())}, false}}));
    EXPECT_EQ(blocks("> Caution: {{words}}\n", fields),
              (std::vector<Block>{CautionBlock{plain(GetParam())}}));
    EXPECT_EQ(blocks("| a | b |\n| --- | --- |\n| {{words}} | x |\n", fields),
              (std::vector<Block>{Table{"", {"a", "b"}, {{plain(GetParam()), plain("x")}}}}));
}

INSTANTIATE_TEST_SUITE_P(All, ClientWords,
                         testing::Values("# salt", "1. milk", "1) milk", "- milk", "+ milk",
                                         "> Caution: milk", "**milk**", "_milk_",
                                         "[milk](https://example.org)", "<b>milk</b>", "a | b", "`milk`",
                                         "~~~", "```figure", "---", "===", "&amp; &#65;", "{{words}}", "a\\b",
                                         "![x](y)", "https://example.org", "kitchen@example.org",
                                         "Table: milk", "*", "żółć 牛奶"));

TEST(ClientWords, areOneLine) {
    EXPECT_EQ(blocks("{{words}}\n", {{{"words", "one\n\n# two\r\n    three "}}}),
              (std::vector<Block>{Paragraph{plain("one # two three")}}));
}

TEST(Template, namesTheFieldsThatAreMissing) {
    const auto answer = filled("{{a}} {{#b}}x{{/b}} {{c}}", {{{"c", "x"}}});
    ASSERT_FALSE(answer);
    EXPECT_EQ(answer.error().code, ErrorCode::Missing);
    EXPECT_THAT(answer.error().sentence, AllOf(HasSubstr("\"a\", \"b\""), HasSubstr("\"test\"")));
}

TEST(Template, namesTheTemplateOrFigureThatIsMissing) {
    const auto answer = fillTemplate("none", {}, {});
    EXPECT_EQ(answer.error().code, ErrorCode::Missing);
    EXPECT_THAT(answer.error().sentence, HasSubstr("\"none\""));
    const auto figure = filled("```figure\nbathroom\n```\n");
    EXPECT_EQ(figure.error().code, ErrorCode::Missing);
    EXPECT_THAT(figure.error().sentence, HasSubstr("\"bathroom\""));
}

class BadTemplate : public testing::TestWithParam<const char *> {};

TEST_P(BadTemplate, isRefused) {
    const auto answer = filled(GetParam(), {{{"a", "x"}}});
    ASSERT_FALSE(answer);
    EXPECT_EQ(answer.error().code, ErrorCode::NotUnderstood);
}

INSTANTIATE_TEST_SUITE_P(All, BadTemplate,
                         testing::Values("{{{a}}}", "{{&a}}", "{{#a}}", "> no caution", "```\ncode\n```",
                                         "- a\n  - b\n", "*italic*", "`code`", "![x](y)", "---", "a &copy; b",
                                         "> > Caution: x"));

TEST(Template, isCompiledIn) {
    int count = 0;
    for (QDirIterator names(QStringLiteral(":/templates")); names.hasNext(); ++count) {
        const std::string name = names.next().mid(12).chopped(3).toStdString();
        // Without fields it is found, and says which fields it wants.
        const auto answer = fillTemplate(name, {}, {});
        ASSERT_FALSE(answer);
        EXPECT_THAT(answer.error().sentence, HasSubstr("fields that are not there")) << name;
    }
    EXPECT_GE(count, 4);
}
