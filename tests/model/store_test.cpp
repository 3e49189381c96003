#include "store_fixture.h"
#include <algorithm>
#include <fstream>
#include <thread>

using namespace model;
using ::testing::AllOf;
using ::testing::ElementsAre;
using ::testing::Field;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::Not;
using ::testing::SizeIs;

namespace {

std::vector<std::string> whatWasDone(const Store &store) {
    std::vector<std::string> codes;
    const auto rows = store.audit();
    for (const auto &row : *rows)
        codes.push_back(row.what);
    return codes;
}

class StoreRoundTrip : public StoreTest {};
class StoreRecords : public StoreTest {};
class StoreDrafts : public StoreTest {};
class StoreAudit : public StoreTest {};
class StoreSecrets : public StoreTest {};

} // namespace

TEST_F(StoreRoundTrip, givesBackWhatWasSaved) {
    const auto record = makeFilled();
    const auto store = open();
    const auto loaded = store.load(record.client.id);
    ASSERT_TRUE(loaded);
    EXPECT_EQ(*loaded, record);
    EXPECT_TRUE(store.verify());
    EXPECT_THAT(store.notices(), IsEmpty());
}

TEST_F(StoreRoundTrip, listsClientsWithoutOpeningThem) {
    auto record = makeFilled();
    auto store = open();
    ASSERT_TRUE(store.save({}, inventedCase("\xc3\x89lo\xc3\xafse Placeholder"), action("client.made")));
    const auto clients = store.caseload();
    ASSERT_TRUE(clients);
    ASSERT_THAT(*clients, SizeIs(2));
    EXPECT_EQ((*clients)[0].search, "eloise placeholder w7");
    const auto &second = (*clients)[1];
    EXPECT_EQ(second.id, record.client.id);
    EXPECT_EQ(second.name, "Wilhelmina Placeholder");
    EXPECT_EQ(second.code, "W7");
    EXPECT_FALSE(second.archived);
    EXPECT_EQ(second.lastVisit, record.visits[0].date);
    EXPECT_EQ(second.nextReview, record.goals[0].review);
}

TEST_F(StoreRoundTrip, listsNoReviewOnceTheGoalIsRated) {
    const auto record = makeFilled();
    auto store = open();
    auto after = *store.load(record.client.id);
    after.client.archived = true;
    after.ratings.push_back({.id = newId(),
                             .goal = after.goals[0].id,
                             .visit = after.visits[0].id,
                             .level = 1,
                             .evidence = "found them at once",
                             .date = after.goals[0].review});
    ASSERT_TRUE(store.save(record, after, action("goal.rated")));
    const auto clients = store.caseload();
    EXPECT_EQ((*clients)[0].nextReview, std::nullopt);
    EXPECT_TRUE((*clients)[0].archived);
}

TEST_F(StoreRoundTrip, opensOnAWorkerThread) {
    const auto record = makeFilled();
    std::optional<Store> store;
    std::thread([&] { store = open(); }).join();
    EXPECT_EQ(store->load(record.client.id), record);
    EXPECT_TRUE(store->note(action("client.viewed"), record.client.id, ""));
}

TEST_F(StoreRoundTrip, leavesOnlyItsOwnFiles) {
    makeFilled();
    { const auto store = open(); }
    EXPECT_THAT(fileNames(),
                ElementsAre("records.db", "records.head", "records.key", "records.key.bak", "records.lock"));
    for (const auto &name : fileNames())
        EXPECT_EQ(std::filesystem::status(file(name)).permissions(), std::filesystem::perms(0600)) << name;
    EXPECT_EQ(std::filesystem::status(folder).permissions(), std::filesystem::perms(0700));
}

TEST_F(StoreRoundTrip, holdsNoWordInPlainSight) {
    auto store = make();
    auto record = inventedCase("Wilhelmina Placeholder");
    ASSERT_TRUE(store.save({}, record, action("client.made")));
    ASSERT_TRUE(store.saveDraft({"visit", record.client.id, "half a sentence about barley"}));
    std::ofstream(file("planted.txt")) << "Wilhelmina";
    std::string everything;
    for (const auto &name : fileNames())
        everything += name == "planted.txt" ? "" : bytesOf(name);
    for (const auto *word : {"Wilhelmina", "Placeholder", "barley", "Oats", "client", "CREATE TABLE",
                             "A. Tester", "SQLite format 3"})
        EXPECT_THAT(everything, Not(HasSubstr(word)));
    EXPECT_THAT(everything + bytesOf("planted.txt"), HasSubstr("Wilhelmina")); // the search can find
}

