#include "demo_case.h"
#include "reports/papers.h"
#include <cstdlib>
#include <fstream>
#include <gmock/gmock.h>

using namespace model;
using namespace reports;
using demo_case::day;
using demo_case::findings;

namespace {

using Make = Result<Document> (*)(const Case &, const Findings &, Date, const std::string &);

struct Whole {
    std::string client, paper;
    Make make;
};

const std::vector<Whole> wholes{{"nora", "handout", handout},        {"idris", "handout", handout},
                                {"tilda", "handout", handout},       {"idris", "household", householdSheet},
                                {"nora", "work_sheet", workSheet},   {"tilda", "progress", progressReport},
                                {"nora", "kit", kitSheet},           {"nora", "label_sheet", labelSheet},
                                {"idris", "label_sheet", labelSheet}};

} // namespace

class WholePaper : public ::testing::TestWithParam<Whole> {};
INSTANTIATE_TEST_SUITE_P(Papers, WholePaper, ::testing::ValuesIn(wholes),
                         [](const auto &of) { return of.param.client + "_" + of.param.paper; });

/// FELTMARK_REGENERATE=1 writes the expected texts anew: read the difference before it is committed.
TEST_P(WholePaper, isAsExpected) {
    const Case record = demo_case::asItStands(GetParam().client);
    const auto document = GetParam().make(record, findings(record), day, "R. Invented");
    ASSERT_TRUE(document) << document.error().sentence;
    const std::string text = writeText(*document).value();
    const std::string path =
        std::string(FELTMARK_EXPECTED) + "/" + GetParam().client + "_" + GetParam().paper + ".txt";
    if (std::getenv("FELTMARK_REGENERATE"))
        std::ofstream(path) << text;
    std::ifstream file(path);
    EXPECT_EQ(std::string(std::istreambuf_iterator<char>(file), {}), text) << path;
}
