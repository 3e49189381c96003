#include "model/shortage_words.h"
#include "model/coefficients.h"
#include "model/evaluate.h"
#include <algorithm>
#include <cmath>
#include <map>
#include <optional>

namespace model {
namespace {

std::string storageWord(ProblemStorage storage) {
    switch (storage) {
    case ProblemStorage::Dry:
        return "dry cupboard or shelf";
    case ProblemStorage::Fridge:
        return "fridge";
    case ProblemStorage::Freezer:
        return "freezer";
    }
    return "";
}

std::string whole(double number) {
    return std::to_string(std::llround(number));
}

std::string kilograms(double kg) {
    const long long tenths = std::llround(kg * 10);
    return std::to_string(tenths / 10) + "." + std::to_string(tenths % 10) + " kg";
}

std::string betweenKnuckleAndShoulder(const ProblemClient &client) {
    return "between knuckle and shoulder (" + whole(client.knuckleCm) + " to " + whole(client.shoulderCm) +
           " cm)";
}

/// The largest sizes of some things, for one sentence about all of them.
struct Largest {
    double heightCm = 0, depthCm = 0, weightKg = 0;
    std::int64_t shelfWidth = 0;
    ProblemStorage storage = ProblemStorage::Dry;
    std::string needs; // "it needs " or "up to "
};

Largest largest(const Problem &problem, const std::vector<int> &items) {
    Largest all;
    all.storage = problem.items[items.front()].storage;
    all.needs = items.size() == 1 ? "it needs " : "up to ";
    for (const int i : items) {
        const ProblemItem &item = problem.items[i];
        all.heightCm = std::max(all.heightCm, item.heightCm);
        all.depthCm = std::max(all.depthCm, item.depthCm);
        all.weightKg = std::max(all.weightKg, item.weightKg);
        all.shelfWidth = std::max(all.shelfWidth, shelfWidth(item));
    }
    return all;
}

/// Why a place will not do: "too low in clear height (needs 29.0 cm)".
std::string objection(const Largest &item, const std::string &rule) {
    if (rule == "height")
        return "not high enough inside (" + item.needs +
               centimetres(thousandths(item.heightCm + headroomCm)) + ")";
    if (rule == "depth")
        return "not deep enough (" + item.needs + centimetres(thousandths(item.depthCm)) + ")";
    if (rule == "width")
        return "not wide enough (" + item.needs + centimetres(item.shelfWidth) + ")";
    if (rule == "reach")
        return "out of reach";
    if (rule == "heavy")
        return "too low or too high for " + kilograms(item.weightKg);
    if (rule == "hot")
        return "above the shoulder, for what is handled hot";
    if (rule == "hazard")
        return "not lockable, and within reach of children or others who may not know it";
    if (rule == "keep")
        return "not the place to stay in";
    if (rule == "overruled")
        return "ruled out by you or by a caution";
    return "not a " + storageWord(item.storage);
}

std::string mend(const Problem &problem, const Largest &item, const std::string &rule) {
    if (rule == "height")
        return "use a lower pack, or find a place with " +
               centimetres(thousandths(item.heightCm + headroomCm)) + " of clear height";
    if (rule == "depth" || rule == "width")
        return "use a smaller pack, or find a larger place";
    if (rule == "reach")
        return "bring a place within reach";
    if (rule == "heavy")
        return "use packs under " + kilograms(problem.client.heavyKg) + ", or find a place " +
               betweenKnuckleAndShoulder(problem.client);
    if (rule == "hot")
        return "find a place not above the shoulder (" + whole(problem.client.shoulderCm) + " cm)";
    if (rule == "hazard")
        return "fit a lock, or find a place above their reach";
    if (rule == "keep")
        return "allow a move from the present place";
    if (rule == "overruled")
        return "take back what you ruled out, where that is safe";
    return "add a place in a " + storageWord(item.storage);
}

std::string joinedObjections(const Largest &item, const std::vector<std::string> &rules) {
    std::string all;
    for (const std::string &rule : rules)
        all += (all.empty() ? "" : ", ") + objection(item, rule);
    return all;
}

/// Each place of the right storage with what speaks against it, places with the same objections together.
std::string objectionsToAll(const Problem &problem, int i, const Largest &item) {
    std::map<std::vector<std::string>, std::vector<int>> placesByRules;
    for (const int p : placesOfItsStorage(problem, i))
        placesByRules[placeRules(problem, i, p)].push_back(p);
    if (placesByRules.empty())
        return "no place is a " + storageWord(item.storage);
    std::string all;
    for (const auto &[rules, places] : placesByRules)
        all += (all.empty() ? "" : "; ") + placeNames(problem, places) + ": " + joinedObjections(item, rules);
    return all;
}

/// The one place to which the therapist's rulings confine a thing, if they do.
std::optional<int> onlyPlaceLeft(const Problem &problem, int i) {
    const std::vector<int> &forbidden = problem.items[i].forbidden;
    std::vector<int> left;
    for (int p = 0; p < static_cast<int>(problem.places.size()); ++p)
        if (std::find(forbidden.begin(), forbidden.end(), p) == forbidden.end())
            left.push_back(p);
    return forbidden.empty() || left.size() != 1 ? std::nullopt : std::optional(left.front());
}

/// Where a rule leaves the things that are short of width: "in the fridge", "between knuckle and shoulder".
std::string where(const Problem &problem, const std::vector<int> &items,
                  const std::vector<std::string> &rules) {
    std::string all;
    const auto add = [&all](const std::string &words) { all += (all.empty() ? "" : ", ") + words; };
    for (const std::string &rule : rules) {
        if (rule == "storage")
            add("in a " + storageWord(problem.items[items.front()].storage));
        else if (rule == "reach")
            add("within reach");
        else if (rule == "heavy")
            add("fit for heavy things, " + betweenKnuckleAndShoulder(problem.client));
        else if (rule == "hot")
            add("not above the shoulder");
        else if (rule == "hazard")
            add("lockable, or above the reach of children and others");
        else if (rule == "height")
            add("high enough inside");
        else if (rule == "depth")
            add("deep enough");
        else if (rule == "keep")
            add("where they must stay");
        else if (rule == "overruled")
            add("not ruled out");
    }
    return all;
}

std::string needs(const std::vector<int> &items) {
    return items.size() == 1 ? " needs " : " need ";
}

std::string shortBy(const Problem &problem, const std::vector<int> &items, const std::vector<int> &places) {
    return centimetres(widthNeeded(problem, items) - widthThere(problem, places));
}

std::string haveSo(const Problem &problem, const std::vector<int> &places) {
    if (places.empty())
        return "there is none";
    return centimetres(widthThere(problem, places)) + " is there (" + placeNames(problem, places) + ")";
}

} // namespace

std::string listed(const std::vector<std::string> &names) {
    constexpr std::size_t most = 6;
    std::string all;
    for (std::size_t k = 0; k < names.size(); ++k) {
        if (k + 1 == most && names.size() > most)
            return all + " and " + std::to_string(names.size() - k) + " more";
        all += (k == 0 ? "" : k + 1 == names.size() ? " and " : ", ") + names[k];
    }
    return all;
}

std::string centimetres(std::int64_t thousandths) {
    const std::int64_t tenths = (thousandths + 50) / 100;
    return std::to_string(tenths / 10) + "." + std::to_string(tenths % 10) + " cm";
}

std::string placeNames(const Problem &problem, const std::vector<int> &places) {
    std::vector<std::string> names;
    for (const int p : places)
        names.push_back(problem.places[p].name);
    return listed(names);
}

std::string itemNames(const Problem &problem, const std::vector<int> &items) {
    std::vector<std::string> names;
    for (const int i : items)
        names.push_back(problem.items[i].name);
    return listed(names);
}

std::vector<std::string> easiestToMend(const Problem &problem, int i) {
    if (const std::optional<int> only = onlyPlaceLeft(problem, i))
        return placeRules(problem, i, *only);
    std::vector<std::string> fewest;
    for (const int p : placesOfItsStorage(problem, i))
        if (const std::vector<std::string> rules = placeRules(problem, i, p);
            fewest.empty() || rules.size() < fewest.size())
            fewest = rules;
    return fewest.empty() ? std::vector<std::string>{"storage"} : fewest;
}

std::vector<int> placesOfItsStorage(const Problem &problem, int i) {
    std::vector<int> places;
    for (int p = 0; p < static_cast<int>(problem.places.size()); ++p)
        if (problem.places[p].storage == problem.items[i].storage)
            places.push_back(p);
    return places;
}

std::string nowhereSentence(const Problem &problem, const std::vector<int> &items) {
    const int first = items.front();
    const Largest item = largest(problem, items);
    std::string help;
    for (const std::string &rule : easiestToMend(problem, first))
        help += (help.empty() ? "" : "; and ") + mend(problem, item, rule);
    std::string objections = objectionsToAll(problem, first, item);
    if (const std::optional<int> only = onlyPlaceLeft(problem, first)) {
        objections = problem.places[*only].name + ", the only place not ruled out: " +
                     joinedObjections(item, placeRules(problem, first, *only));
        help = mend(problem, item, "overruled");
    }
    return itemNames(problem, items) + " can stand nowhere: " + objections + ". To mend it, " + help +
           "; or leave " + (items.size() == 1 ? "it" : "them") + " out.";
}

std::string widthSentence(const Problem &problem, const std::vector<int> &items,
                          const std::vector<int> &places, const std::vector<std::string> &rules) {
    const std::string place = where(problem, items, rules);
    return "Too little room: " + itemNames(problem, items) + needs(items) +
           centimetres(widthNeeded(problem, items)) + " of width" + (place.empty() ? "" : " " + place) +
           "; " + haveSo(problem, places) + ". Take out things of " + shortBy(problem, items, places) +
           " in all, or add as much room.";
}

std::string chemicalSentence(const Problem &problem, const std::vector<int> &items,
                             const std::vector<int> &places, const std::vector<int> &chemicalPlaces) {
    return "Too little room, since chemicals never stand with food: even with the chemicals in " +
           placeNames(problem, chemicalPlaces) + " alone, " + itemNames(problem, items) + needs(items) +
           centimetres(widthNeeded(problem, items)) + " of width; " + haveSo(problem, places) +
           ". Add a place for the chemicals, or take out things of " + shortBy(problem, items, places) +
           " in all.";
}

std::string overfullSentence(const Problem &problem, const std::vector<int> &items, int place) {
    return "No arrangement was found. In the nearest one, " + problem.places[place].name +
           " is overfull: " + itemNames(problem, items) + needs(items) +
           centimetres(widthNeeded(problem, items)) + ", " + haveSo(problem, {place}) +
           ". Taking out a thing of " + shortBy(problem, items, {place}) + " or more there would do.";
}

std::string mixedSentence(const Problem &problem, int place) {
    return "No arrangement was found. In the nearest one, chemicals and food would share " +
           problem.places[place].name + ". Another place for the chemicals would do.";
}

std::string allergenSentence(const Problem &problem, int place) {
    return "No arrangement was found. In the nearest one, food with the avoided allergen would share " +
           problem.places[place].name +
           " with other food or bare tools and tableware. Another place, or a bin with a lid entered as a "
           "place of "
           "its own, would do.";
}

std::string markSentence(const Problem &problem, const std::string &rule, const std::vector<int> &items) {
    if (rule == "kinds")
        return "The marks that you chose are more kinds than this client is to learn: " +
               itemNames(problem, items) + ". Choose fewer kinds, or raise the limit.";
    if (rule == "alike")
        return itemNames(problem, items) + " feel alike and would stand near each other with the same mark "
                                           "that you chose. Choose another mark "
                                           "for one of them.";
    if (rule == "once")
        return itemNames(problem, items) +
               " have one shape and would stand in one place with the same mark that "
               "you chose. Choose another mark for one of them.";
    return itemNames(problem, items) +
           ": the mark that you chose does not hold on this surface or in this place. "
           "Choose another.";
}

std::string nearSentence(const Problem &problem, const std::vector<int> &items) {
    return "No arrangement was found. In the nearest one, " + itemNames(problem, items) +
           " would stand near each other, feel alike, and a mix-up would do harm. Another pack for one of "
           "them, "
           "or another place, would do.";
}

std::int64_t widthNeeded(const Problem &problem, const std::vector<int> &items) {
    std::int64_t sum = 0;
    for (const int i : items)
        sum += shelfWidth(problem.items[i]);
    return sum;
}

std::int64_t widthThere(const Problem &problem, const std::vector<int> &places) {
    std::int64_t sum = 0;
    for (const int p : places)
        sum += thousandths(problem.places[p].widthCm);
    return sum;
}

} // namespace model
