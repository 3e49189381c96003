#include "model/coefficients.h"
#include "model/evaluate.h"
#include <algorithm>
#include <set>

namespace model {
namespace {

bool betweenKnuckleAndShoulder(const ProblemClient &client, const ProblemPlace &place) {
    return place.heightCm >= client.knuckleCm && place.heightCm <= client.shoulderCm;
}

bool tallEnough(const ProblemItem &item, const ProblemPlace &place) {
    return place.counter ||
           thousandths(item.heightCm) + thousandths(headroomCm) <= thousandths(place.clearCm);
}

void addBrokenItems(const Problem &problem, const Placement &placement, std::vector<BrokenRule> &broken) {
    for (int i = 0; i < static_cast<int>(problem.items.size()); ++i) {
        const int p = placement.place[i];
        for (const std::string &rule : placeRules(problem, i, p))
            if (rule != "width") // counted once, with the place
                broken.push_back({rule, {i}, {p}});
        if (!codeFits(problem, i, p, placement.code[i]))
            broken.push_back({"marker", {i}, {p}});
    }
}

void addBrokenPlaces(const Problem &problem, const Placement &placement, std::vector<BrokenRule> &broken) {
    for (int p = 0; p < static_cast<int>(problem.places.size()); ++p) {
        std::vector<int> all, chemicalAndFood, foods;
        std::int64_t load = 0;
        bool chemical = false, food = false, avoided = false, free = false;
        for (int i = 0; i < static_cast<int>(problem.items.size()); ++i) {
            if (placement.place[i] != p)
                continue;
            const ProblemItem &item = problem.items[i];
            all.push_back(i);
            load += shelfWidth(item);
            chemical = chemical || item.klass == 'C';
            food = food || keptFromChemicals(item);
            if (item.klass == 'C' || keptFromChemicals(item))
                chemicalAndFood.push_back(i);
            if (carriesAllergen(item) || keptFromAllergen(item))
                foods.push_back(i);
            avoided = avoided || carriesAllergen(item);
            free = free || keptFromAllergen(item);
        }
        if (load > thousandths(problem.places[p].widthCm))
            broken.push_back({"width", all, {p}});
        if (chemical && food)
            broken.push_back({"chemical", chemicalAndFood, {p}});
        if (problem.allergenApart && avoided && free)
            broken.push_back({"allergen", foods, {p}});
    }
}

bool sameCodeMatters(const Problem &problem, int code) {
    return code != 0 && !problem.markers[code - 1].ownText;
}

void addBrokenPairs(const Problem &problem, const Placement &placement, std::vector<BrokenRule> &broken) {
    const std::vector<std::vector<int>> near = nearQuarters(problem);
    const int count = static_cast<int>(problem.items.size());
    for (int i = 0; i < count; ++i)
        for (int j = i + 1; j < count; ++j) {
            if (placement.code[i] != placement.code[j] || !sameCodeMatters(problem, placement.code[i]))
                continue;
            const int p = placement.place[i], q = placement.place[j];
            const std::vector<int> places = p == q ? std::vector<int>{p} : std::vector<int>{p, q};
            if (near[p][q] > 0 && alike(problem.items[i], problem.items[j]) >= alikeForbidsSameCode)
                broken.push_back({"alike", {i, j}, places});
            if (problem.oneThingPerMark && p == q && problem.items[i].shape == problem.items[j].shape)
                broken.push_back({"once", {i, j}, places});
        }
}

void addBrokenApart(const Problem &problem, const Placement &placement, std::vector<BrokenRule> &broken) {
    if (problem.apart.empty())
        return;
    const std::vector<std::vector<int>> near = nearQuarters(problem);
    for (const auto &[i, j] : problem.apart) {
        const int p = placement.place[i], q = placement.place[j];
        if (near[p][q] > 0)
            broken.push_back({"apart", {i, j}, p == q ? std::vector<int>{p} : std::vector<int>{p, q}});
    }
}

void addTooManyKinds(const Problem &problem, const Placement &placement, std::vector<BrokenRule> &broken) {
    std::set<int> kinds;
    std::vector<int> items;
    for (int i = 0; i < static_cast<int>(problem.items.size()); ++i)
        if (isLearnt(problem, placement.code[i])) {
            kinds.insert(placement.code[i]);
            items.push_back(i);
        }
    if (problem.mostToLearn && static_cast<int>(kinds.size()) > *problem.mostToLearn)
        broken.push_back({"kinds", items, {}});
}

} // namespace

bool keptFromChemicals(const ProblemItem &item) {
    return item.klass == 'F' || (item.klass == 'N' && item.touchesFood);
}

bool carriesAllergen(const ProblemItem &item) {
    return item.klass == 'F' && item.allergen;
}

bool keptFromAllergen(const ProblemItem &item) {
    static const std::set<std::string> bare{"mug", "plate", "bowl", "pan", "tool"};
    return item.klass == 'F' ? !item.allergen : keptFromChemicals(item) && bare.contains(item.shape);
}

std::string sharingRule(const Problem &problem, int i, int j) {
    const ProblemItem &a = problem.items[i], &b = problem.items[j];
    if ((a.klass == 'C' && keptFromChemicals(b)) || (b.klass == 'C' && keptFromChemicals(a)))
        return "chemical";
    if (problem.allergenApart &&
        ((carriesAllergen(a) && keptFromAllergen(b)) || (carriesAllergen(b) && keptFromAllergen(a))))
        return "allergen";
    return "";
}

bool isLearnt(const Problem &problem, int c) {
    return c != 0 && problem.markers[c - 1].learnMinutes > 0;
}

std::vector<std::string> placeRules(const Problem &problem, int i, int p) {
    const ProblemItem &item = problem.items[i];
    const ProblemPlace &place = problem.places[p];
    const ProblemClient &client = problem.client;
    std::vector<std::string> rules;
    const auto breaks = [&rules](bool broken, const char *rule) {
        if (broken)
            rules.emplace_back(rule);
    };
    breaks(item.storage != place.storage, "storage");
    breaks(!tallEnough(item, place), "height");
    breaks(thousandths(item.depthCm) > thousandths(place.depthCm), "depth");
    breaks(shelfWidth(item) > thousandths(place.widthCm), "width");
    breaks(place.heightCm < client.reachLowCm || place.heightCm > client.reachHighCm, "reach");
    breaks(item.weightKg >= client.heavyKg && !betweenKnuckleAndShoulder(client, place), "heavy");
    breaks(item.hotUse && place.heightCm > client.shoulderCm, "hot");
    breaks(item.hazard && client.children && !place.secure, "hazard");
    breaks(item.keep == 3 && item.current >= 0 && item.current != p, "keep");
    breaks(std::find(item.forbidden.begin(), item.forbidden.end(), p) != item.forbidden.end(), "overruled");
    return rules;
}

bool codeFits(const Problem &problem, int i, int p, int c) {
    const ProblemItem &item = problem.items[i];
    if (item.pinnedCode && c != *item.pinnedCode)
        return false;
    if (c == 0)
        return true;
    if (!item.pinnedCode && std::ranges::find(item.unreadable, c) != item.unreadable.end())
        return false;
    const ProblemMarker &marker = problem.markers[c - 1];
    if (std::find(marker.surfaces.begin(), marker.surfaces.end(), item.surface) == marker.surfaces.end())
        return false;
    if (problem.places[p].storage == ProblemStorage::Freezer && !marker.survivesFreezer)
        return false;
    return item.klass != 'N' || marker.survivesWet;
}

std::vector<BrokenRule> brokenRules(const Problem &problem, const Placement &placement) {
    std::vector<BrokenRule> broken;
    addBrokenItems(problem, placement, broken);
    addBrokenPlaces(problem, placement, broken);
    addBrokenPairs(problem, placement, broken);
    addBrokenApart(problem, placement, broken);
    addTooManyKinds(problem, placement, broken);
    return broken;
}

} // namespace model
