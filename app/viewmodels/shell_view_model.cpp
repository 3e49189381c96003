#include "app/viewmodels/shell_view_model.h"
#include "app/local_words.h"
#include "app/viewmodels/sentences.h"
#include "model/contrast.h"
#include <QColor>
#include <QScopedValueRollback>
#include <QTimer>
#include <QVariant>
#include <algorithm>
#include <array>
#include <utility>

namespace app {
namespace {

constexpr std::array themeModes{"light", "dark", "contrast", "paper", "own"};
constexpr double leastContrast = 7; // Web Content Accessibility Guidelines 2.2, 1.4.6
constexpr std::array textScales{1.0, 1.25, 1.5, 2.0, 3.0, 4.0};
constexpr size_t keptMessages = 50;
constexpr size_t mostFound = 15;
constexpr qint64 progressEveryMs = 10'000;

model::Colour colourOf(const QString &typed) {
    const QColor colour(typed.trimmed());
    return {colour.red(), colour.green(), colour.blue()};
}

} // namespace

ShellViewModel::ShellViewModel(QObject *parent) : QObject(parent) {}

std::vector<double> ShellViewModel::scales() {
    return {textScales.begin(), textScales.end()};
}

QVariantMap ShellViewModel::pageProperties() const {
    QVariantMap properties = m_page.properties;
    properties.insert(QStringLiteral("shell"), QVariant::fromValue(const_cast<ShellViewModel *>(this)));
    return properties;
}

QString ShellViewModel::stepLine() const {
    const std::vector<Step> &steps = m_steps.rows();
    const auto here = std::ranges::find_if(steps, &Step::here);
    if (here == steps.end() || here->number == 0)
        return pageTitle();
    const auto numbered = std::ranges::count_if(steps, [](const Step &step) { return step.number > 0; });
    return tr("Step %1 of %2: %3").arg(here->number).arg(numbered).arg(here->title);
}

void ShellViewModel::say(const QString &sentence) {
    if (sentence.isEmpty())
        return;
    const QString text = localWords(sentence);
    m_message = m_lastSaid = text;
    std::vector<ListRow> kept = m_messages.rows();
    kept.insert(kept.begin(), ListRow{.key = QString::number(++m_messageCount), .title = text});
    if (kept.size() > keptMessages)
        kept.pop_back();
    m_messages.setRows(std::move(kept));
    emit messageChanged();
    speak(text);
}

void ShellViewModel::sayBeside(const QString &text) {
    const QString kept = m_message;
    say(text);
    if (kept.isEmpty())
        return;
    m_message = kept;
    emit messageChanged();
}

void ShellViewModel::sayAfterPage(const QString &text) {
    const QScopedValueRollback turning(m_turning, true);
    say(text);
}

void ShellViewModel::takeBack(const QString &sentence) {
    if (m_message != localWords(sentence))
        return;
    m_message.clear();
    emit messageChanged();
}

void ShellViewModel::speak(const QString &text) {
    if (m_turning)
        QTimer::singleShot(pageIsReadMs, this, [this, text] { emit said(text); });
    else
        emit said(text);
}

void ShellViewModel::sayAgain() {
    emit said(m_lastSaid.isEmpty() ? tr("No message yet.") : m_lastSaid);
}

void ShellViewModel::goTo(const QString &key) {
    const bool outermost = !std::exchange(m_turning, true);
    if (outermost)
        m_message.clear(); // what was said of the page before; it stays in the list
    emit leaving();
    const bool opened = openPage(key);
    m_turning = !outermost;
    emit messageChanged();
    if (!opened)
        say(tr("There is no page of the name %1.").arg(key));
}

void ShellViewModel::goToStep(int number) {
    for (const Step &step : m_steps.rows())
        if (step.number == number) {
            const QString key = step.key;
            goTo(key);
            return;
        }
    say(tr("There is no step %1 here.").arg(number));
}

void ShellViewModel::lock() {
    if (m_locked)
        return;
    emit leaving();
    closeRecord();
}

void ShellViewModel::larger() {
    const auto next = std::ranges::upper_bound(textScales, m_textScale);
    if (next == textScales.end())
        say(tr("Text is at its largest, %1 percent.").arg(qRound(m_textScale * 100)));
    else
        showAt(*next);
}

void ShellViewModel::smaller() {
    const auto next = std::ranges::lower_bound(textScales, m_textScale);
    if (next == textScales.begin())
        say(tr("Text is at its smallest, %1 percent.").arg(qRound(m_textScale * 100)));
    else
        showAt(*(next - 1));
}

void ShellViewModel::plainSize() {
    showAt(1);
}

void ShellViewModel::showAt(double scale) {
    setTextScale(scale);
    say(tr("Text %1 percent.").arg(qRound(scale * 100)));
}

void ShellViewModel::setTextScale(double scale) {
    if (qFuzzyCompare(scale, m_textScale) || scale < textScales.front() || scale > textScales.back())
        return;
    m_textScale = scale;
    emit looksChanged();
}

void ShellViewModel::setThemeMode(const QString &mode) {
    if (std::ranges::find(themeModes, mode) == themeModes.end() || mode == m_themeMode)
        return;
    m_themeMode = mode;
    emit looksChanged();
}

QString ShellViewModel::setOwnColours(const QString &ink, const QString &paper) {
    for (const QString &typed : {ink, paper})
        if (!QColor::isValidColor(typed.trimmed()))
            return tr("Not a colour: %1. Try navy, cream or #10203A.").arg(typed);
    const double ratio = model::contrastRatio(colourOf(ink), colourOf(paper));
    if (ratio < leastContrast)
        return tr("Ink and paper differ by %1 to 1 only; words need 7 to 1. Take a darker or a lighter one.")
            .arg(ratio, 0, 'f', 1);
    m_ownInk = ink.trimmed();
    m_ownPaper = paper.trimmed();
    emit looksChanged();
    return {};
}

void ShellViewModel::setShortSpeech(bool isShort) {
    if (isShort == m_shortSpeech)
        return;
    m_shortSpeech = isShort;
    emit looksChanged();
}

std::vector<int> ShellViewModel::lockChoices() {
    return {2, 5, 10, 15, 30};
}

void ShellViewModel::setLockMinutes(int minutes) {
    const auto offered = lockChoices();
    if (minutes == m_lockMinutes || std::ranges::find(offered, minutes) == offered.end())
        return;
    m_lockMinutes = minutes;
    emit looksChanged();
}

void ShellViewModel::togglePartner() {
    m_partnerShown = !m_partnerShown;
    emit partnerChanged();
    say(m_partnerShown ? tr("Partner view is open: this page in large words, without names.")
                       : tr("Partner view is closed."));
}

void ShellViewModel::toggleBlank() {
    m_blank = !m_blank;
    emit blankChanged();
    say(m_blank ? tr("The screen is blank. Keys and speech go on.") : tr("The screen is shown."));
}

void ShellViewModel::undo() {
    say(tr("Nothing to undo."));
}

void ShellViewModel::redo() {
    say(tr("Nothing to redo."));
}

QString ShellViewModel::whereAmI(const QString &field) const {
    return sentencesOnce({m_clientName, stepLine(), field});
}

void ShellViewModel::findDestinations(const QString &filter) {
    std::vector<ListRow> found;
    const auto add = [&](const QString &key, const QString &title, const QString &facts) {
        const bool known = std::ranges::any_of(found, [&](const ListRow &row) { return row.key == key; });
        if (!known && isFoundBy(title, filter))
            found.push_back({.key = key, .title = title, .facts = facts});
    };
    for (const Step &step : m_steps.rows())
        add(step.key, step.title, step.state);
    for (const Page &page : m_pages)
        add(page.key, page.title, {});
    showFound(std::move(found), filter.trimmed());
}

QString ShellViewModel::whyNotNow(const QString &command, const QStringList &ofPage) const {
    static const QStringList pageAnswers{QStringLiteral("correct"),     QStringLiteral("nextGap"),
                                         QStringLiteral("previousGap"), QStringLiteral("why"),
                                         QStringLiteral("overrule"),    QStringLiteral("readBack"),
                                         QStringLiteral("startVisit"),  QStringLiteral("closeVisit")};
    static const QStringList partnerAnswers{QStringLiteral("partnerDown"), QStringLiteral("partnerUp")};
    if (pageAnswers.contains(command) && !ofPage.contains(command))
        return tr("%1: not on this page.").arg(m_keys.titleOf(command));
    if (command.startsWith(QLatin1String("step")) && !hasSteps())
        return tr("Open a client first.");
    if (partnerAnswers.contains(command) && !m_partnerShown)
        return tr("The partner view is closed.");
    return {};
}

void ShellViewModel::findCommands(const QString &filter, const QStringList &ofPage) {
    std::vector<ListRow> found;
    std::vector<ListRow> actions = pageActions();
    const auto isButton = [&](const QString &command) {
        return std::ranges::count(actions, QStringLiteral("act:") + command, &ListRow::key) > 0;
    };
    std::vector<KeyCommand> given;
    for (const KeyCommand &command : m_keys.rows())
        if (isFoundBy(command.title, filter) && whyNotNow(command.key, ofPage).isEmpty() &&
            !isButton(command.key))
            given.push_back(command);
    for (ListRow &action : actions)
        if (isFoundBy(action.title, filter))
            found.push_back(std::move(action));
    for (const bool fromPage : {true, false})
        for (const KeyCommand &command : given)
            if (ofPage.contains(command.key) == fromPage)
                found.push_back({.key = QStringLiteral("command:") + command.key,
                                 .title = command.title,
                                 .facts = command.sequences.join(tr(" or "))});
    for (ListRow &page : menuPages())
        if (isFoundBy(page.title, filter))
            found.push_back(std::move(page));
    showFound(std::move(found), filter.trimmed());
}

void ShellViewModel::showFound(std::vector<ListRow> found, const QString &wanted) {
    m_foundInAll = static_cast<int>(found.size());
    if (!wanted.isEmpty()) {
        std::stable_partition(found.begin(), found.end(), [&](const ListRow &row) {
            return joinedWords(row.title).startsWith(joinedWords(wanted));
        });
        if (found.size() > mostFound)
            found.resize(mostFound);
    }
    m_destinations.setRows(std::move(found));
    emit foundChanged();
}

void ShellViewModel::beginWork(const QString &title) {
    m_busyWith = title;
    m_progress = 0;
    m_sinceProgressSaid.start();
    emit changed();
    say(title);
}

void ShellViewModel::showProgress(double share) {
    m_progress = share;
    emit changed();
    if (m_sinceProgressSaid.elapsed() < progressEveryMs)
        return;
    m_sinceProgressSaid.restart();
    say(tr("%1 percent.").arg(qRound(share * 100)));
}

void ShellViewModel::endWork(const QString &sentence) {
    m_busyWith.clear();
    m_progress = 0;
    emit changed();
    say(sentence);
}

void ShellViewModel::addPage(Page page) {
    m_pages.push_back(std::move(page));
}

void ShellViewModel::setClient(const QString &name, const QString &line) {
    m_clientName = name;
    m_clientLine = line;
    emit changed();
}

void ShellViewModel::setSteps(std::vector<Step> steps) {
    markHere(std::move(steps));
    emit changed();
}

bool ShellViewModel::openPage(const QString &key) {
    const auto found = std::ranges::find(m_pages, key, &Page::key);
    if (found == m_pages.end())
        return false;
    show(*found);
    return true;
}

void ShellViewModel::closeRecord() {
    setLocked(true);
}

void ShellViewModel::show(Page page) {
    prepare(std::move(page));
    emit pageOpened();
}

void ShellViewModel::prepare(Page page) {
    m_page = std::move(page);
    markHere(m_steps.rows());
    emit changed();
}

void ShellViewModel::setLocked(bool locked) {
    if (locked == m_locked)
        return;
    m_locked = locked;
    if (locked) {
        // Nothing of the client stays behind a lock, not even what was said.
        m_page = {};
        m_partnerShown = false;
        emit partnerChanged();
        m_clientName.clear();
        m_clientLine.clear();
        m_steps.setRows({});
        m_lastStep = 0;
        m_message.clear();
        m_lastSaid.clear();
        m_messages.setRows({});
        m_destinations.setRows({});
        emit messageChanged();
    }
    emit changed();
}

void ShellViewModel::markHere(std::vector<Step> steps) {
    for (std::size_t i = 0; i < steps.size(); ++i) {
        steps[i].here = steps[i].key == m_page.key;
        if (steps[i].here)
            m_lastStep = static_cast<int>(i);
    }
    m_steps.setRows(std::move(steps));
}

} // namespace app
