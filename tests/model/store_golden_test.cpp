#include "store_fixture.h"
#include <algorithm>
#include <unistd.h>

using namespace model;
using ::testing::StartsWith;

namespace {

/// A store as version 1 wrote it, by `vault_case create` and `vault_case write` up to number 21. It never
/// changes: every later version must open it, and a copy of one's own is added for each version of the
/// tables.
class StoreOfVersion1 : public StoreTest {
protected:
    StoreOfVersion1() {
        std::filesystem::create_directories(folder);
        const auto golden = std::filesystem::path(FELTMARK_GOLDEN) / "version-1";
        for (const auto *name : {"records.db", "records.head", "records.key"})
            std::filesystem::copy_file(golden / name, file(name));
    }
    const std::string oldPassphrase = "correct horse battery staple eight";
    const std::string oldRecoveryCode = "Y6N5Q-KZATQ-93QN0-HZG9K-PA6WQ-RGFP7-7R0AT-83GNP";
};

} // namespace

TEST_F(StoreOfVersion1, opensWithEitherSecret) {
    EXPECT_TRUE(tryOpen(oldPassphrase));
    EXPECT_TRUE(tryOpen(oldRecoveryCode));
    EXPECT_EQ(codeOf(tryOpen(passphrase)), ErrorCode::WrongSecret);
}

TEST_F(StoreOfVersion1, stillHoldsItsClients) {
    const auto store = tryOpen(oldPassphrase);
    ASSERT_TRUE(store);
    EXPECT_TRUE(store->verify());
    EXPECT_THAT(store->notices(), testing::IsEmpty());
    const auto clients = store->caseload();
    ASSERT_THAT(*clients, testing::SizeIs(2));
    const auto first = std::ranges::find(*clients, "1", &ClientSummary::code);
    ASSERT_NE(first, clients->end());
    EXPECT_EQ(first->name, "Invented Person 1");
    auto record = store->load(first->id);
    ASSERT_TRUE(record);
    ASSERT_THAT(record->visits, testing::SizeIs(19));
    std::ranges::sort(record->visits, {}, &Visit::number);
    EXPECT_THAT(record->visits[0].note, StartsWith("2 is the number of this made-up visit."));
    EXPECT_THAT(record->visits[18].note, StartsWith("20 is the number of this made-up visit."));
    EXPECT_THAT(store->audit()->front().what, "store.created");
}

TEST(StoreOfVersion2, opensAndHasRoomForPhotographs) {
    const auto folder =
        std::filesystem::temp_directory_path() / ("feltmark-golden-" + std::to_string(::getpid()));
    std::filesystem::create_directories(folder);
    const auto golden = std::filesystem::path(FELTMARK_GOLDEN) / "version-2";
    for (const auto *name : {"records.db", "records.head", "records.key"})
        std::filesystem::copy_file(golden / name, folder / name);
    {
        auto store =
            Store::open(folder, "correct horse battery staple eight", "Ada Rowan", KeyCost::cheapest());
        ASSERT_TRUE(store);
        EXPECT_TRUE(store->verify());
        EXPECT_THAT(store->notices(), testing::IsEmpty());
        const auto clients = store->caseload();
        ASSERT_FALSE(clients->empty());
        EXPECT_THAT(*store->photos(clients->front().id), testing::IsEmpty());
    }
    std::filesystem::remove_all(folder);
}
