#include "model/upkeep.h"
#include "model/keeping_times.h"
#include "model/planning.h"
#include "model/rule_words.h"
#include <algorithm>
#include <map>

namespace model {
namespace {

const char *const common = "common practice";

/// The plan's date, or the last visit's, or today: from then the rounds are counted.
Date startOf(const Case &record, Date on) {
    if (record.plan && record.plan->made)
        return *record.plan->made;
    std::optional<Date> last;
    for (const auto &visit : record.visits) {
        if (visit.date && (!last || *visit.date > *last))
            last = visit.date;
    }
    return last.value_or(on);
}

/// First round after `on`, every `days` from `start`.
Date nextWeekly(Date start, Date on) {
    Date due = addDays(start, 7);
    while (due <= on)
        due = addDays(due, 7);
    return due;
}

/// Counted from the start each time, so that 31 January comes back to the 31st.
Date nextQuarter(Date start, Date on) {
    int months = 3;
    while (addMonths(start, months) <= on)
        months += 3;
    return addMonths(start, months);
}

bool hasStorage(const Case &record, Storage storage) {
    return std::any_of(record.places.begin(), record.places.end(),
                       [&](const Place &place) { return place.storage == storage; });
}

bool any(const Case &record, bool (*holds)(const Thing &)) {
    return std::any_of(record.things.begin(), record.things.end(), holds);
}

void addRounds(const Case &record, Date on, std::vector<UpkeepTask> &out) {
    const Date start = startOf(record, on);
    if (hasStorage(record, Storage::Fridge))
        out.push_back(
            {"Check the fridge: dates, spills, raw meat covered on the lowest shelf, 0 to 5 degrees Celsius.",
             nextWeekly(start, on), "every week", std::string("Food Standards Scotland; ") + common});
    const Date quarter = nextQuarter(start, on);
    out.push_back({"Clean, sort and check the cupboards: dates, marks, each thing in its place.", quarter,
                   "every three months", common});
    if (hasStorage(record, Storage::Freezer))
        out.push_back({"List the freezer; put the oldest in front. Keep it at -18 degrees Celsius or below.",
                       quarter, "every three months", std::string("Food Standards Scotland; ") + common});
    out.push_back({"Audit of the plan: all hazards, allergens and controls, and a sample of the rest.",
                   quarter, "every three months", common});
}

std::string behindOrRight(const Case &record) {
    const bool bothSides = !record.safety.cautious(SafetyQuestion::OneSideNotAttended);
    return bothSides ? "Put new stock behind the old, or to its right; take from the front, or from the left."
                     : "Put new stock behind the old; take from the front.";
}

void addHabits(const Case &record, std::vector<UpkeepTask> &out) {
    out.push_back({behindOrRight(record), {}, "when shopping is put away", common});
    out.push_back(
        {"Move the mark to the new pack, with its date. If nobody read the date of a pack, its date is not "
         "known: ask somebody who reads print.",
         {},
         "when shopping is put away",
         common});
    out.push_back({"Mark the day of opening the same day.", {}, "when a pack is opened", common});
    out.push_back(
        {"Empty and wash the container before refilling; never top up. Carry over date, allergen mark and "
         "cooking text from the new pack.",
         {},
         "when a container is refilled",
         common});
    if (any(record, [](const Thing &thing) { return thing.shape == Shape::Can; }))
        out.push_back({"Feel each tin: throw it away unopened if it bulges, leaks, has a deep dent or a dent "
                       "on a seam. "
                       "Never taste to find out.",
                       {},
                       "when a tin is opened",
                       "U.S. Department of Agriculture; by touch: common practice"});
    if (!record.diet.avoids.empty())
        out.push_back({"A new make or a new recipe is not checked: have the pack read before it is put away.",
                       {},
                       "when a new make comes",
                       common});
    if (any(record, [](const Thing &thing) { return thing.medicine; }))
        out.push_back({"Doses, dates and labels of medicines: ask the pharmacist.",
                       {},
                       "whenever medicines change",
                       common});
}

std::string dueWords(const Thing &thing) {
    const std::string name = sentenceCase(thing.name);
    if (thing.dateKind == DateKind::UseBy)
        return name +
               ": use by this day, printed on the pack; after it do not eat it, even if it looks and smells "
               "fine.";
    return name + ": best before this day, printed on the pack; after it the quality falls.";
}

void addPrintedDates(const Case &record, std::vector<UpkeepTask> &out) {
    std::vector<UpkeepTask> dated;
    for (const auto &thing : record.things) {
        if (thing.bestBefore)
            dated.push_back({dueWords(thing), thing.bestBefore, "once", "printed on the pack"});
    }
    std::stable_sort(dated.begin(), dated.end(),
                     [](const UpkeepTask &a, const UpkeepTask &b) { return *a.due < *b.due; });
    out.insert(out.end(), dated.begin(), dated.end());
}

/// "in the fridge 5 to 7 days" of an opened pack; empty if the data say nothing.
std::string openedWords(const KeepingTime &time) {
    if (time.fridgeOpened.known())
        return "in the fridge " + spanInWords(time.fridgeOpened);
    if (time.pantryOpened.known())
        return "in the cupboard " + spanInWords(time.pantryOpened);
    return "";
}

/// Names of things by how long their opened packs keep, in the order of the things.
std::vector<std::pair<std::string, std::string>> openedGroups(const Case &record) {
    std::vector<std::pair<std::string, std::string>> out;
    for (const auto &thing : record.things) {
        const KeepingTime *time = thing.keepingRow ? keepingTime(*thing.keepingRow) : nullptr;
        const std::string words = time == nullptr ? "" : openedWords(*time);
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
        out.push_back(
            {"Once opened, keeps " + words + ": " + names +
                 ". General guidance: the printed date and local guidance always win, and where they "
                 "differ the stricter.",
             {},
             "when a pack is opened",
             keepingTimesCredit});
}

} // namespace

std::vector<UpkeepTask> upkeepTasks(const Case &record, Date on) {
    std::vector<UpkeepTask> out;
    addRounds(record, on, out);
    addPrintedDates(record, out);
    addHabits(record, out);
    addOpenedTimes(record, out);
    return out;
}

} // namespace model
