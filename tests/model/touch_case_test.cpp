#include <array>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <gmock/gmock.h>
#include <unistd.h>

namespace {

using testing::EndsWith;
using testing::HasSubstr;
using testing::MatchesRegex;
using testing::StartsWith;

struct Ran {
    std::string output;
    int code = 0;
};

class TouchCase : public testing::Test {
protected:
    TouchCase() {
        m_folder = std::filesystem::temp_directory_path() / ("touch-case-" + std::to_string(getpid()));
        std::filesystem::create_directories(m_folder);
        write("marks.json", R"({"markers": [{"name": "dot", "size": 0, "height": 0, "texture": 0},
            {"name": "bar", "size": 3, "height": 2, "texture": 0},
            {"name": "felt", "size": 4, "height": 0, "texture": 4}]})");
    }
    ~TouchCase() override { std::filesystem::remove_all(m_folder); }

    void write(const std::string &name, const std::string &text) const {
        std::ofstream(m_folder / name) << text;
    }
    [[nodiscard]] std::string file(const std::string &name) const { return (m_folder / name).string(); }
    [[nodiscard]] Ran run(const std::string &arguments, const std::string &answers) const {
        write("answers", answers);
        const std::string command =
            std::string(TOUCH_CASE_PROGRAM) + " " + arguments + " 2>&1 < " + file("answers");
        FILE *pipe = popen(command.c_str(), "r");
        Ran ran;
        std::array<char, 4096> part{};
        while (const std::size_t count = fread(part.data(), 1, part.size(), pipe))
            ran.output.append(part.data(), count);
        ran.code = pclose(pipe) / 256;
        return ran;
    }

private:
    std::filesystem::path m_folder;
};

std::string times(int count, const std::string &line) {
    std::string all;
    for (int i = 0; i < count; ++i)
        all += line;
    return all;
}

} // namespace

TEST_F(TouchCase, asksForAPairAndStopsWhenTold) {
    const Ran ran = run(file("marks.json"), "quit\n");
    EXPECT_THAT(ran.output,
                MatchesRegex("give [0-2] [0-2]\nset 0 weakest none 0.00 trials 0 reason stopped\n"));
    EXPECT_EQ(ran.code, 0);
}

TEST_F(TouchCase, endsAtTheLimit) {
    const Ran ran = run(file("marks.json") + " --limit 5", times(5, "unsure\n"));
    EXPECT_THAT(ran.output, EndsWith("set 0 weakest none 0.00 trials 5 reason limit\n"));
}

TEST_F(TouchCase, givesARepeatedTrialAgain) {
    const Ran ran = run(file("marks.json"), "repeat\nquit\n");
    const std::string first = ran.output.substr(0, ran.output.find('\n') + 1);
    EXPECT_THAT(ran.output, StartsWith(first + first + "set"));
}

TEST_F(TouchCase, saysTheSameForTheSameAnswersAndSeed) {
    const std::string answers = times(30, "different\nsame\n");
    const Ran once = run(file("marks.json") + " --seed 7 --limit 60", answers);
    EXPECT_EQ(once.output, run(file("marks.json") + " --seed 7 --limit 60", answers).output);
    EXPECT_NE(once.output, run(file("marks.json") + " --seed 8 --limit 60", answers).output);
    EXPECT_THAT(once.output, HasSubstr("reason "));
}

TEST_F(TouchCase, refusesBadInputInOneLine) {
    write("few.json", R"({"markers": [{"name": "dot", "size": 0, "height": 0, "texture": 0}]})");
    write("bad.json", R"({"markers": [{"name": "dot", "size": "big", "height": 0, "texture": 0}]})");
    const std::pair<std::string, std::string> rows[] = {
        {file("few.json"), "2 to 16 marks"},
        {file("bad.json"), "markers[0].size"},
        {file("none.json"), "none.json"},
        {file("marks.json") + " --limit 0", "limit"},
        {file("marks.json") + " --credible 2", "certainty"},
        {file("marks.json") + " --seed x", "--seed"},
    };
    for (const auto &[arguments, part] : rows) {
        const Ran ran = run(arguments, "");
        EXPECT_EQ(ran.code, 2) << arguments;
        EXPECT_THAT(ran.output, HasSubstr(part));
        EXPECT_EQ(std::count(ran.output.begin(), ran.output.end(), '\n'), 1) << ran.output;
    }
    const Ran ran = run(file("marks.json"), "maybe\n");
    EXPECT_EQ(ran.code, 2);
    EXPECT_THAT(ran.output, HasSubstr("line 1"));
}
