#include "app/viewmodels/key_model.h"
#include "app/viewmodels/sentences.h"
#include "app/viewmodels/shell_view_model.h"
#include <QSignalSpy>
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

TEST(Shell, leavesWhatStandsOnTheLineWhereSomethingIsSaidBeside) {
    ShellViewModel shell;
    QSignalSpy said(&shell, &ShellViewModel::said);
    shell.sayBeside("A better plan exists.");
    EXPECT_EQ(shell.message(), "A better plan exists.");
    shell.say("Costs 0.7 minutes a week.");
    shell.sayBeside("A better plan exists.");
    EXPECT_EQ(shell.message(), "Costs 0.7 minutes a week.");
    EXPECT_EQ(shell.messages()->rows().front().title, "A better plan exists.");
    EXPECT_EQ(said.size(), 3) << "each is spoken";
}

TEST(Shell, takesOnlyTheSentenceBackThatStandsThere) {
    struct Shell : ShellViewModel {
        using ShellViewModel::takeBack;
    } shell;
    shell.say("The records lock in one minute.");
    shell.takeBack("Saved.");
    EXPECT_EQ(shell.message(), "The records lock in one minute.");
    shell.takeBack("The records lock in one minute.");
    EXPECT_EQ(shell.message(), "");
    EXPECT_EQ(shell.messages()->rows().size(), 1U) << "the list keeps it";
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
