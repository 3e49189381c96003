#include "model/demo.h"
#include "model/appliance_line.h"
#include "model/contents.h"
#include "model/demo_parts.h"
#include <algorithm>
#include <cassert>
#include <cctype>

namespace model::demo {
namespace {

Id idOf(const Case &record, const std::string &part, std::size_t number) {
    const std::string digits = std::to_string(number);
    return {record.client.id.text + "-" + part + "-" + (number < 10 ? "0" : "") + digits};
}

std::optional<Length> measured(double cm) {
    if (cm <= 0)
        return std::nullopt;
    std::string typed = std::to_string(cm);
    typed.erase(typed.find_last_not_of('0') + 1);
    if (typed.back() == '.')
        typed.pop_back();
    return Length{{cm}, typed + " cm", Basis::Measured};
}

void addThings(Case &record, const Place &place, const std::string &contents) {
    const auto items = parseContents(contents);
    assert(items.has_value() || contents.empty());
    if (!items)
        return;
    for (const auto &item : *items) {
        assert(item.doubt.empty());
        Thing thing = item.thing;
        thing.id = idOf(record, "thing", record.things.size() + 1);
        thing.place = place.id;
        record.things.push_back(std::move(thing));
    }
}

} // namespace

Case startCase(const std::string &shortName, const std::string &name, Date born) {
    Case record;
    record.client.id = {"demo-" + shortName};
    record.client.name = name;
    record.client.code = "DEMO-";
    record.client.code += static_cast<char>(std::toupper(static_cast<unsigned char>(shortName.front())));
    record.client.born = born;
    record.client.invented = true;
    record.safety.id = {"demo-" + shortName + "-safety"};
    record.household.id = {"demo-" + shortName + "-household"};
    record.diet.id = {"demo-" + shortName + "-diet"};
    return record;
}

void addKitchen(Case &record, const std::vector<UnitRow> &units, const std::vector<PlaceRow> &places) {
    for (const auto &row : units)
        record.units.push_back({.id = idOf(record, "unit", record.units.size() + 1),
                                .order = static_cast<int>(record.units.size()),
                                .name = row.name,
                                .kind = row.kind,
                                .area = row.area,
                                .width = measured(row.width),
                                .colour = row.colour,
                                .lockable = row.lockable});
    for (const auto &row : places) {
        const Id unit = record.units.at(row.unit).id;
        const auto before = std::count_if(record.places.begin(), record.places.end(),
                                          [&](const Place &place) { return place.unit == unit; });
        record.places.push_back({.id = idOf(record, "place", record.places.size() + 1),
                                 .unit = unit,
                                 .order = static_cast<int>(before),
                                 .name = row.name,
                                 .drawer = row.form == Form::Drawer,
                                 .counter = row.form == Form::Counter,
                                 .width = measured(row.width),
                                 .depth = measured(row.depth),
                                 .clear = measured(row.clear),
                                 .height = measured(row.height),
                                 .storage = row.storage,
                                 .light = row.light});
        const Place place = record.places.back();
        addThings(record, place, row.contents);
    }
}

void addMeasurements(Case &record, const std::vector<MeasurementRow> &rows, Date date) {
    for (const auto &row : rows)
        record.measurements.push_back({.id = idOf(record, "measurement", record.measurements.size() + 1),
                                       .test = row.test,
                                       .side = row.side,
                                       .typed = row.typed,
                                       .distanceTyped = row.distance,
                                       .chart = row.chart,
                                       .method = row.method,
                                       .finger = row.finger,
                                       .withGlasses = infoOf(row.test).domain == Domain::Sight,
                                       .date = date,
                                       .notTestedBecause = row.notTestedBecause});
}

void addAppliance(Case &record, const std::string &line, double celsius) {
    auto appliance = parseAppliance(line);
    assert(appliance.has_value());
    appliance->id = idOf(record, "appliance", record.appliances.size() + 1);
    if (celsius > 0)
        appliance->heat = Celsius{celsius};
    record.appliances.push_back(std::move(*appliance));
}

void addAnswers(Case &record, const std::vector<AnswerRow> &rows, Date date) {
    for (const auto &row : rows)
        record.safety.answers[row.question] = {row.answer, row.note, date};
}

void addGoal(Case &record, const std::string &sentence, const std::array<std::string, 5> &levels, Date agreed,
             Date review) {
    record.goals.push_back({.id = idOf(record, "goal", record.goals.size() + 1),
                            .sentence = sentence,
                            .levels = levels,
                            .importance = 2,
                            .difficulty = 2,
                            .agreed = agreed,
                            .review = review});
}

void addRatings(Case &record, const std::vector<RatingRow> &rows) {
    for (const auto &row : rows)
        record.ratings.push_back({.id = idOf(record, "rating", record.ratings.size() + 1),
                                  .goal = record.goals.at(row.goal).id,
                                  .visit = record.visits.at(row.visit).id,
                                  .level = row.level,
                                  .evidence = row.evidence,
                                  .date = record.visits.at(row.visit).date});
}

void addVisit(Case &record, Date date, const std::string &note, const std::string &carriedOver) {
    const std::size_t number = record.visits.size() + 1;
    record.visits.push_back({.id = idOf(record, "visit", number),
                             .date = date,
                             .number = static_cast<int>(number),
                             .whoWasThere = "Client and therapist",
                             .note = note,
                             .carriedOver = carriedOver,
                             .closed = true});
}

Thing &thingNamed(Case &record, const std::string &name) {
    const auto found = std::find_if(record.things.begin(), record.things.end(),
                                    [&](const Thing &thing) { return thing.name == name; });
    assert(found != record.things.end());
    return *found;
}

std::vector<Case> all() {
    return {nora(), idris(), tilda()};
}

std::optional<Case> byName(const std::string &name) {
    std::string low = name;
    for (char &c : low)
        c = static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
    if (low == "nora")
        return nora();
    if (low == "idris")
        return idris();
    if (low == "tilda")
        return tilda();
    return std::nullopt;
}

} // namespace model::demo
