#include "app/pages/kitchen_page.h"
#include "app/pages/entries.h"
#include "model/kitchen_line.h"
#include "model/planning.h"
#include "reports/kitchen_figure.h"
#include <algorithm>

namespace app {

using model::Case;
using model::Id;
using model::Place;
using model::Result;
using model::Unit;

namespace {

constexpr double longestCm = 500;

int thingsOn(const Case &record, const Id &place) {
    return static_cast<int>(std::ranges::count_if(
        record.things, [&](const model::Thing &thing) { return thing.place == place; }));
}

/// "142 cm above the floor, fridge"
QString placeFacts(const Place &place) {
    const QString storage = storages().wordOf(place.storage);
    return place.height ? QObject::tr("%1 above the floor, %2").arg(shown(place.height), storage.toLower())
                        : storage;
}

} // namespace

QVariantMap drawingOf(const reports::Figure &figure, const QString &label, bool floorShown,
                      const Case &record, const Id &here) {
    const auto isUnit = [&](const std::string &id) {
        return std::ranges::count(record.units, Id{id}, &Unit::id) > 0;
    };
    QVariantList boxes;
    for (const auto &box : figure.boxes)
        boxes.append(QVariantMap{{"x", box.x},
                                 {"y", box.y},
                                 {"width", box.width},
                                 {"height", box.height},
                                 {"label", text(box.label)},
                                 {"unit", isUnit(box.of)},
                                 {"here", !here.empty() && box.of == here.text}});
    if (boxes.isEmpty())
        return {};
    return {{"boxes", boxes},
            {"width", figure.width},
            {"height", figure.height},
            {"label", label},
            {"floorShown", floorShown}};
}

QVariantMap drawingOf(const Case &record, const Id &here) {
    return drawingOf(reports::kitchenFigure(record), QObject::tr("Kitchen from the front"), true, record,
                     here);
}

std::vector<ListRow> placeRows(const Case &record) {
    std::vector<ListRow> rows;
    for (const auto &unit : record.units)
        for (const auto &place : record.places)
            if (place.unit == unit.id) {
                const int count = thingsOn(record, place.id);
                const bool usual = place.height && place.height->basis == model::Basis::Usual;
                rows.push_back({.key = text(place.id.text),
                                .title = text(place.name),
                                .amount = count ? counted(static_cast<std::size_t>(count),
                                                          QObject::tr("1 thing"), QObject::tr("%1 things"))
                                                : QString(),
                                .facts = placeFacts(place),
                                .flag = usual ? QObject::tr("usual") : QString(),
                                .section = text(unit.name)});
            }
    return rows;
}

const Unit *KitchenPage::unitInHand() const {
    const auto found = std::ranges::find(record().units, m_hand, &Unit::id);
    return found == record().units.end() ? nullptr : &*found;
}

const Place *KitchenPage::placeInHand() const {
    const auto found = std::ranges::find(record().places, m_hand, &Place::id);
    return found == record().places.end() ? nullptr : &*found;
}

void KitchenPage::refresh() {
    const Unit *unit = unitInHand();
    const Place *place = placeInHand();
    if (!unit && !place)
        m_hand = {};
    m_kicker = tr("%1, %2. Clockwise from the door.")
                   .arg(counted(record().units.size(), tr("1 unit"), tr("%1 units")),
                        counted(record().places.size(), tr("1 place"), tr("%1 places")));
    setFields(place ? placeFields(m_hand) : unit ? unitFields(m_hand) : newUnitFields());
    std::vector<ActionRow> actions;
    if (!unit && !place) {
        actions.push_back({.key = "add", .title = tr("Add this unit"), .primary = true});
        actions.push_back({.key = "photos", .title = tr("Photographs")});
        actions.push_back({.key = "appliances", .title = tr("Appliances")});
        if (!record().units.empty())
            actions.push_back(
                {.key = "view", .title = m_above ? tr("Draw it from the front") : tr("Draw it from above")});
    } else {
        actions.push_back({.key = "done", .title = tr("Done, next unit"), .primary = true});
        if (place)
            actions.push_back({.key = "unit", .title = tr("Change its unit")});
        actions.push_back({.key = "addPlace", .title = tr("Add a shelf below")});
        if (place)
            actions.push_back({.key = "split", .title = tr("Split it in two")});
        else
            actions.push_back({.key = "copy", .title = tr("Copy this unit")});
        if (!place)
            actions.push_back({.key = "before", .title = tr("Put a unit before it")});
        actions.push_back(
            {.key = "earlier", .title = place ? tr("Move it up") : tr("Move it towards the door")});
        actions.push_back({.key = "later", .title = place ? tr("Move it down") : tr("Move it on clockwise")});
        actions.push_back(
            {.key = "remove", .title = place ? tr("Remove this place") : tr("Remove this unit")});
    }
    m_actions.setRows(std::move(actions));
    m_rowsLabel = tr("Places");
    m_rowsEmpty = tr("No places yet. Begin with the unit next to the door.");
    m_rows.setRows(placeRows(record()));
    showDrawing();
    emit refreshed();
}

/// The whole kitchen from the front or from above, or the unit in hand from the front.
void KitchenPage::showDrawing() {
    const Place *place = placeInHand();
    const bool one = unitInHand() || place;
    const auto figure = one       ? reports::unitFigure(record(), place ? place->unit : m_hand)
                        : m_above ? reports::floorFigure(record())
                                  : reports::kitchenFigure(record());
    const QString label = one       ? tr("Unit from the front")
                          : m_above ? tr("Kitchen from above")
                                    : tr("Kitchen from the front");
    m_drawing = drawingOf(figure, label, !one && !m_above, record(), m_hand);
    m_drawingWords = text(figure.words);
}

void KitchenPage::edit(const QString &key, const QString &value) {
    if (key == QLatin1String("units"))
        takeUnits(value);
    else
        PageViewModel::edit(key, value);
}

void KitchenPage::takeUnits(const QString &line) {
    if (line.trimmed().isEmpty())
        return;
    const auto read = model::parseUnits(line.toStdString());
    if (!read) {
        refuse(QStringLiteral("units"), line, text(read.error().sentence));
        return;
    }
    std::size_t places = 0;
    const auto first = std::ranges::find(record().units, m_before, &Unit::id) - record().units.begin();
    const bool saved = change(line.trimmed(), "unit.added", [&](Case &r) {
        for (const auto &said : read->units) {
            model::addUnit(r, said.unit, said.places, m_before);
            places += static_cast<std::size_t>(said.places);
        }
    });
    if (!saved)
        return;
    clearField(QStringLiteral("units"));
    const QString units = counted(read->units.size(), tr("1 unit"), tr("%1 units"));
    if (!read->left.empty()) {
        refuse(QStringLiteral("units"), text(read->left),
               tr("%1 taken in. %2").arg(units, text(read->why)) +
                   leavesRoom(static_cast<std::size_t>(first) + read->before));
        return;
    }
    m_before = {};
    say(tr("%1, %2 of usual size. Measure when you can.")
            .arg(units, counted(places, tr("1 place"), tr("%1 places"))));
}

/// What was not understood of a line goes where it was said; in words, if that is not at the end.
QString KitchenPage::leavesRoom(std::size_t at) {
    const bool within = at < record().units.size();
    m_before = within ? record().units[at].id : Id{};
    return within ? tr(" It goes before %1.").arg(text(record().units[at].name)) : QString();
}

void KitchenPage::copyInHand() {
    const Id from = m_hand;
    const QString name = text(unitInHand()->name);
    std::optional<Id> copy;
    if (!change(tr("copy of %1").arg(name), "unit.added",
                [&](Case &r) { copy = model::copyUnit(r, from); }) ||
        !copy)
        return;
    activated(text(copy->text));
    sayAfterFocus(tr("Copied, behind %1. Give it a name.").arg(name));
}

void KitchenPage::splitInHand() {
    const Id place = m_hand;
    Case tried = record();
    if (!model::splitPlace(tried, place)) {
        say(tr(
            "This cannot be split: it is a worktop, or its clear height is not known, or less than 12 cm."));
        return;
    }
    std::optional<Id> lower;
    if (!change(tr("split %1").arg(text(placeInHand()->name)), "place.added",
                [&](Case &r) { lower = model::splitPlace(r, place); }))
        return;
    activated(text(lower->text));
    sayAfterFocus(
        tr("Two now, each %1 high, estimated. This is the lower one.").arg(shown(placeInHand()->clear)));
}

void KitchenPage::moveInHand(int by) {
    const Id part = m_hand;
    Case tried = record();
    if (!model::moveBy(tried, part, by)) {
        say(by < 0 ? tr("It is the first already.") : tr("It is the last already."));
        return;
    }
    const QString name = unitInHand() ? text(unitInHand()->name) : text(placeInHand()->name);
    if (change(tr("moved %1").arg(name), "unit.moved", [&](Case &r) { model::moveBy(r, part, by); }))
        say(unitInHand() ? tr("%1 is unit %2 of %3 now.")
                               .arg(name)
                               .arg(unitInHand()->order + 1)
                               .arg(record().units.size())
                         : tr("%1 is place %2 from the top now.").arg(name).arg(placeInHand()->order + 1));
}

void KitchenPage::act(const QString &key) {
    if (key == QLatin1String("add"))
        addUnit();
    else if (key == QLatin1String("addPlace"))
        addPlace();
    else if (key == QLatin1String("remove"))
        remove();
    else if (key == QLatin1String("unit") && placeInHand())
        activated(text(placeInHand()->unit.text));
    else if (key == QLatin1String("copy") && unitInHand())
        copyInHand();
    else if (key == QLatin1String("split") && placeInHand())
        splitInHand();
    else if (key == QLatin1String("earlier") || key == QLatin1String("later"))
        moveInHand(key == QLatin1String("earlier") ? -1 : 1);
    else if (key == QLatin1String("before") && unitInHand())
        putBefore();
    else if (key == QLatin1String("view")) {
        m_above = !m_above;
        refresh();
        say(m_drawingWords);
    } else if (key == QLatin1String("photos") || key == QLatin1String("appliances"))
        m_shell.goTo(key);
    else if (key == QLatin1String("done"))
        activated({});
}

void KitchenPage::putBefore() {
    const Id before = m_hand;
    const QString name = text(unitInHand()->name);
    activated({});
    m_before = before;
    sayAfterFocus(tr("The next unit goes before %1.").arg(name));
}

void KitchenPage::activated(const QString &row) {
    m_hand = {row.toStdString()};
    refresh();
    emit focusField(placeInHand()  ? QStringLiteral("placeName")
                    : unitInHand() ? QStringLiteral("unitName")
                                   : QStringLiteral("units"));
}

void KitchenPage::command(const QString &name) {
    if (name == QLatin1String("readBack")) {
        QStringList map;
        for (const auto &line : model::mapInWords(record()))
            map << text(line);
        say(map.join(QLatin1Char(' ')));
    } else if (!m_row.isEmpty()) {
        activated(m_row);
    }
}

void KitchenPage::addUnit() {
    if (m_new.name.isEmpty()) {
        say(tr("The unit needs a name, for example wall cupboard left of the cooker."));
        emit focusField(QStringLiteral("newName"));
        return;
    }
    Unit unit;
    unit.name = m_new.name.toStdString();
    unit.kind = m_new.kind;
    unit.area = m_new.area;
    if (const auto width = lengthOrNone(m_new.width, longestCm); width)
        unit.width = *width;
    const int count = m_new.shelves.isEmpty() ? 1 : m_new.shelves.toInt();
    const bool added = change(tr("unit %1").arg(m_new.name), "unit.added",
                              [&](Case &r) { model::addUnit(r, unit, count, m_before); });
    if (!added)
        return;
    m_before = {};
    say(tr("%1 added, %2 of usual size. Measure when you can.")
            .arg(m_new.name, counted(static_cast<std::size_t>(count), tr("1 place"), tr("%1 places"))));
    m_new = {};
    refresh();
    emit focusField(QStringLiteral("units"));
}

void KitchenPage::addPlace() {
    const Id unitId = placeInHand() ? placeInHand()->unit : m_hand;
    const auto unit = std::ranges::find(record().units, unitId, &Unit::id);
    if (unit == record().units.end())
        return;
    const auto count = static_cast<int>(std::ranges::count(record().places, unitId, &Place::unit));
    Place place = model::usualPlace(*unit, count, count + 1);
    const Id id = place.id;
    if (change(tr("place %1").arg(text(place.name)), "place.added", [&](Case &r) {
            const auto last = std::find_if(r.places.rbegin(), r.places.rend(),
                                           [&](const Place &p) { return p.unit == unitId; });
            r.places.insert(last.base(), place);
        }))
        activated(text(id.text));
}

void KitchenPage::remove() {
    const Id id = m_hand;
    const auto stands = [&](const Case &r, const model::Thing &thing) {
        if (!thing.place)
            return false;
        if (*thing.place == id)
            return true;
        const auto place = std::ranges::find(r.places, *thing.place, &Place::id);
        return place != r.places.end() && place->unit == id;
    };
    const QString words = unitInHand() ? text(unitInHand()->name) : text(placeInHand()->name);
    const bool removed = change(tr("removed %1").arg(words), "place.removed", [&](Case &r) {
        for (auto &thing : r.things)
            if (stands(r, thing))
                thing.place.reset();
        std::erase_if(r.places, [&](const Place &p) { return p.id == id || p.unit == id; });
        std::erase_if(r.units, [&](const Unit &u) { return u.id == id; });
        model::renumber(r);
    });
    if (!removed)
        return;
    say(tr("%1 removed. Things that stood there have no place now.").arg(words));
    activated({});
}

} // namespace app
