#include "app/command_line.h"
#include "model/demo.h"
#include "model/store.h"
#include <filesystem>
#include <fstream>
#include <gmock/gmock.h>
#include <sstream>
#include <unistd.h>

using app::WindowStart;
using ::testing::HasSubstr;
using ::testing::MatchesRegex;
namespace fs = std::filesystem;

namespace {

struct Answered {
    int status = 0;
    std::string out, err;
    std::optional<WindowStart> window;
};

Answered run(std::vector<const char *> arguments, const std::string &typed = {}) {
    std::istringstream in(typed);
    std::ostringstream out, err;
    Answered answered;
    arguments.insert(arguments.begin(), "feltmark");
    answered.status = app::runCommand(static_cast<int>(arguments.size()), arguments.data(), {in, out, err},
                                      [&](const WindowStart &start) {
                                          answered.window = start;
                                          return 0;
                                      });
    answered.out = out.str();
    answered.err = err.str();
    return answered;
}

constexpr const char *passphrase = "seven lanterns over the quiet harbour";

/// Records with one client, code K7, whose papers are plain text, and a file with their passphrase.
class Records {
public:
    Records() {
        std::string name = (fs::temp_directory_path() / "feltmark-cli-XXXXXX").string();
        m_folder = mkdtemp(name.data());
        std::ofstream(passphraseFile()) << passphrase << '\n';
        auto made = model::Store::create(store(), passphrase, "author", model::KeyCost::cheapest()).value();
        model::Case record = model::demo::nora();
        record.client.code = "K7";
        record.client.media = {false, {}, model::BrailleGrade::None, false, true};
        record.plan = planFor(record);
        EXPECT_TRUE(made.store.save({}, record, {"author", {}, "client.made"}));
    }
    ~Records() { fs::remove_all(m_folder); }
    Records(const Records &) = delete;
    Records &operator=(const Records &) = delete;

    [[nodiscard]] std::string store() const { return (m_folder / "store").string(); }
    [[nodiscard]] std::string out() const { return (m_folder / "out").string(); }
    [[nodiscard]] std::string passphraseFile() const { return (m_folder / "passphrase").string(); }

private:
    /// Everything stays where it is, without marks.
    static model::Plan planFor(const model::Case &record) {
        model::Plan plan;
        plan.id = model::newId();
        for (const model::Thing &thing : record.things) {
            model::PlanLine line;
            line.thing = thing.id;
            line.place = thing.place.value();
            line.order = static_cast<int>(plan.lines.size());
            plan.lines.push_back(line);
        }
        return plan;
    }
    fs::path m_folder;
};

/// Nothing on standard output, one sentence on one line of standard error.
void expectOneSentence(const Answered &answered, int status) {
    EXPECT_EQ(answered.status, status);
    EXPECT_EQ(answered.out, "");
    EXPECT_FALSE(answered.window);
    EXPECT_EQ(std::count(answered.err.begin(), answered.err.end(), '\n'), 1) << answered.err;
    EXPECT_EQ(answered.err.rfind("feltmark: ", 0), 0u) << answered.err;
}

} // namespace

TEST(CommandLine, opensTheWindowWithoutACommand) {
    const auto answered = run({"--store", "/some/where"});
    EXPECT_EQ(answered.status, 0);
    ASSERT_TRUE(answered.window);
    EXPECT_EQ(answered.window->store, "/some/where");
    EXPECT_FALSE(answered.window->demo);
}

TEST(CommandLine, opensTheDemo) {
    const auto answered = run({"--demo"});
    ASSERT_TRUE(answered.window);
    EXPECT_TRUE(answered.window->demo);
    EXPECT_FALSE(answered.window->store.empty());
}

TEST(CommandLine, tellsItsVersion) {
    EXPECT_THAT(run({"--version"}).out, MatchesRegex("feltmark [0-9]+\\.[0-9]+\\.[0-9]+\n"));
}

TEST(CommandLine, helpShowsEveryCommandAndExamples) {
    const auto answered = run({"--help"});
    EXPECT_EQ(answered.status, 0);
    for (const char *word : {"papers", "braille", "--store", "--version", "Examples", "Exit status"})
        EXPECT_THAT(answered.out, HasSubstr(word));
}

TEST(CommandLine, refusesAnUnknownOption) {
    expectOneSentence(run({"--colour"}), 2);
}

TEST(CommandLine, wantsToKnowWhosePapers) {
    expectOneSentence(run({"papers", "--out", "x"}), 2);
}

TEST(CommandLine, listsTheDemoClientsWhenOneIsUnknown) {
    const auto answered = run({"papers", "--demo", "nobody", "--out", "x"});
    expectOneSentence(answered, 2);
    for (const char *name : {"nobody", "nora", "idris", "tilda"})
        EXPECT_THAT(answered.err, HasSubstr(name));
    EXPECT_FALSE(fs::exists("x"));
}

