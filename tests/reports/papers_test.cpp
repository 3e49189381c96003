#include "demo_case.h"
#include "model/marks.h"
#include "paper_reading.h"
#include "reports/papers.h"
#include <algorithm>
#include <fstream>
#include <gmock/gmock.h>
#include <set>
#include <sstream>

using namespace model;
using namespace reports;
using demo_case::day;
using demo_case::findings;
using demo_case::planned;
using ::testing::Contains;
using ::testing::HasSubstr;
using ::testing::Not;

namespace {

const std::vector<std::string> demos{"nora", "idris", "tilda"};
const std::string maker = "R. Invented";

std::vector<Document> allPapers(const Case &record) {
    return {handout(record, findings(record), day, maker).value(),
            householdSheet(record, findings(record), day, maker).value(),
            workSheet(record, findings(record), day, maker).value(),
            progressReport(record, findings(record), day, maker).value(),
            kitSheet(record, findings(record), day, maker).value()};
}

Document handoutOf(const Case &record) {
    return handout(record, findings(record), day, maker).value();
}

Case answered(Case record, SafetyQuestion question, Answer answer, const std::string &note = {}) {
    record.safety.answers[question] = {answer, note, day};
    return record;
}

} // namespace

class Demo : public ::testing::TestWithParam<std::string> {};
INSTANTIATE_TEST_SUITE_P(Papers, Demo, ::testing::ValuesIn(demos), [](const auto &of) { return of.param; });

TEST_P(Demo, headingsNeverSkipALevel) {
    for (const Document &paper : allPapers(planned(GetParam()))) {
        int before = 0;
        for (const Block &block : paper.blocks)
            if (const auto *heading = std::get_if<Heading>(&block)) {
                EXPECT_LE(heading->level, before + 1) << joined(heading->text);
                before = heading->level;
            }
        EXPECT_GT(before, 0) << paper.title;
    }
}

TEST_P(Demo, everyPaperSaysThatItIsInvented) {
    for (const Document &paper : allPapers(planned(GetParam())))
        EXPECT_THAT(reading::words(paper), HasSubstr("INVENTED")) << paper.title;
}

TEST_P(Demo, papersOfARealClientAreNotMarkedInvented) {
    Case record = planned(GetParam());
    record.client.invented = false;
    for (const Document &paper : allPapers(record))
        EXPECT_THAT(reading::words(paper), Not(HasSubstr("INVENTED"))) << paper.title;
}

TEST_P(Demo, everyPaperHasDateMakerAndWhomToAsk) {
    Case record = planned(GetParam());
    record.client.whomToAsk = "The clinic, telephone 000 111";
    record.household.sharingConsent = true;
    for (const Document &paper : allPapers(record)) {
        EXPECT_THAT(reading::words(paper), HasSubstr("25 November 2026")) << paper.title;
        EXPECT_THAT(reading::words(paper), HasSubstr(maker)) << paper.title;
        EXPECT_THAT(reading::words(paper), HasSubstr("telephone 000 111")) << paper.title;
        EXPECT_EQ(paper.date, "2026-11-25");
    }
}

TEST_P(Demo, everyPlacedThingStandsOnceInTheHandout) {
    const Case &record = planned(GetParam());
    const auto items = reading::numberedItems(reading::section(handoutOf(record), "Section by section"));
    std::multiset<std::string> shown, expected;
    for (const std::string &item : items)
        shown.insert(reading::lowered(item.substr(0, item.find_first_of(".,"))));
    for (const PlanLine &line : record.plan->lines)
        for (const Thing &thing : record.things)
            if (thing.id == line.thing)
                expected.insert(reading::lowered(thing.name.substr(0, thing.name.find_first_of(".,"))));
    EXPECT_EQ(shown, expected);
    EXPECT_EQ(expected.size(), record.plan->lines.size());
}

TEST_P(Demo, thingsOfAPlaceFollowFromLeftToRight) {
    const Case &record = planned(GetParam());
    const auto items = reading::numberedItems(reading::section(handoutOf(record), "Section by section"));
    std::vector<std::string> expected;
    for (const Unit &unit : record.units)
        for (const Place &place : record.places)
            if (place.unit == unit.id)
                for (int order = 0; order < static_cast<int>(record.things.size()); ++order)
                    for (const PlanLine &line : record.plan->lines)
                        if (line.place == place.id && line.order == order)
                            for (const Thing &thing : record.things)
                                if (thing.id == line.thing)
                                    expected.push_back(thing.name);
    ASSERT_EQ(items.size(), expected.size());
    for (std::size_t i = 0; i < items.size(); ++i)
        EXPECT_EQ(reading::lowered(items[i]).rfind(reading::lowered(expected[i]), 0), 0u) << items[i];
}

