#include "model/kitchen_line.h"
#include "model/sentence.h"
#include "model/usual_sizes.h"
#include <algorithm>
#include <cmath>

namespace model {
namespace {

template<class Part> auto partOf(std::vector<Part> &list, const Id &id) {
    return std::find_if(list.begin(), list.end(), [&](const Part &part) { return part.id == id; });
}

int placesOf(const Case &record, const Id &unit) {
    return static_cast<int>(std::count_if(record.places.begin(), record.places.end(),
                                          [&](const Place &place) { return place.unit == unit; }));
}

std::string ordinal(int number) {
    static const std::vector<std::string> words{"",      "first",    "second",  "third",  "fourth",
                                                "fifth", "sixth",    "seventh", "eighth", "ninth",
                                                "tenth", "eleventh", "twelfth"};
    return number < static_cast<int>(words.size()) ? words[static_cast<std::size_t>(number)]
                                                   : std::to_string(number) + "th";
}

std::string placesInWords(const Case &record, const Unit &unit) {
    const int count = placesOf(record, unit.id);
    if (unit.kind == UnitKind::Worktop)
        return "";
    const bool drawers = unit.kind == UnitKind::DrawerStack || unit.kind == UnitKind::Freezer;
    const std::string number = std::to_string(count);
    if (count == 0)
        return ", " + (drawers ? Sentence::tr("no drawer") : Sentence::tr("no shelf"));
    if (count == 1)
        return ", " + (drawers ? Sentence::tr("1 drawer") : Sentence::tr("1 shelf"));
    return ", " + (drawers ? Sentence::tr("{1} drawers", {number}) : Sentence::tr("{1} shelves", {number}));
}

} // namespace

std::string placeName(UnitKind kind, int order, int count) {
    if (kind == UnitKind::Worktop)
        return "worktop";
    const bool drawer = kind == UnitKind::DrawerStack || kind == UnitKind::Freezer;
    const std::string word = drawer ? "drawer" : "shelf";
    if (count == 1)
        return word;
    if (order == 0)
        return "top " + word;
    if (order == count - 1)
        return "bottom " + word;
    return (count == 3 ? "middle" : ordinal(order + 1)) + " " + word;
}

Place usualPlace(const Unit &unit, int order, int count) {
    const auto outer = unit.width ? unit.width->value : usualUnitWidth(unit.kind);
    const auto size = usualSize(unit.kind, outer, order, count);
    const auto usual = [](Centimetres cm) { return Length{cm, "", Basis::Usual}; };
    Place place;
    place.id = newId();
    place.unit = unit.id;
    place.order = order;
    place.name = placeName(unit.kind, order, count);
    place.drawer = unit.kind == UnitKind::DrawerStack || unit.kind == UnitKind::Freezer;
    place.counter = unit.kind == UnitKind::Worktop;
    place.storage = unit.kind == UnitKind::Fridge    ? Storage::Fridge
                    : unit.kind == UnitKind::Freezer ? Storage::Freezer
                                                     : Storage::Dry;
    place.width = usual(size.width);
    place.depth = usual(size.depth);
    if (!place.counter)
        place.clear = usual(size.clear);
    place.height = usual(size.height);
    return place;
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

void addUnit(Case &record, Unit unit, int places, const Id &before) {
    unit.id = newId();
    for (int i = 0; i < places; ++i)
        record.places.push_back(usualPlace(unit, i, places));
    record.units.insert(partOf(record.units, before), std::move(unit));
    renumber(record);
}

std::optional<Id> copyUnit(Case &record, const Id &unit) {
    const auto found = partOf(record.units, unit);
    if (found == record.units.end())
        return std::nullopt;
    Unit copy = *found;
    copy.id = newId();
    copy.name = "copy of " + copy.name;
    copy.corner = false;
    const Id id = copy.id;
    std::vector<Place> places;
    for (const auto &place : record.places) {
        if (place.unit != unit)
            continue;
        places.push_back(place);
        places.back().id = newId();
        places.back().unit = id;
    }
    record.units.insert(std::next(found), std::move(copy));
    record.places.insert(record.places.end(), places.begin(), places.end());
    renumber(record);
    return id;
}

bool moveBy(Case &record, const Id &part, int by) {
    if (const auto unit = partOf(record.units, part); unit != record.units.end()) {
        const auto to = unit - record.units.begin() + by;
        if (to < 0 || to >= static_cast<long>(record.units.size()))
            return false;
        std::iter_swap(unit, record.units.begin() + to);
        renumber(record);
        return true;
    }
    const auto place = partOf(record.places, part);
    if (place == record.places.end())
        return false;
    const auto other = std::find_if(record.places.begin(), record.places.end(), [&](const Place &p) {
        return p.unit == place->unit && p.order == place->order + by;
    });
    if (other == record.places.end())
        return false;
    std::iter_swap(place, other);
    std::swap(place->height, other->height); // the shelf stays where it is, what is on it moves
    renumber(record);
    return true;
}

std::optional<Id> splitPlace(Case &record, const Id &place) {
    const auto upper = partOf(record.places, place);
    if (upper == record.places.end() || upper->counter || !upper->clear)
        return std::nullopt;
    constexpr double board = 2; // cm of the shelf between
    const double half = std::floor((upper->clear->value.value - board) / 2 * 10) / 10;
    if (half < 5)
        return std::nullopt;
    Place lower = *upper;
    lower.id = newId();
    lower.name = "under " + upper->name;
    const auto estimated = [](double cm) { return Length{{cm}, "", Basis::Estimated}; };
    lower.clear = estimated(half);
    upper->clear = estimated(half);
    if (upper->height)
        upper->height = estimated(upper->height->value.value + half + board);
    const Id id = lower.id;
    record.places.insert(std::next(upper), std::move(lower));
    renumber(record);
    return id;
}

std::vector<std::string> mapInWords(const Case &record) {
    std::vector<std::string> out;
    if (record.units.empty())
        return {Sentence::tr("No unit yet.")};
    out.push_back(Sentence::tr("From the door, clockwise."));
    for (std::size_t i = 0; i < record.units.size(); ++i) {
        const Unit &unit = record.units[i];
        std::string line = std::to_string(i + 1) + ", " + unit.name;
        if (unit.corner && i > 0)
            line = Sentence::tr("Corner. {1}", {line});
        if (unit.width)
            line = Sentence::tr("{1}, {2} cm wide",
                                {line, std::to_string(std::lround(unit.width->value.value))});
        out.push_back(line + placesInWords(record, unit) + ".");
    }
    return out;
}

} // namespace model
