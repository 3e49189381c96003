#include "model/upkeep.h"
#include "model/keep_by.h"
#include "model/keeping_times.h"
#include "model/planning.h"
#include "model/rule_words.h"
#include "model/sentence.h"
#include "model/upkeep_rounds.h"
#include <algorithm>
#include <map>

namespace model {
namespace {

constexpr const char *common = Sentence::later("common practice");

bool any(const Case &record, bool (*holds)(const Thing &)) {
    return std::any_of(record.things.begin(), record.things.end(), holds);
}

std::string behindOrRight(const Case &record) {
    const bool bothSides = !record.safety.cautious(SafetyQuestion::OneSideNotAttended);
    return bothSides
               ? Sentence::tr(
                     "Put new stock behind the old, or to its right; take from the front, or from the left.")
               : Sentence::tr("Put new stock behind the old; take from the front.");
}

/// Whoever puts a thing away knows where it is.
std::string whoPutsAway(const Case &record) {
    using enum SafetyQuestion;
    const auto yes = [&](SafetyQuestion question) { return record.safety.answer(question) == Answer::Yes; };
    return yes(MemoryDifficulty) || yes(WeakOrShakyHands) || yes(Falls)
               ? Sentence::tr("Say where each thing goes; a helper lifts it there.")
               : Sentence::tr("Put the shopping away yourself: whoever puts a thing away knows where it is.");
}

void addShopping(const Case &record, std::vector<UpkeepTask> &out) {
    const std::string when = Sentence::tr("when shopping is put away");
    out.push_back({whoPutsAway(record), {}, when, Sentence::tr(common)});
    out.push_back({behindOrRight(record), {}, when, Sentence::tr(common)});
    out.push_back({Sentence::tr("Read out the date on each pack, and if it says use by or best before."),
                   {},
                   when,
                   Sentence::tr(common),
                   Doer::Helper});
    out.push_back(
        {Sentence::tr("If nobody can read it, put the day of purchase on the mark, but only where the date "
                      "is one of quality. A date of safety that nobody read is not known: ask a reader."),
         {},
         when,
         Sentence::tr(common)});
    out.push_back({Sentence::tr("Move the mark to the new pack, with its date: month and year are enough."),
                   {},
                   when,
                   Sentence::tr(common)});
    if (!record.diet.avoids.empty())
        out.push_back(
            {Sentence::tr(
                 "A new make or a new recipe is not checked: have the pack read before it is put away."),
             {},
             Sentence::tr("when a new make comes"),
             Sentence::tr(common),
             Doer::Helper});
}

void addPacks(const Case &record, std::vector<UpkeepTask> &out) {
    out.push_back({Sentence::tr("Mark the day of opening the same day."),
                   {},
                   Sentence::tr("when a pack is opened"),
                   Sentence::tr(common)});
    out.push_back({Sentence::tr("Empty and wash the container before refilling; never top up. Carry over "
                                "date, allergen mark and cooking text from the new pack."),
                   {},
                   Sentence::tr("when a container is refilled"),
                   Sentence::tr(common)});
    if (any(record, [](const Thing &thing) { return thing.shape == Shape::Can; }))
        out.push_back(
            {Sentence::tr("Feel each tin round both rims and down the seam: throw it away unopened if it "
                          "bulges, leaks, has a deep dent or a dent on a seam. Never taste to find out."),
             {},
             Sentence::tr("when a tin is opened"),
             Sentence::tr("U.S. Department of Agriculture; common practice")});
    if (any(record, [](const Thing &thing) { return thing.medicine; }))
        out.push_back({Sentence::tr("Doses, dates and labels of medicines: ask the pharmacist."),
                       {},
                       Sentence::tr("whenever medicines change"),
                       Sentence::tr(common)});
}

void addSpoilage(const Case &record, std::vector<UpkeepTask> &out) {
    const std::string when = Sentence::tr("when food may be spoilt");
    const bool noSmell = record.safety.cautious(SafetyQuestion::Smells);
    out.push_back({Sentence::tr("Never taste it. Smell and look do not prove that it is safe{1}. When in "
                                "doubt, throw it out, closed in a bag; wash your hands and the place.",
                                {(noSmell ? Sentence::tr(", and smell is not to be relied on here") : "")}),
                   {},
                   when,
                   Sentence::tr("U.S. Department of Agriculture")});
    out.push_back(
        {Sentence::tr(
             "Food of the fridge that stood out for two hours goes; above 32 degrees Celsius, one hour."),
         {},
         when,
         Sentence::tr("U.S. Department of Agriculture")});
    const bool states = record.upkeep && record.upkeep->region == DateRegion::UnitedStates;
    out.push_back(
        {Sentence::tr("Put the day on leftovers; eat them within {1}",
                      {(states ? Sentence::tr("3 to 4 days.") : Sentence::tr("two days."))}),
         {},
         Sentence::tr("when food is left over"),
         states ? Sentence::tr("U.S. Department of Agriculture") : Sentence::tr("UK food-safety guidance")});
    out.push_back({Sentence::tr("Keep the doors shut. A closed fridge holds 4 hours, a full freezer 48, a "
                                "half full one 24. After that ask a helper, and throw out what is in doubt."),
                   {},
                   Sentence::tr("when the power was off"),
                   Sentence::tr("U.S. Department of Agriculture")});
}

std::string dueWords(const Thing &thing, const KeepBy &by) {
    const std::string name = sentenceCase(thing.name);
    if (by.rule == KeepRule::PrintedSafety)
        return Sentence::tr("{1}: use by this day, printed on the pack; after it do not eat it, even if it "
                            "looks and smells fine.",
                            {name});
    if (by.rule == KeepRule::PrintedQuality)
        return Sentence::tr("{1}: best before this day, printed on the pack; after it the quality falls.",
                            {name});
    return Sentence::tr("{1}: {2}; at the latest by this day.", {name, by.words});
}

/// Those that somebody read, opened or bought; a day of recording is no date of the pack.
void addDates(const Case &record, std::vector<UpkeepTask> &out) {
    const DateRegion region = record.upkeep ? record.upkeep->region : DateRegion::NotAsked;
    std::vector<UpkeepTask> dated;
    for (const auto &thing : record.things) {
        const auto by = keepBy(thing, region);
        if (!by || !by->last || by->rule == KeepRule::Recorded)
            continue;
        const bool printed = by->last == thing.bestBefore;
        dated.push_back({dueWords(thing, *by), by->last, Sentence::tr("once"),
                         printed ? Sentence::tr("printed on the pack") : keepingTimesCredit});
    }
    std::stable_sort(dated.begin(), dated.end(),
                     [](const UpkeepTask &a, const UpkeepTask &b) { return *a.due < *b.due; });
    out.insert(out.end(), dated.begin(), dated.end());
}

/// "in the fridge 5 to 7 days" of an opened pack: where it stands, or in the fridge if the data give a time
/// only there; empty if they say nothing.
std::string openedWords(const KeepingTime &time, Storage storage) {
    if (storage == Storage::Dry && time.pantryOpened.known())
        return Sentence::tr("in the cupboard {1}", {spanInWords(time.pantryOpened)});
    if (storage != Storage::Freezer && time.fridgeOpened.known())
        return Sentence::tr("in the fridge {1}", {spanInWords(time.fridgeOpened)});
    return "";
}

/// Names of things by how long their opened packs keep, in the order of the things.
std::vector<std::pair<std::string, std::string>> openedGroups(const Case &record) {
    std::vector<std::pair<std::string, std::string>> out;
    for (const auto &thing : record.things) {
        const KeepingTime *time = thing.keepingRow ? keepingTime(*thing.keepingRow) : nullptr;
        const std::string words = time == nullptr ? "" : openedWords(*time, thing.storage);
        if (words.empty())
            continue;
        const auto found =
            std::find_if(out.begin(), out.end(), [&](const auto &group) { return group.first == words; });
        if (found == out.end())
            out.emplace_back(words, thing.name);
        else if (found->second.find(thing.name) == std::string::npos)
            found->second += ", " + thing.name;
    }
    return out;
}

void addOpenedTimes(const Case &record, std::vector<UpkeepTask> &out) {
    for (const auto &[words, names] : openedGroups(record))
        out.push_back({Sentence::tr("Once opened, keeps {1}: {2}. General guidance: the printed date and "
                                    "local guidance always win, and where they differ the stricter.",
                                    {words, names}),
                       {},
                       Sentence::tr("when a pack is opened"),
                       keepingTimesCredit});
}

/// "Flour, caster sugar" of things that a rule picks from the plan.
template<class Picks> std::string namesOf(const Case &record, Picks picks) {
    std::string names;
    for (const PlanLine &line : record.plan ? record.plan->lines : std::vector<PlanLine>{}) {
        const auto thing = std::ranges::find(record.things, line.thing, &Thing::id);
        const auto place = std::ranges::find(record.places, line.place, &Place::id);
        if (thing != record.things.end() && place != record.places.end() && picks(*thing, *place))
            names += (names.empty() ? "" : ", ") + thing->name;
    }
    return names;
}

void addLifting(const Case &record, const Findings &findings, std::vector<UpkeepTask> &out) {
    const std::string heavy = namesOf(record, [&](const Thing &thing, const Place &) {
        return thing.weight && *thing.weight >= findings.heavyLimit;
    });
    const std::string high = namesOf(record, [&](const Thing &, const Place &place) {
        return needsHelpUp(record) && place.height && place.height->value > findings.shoulder.value;
    });
    if (!heavy.empty())
        out.push_back({Sentence::tr("Lift for the client what is heavy: {1}.", {heavy}),
                       {},
                       Sentence::tr("when it is asked for"),
                       Sentence::tr(common),
                       Doer::Helper});
    if (!high.empty())
        out.push_back({Sentence::tr("Reach down what stands above the shoulder: {1}.", {high}),
                       {},
                       Sentence::tr("when it is asked for"),
                       Sentence::tr(common),
                       Doer::Helper});
}

} // namespace

std::string doerInWords(Doer who) {
    switch (who) {
    case Doer::Client:
        return Sentence::tr("the client");
    case Doer::Helper:
        return Sentence::tr("a helper who sees");
    case Doer::Therapist:
        return Sentence::tr("the therapist");
    case Doer::Together:
        return Sentence::tr("client and therapist together");
    }
    return {};
}

bool needsHelpUp(const Case &record) {
    using enum SafetyQuestion;
    return record.safety.cautious(Falls) || record.safety.cautious(DizzyLookingUpOrBending) ||
           record.safety.cautious(WeakOrShakyHands);
}

std::vector<UpkeepTask> upkeepTasks(const Case &record, Date on) {
    std::vector<UpkeepTask> out;
    addRounds(record, on, out);
    addDates(record, out);
    addShopping(record, out);
    addPacks(record, out);
    addOpenedTimes(record, out);
    addSpoilage(record, out);
    return out;
}

std::vector<UpkeepTask> helperTasks(const Case &record, const Findings &findings, Date on) {
    std::vector<UpkeepTask> out = upkeepTasks(record, on);
    std::erase_if(out, [](const UpkeepTask &task) { return task.who != Doer::Helper; });
    addLifting(record, findings, out);
    return out;
}

} // namespace model
