#include "demo_case.h"
#include "pdf_reading.h"
#include "reports/papers.h"
#include <filesystem>
#include <fstream>
#include <gmock/gmock.h>
#include <sys/stat.h>
#include <unistd.h>

using namespace model;
using namespace reports;
using demo_case::day;
using demo_case::findings;
using demo_case::planned;
using ::testing::HasSubstr;
using ::testing::Not;
namespace fs = std::filesystem;

namespace {

/// A folder of its own that goes when the test ends.
class Folder {
public:
    Folder() {
        std::string name = (fs::temp_directory_path() / "feltmark-papers-XXXXXX").string();
        m_path = mkdtemp(name.data());
    }
    ~Folder() {
        fs::permissions(m_path, fs::perms::owner_all);
        fs::remove_all(m_path);
    }
    Folder(const Folder &) = delete;
    Folder &operator=(const Folder &) = delete;
    [[nodiscard]] const fs::path &path() const { return m_path; }

private:
    fs::path m_path;
};

Case textOnly(Case record) {
    record.client.media = {false, {}, BrailleGrade::None, false, true};
    return record;
}

} // namespace

TEST(PaperFiles, areNamedByCodeAndDateAndNeverByName) {
    Case record = textOnly(planned("nora"));
    record.client.code = "K7/b";
    record.client.name = "Nora Somebody";
    const auto written = papers(record, findings(record), day, {}).value();
    ASSERT_EQ(written.front().fileName, "K7-b-2026-11-25-handout.txt");
    for (const Paper &paper : written)
        EXPECT_THAT(paper.fileName, Not(HasSubstr("ora")));
}

TEST(PaperFiles, comeInTheMediaThatTheClientWants) {
    Case record = textOnly(planned("nora"));
    record.client.media.web = true;
    const auto written = papers(record, findings(record), day, {}).value();
    for (const Paper &paper : written)
        EXPECT_TRUE(paper.fileName.ends_with(".txt") || paper.fileName.ends_with(".html")) << paper.fileName;
}

// Letters of 48 points with margins of an inch leave some fifteen letters to a line.
TEST(PaperFiles, haveNarrowMarginsWhereLettersAreVeryLarge) {
    Case record = planned("nora");
    record.client.media = {true, {}, BrailleGrade::None, false, false};
    const auto leftOf = [&](double size) {
        record.client.media.printSize = Points{size};
        const auto written = papers(record, findings(record), day, {}).value();
        const std::string boxes = pdf_reading::output("pdftotext -bbox -l 1 PDF -", written.front().bytes);
        const std::size_t at = boxes.find("xMin=\"");
        return std::stod(boxes.substr(at + 6));
    };
    constexpr double pointsPerMm = 72 / 25.4;
    EXPECT_NEAR(leftOf(28), 25.4 * pointsPerMm, 3);
    EXPECT_NEAR(leftOf(48), 15 * pointsPerMm, 3);
}

TEST(PaperFiles, needACode) {
    Case record = textOnly(planned("nora"));
    record.client.code.clear();
    EXPECT_EQ(papers(record, findings(record), day, {}).error().code, ErrorCode::Missing);
}

TEST(PaperFiles, needAMedium) {
    Case record = textOnly(planned("nora"));
    record.client.media.plainText = false;
    EXPECT_EQ(papers(record, findings(record), day, {}).error().code, ErrorCode::Missing);
}

TEST(PaperFiles, tellHowFarTheyAre) {
    std::vector<double> heard;
    const auto listen = [&](double done, const std::string &) {
        heard.push_back(done);
        return true;
    };
    const Case record = textOnly(planned("nora"));
    const auto written = papers(record, findings(record), day, listen).value();
    EXPECT_EQ(heard.size(), written.size() + 1);
    EXPECT_EQ(heard.front(), 0.0);
    EXPECT_EQ(heard.back(), 1.0);
    EXPECT_TRUE(std::is_sorted(heard.begin(), heard.end()));
}

TEST(PaperFiles, canBeStopped) {
    int heard = 0;
    const Case record = textOnly(planned("nora"));
    const auto written =
        papers(record, findings(record), day, [&](double, const std::string &) { return ++heard < 2; });
    ASSERT_FALSE(written);
    EXPECT_EQ(written.error().code, ErrorCode::Refused);
    EXPECT_EQ(written.error().sentence, "Stopped.");
    EXPECT_EQ(heard, 2);
}

TEST(PaperFiles, areReadableByTheOwnerOnly) {
    const Folder folder;
    const fs::path out = folder.path() / "new" / "papers";
    ASSERT_TRUE(writePapers({{"K7-a.txt", "A", "words"}}, out));
    struct stat file {
    }, made{};
    ASSERT_EQ(stat((out / "K7-a.txt").c_str(), &file), 0);
    ASSERT_EQ(stat(out.c_str(), &made), 0);
    EXPECT_EQ(file.st_mode & 0777, 0600u);
    EXPECT_EQ(made.st_mode & 0777, 0700u);
    std::ifstream read(out / "K7-a.txt");
    EXPECT_EQ(std::string(std::istreambuf_iterator<char>(read), {}), "words");
}

TEST(PaperFiles, sayWhereTheyCannotBeWritten) {
    const Folder folder;
    std::ofstream(folder.path() / "file") << "in the way";
    const auto done = writePapers({{"K7-a.txt", "A", "words"}}, folder.path() / "file");
    ASSERT_FALSE(done);
    EXPECT_EQ(done.error().code, ErrorCode::ReadOnly);
    EXPECT_THAT(done.error().sentence, HasSubstr("file"));
}
