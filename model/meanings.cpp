#include "model/meanings.h"
#include "model/kit.h"
#include "model/plan_safety.h"
#include "model/planning.h"
#include "model/sentence.h"
#include "model/typed.h"
#include <algorithm>
#include <map>
#include <set>

namespace model {
namespace {

constexpr const char *dietPrefix = "diet:";

std::string joined(const std::vector<std::string> &words) {
    std::string all;
    for (const std::string &word : words)
        all += (all.empty() ? "" : ", ") + word;
    return all;
}

std::vector<std::string> markedFacts(const Diet &diet) {
    std::vector<std::string> facts = diet.facts;
    facts.resize(std::min(facts.size(), mostDietFacts));
    return facts;
}

bool hasOwn(const Case &record) {
    return std::ranges::any_of(record.things, &Thing::own) || std::ranges::any_of(record.places, &Place::own);
}

std::string namesOf(const std::vector<const Thing *> &things) {
    std::vector<std::string> names;
    for (const Thing *thing : things)
        names.push_back(thing->name);
    return joined(names);
}

/// What tells it instead: words on a label where the plan has one, else place and container.
std::string noMarkLeft(const Case &record, const std::string &meaning) {
    std::map<std::string, const Thing *> carrying;
    for (const Thing &thing : record.things)
        if (std::ranges::count(meaningsOf(thing, record.diet), meaning) > 0)
            carrying[thing.id.text] = &thing;
    std::vector<const Thing *> labelled, bare;
    for (const PlanLine &line : record.plan ? record.plan->lines : std::vector<PlanLine>()) {
        const auto thing = carrying.find(line.thing.text);
        if (thing == carrying.end())
            continue;
        const Marker *marker = markerIn(record, line.marker);
        (marker && marker->medium != MarkMedium::Touch ? labelled : bare).push_back(thing->second);
    }
    std::string told = Sentence::tr("No mark is left that means {1}.", {meaningName(meaning)});
    if (!labelled.empty())
        told += Sentence::tr(" A label in words tells it on: {1}.", {namesOf(labelled)});
    if (!bare.empty() || labelled.empty())
        told += Sentence::tr(" Until one more mark is told apart, a locked or agreed place and the shape of "
                             "the container must tell it{1}",
                             {(bare.empty() ? "." : Sentence::tr(" on: {1}.", {namesOf(bare)}))});
    return told;
}

void tellLimits(const Case &record, std::vector<std::string> &told) {
    const auto &facts = record.diet.facts;
    if (facts.size() > mostDietFacts)
        told.push_back(Sentence::tr("At most three diet facts get a mark of their own (judgement). No mark: "
                                    "{1}. Give them a shelf of their own, or change the order.",
                                    {joined({facts.begin() + mostDietFacts, facts.end()})}));
    const auto most = mostKindsOfMarks(record);
    const std::size_t wanted = meaningsWanted(record).size();
    if (most && wanted > static_cast<std::size_t>(std::max(0, *most)))
        told.push_back(Sentence::tr("{1} marks with a meaning are more than the {2} kinds that this client "
                                    "is to learn. Mark fewer facts.",
                                    {std::to_string(wanted), std::to_string(*most)}));
}

} // namespace

std::vector<std::string> meaningsOf(const Thing &thing, const Diet &diet) {
    std::vector<std::string> out;
    if (thing.hazard || thing.medicine)
        out.emplace_back("hazard");
    if (hasAvoidedAllergen(thing, diet))
        out.emplace_back("allergen");
    for (const std::string &fact : markedFacts(diet))
        if (std::ranges::count(thing.dietFacts, fact) > 0)
            out.push_back(dietPrefix + fact);
    if (thing.own)
        out.emplace_back("own");
    return out;
}

std::vector<std::string> meaningsWanted(const Case &record) {
    std::vector<std::string> out{"hazard"};
    if (!record.diet.avoids.empty())
        out.emplace_back("allergen");
    for (const std::string &fact : markedFacts(record.diet))
        out.push_back(dietPrefix + fact);
    if (hasOwn(record))
        out.emplace_back("own");
    return out;
}

bool isDietFact(const std::string &meaning) {
    return meaning.starts_with(dietPrefix);
}

std::string warningWord(const Thing &thing, const Diet &diet, const std::vector<MeaningMark> &reserved) {
    if (thing.medicine)
        return {};
    for (const std::string &meaning : meaningsOf(thing, diet)) {
        if (std::ranges::count(reserved, meaning, &MeaningMark::meaning) > 0)
            continue;
        if (meaning == "hazard")
            return "danger";
        if (meaning == "allergen")
            return "avoid";
    }
    return {};
}

std::string meaningName(const std::string &meaning) {
    if (meaning == "own")
        return Sentence::tr("the client's own");
    if (meaning == "hazard")
        return Sentence::tr("hazard");
    if (meaning == "allergen")
        return Sentence::tr("allergen");
    return isDietFact(meaning) ? meaning.substr(std::string(dietPrefix).size()) : meaning;
}

std::vector<std::string> meaningsTold(const Case &record, const std::vector<MeaningMark> &reserved) {
    std::vector<std::string> told;
    tellLimits(record, told);
    std::set<std::string> carried;
    for (const Thing &thing : record.things)
        for (const std::string &meaning : meaningsOf(thing, record.diet))
            carried.insert(meaning);
    for (const std::string &meaning : meaningsWanted(record)) {
        const bool marked = std::ranges::count(reserved, meaning, &MeaningMark::meaning) > 0;
        if (carried.contains(meaning) && !marked)
            told.push_back(noMarkLeft(record, meaning));
    }
    return told;
}

Result<std::vector<std::string>> readDietFacts(const std::string &typed) {
    constexpr std::size_t longest = 30;
    std::vector<std::string> facts;
    for (const std::string &fact : typed::list(typed)) {
        if (fact.size() > longest)
            return fail(ErrorCode::OutOfRange,
                        Sentence::tr("A fact takes at most 30 letters, for example low salt. Kept."));
        if (std::ranges::count(facts, fact) == 0)
            facts.push_back(fact);
    }
    return facts;
}

Result<std::vector<std::string>> readThingFacts(const std::string &typed, const Diet &diet) {
    return readDietFacts(typed).and_then([&](const std::vector<std::string> &facts)
                                             -> Result<std::vector<std::string>> {
        for (const std::string &fact : facts)
            if (std::ranges::count(diet.facts, fact) == 0)
                return fail(
                    ErrorCode::NotUnderstood,
                    diet.facts.empty()
                        ? Sentence::tr(
                              "No diet fact is to be marked yet: write it on the client page first. Kept.")
                        : Sentence::tr(
                              "Not a fact that is to be marked: {1}. The client page names: {2}. Kept.",
                              {fact, joined(diet.facts)}));
        return facts;
    });
}

} // namespace model
