#include "model/shortage_words.h"
#include "model/coefficients.h"
#include "model/evaluate.h"
#include "model/sentence.h"
#include <algorithm>
#include <cmath>
#include <map>
#include <optional>
#include <string_view>

namespace model {
namespace {

std::string storageWord(ProblemStorage storage) {
    switch (storage) {
    case ProblemStorage::Dry:
        return Sentence::tr("dry cupboard or shelf");
    case ProblemStorage::Fridge:
        return Sentence::tr("fridge");
    case ProblemStorage::Freezer:
        return Sentence::tr("freezer");
    }
    return "";
}

std::string whole(double number) {
    return std::to_string(std::llround(number));
}

std::string kilograms(double kg) {
    const long long tenths = std::llround(kg * 10);
    return Sentence::tr("{1}.{2} kg", {std::to_string(tenths / 10), std::to_string(tenths % 10)});
}

std::string betweenKnuckleAndShoulder(const ProblemClient &client) {
    return Sentence::tr("between knuckle and shoulder ({1} to {2} cm)",
                        {whole(client.knuckleCm), whole(client.shoulderCm)});
}

/// The largest sizes of some things, for one sentence about all of them.
struct Largest {
    double heightCm = 0, depthCm = 0, weightKg = 0;
    std::int64_t shelfWidth = 0;
    ProblemStorage storage = ProblemStorage::Dry;
    bool one = true; // thing, not several
};

Largest largest(const Problem &problem, const std::vector<int> &items) {
    Largest all;
    all.storage = problem.items[items.front()].storage;
    all.one = items.size() == 1;
    for (const int i : items) {
        const ProblemItem &item = problem.items[i];
        all.heightCm = std::max(all.heightCm, item.heightCm);
        all.depthCm = std::max(all.depthCm, item.depthCm);
        all.weightKg = std::max(all.weightKg, item.weightKg);
        all.shelfWidth = std::max(all.shelfWidth, shelfWidth(item));
    }
    return all;
}

std::string needed(const Largest &item, std::int64_t width) {
    return item.one ? Sentence::tr("it needs {1}", {centimetres(width)})
                    : Sentence::tr("up to {1}", {centimetres(width)});
}

/// Why a place will not do: "too low in clear height (needs 29 cm)".
std::string objection(const Largest &item, const std::string &rule) {
    if (rule == "height")
        return Sentence::tr("not high enough inside ({1})",
                            {needed(item, thousandths(item.heightCm + headroomCm))});
    if (rule == "depth")
        return Sentence::tr("not deep enough ({1})", {needed(item, thousandths(item.depthCm))});
    if (rule == "width")
        return Sentence::tr("not wide enough ({1})", {needed(item, item.shelfWidth)});
    if (rule == "reach")
        return Sentence::tr("out of reach");
    if (rule == "heavy")
        return Sentence::tr("too low or too high for {1}", {kilograms(item.weightKg)});
    if (rule == "hot")
        return Sentence::tr("above the shoulder, for what is handled hot");
    if (rule == "hazard")
        return Sentence::tr("not lockable, and within reach of children or others who may not know it");
    if (rule == "keep")
        return Sentence::tr("not the place to stay in");
    if (rule == "overruled")
        return Sentence::tr("ruled out by you or by a caution");
    return Sentence::tr("not a {1}", {storageWord(item.storage)});
}

std::string mend(const Problem &problem, const Largest &item, const std::string &rule) {
    if (rule == "height")
        return Sentence::tr("use a lower pack, or find a place with {1} of clear height",
                            {centimetres(thousandths(item.heightCm + headroomCm))});
    if (rule == "depth" || rule == "width")
        return Sentence::tr("use a smaller pack, or find a larger place");
    if (rule == "reach")
        return Sentence::tr("bring a place within reach");
    if (rule == "heavy")
        return Sentence::tr("use packs under {1}, or find a place {2}",
                            {kilograms(problem.client.heavyKg), betweenKnuckleAndShoulder(problem.client)});
    if (rule == "hot")
        return Sentence::tr("find a place not above the shoulder ({1} cm)",
                            {whole(problem.client.shoulderCm)});
    if (rule == "hazard")
        return Sentence::tr("fit a lock, or find a place above their reach");
    if (rule == "keep")
        return Sentence::tr("allow a move from the present place");
    if (rule == "overruled")
        return Sentence::tr("take back what you ruled out, where that is safe");
    return Sentence::tr("add a place in a {1}", {storageWord(item.storage)});
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
        return Sentence::tr("no place is a {1}", {storageWord(item.storage)});
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
            add(Sentence::tr("in a {1}", {storageWord(problem.items[items.front()].storage)}));
        else if (rule == "reach")
            add(Sentence::tr("within reach"));
        else if (rule == "heavy")
            add(Sentence::tr("fit for heavy things, {1}", {betweenKnuckleAndShoulder(problem.client)}));
        else if (rule == "hot")
            add(Sentence::tr("not above the shoulder"));
        else if (rule == "hazard")
            add(Sentence::tr("lockable, or above the reach of children and others"));
        else if (rule == "height")
            add(Sentence::tr("high enough inside"));
        else if (rule == "depth")
            add(Sentence::tr("deep enough"));
        else if (rule == "keep")
            add(Sentence::tr("where they must stay"));
        else if (rule == "overruled")
            add(Sentence::tr("not ruled out"));
    }
    return all;
}

/// "rice and flour need 40 cm"
std::string needs(const Problem &problem, const std::vector<int> &items) {
    const std::string names = itemNames(problem, items), width = centimetres(widthNeeded(problem, items));
    return items.size() == 1 ? Sentence::tr("{1} needs {2}", {names, width})
                             : Sentence::tr("{1} need {2}", {names, width});
}

std::string shortBy(const Problem &problem, const std::vector<int> &items, const std::vector<int> &places) {
    return centimetres(widthNeeded(problem, items) - widthThere(problem, places));
}

std::string haveSo(const Problem &problem, const std::vector<int> &places) {
    if (places.empty())
        return Sentence::tr("there is none");
    return Sentence::tr("{1} is there ({2})",
                        {centimetres(widthThere(problem, places)), placeNames(problem, places)});
}

} // namespace

