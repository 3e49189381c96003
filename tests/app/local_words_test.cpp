#include "app/local_words.h"
#include <QTranslator>
#include <gmock/gmock.h>

namespace app {
namespace {

class AmericanWords : public ::testing::Test {
protected:
    void SetUp() override { useAmericanWords(true); }
    void TearDown() override { useAmericanWords(false); }
    static std::string said(const char *sentence) {
        return localWords(QString::fromUtf8(sentence)).toStdString();
    }
};

// 2.54 cm to the inch and 0.45359237 kg to the pound: international yard and pound agreement, 1959.
// Fahrenheit: Food Standards Scotland's 0 to 5 and -18 degrees Celsius are 32 to 41 and 0 degrees Fahrenheit.
TEST_F(AmericanWords, putCustomaryUnitsBehindMetricOnes) {
    EXPECT_EQ(said("Easy reach from 76.2 cm."), "Easy reach from 76.2 cm (30 in).");
    EXPECT_EQ(said("Labels at 40 cm: 36 point."), "Labels at 40 cm (15.7 in): 36 point.");
    EXPECT_EQ(said("60 to 140 cm, at most 2 kg"), "60 to 140 cm (23.6 to 55.1 in), at most 2 kg (4.4 lb)");
    EXPECT_EQ(
        said("Fridge at 0 to 5 degrees Celsius, freezer at -18 degrees Celsius."),
        "Fridge at 0 to 5 degrees Celsius (32 to 41 degrees Fahrenheit), freezer at -18 degrees Celsius (0 "
        "degrees Fahrenheit).");
}

TEST_F(AmericanWords, leaveAloneWhatIsNoMeasure) {
    EXPECT_EQ(said("6/24, 36 point, 4 cmx"), "6/24, 36 point, 4 cmx");
    EXPECT_EQ(said(""), "");
    const std::string once = said("80 cm");
    EXPECT_EQ(said(once.c_str()), once) << "said again, they are not added again";
}

// Spellings: common practice.
TEST_F(AmericanWords, areSpeltTheAmericanWay) {
    EXPECT_EQ(said("Colours fade: the grey centre is unlabelled."),
              "Colors fade: the gray center is unlabeled.");
    EXPECT_EQ(said("GREY, 3 metres, 20 millimetres, half a litre"),
              "GRAY, 3 meters, 20 millimeters, half a liter");
    EXPECT_EQ(said("A judgement; practised."), "A judgment; practiced.");
    EXPECT_EQ(said("Wall cupboard left, shelf 2"), "Wall cupboard left, shelf 2")
        << "names stay as they were given";
}

TEST(LocalWords, areTheSentenceItselfInBritishEnglish) {
    EXPECT_EQ(localWords("80 cm").toStdString(), "80 cm");
}

TEST(Language, followsTheDesktopWhereItIsOnOffer) {
    EXPECT_EQ(languageOf("en_US"), "en_US");
    EXPECT_EQ(languageOf("de_DE"), "en_GB");
    EXPECT_EQ(languageOf(""), "en_GB");
}

TEST(Language, bringsItsOwnWordsForTheWindow) {
    EXPECT_EQ(translatorFor("en_GB"), nullptr);
    EXPECT_EQ(translatorFor("xx"), nullptr);
    const auto american = translatorFor("en_US");
    ASSERT_NE(american, nullptr);
    EXPECT_EQ(american->translate("app::SettingsViewModel", "Own colours"), "Own colors");
    EXPECT_EQ(american->translate("Entries", "Worktop"), "Counter");
    EXPECT_EQ(american->translate("app::SettingsViewModel", "Dark"), QString()) << "the same in both";
}

} // namespace
} // namespace app
