#include "model/migrations.h"
#include "store_fixture.h"
#include <fstream>

using namespace model;
using ::testing::HasSubstr;

namespace {

class StoreDamage : public StoreTest {
protected:
    StoreDamage() { record = makeFilled(); }
    Case record;
};
class StorePlaces : public StoreTest {};

} // namespace

TEST_F(StoreDamage, ofTheKeyFileIsToldFromAWrongPassphrase) {
    const auto sound = bytesOf("records.key");
    // magic, version, generation, salt, slot count, kind, derivation, cost, slot salt, nonce, seal, second
    // slot, checksum
    for (const std::size_t place : {0, 4, 5, 9, 25, 26, 27, 28, 32, 36, 52, 76, 124, 222}) {
        flipBit("records.key", place);
        EXPECT_EQ(codeOf(tryOpen(passphrase)), ErrorCode::DamagedKeyFile) << "byte " << place;
        std::ofstream(file("records.key"), std::ios::binary) << sound;
    }
    std::filesystem::resize_file(file("records.key"), 100);
    EXPECT_EQ(codeOf(tryOpen(passphrase)), ErrorCode::DamagedKeyFile);
    std::filesystem::resize_file(file("records.key"), 0);
    EXPECT_EQ(codeOf(tryOpen("a wrong passphrase at that")), ErrorCode::DamagedKeyFile);
}

TEST_F(StoreDamage, ofTheKeyFileIsMendedFromItsCopy) {
    EXPECT_EQ(codeOf(Store::restoreKeyFile(folder)), ErrorCode::Refused) << "nothing is wrong yet";
    flipBit("records.key", 60);
    ASSERT_EQ(codeOf(tryOpen(passphrase)), ErrorCode::DamagedKeyFile);
    ASSERT_TRUE(Store::restoreKeyFile(folder));
    EXPECT_EQ(open().load(record.client.id), record);
    EXPECT_TRUE(std::filesystem::exists(file("records.key.damaged")));

    std::filesystem::remove(file("records.key"));
    ASSERT_EQ(codeOf(tryOpen(passphrase)), ErrorCode::Missing);
    ASSERT_TRUE(Store::restoreKeyFile(folder));
    EXPECT_TRUE(tryOpen(passphrase));

    flipBit("records.key", 60);
    flipBit("records.key.bak", 61);
    EXPECT_EQ(codeOf(Store::restoreKeyFile(folder)), ErrorCode::DamagedKeyFile);
}

TEST_F(StoreDamage, ofTheFirstPageIsToldFromAWrongPassphrase) {
    flipBit("records.db", 100);
    const auto opened = tryOpen(passphrase);
    ASSERT_EQ(codeOf(opened), ErrorCode::DamagedDatabase);
    EXPECT_THAT(opened.error().sentence, HasSubstr("passphrase is right"));
    EXPECT_EQ(codeOf(tryOpen("a wrong passphrase at that")), ErrorCode::WrongSecret);
}

TEST_F(StoreDamage, ofAnyPageIsNoticedOnOpening) {
    const auto sound = bytesOf("records.db");
    for (std::size_t page = 0; page < sound.size() / 4096; ++page) {
        flipBit("records.db", page * 4096 + 2000);
        EXPECT_EQ(codeOf(tryOpen(passphrase)), ErrorCode::DamagedDatabase) << "page " << page + 1;
        std::ofstream(file("records.db"), std::ios::binary) << sound;
    }
    EXPECT_TRUE(tryOpen(passphrase));
}

TEST_F(StoreDamage, byCuttingIsNoticed) {
    for (const std::size_t size : {40000, 4096, 4000, 16, 5, 0}) {
        std::filesystem::resize_file(file("records.db"), size);
        EXPECT_EQ(codeOf(tryOpen(passphrase)), ErrorCode::DamagedDatabase) << size;
        EXPECT_EQ(std::filesystem::file_size(file("records.db")), size);
    }
}

TEST_F(StoreDamage, byPairingTwoStoresIsNoticedBeforeTheSecret) {
    flipBit("records.db", 3); // in the salt
    const auto opened = tryOpen("a wrong passphrase at that");
    ASSERT_EQ(codeOf(opened), ErrorCode::DamagedDatabase);
    EXPECT_THAT(opened.error().sentence, HasSubstr("do not belong together"));
}

TEST_F(StoreDamage, byTakingTheDatabaseAwayMakesNoNewOne) {
    std::filesystem::remove(file("records.db"));
    EXPECT_EQ(codeOf(tryOpen(passphrase)), ErrorCode::Missing);
    EXPECT_FALSE(std::filesystem::exists(file("records.db")));
}

TEST_F(StoreDamage, byAPlainFileIsRefusedAndLeavesItAsItIs) {
    const std::string plain = std::string("SQLite format 3\0", 16) + std::string(8176, '\0');
    std::ofstream(file("records.db"), std::ios::binary) << plain;
    EXPECT_EQ(codeOf(tryOpen(passphrase)), ErrorCode::NotEncrypted);
    EXPECT_EQ(bytesOf("records.db"), plain);
}

TEST_F(StoreDamage, isToldFromANewerVersion) {
    raw().run("PRAGMA user_version = 99");
    const auto newer = bytesOf("records.db");
    EXPECT_EQ(codeOf(tryOpen(passphrase)), ErrorCode::NewerVersion);
    EXPECT_EQ(bytesOf("records.db"), newer);
}

TEST_F(StoreDamage, byAnotherProgramsTablesIsNoticed) {
    raw().run("PRAGMA application_id = 7");
    EXPECT_EQ(codeOf(tryOpen(passphrase)), ErrorCode::DamagedDatabase);
}

