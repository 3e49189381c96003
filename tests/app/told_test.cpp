#include "app/page_image_provider.h"
#include "app/pages/plan_page.h"
#include "app/viewmodels/app_shell.h"
#include "app/viewmodels/seen_text.h"
#include "app/viewmodels/sentences.h"
#include "model/place_choice.h"
#include <QCoreApplication>
#include <QEvent>
#include <QTemporaryDir>
#include <QTest>
#include <algorithm>
#include <gmock/gmock.h>

namespace app {
namespace {

using ::testing::HasSubstr;

/// What is said, and what stands beside a field, on the pages of the practice caseload.
class Told : public ::testing::Test {
protected:
    void SetUp() override { shell.openPracticeAtStart(); }
    // Pages that were left go with the next events, while what they show is still there.
    void TearDown() override { QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete); }
    void open(const std::string &name) {
        const auto clients = shell.session().caseload();
        for (const auto &client : *clients)
            if (client.name.find(name) != std::string::npos)
                shell.goTo("open:" + text(client.id.text));
        ASSERT_TRUE(shell.session().hasClient());
    }
    PageViewModel &page() {
        return *shell.property("pageProperties").toMap().value("vm").value<PageViewModel *>();
    }
    FormField field(const QString &key) {
        const auto &rows = page().form()->rows();
        const auto found = std::ranges::find(rows, key, &FormField::key);
        return found == rows.end() ? FormField{} : *found;
    }
    void change(const Session::Change &how) { ASSERT_TRUE(shell.session().edit("a change", "test", how)); }
    void planHastily() {
        change([&](model::Case &r) {
            model::SolveOptions hasty;
            hasty.moves = 100'000;
            hasty.seeds = 1;
            r.plan = model::makePlan(r, shell.session().findings(), hasty, shell.session().today()).value();
        });
    }
    PageImageProvider pictures;
    AppShell shell{{}, model::KeyCost::cheapest(), pictures};
};

TEST_F(Told, returnInTheLastFieldAddsTheClientAndSaysSo) {
    page().act("new");
    page().edit("newName", "Invented Person");
    page().returned("newName");
    EXPECT_FALSE(shell.session().hasClient()) << "the code is to come";
    page().edit("newCode", "");
    page().returned("newCode");
    EXPECT_THAT(shell.message().toStdString(), HasSubstr("A short code is needed"));
    page().edit("newCode", "K7");
    page().returned("newCode");
    ASSERT_TRUE(shell.session().hasClient());
    EXPECT_EQ(shell.page(), "client");
    EXPECT_EQ(shell.message(), "Client added: Invented Person.");
}

TEST_F(Told, aGoalThatIsLeftSaysThatItIsKeptAndWhatItLacks) {
    open("Nora");
    shell.goTo("goals");
    page().act("new");
    page().edit("sentence", "Finds the salt");
    page().act("done");
    EXPECT_TRUE(QTest::qWaitFor(
        [&] { return shell.message() == "Goal kept. Still open: 5 levels, the day of review."; }, 2000))
        << shell.message().toStdString();
}

TEST_F(Told, countsResultsAndTests) {
    open("Nora");
    change([](model::Case &r) { r.measurements.clear(); });
    shell.goTo("sight");
    EXPECT_TRUE(page().kicker().startsWith("0 results, of 0 of ")) << page().kicker().toStdString();
    page().edit("distance-acuity-1", "6/24");
    page().edit("distance-acuity-2", "6/60");
    EXPECT_TRUE(page().kicker().startsWith("2 results, of 1 of ")) << page().kicker().toStdString();
}

TEST_F(Told, countsNoLabelsWhereThereAreNone) {
    open("Nora");
    change([](model::Case &r) {
        r.things.clear();
        r.places.clear();
        r.units.clear();
    });
    shell.goTo("legible");
    EXPECT_EQ(page().kicker(), "No labels to read yet");
}

TEST_F(Told, aPlaceSaysHowItStores) {
    open("Nora");
    change([](model::Case &r) { r.places.front().storage = model::Storage::Fridge; });
    shell.goTo("kitchen");
    const auto &rows = page().rows()->rows();
    EXPECT_TRUE(rows.front().facts.endsWith("fridge", Qt::CaseInsensitive))
        << rows.front().facts.toStdString();
    EXPECT_GT(std::ranges::count_if(
                  rows, [](const ListRow &row) { return row.facts.endsWith("dry", Qt::CaseInsensitive); }),
              0);
}

TEST_F(Told, aLongNameIsCutWhereItIsOnlyHeardAndWholeInItsField) {
    open("Nora");
    const QString name = QString("Winterbee ").repeated(1000).trimmed();
    page().edit("name", name);
    EXPECT_EQ(field("name").value, name);
    EXPECT_LT(shell.whereAmI(name).size(), 700);
    EXPECT_THAT(shell.whereAmI({}).toStdString(), HasSubstr("\u2026"));
    EXPECT_LT(shell.clientName().size(), 210);
    shell.goTo("caseload");
    const auto &rows = *page().rows();
    for (int i = 0; i < rows.rowCount(); ++i) {
        const auto spoken = rows.roleNames().key("spoken");
        EXPECT_LT(rows.data(rows.index(i), spoken).toString().size(), 400);
    }
}

TEST(CutShort, cutsBetweenWordsAndTakesNoLetterApart) {
    EXPECT_EQ(cutShort("Rice"), "Rice");
    EXPECT_EQ(cutShort(QString("rice ").repeated(60)),
              QString("rice ").repeated(40).trimmed() + QChar(0x2026));
    const QString emoji = QString::fromUtf8("x") + QString::fromUtf8("\U0001F600").repeated(300);
    const QString cut = cutShort(emoji);
    EXPECT_FALSE(cut.chopped(1).back().isHighSurrogate());
    EXPECT_LE(cut.size(), 201);
    EXPECT_EQ(sentencesOnce({cutShort(QString("rice ").repeated(60)), "Sight"}).right(8),
              QString(QChar(0x2026)) + " Sight.");
}

TEST(SeenText, turnsTabsAndEndsOfLinesIntoSpacesAndSaysSo) {
    EXPECT_EQ(seenText("Ada Rowan", false).text, "Ada Rowan");
    EXPECT_EQ(seenText("Ada Rowan", false).told, "");
    const SeenText pasted = seenText("Ada\tRowan\r\nSecond", false);
    EXPECT_EQ(pasted.text, "Ada Rowan Second");
    EXPECT_EQ(pasted.told, "Tabs and ends of lines became spaces.");
    EXPECT_EQ(seenText("one\ntwo", true).text, "one\ntwo");
    EXPECT_EQ(seenText("one\ntwo", true).told, "");
    const SeenText bell = seenText(QString("Ada") + QChar(7) + QChar(0x1b), false);
    EXPECT_EQ(bell.text, "Ada");
    EXPECT_EQ(bell.told, "2 characters that cannot be seen were left out.");
    const QString family = QString::fromUtf8("\U0001F468\u200D\U0001F469"),
                  hebrew = QString::fromUtf8("\u200F\u05D0");
    EXPECT_EQ(seenText(family + hebrew, false).text, family + hebrew)
        << "they join emoji and set the direction";
}

TEST_F(Told, whatWasTakenOutOfAPastedNameStandsBesideItsField) {
    open("Nora");
    page().edit("name", QString("Nora\tWinter") + QChar(7));
    EXPECT_EQ(shell.session().record().client.name, "Nora Winter");
    EXPECT_EQ(field("name").value, "Nora Winter");
    EXPECT_EQ(field("name").note,
              "Tabs and ends of lines became spaces. 1 character that cannot be seen was left out.");
    page().edit("name", "Nora");
    EXPECT_EQ(field("name").note, "");
}

TEST_F(Told, undoInAFieldThatOneHasComeBackToActsOnItsRefusedText) {
    open("Nora");
    page().edit("born", "31/02/1950");
    page().edit("contact", "By letter");
    EXPECT_FALSE(page().takeBack("contact")) << "it is accepted";
    ASSERT_TRUE(page().takeBack("born"));
    EXPECT_EQ(shell.message(), "Undone: Birth date: 31/02/1950.");
    EXPECT_EQ(field("born").error, "");
    EXPECT_EQ(shell.session().record().client.contact, "By letter") << "it is far away";
    EXPECT_FALSE(page().takeBack("born"));
    shell.undo();
    EXPECT_NE(shell.session().record().client.contact, "By letter");
}

TEST_F(Told, papersPageSaysWhereTheLastOnesWereWritten) {
    open("Nora");
    planHastily();
    shell.goTo("papers");
    EXPECT_EQ(page().rowsEmpty(), "None made since this page was opened.");
    const QTemporaryDir folder;
    page().edit("folder", folder.path());
    page().act("make");
    ASSERT_TRUE(QTest::qWaitFor([&] { return shell.busyWith().isEmpty(); }, 120'000));
    const auto made = page().rows()->rows().size();
    ASSERT_GT(made, 1U);
    page().act("write");
    shell.goTo("client");
    shell.goTo("papers");
    EXPECT_THAT(page().rowsEmpty().toStdString(),
                testing::AllOf(HasSubstr("Last written: "), HasSubstr(std::to_string(made) + " papers to " +
                                                                      folder.path().toStdString())));
}

TEST_F(Told, placesWhereAThingMayStandComeFirstAndTheOthersSayWhyNot) {
    open("Idris");
    planHastily();
    shell.goTo("plan");
    const auto &things = shell.session().record().things;
    const auto cold = std::ranges::find(things, model::Storage::Fridge, &model::Thing::storage);
    ASSERT_NE(cold, things.end());
    page().moved(text(cold->id.text));
    const FormField place = field("overrule");
    ASSERT_EQ(place.choices.size(), static_cast<qsizetype>(shell.session().record().places.size()));
    const auto isRefused = [](const QString &choice) { return choice.contains("(not here: "); };
    EXPECT_FALSE(isRefused(place.choices.front()));
    EXPECT_TRUE(std::ranges::is_partitioned(place.choices, [&](const QString &c) { return !isRefused(c); }));
    ASSERT_TRUE(place.choices.contains(place.value));
    const auto dry = std::ranges::find_if(
        place.choices, [](const QString &c) { return c.endsWith("(not here: wrong kind of storage)"); });
    ASSERT_NE(dry, place.choices.end());
    page().edit("overrule", *dry);
    EXPECT_TRUE(QTest::qWaitFor([&] { return shell.message().contains("cannot stand in"); }, 20'000));
}

TEST(EntryTold, helpIsNamedAfterTheStage) {
    const QTemporaryDir folder;
    PageImageProvider pictures;
    AppShell shell(folder.filePath("store").toStdString(), model::KeyCost::cheapest(), pictures);
    EXPECT_EQ(shell.pageTitle(), "Make new records");
    auto *entry = shell.property("pageProperties").toMap().value("entry").value<EntryViewModel *>();
    ASSERT_NE(entry, nullptr);
    entry->create("Ada Rowan", "five words that stand together", "five words that stand together");
    ASSERT_TRUE(QTest::qWaitFor([&] { return entry->stage() == "code"; }, 20'000));
    EXPECT_EQ(shell.pageTitle(), "Recovery code");
}

} // namespace
} // namespace app