TEST_F(StoreRoundTrip, keepsSettings) {
    {
        auto store = make();
        EXPECT_EQ(*store.setting("text size"), std::nullopt);
        ASSERT_TRUE(store.saveSetting("text size", "150"));
        ASSERT_TRUE(store.saveSetting("text size", "200"));
    }
    EXPECT_EQ(*open().setting("text size"), "200");
}

TEST_F(StoreRecords, carryAuthorTimeRevisionAndVisit) {
    const auto record = makeFilled();
    {
        auto store = open();
        auto after = *store.load(record.client.id);
        after.things[0].name = "pot barley";
        auto changed = action("thing.changed");
        changed.visit = record.visits[0].id;
        changed.author = "B. Tester";
        ASSERT_TRUE(store.save(record, after, changed));
    }
    auto database = raw();
    Statement row(database, "SELECT author, at, revision, visit, client FROM record WHERE id = ?",
                  record.things[0].id.text);
    ASSERT_TRUE(row.step());
    EXPECT_EQ(row.text(0), "B. Tester");
    EXPECT_TRUE(parseTime(row.text(1)));
    EXPECT_EQ(row.number(2), 2);
    EXPECT_EQ(row.text(3), record.visits[0].id.text);
    EXPECT_EQ(row.text(4), record.client.id.text);
    Statement untouched(database, "SELECT revision FROM record WHERE id = ?", record.client.id.text);
    ASSERT_TRUE(untouched.step());
    EXPECT_EQ(untouched.number(0), 1);
}

TEST_F(StoreRecords, leaveATombstoneWithoutABody) {
    const auto record = makeFilled();
    {
        auto store = open();
        auto after = *store.load(record.client.id);
        after.things.clear();
        ASSERT_TRUE(store.save(record, after, action("thing.removed")));
        EXPECT_EQ(store.load(record.client.id), after);
    }
    auto database = raw();
    Statement row(database, "SELECT removed, body, revision FROM record WHERE id = ?",
                  record.things[0].id.text);
    ASSERT_TRUE(row.step());
    EXPECT_EQ(row.number(0), 1);
    EXPECT_EQ(row.text(1), "");
    EXPECT_EQ(row.number(2), 2);
}

TEST_F(StoreRecords, comeBackWhenARemovalIsUndone) {
    const auto record = makeFilled();
    auto store = open();
    auto without = *store.load(record.client.id);
    without.things.clear();
    ASSERT_TRUE(store.save(record, without, action("thing.removed")));
    ASSERT_TRUE(store.save(without, record, action("undone")));
    EXPECT_EQ(store.load(record.client.id), record);
}

TEST_F(StoreRecords, areRefusedWhenChangedElsewhere) {
    const auto record = makeFilled();
    auto store = open();
    auto after = record;
    after.things[0].name = "pot barley";
    EXPECT_EQ(codeOf(store.save(record, after, action("thing.changed"))), ErrorCode::Changed)
        << "never loaded";
    EXPECT_EQ(*store.load(record.client.id), record) << "nothing of a refused save stays";
    EXPECT_TRUE(store.save(record, after, action("thing.changed")));
    EXPECT_EQ(whatWasDone(store).back(), "thing.changed");
}

TEST_F(StoreRecords, belongToOneClient) {
    const auto record = makeFilled();
    auto store = open();
    const auto other = inventedCase("Somebody Else");
    EXPECT_EQ(codeOf(store.save(record, other, action("client.changed"))), ErrorCode::Refused);
    auto stolen = other;
    stolen.things = record.things;
    EXPECT_EQ(codeOf(store.save({}, stolen, action("client.made"))), ErrorCode::Changed);
    EXPECT_EQ(codeOf(store.load(other.client.id)), ErrorCode::Missing);
}

TEST_F(StoreDrafts, areKeptUntilTheRecordIsSaved) {
    const auto record = makeFilled();
    {
        auto store = open();
        ASSERT_TRUE(store.saveDraft({"visit", record.client.id, "half a sent"}));
        ASSERT_TRUE(store.saveDraft({"visit", record.client.id, "half a sentence"}));
        ASSERT_TRUE(store.saveDraft({"sight", record.client.id, "6/"}));
    }
    auto store = open();
    auto drafts = *store.drafts();
    ASSERT_THAT(drafts, SizeIs(2));
    EXPECT_THAT(drafts, testing::Contains(
                            AllOf(Field(&Draft::form, "visit"), Field(&Draft::text, "half a sentence"))));

    auto after = *store.load(record.client.id);
    after.visits[0].note = "half a sentence and its end";
    auto saving = action("visit.changed");
    saving.form = "visit";
    ASSERT_TRUE(store.save(record, after, saving));
    EXPECT_THAT(*store.drafts(), ElementsAre(Field(&Draft::form, "sight")));
    ASSERT_TRUE(store.saveDraft({"sight", record.client.id, ""}));
    EXPECT_THAT(*store.drafts(), IsEmpty());
}

