#include "model/fixing.h"
#include "model/kit.h"
#include "model/marks.h"
#include "model/planning.h"
#include "model/shelf_side.h"
#include "reports/paper_fields.h"
#include <algorithm>

namespace reports {

using namespace model;

const Thing *thingOf(const Case &record, const Id &id) {
    const auto found =
        std::find_if(record.things.begin(), record.things.end(), [&](const Thing &t) { return t.id == id; });
    return found == record.things.end() ? nullptr : &*found;
}

std::vector<const PlanLine *> linesOn(const Plan &plan, const Id &place) {
    std::vector<const PlanLine *> lines;
    for (const PlanLine &line : plan.lines)
        if (line.place == place)
            lines.push_back(&line);
    std::stable_sort(lines.begin(), lines.end(),
                     [](const auto *a, const auto *b) { return a->order < b->order; });
    return lines;
}

std::vector<const Place *> placesOf(const Case &record, const Id &unit) {
    std::vector<const Place *> places;
    for (const Place &place : record.places)
        if (place.unit == unit)
            places.push_back(&place);
    std::stable_sort(places.begin(), places.end(),
                     [](const auto *a, const auto *b) { return a->order < b->order; });
    return places;
}

std::vector<const Unit *> walk(const Case &record) {
    std::vector<const Unit *> units;
    for (const Unit &unit : record.units)
        units.push_back(&unit);
    std::stable_sort(units.begin(), units.end(),
                     [](const auto *a, const auto *b) { return a->order < b->order; });
    return units;
}

std::vector<const PlanLine *> linesInWalk(const Case &record, const Plan &plan) {
    std::vector<const PlanLine *> lines;
    for (const Unit *unit : walk(record))
        for (const Place *place : placesOf(record, unit->id))
            for (const PlanLine *line : linesOn(plan, place->id))
                lines.push_back(line);
    return lines;
}

namespace {

/// What has to be said besides the spot and was not said before.
std::string notesOf(const Fixing &fixing, const std::string &said = {}) {
    std::string words = said.find(fixing.instead) == std::string::npos ? fixing.instead : std::string();
    for (const std::string &note : fixing.notes)
        if (note != keepWarnings && said.find(note) == std::string::npos) // the paper says it once
            words += (words.empty() ? "" : " ") + note;
    return words;
}

std::vector<Fields> meaningFields(const Case &record, const Plan &plan, const PlanLine &line,
                                  const Thing &thing, const std::string &said) {
    std::vector<Fields> list;
    for (const std::string &meaning : line.meanings) {
        const auto mark = std::find_if(plan.meaningMarks.begin(), plan.meaningMarks.end(),
                                       [&](const MeaningMark &m) { return m.meaning == meaning; });
        const Marker *marker = mark == plan.meaningMarks.end() ? nullptr : markerIn(record, mark->marker);
        if (!marker)
            continue;
        Fields fields;
        addMeaning(fields, meaning);
        fields.named["meaningMark"] = marker->name;
        const Fixing fixing = fixingOf(thing, *marker, MarkRole::Meaning);
        fields.named["meaningWhere"] = fixing.where;
        addText(fields, "meaningNotes", notesOf(fixing, said));
        list.push_back(std::move(fields));
    }
    return list;
}

void addOrigin(Fields &fields, const Case &record, const Thing &thing, const Id &place) {
    fields.named["stays"] = thing.place && *thing.place == place;
    fields.named["moves"] = thing.place && *thing.place != place;
    fields.named["isNew"] = !thing.place;
    fields.named["from"] = thing.place ? placeWords(record, *thing.place) : std::string();
}

Fields thingFields(const Case &record, const Plan &plan, const PlanLine &line, const Thing &thing) {
    const Marker *marker = markOf(record, line);
    Fields fields;
    fields.named["thing"] = sentenceCase(thing.name);
    addText(fields, "count", thing.count && *thing.count > 1 ? std::to_string(*thing.count) : std::string());
    addText(fields, "mark", marker ? marker->name : std::string());
    const Fixing fixing = marker ? fixingOf(thing, *marker) : Fixing{};
    fields.named["markWhere"] = fixing.where;
    addText(fields, "markNotes", notesOf(fixing));
    addText(fields, "label", marker && hasWords(*marker) ? line.labelText : std::string());
    const Marker *inUse = markerIn(record, thing.markInUse);
    addText(fields, "markInUse", inUse ? inUse->name : withoutStop(thing.markInUse));
    fields.named["medicine"] = thing.medicine;
    fields.named["private"] = (thing.medicine || thing.own) && !record.household.sharingConsent;
    addList(fields, "meanings", meaningFields(record, plan, line, thing, notesOf(fixing)));
    addOrigin(fields, record, thing, line.place);
    return fields;
}

void addHeight(Fields &fields, const Place &place, const Findings &findings) {
    fields.named["low"] = place.height && place.height->value < findings.knuckle.value;
    fields.named["high"] = place.height && place.height->value > findings.shoulder.value;
    fields.named["dim"] = findings.usableVision && place.light == Light::Dim;
}

} // namespace

Fields placeFields(const Case &record, const Findings &findings, const Plan &plan, const Place &place) {
    const auto lines = linesOn(plan, place.id);
    std::vector<Fields> things;
    for (const PlanLine *line : lines)
        if (const Thing *thing = thingOf(record, line->thing))
            things.push_back(thingFields(record, plan, *line, *thing));
    Fields fields;
    fields.named["placeName"] = sentenceCase(place.name);
    fields.named["empty"] = things.empty();
    fields.named["things"] = std::move(things);
    addHeight(fields, place, findings);
    return fields;
}

namespace {

void addUnique(std::vector<std::string> &words, const std::string &word) {
    if (!word.empty() && std::find(words.begin(), words.end(), word) == words.end())
        words.push_back(word);
}

Fields sectionFields(const Case &record, const Findings &findings, const Plan &plan, const Unit &unit) {
    const auto places = placesOf(record, unit.id);
    std::vector<Fields> list;
    std::vector<std::string> names, groups;
    for (const Place *place : places) {
        list.push_back(placeFields(record, findings, plan, *place));
        list.back().named["named"] = places.size() > 1;
        names.push_back(place->name);
        for (const PlanLine *line : linesOn(plan, place->id))
            if (const Thing *thing = thingOf(record, line->thing)) {
                if (!thing->medicine)
                    addUnique(groups, thing->group);
            }
    }
    Fields fields;
    fields.named["name"] = sentenceCase(unit.name);
    addText(fields, "placeNames", places.size() > 1 ? listed(names) : std::string());
    addText(fields, "groups", listed(groups));
    fields.named["places"] = std::move(list);
    return fields;
}

std::vector<Fields> unplacedFields(const Case &record, const Plan &plan) {
    std::vector<Fields> list;
    for (const Thing &thing : record.things)
        if (std::none_of(plan.lines.begin(), plan.lines.end(),
                         [&](const PlanLine &l) { return l.thing == thing.id; })) {
            Fields fields;
            fields.named["thing"] = sentenceCase(thing.name);
            list.push_back(std::move(fields));
        }
    return list;
}

} // namespace

Fields kitchenFields(const Case &record, const Findings &findings) {
    static const Plan none;
    const Plan &plan = record.plan ? *record.plan : none;
    std::vector<Fields> sections;
    for (const Unit *unit : walk(record)) {
        Fields fields = sectionFields(record, findings, plan, *unit);
        fields.named["number"] = std::to_string(sections.size() + 1);
        sections.push_back(std::move(fields));
    }
    Fields all;
    addList(all, "sections", std::move(sections));
    addList(all, "unplaced", unplacedFields(record, plan));
    all.named["medicines"] =
        std::any_of(record.things.begin(), record.things.end(), [](const Thing &t) { return t.medicine; }) ||
        record.safety.answer(SafetyQuestion::MedicinesInKitchen) == Answer::Yes;
    all.named["onlyBehind"] = onlyBehind(record);
    all.named["fromRight"] = model::countsFromRight(record);
    return all;
}

} // namespace reports
