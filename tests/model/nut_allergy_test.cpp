#include "model/findings.h"
#include "model/nut_allergy.h"
#include "model/progress.h"
#include "tests/model/fixtures.h"
#include <gmock/gmock.h>

/// Regulation (EU) No 1169/2011, Annex II, lists peanuts (5) and nuts (8: almonds, hazelnuts, walnuts ...)
/// apart.
namespace {

using namespace model;
using testing::Contains;
using testing::Field;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;

constexpr Date on{std::chrono::year{2026}, std::chrono::month{11}, std::chrono::day{25}};

Case avoiding(std::vector<std::string> keys) {
    Case record = fixtures::unworried("Invented Nuts", "I9");
    record.diet.asked = true;
    record.diet.avoids = std::move(keys);
    return record;
}

TEST(NutAllergy, asksAboutTheOtherOneOnPlanPapersAndOpenList) {
    const Case treeNuts = avoiding({"nuts"}), peanuts = avoiding({"milk", "peanuts"});
    EXPECT_THAT(findingsOf(treeNuts, on).cautions,
                Contains(Field(&Caution::sentence, HasSubstr("Ask about peanuts by name"))));
    EXPECT_THAT(findingsOf(peanuts, on).cautions,
                Contains(Field(&Caution::sentence, HasSubstr("Ask about tree nuts by name"))));
    EXPECT_THAT(openItems(treeNuts, on), Contains(HasSubstr("Ask about peanuts by name")));
}

TEST(NutAllergy, asksNothingWhereBothOrNeitherAreAvoided) {
    EXPECT_THAT(otherNutAsked(avoiding({"peanuts", "nuts"}).diet), IsEmpty());
    EXPECT_THAT(otherNutAsked(avoiding({"milk"}).diet), IsEmpty());
    EXPECT_THAT(openItems(avoiding({}), on), Not(Contains(HasSubstr("by name"))));
}

TEST(NutAllergy, isNotTakenForOneOfTheTwo) {
    for (const char *typed : {"nut", "Nut allergy", "all nuts"})
        EXPECT_TRUE(eitherNut(typed)) << typed;
    for (const char *typed : {"nuts", "tree nuts", "peanuts", "coconut"})
        EXPECT_FALSE(eitherNut(typed)) << typed;
}

} // namespace
