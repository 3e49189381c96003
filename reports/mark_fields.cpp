#include "model/fixing.h"
#include "model/kit.h"
#include "model/marks.h"
#include "model/meanings.h"
#include "reports/paper_fields.h"
#include <algorithm>

namespace reports {

using namespace model;

namespace {

/// The keys of all marks that a thing carries: for its meanings, of the plan, and from before.
std::vector<std::string> keysOn(const Case &record, const Plan &plan, const PlanLine &line) {
    std::vector<std::string> keys;
    for (const MeaningMark &mark : plan.meaningMarks)
        if (means(line, mark.meaning))
            keys.push_back(mark.marker);
    keys.push_back(line.marker);
    if (const Thing *thing = thingOf(record, line.thing))
        keys.push_back(thing->markInUse);
    std::erase_if(keys, [&](const std::string &key) { return !markerIn(record, key); });
    return keys;
}

/// Every key in use, those with a meaning first, then in the order of the walk.
std::vector<std::string> keysInUse(const Case &record, const Plan &plan) {
    std::vector<std::string> keys;
    for (const PlanLine *line : linesInWalk(record, plan))
        for (const std::string &key : keysOn(record, plan, *line))
            if (std::find(keys.begin(), keys.end(), key) == keys.end())
                keys.push_back(key);
    std::stable_partition(keys.begin(), keys.end(), [&](const std::string &key) {
        return std::any_of(plan.meaningMarks.begin(), plan.meaningMarks.end(),
                           [&](const MeaningMark &mark) { return mark.marker == key; });
    });
    return keys;
}

std::vector<Fields> meaningsOf(const Plan &plan, const std::string &key) {
    std::vector<Fields> list;
    for (const MeaningMark &mark : plan.meaningMarks)
        if (mark.marker == key) {
            Fields fields;
            addMeaning(fields, mark.meaning);
            list.push_back(std::move(fields));
        }
    return list;
}

std::string thingsWith(const Case &record, const Plan &plan, const std::string &key) {
    std::vector<std::string> names;
    for (const PlanLine *line : linesInWalk(record, plan)) {
        const auto keys = keysOn(record, plan, *line);
        const Thing *thing = thingOf(record, line->thing);
        if (thing && std::find(keys.begin(), keys.end(), key) != keys.end())
            names.push_back(thing->name);
    }
    return listed(names);
}

Fields oneMark(const Case &record, const Plan &plan, const Marker &marker) {
    Fields fields;
    fields.named["mark"] = sentenceCase(marker.name);
    addText(fields, "feel", withoutStop(marker.feel));
    addText(fields, "fix", marker.howToFix);
    fields.named["markCaution"] = marker.caution;
    fields.named["hasMarkCaution"] = !marker.caution.empty();
    fields.named["hasLabels"] = hasWords(marker);
    addText(fields, "things", hasWords(marker) ? std::string() : thingsWith(record, plan, marker.key));
    addList(fields, "meanings", meaningsOf(plan, marker.key));
    return fields;
}

} // namespace

void addMeaning(Fields &fields, const std::string &meaning) {
    fields.named["meaningKey"] = meaningName(meaning);
    fields.named["hazard"] = meaning == "hazard";
    fields.named["allergen"] = meaning == "allergen";
    fields.named["own"] = meaning == "own";
    fields.named["otherMeaning"] = isDietFact(meaning);
}

Fields emptyPackFields(const Case &record) {
    std::vector<std::string> comeOff, goOut, stayOn;
    if (record.plan)
        for (const PlanLine *line : linesInWalk(record, *record.plan)) {
            const Thing *thing = thingOf(record, line->thing);
            const Marker *marker = markOf(record, *line);
            const Fixing fixing = thing && marker ? fixingOf(*thing, *marker) : Fixing{};
            if (fixing.whenEmpty.empty())
                continue;
            const bool stays = thing->shape == Shape::Canister;
            (stays ? stayOn : fixing.toThePot ? comeOff : goOut).push_back(thing->name);
        }
    Fields all;
    addText(all, "comeOff", listed(comeOff));
    addText(all, "goOut", listed(goOut));
    addText(all, "stayOn", listed(stayOn));
    return all;
}

Fields markFields(const Case &record) {
    std::vector<Fields> list;
    bool cautions = false;
    if (record.plan)
        for (const std::string &key : keysInUse(record, *record.plan)) {
            list.push_back(oneMark(record, *record.plan, *markerIn(record, key)));
            cautions = cautions || !markerIn(record, key)->caution.empty();
        }
    Fields all = emptyPackFields(record);
    addList(all, "marks", std::move(list));
    all.named["hasMarkCautions"] = cautions;
    return all;
}

} // namespace reports
