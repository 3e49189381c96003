#include "app/viewmodels/key_model.h"
#include "app/viewmodels/sentences.h"
#include <gmock/gmock.h>

namespace app {
namespace {

TEST(SentencesOnce, sayNothingTwice) {
    EXPECT_EQ(sentencesOnce({"Ada", "Step 7 of 9: Plan", "Plan", "46 things"}),
              "Ada. Step 7 of 9: Plan. 46 things.");
    EXPECT_EQ(
        sentencesOnce({"Marker test", "Slot 2, then 7. Trial 9 of at most 160", "Trial 9 of at most 160"}),
        "Marker test. Slot 2, then 7. Trial 9 of at most 160.");
    EXPECT_EQ(sentencesOnce({"Explanation", "Nation"}), "Explanation. Nation.") << "a part of a word";
    EXPECT_EQ(sentencesOnce({"", "Seizures?", "All saved."}), "Seizures? All saved.");
}

TEST(IsFoundBy, whatIsTypedWithOrWithoutSpacesAndHyphens) {
    for (const char *typed : {"markertest", "marker-test", "Marker t", "test", "KERT", ""})
        EXPECT_EQ(isFoundBy("Marker test", typed), typed != std::string("KERT")) << typed;
    EXPECT_TRUE(isFoundBy("Follow-up", "followup"));
    EXPECT_TRUE(isFoundBy("Follow-up", "follow up"));
    EXPECT_FALSE(isFoundBy("What eats", "tea")) << "from the middle of one word into the next";
}

TEST(KeyModel, namesACommandByItsKeyOrByWhatItDoes) {
    KeyModel keys;
    EXPECT_EQ(keys.keyOrTitle("why"), "F7");
    EXPECT_EQ(keys.setSequences("why", "F4"), "");
    EXPECT_EQ(keys.keyOrTitle("why"), "F4");
    EXPECT_EQ(keys.setSequences("why", ""), "");
    EXPECT_EQ(keys.keyOrTitle("why"), "Why this line");
}

} // namespace
} // namespace app
