#include "app/pages/entries.h"
#include "app/pages/marker_test_page.h"
#include "model/kit.h"
#include <algorithm>

/// What the page of the marker test shows at each of its stages.
namespace app {

using model::Case;
using model::Result;
using model::TouchTestRecord;

namespace {

TouchTestRecord &lastIn(Case &record) {
    return record.touchTests.back();
}

const Choices<model::Side> &hands() {
    using enum model::Side;
    static const Choices<model::Side> choices{{{QObject::tr("Right hand"), Right},
                                               {QObject::tr("Left hand"), Left},
                                               {QObject::tr("Both hands"), Both}}};
    return choices;
}

/// Puts the mark in or takes it out; the blank stays last.
void setTested(TouchTestRecord &test, const model::Marker &marker, bool in) {
    std::erase_if(test.marks, [&](const model::TestedMark &mark) { return mark.key == marker.key; });
    if (!in)
        return;
    const auto blank = std::ranges::find(test.marks, model::blankMark, &model::TestedMark::key);
    test.marks.insert(blank, {marker.key, {marker.size, marker.relief, marker.texture}});
}

void setBlank(TouchTestRecord &test, bool in) {
    std::erase_if(test.marks, [](const model::TestedMark &mark) { return mark.key == model::blankMark; });
    if (in)
        test.marks.push_back({model::blankMark, {}});
}

bool isTested(const TouchTestRecord &test, const std::string &key) {
    return std::ranges::count(test.marks, key, &model::TestedMark::key) > 0;
}

std::vector<ListRow> slotRows(const Case &record, const TouchTestRecord &test, const QString &called) {
    std::vector<ListRow> rows;
    const model::Slots tray(test);
    for (int slot = 1; slot <= tray.count(); ++slot)
        rows.push_back({.key = QStringLiteral("slot%1").arg(slot),
                        .title = called.arg(slot),
                        .facts = text(model::markName(record, test.marks[tray.markIn(slot)]))});
    return rows;
}

} // namespace

std::vector<PageViewModel::FieldSpec> MarkerTestPage::handFields() {
    const auto words = [this](const char *key, const QString &label, const QString &hint,
                              std::string TouchTestRecord::*member) -> FieldSpec {
        return {{.key = key, .label = label, .hint = hint},
                [this, member] { return text(test()->*member); },
                [member](Case &r, const QString &typed) -> Result<void> {
                    lastIn(r).*member = typed.trimmed().toStdString();
                    return {};
                }};
    };
    return {{{.key = "hand", .kind = FieldKind::Choice, .label = tr("Hand"), .choices = hands().words()},
             [this] { return hands().wordOf(test()->hand); },
             [](Case &r, const QString &word) -> Result<void> {
                 lastIn(r).hand = hands().valueOf(word).value_or(model::Side::NotStated);
                 return {};
             }},
            words("finger", tr("Finger"), tr("For example index"), &TouchTestRecord::finger),
            words("condition", tr("State of the fingers"), tr("For example dry, warm, not tired"),
                  &TouchTestRecord::condition),
            {{.key = "limit",
              .kind = FieldKind::Number,
              .label = tr("At most so many trials"),
              .hint = tr("160 are about 20 minutes; 60 to 100 if the client tires")},
             [this] { return QString::number(test()->limit); },
             [](Case &r, const QString &typed) -> Result<void> {
                 const auto limit = wholeNumber(typed, 1, 1000);
                 if (!limit)
                     return tl::unexpected(limit.error());
                 lastIn(r).limit = *limit;
                 return {};
             }}};
}

PageViewModel::FieldSpec MarkerTestPage::markField(const model::Marker &marker) {
    const auto banned = m_session.findings().bannedMarks.find(marker.key);
    const bool isBanned = banned != m_session.findings().bannedMarks.end();
    return {{.key = QStringLiteral("mark-") + text(marker.key),
             .kind = FieldKind::Choice,
             .label = tr("Test the %1").arg(text(marker.name)),
             .choices = yesNoWords(),
             .note = isBanned ? tr("Not for this client: %1").arg(text(banned->second)) : QString()},
            [this, key = marker.key] { return yesNo(isTested(*test(), key)); },
            [marker](Case &r, const QString &value) -> Result<void> {
                setTested(lastIn(r), marker, isYes(value));
                return {};
            }};
}

PageViewModel::FieldSpec MarkerTestPage::blankField() {
    return {{.key = "blank",
             .kind = FieldKind::Choice,
             .label = tr("Test the bare surface too"),
             .hint = tr("Tells how often a mark is missed"),
             .choices = yesNoWords()},
            [this] { return yesNo(isTested(*test(), model::blankMark)); },
            [](Case &r, const QString &value) -> Result<void> {
                setBlank(lastIn(r), isYes(value));
                return {};
            }};
}

std::vector<PageViewModel::FieldSpec> MarkerTestPage::choosingFields() {
    std::vector<FieldSpec> fields = handFields();
    for (const auto &marker : model::kitOf(record()))
        if (marker.medium == model::MarkMedium::Touch)
            fields.push_back(markField(marker));
    fields.push_back(blankField());
    return fields;
}

MarkerTestPage::Shown MarkerTestPage::choosing() {
    const TouchTestRecord &now = *test();
    const auto checked = model::checkSetup(model::setupOf(now));
    const bool high = now.credible >= model::raisedCredible;
    return {
        .kicker = tr("%1 marks chosen").arg(now.marks.size()),
        .rowsLabel = tr("Slots of the tray"),
        .fields = choosingFields(),
        .actions = {{.key = "begin",
                     .title = tr("Begin the test"),
                     .primary = true,
                     .unavailable = checked ? QString() : text(checked.error().sentence)},
                    {.key = "cancel", .title = tr("Leave this test out")}},
        .findings = {{.key = "tray",
                      .question = tr("Before it begins"),
                      .answer = tr("Lay each mark into its two slots"),
                      .reason = tr("The list below says which mark lies in which slot. Then put headphones "
                                   "on: the client must hear no name and no answer. Say nothing of right or "
                                   "wrong.")},
                     {.key = "certainty",
                      .question = tr("Certainty asked for"),
                      .answer = QString::number(now.credible, 'f', 2),
                      .reason =
                          high ? tr("Because reduced feeling in the hands is known, or was not asked about.")
                               : tr("For each pair. The program raises it where it finds low sensitivity.")}},
        .rows = slotRows(record(), now, tr("Slot %1")),
    };
}

MarkerTestPage::Shown MarkerTestPage::running() const {
    return {.kicker = tr("Trial %1 of at most %2").arg(m_state.trials + 1).arg(test()->limit),
            .trial = slotWords(),
            .actions = answerActions()};
}

std::vector<ActionRow> MarkerTestPage::answerActions() const {
    std::vector<ActionRow> actions{
        {.key = "same", .title = tr("Same"), .keyName = QStringLiteral("J")},
        {.key = "different", .title = tr("Different"), .keyName = QStringLiteral("F")},
        {.key = "unsure", .title = tr("Unsure"), .keyName = QStringLiteral("U")},
        {.key = "repeat", .title = tr("Repeat"), .keyName = QStringLiteral("Space")},
        {.key = "back", .title = tr("Take back"), .keyName = QStringLiteral("Backspace")}};
    if (isRecheck()) {
        actions.push_back({.key = "result", .title = tr("End the recheck")});
    } else {
        actions.push_back({.key = "pause", .title = tr("Pause; it goes on where it was left")});
        actions.push_back({.key = "stop", .title = tr("End the test here")});
    }
    return actions;
}

MarkerTestPage::Shown MarkerTestPage::result() const {
    const TouchTestRecord &now = *test();
    const bool anyPair = m_state.weakest.has_value();
    Shown shown{.kicker = tr("Ended, %1 trials").arg(m_state.trials),
                .rowsLabel = tr("Every pair and how often it is confused")};
    const bool recheckLeft = model::nextRecheck(now, m_state).has_value();
    if (recheckLeft)
        shown.actions.push_back(
            {.key = "recheck", .title = tr("Recheck on real containers"), .primary = true});
    shown.actions.push_back({.key = "new", .title = tr("New test"), .primary = !recheckLeft});
    shown.actions.push_back({.key = "back", .title = tr("Take the last answer back")});
    shown.findings.push_back({.key = "result",
                              .question = tr("Marks told apart"),
                              .answer = anyPair ? tr("%1 marks").arg(m_state.accepted.size()) : tr("no pair"),
                              .reason = text(model::resultInWords(record(), now, m_state))});
    if (anyPair)
        shown.findings.push_back(
            {.key = "recheck",
             .question = tr("Recheck"),
             .answer = text(model::recheckInWords(now)),
             .reason = tr("Feeling on the blank is not feeling on a can: ten trials once.")});
    shown.findings.push_back(
        {.key = "holds",
         .question = tr("How long it holds"),
         .answer = tr("For this hand, finger and state"),
         .reason = tr("Test again after six months or when health changes. Common practice.")});
    for (const auto &pair : m_state.pairs)
        shown.rows.push_back({.key = QStringLiteral("pair%1-%2").arg(pair.first).arg(pair.second),
                              .title = text(model::pairInWords(record(), now, pair))});
    return shown;
}

MarkerTestPage::Shown MarkerTestPage::recheck() const {
    const TouchTestRecord &now = *test();
    if (isRecheck()) {
        const auto done = std::ranges::count_if(now.recheck, [](const model::TouchTrial &trial) {
            return trial.answer != model::TouchAnswer::Repeat;
        });
        const bool over = !model::nextRecheck(now, m_state);
        return {.kicker = tr("Recheck, trial %1 of %2").arg(over ? done : done + 1).arg(model::recheckTrials),
                .trial = over ? QString() : slotWords(),
                .actions = answerActions()};
    }
    return {
        .kicker = tr("Recheck on real containers"),
        .rowsLabel = tr("Containers"),
        .actions = {{.key = "begin", .title = tr("Begin the recheck"), .primary = true},
                    {.key = "result", .title = tr("Back to the result")}},
        .findings = {{.key = "containers",
                      .question = tr("Before it begins"),
                      .answer = tr("Put each mark on two containers, numbered as listed"),
                      .reason = tr("Use containers of one shape. Headphones on: only numbers are spoken.")}},
        .rows = slotRows(record(), model::onContainers(now, m_state), tr("Container %1"))};
}

} // namespace app
