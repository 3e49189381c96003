#include "demo_case.h"
#include "model/fixing.h"
#include "reports/label_rules.h"
#include "reports/labels.h"
#include "reports/papers.h"
#include <gmock/gmock.h>
#include <set>

using namespace model;
using namespace reports;
using demo_case::day;
using demo_case::findings;
using demo_case::planned;
using ::testing::Contains;
using ::testing::HasSubstr;
using ::testing::SizeIs;

namespace {

Label saying(const std::string &words, LabelMedium medium = LabelMedium::Braille) {
    Label label;
    label.medium = medium;
    label.words = words;
    return label;
}

const MayShorten anything = [](const std::string &) { return true; };
const MayShorten nothing = [](const std::string &) { return false; };

Label onTape(const std::string &words, int grade, const MayShorten &may) {
    const BrailleFace tape{"on the tape", {75}, {12.7}, true};
    return brailleFitted(saying(words), tape, grade, may).value();
}

} // namespace

struct Fit {
    const char *words;
    int grade, cells; // 0: does not fit
};

/// Cells: words with their braille as in the open tables of Unified English Braille. Room: 11 cells on 75 mm
/// with 3 mm at both sides, NLS Specification 800, one line on tape 12.7 mm high.
class OnTape : public ::testing::TestWithParam<Fit> {};
INSTANTIATE_TEST_SUITE_P(KitchenWords, OnTape,
                         ::testing::Values(Fit{"milk", 1, 4}, Fit{"coffee", 1, 6}, Fit{"coffee", 2, 5},
                                           Fit{"baking powder", 1, 0}, Fit{"baking powder", 2, 9},
                                           Fit{"washing powder", 2, 9}, Fit{"cinnamon", 2, 7},
                                           Fit{"dishwasher tablets", 2, 0}, Fit{"olive oil", 2, 9}));

TEST_P(OnTape, fitsByItsCellsAndNotByItsLetters) {
    const Label label = onTape(GetParam().words, GetParam().grade, nothing);
    EXPECT_EQ(label.fits, GetParam().cells > 0);
    if (label.fits) {
        EXPECT_EQ(label.cells.at(0).size() / 3, static_cast<std::size_t>(GetParam().cells));
    }
}

TEST(BrailleLabels, breakBetweenWordsWhereThereIsRoomForLines) {
    const BrailleFace card{"on a card", {75}, {38}};
    const Label label = brailleFitted(saying("chopped tomatoes"), card, 2, nothing).value();
    EXPECT_TRUE(label.fits);
    EXPECT_THAT(label.cells, SizeIs(2));
}

TEST(BrailleLabels, areShortenedByWholeWordsAndSaySo) {
    const Label label = onTape("chopped tomatoes", 2, anything);
    EXPECT_EQ(label.words, "tomatoes");
    EXPECT_THAT(label.told, Contains(HasSubstr("Shortened from \"chopped tomatoes\"")));
}

TEST(BrailleLabels, thatDoNotFitSayHowMuchRoomTheyNeed) {
    const Label label = onTape("chopped tomatoes", 2, nothing); // 14 cells
    EXPECT_FALSE(label.fits);
    EXPECT_EQ(label.words, "chopped tomatoes");
    // 13 * 6.2 + 2.34 + 1.44 + 6 = 90.38
    EXPECT_THAT(label.told, Contains(HasSubstr("14 cells, 91 mm in one line; there is room for 11 cells")));
}

TEST(PrintLabels, haveTheSizeThatIsNeededOrSayWhatFits) {
    const PrintFace face{{76}, {38}, {{Points{26}, ""}}, false};
    const Label fits = printFitted(saying("Rice", LabelMedium::LargePrint), face, nothing);
    EXPECT_TRUE(fits.fits);
    EXPECT_EQ(fits.size, Points{26});
    const PrintFace narrow{{30}, {20}, {{Points{40}, ""}}, false};
    const Label not_ = printFitted(saying("Marmalade", LabelMedium::LargePrint), narrow, nothing);
    EXPECT_FALSE(not_.fits);
    EXPECT_THAT(not_.told, Contains(HasSubstr("40 point is needed")));
    const Label never = printFitted(saying("Rice", LabelMedium::LargePrint), {{76}, {38}, {}, true}, nothing);
    EXPECT_THAT(never.told, Contains(HasSubstr("Print will not do here")));
}

