#include "model/contents.h"
#include "model/demo.h"
#include "model/findings.h"
#include "model/lexicon.h"
#include "model/planning.h"
#include "model/sentence.h"
#include <gmock/gmock.h>
#include <thread>

namespace model {
namespace {

using testing::HasSubstr;

/// Sentences in a language that nobody speaks while it lives.
class Backwards {
public:
    Backwards() { Sentence::sayBy(&into); }
    ~Backwards() { Sentence::sayBy(nullptr); }
    Backwards(const Backwards &) = delete;
    Backwards &operator=(const Backwards &) = delete;

private:
    static std::string into(std::string_view sentence) {
        return sentence == "{1} of {2}" ? "{2}, {1}" : "<" + std::string(sentence) + ">";
    }
};

TEST(Sentence, isSaidAsItIsWrittenWithItsValues) {
    EXPECT_EQ(Sentence::tr("It has to stay."), "It has to stay.");
    EXPECT_EQ(Sentence::tr("{1} of {2}, {1}", {"2", "3"}), "2 of 3, 2");
    EXPECT_EQ(Sentence::tr("{1}{2}", {"", "x"}), "x");
}

TEST(Sentence, leavesBracesThatAreNoPlaceOfAValue) {
    EXPECT_EQ(Sentence::tr("{1} {2} {} {x} {", {"{2}"}), "{2} {2} {} {x} {")
        << "a value is not read for places";
    EXPECT_EQ(Sentence::tr("{1}"), "{1}");
}

TEST(Sentence, isSaidInAnotherLanguageWithItsValuesWhereTheyStandThere) {
    const Backwards other;
    EXPECT_EQ(Sentence::tr("Done."), "<Done.>");
    EXPECT_EQ(Sentence::tr("{1} of {2}", {"2", "3"}), "3, 2");
}

TEST(Sentence, isSaidAsItIsWrittenForAPaperOnThatThreadAlone) {
    const Backwards other;
    {
        const AsWritten paper;
        EXPECT_EQ(Sentence::tr("Done."), "Done.");
        { const AsWritten inner; }
        EXPECT_EQ(Sentence::tr("Done."), "Done.");
        std::string beside;
        std::thread([&beside] { beside = Sentence::tr("Done."); }).join();
        EXPECT_EQ(beside, "<Done.>");
    }
    EXPECT_EQ(Sentence::tr("Done."), "<Done.>");
}

/// What must be the same in every language: the plan, and the record as it is stored.
TEST(Sentence, changesNoPlanAndNoRecord) {
    const Case record = demo::nora();
    const Date on = *record.visits.front().date;
    const auto plan = makePlan(record, findingsOf(record, on), {}, on);
    ASSERT_TRUE(plan);
    const Findings plain = findingsOf(record, on);
    const Backwards other;
    const Findings said = findingsOf(record, on);
    const auto again = makePlan(record, said, {}, on);
    ASSERT_TRUE(again);
    EXPECT_EQ(again->lines, plan->lines);
    EXPECT_EQ(again->meaningMarks, plan->meaningMarks);
    ASSERT_EQ(said.all.size(), plain.all.size());
    EXPECT_EQ(said.acceptedMarks, plain.acceptedMarks);
    EXPECT_EQ(said.paperSize, plain.paperSize);
    EXPECT_EQ(said.reachHigh, plain.reachHigh);
    EXPECT_THAT(said.all.front().because, HasSubstr("<"));
    const AsWritten paper;
    EXPECT_EQ(findingsOf(record, on), plain);
}

/// Lines are typed again as they are shown, so their grammar stays.
TEST(Sentence, changesNoLineOfContents) {
    const Lexicon &lexicon = Lexicon::standard();
    for (const Thing &thing : demo::tilda().things) {
        const std::string line = contentsLine(thing, lexicon);
        const Backwards other;
        EXPECT_EQ(contentsLine(thing, lexicon), line);
    }
}

} // namespace
} // namespace model