TEST_F(StoreDamage, byAStrangeBodyIsAnErrorOfThatClientAlone) {
    {
        auto database = raw();
        Statement(database, "UPDATE record SET body = '{' WHERE id = ?", record.things[0].id.text).run();
    }
    const auto store = open();
    EXPECT_EQ(codeOf(store.load(record.client.id)), ErrorCode::DamagedDatabase);
    EXPECT_TRUE(store.caseload());
}

TEST_F(StorePlaces, areOpenedByOneInstanceOnly) {
    auto store = std::make_unique<Store>(make());
    EXPECT_EQ(codeOf(tryOpen(passphrase)), ErrorCode::Busy);
    EXPECT_EQ(codeOf(Store::create(folder, passphrase, author, cheapest)), ErrorCode::Busy);
    EXPECT_EQ(codeOf(Store::restoreKeyFile(folder)), ErrorCode::Busy);
    store.reset();
    EXPECT_TRUE(tryOpen(passphrase));
}

TEST_F(StorePlaces, areHeldByTheDatabaseTooWhenTheLockFileIsGone) {
    const auto store = make();
    std::filesystem::remove(file("records.lock"));
    EXPECT_EQ(codeOf(tryOpen(passphrase)), ErrorCode::Busy);
}

TEST_F(StorePlaces, withoutAStoreAreMissing) {
    EXPECT_FALSE(Store::existsIn(folder));
    EXPECT_EQ(codeOf(tryOpen(passphrase)), ErrorCode::Missing);
    EXPECT_FALSE(std::filesystem::exists(folder));
}

TEST_F(StorePlaces, withAStoreTakeNoSecondOne) {
    makeFilled();
    EXPECT_EQ(codeOf(Store::create(folder, newPassphrase, author, cheapest)), ErrorCode::Refused);
    std::filesystem::remove(file("records.key"));
    EXPECT_EQ(codeOf(Store::create(folder, newPassphrase, author, cheapest)), ErrorCode::Refused)
        << "it may come back";
    EXPECT_TRUE(Store::existsIn(folder));
}

/// A stop between the last two renames of the making.
TEST_F(StorePlaces, finishAStoreThatWasBeingMade) {
    const auto record = makeFilled();
    std::filesystem::rename(file("records.db"), file("records.db.new"));
    EXPECT_EQ(open().load(record.client.id), record);
}

/// A stop before the first rename.
TEST_F(StorePlaces, startAgainAfterHalfAStore) {
    makeFilled();
    std::filesystem::rename(file("records.db"), file("records.db.new"));
    std::filesystem::rename(file("records.key"), file("records.key.new"));
    std::filesystem::remove(file("records.key.bak"));
    EXPECT_FALSE(Store::existsIn(folder));
    EXPECT_TRUE(Store::create(folder, newPassphrase, author, cheapest));
    EXPECT_TRUE(tryOpen(newPassphrase));
}

TEST_F(StorePlaces, deleteWhatAKilledChangeLeft) {
    makeFilled();
    std::ofstream(file("records.key.new")) << "half a key file";
    EXPECT_TRUE(tryOpen(passphrase));
    EXPECT_FALSE(std::filesystem::exists(file("records.key.new")));
}

TEST_F(StorePlaces, thatAreReadOnlyAreNamedSo) {
    makeFilled();
    std::filesystem::remove(file("records.lock"));
    for (const auto &name : fileNames())
        std::filesystem::permissions(file(name), std::filesystem::perms(0644));
    std::filesystem::permissions(folder, std::filesystem::perms(0555));
    const auto code = [&](const std::function<std::optional<ErrorCode>()> &attempt) {
        return asOrdinaryUser([&] { return attempt() == ErrorCode::ReadOnly ? 0 : 1; });
    };
    EXPECT_EQ(code([&] { return codeOf(tryOpen(passphrase)); }), 0) << "no lock file can be made";

    std::ofstream(file("records.lock")).close(); // root may, and the lock itself then works
    std::filesystem::permissions(file("records.lock"), std::filesystem::perms(0666));
    const auto before = bytesOf("records.db");
    EXPECT_EQ(code([&] { return codeOf(tryOpen(passphrase)); }), 0) << "the database cannot be written";
    std::filesystem::permissions(file("records.db"), std::filesystem::perms(0666));
    EXPECT_EQ(code([&] { return codeOf(tryOpen(passphrase)); }), 0) << "no journal can be made";
    EXPECT_EQ(bytesOf("records.db"), before);
    EXPECT_EQ(code([&] { return codeOf(Store::create(folder / "sub", passphrase, author, cheapest)); }), 0);
}

/// The disk fails once, in the middle of a save, and works again: nothing of it is kept, and the next try
/// succeeds.
TEST_F(StorePlaces, goOnAfterAFailedWrite) {
    const auto record = makeFilled();
    const auto size = std::filesystem::file_size(file("records.db"));
    const auto failedStep = withSmallFiles([&](const auto &limit) {
        auto store = open();
        auto after = *store.load(record.client.id);
        after.visits[0].note = std::string(200'000, 'n');
        limit(size);
        if (codeOf(store.save(record, after, action("visit.changed"))) != ErrorCode::InputOutput)
            return 1;
        limit(std::nullopt);
        if (store.load(record.client.id) != record)
            return 2;
        if (!store.save(record, after, action("visit.changed")) || store.load(record.client.id) != after)
            return 3;
        return store.verify() ? 0 : 4;
    });
    EXPECT_EQ(failedStep, 0);
    EXPECT_EQ(open().load(record.client.id)->visits[0].note.size(), 200'000U);
}