/// Text of one record in "en-GB" on tags of 144, 504 and 888 bytes: 131, 478 and 854 bytes.
TEST(TagLabels, nameTheTagThatHoldsThem) {
    const auto told = [](std::size_t bytes) {
        return tagFitted(saying(std::string(bytes, 'x'), LabelMedium::SpokenTag)).told.front();
    };
    EXPECT_THAT(told(131), HasSubstr("144 bytes"));
    EXPECT_THAT(told(132), HasSubstr("504 bytes"));
    EXPECT_THAT(told(478), HasSubstr("504 bytes"));
    EXPECT_THAT(told(479), HasSubstr("888 bytes"));
    EXPECT_THAT(told(855), HasSubstr("Too long"));
}

/// Bytes at level Q, ISO/IEC 18004: version 2 holds 20, version 4 46, version 10 151. A side is 17 + 4 times
/// the version, with 4 modules free on both sides.
TEST(CodeLabels, nameVersionAndSide) {
    const auto told = [](std::size_t bytes) {
        return codeFitted(saying(std::string(bytes, 'x'), LabelMedium::SquareCode)).told.front();
    };
    EXPECT_THAT(told(20), HasSubstr("Version 2 at level Q: 33 mm"));
    EXPECT_THAT(told(46), HasSubstr("Version 4 at level Q: 41 mm"));
    EXPECT_THAT(told(151), HasSubstr("Version 10 at level Q: 65 mm"));
    EXPECT_THAT(told(152), HasSubstr("Too long"));
}

TEST(Labels, ofAShelfAreAllDifferent) {
    for (const std::string name : {"nora", "idris", "tilda"}) {
        const Case &record = planned(name);
        std::map<Id, std::set<std::string>> words;
        std::map<Id, std::size_t> count;
        const auto labels = thingLabels(record, findings(record)).value();
        for (const Label &label : labels)
            for (const PlanLine &line : record.plan->lines)
                if (line.thing == label.thing) {
                    words[line.place].insert(label.words);
                    ++count[line.place];
                }
        for (const auto &[place, all] : words)
            EXPECT_EQ(all.size(), count[place]) << name << " " << place.text;
    }
}

TEST(Labels, ofWhatWarnsAreNeverShortened) {
    Case record = planned("idris");
    PlanLine &line = record.plan->lines.front();
    line.marker = "braille";
    line.meanings = {"hazard"};
    Thing &thing = *std::find_if(record.things.begin(), record.things.end(),
                                 [&](const Thing &t) { return t.id == line.thing; });
    thing.name = "unsalted extraordinarily fermented peanut butter substitute";
    thing.shape = Shape::Can;
    const auto label = labelOf(record, findings(record), thing.id).value();
    ASSERT_TRUE(label);
    EXPECT_EQ(label->words, thing.name);
    EXPECT_FALSE(label->fits);
}

TEST(Labels, asSquareCodesOnlyWhereTheyAreAskedFor) {
    Case record = planned("nora");
    const auto isCode = [](const Label &label) { return label.medium == LabelMedium::SquareCode; };
    auto labels = thingLabels(record, findings(record)).value();
    EXPECT_FALSE(std::any_of(labels.begin(), labels.end(), isCode));
    record.client.hasCodeReader = true;
    labels = thingLabels(record, findings(record)).value();
    EXPECT_EQ(static_cast<std::size_t>(std::count_if(labels.begin(), labels.end(), isCode)),
              record.plan->lines.size());
}

TEST(Labels, areDrawnAsSquareCodesOnTheSheet) {
    Case record = planned("nora");
    record.client.hasCodeReader = true;
    const Document sheet = labelSheet(record, findings(record), day, "R. Invented").value();
    std::vector<std::string> drawn, wanted;
    for (const Block &block : sheet.blocks)
        if (const auto *figure = std::get_if<Figure>(&block))
            drawn.push_back(figure->words);
    const std::vector<Label> labels = thingLabels(record, findings(record)).value();
    for (const Label &label : labels)
        if (label.medium == LabelMedium::SquareCode && label.fits)
            wanted.push_back("Square code of " + label.name + ". It says: " + label.words);
    EXPECT_FALSE(wanted.empty());
    EXPECT_EQ(drawn, wanted);
}

