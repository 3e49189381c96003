#include "tests/check_values/check_functions.h"
#include <cmath>
#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <set>
#include <sstream>

/// Every check value of the published tables, one a line in the files beside this one, with its source.
namespace check {

namespace {

struct Row {
    std::string file, name, function;
    Input input;
    std::string expected;
    double tolerance = 0;
    std::string source;
};

std::ostream &operator<<(std::ostream &out, const Row &row) {
    return out << row.file << ": " << row.name << " (" << row.source << ")";
}

std::vector<std::string> split(const std::string &text, char between) {
    std::vector<std::string> parts;
    std::string part;
    for (const char c : text + between) {
        if (c != between) {
            part.push_back(c);
            continue;
        }
        parts.push_back(part);
        part.clear();
    }
    return parts;
}

std::vector<Row> readRows(const std::filesystem::path &file) {
    std::vector<Row> rows;
    std::ifstream stream(file);
    std::string line;
    std::getline(stream, line); // the heading
    while (std::getline(stream, line)) {
        const auto cells = split(line, '\t');
        if (cells.size() != 7) {
            ADD_FAILURE() << file << ": not seven cells: " << line;
            continue;
        }
        if (cells[1] == "left-out" || cells[1] == "no-value") // not tested, and why
            continue;
        rows.push_back({file.stem().string(), cells[0], cells[1], split(cells[2], ';'), cells[3],
                        std::stod(cells[4]), cells[6]});
    }
    return rows;
}

std::vector<std::filesystem::path> files() {
    std::vector<std::filesystem::path> all;
    for (const auto &entry : std::filesystem::directory_iterator(CHECK_VALUES))
        if (entry.path().extension() == ".tsv")
            all.push_back(entry.path());
    std::sort(all.begin(), all.end());
    return all;
}

const Functions &functions() {
    static const Functions all = [] {
        Functions joined = sightFunctions();
        for (auto more : {touchFunctions(), reachFunctions(), brailleFunctions()})
            joined.merge(more);
        return joined;
    }();
    return all;
}

bool isNumber(const std::string &text) {
    char *end = nullptr;
    (void)std::strtod(text.c_str(), &end);
    return !text.empty() && *end == '\0';
}

class CheckValues : public testing::TestWithParam<std::filesystem::path> {};

} // namespace

TEST_P(CheckValues, areWhatTheProgramComputes) {
    const auto rows = readRows(GetParam());
    ASSERT_GT(rows.size(), 20u);
    for (const Row &row : rows) {
        const auto function = functions().find(row.function);
        if (function == functions().end()) {
            ADD_FAILURE() << "No such function: " << row.function;
            continue;
        }
        const std::string found = function->second(row.input);
        if (isNumber(found) && isNumber(row.expected)) {
            EXPECT_NEAR(std::stod(found), std::stod(row.expected), row.tolerance + 1e-12) << row;
        } else {
            EXPECT_EQ(found, row.expected) << row;
        }
        EXPECT_GT(row.source.size(), 3u) << row;
    }
}

INSTANTIATE_TEST_SUITE_P(Published, CheckValues, testing::ValuesIn(files()),
                         [](const auto &file) { return file.param.stem().string(); });

TEST(CheckValues, useEveryFunctionAtLeastOnce) {
    std::set<std::string> used;
    for (const auto &file : files())
        for (const Row &row : readRows(file))
            used.insert(row.function);
    for (const auto &[name, function] : functions())
        EXPECT_EQ(used.count(name), 1u) << name;
}

} // namespace check
