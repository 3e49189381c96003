#include "model/solve.h"
#include "tests/check/json_field.h"
#include "tests/check/plan_files.h"
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <gmock/gmock.h>
#include <random>

/// Case files spoilt at random: each is refused in one line that names the file, or read; and what is read is
/// solved to a legal plan or to what is short.
namespace {

using namespace model;
using nlohmann::json;

/// FELTMARK_FUZZ_ROUNDS asks for more.
int rounds() {
    constexpr int usual = 250;
    const char *asked = std::getenv("FELTMARK_FUZZ_ROUNDS");
    return asked == nullptr ? usual : std::max(usual, std::atoi(asked));
}

class Spoiler {
public:
    explicit Spoiler(std::uint64_t seed) : m_engine(seed) {}

    std::string spoilText(std::string text) {
        for (std::size_t k = below(3) + 1; k > 0; --k)
            spoilOnce(text);
        return text;
    }

    json spoilValue(json whole) {
        for (std::size_t k = below(3) + 1; k > 0; --k)
            spoilInside(whole);
        return whole;
    }

private:
    std::size_t below(std::size_t count) { return count == 0 ? 0 : m_engine() % count; }

    void spoilOnce(std::string &text) {
        const std::size_t at = below(text.size()), length = below(40);
        switch (below(5)) {
        case 0:
            text[at] = static_cast<char>(below(256));
            break;
        case 1:
            text.erase(at, length);
            break;
        case 2:
            text.insert(at, text.substr(below(text.size()), length));
            break;
        case 3:
            text.resize(at);
            break;
        default:
            text.insert(at, std::string(length, "[{\"9-e,"[below(7)]));
        }
        if (text.empty())
            text = " ";
    }

    json strange() {
        static const std::vector<json> all{nullptr,
                                           true,
                                           0,
                                           -1,
                                           1,
                                           3,
                                           1e-9,
                                           1e300,
                                           1000000,
                                           -1000000,
                                           4294967296,
                                           0.5,
                                           "",
                                           "F",
                                           "C",
                                           "dry",
                                           "freezer",
                                           json::array(),
                                           json::object(),
                                           json::array({1, 2}),
                                           18446744073709551615ULL,
                                           "\n\x01\xc3\xa9",
                                           9.99e3};
        return all[below(all.size())];
    }

    void spoilInside(json &value) {
        if (!value.is_structured() || value.empty() || below(9) == 0) {
            value = strange();
            return;
        }
        auto inner = value.begin();
        std::advance(inner, static_cast<std::ptrdiff_t>(below(value.size())));
        if (below(12) == 0)
            value.erase(inner);
        else if (value.is_array() && below(12) == 0)
            value.push_back(json(*inner));
        else
            spoilInside(*inner);
    }

    std::mt19937_64 m_engine;
};

class ScratchFile {
public:
    ScratchFile()
        : m_path(std::filesystem::temp_directory_path() /
                 ("plan_fuzz_" + std::to_string(reinterpret_cast<std::uintptr_t>(this)) + ".json")) {}
    ScratchFile(const ScratchFile &) = delete;
    ScratchFile &operator=(const ScratchFile &) = delete;
    ~ScratchFile() { std::filesystem::remove(m_path); }
    void write(const std::string &text) const { std::ofstream(m_path, std::ios::binary) << text; }
    [[nodiscard]] std::string path() const { return m_path.string(); }

private:
    std::filesystem::path m_path;
};

void expectPlanOrShortage(const Problem &problem) {
    SolveOptions options;
    options.moves = 500;
    options.seeds = 1;
    const Solution solution = solve(problem, options);
    if (!solution.placement) {
        EXPECT_FALSE(shortages(problem).empty());
        return;
    }
    EXPECT_TRUE(brokenRules(problem, *solution.placement).empty());
    EXPECT_EQ(evaluate(problem, *solution.placement), solution.terms);
}

/// True if it was read.
bool readOrRefused(const ScratchFile &file) {
    try {
        expectPlanOrShortage(check::readPlanCase(file.path()).problem);
        return true;
    } catch (const check::BadInput &wrong) {
        const std::string line = wrong.what();
        EXPECT_EQ(line.rfind(file.path() + ": ", 0), 0U) << line;
        EXPECT_EQ(line.find('\n'), std::string::npos) << line;
        return false;
    }
}

json kitchen() {
    return check::readJson(FELTMARK_TEST_DATA "/plan-cases/kitchen-25-11.json");
}

TEST(PlanCaseFuzz, refusesSpoiltTextInOneLineOrSolvesIt) {
    const ScratchFile file;
    const std::string text = kitchen().dump();
    int read = 0;
    for (int round = 1; round <= rounds(); ++round) {
        SCOPED_TRACE(round);
        file.write(Spoiler(round).spoilText(text));
        read += readOrRefused(file);
        if (HasFailure())
            return;
    }
    EXPECT_LT(read, rounds());
}

TEST(PlanCaseFuzz, refusesStrangeValuesInOneLineOrSolvesThem) {
    const ScratchFile file;
    const json whole = kitchen();
    int read = 0;
    for (int round = 1; round <= rounds(); ++round) {
        SCOPED_TRACE(round);
        file.write(Spoiler(round).spoilValue(whole).dump());
        read += readOrRefused(file);
        if (HasFailure())
            return;
    }
    EXPECT_GT(read, 0);
    EXPECT_LT(read, rounds());
}

} // namespace
