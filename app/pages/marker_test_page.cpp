#include "app/pages/marker_test_page.h"
#include "app/pages/entries.h"
#include "model/kit.h"
#include <QDateTime>
#include <QRandomGenerator>
#include <algorithm>

namespace app {

using model::Case;
using model::GivenPair;
using model::TouchAnswer;
using model::TouchTestRecord;
using model::TouchTrial;

namespace {

TouchTestRecord &lastIn(Case &record) {
    return record.touchTests.back();
}

int counting(const std::vector<TouchTrial> &trials) {
    return static_cast<int>(std::ranges::count_if(
        trials, [](const TouchTrial &trial) { return trial.answer != TouchAnswer::Repeat; }));
}

std::size_t placeAmong(const std::vector<std::size_t> &marks, std::size_t mark) {
    return static_cast<std::size_t>(std::ranges::find(marks, mark) - marks.begin());
}

std::optional<TouchAnswer> answerOfKey(const QString &key) {
    static const std::map<QString, TouchAnswer> answers{
        {QStringLiteral("same"), TouchAnswer::Same},
        {QStringLiteral("different"), TouchAnswer::Different},
        {QStringLiteral("unsure"), TouchAnswer::Unsure},
        {QStringLiteral("repeat"), TouchAnswer::Repeat},
    };
    const auto found = answers.find(key);
    return found == answers.end() ? std::nullopt : std::optional(found->second);
}

} // namespace

const TouchTestRecord *MarkerTestPage::test() const {
    return record().touchTests.empty() ? nullptr : &record().touchTests.back();
}

MarkerTestPage::Stage MarkerTestPage::stage() const {
    const TouchTestRecord *now = test();
    if (!now)
        return Stage::None;
    if (m_state.end)
        return m_recheck == Recheck::Running   ? Stage::Recheck
               : m_recheck == Recheck::LaidOut ? Stage::RecheckLaidOut
                                               : Stage::Ended;
    return now->trials.empty() && !m_begun ? Stage::Choosing : Stage::Running;
}

void MarkerTestPage::refresh() {
    m_state = {};
    if (const TouchTestRecord *now = test())
        if (const auto state = model::stateOf(*now))
            m_state = *state;
    Shown shown;
    switch (stage()) {
    case Stage::None:
        shown.kicker = tr("No marker test yet");
        shown.actions = {{.key = "new", .title = tr("Choose the marks"), .primary = true}};
        break;
    case Stage::Choosing:
        shown = choosing();
        break;
    case Stage::Running:
        shown = running();
        break;
    case Stage::Ended:
        shown = result();
        break;
    case Stage::RecheckLaidOut:
    case Stage::Recheck:
        shown = recheck();
        break;
    }
    m_kicker = shown.kicker;
    setTrial(shown.trial, shown.kicker);
    setFields(std::move(shown.fields)); // each once, so that what has the focus stays
    m_actions.setRows(std::move(shown.actions));
    m_findings.setRows(std::move(shown.findings));
    m_rowsLabel = shown.rowsLabel;
    m_rows.setRows(std::move(shown.rows));
    emit refreshed();
}

void MarkerTestPage::act(const QString &key) {
    if (const auto given = answerOfKey(key))
        answer(*given);
    else if (key == QLatin1String("new"))
        startNew();
    else if (key == QLatin1String("begin"))
        begin();
    else if (key == QLatin1String("back"))
        takeBack();
    else if (key == QLatin1String("pause"))
        m_shell.goTo(QStringLiteral("touch"));
    else if (key == QLatin1String("stop"))
        stop();
    else if (key == QLatin1String("cancel")) {
        if (change(tr("marker test left out"), "touchtest.removed", [](Case &r) { r.touchTests.pop_back(); }))
            say(tr("Nothing is kept of it."));
    } else if (key == QLatin1String("recheck")) {
        m_recheck = Recheck::LaidOut;
        refresh();
        emit focusHeading();
    } else if (key == QLatin1String("result")) {
        m_recheck = Recheck::No;
        refresh();
        emit focusHeading();
    }
}

void MarkerTestPage::startNew() {
    std::vector<std::string> keys;
    constexpr std::size_t most = 12;
    for (const auto &marker : model::kitOf(record()))
        if (marker.medium == model::MarkMedium::Touch && keys.size() < most &&
            !m_session.findings().bannedMarks.contains(marker.key))
            keys.push_back(marker.key);
    const auto seed = static_cast<std::int64_t>(QRandomGenerator::system()->bounded(1, 1'000'000'000));
    TouchTestRecord fresh = model::newTouchTest(record(), keys, true, seed);
    fresh.begun = m_session.today();
    m_begun = false;
    m_recheck = Recheck::No;
    if (change(tr("new marker test"), "touchtest.added", [&](Case &r) { r.touchTests.push_back(fresh); }))
        emit focusHeading();
}

/// From laying out to the first trial, of the test or of the recheck.
void MarkerTestPage::begin() {
    if (stage() == Stage::RecheckLaidOut)
        m_recheck = Recheck::Running;
    else
        m_begun = true;
    refresh();
    emit focusTrial(); // which says the slots
    say(tr("Headphones on."));
}

void MarkerTestPage::answer(TouchAnswer given) {
    const Stage now = stage();
    if (now != Stage::Running && now != Stage::Recheck)
        return;
    const auto next = isRecheck() ? model::nextRecheck(*test(), m_state) : m_state.next;
    if (!next)
        return;
    if (given == TouchAnswer::Repeat)
        sayTrial();
    const TouchTrial trial{*next, given, QDateTime::currentDateTime().toString(Qt::ISODate).toStdString(),
                           test()->hand, test()->finger};
    const bool recheck = isRecheck();
    const int number = counting(recheck ? test()->recheck : test()->trials) + 1;
    if (!change(tr("trial %1").arg(number), "touchtest.trial",
                [&](Case &r) { (recheck ? lastIn(r).recheck : lastIn(r).trials).push_back(trial); }))
        return;
    if (given != TouchAnswer::Repeat)
        sayTrial();
}

void MarkerTestPage::takeBack() {
    const bool recheck = isRecheck();
    if (!test() || (recheck ? test()->recheck : test()->trials).empty()) {
        say(tr("There is no answer to take back."));
        return;
    }
    if (!change(tr("answer taken back"), "touchtest.takenback",
                [&](Case &r) { (recheck ? lastIn(r).recheck : lastIn(r).trials).pop_back(); }))
        return;
    m_begun = true;
    refresh();
    emit focusTrial();
    sayTrial(tr("Taken back."));
}

void MarkerTestPage::stop() {
    if (change(tr("marker test stopped"), "touchtest.stopped", [](Case &r) { lastIn(r).stopped = true; })) {
        emit focusHeading();
        sayAfterFocus(tr("Stopped. The result is on this page."));
    }
}

/// "Slot 4, then 9. Trial 8." Nothing that tells an answer.
QString MarkerTestPage::slotWords() const {
    const TouchTestRecord &now = *test();
    if (!isRecheck()) {
        const int number = m_state.trials;
        const auto [first, second] = model::Slots(now).forTrial(*m_state.next, number);
        return tr("Slot %1, then %2").arg(first).arg(second);
    }
    const auto next = model::nextRecheck(now, m_state);
    const GivenPair among{placeAmong(m_state.accepted, next->first),
                          placeAmong(m_state.accepted, next->second)};
    const auto [first, second] =
        model::Slots(model::onContainers(now, m_state)).forTrial(among, counting(now.recheck));
    return tr("Container %1, then %2").arg(first).arg(second);
}

void MarkerTestPage::sayTrial(const QString &before) {
    const QString start = before.isEmpty() ? QString() : before + QLatin1Char(' ');
    const bool over = isRecheck() ? !model::nextRecheck(*test(), m_state) : !m_state.next;
    if (over) {
        m_recheck = Recheck::No;
        refresh();
        emit focusHeading();
        sayAfterFocus(start + tr("The test is at its end. The result is on this page."));
        return;
    }
    const int number = isRecheck() ? counting(test()->recheck) : m_state.trials;
    constexpr int pauseEvery = 60;
    const bool offer = !isRecheck() && number > 0 && number % pauseEvery == 0;
    const QString rest = offer ? QLatin1Char(' ') + tr("A good place for a pause.") : QString();
    say(start + tr("%1. Trial %2.").arg(slotWords()).arg(number + 1) + rest);
}

} // namespace app
