#include "tests/check/plan_files.h"
#include "tests/check/json_field.h"
#include <algorithm>
#include <limits>
#include <map>
#include <optional>
#include <set>

namespace check {
namespace {

using namespace model;

constexpr double mostCm = 10'000;
constexpr double mostKg = 1'000;
constexpr double mostMetres = 1'000;
constexpr double mostPerWeek = 10'000;
constexpr double mostMinutes = 10'000;
constexpr std::int64_t mostId = 1'000'000;

using Areas = std::map<std::string, std::pair<double, double>>;

ProblemStorage storage(const Field &field) {
    const std::string word = field.oneOf({"dry", "fridge", "freezer"});
    return word == "dry"      ? ProblemStorage::Dry
           : word == "fridge" ? ProblemStorage::Fridge
                              : ProblemStorage::Freezer;
}

ProblemClient client(const Field &field) {
    ProblemClient client;
    client.knuckleCm = field.at("knuckle_cm").number(0, mostCm);
    client.shoulderCm = field.at("shoulder_cm").number(0, mostCm);
    client.reachLowCm = field.at("reach_low_cm").number(0, mostCm);
    client.reachHighCm = field.at("reach_high_cm").number(0, mostCm);
    client.children = field.at("children").boolean();
    client.childReachCm = field.at("child_reach_cm").number(0, mostCm);
    client.usableVision = field.at("usable_vision").boolean();
    client.avoidsAllergen = field.at("avoids_allergen").boolean();
    client.heavyKg = field.at("heavy_kg").positive(mostKg);
    if (client.knuckleCm > client.shoulderCm)
        field.at("knuckle_cm").refuse("is above the shoulder");
    if (client.reachLowCm > client.reachHighCm)
        field.at("reach_low_cm").refuse("is above reach_high_cm");
    return client;
}

Areas areas(const Field &field) {
    Areas all;
    for (const std::string &name : field.names()) {
        const std::vector<Field> pair = field.at(name).list();
        if (pair.size() != 2)
            field.at(name).refuse("must be two numbers, metres along x and y");
        all[name] = {pair[0].number(-mostMetres, mostMetres), pair[1].number(-mostMetres, mostMetres)};
    }
    return all;
}

/// Ids in order; a repeated one is bad input.
std::vector<int> ids(const Field &field) {
    std::vector<int> all;
    std::set<int> seen;
    for (const Field &one : field.list()) {
        const int id = static_cast<int>(one.at("id").integer(0, mostId));
        if (!seen.insert(id).second)
            one.at("id").refuse("is " + std::to_string(id) + ", which is taken already");
        all.push_back(id);
    }
    return all;
}

ProblemPlace place(const Field &field) {
    ProblemPlace place;
    place.name = field.at("kind").text() + " " + std::to_string(field.at("id").integer(0, mostId));
    if (field.has("name"))
        place.name = field.at("name").text();
    const std::string kind = field.at("kind").oneOf({"shelf", "drawer", "counter"});
    place.counter = kind == "counter";
    place.heightCm = field.at("height_cm").number(0, mostCm);
    place.widthCm = field.at("width_cm").positive(mostCm);
    place.depthCm = field.at("depth_cm").positive(mostCm);
    place.clearCm = field.at("clear_cm").positive(mostCm);
    place.storage = storage(field.at("storage"));
    place.secure = field.at("secure").boolean();
    place.lit = field.at("lit").boolean();
    place.bay = static_cast<int>(field.at("bay").integer(0, mostId));
    place.x = field.at("x").number(-mostMetres, mostMetres);
    place.y = field.at("y").number(-mostMetres, mostMetres);
    return place;
}

void readStay(const Field &field, const std::vector<int> &placeIds, ProblemItem &item) {
    const int current = static_cast<int>(field.at("current").integer(-1, mostId));
    item.keep = static_cast<int>(field.at("keep").integer(0, 3));
    if (current < 0) {
        if (item.keep == 3)
            field.at("keep").refuse("is 3, must stay, but there is no current place");
        return;
    }
    const auto found = std::find(placeIds.begin(), placeIds.end(), current);
    if (found == placeIds.end())
        field.at("current").refuse("is " + std::to_string(current) + ", and no place has that id");
    item.current = static_cast<int>(found - placeIds.begin());
}

ProblemItem item(const Field &field, const Areas &areas, const std::vector<int> &placeIds) {
    ProblemItem item;
    item.name = field.at("name").text();
    item.group = field.at("group").text();
    item.sub = field.at("sub").text();
    item.shape = field.at("shape").text();
    item.surface = field.at("surface").text();
    item.widthCm = field.at("width_cm").positive(mostCm);
    item.depthCm = field.at("depth_cm").positive(mostCm);
    item.heightCm = field.at("height_cm").positive(mostCm);
    item.weightKg = field.at("weight_kg").positive(mostKg);
    item.usesPerWeek = field.at("uses_per_week").number(0, mostPerWeek);
    item.refillsPerWeek = field.at("refills_per_week").number(0, mostPerWeek);
    item.sound = field.at("rattle").number(0, 1);
    item.storage = storage(field.at("storage"));
    item.klass = field.at("klass").oneOf({"F", "C", "N"}).front();
    item.allergen = field.at("allergen").boolean();
    item.glass = field.at("glass").boolean();
    item.hazard = field.at("hazard").boolean();
    item.hotUse = field.at("hot_use").boolean();
    item.spoils = field.at("spoils").boolean();
    const auto area = areas.find(field.at("area").text());
    if (area == areas.end())
        field.at("area").refuse("is \"" + field.at("area").text() + "\", which is not among the areas");
    item.areaX = area->second.first;
    item.areaY = area->second.second;
    readStay(field, placeIds, item);
    return item;
}

ProblemMarker marker(const Field &field) {
    ProblemMarker marker;
    marker.name = field.at("name").text();
    for (const Field &surface : field.at("surfaces").list())
        marker.surfaces.push_back(surface.text());
    marker.survivesFreezer = field.at("survives_freezer").boolean();
    marker.survivesWet = field.at("survives_wet").boolean();
    marker.ownText = field.at("own_text").boolean();
    marker.fixMinutes = field.at("fix_min").number(0, mostMinutes);
    marker.readSeconds = field.at("read_s").number(0, mostMinutes);
    marker.learnMinutes = field.at("learn_min").number(0, mostMinutes);
    marker.cost = field.at("cost").number(0, mostMinutes);
    return marker;
}

std::vector<double> shares(const Field &field, std::size_t count) {
    const std::vector<Field> fields = field.list();
    if (fields.size() != count)
        field.refuse("has " + std::to_string(fields.size()) + " entries, must have " + std::to_string(count) +
                     ", one for each marker");
    std::vector<double> all;
    for (const Field &one : fields)
        all.push_back(one.number(0, 1));
    return all;
}

/// Positions of the meaning markers; they are never codes.
std::set<std::size_t> reserved(const Field &field, const std::vector<int> &markerIds) {
    std::set<std::size_t> positions;
    for (const std::string &meaning : field.names()) {
        const Field one = field.at(meaning);
        if (meaning != "hazard" && meaning != "allergen")
            one.refuse("is an unknown meaning, must be hazard or allergen");
        const int id = static_cast<int>(one.integer(0, mostId));
        const auto found = std::find(markerIds.begin(), markerIds.end(), id);
        if (found == markerIds.end())
            one.refuse("is " + std::to_string(id) + ", and no marker has that id");
        if (!positions.insert(static_cast<std::size_t>(found - markerIds.begin())).second)
            one.refuse("is " + std::to_string(id) + ", which has another meaning already");
    }
    return positions;
}

template<class T> std::vector<T> without(const std::vector<T> &all, const std::set<std::size_t> &positions) {
    std::vector<T> kept;
    for (std::size_t k = 0; k < all.size(); ++k)
        if (positions.count(k) == 0)
            kept.push_back(all[k]);
    return kept;
}

void readMarkers(const Field &whole, Problem &problem) {
    const std::vector<int> markerIds = ids(whole.at("markers"));
    const std::set<std::size_t> taken = reserved(whole.at("reserved"), markerIds);
    std::vector<ProblemMarker> markers;
    for (const Field &field : whole.at("markers").list())
        markers.push_back(marker(field));
    const std::vector<Field> rows = whole.at("marker_confusion").list();
    if (rows.size() != markers.size())
        whole.at("marker_confusion")
            .refuse("has " + std::to_string(rows.size()) + " rows, must have " +
                    std::to_string(markers.size()) + ", one for each marker");
    std::vector<std::vector<double>> confusion;
    for (const Field &row : rows)
        confusion.push_back(without(shares(row, markers.size()), taken));
    problem.markers = without(markers, taken);
    problem.confusion = without(confusion, taken);
    problem.miss = without(shares(whole.at("marker_miss"), markers.size()), taken);
}

std::vector<int> integers(const Field &field, std::size_t count, std::int64_t least, std::int64_t most) {
    const std::vector<Field> fields = field.list();
    if (fields.size() != count)
        field.refuse("has " + std::to_string(fields.size()) + " entries, but the case has " +
                     std::to_string(count) + " items");
    std::vector<int> all;
    for (const Field &one : fields)
        all.push_back(static_cast<int>(one.integer(least, most)));
    return all;
}

} // namespace

int indexOf(const std::vector<int> &ids, int id, const std::string &what) {
    const auto found = std::find(ids.begin(), ids.end(), id);
    if (found == ids.end())
        throw BadInput(what + ": there is no id " + std::to_string(id) + " in the case");
    return static_cast<int>(found - ids.begin());
}

PlanCase readPlanCase(const std::string &file) {
    const nlohmann::json json = readJson(file);
    const Field whole(json, file, "");
    PlanCase planCase;
    if (whole.has("version"))
        (void)whole.at("version").integer(1, 1);
    planCase.problem.client = client(whole.at("client"));
    const Areas known = areas(whole.at("areas"));
    planCase.placeIds = ids(whole.at("places"));
    planCase.itemIds = ids(whole.at("items"));
    if (planCase.placeIds.empty())
        whole.at("places").refuse("is empty");
    if (planCase.itemIds.empty())
        whole.at("items").refuse("is empty");
    for (const Field &field : whole.at("places").list())
        planCase.problem.places.push_back(place(field));
    for (const Field &field : whole.at("items").list())
        planCase.problem.items.push_back(item(field, known, planCase.placeIds));
    readMarkers(whole, planCase.problem);
    return planCase;
}

Placement readPlacement(const std::string &file, const PlanCase &planCase) {
    const nlohmann::json json = readJson(file);
    const Field whole(json, file, "");
    const std::size_t count = planCase.problem.items.size();
    const auto codes = static_cast<std::int64_t>(planCase.problem.markers.size());
    Placement placement;
    placement.code = integers(whole.at("code"), count, 0, codes);
    const std::vector<int> places = integers(whole.at("place"), count, 0, mostId);
    for (std::size_t i = 0; i < count; ++i)
        placement.place.push_back(
            indexOf(planCase.placeIds, places[i], file + ": place[" + std::to_string(i) + "]"));
    return placement;
}

} // namespace check
