#include "model/work_order.h"
#include "model/kit.h"
#include "model/marks.h"
#include "model/planning.h"
#include "model/rule_words.h"
#include <algorithm>
#include <cmath>

namespace model {
namespace {

constexpr double wipeMinutes = 3;     // a place
constexpr double handleMinutes = 0.5; // a thing
constexpr double hourMinutes = 60;

const Thing *thingOf(const Case &record, const Id &id) {
    const auto found = std::find_if(record.things.begin(), record.things.end(),
                                    [&](const Thing &thing) { return thing.id == id; });
    return found == record.things.end() ? nullptr : &*found;
}

struct Shelf {
    Id place;
    std::vector<const PlanLine *> lines; // from the left
    bool hazards = false;
    double uses = 0;
};

std::vector<Shelf> shelvesOf(const Case &record) {
    std::vector<Shelf> out;
    for (const auto &place : record.places) {
        Shelf shelf{place.id, {}, false, 0};
        for (const auto &line : record.plan->lines) {
            const Thing *thing = thingOf(record, line.thing);
            if (line.place != place.id || thing == nullptr)
                continue;
            shelf.lines.push_back(&line);
            shelf.hazards = shelf.hazards || thing->hazard || thing->medicine;
            shelf.uses += thing->usesPerWeek.value_or(1);
        }
        std::sort(shelf.lines.begin(), shelf.lines.end(),
                  [](const PlanLine *a, const PlanLine *b) { return a->order < b->order; });
        if (!shelf.lines.empty())
            out.push_back(std::move(shelf));
    }
    std::stable_sort(out.begin(), out.end(), [](const Shelf &a, const Shelf &b) {
        return a.hazards != b.hazards ? a.hazards : a.uses > b.uses;
    });
    return out;
}

double markMinutes(const Case &record, const PlanLine &line) {
    const Marker *marker = markerIn(record, line.marker);
    return (marker == nullptr ? 0 : marker->fixMinutes) + static_cast<double>(line.meanings.size());
}

WorkStep stepFor(const Case &record, const Shelf &shelf) {
    WorkStep step;
    step.place = shelf.place;
    double minutes = wipeMinutes;
    std::string names;
    for (const PlanLine *line : shelf.lines) {
        const Thing *thing = thingOf(record, line->thing);
        minutes += handleMinutes + markMinutes(record, *line);
        names += (names.empty() ? "" : ", ") + thing->name;
        step.things.push_back(line->thing);
    }
    step.step =
        sentenceCase(placeWords(record, shelf.place)) +
        ": take out what does not belong here and keep it on the tray; wipe; put in from the left: " + names +
        ". Fix the marks.";
    step.minutes = static_cast<int>(std::ceil(minutes));
    return step;
}

} // namespace

std::vector<WorkStep> workOrder(const Case &record) {
    std::vector<WorkStep> out;
    if (!record.plan || record.plan->lines.empty())
        return out;
    out.push_back({"Clear one worktop and put a tray on it for what waits. Have the marks, a cloth and a bag "
                   "for waste at "
                   "hand. Nothing is thrown away without the client's consent.",
                   {},
                   {},
                   10,
                   ""});
    double sinceHour = out.front().minutes;
    for (const auto &shelf : shelvesOf(record)) {
        WorkStep step = stepFor(record, shelf);
        if (sinceHour + step.minutes > hourMinutes) {
            out.back().pause =
                "End of an hour: put what is on the tray back where it was, so that the kitchen can be "
                "used. A good place to stop.";
            sinceHour = 0;
        }
        sinceHour += step.minutes;
        out.push_back(std::move(step));
    }
    out.push_back({"Go through the kitchen with the client, shelf by shelf: she finds or feels each kind of "
                   "mark and says "
                   "what it means. Change the marks that fail.",
                   {},
                   {},
                   15,
                   "The kitchen is in use."});
    return out;
}

} // namespace model