TEST_F(StoreDrafts, stayWhenTheSaveIsRefused) {
    const auto record = makeFilled();
    auto store = open();
    ASSERT_TRUE(store.saveDraft({"visit", record.client.id, "half a sentence"}));
    auto after = record;
    after.visits[0].note = "a sentence";
    auto saving = action("visit.changed");
    saving.form = "visit";
    ASSERT_EQ(codeOf(store.save(record, after, saving)), ErrorCode::Changed);
    EXPECT_THAT(*store.drafts(), SizeIs(1));
}

TEST_F(StoreAudit, tellsWhoDidWhat) {
    const auto record = makeFilled();
    auto store = open();
    ASSERT_TRUE(store.note(action("paper.exported"), record.client.id, "handout"));
    const auto rows = *store.audit();
    ASSERT_THAT(whatWasDone(store), ElementsAre("store.created", "store.opened", "client.made",
                                                "store.opened", "paper.exported"));
    EXPECT_EQ(rows.back().author, "A. Tester");
    EXPECT_EQ(rows.back().object, record.client.id.text);
    EXPECT_EQ(rows.back().detail, "handout");
    EXPECT_EQ(rows.back().sequence, 5);
    EXPECT_TRUE(parseTime(rows.back().at));
    EXPECT_EQ(*store.verifyAudit(), 5);
}

TEST_F(StoreAudit, holdsNoNamesOfClients) {
    makeFilled();
    const auto rows = open().audit();
    for (const auto &row : *rows)
        EXPECT_THAT(row.detail + row.object + row.what, Not(HasSubstr("Placeholder")));
}

TEST_F(StoreAudit, cannotBeChangedOrShortened) {
    makeFilled();
    auto database = raw();
    EXPECT_THROW(database.run("UPDATE audit SET author = 'nobody' WHERE seq = 1"), DatabaseError);
    EXPECT_THROW(database.run("DELETE FROM audit WHERE seq = 3"), DatabaseError);
    EXPECT_EQ(database.number("SELECT count(*) FROM audit"), 3);
}

TEST_F(StoreAudit, namesTheRowThatWasChanged) {
    makeFilled();
    {
        auto database = raw();
        database.run("DROP TRIGGER audit_is_never_changed; UPDATE audit SET author = 'nobody' WHERE seq = 2");
    }
    const auto checked = open().verifyAudit();
    ASSERT_EQ(codeOf(checked), ErrorCode::DamagedDatabase);
    EXPECT_THAT(checked.error().sentence, HasSubstr("entry 2"));
    EXPECT_EQ(codeOf(open().verify()), ErrorCode::DamagedDatabase);
}

TEST_F(StoreAudit, noticesARowTakenOut) {
    makeFilled();
    raw().run("DROP TRIGGER audit_is_never_shortened; DELETE FROM audit WHERE seq = 2");
    const auto checked = open().verifyAudit();
    ASSERT_EQ(codeOf(checked), ErrorCode::DamagedDatabase);
    EXPECT_THAT(checked.error().sentence, HasSubstr("entry 2"));
}

TEST_F(StoreAudit, noticesACutEndUntilItIsAccepted) {
    makeFilled();
    raw().run("DROP TRIGGER audit_is_never_shortened; DELETE FROM audit WHERE seq = 3");
    for (int time = 0; time < 2; ++time) {
        const auto store = open();
        ASSERT_THAT(store.notices(), ElementsAre(HasSubstr("older")));
        EXPECT_EQ(codeOf(store.verifyAudit()), ErrorCode::DamagedDatabase);
    }
    {
        auto store = open();
        ASSERT_TRUE(store.acceptNotices(action("notices.accepted")));
        EXPECT_THAT(store.notices(), IsEmpty());
        EXPECT_TRUE(store.verifyAudit());
    }
    const auto store = open();
    EXPECT_THAT(store.notices(), IsEmpty());
    EXPECT_THAT(whatWasDone(store), testing::Contains("notices.accepted"));
}

TEST_F(StoreAudit, noticesAnOlderFilePutBack) {
    const auto record = makeFilled();
    const auto older = bytesOf("records.db");
    {
        auto store = open();
        ASSERT_TRUE(store.note(action("client.viewed"), record.client.id, ""));
    }
    std::ofstream(file("records.db"), std::ios::binary) << older;
    EXPECT_THAT(open().notices(), ElementsAre(HasSubstr("older")));
}

