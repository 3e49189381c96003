#include "app/pages/client_page.h"
#include "app/pages/entries.h"
#include "model/fingers.h"
#include "model/planning.h"
#include "model/reach_order.h"
#include "model/sentence.h"
#include "model/shelf_reach.h"
#include <QRegularExpression>
#include <algorithm>

namespace app {

using model::Case;
using model::ErrorCode;
using model::fail;
using model::Measurement;
using model::Result;
using model::Sentence;
using model::Side;

namespace {

QString sideWords(model::Domain domain, Side side) {
    const bool hands = domain == model::Domain::Touch;
    switch (side) {
    case Side::NotStated:
        return {};
    case Side::Right:
        return hands ? QObject::tr("right hand") : QObject::tr("right eye");
    case Side::Left:
        return hands ? QObject::tr("left hand") : QObject::tr("left eye");
    case Side::Both:
        return QObject::tr("both eyes");
    }
    return {};
}

bool hasDistance(model::Test test) {
    return test == model::Test::DistanceAcuity || model::infoOf(test).atDistance;
}

bool isAcuity(model::Test test) {
    return test == model::Test::DistanceAcuity || test == model::Test::NearAcuity;
}

/// What can be answered where only a few answers are possible; empty for a result that is typed.
QStringList choicesOf(model::Test test) {
    const QString open = QObject::tr("not stated");
    if (test == model::Test::Posture)
        return {open, QStringLiteral("standing"), QStringLiteral("seated")};
    if (test == model::Test::LiftFigures)
        return {open, QStringLiteral("women's"), QStringLiteral("men's")};
    return {};
}

/// Tests of the hand that are done finger by finger; a shape is felt with the whole hand.
bool isByFinger(model::Test test) {
    const auto &info = model::infoOf(test);
    return info.domain == model::Domain::Touch && info.sided && test != model::Test::ShapeNaming;
}

/// "right hand, index; left hand, index": the fingers that have results.
QString fingersTested(const Case &record) {
    QStringList tested;
    for (const auto &result : record.measurements)
        if (isByFinger(result.test))
            if (const QString words = text(model::wordsOf(model::whichFinger(result)));
                !tested.contains(words))
                tested << words;
    return tested.join(QStringLiteral("; "));
}

/// "N12 at 40 cm" is a value and a distance; words such as "dazzled at noon" are one.
void split(const QString &typed, Measurement &result) {
    result.typed = typed.trimmed().toStdString();
    result.distanceTyped.clear();
    if (!hasDistance(result.test))
        return;
    static const QRegularExpression at(QStringLiteral("\\s+at\\s+"),
                                       QRegularExpression::CaseInsensitiveOption);
    const auto match = at.match(typed);
    result.typed = (match.hasMatch() ? typed.left(match.capturedStart()) : typed).trimmed().toStdString();
    result.distanceTyped =
        match.hasMatch() ? typed.mid(match.capturedEnd()).trimmed().toStdString() : std::string();
}

QString whole(const Measurement &result) {
    if (!result.notTestedBecause.empty())
        return QObject::tr("not tested: %1").arg(text(result.notTestedBecause));
    const QString value = text(result.typed);
    return result.distanceTyped.empty() ? value : value + QStringLiteral(" at ") + text(result.distanceTyped);
}

/// The reason if the text says that a test was not done; empty reason if none is given.
std::optional<QString> notTested(const QString &typed) {
    static const QRegularExpression words(QStringLiteral("^\\s*not tested\\s*(because|:|,)?\\s*(.*)$"),
                                          QRegularExpression::CaseInsensitiveOption);
    const auto match = words.match(typed);
    if (!match.hasMatch())
        return std::nullopt;
    return match.captured(2).trimmed();
}

} // namespace

bool MeasurementPage::isShown(const Measurement &result) const {
    if (isAcuity(result.test))
        return result.withGlasses == m_withGlasses;
    return !isByFinger(result.test) || model::fingerNamed(result.finger) == finger();
}

const Measurement *MeasurementPage::latest(model::Test test, Side side) const {
    const Measurement *found = nullptr;
    for (const auto &result : record().measurements)
        if (result.test == test && result.side == side && isShown(result) &&
            (!found || found->date <= result.date))
            found = &result;
    return found;
}

/// The finger that was chosen; before that the one of the newest result, so that what is there is seen.
std::string MeasurementPage::finger() const {
    if (m_finger)
        return *m_finger;
    const Measurement *newest = nullptr;
    for (const auto &result : record().measurements)
        if (isByFinger(result.test) && !result.finger.empty() && (!newest || newest->date <= result.date))
            newest = &result;
    return newest ? model::fingerNamed(newest->finger) : std::string();
}

Result<void> MeasurementPage::write(Case &record, const model::TestInfo &info, Side side,
                                    const QString &typed) const {
    const Measurement *old = latest(info.test, side);
    const bool sameDay = old && old->date == m_session.today();
    Measurement result = sameDay ? *old : Measurement{};
    if (!sameDay) {
        result.id = model::newId();
        result.test = info.test;
        result.side = side;
        result.date = m_session.today();
        result.withGlasses = m_domain == model::Domain::Sight && (!isAcuity(info.test) || m_withGlasses);
        result.finger = isByFinger(info.test) ? finger() : std::string();
        result.chart = isAcuity(info.test) ? chartToday(info.test) : std::string();
    }
    const auto reason = notTested(typed);
    if (reason && reason->isEmpty())
        return fail(ErrorCode::Missing, Sentence::tr("Say why, for example: not tested: tired. Kept."));
    result.notTestedBecause = reason ? reason->toStdString() : std::string();
    split(reason ? QString() : typed, result);
    const bool empty = typed.trimmed().isEmpty();
    if (!empty && !reason)
        if (const auto read = model::readBack(result); !read)
            return tl::unexpected(read.error());
    if (!empty && !reason)
        if (const auto ordered = model::goesWithOtherHeights(record, result); !ordered)
            return ordered;
    std::erase_if(record.measurements, [&](const Measurement &m) { return sameDay && m.id == result.id; });
    if (!empty)
        record.measurements.push_back(std::move(result));
    return {};
}

PageViewModel::FieldSpec MeasurementPage::resultField(const model::TestInfo &info, Side side) {
    const QString where = sideWords(m_domain, side);
    QString label = where.isEmpty() ? said(info.name) : tr("%1, %2").arg(said(info.name), where);
    QString key = text(info.key) + QLatin1Char('-') + QString::number(static_cast<int>(side));
    if (isAcuity(info.test) && !m_withGlasses) {
        label += tr(", without glasses");
        key += QStringLiteral("-without");
    }
    if (isByFinger(info.test) && !finger().empty()) {
        label += QStringLiteral(", ") + text(finger());
        key += QLatin1Char('-') + text(finger());
    }
    const bool yesNo = info.test == model::Test::UsableVision;
    FormField field{.key = key,
                    .kind = yesNo ? FieldKind::YesNo : FieldKind::Text,
                    .label = label,
                    .hint = yesNo ? QString() : said(info.hint) + tr("; or not tested, and why")};
    field.noteRoom = m_domain == model::Domain::Reach && !yesNo;
    const Measurement *result = latest(info.test, side);
    const QStringList choices = choicesOf(info.test);
    if (!choices.isEmpty()) {
        field.kind = FieldKind::Choice;
        field.hint = said(info.hint);
        field.choices = choices;
        if (result && !choices.contains(whole(*result))) // own words of an older record
            field.choices << whole(*result);
    }
    if (result && result->notTestedBecause.empty() && !yesNo) {
        if (const auto read = model::readBack(*result))
            field.note = text(*read);
        if (result->date && *result->date != m_session.today())
            field.note += tr(", measured on %1").arg(shown(result->date));
    }
    const model::Test test = info.test;
    return {field,
            [this, test, side, choices] {
                const Measurement *found = latest(test, side);
                return found ? whole(*found) : choices.value(0);
            },
            [this, &info, side, choices](Case &r, const QString &typed) {
                return write(r, info, side, typed == choices.value(0) ? QString() : typed);
            }};
}

PageViewModel::FieldSpec MeasurementPage::methodField() {
    const auto isOurs = [this](const Measurement &m) {
        return model::infoOf(m.test).domain == m_domain && m.test != model::Test::ReadingTrial && // its sheet
               m.date == m_session.today();
    };
    return {{.key = "method",
             .label = tr("Method today"),
             .hint = tr("Chart or kit, light, who helped: kept with every result of today")},
            [this, isOurs] {
                for (const auto &m : record().measurements)
                    if (isOurs(m) && !m.method.empty())
                        return text(m.method);
                return QString();
            },
            [isOurs](Case &r, const QString &typed) -> Result<void> {
                if (std::ranges::none_of(r.measurements, isOurs))
                    return fail(ErrorCode::Missing,
                                Sentence::tr("There is no result of today yet to keep this with. Kept."));
                for (auto &m : r.measurements)
                    if (isOurs(m))
                        m.method = typed.trimmed().toStdString();
                return {};
            }};
}

PageViewModel::FieldSpec MeasurementPage::glassesField() {
    const QString with = tr("with the usual glasses");
    const QString without = tr("without glasses");
    return {{.key = "glasses",
             .kind = FieldKind::Choice,
             .label = tr("Acuities below"),
             .hint = tr("Both are kept; the plan goes by those with the usual glasses, if there are any"),
             .choices = {with, without}},
            [this, with, without] { return m_withGlasses ? with : without; },
            {}};
}

/// The chart that the acuities of this test were taken with today; empty if it was not said.
std::string MeasurementPage::chartToday(model::Test test) const {
    for (const auto &m : record().measurements)
        if (m.test == test && m.date == m_session.today() && !m.chart.empty())
            return m.chart;
    return {};
}

PageViewModel::FieldSpec MeasurementPage::chartField(model::Test test) {
    const Measurement *newest = nullptr;
    for (const auto &m : record().measurements)
        if (m.test == test && m.notTestedBecause.empty() && (!newest || newest->date <= m.date))
            newest = &m;
    FormField field{.key = text(model::infoOf(test).key) + QStringLiteral("-chart"),
                    .label = test == model::Test::NearAcuity ? tr("Chart of the near acuities")
                                                             : tr("Chart of the distance acuities"),
                    .hint =
                        tr("Letters, numbers, tumbling E, broken rings, symbols or words; in rows, crowded "
                           "or single; or your own words")};
    if (newest && newest->date && *newest->date != m_session.today())
        field.note = tr("of %1").arg(shown(newest->date));
    return {field, [words = newest ? newest->chart : std::string()] { return text(words); },
            [test, day = newest ? newest->date : std::nullopt,
             any = newest != nullptr](Case &r, const QString &typed) -> Result<void> {
                if (!any)
                    return fail(ErrorCode::Missing,
                                Sentence::tr("There is no such acuity yet to keep this with. Kept."));
                for (auto &m : r.measurements)
                    if (m.test == test && m.date == day)
                        m.chart = typed.trimmed().toStdString();
                return {};
            }};
}

PageViewModel::FieldSpec MeasurementPage::fingerField() {
    QStringList choices{tr("finger not stated")};
    for (const char *name : model::fingerNames)
        choices << QString::fromLatin1(name);
    const QString now = finger().empty() ? choices.front() : text(finger());
    if (!choices.contains(now)) // own words of an older record
        choices << now;
    const QString tested = fingersTested(record());
    return {{.key = "finger",
             .kind = FieldKind::Choice,
             .label = tr("Results below are of this finger"),
             .hint = tr("Each finger of each hand has results of its own"),
             .choices = choices,
             .note = tested.isEmpty() ? tr("none tested yet") : tr("tested: %1").arg(tested)},
            [now] { return now; },
            {}};
}

void MeasurementPage::edit(const QString &key, const QString &value) {
    if (key == QLatin1String("glasses"))
        m_withGlasses = value != tr("without glasses");
    else if (key == QLatin1String("finger"))
        m_finger = value == tr("finger not stated") ? std::string() : value.toStdString();
    else {
        PageViewModel::edit(key, value);
        return;
    }
    refresh();
}

/// A result is open until it is typed, or why it was not tested.
bool MeasurementPage::isGap(const FormField &field) const {
    const bool result = field.kind == FieldKind::Text && field.key != QLatin1String("method") &&
                        !field.key.endsWith(QLatin1String("-chart"));
    const bool open = field.kind == FieldKind::Choice && field.value == tr("not stated");
    return PageViewModel::isGap(field) || open || (result && field.value.isEmpty());
}

void MeasurementPage::act(const QString &key) {
    m_shell.goTo(key);
}

void MeasurementPage::refresh() {
    std::vector<FieldSpec> fields;
    std::size_t results = 0;
    int given = 0;
    int all = 0;
    for (const auto &info : model::testInfos()) {
        if (info.domain != m_domain)
            continue;
        if (isAcuity(info.test) && fields.empty())
            fields.push_back(glassesField());
        if (isByFinger(info.test) && fields.empty())
            fields.push_back(fingerField());
        std::vector<Side> sides{Side::NotStated};
        if (info.sided)
            sides = m_domain == model::Domain::Sight ? std::vector{Side::Right, Side::Left, Side::Both}
                                                     : std::vector{Side::Right, Side::Left};
        ++all;
        const auto known =
            std::ranges::count_if(sides, [&](Side side) { return latest(info.test, side) != nullptr; });
        results += static_cast<std::size_t>(known);
        given += known > 0 ? 1 : 0;
        if (info.test == model::Test::ReadingTrial) // a page of its own
            continue;
        for (const Side side : sides)
            fields.push_back(resultField(info, side));
        if (isAcuity(info.test))
            fields.push_back(chartField(info.test));
    }
    fields.push_back(methodField());
    m_kicker =
        counted(results, tr("1 result"), tr("%1 results")) + tr(", of %1 of %2 tests").arg(given).arg(all);
    setFields(std::move(fields));
    if (m_domain == model::Domain::Sight)
        m_actions.setRows({{.key = "reading", .title = tr("Reading trial")},
                           {.key = "legible", .title = tr("Legible here?")}});
    if (m_domain == model::Domain::Touch)
        m_actions.setRows({{.key = "markertest", .title = tr("Marker test")},
                           {.key = "markerkit", .title = tr("Marker kit")}});
    // What is known first, then what was not measured.
    std::vector<model::Finding> findings = m_session.findings().all;
    std::stable_partition(findings.begin(), findings.end(), [](const model::Finding &finding) {
        return finding.sureness != model::Sureness::NotMeasured;
    });
    std::vector<FindingRow> rows;
    for (const auto &finding : findings)
        if (finding.domain == m_domain)
            rows.push_back(
                {.key = text(finding.topic),
                 .question = text(finding.topic),
                 .answer = text(finding.answer),
                 .reason =
                     text(finding.because +
                          (finding.source.empty() ? "" : Sentence::tr(" Source: {1}", {finding.source})))});
    m_findings.setRows(std::move(rows));
    if (m_domain == model::Domain::Reach)
        showShelves();
    emit refreshed();
}

void MeasurementPage::showShelves() {
    std::vector<ListRow> rows;
    for (const auto &shelf : model::shelfReaches(record(), m_session.findings()))
        rows.push_back({.key = text(shelf.place.text),
                        .title = text(model::placeWords(record(), shelf.place)),
                        .amount = text(model::wordsOf(shelf.ease)),
                        .facts = text(shelf.because)});
    m_rowsLabel = tr("Shelves");
    m_rowsEmpty =
        tr("No shelves yet. Enter the kitchen, and each is told as easy, a stretch or out of reach.");
    m_rows.setRows(std::move(rows));
}

} // namespace app
