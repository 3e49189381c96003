#include "app/pages/marker_test_page.h"
#include "app/session.h"
#include <QSignalSpy>
#include <gmock/gmock.h>

namespace app {
namespace {

using testing::HasSubstr;

/// Words that would tell the client something: answers, verdicts, and the name of any mark.
QStringList tellingWords(const model::Case &record) {
    QStringList words{QStringLiteral("same"),  QStringLiteral("different"), QStringLiteral("right"),
                      QStringLiteral("wrong"), QStringLiteral("unsure"),    QStringLiteral("catch"),
                      QStringLiteral("accept")};
    for (const auto &mark : record.touchTests.back().marks)
        words << text(model::markName(record, mark));
    return words;
}

class MarkerTestRun : public ::testing::Test {
protected:
    void SetUp() override {
        session.openPractice();
        const auto clients = session.caseload();
        for (const auto &client : *clients)
            if (client.name.starts_with("Idris")) {
                ASSERT_TRUE(session.openClient(client.id));
            }
        page.refresh();
        page.act("new");
    }
    [[nodiscard]] const model::TouchTestRecord &test() const { return session.record().touchTests.back(); }
    [[nodiscard]] model::MarkerTestState state() const { return model::stateOf(test()).value(); }
    /// Answers as a finger that feels all there is.
    void answerTruly() { page.act(state().next->isCatch() ? "same" : "different"); }
    void runToTheEnd() {
        page.edit("limit", "40");
        page.act("begin");
        while (state().next)
            answerTruly();
    }
    /// All that the page shows while a trial runs, but for the titles of the answer buttons.
    [[nodiscard]] QStringList shown() {
        QStringList all{page.kicker(), page.trialWords(), page.trialDetail(), page.title()};
        for (const auto &row : page.form()->rows())
            all << row.label << row.value;
        for (const auto &row : page.findings()->rows())
            all << row.question << row.answer << row.reason;
        for (const auto &row : page.rows()->rows())
            all << row.title << row.facts;
        return all;
    }
    void expectNothingTold(const QStringList &sentences) {
        for (const QString &sentence : sentences)
            for (const QString &word : tellingWords(session.record()))
                EXPECT_FALSE(sentence.contains(word, Qt::CaseInsensitive))
                    << sentence.toStdString() << " holds " << word.toStdString();
    }

