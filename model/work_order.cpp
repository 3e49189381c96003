#include "model/work_order.h"
#include "model/keep_by.h"
#include "model/kit.h"
#include "model/planning.h"
#include "model/rule_words.h"
#include "model/sentence.h"
#include "model/shelf_side.h"
#include <algorithm>
#include <cmath>
#include <set>

namespace model {
namespace {

constexpr double wipeMinutes = 3;     // a place
constexpr double handleMinutes = 0.5; // a thing
constexpr int hourMinutes = 60;
constexpr int clearMinutes = 10;
constexpr int checkMinutes = 15;

const Thing *thingOf(const Case &record, const Id &id) {
    const auto found = std::find_if(record.things.begin(), record.things.end(),
                                    [&](const Thing &thing) { return thing.id == id; });
    return found == record.things.end() ? nullptr : &*found;
}

struct Shelf {
    const Place *place = nullptr;
    std::vector<const PlanLine *> lines; // as they are counted
    bool hazards = false;
    double uses = 0;
};

/// One unit's shelves; done in one go.
struct Part {
    std::vector<Shelf> shelves;
    bool hazards = false;
    double uses = 0;
};

template<class Ranked> void mostPressingFirst(std::vector<Ranked> &all) {
    std::stable_sort(all.begin(), all.end(), [](const Ranked &a, const Ranked &b) {
        return a.hazards != b.hazards ? a.hazards : a.uses > b.uses;
    });
}

Shelf shelfOf(const Case &record, const Place &place) {
    Shelf shelf;
    shelf.place = &place;
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
    return shelf;
}

/// True if things stand there now or will stand there.
bool concerned(const Case &record, const Shelf &shelf) {
    return !shelf.lines.empty() ||
           std::any_of(record.things.begin(), record.things.end(),
                       [&](const Thing &thing) { return thing.place == shelf.place->id; });
}

std::vector<Part> partsOf(const Case &record) {
    std::vector<Part> out;
    std::vector<Id> units;
    for (const auto &place : record.places) {
        Shelf shelf = shelfOf(record, place);
        if (!concerned(record, shelf))
            continue;
        const auto at =
            static_cast<std::size_t>(std::find(units.begin(), units.end(), place.unit) - units.begin());
        if (at == units.size()) {
            units.push_back(place.unit);
            out.emplace_back();
        }
        Part &part = out[at];
        part.hazards = part.hazards || shelf.hazards;
        part.uses += shelf.uses;
        part.shelves.push_back(std::move(shelf));
    }
    mostPressingFirst(out);
    for (Part &part : out)
        mostPressingFirst(part.shelves);
    return out;
}

double markMinutes(const Case &record, const PlanLine &line) {
    const Marker *marker = markerIn(record, line.marker);
    return (marker == nullptr ? 0 : marker->fixMinutes) + static_cast<double>(line.meanings.size());
}

std::string namesOf(const std::vector<const Thing *> &things) {
    std::string names;
    for (const Thing *thing : things)
        names += (names.empty() ? "" : ", ") + thing->name;
    return names;
}

/// What is not the client's to lift or to set down, and whose it is.
std::string helpAt(const Case &record, const Findings &findings, const Shelf &shelf) {
    std::vector<const Thing *> heavy, harmful;
    for (const PlanLine *line : shelf.lines) {
        const Thing *thing = thingOf(record, line->thing);
        if (thing->weight && *thing->weight >= findings.heavyLimit)
            heavy.push_back(thing);
        if (thing->hazard || thing->medicine)
            harmful.push_back(thing);
    }
    std::string words;
    if (needsHelpUp(record) && shelf.place->height && shelf.place->height->value > findings.shoulder.value)
        words += Sentence::tr("This shelf is above the shoulder: a helper or the therapist reaches up. ");
    if (!heavy.empty())
        words += Sentence::tr("Heavy, lifted by a helper or the therapist: {1}. ", {namesOf(heavy)});
    if (!harmful.empty())
        words += Sentence::tr("Set down by the therapist: {1}. ", {namesOf(harmful)});
    if (!words.empty())
        words.pop_back();
    return words;
}

WorkStep stepFor(const Case &record, const Findings &findings, const Shelf &shelf) {
    WorkStep step;
    step.place = shelf.place->id;
    double minutes = wipeMinutes;
    std::vector<const Thing *> things;
    for (const PlanLine *line : shelf.lines) {
        minutes += handleMinutes + markMinutes(record, *line);
        things.push_back(thingOf(record, line->thing));
        step.things.push_back(line->thing);
    }
    const std::string names = namesOf(things);
    step.step = Sentence::tr(
        "{1}: take out what does not belong here and keep it on the tray; wipe; {2}",
        {sentenceCase(placeWords(record, shelf.place->id)),
         (names.empty()
              ? Sentence::tr("leave it free.")
              : Sentence::tr(
                    "put in from the {1}{2}. Fix the marks.",
                    {(countsFromRight(record) ? Sentence::tr("right: ") : Sentence::tr("left: ")), names}))});
    step.minutes = static_cast<int>(std::ceil(minutes));
    step.help = helpAt(record, findings, shelf);
    return step;
}

WorkStep clearing() {
    WorkStep step;
    step.step =
        Sentence::tr("Clear one worktop and put a tray on it for what waits. Have the marks, a cloth and a "
                     "bag for waste at hand. Nothing is moved or thrown away without the client's consent.");
    step.minutes = clearMinutes;
    return step;
}

WorkStep sortingOut(const std::vector<DatedThing> &old) {
    constexpr double minutesEach = 0.5;
    WorkStep step;
    step.step = Sentence::tr(
        "Sort out by date. Read out each, through the interpreter where there is one, and ask about each "
        "before it goes. Use by is about safety, best before about quality. Never taste.");
    for (const DatedThing &one : old)
        step.first.push_back(one.sentence);
    step.minutes = static_cast<int>(std::ceil(2 + minutesEach * static_cast<double>(old.size())));
    step.who = Doer::Therapist;
    return step;
}

WorkStep goingThrough() {
    WorkStep step;
    step.step = Sentence::tr("Go through the kitchen with the client, shelf by shelf: each kind of mark is "
                             "found or felt and its meaning said. Change the marks that fail.");
    step.minutes = checkMinutes;
    step.pause = Sentence::tr("The kitchen is in use.");
    return step;
}

/// Adds the steps and, before an hour is over, a pause; counts what waits on the tray.
class Order {
public:
    Order(const Case &record, std::vector<WorkStep> begun) : m_record(record), m_steps(std::move(begun)) {
        for (const WorkStep &step : m_steps)
            m_sinceHour += step.minutes;
    }

