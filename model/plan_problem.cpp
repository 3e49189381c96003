#include "model/evaluate.h"
#include "model/packs.h"
#include "model/plan_places.h"
#include "model/plan_safety.h"
#include "model/planning.h"
#include "model/sentence.h"
#include "model/usable_marks.h"
#include <algorithm>
#include <array>
#include <cmath>

namespace model {
namespace {

constexpr double usualUses = 1;         // a week, where nobody said how often
constexpr double usualRefills = 0.1;    // a week
constexpr double columnDepthCm = 30;    // packs alike stand behind one another as deep as a hand finds
constexpr double waterKgPerCm3 = 0.001; // of a pack that was not weighed: as if full of water

char klassOf(Klass klass) {
    switch (klass) {
    case Klass::Food:
        return 'F';
    case Klass::Chemical:
        return 'C';
    case Klass::Neither:
        return 'N';
    }
    return 'N';
}

std::string shapeWord(Shape shape) {
    static constexpr std::array words{"jar",  "bottle", "can",   "box",  "bag", "packet", "tub",  "canister",
                                      "tube", "mug",    "plate", "bowl", "pan", "tool",   "other"};
    return words.at(static_cast<std::size_t>(shape));
}

std::string surfaceWord(Surface surface) {
    static constexpr std::array words{"glass", "metal", "plastic", "card", "foil",
                                      "paper", "cloth", "ceramic", "wood"};
    return words.at(static_cast<std::size_t>(surface));
}

/// Packs that are stood behind one another; plates, pans and tools are counted as the pile or set that they
/// are.
bool standsInColumns(Shape shape) {
    return shape != Shape::Mug && shape != Shape::Plate && shape != Shape::Bowl && shape != Shape::Pan &&
           shape != Shape::Tool && shape != Shape::Other;
}

double runWidth(const Thing &thing) {
    const double width = thing.width->value.value;
    const int packs = packsOf(thing);
    if (!standsInColumns(thing.shape) || packs == 1)
        return width;
    const double behind = std::max(1.0, std::floor(columnDepthCm / thing.depth->value.value));
    const double columns = std::ceil(packs / behind);
    return columns * width;
}

ProblemClient clientOf(const Case &record, const Findings &findings) {
    return {.knuckleCm = findings.knuckle.value.value,
            .shoulderCm = findings.shoulder.value.value,
            .reachLowCm = findings.reachLow.value.value,
            .reachHighCm = findings.reachHigh.value.value,
            .children = findings.children,
            .childReachCm = findings.childReach.value,
            .usableVision = findings.usableVision,
            .avoidsAllergen = !record.diet.avoids.empty(),
            .heavyKg = findings.heavyLimit.value};
}

Result<void> checkSizes(const Thing &thing) {
    for (const auto &[length, name] : {std::pair{&thing.width, "width"}, std::pair{&thing.depth, "depth"},
                                       std::pair{&thing.height, "height"}}) {
        if (!*length)
            return fail(ErrorCode::Missing,
                        Sentence::tr("No {1} for {2}. Enter its shape and size, then plan again.",
                                     {std::string(name), thing.name}));
        if (!((*length)->value.value > 0))
            return fail(ErrorCode::OutOfRange,
                        Sentence::tr("The {1} of {2} is 0. Enter what you measured, or leave it out.",
                                     {std::string(name), thing.name}));
    }
    return {};
}

double weightOf(const Thing &thing) {
    if (thing.weight && thing.weight->value > 0)
        return thing.weight->value;
    const double volume = thing.width->value.value * thing.depth->value.value * thing.height->value.value;
    return std::max(0.01, volume * waterKgPerCm3);
}

ProblemItem itemOf(const Thing &thing, const Case &record) {
    return {.name = thing.name,
            .group = thing.group.empty() ? "other" : thing.group,
            .sub = thing.sub.empty() ? "other" : thing.sub,
            .shape = shapeWord(thing.shape),
            .surface = surfaceWord(thing.surface),
            .widthCm = thing.width->value.value,
            .depthCm = thing.depth->value.value,
            .heightCm = thing.height->value.value,
            .weightKg = weightOf(thing),
            .usesPerWeek = thing.usesPerWeek.value_or(usualUses),
            .refillsPerWeek = thing.refillsPerWeek.value_or(usualRefills),
            .sound = thing.sound,
            .storage = storageOf(thing.storage),
            .klass = klassOf(thing.klass),
            .allergen = hasAvoidedAllergen(thing, record.diet),
            .glass = thing.glass,
            .hazard = thing.hazard || thing.medicine,
            .hotUse = thing.hotUse,
            .spoils = thing.spoilsMeal,
            .keep = thing.medicine ? 3 : thing.keep,
            .touchesFood = touchesFood(thing),
            .forbidden = {},
            .runCm = runWidth(thing)};
}

/// Her decisions stand above what the program would avoid. Of several places for one thing the last counts; a
/// place that is gone counts no more.
void applyOverrules(const Case &record, const Thing &thing, const PlanProblem &out, ProblemItem &item) {
    std::optional<int> pinned;
    std::vector<int> forbidden;
    for (const auto &overrule : record.overrules) {
        const auto found = std::find(out.places.begin(), out.places.end(), overrule.place);
        if (overrule.thing != thing.id || found == out.places.end())
            continue;
        const int place = static_cast<int>(found - out.places.begin());
        if (overrule.forbid)
            forbidden.push_back(place);
        else
            pinned = place;
    }
    if (pinned) {
        item.forbidden.clear();
        item.keep = std::min(item.keep, 2);
        for (int p = 0; p < static_cast<int>(out.places.size()); ++p) {
            if (p != *pinned)
                item.forbidden.push_back(p);
        }
    } else {
        item.forbidden.insert(item.forbidden.end(), forbidden.begin(), forbidden.end());
    }
}

Result<void> addItems(const Case &record, const Walk &walk, PlanProblem &out) {
    for (const auto &thing : record.things) {
        if (const auto sized = checkSizes(thing); !sized)
            return tl::unexpected(sized.error());
        ProblemItem item = itemOf(thing, record);
        const auto area = walk.areas.find(thing.area);
        const Position &used = area != walk.areas.end() ? area->second : walk.middle;
        item.areaX = used.x;
        item.areaY = used.y;
        if (thing.place) {
            const auto found = std::find(out.places.begin(), out.places.end(), *thing.place);
            item.current = found == out.places.end() ? -1 : static_cast<int>(found - out.places.begin());
        }
        if (item.keep < 3) {
            forbidHighAndLow(record, out.problem, item);
            keepOwnApart(record, thing, item);
        }
        applyOverrules(record, thing, out, item);
        out.problem.items.push_back(std::move(item));
        out.things.push_back(thing.id);
    }
    if (out.things.empty())
        return fail(ErrorCode::Missing,
                    Sentence::tr("There is no thing yet. Enter what stands on the first shelf."));
    return {};
}

ProblemMarker markerFor(const Marker &marker, const Case &record) {
    const bool known = std::any_of(record.things.begin(), record.things.end(),
                                   [&](const Thing &thing) { return thing.markInUse == marker.key; });
    const bool reads = marker.medium == MarkMedium::Braille || marker.medium == MarkMedium::LargePrint;
    ProblemMarker out{.name = marker.name,
                      .surfaces = {},
                      .survivesFreezer = marker.survivesFreezer,
                      .survivesWet = marker.survivesWet,
                      .ownText = marker.medium != MarkMedium::Touch,
                      .fixMinutes = marker.fixMinutes,
                      .readSeconds = marker.readSeconds,
                      .learnMinutes = known || reads ? 0 : marker.learnMinutes,
                      .cost = marker.cost};
    for (const auto surface : marker.surfaces)
        out.surfaces.push_back(surfaceWord(surface));
    return out;
}

void addMarkers(const Case &record, const Findings &findings, PlanProblem &out) {
    const auto usable = usableMarks(record, findings);
    out.meanings = reservedMarks(record, usable, findings);
    std::vector<Marker> codes;
    for (const auto &marker : usable) {
        const bool reserved = std::any_of(out.meanings.begin(), out.meanings.end(),
                                          [&](const auto &meaning) { return meaning.marker == marker.key; });
        if (!reserved)
            codes.push_back(marker);
    }
    for (const auto &marker : codes) {
        out.markers.push_back(marker.key);
        out.problem.markers.push_back(markerFor(marker, record));
        out.problem.miss.push_back(missed(marker, findings.touchSensitivity, findings.measuredConfusion));
        std::vector<double> row;
        for (const auto &other : codes)
            row.push_back(confusion(marker, other, findings.touchSensitivity, findings.measuredConfusion));
        out.problem.confusion.push_back(std::move(row));
    }
}

/// Of several marks chosen for one thing the last counts; a mark that this client may not get counts no more.
void applyMarkPins(const Case &record, PlanProblem &out) {
    for (const auto &overrule : record.overrules) {
        const auto thing = std::find(out.things.begin(), out.things.end(), overrule.thing);
        if (!overrule.marker || thing == out.things.end())
            continue;
        const auto marker = std::find(out.markers.begin(), out.markers.end(), *overrule.marker);
        if (overrule.marker->empty() || marker != out.markers.end())
            out.problem.items[thing - out.things.begin()].pinnedCode =
                overrule.marker->empty() ? 0 : static_cast<int>(marker - out.markers.begin()) + 1;
    }
}

} // namespace

bool hasAvoidedAllergen(const Thing &thing, const Diet &diet) {
    return std::any_of(thing.allergens.begin(), thing.allergens.end(), [&](const AllergenFact &fact) {
        const bool avoided =
            std::find(diet.avoids.begin(), diet.avoids.end(), fact.allergen) != diet.avoids.end();
        return avoided && fact.state != AllergenState::ReadNoneListed;
    });
}

Result<PlanProblem> planProblem(const Case &record, const Findings &findings) {
    PlanProblem out;
    const Walk walk = walkOf(record.units);
    out.problem.client = clientOf(record, findings);
    if (record.wishes)
        if (const auto possible = checkWeights(record.wishes->weights); !possible)
            return tl::unexpected(possible.error());
    return addPlaces(record, findings, walk, out)
        .and_then([&] { return addItems(record, walk, out); })
        .map([&] {
            addMarkers(record, findings, out);
            forbidUnreadable(record, findings, out);
            applyMarkPins(record, out);
            addSafetyRules(record, findings, out);
            if (record.wishes)
                out.problem.weights = record.wishes->weights;
            return out;
        });
}

} // namespace model
