#include "app/page_image_provider.h"
#include "app/pages/caseload_page.h"
#include "app/pages/client_page.h"
#include "app/pages/kitchen_page.h"
#include "app/pages/sight_pages.h"
#include "app/session.h"
#include "app/viewmodels/app_shell.h"
#include "app/viewmodels/page_help.h"
#include "model/demo.h"
#include <QCoreApplication>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QThreadPool>
#include <gmock/gmock.h>
#include <set>

namespace app {
namespace {

const std::string passphrase = "five words that stand together";

model::Store newStore(const QTemporaryDir &folder) {
    auto made = model::Store::create(folder.filePath("store").toStdString(), passphrase, "Ada Rowan",
                                     model::KeyCost::cheapest());
    EXPECT_TRUE(made);
    return std::move(made->store);
}

model::Id idOf(const Session &session, const std::string &name) {
    const auto clients = session.caseload();
    for (const auto &client : *clients)
        if (client.name.find(name) != std::string::npos)
            return client.id;
    return {};
}

class OpenSession : public ::testing::Test {
protected:
    void SetUp() override {
        session.openPractice();
        ASSERT_TRUE(session.openClient(idOf(session, "Nora")));
    }
    Session session;
    ShellViewModel shell;
};

TEST_F(OpenSession, undoGivesBackTheCaseAndSaysWhatItUndid) {
    const model::Case before = session.record();
    ASSERT_TRUE(session.edit("rice daily", "test", [](model::Case &r) { r.things.front().name = "rice"; }));
    EXPECT_EQ(session.record().things.front().name, "rice");
    EXPECT_EQ(session.undo(), QString("rice daily"));
    EXPECT_EQ(session.record(), before);
    EXPECT_EQ(session.redo(), QString("rice daily"));
    EXPECT_EQ(session.record().things.front().name, "rice");
    EXPECT_FALSE(session.redo());
}

TEST_F(OpenSession, editThatChangesNothingIsNoStepToUndo) {
    ASSERT_TRUE(session.edit("nothing", "test", [](model::Case &) {}));
    EXPECT_FALSE(session.undo());
}

TEST_F(OpenSession, refusesASecondClientWithTheSameCode) {
    EXPECT_EQ(session.addClient("Somebody Else", "demo-n").error().code, model::ErrorCode::Refused);
    EXPECT_EQ(session.addClient("", "X1").error().code, model::ErrorCode::Missing);
    EXPECT_EQ(session.addClient("Somebody Else", " ").error().code, model::ErrorCode::Missing);
}

TEST_F(OpenSession, wrongNotationStaysInItsFieldAndTheRecordStaysAsItWas) {
    MeasurementPage page(session, shell, model::Domain::Sight);
    page.refresh();
    const model::Case before = session.record();
    const QString key = page.form()->rows().at(1).key;
    page.edit(key, "6/");
    EXPECT_EQ(page.form()->rows().at(1).value, "6/");
    EXPECT_THAT(page.form()->rows().at(1).error.toStdString(), ::testing::HasSubstr("Not an acuity"));
    EXPECT_EQ(session.record(), before);
    page.edit(key, "6/24");
    EXPECT_EQ(page.form()->rows().at(1).error, "");
    EXPECT_EQ(session.record().measurements.back().typed, "6/24");
}

TEST_F(OpenSession, notTestedNeedsItsReason) {
    MeasurementPage page(session, shell, model::Domain::Sight);
    page.refresh();
    const QString key = page.form()->rows().at(1).key;
    page.edit(key, "not tested");
    EXPECT_THAT(page.form()->rows().at(1).error.toStdString(), ::testing::HasSubstr("Say why"));
    page.edit(key, "not tested: tired");
    EXPECT_EQ(session.record().measurements.back().notTestedBecause, "tired");
    EXPECT_EQ(session.record().measurements.back().typed, "");
}

TEST_F(OpenSession, keepsAcuitiesWithAndWithoutGlassesApart) {
    MeasurementPage page(session, shell, model::Domain::Sight);
    page.refresh();
    page.edit("glasses", "without glasses");
    EXPECT_THAT(page.form()->rows().at(1).label.toStdString(), ::testing::HasSubstr("without glasses"));
    EXPECT_EQ(page.form()->rows().at(1).value, "");
    page.edit(page.form()->rows().at(1).key, "6/95");
    EXPECT_FALSE(session.record().measurements.back().withGlasses);
    page.edit("glasses", "with the usual glasses");
    EXPECT_NE(page.form()->rows().at(1).value, "6/95");
    EXPECT_NE(page.form()->rows().at(1).value, "");
}

TEST_F(OpenSession, wordsThatHoldAnAtAreNotADistance) {
    MeasurementPage page(session, shell, model::Domain::Sight);
    page.refresh();
    page.edit("glare-0", "dazzled at noon");
    EXPECT_EQ(session.record().measurements.back().typed, "dazzled at noon");
    EXPECT_EQ(session.record().measurements.back().distanceTyped, "");
}

TEST_F(OpenSession, readingTrialIsKeptLineByLineAndRefusesWhatIsNoTime) {
    ReadingPage page(session, shell);
    page.refresh();
    page.edit("version", "B");
    page.edit("distance", "4 m");
    EXPECT_THAT(page.form()->rows().at(1).error.toStdString(), ::testing::HasSubstr("Too long"));
    page.edit("distance", "25 cm");
    page.edit("line-1", "slow");
    EXPECT_THAT(page.form()->rows().at(2).error.toStdString(), ::testing::HasSubstr("Not a time"));
    EXPECT_EQ(page.form()->rows().at(2).value, "slow");
    page.edit("line-2", "6, 1");
    page.edit("line-1", "5");
    const model::Measurement &trial = session.record().measurements.back();
    EXPECT_EQ(trial.test, model::Test::ReadingTrial);
    EXPECT_EQ(trial.typed, "1.3: 5 s, 0 wrong; 1.2: 6 s, 1 wrong");
    EXPECT_EQ(trial.distanceTyped, "25 cm");
    EXPECT_EQ(trial.method, "sheet B");
    page.edit("line-1", "");
    page.edit("line-2", "");
    EXPECT_NE(session.record().measurements.back().test, model::Test::ReadingTrial);
}

TEST_F(OpenSession, legiblePageHasALineForEachLabelAndItsReason) {
    LegiblePage page(session, shell);
    page.refresh();
    ASSERT_GT(page.rows()->rows().size(), 10u);
    const QString key = page.rows()->rows().at(3).key;
    page.moved(key);
    EXPECT_EQ(page.findings()->rows().front().question, page.rows()->rows().at(3).title);
    EXPECT_FALSE(page.findings()->rows().front().reason.isEmpty());
}

TEST_F(OpenSession, removedPlaceLeavesItsThingsWithoutOne) {
    KitchenPage page(session, shell);
    page.refresh();
    const std::string place = session.record().things.front().place->text;
    page.activated(QString::fromStdString(place));
    page.act("remove");
    for (const auto &thing : session.record().things)
        EXPECT_TRUE(!thing.place || thing.place->text != place);
    EXPECT_EQ(session.record().things.size(), model::demo::nora().things.size());
}

TEST_F(OpenSession, unitsThatAreUnderstoodAreTakenAndTheRestStaysInItsField) {
    KitchenPage page(session, shell);
    page.refresh();
    const auto before = session.record().units.size();
    const auto field = [&] { return page.form()->rows().front(); };
    page.edit("units", "larder, wibble, fridge");
    ASSERT_EQ(session.record().units.size(), before + 2);
    EXPECT_EQ(field().value, "wibble");
    EXPECT_THAT(field().error.toStdString(), testing::HasSubstr("2 units taken in. No unit in it: wibble."));
    EXPECT_THAT(field().error.toStdString(), testing::HasSubstr("It goes before fridge."));
    page.edit("units", "worktop");
    ASSERT_EQ(session.record().units.size(), before + 3);
    EXPECT_EQ(session.record().units[before + 1].name, "worktop") << "where it was said";
    EXPECT_EQ(field().value, "");
    EXPECT_EQ(field().error, "");
}

TEST(Session, keepsWhatWasEditedForTheNextStart) {
    const QTemporaryDir folder;
    {
        Session session;
        session.openStore(newStore(folder), "Ada Rowan");
        ASSERT_TRUE(session.addClient("Invented Person", "P1"));
        ASSERT_TRUE(session.edit("contact", "test", [](model::Case &r) { r.client.contact = "at noon"; }));
        session.keepDraft("P1/contents/line", "4 chopped tom");
    }
    Session again;
    auto store = model::Store::open(folder.filePath("store").toStdString(), passphrase, "Ada Rowan",
                                    model::KeyCost::cheapest());
    ASSERT_TRUE(store);
    again.openStore(std::move(*store), "Ada Rowan");
    ASSERT_TRUE(again.openClient(idOf(again, "Invented")));
    EXPECT_EQ(again.record().client.contact, "at noon");
    EXPECT_EQ(again.draft("P1/contents/line"), "4 chopped tom");
}

TEST(Session, closingForgetsTheClient) {
    Session session;
    session.openPractice();
    ASSERT_TRUE(session.openClient(idOf(session, "Tilda")));
    session.close();
    EXPECT_FALSE(session.isOpen());
    EXPECT_FALSE(session.hasClient());
    EXPECT_TRUE(session.findings().all.empty());
}

// Two things of one shelf are two places to go to.
TEST(AppShell, goesToEachThingInItsOwnRow) {
    PageImageProvider pictures;
    AppShell shell({}, model::KeyCost::cheapest(), pictures);
    shell.openPracticeAtStart();
    shell.goTo("open:" + text(idOf(shell.session(), "Idris").text));
    const auto &things = shell.session().record().things;
    const auto shelf = things.front().place;
    std::vector<QString> asked;
    for (const auto &thing : things)
        if (thing.place == shelf)
            asked.push_back(text(thing.name));
    ASSERT_GE(asked.size(), 2U);
    for (const QString &name : asked) {
        shell.findDestinations(name);
        const auto rows = shell.destinations()->rows();
        const auto row = std::ranges::find_if(
            rows, [&](const ListRow &r) { return r.title == name && r.key.startsWith("thing:"); });
        ASSERT_NE(row, rows.end()) << name.toStdString();
        shell.goTo(row->key);
        EXPECT_EQ(shell.page(), "contents");
        auto *page = shell.property("pageProperties").toMap().value("vm").value<PageViewModel *>();
        ASSERT_NE(page, nullptr);
        EXPECT_EQ("thing:" + page->startRow(), row->key);
        EXPECT_EQ(std::ranges::count(page->rows()->rows(), page->startRow(), &ListRow::key), 1);
    }
}

TEST(AppShell, everyPageHasHelpOfItsOwn) {
    std::set<QString> helps;
    for (const char *page :
         {"entry", "caseload", "client", "safety", "sight", "touch", "reach", "kitchen", "appliances",
          "contents", "plan", "goals", "papers", "followup", "progress", "settings"})
        helps.insert(helpFor(page, KeyModel()));
    EXPECT_EQ(helps.size(), 16U);
}

TEST(AppShell, helpNamesTheKeysAsTheyAreSet) {
    KeyModel keys;
    EXPECT_THAT(helpFor("plan", keys).toStdString(), testing::HasSubstr("F7 says why"));
    ASSERT_EQ(keys.setSequences("why", "F4"), "");
    ASSERT_EQ(keys.setSequences("goTo", ""), "");
    const std::string changed = helpFor("plan", keys).toStdString();
    EXPECT_THAT(changed, testing::HasSubstr("F4 says why"));
    EXPECT_THAT(changed, testing::Not(testing::HasSubstr("Ctrl+G")));
    for (const char *page : {"entry", "caseload", "client", "safety", "reading", "markertest", "markerkit",
                             "kitchen", "appliances", "contents", "plan", "goals", "upkeep", "settings"})
        EXPECT_FALSE(helpFor(page, keys).contains('{')) << page;
}

// A page is filled before it is shown: the row that it starts at can take the focus.
TEST(AppShell, showsAPageWithItsRows) {
    PageImageProvider pictures;
    AppShell shell({}, model::KeyCost::cheapest(), pictures);
    shell.openPracticeAtStart();
    shell.goTo("open:" + text(idOf(shell.session(), "Idris").text));
    int shown = 0;
    QObject::connect(&shell, &ShellViewModel::pageOpened, [&] {
        auto *page = shell.property("pageProperties").toMap().value("vm").value<PageViewModel *>();
        shown = static_cast<int>(page->rows()->rows().size());
    });
    shell.goTo("thing:" + text(shell.session().record().things.back().id.text));
    EXPECT_GT(shown, 0);
}

TEST(AppShell, saysWhereSheIsByTheFirstSentenceOfALongFinding) {
    PageImageProvider pictures;
    AppShell shell({}, model::KeyCost::cheapest(), pictures);
    shell.openPracticeAtStart();
    shell.goTo("open:" + text(idOf(shell.session(), "Idris").text));
    shell.goTo("sight");
    const QString all =
        "Contrast. Weak. " + QString("Print needs more than nine percent to be seen. ").repeated(3);
    EXPECT_THAT(shell.whereAmI(all).toStdString(), testing::AllOf(testing::HasSubstr("Sight. Contrast."),
                                                                  testing::Not(testing::HasSubstr("Weak"))));
    EXPECT_THAT(shell.whereAmI("Seizures? No.").toStdString(), testing::HasSubstr("Seizures? No."));
}

TEST(AppShell, findsThePracticeCaseloadFromTheFirstPage) {
    const QTemporaryDir folder;
    PageImageProvider pictures;
    AppShell shell(folder.filePath("store").toStdString(), model::KeyCost::cheapest(), pictures);
    ASSERT_EQ(shell.page(), "entry");
    shell.findDestinations("pract");
    ASSERT_EQ(shell.destinations()->rows().size(), 1U);
    shell.goTo(shell.destinations()->rows().front().key);
    EXPECT_EQ(shell.page(), "caseload");
    EXPECT_TRUE(shell.session().isPractice());
    shell.findDestinations("pract");
    EXPECT_TRUE(shell.destinations()->rows().empty());
}

// The buttons of a page are found by typing, and pressed.
TEST(AppShell, pressesAButtonOfThePageByItsName) {
    PageImageProvider pictures;
    AppShell shell({}, model::KeyCost::cheapest(), pictures);
    shell.openPracticeAtStart();
    shell.goTo("open:" + text(idOf(shell.session(), "Idris").text));
    shell.goTo("goals");
    shell.findDestinations("new g");
    const auto &rows = shell.destinations()->rows();
    const auto row = std::ranges::find(rows, "act:new", &ListRow::key);
    ASSERT_NE(row, rows.end());
    EXPECT_EQ(row->title, "New goal");
    const auto before = shell.session().record().goals.size();
    shell.goTo("act:new");
    EXPECT_EQ(shell.page(), "goals");
    EXPECT_EQ(shell.session().record().goals.size(), before + 1);
}

TEST(AppShell, aKeyThatIsSwitchedOffIsNamedByWhatItDoes) {
    PageImageProvider pictures;
    AppShell shell({}, model::KeyCost::cheapest(), pictures);
    shell.openPracticeAtStart();
    shell.goTo("open:" + text(idOf(shell.session(), "Idris").text));
    ASSERT_EQ(shell.keys()->setSequences("nextGap", ""), "");
    shell.goTo("contents");
    auto *page = shell.property("pageProperties").toMap().value("vm").value<PageViewModel *>();
    page->edit("line", "flower");
    EXPECT_EQ(shell.message().section(QLatin1Char('.'), 0, 0), "1 thing, 1 to ask, Next gap or doubt");
    ASSERT_EQ(shell.keys()->setSequences("nextGap", "F4"), "");
    page->edit("line", "flower");
    EXPECT_EQ(shell.message().section(QLatin1Char('.'), 0, 0), "1 thing, 1 to ask, F4");
}

TEST(AppShell, comesBackToThePageWhereItWasLocked) {
    QTemporaryDir folder;
    static_cast<void>(newStore(folder));
    PageImageProvider pictures;
    AppShell shell(folder.filePath("store").toStdString(), model::KeyCost::cheapest(), pictures);
    const auto unlock = [&] {
        auto *entry = shell.property("pageProperties").toMap().value("entry").value<EntryViewModel *>();
        ASSERT_NE(entry, nullptr);
        QSignalSpy opened(&shell, &ShellViewModel::pageOpened);
        entry->unlock(QString::fromStdString(passphrase));
        ASSERT_TRUE(opened.wait(20'000));
    };
    unlock();
    EXPECT_EQ(shell.page(), "caseload");
    ASSERT_TRUE(shell.session().addClient("Invented Person", "K7"));
    shell.goTo("safety");
    shell.lock();
    EXPECT_EQ(shell.page(), "entry");
    EXPECT_FALSE(shell.session().hasClient());
    unlock();
    EXPECT_EQ(shell.page(), "safety");
    EXPECT_EQ(shell.session().record().client.code, "K7");
}

TEST(Entry, setsUpRecordsOnlyWhenAGroupOfTheCodeIsTypedBack) {
    const QTemporaryDir folder;
    Session session;
    ShellViewModel shell;
    EntryViewModel entry(session, shell, folder.filePath("store").toStdString(), model::KeyCost::cheapest());
    EXPECT_EQ(entry.stage(), "setup");
    QSignalSpy changes(&entry, &EntryViewModel::changed);
    entry.create("Ada Rowan", QString::fromStdString(passphrase), QString::fromStdString(passphrase));
    while (entry.stage() != "code")
        ASSERT_TRUE(changes.wait(20'000));
    ASSERT_EQ(entry.groups().size(), 8);
    entry.confirm("not it");
    EXPECT_FALSE(session.isOpen());
    entry.confirm(entry.groups().at(entry.askedGroup() - 1));
    EXPECT_TRUE(session.isOpen());
    EXPECT_EQ(session.author(), "Ada Rowan");
}

TEST(Entry, refusesAWrongPassphraseAndOpensWithTheRightOne) {
    const QTemporaryDir folder;
    { const auto store = newStore(folder); }
    Session session;
    ShellViewModel shell;
    EntryViewModel entry(session, shell, folder.filePath("store").toStdString(), model::KeyCost::cheapest());
    EXPECT_EQ(entry.stage(), "unlock");
    QSignalSpy wiped(&entry, &EntryViewModel::wipe);
    entry.unlock("five words that do not stand here");
    ASSERT_TRUE(wiped.wait(20'000));
    EXPECT_FALSE(session.isOpen());
    entry.unlock(QString::fromStdString(passphrase));
    ASSERT_TRUE(wiped.wait(20'000));
    EXPECT_TRUE(session.isOpen());
}

} // namespace
} // namespace app

int main(int argc, char **argv) {
    const QCoreApplication application(argc, argv); // signals of other threads need its event loop
    ::testing::InitGoogleMock(&argc, argv);
    const int result = RUN_ALL_TESTS();
    QThreadPool::globalInstance()->waitForDone(); // what a thread holds is no leak
    return result;
}