    Session session;
    ShellViewModel shell;
    MarkerTestPage page{session, shell};
};

TEST_F(MarkerTestRun, saysAndShowsOnlyNumbersFromTheFirstTrialToTheLast) {
    page.edit("limit", "40");
    page.act("begin");
    QSignalSpy said(&shell, &ShellViewModel::said);
    const QString keys[] = {"same", "different", "unsure", "repeat", "back"};
    for (int press = 0; state().next && press < 200; ++press) {
        expectNothingTold(shown());
        page.act(press % 7 < 5 ? keys[press % 7] : keys[press % 2]);
        if (!state().next)
            break;
        QStringList spoken;
        for (const auto &sentence : said)
            spoken << sentence.front().toString();
        expectNothingTold(spoken);
        said.clear();
        EXPECT_TRUE(page.trialWords().startsWith("Slot ")) << page.trialWords().toStdString();
    }
    EXPECT_TRUE(state().end);
}

TEST_F(MarkerTestRun, givesTwoSlotsOfTheTrayAndNeverTheSameTwice) {
    page.act("begin");
    const model::Slots tray(test());
    for (int trial = 0; trial < 20; ++trial) {
        const auto next = *state().next;
        const auto [first, second] = tray.forTrial(next, state().trials);
        EXPECT_EQ(page.trialWords(), QStringLiteral("Slot %1, then %2").arg(first).arg(second));
        EXPECT_NE(first, second) << "also when the same mark is given twice";
        EXPECT_EQ(tray.markIn(first), next.first);
        EXPECT_EQ(tray.markIn(second), next.second);
        answerTruly();
    }
}

TEST_F(MarkerTestRun, logsEveryAnswerWithTimeHandAndFinger) {
    page.edit("hand", "Left hand");
    page.edit("finger", "index");
    page.act("begin");
    page.act("repeat");
    page.act("unsure");
    page.act("different");
    ASSERT_EQ(test().trials.size(), 3u);
    EXPECT_EQ(test().trials[0].answer, model::TouchAnswer::Repeat);
    EXPECT_EQ(test().trials[1].answer, model::TouchAnswer::Unsure);
    for (const auto &trial : test().trials) {
        EXPECT_EQ(trial.hand, model::Side::Left);
        EXPECT_EQ(trial.finger, "index");
        EXPECT_EQ(trial.at.size(), std::string("2026-11-25T14:58:36").size());
    }
    EXPECT_EQ(state().trials, 2);
    page.act("back");
    EXPECT_EQ(test().trials.size(), 2u);
}

TEST_F(MarkerTestRun, goesOnAfterAPauseWhereItWasLeft) {
    page.act("begin");
    for (int trial = 0; trial < 5; ++trial)
        answerTruly();
    const QString words = page.trialWords();
    MarkerTestPage later(session, shell);
    later.refresh();
    EXPECT_EQ(later.trialWords(), words);
    EXPECT_THAT(later.kicker().toStdString(), HasSubstr("Trial 6 of"));
}

TEST_F(MarkerTestRun, endsWithSetWeakestPairEveryPairAndWhatEndedIt) {
    runToTheEnd();
    const auto result = page.findings()->rows().front();
    EXPECT_THAT(result.reason.toStdString(), HasSubstr("can be told apart. Weakest pair: "));
    EXPECT_THAT(result.reason.toStdString(), HasSubstr(model::wordsOf(*state().end)));
    EXPECT_EQ(page.rows()->rows().size(), state().pairs.size());
    EXPECT_EQ(page.trialWords(), "");
}

TEST_F(MarkerTestRun, isRecheckedOnTenContainersOfWhichOnlyNumbersAreSaid) {
    runToTheEnd();
    ASSERT_TRUE(state().weakest) << "a pair to recheck";
    page.act("recheck");
    EXPECT_EQ(page.rows()->rows().size(), 2 * state().accepted.size()) << "two containers a mark";
    page.act("begin");
    QSignalSpy said(&shell, &ShellViewModel::said);
    for (int trial = 1; trial <= 10; ++trial) {
        expectNothingTold(shown());
        EXPECT_TRUE(page.trialWords().startsWith("Container ")) << page.trialWords().toStdString();
        EXPECT_THAT(page.kicker().toStdString(), HasSubstr("trial " + std::to_string(trial) + " of 10"));
        const auto next = model::nextRecheck(test(), state());
        ASSERT_TRUE(next);
        if (trial == 3) { // taken back and answered again
            page.act("same");
            page.act("back");
        }
        said.clear();
        page.act(next->isCatch() == (trial == 7) ? "different" : "same"); // one wrong answer
        if (trial < 10) {
            QStringList spoken;
            for (const auto &sentence : said)
                spoken << sentence.front().toString();
            expectNothingTold(spoken);
        }
    }
    EXPECT_EQ(test().recheck.size(), 10u);
    EXPECT_THAT(model::recheckInWords(test()), HasSubstr("9 of 10 right on real containers."));
    EXPECT_EQ(page.trialWords(), "") << "back to the result";
}

TEST_F(MarkerTestRun, canBeLeftOutBeforeItBegins) {
    const auto before = session.record().touchTests.size();
    page.act("cancel");
    EXPECT_EQ(session.record().touchTests.size(), before - 1);
    page.act("back");
    EXPECT_THAT(shell.message().toStdString(), HasSubstr("no answer to take back"));
}

} // namespace
} // namespace app