TEST(SectionLabels, ofTwoPlacesOfOneUnitAreNeverTheSame) {
    for (const char *name : {"nora", "idris", "tilda"}) {
        Case record = planned(name);
        for (Thing &thing : record.things)
            thing.group = thing.klass == Klass::Food ? "food" : "else"; // as if nobody had sorted them
        const auto labels = sectionLabels(record, findings(record)).value();
        std::set<std::pair<Id, std::string>> seen;
        for (const Label &label : labels) {
            const auto place = std::ranges::find(record.places, label.place, &Place::id);
            EXPECT_TRUE(seen.emplace(place->unit, label.words).second) << name << ": " << label.words;
        }
    }
}

/// 58 point and more has no room on a card of 150 by 40 mm: a large one is made instead.
TEST(SectionLabels, thatNeedMoreRoomGoOnALargeCard) {
    const Case record = planned("tilda");
    const auto labels = sectionLabels(record, findings(record)).value();
    EXPECT_GE(std::ranges::count(labels, "on a large card at the side of the place", &Label::where), 1);
    for (const Label &label : labels)
        EXPECT_TRUE(label.fits) << label.words << ": " << (label.told.empty() ? "" : label.told.back());
}

TEST(SectionLabels, nameEveryPlaceInTheClientsWords) {
    Case record = planned("idris");
    for (Thing &thing : record.things)
        if (thing.group == "tins")
            thing.group = "cans";
    const auto labels = sectionLabels(record, findings(record)).value();
    std::set<Id> places;
    std::string all;
    for (const Label &label : labels) {
        places.insert(label.place);
        all += label.words + "; ";
    }
    EXPECT_EQ(places.size(), record.places.size());
    EXPECT_THAT(all, HasSubstr("cans"));
    EXPECT_THAT(all, testing::Not(HasSubstr("tins")));
}

TEST(BrailleLabelFile, holdsWhatFitsInPagesOf25Lines) {
    std::vector<Label> labels;
    for (int k = 0; k < 15; ++k)
        labels.push_back(onTape("milk", 2, nothing));
    labels.push_back(onTape("dishwasher tablets", 2, nothing));
    const std::string file = brailleLabelFile(labels);
    EXPECT_TRUE(file.starts_with("MILK\r\n\r\nMILK\r\n"));
    EXPECT_THAT(file, testing::Not(HasSubstr("DI%WA%]")));
    int line = 0;
    for (const char letter : file) {
        if (letter == '\f') {
            EXPECT_EQ(line, 25) << "a page of braille is full, as an embosser wants it";
        }
        line = letter == '\f' ? 0 : line + (letter == '\n' ? 1 : 0);
    }
    EXPECT_EQ(std::count(file.begin(), file.end(), '\f'), 2);
}

TEST(LabelSheet, printsEachLabelInItsOwnSize) {
    const Case &record = planned("nora");
    const auto labels = thingLabels(record, findings(record)).value();
    const Document sheet = labelSheet(record, findings(record), day, "R. Invented").value();
    for (const Label &label : labels) {
        if (label.medium != LabelMedium::LargePrint || !label.fits)
            continue;
        const auto prints = [&](const Block &block) {
            const auto *paragraph = std::get_if<Paragraph>(&block);
            return paragraph && joined(paragraph->text) == label.words &&
                   paragraph->points == label.size->value;
        };
        EXPECT_TRUE(std::any_of(sheet.blocks.begin(), sheet.blocks.end(), prints)) << label.words;
    }
    EXPECT_TRUE(writePdf(sheet, PrintLayout{}));
}

TEST(LabelSheet, namesNobody) {
    const Case &record = planned("tilda");
    const Document sheet = labelSheet(record, findings(record), day, "R. Invented").value();
    EXPECT_THAT(writeText(sheet).value(), testing::Not(HasSubstr("Fernbrook")));
}
