#include "reports/platform.h"
#include "reports/writers.h"
#include <cerrno>
#include <csignal>
#include <fstream>
#include <gmock/gmock.h>
#include <sstream>
#include <sys/resource.h>
#include <sys/stat.h>
#include <unistd.h>

using namespace reports;
using model::ErrorCode;
using testing::HasSubstr;
using testing::UnorderedElementsAre;
namespace fs = std::filesystem;

namespace {

class WriteFile : public testing::Test {
protected:
    void SetUp() override {
        std::string name = (fs::temp_directory_path() / "paper-").string() + std::string(6, 'X');
        folder = ::mkdtemp(name.data());
    }
    void TearDown() override {
        fs::permissions(folder, fs::perms::owner_all);
        fs::remove_all(folder);
    }
    static std::string contents(const fs::path &path) {
        std::ostringstream text;
        text << std::ifstream(path, std::ios::binary).rdbuf();
        return text.str();
    }
    std::vector<std::string> names() const {
        std::vector<std::string> all;
        for (const auto &entry : fs::directory_iterator(folder))
            all.push_back(entry.path().filename().string());
        return all;
    }
    fs::path folder;
};

TEST(Library, thatIsNotThereGivesNothing) {
    EXPECT_EQ(fromLibrary("no_such_writer.so", "feltmarkComposePdf"), nullptr);
    EXPECT_EQ(fromLibrary("pdf_writer.so", "noSuchFunction"), nullptr);
    EXPECT_NE(fromLibrary("pdf_writer.so", "feltmarkComposePdf"), nullptr);
}

} // namespace

TEST_F(WriteFile, writesForTheOwnerOnlyAndReplacesWhole) {
    const fs::path path = folder / "paper.txt";
    ASSERT_TRUE(writeFile(path, "first, and longer"));
    ASSERT_TRUE(writeFile(path, std::string("second\0", 7)));
    EXPECT_EQ(contents(path), std::string("second\0", 7));
    struct stat status {};
    ASSERT_EQ(::stat(path.c_str(), &status), 0);
    EXPECT_EQ(status.st_mode & 0777, 0600u);
    EXPECT_THAT(names(), UnorderedElementsAre("paper.txt"));
}

TEST_F(WriteFile, saysThatTheFolderIsNotThere) {
    const auto answer = writeFile(folder / "none" / "paper.txt", "x");
    ASSERT_FALSE(answer);
    EXPECT_EQ(answer.error().code, ErrorCode::InputOutput);
    EXPECT_THAT(answer.error().sentence, HasSubstr("the folder is not there"));
    EXPECT_EQ(writeFile(folder, "x").error().code, ErrorCode::InputOutput);
}

TEST_F(WriteFile, saysThatThereIsNoRoomAndLeavesTheOldFile) {
    const fs::path path = folder / "paper.txt";
    ASSERT_TRUE(writeFile(path, "old"));
    rlimit before{};
    ASSERT_EQ(::getrlimit(RLIMIT_FSIZE, &before), 0);
    rlimit small = before;
    small.rlim_cur = 10; // takes the place of a full disk
    const auto handler = ::signal(SIGXFSZ, SIG_IGN);
    ASSERT_EQ(::setrlimit(RLIMIT_FSIZE, &small), 0);
    const auto answer = writeFile(path, std::string(1000, 'x'));
    ASSERT_EQ(::setrlimit(RLIMIT_FSIZE, &before), 0);
    ::signal(SIGXFSZ, handler);
    ASSERT_FALSE(answer);
    EXPECT_EQ(answer.error().code, ErrorCode::Full);
    EXPECT_EQ(contents(path), "old");
    EXPECT_THAT(names(), UnorderedElementsAre("paper.txt"));
}

TEST_F(WriteFile, saysThatTheFolderIsReadOnly) {
    fs::permissions(folder, fs::perms::owner_read | fs::perms::owner_exec | fs::perms::others_read |
                                fs::perms::others_exec);
    constexpr uid_t nobody = 65534; // root may write everywhere, so become somebody else for a moment
    const uid_t self = ::geteuid();
    if (self == 0) {
        ASSERT_EQ(::seteuid(nobody), 0);
    }
    const auto answer = writeFile(folder / "paper.txt", "x");
    if (self == 0) {
        ASSERT_EQ(::seteuid(self), 0);
    }
    ASSERT_FALSE(answer);
    EXPECT_EQ(answer.error().code, ErrorCode::ReadOnly);
    EXPECT_THAT(answer.error().sentence, HasSubstr("Choose another folder"));
}

TEST(FileError, tellsAFullDiskFromAReadOnlyOne) {
    EXPECT_EQ(fileError(ENOSPC, "a.pdf").code, ErrorCode::Full);
    EXPECT_EQ(fileError(EDQUOT, "a.pdf").code, ErrorCode::Full);
    EXPECT_EQ(fileError(EROFS, "a.pdf").code, ErrorCode::ReadOnly);
    EXPECT_EQ(fileError(EIO, "a.pdf").code, ErrorCode::InputOutput);
    EXPECT_THAT(fileError(ENOSPC, "a.pdf").sentence,
                HasSubstr("\"a.pdf\" was not written: the disk is full"));
}
