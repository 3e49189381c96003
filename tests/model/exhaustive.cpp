#include "tests/model/exhaustive.h"

namespace model::fixtures {
namespace {

/// The next vector in order, each entry below `base`; false after the last.
bool advance(std::vector<int> &digits, int base) {
    for (std::size_t k = digits.size(); k-- > 0;) {
        if (++digits[k] < base)
            return true;
        digits[k] = 0;
    }
    return false;
}

} // namespace

Exhausted tryEverything(const Problem &problem) {
    const std::vector<int> zeros(problem.items.size(), 0);
    std::vector<int> chosen; // none, but for marks that are not free to choose
    for (const ProblemItem &item : problem.items)
        chosen.push_back(item.pinnedCode.value_or(0));
    Exhausted exhausted;
    Placement placement{zeros, zeros};
    do {
        placement.code = chosen;
        if (!brokenRules(problem, placement).empty())
            continue; // codes mend nothing
        placement.code = zeros;
        do {
            if (!brokenRules(problem, placement).empty())
                continue;
            ++exhausted.legal;
            const MilliMinutes total = evaluate(problem, placement).total();
            if (exhausted.best && total >= exhausted.total)
                continue;
            exhausted.best = placement;
            exhausted.total = total;
        } while (advance(placement.code, static_cast<int>(problem.markers.size()) + 1));
    } while (advance(placement.place, static_cast<int>(problem.places.size())));
    return exhausted;
}

} // namespace model::fixtures