TEST_P(Demo, theDictionaryNamesExactlyTheMarksInUse) {
    const Case &record = planned(GetParam());
    const auto shown = reading::headings(reading::section(handoutOf(record), "What the marks mean"), 3);
    std::multiset<std::string> names, expected;
    for (const std::string &name : shown)
        names.insert(reading::lowered(name));
    std::set<std::string> keys;
    for (const PlanLine &line : record.plan->lines) {
        if (!line.marker.empty())
            keys.insert(line.marker);
        for (const MeaningMark &mark : record.plan->meaningMarks)
            if (std::count(line.meanings.begin(), line.meanings.end(), mark.meaning))
                keys.insert(mark.marker);
        for (const Thing &thing : record.things)
            if (thing.id == line.thing && markerOf(thing.markInUse))
                keys.insert(thing.markInUse);
    }
    for (const std::string &key : keys)
        expected.insert(reading::lowered(markerOf(key)->name));
    EXPECT_EQ(names, expected);
    EXPECT_FALSE(expected.empty());
}

TEST_P(Demo, householdSheetTellsNoDietFactAndNothingOfTheClientsOwnWithoutConsent) {
    Case record = planned(GetParam());
    record.household.sharingConsent = false;
    record.diet.facts = {"kidney diet"};
    Thing &own = record.things.front();
    own.name = "consolation truffles";
    own.own = true;
    own.dietFacts = record.diet.facts;
    record.plan->meaningMarks = {{"diet:kidney diet", "cord"}, {"own", "felt"}};
    for (PlanLine &line : record.plan->lines)
        if (line.thing == own.id)
            line.meanings = {"diet:kidney diet", "own"};
    const std::string words = reading::words(householdSheet(record, findings(record), day, maker).value());
    EXPECT_THAT(words, Not(HasSubstr("kidney diet")));
    EXPECT_THAT(words, Not(HasSubstr("truffles")));
    for (const Document &paper : {handoutOf(record), workSheet(record, findings(record), day, maker).value(),
                                  labelSheet(record, findings(record), day, maker).value()})
        EXPECT_THAT(reading::words(paper), HasSubstr("kidney diet")) << paper.title;
}

TEST_P(Demo, everyPaperWithMarksSaysWhatTheReservedOnesMean) {
    const Case &record = planned(GetParam());
    for (const Document &paper :
         {handoutOf(record), householdSheet(record, findings(record), day, maker).value(),
          workSheet(record, findings(record), day, maker).value(),
          labelSheet(record, findings(record), day, maker).value()})
        EXPECT_THAT(reading::words(paper), HasSubstr("danger")) << paper.title;
}

TEST_P(Demo, householdSheetTellsNothingPrivateWithoutConsent) {
    Case record = planned(GetParam());
    record.household.sharingConsent = false;
    record =
        answered(std::move(record), SafetyQuestion::Implant, Answer::Yes, "heart device, told by her sister");
    record = answered(std::move(record), SafetyQuestion::Seizures, Answer::Yes, "two last year");
    const std::string words =
        reading::lowered(reading::words(householdSheet(record, findings(record), day, maker).value()));
    EXPECT_THAT(words, Not(HasSubstr(reading::lowered(record.client.name))));
    for (const auto &[question, answer] : record.safety.answers)
        if (!answer.note.empty()) {
            EXPECT_THAT(words, Not(HasSubstr(reading::lowered(answer.note))));
        }
    for (const std::string word :
         {"implant", "heart",    "seizure", "blind",   "vision",  "sight",  "allerg",
          "coeliac", "diabet",   "tremor",  "macula",  "memory",  "fall",   "stroke",
          "oxygen",  "medicine", "insulin", "diagnos", "patient", "therap", "client"})
        EXPECT_THAT(words, Not(HasSubstr(word))) << word;
}

TEST_P(Demo, householdSheetNamesTheClientOnceSheAgrees) {
    Case record = planned(GetParam());
    record.household.sharingConsent = true;
    const auto paper = householdSheet(record, findings(record), day, maker).value();
    EXPECT_THAT(reading::words(paper), HasSubstr(record.client.name));
    for (const Caution &caution : findings(record).cautions)
        EXPECT_THAT(reading::cautions(paper), Contains(HasSubstr(caution.sentence)));
}

TEST_P(Demo, handoutHasTheFiveLevelsOfEachGoal) {
    const Case &record = planned(GetParam());
    const std::string words = reading::words(handoutOf(record));
    for (const Goal &goal : record.goals)
        for (const std::string &level : goal.levels)
            EXPECT_THAT(words, HasSubstr(level.substr(0, level.find_last_not_of('.') + 1)));
}

namespace {

/// Answer that makes the plan careful, and a word that must then stand in a caution of the handout.
/// Source: the questions and consequences that the profession asks for, common practice.
struct CautionCase {
    SafetyQuestion question;
    Answer answer;
    std::string word;
};

} // namespace

