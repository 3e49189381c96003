#include "app/pages/client_page.h"
#include "app/pages/marker_kit_page.h"
#include "app/pages/sight_pages.h"
#include "app/session.h"
#include <QDir>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <gmock/gmock.h>

namespace app {
namespace {

using testing::HasSubstr;
using testing::Not;

/// Nora, as the practice caseload has her.
class Assessment : public ::testing::Test {
protected:
    void SetUp() override {
        session.openPractice();
        const auto clients = session.caseload();
        for (const auto &client : *clients)
            if (client.name.starts_with("Nora")) {
                ASSERT_TRUE(session.openClient(client.id));
            }
        ASSERT_TRUE(session.hasClient());
    }
    /// The field with that key, or one without a key.
    static FormField field(PageViewModel &page, const QString &key) {
        for (const auto &row : page.form()->rows())
            if (row.key == key)
                return row;
        return {};
    }
    static std::string error(PageViewModel &page, const QString &key) {
        return field(page, key).error.toStdString();
    }
    static std::string reason(PageViewModel &page, const QString &topic) {
        for (const auto &row : page.findings()->rows())
            if (row.question.startsWith(topic))
                return (row.answer + QStringLiteral(" | ") + row.reason).toStdString();
        return {};
    }
    [[nodiscard]] const model::Measurement &newest() const { return session.record().measurements.back(); }