std::string listed(const std::vector<std::string> &names) {
    constexpr std::size_t most = 6;
    std::string all;
    for (std::size_t k = 0; k < names.size(); ++k) {
        if (k + 1 == most && names.size() > most)
            return Sentence::tr("{1} and {2} more", {all, std::to_string(names.size() - k)});
        all += (k == 0 ? "" : k + 1 == names.size() ? Sentence::tr(" and ") : ", ") + names[k];
    }
    return all;
}

std::string centimetres(std::int64_t thousandths) {
    const std::int64_t tenths = (thousandths + 50) / 100;
    if (tenths % 10 == 0)
        return Sentence::tr("{1} cm", {std::to_string(tenths / 10)});
    return Sentence::tr("{1}.{2} cm", {std::to_string(tenths / 10), std::to_string(tenths % 10)});
}

std::string placeNames(const Problem &problem, const std::vector<int> &places) {
    constexpr std::string_view between = ", ";
    std::vector<std::string> names;
    std::string unitBefore;
    for (const int p : places) {
        const std::string &name = problem.places[p].name;
        const std::size_t end = name.rfind(between);
        const std::string unit = end == std::string::npos ? "" : name.substr(0, end);
        names.push_back(!unit.empty() && unit == unitBefore ? name.substr(end + between.size()) : name);
        unitBefore = unit;
    }
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
        help += (help.empty() ? "" : Sentence::tr("; and ")) + mend(problem, item, rule);
    std::string objections = objectionsToAll(problem, first, item);
    if (const std::optional<int> only = onlyPlaceLeft(problem, first)) {
        objections = Sentence::tr(
            "{1}, the only place not ruled out: {2}",
            {problem.places[*only].name, joinedObjections(item, placeRules(problem, first, *only))});
        help = mend(problem, item, "overruled");
    }
    const std::string names = itemNames(problem, items);
    return items.size() == 1 ? Sentence::tr("{1} can stand nowhere: {2}. To mend it, {3}; or leave it out.",
                                            {names, objections, help})
                             : Sentence::tr("{1} can stand nowhere: {2}. To mend it, {3}; or leave them out.",
                                            {names, objections, help});
}

std::string widthSentence(const Problem &problem, const std::vector<int> &items,
                          const std::vector<int> &places, const std::vector<std::string> &rules) {
    const std::string place = where(problem, items, rules);
    return Sentence::tr(
        "Too little room: {1} of width{2}; {3}. Take out things of {4} in all, or add as much room.",
        {needs(problem, items), place.empty() ? "" : " " + place, haveSo(problem, places),
         shortBy(problem, items, places)});
}

std::string chemicalSentence(const Problem &problem, const std::vector<int> &items,
                             const std::vector<int> &places, const std::vector<int> &chemicalPlaces) {
    return Sentence::tr(
        "Too little room, since chemicals never stand with food: even with the chemicals in {1} alone, {2} "
        "of width; {3}. Add a place for the chemicals, or take out things of {4} in all.",
        {placeNames(problem, chemicalPlaces), needs(problem, items), haveSo(problem, places),
         shortBy(problem, items, places)});
}

std::string overfullSentence(const Problem &problem, const std::vector<int> &items, int place) {
    return Sentence::tr("No arrangement was found. In the nearest one, {1} is overfull: {2}, {3}. "
                        "Taking out a thing of {4} or more there would do.",
                        {problem.places[place].name, needs(problem, items), haveSo(problem, {place}),
                         shortBy(problem, items, {place})});
}

std::string mixedSentence(const Problem &problem, int place) {
    return Sentence::tr("No arrangement was found. In the nearest one, chemicals and food would share {1}. "
                        "Another place for the chemicals would do.",
                        {problem.places[place].name});
}

std::string allergenSentence(const Problem &problem, int place) {
    return Sentence::tr("No arrangement was found. In the nearest one, food with the avoided allergen would "
                        "share {1} with other food or bare tools and tableware. Another place, or a bin with "
                        "a lid entered as a place of its own, would do.",
                        {problem.places[place].name});
}

std::string markSentence(const Problem &problem, const std::string &rule, const std::vector<int> &items) {
    if (rule == "kinds")
        return Sentence::tr("The marks that you chose are more kinds than this client is to learn: {1}. "
                            "Choose fewer kinds, or raise the limit.",
                            {itemNames(problem, items)});
    if (rule == "alike")
        return Sentence::tr("{1} feel alike and would stand near each other with the same mark that you "
                            "chose. Choose another mark for one of them.",
                            {itemNames(problem, items)});
    if (rule == "once")
        return Sentence::tr("{1} have one shape and would stand in one place with the same mark that you "
                            "chose. Choose another mark for one of them.",
                            {itemNames(problem, items)});
    return Sentence::tr(
        "{1}: the mark that you chose does not hold on this surface or in this place. Choose another.",
        {itemNames(problem, items)});
}

std::string nearSentence(const Problem &problem, const std::vector<int> &items) {
    return Sentence::tr(
        "No arrangement was found. In the nearest one, {1} would stand near each other, feel alike, and a "
        "mix-up would do harm. Another pack for one of them, or another place, would do.",
        {itemNames(problem, items)});
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
