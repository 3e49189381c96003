#include "model/coefficients.h"
#include "model/evaluate.h"
#include "model/search.h"
#include "model/shelf_flow.h"
#include "model/shortage_words.h"
#include <algorithm>
#include <array>
#include <map>
#include <numeric>
#include <set>

namespace model {
namespace {

using RuleSet = std::set<std::string>;
constexpr double thousandthsPerCm = 1000.0;
constexpr std::array ruleFamilies{"overruled", "keep",  "hot",    "hazard", "heavy",
                                  "reach",     "depth", "height", "storage"};

double inCm(std::int64_t thousandths) {
    return static_cast<double>(thousandths) / thousandthsPerCm;
}

/// Items that may stand in none but `places`, and the proof that these are too narrow for them.
struct Squeeze {
    std::vector<int> items, places;
    std::int64_t lack = 0;
};

/// Which rules keep which item out of which place, asked once.
class RuleTable {
public:
    explicit RuleTable(const Problem &problem) : m_problem(problem) {
        for (std::size_t i = 0; i < problem.items.size(); ++i) {
            m_rules.emplace_back();
            for (std::size_t p = 0; p < problem.places.size(); ++p)
                m_rules.back().push_back(placeRules(problem, static_cast<int>(i), static_cast<int>(p)));
        }
    }

    [[nodiscard]] bool mayStand(int i, int p, const RuleSet &dropped) const {
        const std::vector<std::string> &rules = m_rules[i][p];
        return std::all_of(rules.begin(), rules.end(),
                           [&](const std::string &rule) { return dropped.count(rule) > 0; });
    }

    /// Fractional bound over `items`: what is short, its lack 0 if all fits.
    [[nodiscard]] Squeeze squeeze(const std::vector<int> &items,
                                  const std::function<bool(int, int)> &mayStand) const {
        std::vector<std::int64_t> widths, rooms;
        for (const int i : items)
            widths.push_back(widthNeeded(m_problem, {i}));
        for (int p = 0; p < static_cast<int>(m_problem.places.size()); ++p)
            rooms.push_back(widthThere(m_problem, {p}));
        const ShelfFlow flow(widths, rooms, [&](int k, int p) { return mayStand(items[k], p); });
        Squeeze found{{}, flow.shortPlaces(), flow.left()};
        for (const int i : items)
            if (confined(i, found.places, mayStand))
                found.items.push_back(i);
        return found;
    }

private:
    [[nodiscard]] bool confined(int i, const std::vector<int> &places,
                                const std::function<bool(int, int)> &mayStand) const {
        for (int p = 0; p < static_cast<int>(m_problem.places.size()); ++p)
            if (mayStand(i, p) && !std::binary_search(places.begin(), places.end(), p))
                return false;
        return true;
    }

