#include "model/mark_sets.h"
#include <bit>
#include <cassert>
#include <cmath>
#include <limits>

namespace model {

namespace {

constexpr MarkSet one = 1;

std::size_t lowest(MarkSet set) {
    return static_cast<std::size_t>(std::countr_zero(set));
}

MarkSet withoutLowest(MarkSet set) {
    return set & (set - 1);
}

/// True if the indices of `a` come before those of `b`; both of one size.
bool before(MarkSet a, MarkSet b) {
    return a != b && ((a >> lowest(a ^ b)) & one) != 0;
}

} // namespace

std::vector<std::size_t> marksOf(MarkSet set) {
    std::vector<std::size_t> marks;
    for (; set != 0; set = withoutLowest(set))
        marks.push_back(lowest(set));
    return marks;
}

std::size_t sizeOf(MarkSet set) {
    return static_cast<std::size_t>(std::popcount(set));
}

MarkSet largestSet(const std::vector<MarkSet> &accepted) {
    assert(accepted.size() <= mostMarks);
    const MarkSet end = one << accepted.size();
    std::vector<bool> whole(end, true); // every pair accepted
    MarkSet best = 0;
    for (MarkSet set = 1; set < end; ++set) {
        const MarkSet rest = withoutLowest(set);
        whole[set] = whole[rest] && (rest & ~accepted[lowest(set)]) == 0;
        if (whole[set] && (sizeOf(set) > sizeOf(best) || (sizeOf(set) == sizeOf(best) && before(set, best))))
            best = set;
    }
    return best;
}

LikelySet likeliestSet(const std::vector<MarkSet> &accepted, const std::vector<std::vector<double>> &good,
                       std::size_t size) {
    assert(accepted.size() <= mostMarks && size <= accepted.size());
    constexpr double same = 1e-12; // sums in another order differ by less
    const MarkSet end = one << accepted.size();
    std::vector<double> logs(end, 0);
    MarkSet best = 0;
    double most = -std::numeric_limits<double>::infinity();
    for (MarkSet set = 1; set < end; ++set) {
        const MarkSet rest = withoutLowest(set);
        const std::size_t first = lowest(set);
        logs[set] = logs[rest];
        for (MarkSet open = rest & ~accepted[first]; open != 0; open = withoutLowest(open))
            logs[set] += std::log(good[first][lowest(open)]);
        if (sizeOf(set) != size)
            continue;
        if (best == 0 || logs[set] > most + same || (logs[set] > most - same && before(set, best))) {
            best = set;
            most = logs[set];
        }
    }
    return {best, best == 0 ? 0 : std::exp(most)};
}

} // namespace model
