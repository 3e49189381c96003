#include <array>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <gmock/gmock.h>
#include <nlohmann/json.hpp>
#include <unistd.h>

/// The check program for sight: its seven questions, and what it refuses.
namespace {

using nlohmann::json;
using testing::HasSubstr;

/// Answers to the questions, one a line.
std::vector<json> answers(const std::string &questions) {
    const auto file =
        std::filesystem::temp_directory_path() / ("sight-case-" + std::to_string(getpid()) + ".jsonl");
    std::ofstream(file) << questions;
    FILE *pipe = popen((std::string(SIGHT_CASE_PROGRAM) + " < " + file.string()).c_str(), "r");
    std::string output;
    std::array<char, 4096> part{};
    while (const std::size_t count = fread(part.data(), 1, part.size(), pipe))
        output.append(part.data(), count);
    EXPECT_EQ(pclose(pipe), 0);
    std::filesystem::remove(file);
    std::vector<json> all;
    std::istringstream lines(output);
    for (std::string line; std::getline(lines, line);)
        all.push_back(json::parse(line));
    return all;
}

json answer(const std::string &question) {
    const auto all = answers(question + "\n");
    EXPECT_EQ(all.size(), 1u);
    return all.at(0);
}

TEST(SightCase, givesAnAcuityInEveryNotation) {
    // Bach, acuity cheat sheet; category: WHO, ICD-10 (2010) H54 and ICD-11 (2018).
    const json sixty = answer(R"({"acuity": "6/60", "distance_m": 6})");
    EXPECT_EQ(sixty["logmar"], 1.0);
    EXPECT_EQ(sixty["decimal"], 0.1);
    EXPECT_EQ(sixty["mar_arcmin"], 10.0);
    EXPECT_EQ(sixty["snellen6"], "6/60");
    EXPECT_EQ(sixty["snellen20"], "20/200");
    EXPECT_EQ(sixty["category_icd11"], "moderate");
    EXPECT_EQ(sixty["category_icd10"], 1);
}

TEST(SightCase, hasNoNumberBelowTheChartAndSaysWhy) {
    const json fingers = answer(R"({"acuity": "CF", "distance_m": 0.3})");
    for (const char *none : {"logmar", "decimal", "mar_arcmin", "snellen6", "snellen20"})
        EXPECT_TRUE(fingers[none].is_null()) << none;
    EXPECT_THAT(fingers["why"].get<std::string>(), HasSubstr("counting fingers"));
    EXPECT_EQ(fingers["category_icd10"], 4); // nearer than a metre is worse than 1/60
    EXPECT_EQ(answer(R"({"acuity": "CF", "distance_m": 1})")["category_icd10"], 3);
    EXPECT_TRUE(answer(R"({"near": "HM", "distance_cm": 40})")["x_height_mm"].is_null());
}

TEST(SightCase, givesNoCategoryFromNearPrint) {
    const json print = answer(R"({"acuity": "1.6 M", "distance_m": 0.4})");
    EXPECT_NEAR(print["logmar"], 0.60206, 1e-5);
    EXPECT_TRUE(print["category_icd11"].is_null());
    EXPECT_THAT(print["why"].get<std::string>(), HasSubstr("near print"));
}

TEST(SightCase, givesSizesContrastAndLimits) {
    const auto all = answers(R"({"near": "N12", "distance_cm": 40}
{"logmar": 0.5, "distance_cm": 40, "reserve": 2, "font_x_ratio": 0.519}
{"contrast_logcs": 0.60, "print_weber": 0.9}
{"text": "#595959", "background": "#ffffff"}
{"hand_height_mm": 1312, "stature_mm": 1600, "sex": "female", "arms": "close"}
{"niosh": {"h":40,"v":30,"d":60,"a":0,"fm":1,"cm":0.95}}
)");
    ASSERT_EQ(all.size(), 6u);
    EXPECT_NEAR(all[0]["m_units"], 1.5, 1e-9);            // 8 point is 1 M: rule of thumb, recomputed
    EXPECT_NEAR(all[1]["points"], 20.1, 0.05);            // h = 2 d tan(angle / 2), recomputed
    EXPECT_NEAR(all[2]["contrast_reserve"], 3.58, 0.005); // W x 10^logCS, recomputed
    EXPECT_EQ(all[2]["band"], "disability (severe loss)");
    EXPECT_NEAR(all[3]["wcag_ratio"], 7.005, 0.001); // W3C, WCAG 2.2; published as 7.0
    EXPECT_EQ(all[4]["zone"], "Z5 overhead");
    EXPECT_EQ(all[4]["lift_filter_kg"], 7.0);      // HSE, INDG143 rev 4
    EXPECT_NEAR(all[5]["rwl_kg"], 10.57233, 5e-6); // DHHS (NIOSH) 94-110, recomputed
}

TEST(SightCase, refusesWithASentenceAndKeepsTheOrder) {
    const char *refused[] = {
        R"({"acuity": "6/"})",
        R"({"acuity": "20/0"})",
        R"({"acuity": "1.2.3"})",
        R"({"acuity": "logMAR 4"})",
        R"({"acuity": "M 0", "distance_m": 0.4})",
        R"({"acuity": ""})",
        R"({"acuity": 6})",
        R"({"near": "N12"})",
        R"({"near": "N12", "distance_cm": -40})",
        R"({"near": "J3", "distance_cm": 40})",
        R"({"logmar": 4, "distance_cm": 40, "reserve": 2, "font_x_ratio": 0.5})",
        R"({"logmar": 1, "distance_cm": 40, "reserve": 0.5, "font_x_ratio": 0.5})",
        R"({"logmar": 1, "distance_cm": 40, "reserve": 2, "font_x_ratio": 1})",
        R"({"contrast_logcs": -1, "print_weber": 0.9})",
        R"({"contrast_logcs": 1, "print_weber": 1.2})",
        R"({"text": "#12345", "background": "#ffffff"})",
        R"({"hand_height_mm": -1, "stature_mm": 1600, "sex": "female", "arms": "close"})",
        R"({"hand_height_mm": 900, "stature_mm": 1600, "sex": "cat", "arms": "close"})",
        R"({"niosh": {"h":40,"v":30,"d":60,"a":0,"fm":1}})",
        R"({"niosh": {"h":40,"v":-30,"d":60,"a":0,"fm":1,"cm":1}})",
        R"({"something": 1})",
        R"({"acuity": "6/6", "near": "N8"})",
        R"({"contrast_logcs": 1e999})",
        "[1]",
        "nonsense",
        "",
    };
    std::string questions;
    for (const char *line : refused)
        questions += std::string(line) + "\n";
    const auto all = answers(questions + R"({"acuity": "6/6"})" + "\n");
    ASSERT_EQ(all.size(), std::size(refused) + 1);
    for (std::size_t i = 0; i < std::size(refused); ++i) {
        ASSERT_TRUE(all[i].contains("error")) << refused[i];
        EXPECT_GT(all[i]["error"].get<std::string>().size(), 15u) << refused[i];
    }
    EXPECT_EQ(all.back()["logmar"], 0.0);
}

} // namespace
