#include "model/evaluate.h"
#include "model/solve.h"
#include "tests/check/json_field.h"
#include "tests/check/plan_files.h"
#include <array>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <gmock/gmock.h>

namespace {

using nlohmann::json;
using testing::AllOf;
using testing::HasSubstr;

/// A file that goes when the test is over.
class ScratchFile {
public:
    explicit ScratchFile(const std::string &text)
        : m_path(std::filesystem::temp_directory_path() /
                 ("plan_files_test_" + std::to_string(reinterpret_cast<std::uintptr_t>(this)) + ".json")) {
        std::ofstream(m_path) << text;
    }
    ScratchFile(const ScratchFile &) = delete;
    ScratchFile &operator=(const ScratchFile &) = delete;
    ~ScratchFile() { std::filesystem::remove(m_path); }
    [[nodiscard]] std::string path() const { return m_path.string(); }

private:
    std::filesystem::path m_path;
};

json kitchen() {
    return check::readJson(FELTMARK_TEST_DATA "/plan-cases/kitchen-25-11.json");
}

std::string refusal(const std::string &text) {
    const ScratchFile file(text);
    try {
        (void)check::readPlanCase(file.path());
        return "";
    } catch (const check::BadInput &wrong) {
        return wrong.what();
    }
}

struct BadField {
    const char *name;
    const char *pointer; // to the field to be replaced, or removed if `value` is discarded
    const char *value;   // JSON
    const char *complaint;
};
class BadCase : public testing::TestWithParam<BadField> {};

TEST_P(BadCase, isRefusedInOneLineThatNamesTheField) {
    json changed = kitchen();
    const json::json_pointer where(GetParam().pointer);
    if (std::string(GetParam().value).empty())
        changed[where.parent_pointer()].erase(where.back());
    else
        changed[where] = json::parse(GetParam().value);
    const std::string line = refusal(changed.dump());
    EXPECT_THAT(line, HasSubstr(GetParam().complaint));
    EXPECT_EQ(line.find('\n'), std::string::npos);
}

INSTANTIATE_TEST_SUITE_P(
    Fields, BadCase,
    testing::Values(
        BadField{"widthZero", "/items/3/width_cm", "0", "items[3].width_cm: is 0, must be over 0"},
        BadField{"widthNegative", "/places/1/width_cm", "-4", "places[1].width_cm: is -4, must be over 0"},
        BadField{"widthText", "/items/3/width_cm", "\"7\"", "items[3].width_cm: must be a number"},
        BadField{"widthNull", "/items/3/width_cm", "null", "items[3].width_cm: must be a number"},
        BadField{"widthMissing", "/items/3/width_cm", "", "items[3].width_cm: is missing"},
        BadField{"widthHuge", "/items/3/width_cm", "1e30", "items[3].width_cm: is 1e+30"},
        BadField{"weightHuge", "/items/0/weight_kg", "1e99",
                 "items[0].weight_kg: is 1e+99, must be over 0 and at most 1000"},
        BadField{"weightZero", "/items/0/weight_kg", "0", "items[0].weight_kg: is 0, must be over 0"},
        BadField{"usesNegative", "/items/0/uses_per_week", "-1", "items[0].uses_per_week: is -1"},
        BadField{"itemTwice", "/items/4/id", "3", "items[4].id: is 3, which is taken already"},
        BadField{"placeTwice", "/places/4/id", "0", "places[4].id: is 0, which is taken already"},
        BadField{"storageUnknown", "/items/0/storage", "\"cellar\"",
                 "items[0].storage: is \"cellar\", must be one of"},
        BadField{"klassUnknown", "/items/0/klass", "\"X\"", "items[0].klass: is \"X\""},
        BadField{"kindUnknown", "/places/0/kind", "\"hook\"", "places[0].kind: is \"hook\""},
        BadField{"areaUnknown", "/items/0/area", "\"attic\"", "items[0].area: is \"attic\""},
        BadField{"keepTooHigh", "/items/0/keep", "4", "items[0].keep: is 4, must be from 0 to 3"},
        BadField{"keepFraction", "/items/0/keep", "1.5", "items[0].keep: must be a whole number"},
        BadField{"currentUnknown", "/items/0/current", "99",
                 "items[0].current: is 99, and no place has that id"},
        BadField{"booleanNumber", "/items/0/glass", "1", "items[0].glass: must be true or false"},
        BadField{"confusionShort", "/marker_confusion/2", "[1, 0.5]",
                 "marker_confusion[2]: has 2 entries, must have 9"},
        BadField{"confusionRows", "/marker_confusion", "[[1]]", "marker_confusion: has 1 rows, must have 9"},
        BadField{"confusionOverOne", "/marker_confusion/0/1", "1.2", "marker_confusion[0][1]: is 1.2"},
        BadField{"missShort", "/marker_miss", "[0.1]", "marker_miss: has 1 entries, must have 9"},
        BadField{"reservedUnknown", "/reserved/hazard", "77",
                 "reserved.hazard: is 77, and no marker has that id"},
        BadField{"reservedTwice", "/reserved/hazard", "5", "which has another meaning already"},
        BadField{"kneesAboveShoulder", "/client/knuckle_cm", "150",
                 "client.knuckle_cm: is above the shoulder"},
        BadField{"reachTurned", "/client/reach_low_cm", "195", "client.reach_low_cm: is above reach_high_cm"},
        BadField{"noItems", "/items", "[]", "items: is empty"},
        BadField{"noPlaces", "/places", "[]", "places: is empty"},
        BadField{"itemsObject", "/items", "{}", "items: must be a list"},
        BadField{"noClient", "/client", "", "client: is missing"},
        BadField{"otherVersion", "/version", "2", "version: is 2"}),
    [](const auto &param) { return std::string(param.param.name); });

TEST(PlanCaseFile, holdsThingsOfTheSameNameAndNeedsNoMark) {
    json alike = kitchen();
    for (json &item : alike["items"])
        item["name"] = "tin";
    alike["markers"] = alike["marker_confusion"] = alike["marker_miss"] = json::array();
    alike["reserved"] = json::object();
    const ScratchFile file(alike.dump());
    const model::Problem problem = check::readPlanCase(file.path()).problem;
    model::SolveOptions options;
    options.moves = 5'000;
    const model::Solution solution = model::solve(problem, options);
    ASSERT_TRUE(solution.placement);
    EXPECT_TRUE(model::brokenRules(problem, *solution.placement).empty());
    EXPECT_THAT(solution.placement->code, testing::Each(0));
}

TEST(PlanCaseFile, isRefusedIfItIsNoJson) {
    EXPECT_THAT(refusal("{\"client\": NaN}"), HasSubstr("is not JSON"));
    EXPECT_THAT(refusal("{\"client\": NaN}"), HasSubstr("line 1, sign 1"));
    EXPECT_THAT(refusal("{\"client\": NaN}"), Not(HasSubstr("exception")));
    EXPECT_THAT(refusal("{\n \"items\" 3}"), HasSubstr("line 2"));
    EXPECT_THAT(refusal("[1, 2]"), HasSubstr("must hold one JSON object"));
    EXPECT_THAT(refusal(""), HasSubstr("empty"));
}

TEST(PlanCaseFile, isRefusedIfAKeyIsThereTwice) {
    EXPECT_THAT(refusal("{\"items\": [1], \"places\": [], \"items\": []}"),
                HasSubstr("the key \"items\" is there twice"));
    EXPECT_THAT(refusal("{\"client\": {\"knuckle_cm\": 1, \"knuckle_cm\": 2}}"), HasSubstr("there twice"));
    EXPECT_THAT(refusal("{\"client\": {\"a\": 1}, \"areas\": {\"a\": 1}}"), Not(HasSubstr("twice")));
}

TEST(PlanCaseFile, isRefusedIfItIsNotThere) {
    EXPECT_THROW((void)check::readPlanCase("/nowhere/kitchen.json"), check::BadInput);
    EXPECT_THROW((void)check::readPlanCase("/"), check::BadInput);
}

TEST(PlanCaseFile, takesReservedMarkersOutOfTheCodes) {
    const check::PlanCase planCase = check::readPlanCase(FELTMARK_TEST_DATA "/plan-cases/kitchen-25-11.json");
    ASSERT_EQ(planCase.problem.markers.size(), 7U); // nine less those of hazard and allergen
    EXPECT_EQ(planCase.problem.markers[6].name, "braille label");
    EXPECT_EQ(planCase.problem.confusion.size(), 7U);
    EXPECT_EQ(planCase.problem.confusion[6].size(), 7U);
    EXPECT_EQ(planCase.problem.confusion[6][6], 0.03);
}

struct BadPlan {
    const char *name;
    const char *pointer, *value, *complaint;
};
class BadPlacement : public testing::TestWithParam<BadPlan> {};

TEST_P(BadPlacement, isRefused) {
    const check::PlanCase planCase = check::readPlanCase(FELTMARK_TEST_DATA "/plan-cases/kitchen-25-11.json");
    json plan = check::readJson(FELTMARK_TEST_DATA "/plan-cases/kitchen-25-11.best.json");
    plan[json::json_pointer(GetParam().pointer)] = json::parse(GetParam().value);
    const ScratchFile file(plan.dump());
    try {
        (void)check::readPlacement(file.path(), planCase);
        FAIL() << "accepted";
    } catch (const check::BadInput &wrong) {
        EXPECT_THAT(wrong.what(), AllOf(HasSubstr(file.path()), HasSubstr(GetParam().complaint)));
    }
}

INSTANTIATE_TEST_SUITE_P(
    Fields, BadPlacement,
    testing::Values(BadPlan{"short", "/place", "[1, 2]", "place: has 2 entries, but the case has 25"},
                    BadPlan{"placeOut", "/place/3", "6", "place[3]: there is no id 6"},
                    BadPlan{"placeNegative", "/place/3", "-1", "place[3]: is -1"},
                    BadPlan{"codeOut", "/code/3", "8", "code[3]: is 8, must be from 0 to 7"},
                    BadPlan{"codeText", "/code/3", "\"dot\"", "code[3]: must be a whole number"}),
    [](const auto &param) { return std::string(param.param.name); });

/// Output and exit code of the check program.
std::pair<std::string, int> runProgram(const std::string &arguments) {
    const std::string command = std::string(PLAN_CASE_PROGRAM) + " " + arguments + " 2>&1";
    FILE *pipe = popen(command.c_str(), "r");
    std::string output;
    std::array<char, 4096> part{};
    while (const std::size_t count = fread(part.data(), 1, part.size(), pipe))
        output.append(part.data(), count);
    const int status = pclose(pipe);
    return {output, status / 256};
}

TEST(PlanCaseProgram, evaluatesExactlyAndExitsZero) {
    const std::string stem = FELTMARK_TEST_DATA "/plan-cases/kitchen-25-12";
    const auto [output, code] = runProgram(stem + ".json --evaluate " + stem + ".best.json");
    EXPECT_EQ(code, 0);
    EXPECT_EQ(output,
              R"({"objective":10518,"terms":{"unary":6731,"bay":1000,"place":0,"type":1500,"mark":1152,)"
              R"("risk":135},"broken":[]})"
              "\n");
}

TEST(PlanCaseProgram, solvesAndChangesAPlan) {
    const std::string stem = FELTMARK_TEST_DATA "/plan-cases/kitchen-25-12";
    const auto [solved, code] = runProgram(stem + ".json --seconds 0.01 --threads 1");
    EXPECT_EQ(code, 0);
    const json plan = json::parse(solved);
    EXPECT_EQ(plan["place"].size(), 25U);
    EXPECT_FALSE(plan.contains("cut"));
    const auto [changed, again] = runProgram(stem + ".json --from " + stem + ".best.json --pin 0=1");
    EXPECT_EQ(again, 0);
    const json second = json::parse(changed);
    EXPECT_EQ(second["place"][0], 1);
    EXPECT_EQ(second["price_mmin"].get<int>(), second["objective"].get<int>() - 10518);
    EXPECT_THAT(second["changed"].get<std::vector<int>>(), testing::Contains(0));
}

TEST(PlanCaseProgram, exitsOneWithWhatIsShort) {
    json narrow = kitchen();
    for (json &place : narrow["places"])
        if (place["storage"] == "dry")
            place["width_cm"] = 30;
    const ScratchFile file(narrow.dump());
    const auto [output, code] = runProgram(file.path() + " --seconds 0.01");
    EXPECT_EQ(code, 1);
    const json short_ = json::parse(output)["infeasible"];
    ASSERT_FALSE(short_.empty());
    EXPECT_GT(short_[0]["need_cm"].get<double>(), short_[0]["have_cm"].get<double>());
    EXPECT_FALSE(short_[0]["sentence"].get<std::string>().empty());
}

TEST(PlanCaseProgram, exitsTwoWithOneLineForBadUsage) {
    const std::string stem = FELTMARK_TEST_DATA "/plan-cases/kitchen-25-12";
    for (const std::string &arguments :
         {std::string(), std::string("/nowhere.json"), stem + ".json --seconds 0",
          stem + ".json --seconds nan", stem + ".json --threads 0", stem + ".json --seed -1",
          stem + ".json --pin 3", stem + ".json --pin 3=99", stem + ".json --forbid x=1",
          stem + ".json --evaluate /nowhere.json", stem + ".json --what"}) {
        const auto [output, code] = runProgram(arguments);
        EXPECT_EQ(code, 2) << arguments;
        EXPECT_EQ(std::count(output.begin(), output.end(), '\n'), 1) << arguments << ": " << output;
    }
}

} // namespace