TEST_F(StoreAudit, noticesAMissingOrDamagedHead) {
    makeFilled();
    const auto head = bytesOf("records.head");
    std::filesystem::remove(file("records.head"));
    EXPECT_THAT(open().notices(), ElementsAre(HasSubstr("records.head")));
    std::ofstream(file("records.head"), std::ios::binary) << std::string(head.size(), 'x');
    EXPECT_THAT(open().notices(), ElementsAre(HasSubstr("records.head")));
}

TEST_F(StoreAudit, bearsAHeadOfWhichOneHalfIsTorn) {
    makeFilled();
    for (const std::size_t half : {0, 1}) {
        const auto size = bytesOf("records.head").size() / 2;
        overwrite("records.head", half * size + 20, "torn");
        EXPECT_THAT(open().notices(), IsEmpty());
    }
}

TEST_F(StoreSecrets, openWithPassphraseOrRecoveryCode) {
    makeFilled();
    EXPECT_TRUE(tryOpen(passphrase));
    EXPECT_TRUE(tryOpen(recoveryCode));
    std::string spoken = recoveryCode;
    std::ranges::replace(spoken, '-', ' ');
    std::ranges::transform(spoken, spoken.begin(), [](char c) { return static_cast<char>(std::tolower(c)); });
    EXPECT_TRUE(tryOpen(spoken));
    EXPECT_THAT(open().audit()->at(4).detail, HasSubstr("recovery code"));
}

TEST_F(StoreSecrets, refuseAllElse) {
    makeFilled();
    EXPECT_EQ(codeOf(tryOpen("seven grey herons stand on Ice")), ErrorCode::WrongSecret);
    EXPECT_EQ(codeOf(tryOpen("")), ErrorCode::WrongSecret);
    EXPECT_EQ(codeOf(tryOpen("\xff\xff")), ErrorCode::WrongSecret);
    auto wrongCode = recoveryCode;
    wrongCode[0] = wrongCode[0] == 'A' ? 'B' : 'A';
    const auto refused = tryOpen(wrongCode);
    ASSERT_EQ(codeOf(refused), ErrorCode::WrongSecret);
    EXPECT_THAT(refused.error().sentence, HasSubstr("Group 1 "));
}

TEST_F(StoreSecrets, changeWithoutTouchingTheRecoveryCode) {
    const auto record = makeFilled();
    {
        auto store = open();
        ASSERT_TRUE(store.changePassphrase(newPassphrase, cheapest));
        EXPECT_EQ(store.load(record.client.id), record);
    }
    EXPECT_EQ(codeOf(tryOpen(passphrase)), ErrorCode::WrongSecret);
    EXPECT_TRUE(tryOpen(newPassphrase));
    EXPECT_TRUE(tryOpen(recoveryCode));
    EXPECT_EQ(bytesOf("records.key.bak"), bytesOf("records.key"))
        << "the copy must not open with the old one";
    EXPECT_THAT(whatWasDone(*tryOpen(newPassphrase)), testing::Contains("passphrase.changed"));
}

TEST_F(StoreSecrets, areRefusedWhenWeak) {
    EXPECT_EQ(codeOf(Store::create(folder, "too short", author, cheapest)), ErrorCode::WeakSecret);
    EXPECT_FALSE(std::filesystem::exists(folder));
    auto store = make();
    EXPECT_EQ(codeOf(store.changePassphrase("too short", cheapest)), ErrorCode::WeakSecret);
}

TEST_F(StoreSecrets, renewTheRecoveryCode) {
    makeFilled();
    const auto renewed = open().renewRecoveryCode(cheapest);
    ASSERT_TRUE(renewed);
    EXPECT_EQ(codeOf(tryOpen(recoveryCode)), ErrorCode::WrongSecret);
    EXPECT_TRUE(tryOpen(*renewed));
    EXPECT_TRUE(tryOpen(passphrase));
}

TEST_F(StoreSecrets, noticeAnOlderKeyFilePutBack) {
    makeFilled();
    const auto older = bytesOf("records.key");
    ASSERT_TRUE(open().changePassphrase(newPassphrase, cheapest));
    std::ofstream(file("records.key"), std::ios::binary) << older;
    {
        auto store = open(); // with the old passphrase
        EXPECT_THAT(store.notices(), ElementsAre(HasSubstr("older key file")));
        ASSERT_TRUE(store.changePassphrase(newPassphrase, cheapest));
        EXPECT_THAT(store.notices(), IsEmpty());
    }
    EXPECT_THAT(tryOpen(newPassphrase)->notices(), IsEmpty());
}
