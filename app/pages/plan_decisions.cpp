#include "app/pages/entries.h"
#include "app/pages/kitchen_page.h"
#include "app/pages/plan_page.h"
#include "model/kit.h"
#include "model/plan_weights.h"
#include "model/sentence.h"
#include <QStringList>
#include <QTimer>
#include <algorithm>

/// The therapist's decisions on the page of the plan: place, mark and wording of a line, and the weights.
namespace app {

using model::Case;
using model::Id;
using model::Overrule;
using model::PlanLine;
using model::Result;
using model::Sentence;

namespace {

QString placeName(const Case &record, const Id &place) {
    return text(model::placeWords(record, place));
}

QString priceWords(double minutes) {
    constexpr double aboutEqual = 0.1;
    if (minutes < aboutEqual && minutes > -aboutEqual)
        return QObject::tr("About equal.");
    const QString amount = QString::number(minutes > 0 ? minutes : -minutes, 'f', 1);
    return minutes > 0 ? QObject::tr("Costs %1 minutes a week.").arg(amount)
                       : QObject::tr("Saves %1 minutes a week.").arg(amount);
}

QString othersWords(int changed) {
    if (changed == 0)
        return {};
    return changed == 1 ? QObject::tr(" 1 other line changes.")
                        : QObject::tr(" %1 other lines change.").arg(changed);
}

/// Name as shown, and key, of every mark of the client's kit; the first is no mark.
std::vector<std::pair<QString, std::string>> marksOf(const Case &record) {
    std::vector<std::pair<QString, std::string>> marks{{QObject::tr("no mark"), std::string()}};
    for (const auto &marker : model::kitOf(record))
        marks.emplace_back(text(marker.name), marker.key);
    return marks;
}

model::PlanWishes wishesOf(const Case &record) {
    return record.wishes.value_or(model::PlanWishes{});
}

model::PlanWishes &wishesIn(Case &record) {
    if (!record.wishes) {
        record.wishes.emplace();
        record.wishes->id = model::newId();
    }
    return *record.wishes;
}

Result<void> setMostKinds(Case &record, const QString &typed) {
    constexpr int most = 20;
    bool number = false;
    const int kinds = typed.trimmed().toInt(&number);
    if (typed.trimmed().isEmpty())
        wishesIn(record).mostKinds.reset();
    else if (number && kinds >= 0 && kinds <= most)
        wishesIn(record).mostKinds = kinds;
    else
        return model::fail(
            model::ErrorCode::OutOfRange,
            Sentence::tr("Not a number of kinds: {1}. From 0 to 20, or nothing.", {typed.toStdString()}));
    return {};
}

} // namespace

std::vector<PageViewModel::FieldSpec> PlanPage::lineFields(const PlanLine &line) {
    const QString name = nameOf(line.thing);
    QStringList places;
    for (const auto &choice : placesOf(line))
        places << choiceName(choice, line);
    QStringList marks;
    QString mark = tr("no mark");
    for (const auto &[shown, key] : marksOf(planned())) {
        marks << shown;
        if (key == line.marker)
            mark = shown;
    }
    const QString now = placeName(planned(), line.place);
    const QString wording = text(line.labelText);
    return {
        {{.key = "overrule",
          .kind = FieldKind::Choice,
          .label = tr("Place of %1").arg(name),
          .hint = tr("Choose another to overrule the plan"),
          .choices = places},
         [now] { return now; },
         {}},
        {{.key = "mark",
          .kind = FieldKind::Choice,
          .label = tr("Mark of %1").arg(name),
          .hint = tr("Choose another to overrule the plan"),
          .choices = marks},
         [mark] { return mark; },
         {}},
        {{.key = "wording",
          .label = tr("Label of %1").arg(name),
          .hint = tr("Its words, if it gets a label")},
         [wording] { return wording; },
         [this, thing = line.thing](Case &r, const QString &typed) { return setWording(r, thing, typed); }}};
}

/// Nothing typed takes her wording back.
Result<void> PlanPage::setWording(Case &record, const Id &thing, const QString &typed) const {
    Overrule wish{model::newId(), thing, {}, false, {}, m_session.today()};
    wish.wording = typed.trimmed().toStdString();
    std::erase_if(record.overrules,
                  [&](const Overrule &o) { return o.thing == thing && !o.wording.empty(); });
    if (!wish.wording.empty())
        record.overrules.push_back(wish);
    Case worded = planned();
    worded.overrules = record.overrules;
    return model::revisePlan(worded, m_session.planFindings(), model::revisionOptions(), m_session.today())
        .map([&](const model::Plan &plan) { record.plan = plan; });
}

void PlanPage::edit(const QString &key, const QString &value) {
    constexpr int listHasClosed = 150; // ms: the list it was chosen from gives the focus back first
    if (key == QLatin1String("mark") || key == QLatin1String("overrule"))
        QTimer::singleShot(listHasClosed, this, [this, key, value] {
            key == QLatin1String("mark") ? chooseMark(value) : choosePlace(value);
        });
    else
        PageViewModel::edit(key, value);
}

void PlanPage::choosePlace(const QString &name) {
    const PlanLine *line = lineInHand();
    if (!line)
        return;
    for (const auto &choice : placesOf(*line))
        if (choiceName(choice, *line) == name)
            return overrule(Id(choice.place));
}

/// Where it may stand first; the others with the reason why not.
std::vector<model::PlaceChoice> PlanPage::placesOf(const PlanLine &line) const {
    if (const auto &lines = m_session.planWhys())
        return model::placeChoices(*lines, line.thing);
    std::vector<model::PlaceChoice> all;
    for (const auto &place : placeRows(planned()))
        all.push_back({{place.key.toStdString()}, {}});
    return all;
}

QString PlanPage::choiceName(const model::PlaceChoice &choice, const PlanLine &line) const {
    const QString name = placeName(planned(), choice.place);
    return choice.why.empty() || choice.place == line.place
               ? name
               : tr("%1 (not here: %2)").arg(name, text(choice.why));
}

void PlanPage::decide(const Overrule &wish, const QString &words) {
    const QString name = nameOf(wish.thing);
    const auto outcome = model::tryWish(planned(), m_session.planFindings(), wish, m_session.today());
    if (!outcome) {
        say(outcome.error());
        refresh();
        return;
    }
    if (!change(tr("%1: %2").arg(name, words), "plan.overruled", [&](Case &r) {
            r.overrules = outcome->record.overrules;
            r.plan = outcome->record.plan;
        }))
        return;
    lookForBetter();
    refresh();
    sayAfterFocus(
        tr("%1: %2. %3%4").arg(name, words, priceWords(outcome->price), othersWords(outcome->changed)));
    emit focusRow(text(wish.thing.text));
}

void PlanPage::overrule(const Id &place) {
    const PlanLine *line = lineInHand();
    if (!line || line->place == place)
        return;
    decide({model::newId(), line->thing, place, false, {}, m_session.today()}, placeName(planned(), place));
}

void PlanPage::chooseMark(const QString &name) {
    const PlanLine *line = lineInHand();
    for (const auto &[shown, key] : marksOf(planned())) {
        if (!line || shown != name || key == line->marker)
            continue;
        Overrule wish{model::newId(), line->thing, {}, false, {}, m_session.today()};
        wish.marker = key;
        return decide(wish, shown);
    }
}

void PlanPage::keepHere(bool forbid) {
    const PlanLine *line = lineInHand();
    if (!line)
        return;
    const QString where = placeName(planned(), line->place);
    decide({model::newId(), line->thing, line->place, forbid,
            forbid ? std::string() : tr("the client wants it there").toStdString(), m_session.today()},
           forbid ? tr("not in %1").arg(where) : tr("stays in %1, the client wants it there").arg(where));
}

void PlanPage::forgetOverrule() {
    const PlanLine *line = lineInHand();
    if (!line)
        return;
    const Id thing = line->thing;
    if (change(tr("decision on %1 taken back").arg(nameOf(thing)), "plan.overrule-removed", [&](Case &r) {
            std::erase_if(r.overrules, [&](const Overrule &o) { return o.thing == thing; });
        }))
        say(tr("Taken back. Bring the plan up to date to let %1 move.").arg(nameOf(thing)));
}

QString PlanPage::figuresInWords() const {
    QStringList words;
    for (const auto &figure : m_session.planTold().figures)
        words << tr("%1: %2").arg(text(figure.name), text(figure.words()));
    return words.join(QStringLiteral(". "));
}

std::vector<FindingRow> PlanPage::decisionRows() {
    std::vector<FindingRow> rows;
    if (const QString figures = figuresInWords(); !figures.isEmpty())
        rows.push_back({.key = "figures", .question = tr("The plan in figures"), .answer = figures});
    if (!planned().overrules.empty()) {
        QStringList words;
        for (const auto &wish : planned().overrules)
            words << text(model::wishInWords(planned(), wish));
        rows.push_back(
            {.key = "decisions", .question = tr("Your decisions"), .answer = words.join(QLatin1Char(' '))});
    }
    return rows;
}

std::vector<PageViewModel::FieldSpec> PlanPage::weightFields() {
    std::vector<FieldSpec> fields;
    for (const auto &info : model::weightInfos())
        fields.push_back(
            {{.key = text("weight." + info.key),
              .kind = FieldKind::Number,
              .label = said(info.asked),
              .hint = said(info.restsOn),
              .unit = said(info.unit)},
             [this, &info] { return text(model::weightWords(wishesOf(planned()).weights.*info.value)); },
             [&info](Case &r, const QString &typed) {
                 return model::readPlanWeight(typed.toStdString()).map([&](double value) {
                     wishesIn(r).weights.*info.value = value;
                 });
             }});
    fields.push_back(
        {{.key = "mostKinds",
          .kind = FieldKind::Number,
          .label = tr("Kinds of marks to learn at most"),
          .hint = tr("Meaning marks among them. Nothing: 3 where memory is a trouble or was not asked, "
                     "else no limit. Judgement.")},
         [this] {
             const auto most = wishesOf(planned()).mostKinds;
             return most ? QString::number(*most) : QString();
         },
         [](Case &r, const QString &typed) { return setMostKinds(r, typed); }});
    return fields;
}

std::vector<ActionRow> PlanPage::weightActions() const {
    const QString busy = m_working ? tr("The plan is being worked out.") : QString();
    return {
        {.key = "compare", .title = tr("Compare with the plan shown"), .primary = true, .unavailable = busy},
        {.key = "revise", .title = tr("Plan with these weights"), .unavailable = busy},
        {.key = "usual", .title = tr("Take the usual weights")},
        {.key = "lines", .title = tr("Back to the lines")}};
}

std::vector<FindingRow> PlanPage::comparisonRows() const {
    std::vector<FindingRow> rows;
    if (!m_compared)
        return rows;
    for (std::size_t k = 0; k < m_compared->now.size(); ++k)
        rows.push_back(
            {.key = QStringLiteral("compared.%1").arg(k),
             .question = text(m_compared->now[k].name),
             .answer = tr("now %1, then %2")
                           .arg(text(m_compared->now[k].words()), text(m_compared->then[k].words()))});
    QStringList changes;
    for (const auto &one : m_compared->changes)
        changes << text(one);
    rows.push_back({.key = "compared.lines",
                    .question = tr("Lines that would change"),
                    .answer = changes.isEmpty() ? tr("none") : QString::number(changes.size()),
                    .reason = changes.join(QLatin1Char(' '))});
    return rows;
}

void PlanPage::compare() {
    const auto compared = model::compareWeights(planned(), m_session.planFindings(),
                                                wishesOf(planned()).weights, m_session.today());
    if (!compared) {
        say(compared.error());
        return;
    }
    m_compared = *compared;
    refresh();
    QStringList differ;
    for (std::size_t k = 0; k < compared->now.size(); ++k)
        if (compared->now[k].words() != compared->then[k].words())
            differ << tr("%1: now %2, then %3")
                          .arg(text(compared->now[k].name), text(compared->now[k].words()),
                               text(compared->then[k].words()));
    say(compared->changes.empty()
            ? tr("With these weights nothing changes.")
            : counted(compared->changes.size(), tr("1 line would change."), tr("%1 lines would change.")) +
                  QLatin1Char(' ') + differ.join(QStringLiteral(". ")));
}

void PlanPage::usualWeights() {
    if (change(tr("usual weights"), "plan.weights",
               [](Case &r) { wishesIn(r).weights = model::PlanWeights{}; }))
        say(tr("Usual weights."));
}

void PlanPage::showWeights(bool show) {
    m_weights = show;
    m_compared.reset();
    refresh();
    emit focusHeading();
}

} // namespace app
