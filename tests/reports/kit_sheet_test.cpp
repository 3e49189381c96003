#include "demo_case.h"
#include "model/kit.h"
#include "model/rule_words.h"
#include "paper_reading.h"
#include "reports/papers.h"
#include <gmock/gmock.h>

using namespace model;
using namespace reports;
using demo_case::day;
using demo_case::findings;
using demo_case::planned;
using ::testing::HasSubstr;
using ::testing::Not;

namespace {

Document sheetOf(const Case &record) {
    return kitSheet(record, findings(record), day, "R. Invented").value();
}

/// Nora, who has no implant.
Case noImplant() {
    Case record = planned("nora");
    record.safety.answers[SafetyQuestion::Implant].answer = Answer::No;
    return record;
}

std::string partOf(const Document &sheet, const std::string &mark) {
    std::string words;
    for (const Block &block : reading::section(sheet, mark))
        words += reading::words(block) + "\n";
    return words;
}

} // namespace

TEST(KitSheet, hasEveryMarkOnceWithAllThatIsKnownOfIt) {
    const Document sheet = sheetOf(noImplant());
    for (const Marker &marker : markerKit()) {
        const std::string part = reading::lowered(partOf(sheet, sentenceCase(marker.name)));
        ASSERT_NE(part, "") << marker.name;
        for (const std::string &said : {marker.feel, wordsOf(*marker.surfaces.begin())})
            EXPECT_THAT(part, HasSubstr(reading::lowered(said))) << marker.name;
        for (const char *line : {"surfaces: ", "wet: ", "cold: ", "heat: ", "price of one: ", "caution: ",
                                 "ruled out by: ", "how to fix it: "})
            EXPECT_THAT(part, HasSubstr(line)) << marker.name;
    }
}

// Which fact bans which mark: common practice, as the safety questions have it.
TEST(KitSheet, namesTheSafetyFactsThatRuleAMarkOut) {
    const Document sheet = sheetOf(noImplant());
    EXPECT_THAT(partOf(sheet, "Magnet strip"), HasSubstr("an implant (magnetic)"));
    EXPECT_THAT(partOf(sheet, "Rubber band"), HasSubstr("a latex allergy (natural rubber)"));
    EXPECT_THAT(partOf(sheet, "Small bump"), HasSubstr("small enough to swallow"));
    EXPECT_THAT(partOf(sheet, "Grit strip"), HasSubstr("reduced feeling in the hands (sharp or rough)"));
    EXPECT_THAT(partOf(sheet, "Grit strip"), HasSubstr("skin that tears easily"));
    EXPECT_THAT(partOf(sheet, "Spoken tag"), HasSubstr("speech not heard"));
    EXPECT_THAT(partOf(sheet, "Braille label"), HasSubstr("Ruled out by: no safety fact."));
}

TEST(KitSheet, saysWhatIsRuledOutNowAndWhatIsNotAtHand) {
    Case record = planned("nora");
    record.safety.answers[SafetyQuestion::FragileSkin].answer = Answer::Yes;
    ASSERT_TRUE(keepMark(record, *markerOf("cord"), false));
    const Document sheet = sheetOf(record);
    EXPECT_THAT(partOf(sheet, "Grit strip"), HasSubstr("(skin that tears easily: answered yes)"));
    EXPECT_THAT(partOf(sheet, "Knotted cord"), HasSubstr("At hand: no."));
    EXPECT_THAT(partOf(sheet, "Ribbed silicone band"), HasSubstr("At hand: yes."));
    EXPECT_THAT(reading::words(sheet), Not(HasSubstr(record.client.name)));
}

TEST(KitSheet, offersNoMagnetWhileAnImplantIsNotRuledOut) {
    Case record = noImplant();
    for (const Answer answer : {Answer::Yes, Answer::NotAsked}) {
        record.safety.answers[SafetyQuestion::Implant].answer = answer;
        const Document sheet = sheetOf(record);
        EXPECT_EQ(partOf(sheet, "Magnet strip"), "");
        EXPECT_THAT(reading::cautions(sheet),
                    ::testing::Contains(HasSubstr("Magnet strip: not for this client")));
    }
}

TEST(KitSheet, takesOwnMarksAndNeedsNoPlan) {
    Case record = newCase("Invented", "K1");
    Marker cork;
    cork.name = "cork disc";
    cork.size = 3;
    ASSERT_TRUE(keepMark(record, cork, true));
    const auto sheet = kitSheetToPrint(record, findings(record), day);
    ASSERT_TRUE(sheet) << sheet.error().sentence;
    EXPECT_EQ(sheet->fileName, "K1-2026-11-25-kit.pdf");
    const std::string part = partOf(sheetOf(record), "Cork disc");
    EXPECT_THAT(part, HasSubstr("size 3, height 0, texture 0 steps"));
    EXPECT_THAT(part, HasSubstr("Surfaces: none given"));
    EXPECT_THAT(part, HasSubstr("Heat: not known, so keep it cool"));
    record.client.code.clear();
    EXPECT_EQ(kitSheetToPrint(record, findings(record), day).error().code, ErrorCode::Missing);
}
