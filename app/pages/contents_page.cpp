#include "app/pages/contents_page.h"
#include "app/pages/entries.h"
#include "app/pages/kitchen_page.h"
#include "app/viewmodels/sentences.h"
#include "model/contents.h"
#include "model/planning.h"
#include "reports/kitchen_figure.h"
#include <algorithm>
#include <cmath>
#include <utility>

namespace app {

using model::Case;
using model::Id;
using model::Thing;

namespace {

QString usesWords(double perWeek) {
    if (perWeek == 7)
        return QObject::tr("daily");
    if (perWeek == 1)
        return QObject::tr("weekly");
    if (perWeek <= 0)
        return QObject::tr("never");
    if (perWeek < 1 && std::lround(1 / perWeek) == 4)
        return QObject::tr("monthly");
    if (perWeek < 0.75)
        return QObject::tr("every %1 weeks").arg(std::lround(1 / perWeek));
    return QObject::tr("%1 times a week").arg(perWeek);
}

/// Frequency as hers and the catalogue's facts in soft words.
QString usualFacts(const Thing &thing) {
    QStringList facts;
    facts << shapes().wordOf(thing.shape).toLower();
    if (thing.width && thing.height)
        facts << QObject::tr("%1 by %2 cm").arg(thing.width->value.value).arg(thing.height->value.value);
    if (thing.usual.contains("uses") && thing.usesPerWeek)
        facts << usesWords(*thing.usesPerWeek);
    return facts.join(QStringLiteral(", "));
}

QString ownFacts(const Thing &thing) {
    QStringList facts;
    if (!thing.usual.contains("uses") && thing.usesPerWeek)
        facts << usesWords(*thing.usesPerWeek);
    if (thing.glass && !thing.usual.contains("glass"))
        facts << QObject::tr("glass");
    for (const auto &fact : thing.allergens)
        if (fact.state != model::AllergenState::ReadNoneListed)
            facts << (fact.state == model::AllergenState::Contains
                          ? text(fact.allergen)
                          : QObject::tr("%1, to be checked").arg(text(fact.allergen)));
    if (thing.hazard)
        facts << QObject::tr("can hurt");
    return facts.join(QStringLiteral(", "));
}

} // namespace

QString doubtWords(const Thing &thing) {
    return thing.doubt.empty() ? QObject::tr("shape and size?") : text(thing.doubt);
}

bool isDoubtful(const Thing &thing) {
    return !thing.doubt.empty() || !thing.width || !thing.height || !thing.depth;
}

int ContentsPage::placeIndex() const {
    const auto rows = placeRows(record());
    const auto found = std::ranges::find(rows, text(m_place.text), &ListRow::key);
    return found == rows.end() ? -1 : static_cast<int>(found - rows.begin());
}

const Thing *ContentsPage::thingInHand() const {
    const auto found = std::ranges::find(record().things, m_thing, &Thing::id);
    return found == record().things.end() ? nullptr : &*found;
}

QStringList ContentsPage::commands() const {
    return {QStringLiteral("correct"), QStringLiteral("readBack"), QStringLiteral("nextGap"),
            QStringLiteral("previousGap")};
}

void ContentsPage::refresh() {
    const auto places = placeRows(record());
    if (placeIndex() < 0 && !places.empty())
        m_place = {places.front().key.toStdString()};
    const Thing *thing = thingInHand();
    if (thing == nullptr && (m_mode == Mode::Thing || m_mode == Mode::Doubt))
        m_mode = Mode::Line;
    if (m_mode == Mode::Doubt && thing->said.empty())
        m_mode = Mode::Thing; // nothing to choose from: its facts are typed
    m_kicker = places.empty()
                   ? tr("No place yet: begin with the kitchen.")
                   : tr("Kitchen contents, place %1 of %2").arg(placeIndex() + 1).arg(places.size());
    m_title = places.empty() ? QString() : capital(text(model::placeWords(record(), m_place)));
    switch (m_mode) {
    case Mode::Line:
        showLine(places.size());
        break;
    case Mode::Thing:
        showThing();
        break;
    case Mode::Doubt:
        showDoubt();
        break;
    case Mode::List:
        showList();
        break;
    }
    const bool ofPlace = m_mode == Mode::Line || m_mode == Mode::Thing;
    if (ofPlace)
        refreshFindings();
    else
        m_findings.setRows({});
    m_drawing = ofPlace ? drawingOf(record(), m_place) : QVariantMap();
    m_drawingWords = text(reports::kitchenFigure(record()).words);
    emit refreshed();
}

std::vector<ListRow> ContentsPage::thingRows() const {
    std::vector<ListRow> rows;
    for (const auto &thing : record().things)
        if (thing.place == m_place)
            rows.push_back({.key = text(thing.id.text),
                            .title = text(thing.name),
                            .amount = thing.count ? QString::number(*thing.count) : QString(),
                            .facts = ownFacts(thing),
                            .usual = thing.usual.empty() ? QString() : usualFacts(thing),
                            .flag = isDoubtful(thing) ? doubtWords(thing) : QString()});
    return rows;
}

void ContentsPage::showLine(std::size_t places) {
    const QString none = places == 0 ? tr("There is no place yet. %1 opens the kitchen.")
                                           .arg(m_shell.keys()->keyOrTitle(QStringLiteral("step5")))
                                     : QString();
    setFields({{{.key = "line",
                 .label = tr("What stands here"),
                 .hint = tr("A comma ends a thing. Say how many, how often, glass or heavy."),
                 .unavailable = none},
                {},
                {}}});
    std::vector<ActionRow> actions;
    if (places > 0)
        actions = {{.key = "next", .title = tr("Next place"), .primary = true},
                   {.key = "back", .title = tr("Place before")},
                   {.key = "list", .title = tr("Take in a list")}};
    if (const auto doubts = std::ranges::count_if(record().things, isDoubtful); doubts > 0)
        actions.push_back({.key = "doubts",
                           .title = counted(static_cast<std::size_t>(doubts), tr("Answer the doubt"),
                                            tr("Answer %1 doubts")),
                           .keyName = m_shell.keys()->keyOf(QStringLiteral("nextGap"))});
    m_actions.setRows(std::move(actions));
    auto rows = thingRows();
    m_rowsLabel = counted(rows.size(), tr("1 thing here"), tr("%1 things here"));
    m_rowsEmpty = tr("Nothing entered yet.");
    m_rows.setRows(std::move(rows));
}

void ContentsPage::showThing() {
    m_title = tr("%1, %2").arg(text(thingInHand()->name), text(model::placeWords(record(), m_place)));
    setFields(thingFields(m_thing));
    m_actions.setRows({{.key = "done", .title = tr("Done, back to the shelf"), .primary = true},
                       {.key = "remove", .title = tr("Remove this thing")}});
    auto rows = thingRows();
    m_rowsLabel = counted(rows.size(), tr("1 thing here"), tr("%1 things here"));
    m_rows.setRows(std::move(rows));
}

void ContentsPage::refreshFindings() {
    const auto place = std::ranges::find(record().places, m_place, &model::Place::id);
    if (place == record().places.end() || !place->height) {
        m_findings.setRows({});
        return;
    }
    const auto &f = m_session.findings();
    const double height = place->height->value.value;
    const auto cm = [](double value) { return QString::number(std::round(value)); };
    FindingRow reach{.key = "reach", .question = tr("Reach")};
    if (height > f.reachHigh.value.value || height < f.reachLow.value.value) {
        reach.answer = tr("Out of reach");
        reach.reason = tr("At %1 cm it lies outside %2 to %3 cm. The plan puts nothing here.")
                           .arg(cm(height), cm(f.reachLow.value.value), cm(f.reachHigh.value.value));
    } else if (height > f.shoulder.value.value || height < f.knuckle.value.value) {
        const double by = height > f.shoulder.value.value ? height - f.shoulder.value.value
                                                          : f.knuckle.value.value - height;
        reach.answer = height > f.shoulder.value.value ? tr("%1 cm above easy reach").arg(cm(by))
                                                       : tr("%1 cm below easy reach").arg(cm(by));
        reach.reason = tr("Easy reach is %1 to %2 cm. Daily things stand better there.")
                           .arg(cm(f.knuckle.value.value), cm(f.shoulder.value.value));
    } else {
        reach.answer = tr("Easy reach");
        reach.reason = tr("At %1 cm, between knuckle and shoulder.").arg(cm(height));
    }
    m_findings.setRows({reach});
}

void ContentsPage::edit(const QString &key, const QString &value) {
    if (key == QLatin1String("line"))
        takeLine(value);
    else if (key == QLatin1String("answer") && !value.trimmed().isEmpty())
        answer(value.toStdString());
    else
        PageViewModel::edit(key, value);
}

void ContentsPage::takeLine(const QString &line) {
    if (line.trimmed().isEmpty())
        return;
    std::vector<Thing> here;
    std::ranges::copy_if(record().things, std::back_inserter(here),
                         [this](const Thing &thing) { return thing.place == m_place; });
    auto result = model::changeBy(line.toStdString(), here, m_session.lexicon());
    if (!result) {
        refuse(QStringLiteral("line"), line, text(result.error().sentence));
        return;
    }
    const auto doubts =
        std::ranges::count_if(result->added, [](const auto &item) { return !item.doubt.empty(); });
    const bool saved = change(line.trimmed(), "things.added", [&](Case &r) {
        for (auto &item : result->added) {
            item.thing.id = model::newId();
            item.thing.place = m_place;
            item.thing.recorded = m_session.today();
            r.things.push_back(item.thing);
        }
        for (const auto &thing : result->changed)
            *std::ranges::find(r.things, thing.id, &Thing::id) = thing;
        for (const auto &thing : result->removed) {
            std::erase_if(r.things, [&](const Thing &t) { return t.id == thing.id; });
            std::erase_if(r.overrules, [&](const model::Overrule &o) { return o.thing == thing.id; });
        }
    });
    if (!saved)
        return;
    for (const auto &item : result->added)
        m_session.learn(item.thing);
    clearField(QStringLiteral("line"));
    QStringList said;
    const bool only = result->added.empty() && !(result->changed.empty() && result->removed.empty());
    if (!only)
        said << counted(result->added.size(), tr("1 thing"), tr("%1 things"));
    if (!result->changed.empty())
        said << tr("%1 changed").arg(result->changed.size());
    if (!result->removed.empty())
        said << tr("%1 removed").arg(result->removed.size());
    for (const auto &name : result->notFound)
        said << tr("no %1 here").arg(text(name));
    said << (doubts
                 ? tr("%1 to ask, %2").arg(doubts).arg(m_shell.keys()->keyOrTitle(QStringLiteral("nextGap")))
                 : tr("no doubts"));
    say(tr("%1. Place %2 of %3.")
            .arg(said.join(QStringLiteral(", ")))
            .arg(placeIndex() + 1)
            .arg(record().places.size()));
}

void ContentsPage::act(const QString &key) {
    if (key == QLatin1String("next"))
        step(1);
    else if (key == QLatin1String("back"))
        step(-1);
    else if (key == QLatin1String("list"))
        open({}, Mode::List);
    else if (key == QLatin1String("doubts"))
        nextDoubt(1);
    else if (key == QLatin1String("take"))
        takeList();
    else if (key == QLatin1String("done"))
        settle();
    else if (key == QLatin1String("facts"))
        open(m_thing, Mode::Thing);
    else if (key == QLatin1String("line"))
        toLine();
    else if (key == QLatin1String("remove"))
        removeInHand();
}

void ContentsPage::removeInHand() {
    const Id id = m_thing;
    const QString name = text(thingInHand()->name);
    if (!change(tr("removed %1").arg(name), "thing.removed", [&](Case &r) {
            std::erase_if(r.things, [&](const Thing &t) { return t.id == id; });
            std::erase_if(r.overrules, [&](const model::Overrule &o) { return o.thing == id; });
        }))
        return;
    say(tr("%1 removed.").arg(name));
    toLine();
}

/// Doubts are asked where they stand; then it goes on where she was.
void ContentsPage::toLine() {
    if (m_cameFrom)
        m_place = *std::exchange(m_cameFrom, {});
    open({}, Mode::Line);
}

QString ContentsPage::subject() const {
    switch (m_mode) {
    case Mode::Line:
        return text(m_place.text);
    case Mode::Thing:
    case Mode::Doubt:
        return text(m_thing.text);
    case Mode::List:
        return {};
    }
    return {};
}

void ContentsPage::open(const Id &thing, Mode mode) {
    m_thing = thing;
    m_mode = mode;
    ++m_asked;
    refresh();
    switch (m_mode) {
    case Mode::Line:
        emit focusField(QStringLiteral("line"));
        break;
    case Mode::Thing:
        emit focusField(QStringLiteral("asLine"));
        break;
    case Mode::Doubt:
        if (!m_rows.rows().empty())
            emit focusRow(m_rows.rows().front().key);
        break;
    case Mode::List:
        emit focusField(QStringLiteral("list"));
        break;
    }
}

void ContentsPage::activated(const QString &row) {
    if (m_mode == Mode::List)
        return;
    if (m_mode != Mode::Doubt) {
        open({row.toStdString()}, row.isEmpty() ? Mode::Line : Mode::Thing);
        return;
    }
    const auto items = model::parseContents(thingInHand()->said, m_session.lexicon());
    const auto at = row.section(QLatin1Char('.'), -1).toUInt();
    if (items && at < items->front().answers.size())
        answer(items->front().answers[at].line);
}

void ContentsPage::command(const QString &name) {
    if (name == QLatin1String("correct") && !m_row.isEmpty() && m_mode == Mode::Line)
        activated(m_row);
    else if (name == QLatin1String("correct") && m_mode == Mode::Line)
        say(tr("Nothing is in hand. The list below the line has the things of this place."));
    else if (name == QLatin1String("nextGap"))
        nextDoubt(1);
    else if (name == QLatin1String("previousGap"))
        nextDoubt(-1);
    else if (name == QLatin1String("readBack")) {
        std::vector<model::ContentsItem> items;
        for (const auto &t : record().things)
            if (t.place == m_place)
                items.emplace_back().thing = t;
        say(items.empty() ? tr("Nothing entered yet.") : text(model::readContentsBack(items)));
    }
}

void ContentsPage::step(int by) {
    const auto places = placeRows(record());
    const int to = placeIndex() + by;
    if (to < 0 || to >= static_cast<int>(places.size())) {
        say(by > 0 ? tr("This is the last place. %1 opens the plan.")
                         .arg(m_shell.keys()->keyOrTitle(QStringLiteral("step7")))
                   : tr("This is the first place."));
        return;
    }
    m_place = {places[static_cast<std::size_t>(to)].key.toStdString()};
    refresh();
    sayAfterFocus(tr("%1. Place %2 of %3.").arg(m_title).arg(to + 1).arg(places.size()));
    emit focusField(QStringLiteral("line"));
}

} // namespace app