class CautionOnHandout : public ::testing::TestWithParam<CautionCase> {};
INSTANTIATE_TEST_SUITE_P(
    Papers, CautionOnHandout,
    ::testing::Values(CautionCase{SafetyQuestion::Implant, Answer::Yes, "magnet"},
                      CautionCase{SafetyQuestion::LatexAllergy, Answer::Yes, "latex"},
                      CautionCase{SafetyQuestion::SmokeAlarm, Answer::No, "alarm"},
                      CautionCase{SafetyQuestion::Smells, Answer::No, "gas"},
                      CautionCase{SafetyQuestion::OxygenAtHome, Answer::Yes, "oxygen"},
                      CautionCase{SafetyQuestion::MedicinesInKitchen, Answer::Yes, "pharmacist"},
                      CautionCase{SafetyQuestion::ReducedProtectiveFeeling, Answer::Yes, "heat"},
                      CautionCase{SafetyQuestion::Falls, Answer::Yes, "stool"},
                      CautionCase{SafetyQuestion::SwallowingDifficulty, Answer::Yes, "texture"}));

TEST_P(CautionOnHandout, stands) {
    const auto &[question, answer, word] = GetParam();
    const auto asked = reading::cautions(handoutOf(answered(planned("nora"), question, answer)));
    EXPECT_TRUE(std::any_of(asked.begin(), asked.end(), [&word = word](const std::string &caution) {
        return reading::lowered(caution).find(word) != std::string::npos;
    })) << word;
}

TEST_P(CautionOnHandout, standsWithTheWordsNotAskedBeforeItIsAsked) {
    const auto &[question, answer, word] = GetParam();
    const auto open = reading::cautions(handoutOf(answered(planned("nora"), question, Answer::NotAsked)));
    EXPECT_TRUE(std::any_of(open.begin(), open.end(), [&word = word](const std::string &caution) {
        return reading::lowered(caution).find(word) != std::string::npos &&
               reading::lowered(caution).find("not asked yet") != std::string::npos;
    })) << word;
}

TEST(Papers, ofAnImplantClientNameNoMagnetOutsideItsCaution) {
    ASSERT_TRUE(planned("idris").safety.cautious(SafetyQuestion::Implant));
    for (const Document &paper : allPapers(planned("idris")))
        EXPECT_THAT(reading::lowered(reading::wordsOutsideCautions(paper)), Not(HasSubstr("magnet")))
            << paper.title;
}

TEST(Papers, refuseWithoutAPlan) {
    Case record = planned("nora");
    record.plan.reset();
    const auto paper = handout(record, findings(record), day);
    ASSERT_FALSE(paper);
    EXPECT_EQ(paper.error().code, ErrorCode::Missing);
    EXPECT_THAT(paper.error().sentence, HasSubstr("Make the plan first"));
}

TEST(Papers, sayWhatIsShortIfNoPlanFits) {
    Case record = planned("nora");
    record.plan->lines.clear();
    record.plan->shortages = {{"width", 40, 30, {}, {}, "The fridge is 10 cm too narrow."}};
    const auto paper = workSheet(record, findings(record), day);
    ASSERT_FALSE(paper);
    EXPECT_EQ(paper.error().code, ErrorCode::Infeasible);
    EXPECT_THAT(paper.error().sentence, HasSubstr("The fridge is 10 cm too narrow."));
}

TEST(Papers, givewayToAnEyeReferralWhileItsSignsStand) {
    const Case record = answered(planned("tilda"), SafetyQuestion::UrgentEyeSigns, Answer::Yes,
                                 "a curtain on the left since Monday");
    const auto written = papers(record, findings(record), day, {}).value();
    ASSERT_FALSE(written.empty());
    for (const Paper &paper : written)
        EXPECT_THAT(paper.fileName, HasSubstr("eye-referral"));
    EXPECT_THAT(reading::words(eyeReferral(record, findings(record), day).value()),
                HasSubstr("a curtain on the left since Monday"));
}

TEST(HouseholdSheet, refusesAPlaceThatIsNamedAfterTheClient) {
    Case record = planned("nora");
    record.household.sharingConsent = false;
    record.client.name = "Olive Marsh";
    record.units.front().name = "Olive's cupboard";
    const auto paper = householdSheet(record, findings(record), day);
    ASSERT_FALSE(paper);
    EXPECT_EQ(paper.error().code, ErrorCode::Refused);
    EXPECT_THAT(paper.error().sentence, HasSubstr("Olive's cupboard"));
}

TEST(HouseholdSheet, letsAFoodShareTheClientsFirstName) {
    Case record = planned("nora");
    record.household.sharingConsent = false;
    record.client.name = "Olive Marsh";
    record.things.front().name = "olive oil";
    EXPECT_TRUE(householdSheet(record, findings(record), day));
}