    void add(std::vector<WorkStep> unit) {
        int whole = 0;
        for (const WorkStep &step : unit)
            whole += step.minutes;
        if (m_sinceHour + whole > hourMinutes)
            rest();
        for (WorkStep &step : unit) {
            if (m_sinceHour > 0 && m_sinceHour + step.minutes > hourMinutes)
                rest();
            m_sinceHour += step.minutes;
            m_done.insert(*step.place);
            m_steps.push_back(std::move(step));
        }
    }

    [[nodiscard]] std::vector<WorkStep> steps() && { return std::move(m_steps); }

private:
    void rest() {
        const std::string tray = namesOf(onTheTray());
        m_steps.back().pause = Sentence::tr(
            "A good place to stop: what is done is whole, and the kitchen can be used. {1}",
            {(tray.empty() ? Sentence::tr("Nothing waits on the tray.")
                           : Sentence::tr("On the tray, to be told to the client: {1}.", {tray}))});
        m_sinceHour = 0;
    }

    /// Taken out of places that are done, to places that are not.
    [[nodiscard]] std::vector<const Thing *> onTheTray() const {
        std::vector<const Thing *> out;
        for (const PlanLine &line : m_record.plan->lines) {
            const Thing *thing = thingOf(m_record, line.thing);
            if (thing && thing->place && m_done.contains(*thing->place) && !m_done.contains(line.place))
                out.push_back(thing);
        }
        return out;
    }

    const Case &m_record;
    std::vector<WorkStep> m_steps;
    std::set<Id> m_done;
    int m_sinceHour = 0;
};

} // namespace

std::vector<WorkStep> workOrder(const Case &record, const Findings &findings, Date on) {
    if (!record.plan || record.plan->lines.empty())
        return {};
    std::vector<WorkStep> begun{clearing()};
    if (const auto old = toSortOut(record, on); !old.empty())
        begun.push_back(sortingOut(old));
    Order order(record, std::move(begun));
    for (const Part &part : partsOf(record)) {
        std::vector<WorkStep> steps;
        for (const Shelf &shelf : part.shelves)
            steps.push_back(stepFor(record, findings, shelf));
        order.add(std::move(steps));
    }
    std::vector<WorkStep> out = std::move(order).steps();
    out.push_back(goingThrough());
    return out;
}

} // namespace model
