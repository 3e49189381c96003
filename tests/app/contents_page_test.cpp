#include "app/pages/contents_page.h"
#include "app/session.h"
#include "model/demo.h"
#include <QCoreApplication>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTemporaryFile>
#include <gmock/gmock.h>

namespace app {
namespace {

using testing::HasSubstr;

class Contents : public ::testing::Test {
protected:
    void SetUp() override {
        session.openPractice();
        const auto clients = session.caseload();
        ASSERT_TRUE(session.openClient(clients->front().id));
        page.refresh();
    }
    std::vector<model::Thing> here() const {
        std::vector<model::Thing> out;
        for (const auto &thing : session.record().things)
            if (thing.place == place)
                out.push_back(thing);
        return out;
    }
    QString field(const QString &key) {
        for (const auto &row : page.form()->rows())
            if (row.key == key)
                return row.value;
        return QStringLiteral("no such field");
    }
    QStringList titles() {
        QStringList out;
        for (const auto &row : page.rows()->rows())
            out << row.title;
        return out;
    }
    Session session;
    ShellViewModel shell;
    model::Id place;
    ContentsPage page{session, shell, place};
};

TEST_F(Contents, aLineAddsCorrectsAndRemoves) {
    const auto before = here().size();
    page.edit("line", "3 honey, 5 kidney beans, remove soup");
    EXPECT_EQ(here().size(), before) << "one more, one less, one changed";
    EXPECT_EQ(titles().count("soup"), 0);
    const auto things = here();
    const auto beans = std::ranges::find(things, "kidney beans", &model::Thing::name);
    ASSERT_NE(beans, things.end());
    EXPECT_EQ(beans->count, 5);
    ASSERT_TRUE(session.undo());
    EXPECT_EQ(titles().count("soup"), 1);
}

TEST_F(Contents, aDoubtIsAnsweredByTheFirstRow) {
    page.edit("line", "flower daily, honey");
    QSignalSpy rows(&page, &PageViewModel::focusRow);
    page.command("nextGap");
    EXPECT_EQ(page.title(), "flower daily: flower: flour?");
    ASSERT_EQ(rows.count(), 1);
    EXPECT_EQ(titles().front(), "flour");
    const auto id = std::ranges::find(session.record().things, "flower", &model::Thing::name)->id;
    page.activated("0");
    const auto settled = std::ranges::find(session.record().things, id, &model::Thing::id);
    EXPECT_EQ(settled->name, "flour");
    EXPECT_EQ(settled->usesPerWeek, 7);
    EXPECT_EQ(settled->place, place);
    EXPECT_EQ(settled->doubt, "");
    EXPECT_EQ(titles().count("flour"), 1) << "back to the shelf, no doubt is left";
}

TEST_F(Contents, doubtsHaveAButtonWhileThereAreAny) {
    const auto button = [this] {
        const auto &rows = page.actions()->rows();
        const auto found = std::ranges::find(rows, "doubts", &ActionRow::key);
        return found == rows.end() ? QString() : found->title;
    };
    EXPECT_EQ(button(), "");
    page.edit("line", "ajvar");
    EXPECT_EQ(button(), "Answer the doubt");
    page.edit("line", "zorvul");
    EXPECT_EQ(button(), "Answer 2 doubts");
    page.act("doubts");
    EXPECT_EQ(button(), "") << page.title().toStdString();
    EXPECT_THAT(page.title().toStdString(), testing::HasSubstr("ajvar: shape and size?"));
}

// Arithmetic: once in 20 weeks is 0.05 a week.
TEST_F(Contents, whatIsUsedSeldomIsToldInWeeks) {
    page.edit("line", "honey every 20 weeks");
    EXPECT_THAT(page.rows()->rows().back().facts.toStdString(), testing::HasSubstr("every 20 weeks"));
    page.edit("line", "cocoa monthly");
    EXPECT_THAT(page.rows()->rows().back().facts.toStdString(), testing::HasSubstr("monthly"));
}

TEST_F(Contents, twoThingsInOneBecomeTwo) {
    const auto before = here().size();
    page.edit("line", "salt and pepper");
    page.command("nextGap");
    EXPECT_EQ(titles().front(), "two things");
    page.activated("0");
    EXPECT_EQ(here().size(), before + 2);
}

TEST_F(Contents, anUnknownNameIsLearntWhenItIsDescribed) {
    page.edit("line", "ajvar");
    page.command("nextGap");
    page.activated("0"); // jar
    EXPECT_EQ(titles().front(), "medium");
    page.edit("answer", "small jar of ajvar");
    EXPECT_EQ(session.lexicon().find("ajvar")->usual.shape, model::Shape::Jar);
    page.edit("line", "2 ajvar");
    EXPECT_EQ(here().back().doubt, "");
}

TEST_F(Contents, aThingIsCorrectedByItsOwnLine) {
    page.edit("line", "4 honey daily");
    page.activated(text(here().back().id.text));
    EXPECT_EQ(field("asLine"), "4 honey daily");
    page.edit("asLine", "2 honey weekly");
    EXPECT_EQ(field("count"), "2");
    EXPECT_EQ(field("uses"), "1");
    page.edit("asLine", "rice, tea");
    EXPECT_EQ(field("asLine"), "rice, tea") << "refused, kept";
    EXPECT_EQ(here().back().name, "honey");
}

TEST_F(Contents, doubtsLeadBackToThePlaceWhereTheyWereAskedFor) {
    page.edit("line", "flower");
    const QString first = page.title();
    page.act("next");
    const QString second = page.title();
    ASSERT_NE(first, second);
    page.command("nextGap");
    page.activated(page.rows()->rows().front().key);
    EXPECT_EQ(page.title(), second);
    EXPECT_EQ(page.title().at(0), page.title().at(0).toUpper()) << "a heading";
}

TEST_F(Contents, eachQuestionHasAnswersOfItsOwn) {
    page.edit("line", "ajvar");
    page.command("nextGap");
    const QString shape = page.rows()->rows().front().key;
    page.activated(shape);
    EXPECT_EQ(titles().front(), "medium");
    EXPECT_NE(page.rows()->rows().front().key, shape) << "the same row would not be heard again";
}

TEST_F(Contents, whatIsTypedForOneThingStaysWithThatThing) {
    const QString one = page.rows()->rows().at(0).key;
    const QString other = page.rows()->rows().at(1).key;
    page.activated(one);
    page.edit("width", "wide"); // refused
    page.typing("depth", "1");  // not taken yet
    EXPECT_EQ(field("width"), "wide");
    page.activated(other);
    EXPECT_NE(field("width"), "wide");
    EXPECT_NE(field("depth"), "1");
    page.activated(one);
    EXPECT_EQ(field("width"), "wide");
    ContentsPage again{session, shell, place};
    again.refresh();
    again.activated(other);
    EXPECT_EQ(again.form()->rows().at(5).error, "") << again.form()->rows().at(5).key.toStdString();
    again.activated(one);
    EXPECT_NE(again.form()->rows().at(5).error, "") << "it comes back with the page";
}

TEST_F(Contents, aLineRefusedHereIsNotThatOfTheNextPlace) {
    page.edit("line", "(((");
    const QString refused = field("line");
    page.act("next");
    EXPECT_EQ(field("line"), "");
    page.act("back");
    EXPECT_EQ(field("line"), refused);
}

TEST_F(Contents, aListIsShownBeforeItIsTakenAndNamesItsErrorsByLine) {
    const auto before = session.record().things.size();
    page.act("list");
    page.edit("list", "2 honey, tea\nattic:\nrice\ntop drawer:\n6 teaspoons\n");
    EXPECT_EQ(session.record().things.size(), before);
    ASSERT_EQ(page.rows()->rows().size(), 3U);
    EXPECT_EQ(page.rows()->rows()[1].facts, "Line 3: no place is called attic.");
    EXPECT_EQ(page.rows()->rows()[1].flag, "not taken");
    page.act("take");
    EXPECT_EQ(session.record().things.size(), before + 3);
    EXPECT_EQ(field("list"), "attic:\nrice") << "what was not understood stays";
    ASSERT_TRUE(session.undo());
    EXPECT_EQ(session.record().things.size(), before) << "one step back for the whole list";
}

TEST_F(Contents, aFileIsReadOrRefusedWithASentence) {
    page.act("list");
    QTemporaryFile file;
    ASSERT_TRUE(file.open());
    file.write("name,count\nhoney,2\ntea,many\n");
    file.close();
    page.edit("file", file.fileName());
    ASSERT_EQ(page.rows()->rows().size(), 2U);
    EXPECT_EQ(page.rows()->rows()[1].facts, "Line 3: not a count: many.");
    page.edit("file", "/nowhere/list.csv");
    const auto &rows = page.form()->rows();
    const auto found = std::ranges::find(rows, "file", &FormField::key);
    EXPECT_THAT(found->error.toStdString(), HasSubstr("cannot be read"));
    EXPECT_EQ(found->value, "/nowhere/list.csv");
}

TEST_F(Contents, tenThousandCharactersAndNonsenseAreTakenOrRefused) {
    const auto before = session.record().things.size();
    page.edit("line", QString(10'000, QLatin1Char('x')));
    EXPECT_EQ(session.record().things.size(), before + 1);
    page.edit("line", QStringLiteral(",;,"));
    EXPECT_EQ(session.record().things.size(), before + 1);
    page.edit("line", QStringLiteral("\u202eeciR 2"));
    EXPECT_EQ(here().back().name, "eciR");
}

TEST_F(Contents, aLineThatWasBeingTypedIsThereAgainAndReturnTakesIt) {
    page.typing("line", "4 honey");
    page.refresh();
    EXPECT_EQ(page.form()->rows().front().error, "") << "she is still typing it";
    ContentsPage again(session, shell, place);
    again.refresh();
    EXPECT_EQ(again.form()->rows().front().value, "4 honey");
    EXPECT_THAT(again.form()->rows().front().error.toStdString(), HasSubstr("not taken yet"));
    again.edit("line", "4 honey");
    EXPECT_EQ(again.form()->rows().front().value, "");
    EXPECT_EQ(again.form()->rows().front().error, "");
    ContentsPage later(session, shell, place);
    later.refresh();
    EXPECT_EQ(later.form()->rows().front().value, "") << "what was taken is no draft any more";
}

TEST_F(Contents, aLineThatIsNoneIsToldBesideItsField) {
    page.edit("line", QStringLiteral(",;,"));
    EXPECT_EQ(page.form()->rows().front().value, ",;,");
    EXPECT_NE(page.form()->rows().front().error, "");
}

TEST(OwnWords, areThereAgainAfterTheProgramWasClosed) {
    const QTemporaryDir folder;
    const std::string passphrase = "five words that stand together";
    {
        auto made = model::Store::create(folder.filePath("store").toStdString(), passphrase, "Ada Rowan",
                                         model::KeyCost::cheapest());
        ASSERT_TRUE(made);
        Session session;
        session.openStore(std::move(made->store), "Ada Rowan");
        session.learn(model::parseContents("small jar of ajvar")->front().thing);
        EXPECT_NE(session.lexicon().find("ajvar"), nullptr);
    }
    auto store = model::Store::open(folder.filePath("store").toStdString(), passphrase, "Ada Rowan",
                                    model::KeyCost::cheapest());
    ASSERT_TRUE(store);
    Session session;
    session.openStore(std::move(*store), "Ada Rowan");
    ASSERT_NE(session.lexicon().find("ajvar"), nullptr);
    session.close();
    EXPECT_EQ(session.lexicon().find("ajvar"), nullptr) << "nothing is known of a closed store";
}

} // namespace
} // namespace app