TEST(HouseholdSheet, namesNoMedicineWithoutConsent) {
    Case record = planned("nora");
    record.household.sharingConsent = false;
    record.things.front().name = "zopiclone";
    record.things.front().medicine = true;
    const auto paper = householdSheet(record, findings(record), day).value();
    EXPECT_THAT(reading::words(paper), Not(HasSubstr("opiclone")));
    EXPECT_THAT(reading::words(paper), HasSubstr("Please leave it here."));
}

TEST(HouseholdSheet, saysOnlyBehindWhereOneSideMayGoUnnoticed) {
    Case record = answered(planned("nora"), SafetyQuestion::OneSideNotAttended, Answer::No);
    EXPECT_THAT(reading::words(householdSheet(record, findings(record), day).value()),
                HasSubstr("to the right of it"));
    record.safety.answers.erase(SafetyQuestion::OneSideNotAttended);
    EXPECT_THAT(reading::words(householdSheet(record, findings(record), day).value()),
                Not(HasSubstr("to the right of it")));
}

// Things stand on the side that is attended to, and the count begins there (common practice).
TEST(HouseholdSheet, readsShelvesFromTheRightWhereTheLeftIsNotAttended) {
    Case record = answered(planned("nora"), SafetyQuestion::OneSideNotAttended, Answer::Yes);
    const auto words = [&](const char *note) {
        record.safety.answers[SafetyQuestion::OneSideNotAttended].note = note;
        return reading::words(householdSheet(record, findings(record), day).value());
    };
    EXPECT_THAT(words("Left; turns to a cue"), HasSubstr("go from right to left"));
    EXPECT_THAT(words("right side, cue from the left"), HasSubstr("go from left to right"));
    EXPECT_THAT(words(""), HasSubstr("go from left to right"));
}

namespace {

/// Three goals of equal weight, all at one level at first and at another now.
Case withGoals(int then, int now) {
    Case record = planned("nora");
    record.goals.clear();
    record.ratings.clear();
    for (int i = 0; i < 3; ++i) {
        const Id id{"goal-" + std::to_string(i)};
        record.goals.push_back({id, "A goal", {"a", "b", "c", "d", "e"}, 1, 1, {}, {}});
        record.ratings.push_back({{id.text + "-1"}, id, {}, then, "seen first", addDays(day, -30)});
        record.ratings.push_back({{id.text + "-2"}, id, {}, now, "seen now", day});
    }
    return record;
}

} // namespace

TEST(ProgressReport, givesTheScoreThenAndNowWithItsLimits) {
    // All -1 gives 36.31 and all +1 gives 63.69 for three goals of equal weight.
    // Source: formula of Kiresuk & Sherman 1968 with rho = 0.3, computed.
    const Case record = withGoals(-1, 1);
    const std::string words = reading::words(progressReport(record, findings(record), day).value());
    EXPECT_THAT(words, HasSubstr("At first the T score was 36.3. Now it is 63.7. 3 of 3 goals"));
    EXPECT_THAT(words, HasSubstr("does not tell change from chance"));
    EXPECT_THAT(words, HasSubstr("seen first"));
}

TEST(ProgressReport, givesNoScoreWithoutALevel) {
    Case record = withGoals(-1, 1);
    record.ratings.clear();
    const std::string words = reading::words(progressReport(record, findings(record), day).value());
    EXPECT_THAT(words, Not(HasSubstr("T score")));
    EXPECT_THAT(words, HasSubstr("No level has been found for this goal yet."));
}

TEST(ProgressReport, namesWhatIsOpen) {
    Case record = planned("nora");
    record.safety.answers.erase(SafetyQuestion::Implant);
    EXPECT_THAT(reading::words(progressReport(record, findings(record), day).value()),
                HasSubstr("Not asked: Any implant"));
}

TEST(WorkSheet, saysWhatMovesFromWhere) {
    const Case record = demo_case::asItStands("nora");
    const std::string words = reading::words(workSheet(record, findings(record), day).value());
    EXPECT_THAT(words, HasSubstr(" From: " + placeWords(record, record.places[0].id)));
}

TEST(WorkSheet, hasNoNameOfTheClient) {
    const Case &record = planned("tilda");
    EXPECT_THAT(reading::words(workSheet(record, findings(record), day).value()),
                Not(HasSubstr("Fernbrook")));
}

TEST(Handout, namesThingsThatThePlanDoesNotHold) {
    Case record = planned("nora");
    const Id gone = record.plan->lines.back().thing;
    record.plan->lines.pop_back();
    const auto blocks = reading::section(handoutOf(record), "Not in the plan yet");
    ASSERT_EQ(blocks.size(), 1u);
    for (const Thing &thing : record.things)
        if (thing.id == gone) {
            EXPECT_EQ(reading::lowered(reading::words(blocks.front())), reading::lowered(thing.name) + "\n");
        }
}
