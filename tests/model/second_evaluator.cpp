#include "tests/model/second_evaluator.h"
#include <algorithm>
#include <cmath>
#include <set>

namespace model::fixtures {

namespace {

/// Whole thousandths, half up, of a double. The practice plans are counted so: 0.1155, which a double holds a
/// trifle below the half, becomes 115.
std::int64_t thousandths(double value) {
    return static_cast<std::int64_t>(std::floor(value * 1000.0 + 0.5));
}

struct ShapePair {
    const char *one, *other;
    double likeness;
};

double shapeLikeness(const std::string &a, const std::string &b) {
    static const ShapePair pairs[] = {
        {"can", "canister", 0.35}, {"tub", "canister", 0.4},  {"jar", "bottle", 0.3}, {"jar", "tub", 0.3},
        {"can", "jar", 0.25},      {"canister", "jar", 0.25}, {"mug", "jar", 0.1}};
    if (a == b)
        return 1.0;
    for (const ShapePair &pair : pairs)
        if ((a == pair.one && b == pair.other) || (b == pair.one && a == pair.other))
            return pair.likeness;
    return 0.0;
}

double likeness(const ProblemItem &a, const ProblemItem &b) {
    if (a.storage != b.storage)
        return 0;
    const double width = (a.widthCm - b.widthCm) / 1.0;
    const double height = (a.heightCm - b.heightCm) / 2.0;
    const double weight = std::log(a.weightKg / b.weightKg) / 0.35;
    const double sound = (a.sound - b.sound) / 0.6;
    const double squares = width * width + height * height + weight * weight + sound * sound;
    const double result = shapeLikeness(a.shape, b.shape) * std::exp(-0.5 * squares);
    return result < 0.05 ? 0 : result;
}

/// Quarters: 4 the same place, 1 the next place up or down in the same bay, 0 otherwise.
int nearness(const Problem &problem, int p, int q) {
    if (p == q)
        return 4;
    const int bay = problem.places[p].bay;
    if (problem.places[q].bay != bay)
        return 0;
    std::vector<int> column;
    for (int i = 0; i < static_cast<int>(problem.places.size()); ++i)
        if (problem.places[i].bay == bay)
            column.push_back(i);
    std::stable_sort(column.begin(), column.end(),
                     [&](int a, int b) { return problem.places[a].heightCm < problem.places[b].heightCm; });
    const auto at = std::find(column.begin(), column.end(), p) - column.begin();
    const auto other = std::find(column.begin(), column.end(), q) - column.begin();
    return std::abs(at - other) == 1 ? 1 : 0;
}

/// Chance in thousandths that code `c` is taken for code `d`.
std::int64_t codeConfusion(const Problem &problem, int c, int d) {
    if (c == 0 && d == 0)
        return 1000;
    if (c == 0)
        return thousandths(problem.miss[d - 1]);
    if (d == 0)
        return thousandths(problem.miss[c - 1]);
    return thousandths(problem.confusion[c - 1][d - 1]);
}

std::int64_t unaryOf(const Problem &problem, int i, int p) {
    const ProblemClient &client = problem.client;
    const ProblemItem &item = problem.items[i];
    const ProblemPlace &place = problem.places[p];
    const double uses = item.usesPerWeek;

    int level = 2;
    if (place.heightCm >= client.knuckleCm && place.heightCm <= client.shoulderCm)
        level = 0;
    else if (place.heightCm >= client.knuckleCm - 35 && place.heightCm <= client.shoulderCm + 20)
        level = 1;
    if (item.glass && place.heightCm > client.shoulderCm)
        level = level + 1;
    const double reach = uses * 0.15 * level;

    const double dx = place.x - item.areaX;
    const double dy = place.y - item.areaY;
    const double walk = uses * 0.05 * std::sqrt(dx * dx + dy * dy);

    double dark = 0;
    if (client.usableVision && !place.lit)
        dark = uses * 0.05;

    double move = 0;
    if (item.current >= 0 && item.current != p)
        move = 6.0 / 12.0 * (1 + item.keep);

    return thousandths(reach + walk + dark + move);
}

std::int64_t markingOf(const ProblemItem &item, const ProblemMarker &marker) {
    const double refill = item.refillsPerWeek * marker.fixMinutes;
    const double read = item.usesPerWeek * marker.readSeconds / 60.0;
    return thousandths(refill + read + 0.05 * marker.cost);
}

std::int64_t riskOf(const Problem &problem, const Placement &placement, int i, int j) {
    const ProblemItem &a = problem.items[i];
    const ProblemItem &b = problem.items[j];
    const bool allergens = problem.client.avoidsAllergen;
    const bool meaningsDiffer = a.hazard != b.hazard || (allergens && a.allergen != b.allergen);
    double severity = 1;
    if (meaningsDiffer)
        severity = 30.0 * 0.03;
    else if (a.spoils || b.spoils)
        severity = 5;
    const double uses = a.usesPerWeek + b.usesPerWeek;
    const std::int64_t whole = thousandths(2.0 * 0.10 * likeness(a, b) * uses * severity);
    const std::int64_t quarters = nearness(problem, placement.place[i], placement.place[j]);
    const std::int64_t confusion = codeConfusion(problem, placement.code[i], placement.code[j]);
    return whole * quarters * confusion / 4000;
}

Terms termsOf(const Problem &problem, const Placement &placement) {
    Terms terms;
    const int count = static_cast<int>(problem.items.size());
    std::set<std::pair<std::string, int>> baysOfGroups, placesOfSubs;
    std::set<std::string> groups, subs;
    std::set<int> types;
    for (int i = 0; i < count; ++i) {
        const ProblemItem &item = problem.items[i];
        const int p = placement.place[i];
        terms.unary += unaryOf(problem, i, p);
        groups.insert(item.group);
        subs.insert(item.sub);
        baysOfGroups.insert({item.group, problem.places[p].bay});
        placesOfSubs.insert({item.sub, p});
        if (placement.code[i] != 0) {
            types.insert(placement.code[i]);
            terms.mark += markingOf(item, problem.markers[placement.code[i] - 1]);
        }
        for (int j = i + 1; j < count; ++j)
            terms.risk += riskOf(problem, placement, i, j);
    }
    terms.bay = 1000 * static_cast<std::int64_t>(baysOfGroups.size() - groups.size());
    terms.place = 400 * static_cast<std::int64_t>(placesOfSubs.size() - subs.size());
    for (int type : types)
        terms.type += thousandths(problem.markers[type - 1].learnMinutes / 12.0);
    return terms;
}

void itemRules(const Problem &problem, const Placement &placement, int i, std::vector<std::string> &broken) {
    const ProblemClient &client = problem.client;
    const ProblemItem &item = problem.items[i];
    const int p = placement.place[i];
    const ProblemPlace &place = problem.places[p];
    const auto note = [&](const char *rule) { broken.push_back(rule + (" " + std::to_string(i))); };

    if (item.storage != place.storage)
        note("storage");
    if (!place.counter && thousandths(item.heightCm) + 1000 > thousandths(place.clearCm))
        note("height");
    if (thousandths(item.depthCm) > thousandths(place.depthCm))
        note("depth");
    if (place.heightCm < client.reachLowCm || place.heightCm > client.reachHighCm)
        note("reach");
    if (item.weightKg >= client.heavyKg &&
        (place.heightCm < client.knuckleCm || place.heightCm > client.shoulderCm))
        note("heavy");
    if (item.hotUse && place.heightCm > client.shoulderCm)
        note("hot");
    if (item.hazard && client.children && !place.secure)
        note("hazard");
    if (item.keep == 3 && item.current >= 0 && item.current != p)
        note("keep");
    if (std::find(item.forbidden.begin(), item.forbidden.end(), p) != item.forbidden.end())
        note("overruled");

    if (placement.code[i] == 0)
        return;
    const ProblemMarker &marker = problem.markers[placement.code[i] - 1];
    const bool sticks =
        std::find(marker.surfaces.begin(), marker.surfaces.end(), item.surface) != marker.surfaces.end();
    const bool freezes = place.storage != ProblemStorage::Freezer || marker.survivesFreezer;
    const bool stands = item.klass != 'N' || marker.survivesWet;
    const bool pinnedOther = problem.items[i].pinnedCode && placement.code[i] != *problem.items[i].pinnedCode;
    const bool unreadable =
        !item.pinnedCode && std::count(item.unreadable.begin(), item.unreadable.end(), placement.code[i]) > 0;
    if (!sticks || !freezes || !stands || pinnedOther || unreadable)
        note("marker");
}

void placeRules(const Problem &problem, const Placement &placement, int p, std::vector<std::string> &broken) {
    std::int64_t width = 0;
    bool chemical = false;
    bool food = false;
    bool harmful = false;
    bool harmless = false;
    for (std::size_t i = 0; i < problem.items.size(); ++i) {
        if (placement.place[i] != p)
            continue;
        const ProblemItem &item = problem.items[i];
        width += thousandths(item.runCm > 0 ? item.runCm : item.widthCm) + 1000;
        chemical = chemical || problem.items[i].klass == 'C';
        food = food || item.klass == 'F' || (item.klass == 'N' && item.touchesFood);
        harmful = harmful || (item.klass == 'F' && item.allergen);
        const bool bare = item.shape == "tool" || item.shape == "pan" || item.shape == "mug" ||
                          item.shape == "plate" || item.shape == "bowl";
        harmless = harmless || (item.klass == 'F' && !item.allergen) ||
                   (item.klass == 'N' && item.touchesFood && bare);
    }
    if (width > thousandths(problem.places[p].widthCm))
        broken.push_back("width " + std::to_string(p));
    if (chemical && food)
        broken.push_back("chemical " + std::to_string(p));
    if (problem.allergenApart && harmful && harmless)
        broken.push_back("allergen " + std::to_string(p));
}

/// Different marks in use that are not known yet.
void kindsRule(const Problem &problem, const Placement &placement, std::vector<std::string> &broken) {
    int toLearn = 0;
    for (std::size_t m = 0; m < problem.markers.size(); ++m)
        if (problem.markers[m].learnMinutes > 0 &&
            std::count(placement.code.begin(), placement.code.end(), static_cast<int>(m) + 1) > 0)
            ++toLearn;
    if (problem.mostToLearn && toLearn > *problem.mostToLearn)
        broken.emplace_back("kinds");
}

bool keptApart(const Problem &problem, int i, int j) {
    for (const auto &[a, b] : problem.apart)
        if ((a == i && b == j) || (a == j && b == i))
            return true;
    return false;
}

void pairRule(const Problem &problem, const Placement &placement, int i, int j,
              std::vector<std::string> &broken) {
    if (nearness(problem, placement.place[i], placement.place[j]) == 0)
        return;
    const std::string pair = " " + std::to_string(i) + " " + std::to_string(j);
    const int code = placement.code[i];
    const bool sameCode = code != 0 && code == placement.code[j] && !problem.markers[code - 1].ownText;
    if (sameCode && likeness(problem.items[i], problem.items[j]) >= 0.5)
        broken.push_back("alike" + pair);
    if (sameCode && problem.oneThingPerMark && placement.place[i] == placement.place[j] &&
        problem.items[i].shape == problem.items[j].shape)
        broken.push_back("once" + pair);
    if (keptApart(problem, i, j))
        broken.push_back("apart" + pair);
}

} // namespace

SecondCount secondCount(const Problem &problem, const Placement &placement) {
    SecondCount result;
    result.terms = termsOf(problem, placement);
    const int count = static_cast<int>(problem.items.size());
    for (int i = 0; i < count; ++i)
        itemRules(problem, placement, i, result.broken);
    for (int p = 0; p < static_cast<int>(problem.places.size()); ++p)
        placeRules(problem, placement, p, result.broken);
    for (int i = 0; i < count; ++i)
        for (int j = i + 1; j < count; ++j)
            pairRule(problem, placement, i, j, result.broken);
    kindsRule(problem, placement, result.broken);
    std::sort(result.broken.begin(), result.broken.end());
    return result;
}

} // namespace model::fixtures
