#include "model/shortage_words.h"
#include "model/coefficients.h"
#include "model/evaluate.h"
#include <algorithm>
#include <map>

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
    return std::to_string(static_cast<long long>(number + 0.5));
}

std::string kilograms(double kg) {
    const long long tenths = static_cast<long long>(kg * 10 + 0.5);
    return std::to_string(tenths / 10) + "." + std::to_string(tenths % 10) + " kg";
}

std::string betweenKnuckleAndShoulder(const ProblemClient &client) {
    return "between knuckle and shoulder (" + whole(client.knuckleCm) + " to " + whole(client.shoulderCm) +
           " cm)";
}

/// Why a place will not do: "too low in clear height (needs 29.0 cm)".
std::string objection(const Problem &problem, int i, const std::string &rule) {
    const ProblemItem &item = problem.items[i];
    if (rule == "height")
        return "not high enough inside (it needs " + centimetres(thousandths(item.heightCm + headroomCm)) +
               ")";
    if (rule == "depth")
        return "not deep enough (it needs " + centimetres(thousandths(item.depthCm)) + ")";
    if (rule == "width")
        return "not wide enough (it needs " + centimetres(shelfWidth(item)) + ")";
    if (rule == "reach")
        return "out of reach";
    if (rule == "heavy")
        return "too low or too high for its " + kilograms(item.weightKg);
    if (rule == "hot")
        return "above the shoulder, and it is handled hot";
    if (rule == "hazard")
        return "within the children's reach and not lockable";
    if (rule == "keep")
        return "not the place where it must stay";
    if (rule == "overruled")
        return "ruled out by you";
    return "not a " + storageWord(item.storage);
}

std::string mend(const Problem &problem, int i, const std::string &rule) {
    const ProblemItem &item = problem.items[i];
    if (rule == "height")
        return "put it in a lower pack, or give it a place with " +
               centimetres(thousandths(item.heightCm + headroomCm)) + " of clear height";
    if (rule == "depth" || rule == "width")
        return "put it in a smaller pack, or give it a larger place";
    if (rule == "reach")
        return "bring a place within reach";
    if (rule == "heavy")
        return "divide it into packs under " + kilograms(problem.client.heavyKg) + ", or give it a place " +
               betweenKnuckleAndShoulder(problem.client);
    if (rule == "hot")
        return "give it a place not above the shoulder (" + whole(problem.client.shoulderCm) + " cm)";
    if (rule == "hazard")
        return "fit a lock, or give it a place above the children's reach";
    if (rule == "keep")
        return "let it leave its present place";
    if (rule == "overruled")
        return "take back an overrule";
    return "add a place in a " + storageWord(item.storage);
}

std::string joinedObjections(const Problem &problem, int i, const std::vector<std::string> &rules) {
    std::string all;
    for (const std::string &rule : rules)
        all += (all.empty() ? "" : ", ") + objection(problem, i, rule);
    return all;
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
            add("lockable or above the children's reach");
        else if (rule == "height")
            add("high enough inside");
        else if (rule == "depth")
            add("deep enough");
        else if (rule == "keep")
            add("where they must stay");
        else if (rule == "overruled")
            add("not ruled out by you");
    }
    return all;
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

std::string nowhereSentence(const Problem &problem, int i) {
    std::map<std::vector<std::string>, std::vector<int>> placesByRules;
    for (int p = 0; p < static_cast<int>(problem.places.size()); ++p)
        if (problem.places[p].storage == problem.items[i].storage)
            placesByRules[placeRules(problem, i, p)].push_back(p);
    std::string sentence = problem.items[i].name + " can stand nowhere: ";
    if (placesByRules.empty())
        return sentence + "no place is a " + storageWord(problem.items[i].storage) + ". To mend it, " +
               mend(problem, i, "storage") + ", or leave it out.";
    bool first = true;
    std::vector<std::string> fewest = placesByRules.begin()->first;
    for (const auto &[rules, places] : placesByRules) {
        sentence +=
            (first ? "" : "; ") + placeNames(problem, places) + ": " + joinedObjections(problem, i, rules);
        first = false;
        if (rules.size() < fewest.size())
            fewest = rules;
    }
    sentence += ". To mend it, ";
    for (std::size_t k = 0; k < fewest.size(); ++k)
        sentence += (k == 0 ? "" : "; and ") + mend(problem, i, fewest[k]);
    return sentence + "; or leave it out.";
}

std::string widthSentence(const Problem &problem, const std::vector<int> &items,
                          const std::vector<int> &places, const std::vector<std::string> &rules) {
    const std::string place = where(problem, items, rules);
    return "Too little room: " + itemNames(problem, items) + " need " +
           centimetres(widthNeeded(problem, items)) + " of width" + (place.empty() ? "" : " " + place) +
           "; " + haveSo(problem, places) + ". Take out things of " + shortBy(problem, items, places) +
           " in all, or add as much room.";
}

std::string chemicalSentence(const Problem &problem, const std::vector<int> &items,
                             const std::vector<int> &places, const std::vector<int> &chemicalPlaces) {
    return "Too little room, since chemicals never stand with food: even with the chemicals in " +
           placeNames(problem, chemicalPlaces) + " alone, " + itemNames(problem, items) + " need " +
           centimetres(widthNeeded(problem, items)) + " of width; " + haveSo(problem, places) +
           ". Add a place for the chemicals, or take out things of " + shortBy(problem, items, places) +
           " in all.";
}

std::string overfullSentence(const Problem &problem, const std::vector<int> &items, int place) {
    return "No arrangement was found. In the nearest one, " + problem.places[place].name +
           " is overfull: " + itemNames(problem, items) + " need " +
           centimetres(widthNeeded(problem, items)) + ", " + haveSo(problem, {place}) +
           ". Taking out a thing of " + shortBy(problem, items, {place}) + " or more there would do.";
}

std::string mixedSentence(const Problem &problem, int place) {
    return "No arrangement was found. In the nearest one, chemicals and food would share " +
           problem.places[place].name + ". Another place for the chemicals would do.";
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