    Session session;
    ShellViewModel shell;
};

using Sight = Assessment;
using Touch = Assessment;
using Reach = Assessment;
using Reading = Assessment;
using LegibleHere = Assessment;
using MarkerKit = Assessment;

TEST_F(Sight, goesToTheNextResultThatIsOpen) {
    MeasurementPage page(session, shell, model::Domain::Sight);
    page.refresh();
    QString wanted;
    QObject::connect(&page, &PageViewModel::focusField, &page, [&](const QString &key) { wanted = key; });
    page.edit("distance-acuity-1", "6/");
    page.nextGap({}, 1);
    EXPECT_EQ(wanted, "distance-acuity-1"); // refused: it waits
    page.nextGap(wanted, 1);
    EXPECT_TRUE(field(page, wanted).value.isEmpty()) << wanted.toStdString();
    const QString next = wanted;
    page.nextGap(next, -1);
    EXPECT_EQ(wanted, "distance-acuity-1");
}

using SafetyQuestions = Assessment;

TEST_F(SafetyQuestions, saysWhenNoneIsLeftToAsk) {
    SafetyPage page(session, shell);
    page.refresh();
    QString wanted;
    QObject::connect(&page, &PageViewModel::focusField, &page, [&](const QString &key) { wanted = key; });
    for (int asked = 0; asked < 22 && shell.message().isEmpty(); ++asked) {
        page.nextGap(wanted, 1);
        EXPECT_EQ(field(page, wanted).kind, FieldKind::YesNo);
        page.edit(wanted, "no");
    }
    EXPECT_EQ(shell.message(), "Nothing is open on this page.");
}

TEST_F(SafetyQuestions, allergensThatNobodyAskedAboutAreOpenOnTheClientPage) {
    ASSERT_TRUE(session.edit("all", "test", [](model::Case &record) { record.diet = {}; }));
    ClientPage page(session, shell);
    page.refresh();
    QString wanted;
    QObject::connect(&page, &PageViewModel::focusField, &page, [&](const QString &key) { wanted = key; });
    page.nextGap("otherDiet", -1);
    EXPECT_EQ(wanted, "avoids");
    page.edit("avoids", "none");
    wanted.clear();
    page.nextGap("otherDiet", -1);
    EXPECT_NE(wanted, "avoids");
}

TEST_F(MarkerKit, isLeftByTheWayBack) {
    MarkerKitPage page(session, shell);
    page.refresh();
    page.activated(page.rows()->rows().front().key);
    const auto fields = page.form()->rows().size();
    page.goBack();
    EXPECT_NE(page.form()->rows().size(), fields);
}

TEST_F(Sight, keepsTheChartWithTheAcuitiesOfItsDayAndShowsIt) {
    MeasurementPage page(session, shell, model::Domain::Sight);
    page.refresh();
    EXPECT_EQ(field(page, "distance-acuity-chart").value, "letters in rows");
    EXPECT_EQ(field(page, "distance-acuity-chart").note, "of 10 November 2026");
    page.edit("distance-acuity-1", "6/48");
    page.edit("distance-acuity-chart", "tumbling E, single");
    EXPECT_EQ(newest().typed, "6/48");
    EXPECT_EQ(newest().chart, "tumbling E, single");
    EXPECT_EQ(session.record().measurements.front().chart, "letters in rows") << "of the day before";
    page.edit("distance-acuity-2", "6/30");
    EXPECT_EQ(newest().chart, "tumbling E, single") << "the next acuity of the day has it too";
    EXPECT_THAT(reason(page, "Distance acuity"), HasSubstr("Chart: letters in rows."))
        << "of the worst day, which the plan goes by";
    EXPECT_EQ(field(page, "near-acuity-chart").value, "words on a reading card");
}

TEST_F(Sight, refusesAChartWithoutAnAcuity) {
    ASSERT_TRUE(session.addClient("Invented Two", "I2"));
    MeasurementPage page(session, shell, model::Domain::Sight);
    page.refresh();
    page.edit("near-acuity-chart", "symbols, crowded");
    EXPECT_THAT(error(page, "near-acuity-chart"), HasSubstr("no such acuity yet"));
    EXPECT_EQ(field(page, "near-acuity-chart").value, "symbols, crowded") << "kept";
}

TEST_F(Sight, refusesWhatCannotBeAndKeepsItInItsField) {
    MeasurementPage page(session, shell, model::Domain::Sight);
    page.refresh();
    const model::Case before = session.record();
    const std::pair<const char *, const char *> entries[] = {
        {"distance-acuity-1", "6/"},
        {"distance-acuity-1", "20/0"},
        {"distance-acuity-1", "1.2.3"},
        {"distance-acuity-1", "logMAR 4"},
        {"near-acuity-3", "N12"},
        {"near-acuity-3", "M 0 at 40 cm"},
        {"near-acuity-3", "0 M at 40 cm"},
        {"preferred-print-0", "big"},
        {"contrast-0", "9"},
        {"field-0", "400"},
    };
    for (const auto &[key, typed] : entries) {
        page.edit(key, typed);
        EXPECT_NE(error(page, key), "") << typed;
        EXPECT_EQ(field(page, key).value, typed) << "kept";
    }
    EXPECT_EQ(session.record(), before);
}

TEST_F(Sight, keepsAndFlagsEntriesThatContradictEachOther) {
    MeasurementPage page(session, shell, model::Domain::Sight);
    page.refresh();
    for (const char *key : {"distance-acuity-1", "distance-acuity-2", "distance-acuity-3"})
        page.edit(key, "6/120 at 6 m");
    page.edit("near-acuity-3", "N60 at 25 cm");
    page.edit("preferred-print-0", "18 point at 40 cm");
    EXPECT_EQ(newest().typed, "18 point");
    EXPECT_THAT(reason(page, "Contradiction"), HasSubstr("kept as typed"));
}

TEST_F(Touch, keepsEachFingerOfEachHandApart) {
    MeasurementPage page(session, shell, model::Domain::Touch);
    page.refresh();
    EXPECT_EQ(field(page, "finger").value, "index") << "what was entered is seen first";
    EXPECT_EQ(field(page, "finger").note, "tested: right hand, index; left hand, index");
    EXPECT_EQ(field(page, "monofilament-1-index").value, "3.84");
    page.edit("finger", "thumb");
    EXPECT_EQ(field(page, "monofilament-1-thumb").value, "");
    EXPECT_EQ(field(page, "monofilament-1-thumb").label, "Monofilament, lightest felt, right hand, thumb");
    page.edit("monofilament-1-thumb", "2.83");
    EXPECT_EQ(newest().finger, "thumb");
    page.edit("finger", "index");
    EXPECT_EQ(field(page, "monofilament-1-index").value, "3.84");
    EXPECT_THAT(reason(page, "Sensitivity"), HasSubstr("right hand, thumb"));
    page.edit("reading-finger-0", "right index");
    EXPECT_THAT(reason(page, "Sensitivity"), HasSubstr("Of the finger that reads: right hand, index."));
    page.edit("finger", "finger not stated");
    page.edit("two-point-static-2", "4 mm");
    EXPECT_EQ(newest().finger, "");
}

TEST_F(Touch, aRefusedEntryStaysWithItsFinger) {
    MeasurementPage page(session, shell, model::Domain::Touch);
    page.refresh();
    page.edit("two-point-static-1-index", "0.1 mm");
    EXPECT_THAT(error(page, "two-point-static-1-index"), HasSubstr("1 to 30 mm"));
    page.edit("finger", "ring");
    EXPECT_EQ(error(page, "two-point-static-1-ring"), "");
    page.edit("finger", "index");
    EXPECT_EQ(field(page, "two-point-static-1-index").value, "0.1 mm");
}

TEST_F(Touch, refusesWhatCannotBeAndKeepsItInItsField) {
    MeasurementPage page(session, shell, model::Domain::Touch);
    page.refresh();
    const model::Case before = session.record();
    const std::pair<const char *, const char *> entries[] = {
        {"monofilament-1-index", "3.60"},    {"two-point-static-1-index", "0.1 mm"},
        {"temperature-1-index", "11/10"},    {"shapes-1", "6/5"},
        {"braille-reading-0", "no, 60 wpm"}, {"reading-finger-0", "toe"},
    };
    for (const auto &[key, typed] : entries) {
        page.edit(key, typed);
        EXPECT_NE(error(page, key), "") << typed;
        EXPECT_EQ(field(page, key).value, typed) << "kept";
    }
    EXPECT_EQ(session.record(), before);
}

TEST_F(Sight, saysWhyAgainWhereARefusedEntryIsComeBackTo) {
    MeasurementPage page(session, shell, model::Domain::Sight);
    page.refresh();
    page.edit("distance-acuity-1", "6/");
    const QString refusal = field(page, "distance-acuity-1").error;
    ASSERT_NE(refusal, "");
    MeasurementPage again(session, shell, model::Domain::Sight);
    again.refresh();
    EXPECT_EQ(field(again, "distance-acuity-1").value, "6/");
    EXPECT_EQ(field(again, "distance-acuity-1").error, refusal);
}

TEST_F(Sight, tellsWhatIsKnownBeforeWhatWasNotMeasured) {
    MeasurementPage page(session, shell, model::Domain::Sight);
    ASSERT_TRUE(session.edit("all", "test", [](model::Case &record) { record.measurements.clear(); }));
    page.refresh();
    page.edit("contrast-0", "0.6");
    EXPECT_EQ(page.findings()->rows().front().question, "Contrast");
}

TEST_F(Reach, tellsEachShelfWithItsReasonAndBothLiftingRules) {
    MeasurementPage page(session, shell, model::Domain::Reach);
    page.refresh();
    EXPECT_EQ(page.rows()->rows().size(), session.record().places.size());
    for (const auto &row : page.rows()->rows()) {
        EXPECT_TRUE(QStringList({"easy", "a stretch", "out of reach"}).contains(row.amount))
            << row.amount.toStdString();
        EXPECT_THAT(row.facts.toStdString(), HasSubstr("cm"));
    }
    page.edit("lift-0", "40 kg");
    EXPECT_THAT(page.rows()->rows().front().facts.toStdString(), HasSubstr("NIOSH"));
    EXPECT_THAT(reason(page, "Two rules of lifting"), HasSubstr("not for one hand"));
    page.edit("lift-figures-0", "men's");
    EXPECT_THAT(reason(page, "Two rules of lifting"), HasSubstr("men's figures"));
    page.edit("lift-figures-0", "his");
    EXPECT_THAT(error(page, "lift-figures-0"), HasSubstr("women's or men's"));
}

// Anatomy, common practice: arms hang from the shoulder.
TEST_F(Reach, refusesHeightsThatCannotBeOfOnePerson) {
    MeasurementPage page(session, shell, model::Domain::Reach);
    page.refresh();
    page.edit("shoulder-0", "131 cm");
    page.edit("reach-low-0", "140 cm");
    EXPECT_THAT(error(page, "reach-low-0"), HasSubstr("below this: Shoulder height, 131 cm"));
    EXPECT_EQ(field(page, "reach-low-0").value, "140 cm") << "kept";
    page.edit("reach-low-0", "131 cm");
    EXPECT_NE(error(page, "reach-low-0"), "");
    page.edit("reach-low-0", "130 cm");
    EXPECT_EQ(error(page, "reach-low-0"), "");
    page.edit("shoulder-0", "110 cm");
    EXPECT_THAT(error(page, "shoulder-0"), HasSubstr("above this: Lowest height reached with ease, 130 cm"));
    page.edit("reach-high-0", "120 cm");
    EXPECT_THAT(error(page, "reach-high-0"), HasSubstr("above this: Lowest"));
    page.edit("reach-low-0", "30 cm");
    page.edit("reach-high-0", "100 cm");
    EXPECT_EQ(error(page, "reach-high-0"), "") << "not every shoulder lifts";
    page.edit("knuckle-0", "120 cm");
    page.edit("shoulder-0", "118 cm");
    EXPECT_THAT(error(page, "shoulder-0"), HasSubstr("Knuckle height, arm hanging, 120 cm"));
    page.edit("shoulder-0", "not tested: arm in a sling");
    EXPECT_EQ(error(page, "shoulder-0"), "");
}

TEST_F(Reading, entersATrialLineByLineAndSetsThePaperSize) {
    ReadingPage page(session, shell);
    page.refresh();
    page.edit("distance", "25 cm");
    page.edit("version", "B");
    const char *times[] = {"5 s, 0 wrong", "5.2 1", "6", "9 2", "not read"};
    for (int line = 1; line <= 5; ++line)
        page.edit(QStringLiteral("line-%1").arg(line), times[line - 1]);
    EXPECT_THAT(page.kicker().toStdString(), testing::StartsWith("5 of 12 lines entered"));
    EXPECT_EQ(newest().test, model::Test::ReadingTrial);
    EXPECT_EQ(newest().method, "sheet B");
    EXPECT_NE(reason(page, "Reading acuity"), "");
    EXPECT_NE(reason(page, "Critical print size"), "");
    page.edit("line-6", "fast");
    EXPECT_THAT(error(page, "line-6"), HasSubstr("Not a time"));
    MeasurementPage sight(session, shell, model::Domain::Sight);
    sight.refresh();
    sight.edit("method", "by the window");
    EXPECT_EQ(newest().method, "sheet B") << "which sheet was read stays known";
}

// Whoever hears a sentence before she reads it is not tested by it.
TEST_F(Reading, givesNoSentenceAwayUntilItIsAskedForWithHeadphones) {
    ReadingPage page(session, shell);
    page.refresh();
    QSignalSpy said(&shell, &ShellViewModel::said);
    const auto spoken = [&] {
        page.command("readBack");
        return said.takeLast().front().toString().toStdString();
    };
    const auto sentences = model::readingSentences(model::ReadingVersion::A);
    for (const FormField &shown : page.form()->rows())
        for (const std::string &sentence : sentences)
            EXPECT_THAT((shown.label + shown.hint + shown.note).toStdString(), Not(HasSubstr(sentence)));
    EXPECT_THAT(page.kicker().toStdString(), HasSubstr("headphones"));
    EXPECT_EQ(spoken(), "Put headphones on. The same key again speaks the next sentence.");
    EXPECT_EQ(spoken(), "Line 1: " + sentences[0] + ".");
    page.edit("line-1", "5 s");
    page.edit("line-2", "5 s");
    EXPECT_EQ(spoken(), "Line 3: " + sentences[2] + ".");
    EXPECT_THAT(shell.message().toStdString(), Not(HasSubstr(sentences[2]))) << "not shown either";
    page.edit("line-12", "not read");
    EXPECT_EQ(spoken(), "The last line is entered.");
}

TEST_F(LegibleHere, tellsAVerdictWithItsReasonForEachLabel) {
    MeasurementPage sight(session, shell, model::Domain::Sight);
    sight.refresh();
    sight.edit("contrast-0", "0.6");
    LegiblePage page(session, shell);
    page.refresh();
    ASSERT_FALSE(page.rows()->rows().empty());
    for (const auto &row : page.rows()->rows()) {
        EXPECT_NE(row.amount, "");
        EXPECT_NE(row.facts, "");
    }
    const auto before = page.rows()->rows();
    page.edit("colours", "grey on white");
    EXPECT_NE(page.rows()->rows(), before) << "weak contrast counts";
    const auto last = page.rows()->rows().back();
    page.moved(last.key);
    EXPECT_EQ(page.findings()->rows().front().reason, last.facts);
}

TEST_F(MarkerKit, writesItsSheetToPrint) {
    const QTemporaryDir folder;
    session.keepSetting("papersFolder", folder.path());
    MarkerKitPage page(session, shell);
    page.refresh();
    page.act("sheet");
    const QStringList files = QDir(folder.path()).entryList(QDir::Files);
    ASSERT_EQ(files.size(), 1);
    EXPECT_TRUE(files.front().endsWith("-kit.pdf")) << files.front().toStdString();
    EXPECT_THAT(shell.message().toStdString(), HasSubstr("not encrypted any more"));
    session.keepSetting("papersFolder", folder.filePath(files.front()) + "/inside");
    page.act("sheet");
    EXPECT_THAT(shell.message().toStdString(), HasSubstr("Choose a folder"));
}

TEST_F(MarkerKit, addsChangesAndForgetsMarks) {
    MarkerKitPage page(session, shell);
    page.refresh();
    const auto before = page.rows()->rows().size();
    page.act("new");
    EXPECT_EQ(page.rows()->rows().size(), before + 1);
    page.edit("name", "cork disc");
    page.edit("size", "60");
    EXPECT_THAT(error(page, "size"), HasSubstr("60"));
    page.edit("surfaces", "glas");
    EXPECT_THAT(error(page, "surfaces"), HasSubstr("Not a surface: glas"));
    page.act("forget");
    EXPECT_EQ(page.rows()->rows().size(), before);
}

} // namespace
} // namespace app
