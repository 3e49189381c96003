#include "store_fixture.h"
#include <cstdlib>
#include <dlfcn.h>
#include <string_view>

using namespace model;

namespace {

class StoreBesideAnotherSqlite : public StoreTest {
protected:
    [[nodiscard]] static bool anotherIsPreloaded() {
        const char *preloaded = std::getenv("LD_PRELOAD");
        return preloaded != nullptr && std::string_view(preloaded).find("sqlite3") != std::string_view::npos;
    }
};

} // namespace

/// Run twice: as it is, when nothing of SQLite may be visible, and with the system's SQLite loaded first.
TEST_F(StoreBesideAnotherSqlite, encryptsAllTheSame) {
    EXPECT_EQ(::dlsym(RTLD_DEFAULT, "sqlite3_open_v2") != nullptr, anotherIsPreloaded());
    const auto record = makeFilled();
    EXPECT_EQ(open().load(record.client.id), record);
    EXPECT_THAT(bytesOf("records.db"), testing::Not(testing::HasSubstr("Placeholder")));
    EXPECT_THAT(bytesOf("records.db"), testing::Not(testing::StartsWith("SQLite format 3")));
}