    const Problem &m_problem;
    std::vector<std::vector<std::vector<std::string>>> m_rules;
};

std::vector<int> itemsWithoutAnyPlace(const Problem &problem, const RuleTable &table) {
    std::vector<int> found;
    for (int i = 0; i < static_cast<int>(problem.items.size()); ++i) {
        bool somewhere = false;
        for (int p = 0; p < static_cast<int>(problem.places.size()); ++p)
            somewhere = somewhere || table.mayStand(i, p, {});
        if (!somewhere)
            found.push_back(i);
    }
    return found;
}

/// One shortage for all things that the same rules keep out of the same places: one sentence to listen to.
std::vector<ProblemShortage> nowhereToStand(const Problem &problem, const std::vector<int> &items) {
    using Key = std::pair<ProblemStorage, std::vector<std::vector<std::string>>>;
    std::map<Key, std::vector<int>> itemsByRules;
    for (const int i : items) {
        std::vector<std::vector<std::string>> rules;
        for (int p = 0; p < static_cast<int>(problem.places.size()); ++p)
            rules.push_back(placeRules(problem, i, p));
        itemsByRules[{problem.items[i].storage, rules}].push_back(i);
    }
    std::vector<ProblemShortage> found;
    for (const auto &[key, alike] : itemsByRules)
        found.push_back({easiestToMend(problem, alike.front()).front(), std::nullopt, std::nullopt, alike,
                         placesOfItsStorage(problem, alike.front()), nowhereSentence(problem, alike)});
    std::sort(found.begin(), found.end(),
              [](const ProblemShortage &a, const ProblemShortage &b) { return a.items < b.items; });
    return found;
}

/// Marks chosen by hand that the thing cannot carry wherever it may stand.
std::vector<ProblemShortage> marksThatDoNotHold(const Problem &problem, const RuleTable &table) {
    std::vector<ProblemShortage> found;
    for (int i = 0; i < static_cast<int>(problem.items.size()); ++i) {
        if (!problem.items[i].pinnedCode)
            continue;
        bool stands = false, holds = false;
        for (int p = 0; p < static_cast<int>(problem.places.size()); ++p) {
            stands = stands || table.mayStand(i, p, {});
            holds =
                holds || (table.mayStand(i, p, {}) && codeFits(problem, i, p, *problem.items[i].pinnedCode));
        }
        if (stands && !holds)
            found.push_back(
                {"marker", std::nullopt, std::nullopt, {i}, {}, markSentence(problem, "marker", {i})});
    }
    return found;
}

/// The families without which there would be room; the others are dropped one by one while the shortage
/// stays.
std::vector<std::string> rulesThatMatter(const RuleTable &table, const std::vector<int> &items,
                                         RuleSet &dropped) {
    std::vector<std::string> matter;
    for (const char *family : ruleFamilies) {
        RuleSet more = dropped;
        more.insert(family);
        if (table.squeeze(items, [&](int i, int p) { return table.mayStand(i, p, more); }).lack > 0)
            dropped = more;
        else
            matter.emplace_back(family);
    }
    return matter;
}

/// Items that can go without the shortage going, taken out one by one: what remains names the shortest
/// places.
std::vector<int> itemsThatMatter(const RuleTable &table, std::vector<int> items, const RuleSet &dropped) {
    for (std::size_t k = items.size(); k-- > 0;) {
        std::vector<int> fewer = items;
        fewer.erase(fewer.begin() + static_cast<std::ptrdiff_t>(k));
        if (table.squeeze(fewer, [&](int i, int p) { return table.mayStand(i, p, dropped); }).lack > 0)
            items = fewer;
    }
    return items;
}

ProblemShortage widthShortage(const Problem &problem, const RuleTable &table, const std::vector<int> &items) {
    RuleSet dropped;
    ProblemShortage shortage;
    const std::vector<std::string> rules = rulesThatMatter(table, items, dropped);
    const auto mayStand = [&](int i, int p) { return table.mayStand(i, p, dropped); };
    const std::vector<int> core = itemsThatMatter(table, items, dropped);
    shortage.places = table.squeeze(core, mayStand).places;
    for (const int i : items) { // all that compete for these places, not only enough of them to prove it
        bool confined = true;
        for (int p = 0; p < static_cast<int>(problem.places.size()); ++p)
            confined = confined &&
                       (!mayStand(i, p) || std::count(shortage.places.begin(), shortage.places.end(), p) > 0);
        if (confined)
            shortage.items.push_back(i);
    }
    shortage.rule = "width";
    shortage.needCm = inCm(widthNeeded(problem, shortage.items));
    shortage.haveCm = inCm(widthThere(problem, shortage.places));
    shortage.sentence = widthSentence(problem, shortage.items, shortage.places, rules);
    return shortage;
}

/// All independent shortages of width that the fractional bound proves.
std::vector<ProblemShortage> widthShortages(const Problem &problem, const RuleTable &table,
                                            std::vector<int> items) {
    std::vector<ProblemShortage> found;
    while (table.squeeze(items, [&](int i, int p) { return table.mayStand(i, p, {}); }).lack > 0) {
        found.push_back(widthShortage(problem, table, items));
        const std::vector<int> &named = found.back().items;
        items.erase(std::remove_if(items.begin(), items.end(),
                                   [&](int i) { return std::count(named.begin(), named.end(), i) > 0; }),
                    items.end());
    }
    return found;
}

/// Every choice of places for the chemicals, if they are few enough to try; the one that leaves least over,
/// if none fits.
std::optional<ProblemShortage> chemicalShortage(const Problem &problem, const RuleTable &table,
                                                const std::vector<int> &items) {
    constexpr std::size_t mostPlaces = 10;
    std::set<int> candidates;
    for (const int i : items)
        for (int p = 0; p < static_cast<int>(problem.places.size()); ++p)
            if (problem.items[i].klass == 'C' && table.mayStand(i, p, {}))
                candidates.insert(p);
    if (candidates.empty() || candidates.size() > mostPlaces)
        return std::nullopt;
    const std::vector<int> choices(candidates.begin(), candidates.end());
    std::optional<Squeeze> least;
    std::vector<int> leastChoice;
    for (unsigned bits = 1; bits < 1U << choices.size(); ++bits) {
        std::vector<int> chosen;
        for (std::size_t k = 0; k < choices.size(); ++k)
            if ((bits >> k & 1U) != 0)
                chosen.push_back(choices[k]);
        const Squeeze squeeze = table.squeeze(items, [&](int i, int p) {
            const bool chemical = std::count(chosen.begin(), chosen.end(), p) > 0;
            const bool isChemical = problem.items[i].klass == 'C';
            const bool free = !isChemical && !keptFromChemicals(problem.items[i]);
            return table.mayStand(i, p, {}) && (free || chemical == isChemical);
        });
        if (squeeze.lack == 0)
            return std::nullopt;
        if (!least || squeeze.lack < least->lack) {
            least = squeeze;
            leastChoice = chosen;
        }
    }
    return ProblemShortage{"chemical",
                           inCm(widthNeeded(problem, least->items)),
                           inCm(widthThere(problem, least->places)),
                           least->items,
                           least->places,
                           chemicalSentence(problem, least->items, least->places, leastChoice)};
}

std::vector<int> itemsIn(const Placement &placement, int p) {
    std::vector<int> found;
    for (int i = 0; i < static_cast<int>(placement.place.size()); ++i)
        if (placement.place[i] == p)
            found.push_back(i);
    return found;
}

/// What is wrong with the placement that breaks least.
std::vector<ProblemShortage> nearestArrangement(const Problem &problem) {
    const LastTry last = lastTry(SearchTables(problem));
    std::vector<ProblemShortage> found;
    if (last.found)
        return found;
    const Placement &nearest = last.nearest;
    for (const BrokenRule &broken : brokenRules(problem, nearest)) {
        if (broken.rule == "width") {
            const std::vector<int> items = itemsIn(nearest, broken.places.front());
            found.push_back({"width", inCm(widthNeeded(problem, items)),
                             inCm(widthThere(problem, broken.places)), items, broken.places,
                             overfullSentence(problem, items, broken.places.front())});
        } else if (broken.rule == "chemical") {
            found.push_back({"chemical", std::nullopt, std::nullopt, broken.items, broken.places,
                             mixedSentence(problem, broken.places.front())});
        } else if (broken.rule == "allergen") {
            found.push_back({"allergen", std::nullopt, std::nullopt, broken.items, broken.places,
                             allergenSentence(problem, broken.places.front())});
        } else if (broken.rule == "apart") {
            found.push_back({"apart", std::nullopt, std::nullopt, broken.items, broken.places,
                             nearSentence(problem, broken.items)});
        } else if (broken.rule == "alike" || broken.rule == "once" || broken.rule == "kinds" ||
                   broken.rule == "marker") {
            found.push_back({broken.rule, std::nullopt, std::nullopt, broken.items, broken.places,
                             markSentence(problem, broken.rule, broken.items)});
        }
    }
    return found;
}

} // namespace

std::vector<ProblemShortage> shortages(const Problem &problem) {
    const RuleTable table(problem);
    std::vector<int> rest(problem.items.size());
    std::iota(rest.begin(), rest.end(), 0);
    const std::vector<int> without = itemsWithoutAnyPlace(problem, table);
    std::vector<ProblemShortage> found = nowhereToStand(problem, without);
    for (const int i : without)
        rest.erase(std::find(rest.begin(), rest.end(), i));
    const std::vector<ProblemShortage> unmarked = marksThatDoNotHold(problem, table);
    found.insert(found.end(), unmarked.begin(), unmarked.end());
    const std::vector<ProblemShortage> narrow = widthShortages(problem, table, rest);
    found.insert(found.end(), narrow.begin(), narrow.end());
    if (!found.empty())
        return found;
    if (const std::optional<ProblemShortage> chemical = chemicalShortage(problem, table, rest))
        return {*chemical};
    return nearestArrangement(problem);
}

} // namespace model
