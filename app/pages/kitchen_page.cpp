#include "app/pages/kitchen_page.h"
#include "app/pages/entries.h"
#include "model/planning.h"
#include "model/usual_sizes.h"
#include "reports/kitchen_figure.h"
#include <algorithm>

namespace app {

using model::Case;
using model::ErrorCode;
using model::fail;
using model::Id;
using model::Place;
using model::Result;
using model::Unit;
using model::UnitKind;

namespace {

constexpr double longestCm = 500;

int thingsOn(const Case &record, const Id &place) {
    return static_cast<int>(std::ranges::count_if(
        record.things, [&](const model::Thing &thing) { return thing.place == place; }));
}

QString shelfName(UnitKind kind, int order, int count) {
    if (kind == UnitKind::Worktop)
        return QObject::tr("worktop");
    const bool drawer = kind == UnitKind::DrawerStack || kind == UnitKind::Freezer;
    const QString word = drawer ? QObject::tr("drawer") : QObject::tr("shelf");
    if (count == 1)
        return word;
    if (order == 0)
        return QObject::tr("top %1").arg(word);
    if (order == count - 1)
        return QObject::tr("bottom %1").arg(word);
    return count == 3 ? QObject::tr("middle %1").arg(word)
                      : QObject::tr("%1 %2 from the top").arg(word).arg(order + 1);
}

/// A place of the usual size of its unit, marked usual.
Place usualPlace(const Unit &unit, int order, int count) {
    const auto outer = unit.width ? unit.width->value : model::usualUnitWidth(unit.kind);
    const auto size = model::usualSize(unit.kind, outer, order, count);
    const auto usual = [](model::Centimetres cm) { return model::Length{cm, "", model::Basis::Usual}; };
    Place place;
    place.id = model::newId();
    place.unit = unit.id;
    place.order = order;
    place.name = shelfName(unit.kind, order, count).toStdString();
    place.drawer = unit.kind == UnitKind::DrawerStack || unit.kind == UnitKind::Freezer;
    place.counter = unit.kind == UnitKind::Worktop;
    place.storage = unit.kind == UnitKind::Fridge    ? model::Storage::Fridge
                    : unit.kind == UnitKind::Freezer ? model::Storage::Freezer
                                                     : model::Storage::Dry;
    place.width = usual(size.width);
    place.depth = usual(size.depth);
    if (!place.counter)
        place.clear = usual(size.clear);
    place.height = usual(size.height);
    return place;
}

/// Takes a length field of a part with this id; `member` is one of its optional lengths.
template<class Part>
auto lengthField(std::vector<Part> Case::*list, const Id &id, std::optional<model::Length> Part::*member) {
    return [list, id, member](Case &record, const QString &typed) -> Result<void> {
        auto length = lengthOrNone(typed, longestCm);
        if (!length)
            return tl::unexpected(length.error());
        for (auto &part : record.*list)
            if (part.id == id)
                part.*member = std::move(*length);
        return {};
    };
}

template<class Part, class T>
auto choiceField(std::vector<Part> Case::*list, const Id &id, T Part::*member, const Choices<T> &choices) {
    return [list, id, member, &choices](Case &record, const QString &chosen) -> Result<void> {
        for (auto &part : record.*list)
            if (part.id == id)
                part.*member = choices.valueOf(chosen).value_or(part.*member);
        return {};
    };
}

template<class Part> auto nameField(std::vector<Part> Case::*list, const Id &id) {
    return [list, id](Case &record, const QString &typed) -> Result<void> {
        if (typed.trimmed().isEmpty())
            return fail(ErrorCode::Missing, "A name is needed. The one before is kept.");
        for (auto &part : record.*list)
            if (part.id == id)
                part.name = typed.trimmed().toStdString();
        return {};
    };
}

QString usualHint(const std::optional<model::Length> &length) {
    return length && length->basis == model::Basis::Usual ? QObject::tr("Usual, not measured") : QString();
}

void renumber(Case &record) {
    for (std::size_t i = 0; i < record.units.size(); ++i)
        record.units[i].order = static_cast<int>(i);
    for (const auto &unit : record.units) {
        int order = 0;
        for (auto &place : record.places)
            if (place.unit == unit.id)
                place.order = order++;
    }
}

} // namespace

QVariantMap drawingOf(const Case &record, const Id &here) {
    const auto figure = reports::kitchenFigure(record);
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
    return {{"boxes", boxes}, {"width", figure.width}, {"height", figure.height}};
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
                                .facts = place.height
                                             ? QObject::tr("%1 above the floor").arg(shown(place.height))
                                             : QString(),
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

std::vector<PageViewModel::FieldSpec> KitchenPage::newUnitFields() {
    const auto typed = [](QString &into) {
        return [&into](Case &, const QString &value) -> Result<void> {
            into = value.trimmed();
            return {};
        };
    };
    return {
        {{.key = "newKind",
          .kind = FieldKind::Choice,
          .label = tr("Kind of unit"),
          .choices = unitKinds().words()},
         [this] { return unitKinds().wordOf(m_new.kind); },
         [this](Case &, const QString &chosen) -> Result<void> {
             m_new.kind = unitKinds().valueOf(chosen).value_or(m_new.kind);
             return {};
         }},
        {{.key = "newName",
          .label = tr("Name of the unit"),
          .hint = tr("For example wall cupboard left of the cooker")},
         [this] { return m_new.name; },
         typed(m_new.name)},
        {{.key = "newArea",
          .kind = FieldKind::Choice,
          .label = tr("Stands at"),
          .hint = tr("The work area that it belongs to"),
          .choices = workAreas().words()},
         [this] { return workAreas().wordOf(m_new.area); },
         [this](Case &, const QString &chosen) -> Result<void> {
             m_new.area = workAreas().valueOf(chosen).value_or(m_new.area);
             return {};
         }},
        {{.key = "newWidth",
          .label = tr("Outer width"),
          .hint = tr("For example 60 cm; empty: the usual width")},
         [this] { return m_new.width; },
         [this](Case &, const QString &value) -> Result<void> {
             if (const auto length = lengthOrNone(value, longestCm); !length)
                 return tl::unexpected(length.error());
             m_new.width = value.trimmed();
             return {};
         }},
        {{.key = "newShelves",
          .kind = FieldKind::Number,
          .label = tr("How many shelves or drawers"),
          .hint = tr("1 to 12")},
         [this] { return m_new.shelves; },
         [this](Case &, const QString &value) -> Result<void> {
             if (const auto count = wholeNumber(value, 1, 12); !count)
                 return tl::unexpected(count.error());
             m_new.shelves = value.trimmed();
             return {};
         }},
    };
}

std::vector<PageViewModel::FieldSpec> KitchenPage::unitFields(const Id &id) {
    const auto unit = [this, id]() -> const Unit & {
        return *std::ranges::find(record().units, id, &Unit::id);
    };
    return {
        {{.key = "unitName", .label = tr("Name of the unit")},
         [unit] { return text(unit().name); },
         nameField(&Case::units, id)},
        {{.key = "unitKind",
          .kind = FieldKind::Choice,
          .label = tr("Kind of unit"),
          .choices = unitKinds().words()},
         [unit] { return unitKinds().wordOf(unit().kind); },
         choiceField(&Case::units, id, &Unit::kind, unitKinds())},
        {{.key = "unitArea",
          .kind = FieldKind::Choice,
          .label = tr("Stands at"),
          .choices = workAreas().words()},
         [unit] { return workAreas().wordOf(unit().area); },
         choiceField(&Case::units, id, &Unit::area, workAreas())},
        {{.key = "unitWidth", .label = tr("Outer width")},
         [unit] { return shown(unit().width); },
         lengthField(&Case::units, id, &Unit::width)},
        {{.key = "unitLock",
          .kind = FieldKind::YesNo,
          .label = tr("Can be locked"),
          .hint = tr("Not asked counts as no")},
         [unit] { return answerValue(unit().lockable); },
         [id](Case &r, const QString &chosen) -> Result<void> {
             for (auto &u : r.units)
                 if (u.id == id)
                     u.lockable = answerOf(chosen);
             return {};
         }},
    };
}

std::vector<PageViewModel::FieldSpec> KitchenPage::placeFields(const Id &id) {
    const auto place = [this, id]() -> const Place & {
        return *std::ranges::find(record().places, id, &Place::id);
    };
    const auto size = [&](const char *key, const QString &label,
                          std::optional<model::Length> Place::*member) -> FieldSpec {
        return {{.key = key, .label = label, .hint = usualHint(place().*member)},
                [place, member] { return shown(place().*member); },
                lengthField(&Case::places, id, member)};
    };
    return {
        {{.key = "placeName", .label = tr("Name of the place")},
         [place] { return text(place().name); },
         nameField(&Case::places, id)},
        size("placeWidth", tr("Width inside"), &Place::width),
        size("placeDepth", tr("Depth inside"), &Place::depth),
        size("placeClear", tr("Clear height"), &Place::clear),
        size("placeHeight", tr("Height above the floor"), &Place::height),
        {{.key = "placeStorage",
          .kind = FieldKind::Choice,
          .label = tr("Storage"),
          .choices = storages().words()},
         [place] { return storages().wordOf(place().storage); },
         choiceField(&Case::places, id, &Place::storage, storages())},
        {{.key = "placeLight",
          .kind = FieldKind::Choice,
          .label = tr("Light on it"),
          .hint = tr("Not asked counts as dim"),
          .choices = lights().words()},
         [place] { return lights().wordOf(place().light); },
         choiceField(&Case::places, id, &Place::light, lights())},
    };
}

void KitchenPage::refresh() {
    const Unit *unit = unitInHand();
    const Place *place = placeInHand();
    if (!unit && !place)
        m_hand = {};
    m_kicker = tr("%1 units, %2 places. Clockwise from the door.")
                   .arg(record().units.size())
                   .arg(record().places.size());
    setFields(place ? placeFields(m_hand) : unit ? unitFields(m_hand) : newUnitFields());
    std::vector<ActionRow> actions;
    if (!unit && !place) {
        actions.push_back({.key = "add", .title = tr("Add this unit"), .primary = true});
    } else {
        actions.push_back({.key = "done", .title = tr("Done, next unit"), .primary = true});
        if (place)
            actions.push_back({.key = "unit", .title = tr("Change its unit")});
        actions.push_back({.key = "addPlace", .title = tr("Add a shelf below")});
        actions.push_back(
            {.key = "remove", .title = place ? tr("Remove this place") : tr("Remove this unit")});
    }
    m_actions.setRows(std::move(actions));
    m_rowsLabel = tr("Places");
    m_rowsEmpty = tr("No places yet. Begin with the unit next to the door.");
    m_rows.setRows(placeRows(record()));
    m_drawing = drawingOf(record(), m_hand);
    m_drawingWords = text(reports::kitchenFigure(record()).words);
    emit refreshed();
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
    else if (key == QLatin1String("done"))
        activated({});
}

void KitchenPage::activated(const QString &row) {
    m_hand = {row.toStdString()};
    refresh();
    emit focusField(placeInHand()  ? QStringLiteral("placeName")
                    : unitInHand() ? QStringLiteral("unitName")
                                   : QStringLiteral("newKind"));
}

void KitchenPage::command(const QString & /*name*/) {
    if (!m_row.isEmpty())
        activated(m_row);
}

void KitchenPage::addUnit() {
    if (m_new.name.isEmpty()) {
        say(tr("The unit needs a name, for example wall cupboard left of the cooker."));
        emit focusField(QStringLiteral("newName"));
        return;
    }
    Unit unit;
    unit.id = model::newId();
    unit.name = m_new.name.toStdString();
    unit.kind = m_new.kind;
    unit.area = m_new.area;
    if (const auto width = lengthOrNone(m_new.width, longestCm); width)
        unit.width = *width;
    const int count = m_new.shelves.isEmpty() ? 1 : m_new.shelves.toInt();
    const bool added = change(tr("unit %1").arg(m_new.name), "unit.added", [&](Case &r) {
        unit.order = static_cast<int>(r.units.size());
        r.units.push_back(unit);
        for (int i = 0; i < count; ++i)
            r.places.push_back(usualPlace(unit, i, count));
    });
    if (!added)
        return;
    say(tr("%1 added, %2 of usual size. Measure when you can.")
            .arg(m_new.name, counted(static_cast<std::size_t>(count), tr("1 place"), tr("%1 places"))));
    m_new = {};
    refresh();
    emit focusField(QStringLiteral("newKind"));
}

void KitchenPage::addPlace() {
    const Id unitId = placeInHand() ? placeInHand()->unit : m_hand;
    const auto unit = std::ranges::find(record().units, unitId, &Unit::id);
    if (unit == record().units.end())
        return;
    const auto count = static_cast<int>(std::ranges::count(record().places, unitId, &Place::unit));
    Place place = usualPlace(*unit, count, count + 1);
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
        renumber(r);
    });
    if (!removed)
        return;
    say(tr("%1 removed. Things that stood there have no place now.").arg(words));
    activated({});
}

} // namespace app
