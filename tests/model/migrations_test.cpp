#include "model/migrations.h"
#include "store_fixture.h"
#include <fstream>

using namespace model;

namespace {

/// Two invented steps after the real ones.
void addColumn(Database &database) {
    database.run("ALTER TABLE draft ADD COLUMN colour TEXT NOT NULL DEFAULT 'none'");
}
void failHalfway(Database &database) {
    database.run("CREATE TABLE halfway(id INTEGER)");
    database.run("INSERT INTO nowhere VALUES(1)");
}
void breakForeignKeys(Database &database) {
    database.run(
        "PRAGMA defer_foreign_keys = ON; DROP INDEX record_of_client; UPDATE record SET client = 'gone'");
}

std::vector<Migration> stepsWith(std::initializer_list<Migration> more) {
    std::vector<Migration> steps(migrations().begin(), migrations().end());
    steps.insert(steps.end(), more);
    return steps;
}

std::string schemaOf(Database &database) {
    Statement rows(database, "SELECT sql FROM sqlite_master WHERE sql IS NOT NULL ORDER BY name");
    std::string all;
    while (rows.step())
        all += rows.text(0) + ";\n";
    return all;
}

class StoreMigration : public StoreTest {
protected:
    Result<void> migrateTo(const std::vector<Migration> &steps) {
        auto database = raw();
        return migrate(database, steps, [this](std::int64_t version) {
            backedUp.push_back(version);
            return Result<void>();
        });
    }
    std::vector<std::int64_t> backedUp;
    const std::int64_t newest = static_cast<std::int64_t>(migrations().size());
};

} // namespace

TEST_F(StoreMigration, goesOneVersionUpAndKeepsTheRecords) {
    const auto record = makeFilled();
    ASSERT_TRUE(migrateTo(stepsWith({addColumn})));
    EXPECT_THAT(backedUp, testing::ElementsAre(newest));
    auto database = raw();
    EXPECT_EQ(database.number("PRAGMA user_version"), newest + 1);
    EXPECT_EQ(database.number("SELECT count(*) FROM record WHERE removed = 0"), 7);
    EXPECT_EQ(database.number("SELECT count(colour) FROM draft"), 0);
}

TEST_F(StoreMigration, doesNothingWhenThereIsNothingToDo) {
    makeFilled();
    ASSERT_TRUE(migrateTo(stepsWith({})));
    EXPECT_THAT(backedUp, testing::IsEmpty());
}

TEST_F(StoreMigration, isRolledBackWholeWhenAStepFails) {
    const auto record = makeFilled();
    std::string before;
    {
        auto database = raw();
        before = schemaOf(database);
    }
    EXPECT_THROW((void)migrateTo(stepsWith({addColumn, failHalfway})), DatabaseError);
    {
        auto database = raw();
        EXPECT_EQ(schemaOf(database), before);
        EXPECT_EQ(database.number("PRAGMA user_version"), newest);
    }
    EXPECT_EQ(open().load(record.client.id), record);
}

TEST_F(StoreMigration, isRolledBackWhenRecordsWouldBelongToNobody) {
    const auto record = makeFilled();
    EXPECT_EQ(codeOf(migrateTo(stepsWith({breakForeignKeys}))), ErrorCode::DamagedDatabase);
    EXPECT_EQ(open().load(record.client.id), record);
}

TEST_F(StoreMigration, stopsWhenTheBackupFails) {
    makeFilled();
    auto database = raw();
    const auto migrated = migrate(database, stepsWith({addColumn}), [](std::int64_t) -> Result<void> {
        return fail(ErrorCode::Full, "The disk is full.");
    });
    EXPECT_EQ(codeOf(migrated), ErrorCode::Full);
    EXPECT_EQ(database.number("PRAGMA user_version"), newest);
}

TEST_F(StoreMigration, backsUpIntoASoundEncryptedFile) {
    makeFilled();
    std::ofstream(file("copy.db")).close();
    {
        auto database = raw();
        const auto key = SecretBytes::random(32);
        database.backUpTo(file("copy.db"), key, {1, 2, 3});
        Database copy(file("copy.db"), key, {1, 2, 3}, Journal::Delete);
        EXPECT_EQ(copy.number("SELECT count(*) FROM record"), database.number("SELECT count(*) FROM record"));
    }
    EXPECT_THAT(bytesOf("copy.db"), testing::Not(testing::HasSubstr("Placeholder")));
}

TEST_F(StoreMigration, takesAStoreOfVersion1ToPhotographs) {
    makeFilled();
    {
        auto database = raw();
        database.run("DROP TABLE photo; PRAGMA user_version = 1");
    }
    ASSERT_TRUE(migrateTo({migrations().begin(), migrations().end()}));
    EXPECT_THAT(backedUp, testing::ElementsAre(1));
    auto database = raw();
    EXPECT_EQ(database.number("PRAGMA user_version"), newest);
    EXPECT_EQ(database.number("SELECT count(*) FROM photo"), 0);
    EXPECT_EQ(database.number("SELECT count(*) FROM record WHERE removed = 0"), 7);
}
