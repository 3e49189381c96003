#include "model/coefficients.h"
#include "model/search_state.h"
#include "model/solve.h"
#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <set>

namespace model {
namespace {

struct Line {
    int place = 0, code = 0;
    friend bool operator==(const Line &, const Line &) = default;
};

/// What the line would add there; the state is as before afterwards.
SearchCost lineDelta(SearchState &state, int i, const Line &line) {
    const Line here{state.place(i), state.code(i)};
    const SearchCost before = state.total();
    state.put(i, line.place);
    state.setCode(i, line.code);
    const SearchCost delta = state.total() - before;
    state.setCode(i, here.code);
    state.put(i, here.place);
    return delta;
}

std::optional<Line> cheapestOther(SearchState &state, int i, bool elsewhere) {
    const SearchTables &tables = state.tables();
    const Line here{state.place(i), state.code(i)};
    std::optional<Line> best;
    std::int64_t least = 0;
    for (const int p : tables.allowedPlaces[i])
        for (const int c : tables.allowedCodes[i]) {
            const Line line{p, c};
            if (line == here || (elsewhere && p == here.place))
                continue;
            const SearchCost delta = lineDelta(state, i, line);
            if (delta.penalty > 0 || (best && delta.cost >= least))
                continue;
            best = line;
            least = delta.cost;
        }
    return best;
}

void findSwap(SearchState &state, int i, LineReason &reason) {
    const SearchTables &tables = state.tables();
    const int p = state.place(i);
    for (int j = 0; j < tables.items; ++j) {
        const int q = state.place(j);
        if (q == p || tables.allowed[i * tables.places + q] == 0 ||
            tables.allowed[j * tables.places + p] == 0)
            continue;
        const SearchCost before = state.total();
        state.put(i, q);
        state.put(j, p);
        const SearchCost delta = state.total() - before;
        state.put(j, q);
        state.put(i, p);
        if (delta.penalty > 0 || (reason.swapWith && delta.cost >= reason.swapPrice))
            continue;
        reason.swapWith = j;
        reason.swapPrice = delta.cost;
    }
}

/// Rules between things that keep `i` out of `p`, which it could have to itself.
std::vector<std::string> fellowRules(const Problem &problem, const Placement &placement,
                                     const std::vector<std::vector<int>> &near, int i, int p) {
    std::int64_t load = shelfWidth(problem.items[i]);
    std::set<std::string> sharing;
    for (int j = 0; j < static_cast<int>(problem.items.size()); ++j) {
        if (j == i || placement.place[j] != p)
            continue;
        load += shelfWidth(problem.items[j]);
        if (const std::string rule = sharingRule(problem, i, j); !rule.empty())
            sharing.insert(rule);
    }
    std::vector<std::string> rules;
    if (load > thousandths(problem.places[p].widthCm))
        rules.emplace_back("width");
    rules.insert(rules.end(), sharing.begin(), sharing.end());
    const bool tooNear = std::any_of(problem.apart.begin(), problem.apart.end(), [&](const auto &pair) {
        const int other = pair.first == i ? pair.second : pair.first;
        return (pair.first == i || pair.second == i) && near[p][placement.place[other]] > 0;
    });
    if (tooNear)
        rules.emplace_back("apart");
    return rules;
}

void findImpossible(const Problem &problem, const Placement &placement, int i, LineReason &reason) {
    const std::vector<std::vector<int>> near = nearQuarters(problem);
    for (int p = 0; p < static_cast<int>(problem.places.size()); ++p) {
        if (p == placement.place[i])
            continue;
        std::vector<std::string> rules = placeRules(problem, i, p);
        if (rules.empty())
            rules = fellowRules(problem, placement, near, i, p);
        if (!rules.empty())
            reason.impossible.emplace_back(p, rules);
    }
}

/// The parts of the item-place coefficient are rounded together in the objective; here each is shown by
/// itself, and the largest takes up the difference, so that the parts add up.
void addPlaceTerms(const Problem &problem, int i, int from, int to, std::vector<LineReason::Term> &terms) {
    const ItemPlaceParts here = itemPlaceParts(problem, i, from), there = itemPlaceParts(problem, i, to);
    std::vector<LineReason::Term> parts{{"reach", toMilli(there.reach - here.reach)},
                                        {"walk", toMilli(there.walk - here.walk)},
                                        {"dark", toMilli(there.dark - here.dark)},
                                        {"move", toMilli(there.move - here.move)}};
    MilliMinutes rest = itemPlaceCost(problem, i, to) - itemPlaceCost(problem, i, from);
    for (const LineReason::Term &part : parts)
        rest -= part.difference;
    std::max_element(parts.begin(), parts.end(), [](const auto &a, const auto &b) {
        return std::abs(a.difference) < std::abs(b.difference);
    })->difference += rest;
    terms.insert(terms.end(), parts.begin(), parts.end());
}

std::vector<LineReason::Term> differences(const Problem &problem, const Placement &placement, int i,
                                          const Line &other) {
    Placement changed = placement;
    changed.place[i] = other.place;
    changed.code[i] = other.code;
    const Terms before = evaluateAround(problem, placement, i), after = evaluateAround(problem, changed, i);
    std::vector<LineReason::Term> terms;
    addPlaceTerms(problem, i, placement.place[i], other.place, terms);
    terms.push_back({"group", after.bay - before.bay});
    terms.push_back({"shelf-mates", after.place - before.place});
    terms.push_back({"learning", after.type - before.type});
    terms.push_back({"marking", after.mark - before.mark});
    terms.push_back({"wrong picks", after.risk - before.risk});
    terms.erase(
        std::remove_if(terms.begin(), terms.end(), [](const auto &term) { return term.difference == 0; }),
        terms.end());
    std::stable_sort(terms.begin(), terms.end(), [](const auto &a, const auto &b) {
        return std::abs(a.difference) > std::abs(b.difference);
    });
    return terms;
}

} // namespace

LineReasons::LineReasons(Problem problem) : m_problem(std::move(problem)) {
    Problem plain = m_problem; // without the charge for changing a line
    plain.shownPlace.clear();
    m_tables = std::make_shared<const SearchTables>(plain);
}

LineReason LineReasons::of(const Placement &placement, int i) const {
    return against(placement, i, false);
}

LineReason LineReasons::elsewhere(const Placement &placement, int i) const {
    LineReason other = against(placement, i, true);
    return other.runnerUpPlace ? other : of(placement, i);
}

LineReason LineReasons::against(const Placement &placement, int i, bool elsewhere) const {
    SearchState state(*m_tables);
    state.load(placement);
    LineReason reason;
    findImpossible(m_problem, placement, i, reason);
    findSwap(state, i, reason);
    const std::optional<Line> other = cheapestOther(state, i, elsewhere);
    if (!other)
        return reason;
    reason.runnerUpPlace = other->place;
    reason.runnerUpCode = other->code;
    reason.terms = differences(m_problem, placement, i, *other);
    for (const LineReason::Term &term : reason.terms)
        reason.price += term.difference;
    return reason;
}

LineReason reason(const Problem &problem, const Placement &placement, int i) {
    return LineReasons(problem).of(placement, i);
}

} // namespace model