TEST(CommandLine, refusesADateThatIsNone) {
    expectOneSentence(run({"papers", "--demo", "nora", "--out", "x", "--date", "2026-02-30"}), 2);
}

TEST(CommandLine, saysThatTheFolderCannotBeMade) {
    const auto answered = run({"papers", "--demo", "nora", "--out", "/dev/null/papers"});
    expectOneSentence(answered, 1);
    EXPECT_THAT(answered.err, HasSubstr("/dev/null/papers"));
}

TEST(CommandLine, saysWhereNoRecordsAre) {
    const auto answered = run({"papers", "--client", "K7", "--out", "x", "--store", "/nowhere"});
    expectOneSentence(answered, 2);
    EXPECT_THAT(answered.err, HasSubstr("/nowhere"));
}

TEST(CommandLine, writesThePapersOfAClientInTheRecords) {
    const Records records;
    const std::string store = records.store(), out = records.out(), file = records.passphraseFile();
    const auto answered =
        run({"papers", "--client", "k7", "--out", out.c_str(), "--store", store.c_str(), "--passphrase-file",
             file.c_str(), "--date", "2026-11-25", "--author", "R. Invented"});
    EXPECT_EQ(answered.status, 0) << answered.err;
    EXPECT_THAT(answered.out, HasSubstr("K7-2026-11-25-handout.txt"));
    EXPECT_TRUE(fs::exists(fs::path(out) / "K7-2026-11-25-handout.txt"));
    const auto audit =
        model::Store::open(store, passphrase, "author", model::KeyCost::cheapest()).value().audit().value();
    EXPECT_TRUE(std::any_of(audit.begin(), audit.end(), [](const model::AuditRow &row) {
        return row.what == "paper.exported" && row.author == "R. Invented";
    }));
}

TEST(CommandLine, saysThatThePassphraseIsWrong) {
    const Records records;
    std::ofstream(records.passphraseFile()) << "not the right one at all\n";
    const std::string store = records.store(), out = records.out(), file = records.passphraseFile();
    expectOneSentence(run({"papers", "--client", "K7", "--out", out.c_str(), "--store", store.c_str(),
                           "--passphrase-file", file.c_str()}),
                      1);
    EXPECT_FALSE(fs::exists(out));
}

TEST(CommandLine, saysThatNoClientHasTheCode) {
    const Records records;
    const std::string store = records.store(), out = records.out(), file = records.passphraseFile();
    const auto answered = run({"papers", "--client", "K8", "--out", out.c_str(), "--store", store.c_str(),
                               "--passphrase-file", file.c_str()});
    expectOneSentence(answered, 2);
    EXPECT_THAT(answered.err, HasSubstr("K8"));
}

TEST(CommandLine, saysThatThePassphraseFileIsNotThere) {
    const Records records;
    const std::string store = records.store(), out = records.out();
    expectOneSentence(run({"papers", "--client", "K7", "--out", out.c_str(), "--store", store.c_str(),
                           "--passphrase-file", "/nowhere/passphrase"}),
                      2);
}

TEST(CommandLine, writesBraille) {
    // UEB: "the" is dots 2346, in North American ASCII "!"; a capital letter takes dot 6, ",".
    // Source: Rules of Unified English Braille, 2nd edition 2013, sections 10.3 and 8.3.
    const auto answered = run({"braille"}, "The tin\n");
    EXPECT_EQ(answered.status, 0) << answered.err;
    EXPECT_THAT(answered.out, HasSubstr(",! T9"));
    EXPECT_EQ(answered.out.back(), '\f');
}

TEST(CommandLine, writesUncontractedBraille) {
    EXPECT_THAT(run({"braille", "--grade", "1"}, "The tin\n").out, HasSubstr(",THE TIN"));
}

TEST(CommandLine, namesTheCharacterThatBrailleCannotWrite) {
    const auto answered = run({"braille"}, "Telephone \u260E now\n");
    expectOneSentence(answered, 2);
    EXPECT_THAT(answered.err, HasSubstr("\u260E"));
}

TEST(CommandLine, wantsTextForBraille) {
    expectOneSentence(run({"braille"}, " \n"), 2);
}

TEST(CommandLine, refusesALanguageWithoutATable) {
    const auto answered = run({"braille", "--language", "de"}, "Dose\n");
    expectOneSentence(answered, 2);
    EXPECT_THAT(answered.err, HasSubstr("\"de\""));
}

TEST(CommandLine, refusesAGradeThatIsNone) {
    expectOneSentence(run({"braille", "--grade", "3"}, "tin"), 2);
}

TEST(CommandLine, refusesALineThatIsTooShort) {
    expectOneSentence(run({"braille", "--cells", "3"}, "tin"), 2);
}
