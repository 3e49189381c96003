#include "model/mark_sets.h"
#include <algorithm>
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

constexpr double never = -std::numeric_limits<double>::infinity();

/// For every set the logarithm of the product over its pairs that are not accepted.
std::vector<double> logProducts(const std::vector<MarkSet> &accepted,
                                const std::vector<std::vector<double>> &good) {
    std::vector<std::vector<double>> logs(good);
    for (auto &row : logs)
        for (double &value : row)
            value = std::log(value);
    std::vector<double> products(one << accepted.size(), 0);
    for (MarkSet set = 1; set < products.size(); ++set) {
        const MarkSet rest = withoutLowest(set);
        const std::size_t first = lowest(set);
        products[set] = products[rest];
        for (MarkSet open = rest & ~accepted[first]; open != 0; open = withoutLowest(open))
            products[set] += logs[first][lowest(open)];
    }
    return products;
}

/// The set of this size with the highest score; of equal ones the one with the smallest indices.
MarkSet best(const std::vector<double> &scores, std::size_t size) {
    constexpr double same = 1e-12; // sums in another order differ by less
    MarkSet found = 0;
    for (MarkSet set = 1; set < scores.size(); ++set) {
        if (sizeOf(set) != size)
            continue;
        const bool first = found == 0;
        if (first || scores[set] > scores[found] + same ||
            (scores[set] > scores[found] - same && before(set, found)))
            found = set;
    }
    return found;
}

double bestWithOneMore(const std::vector<double> &logs, MarkSet set, std::size_t marks) {
    double most = never;
    for (std::size_t mark = 0; mark < marks; ++mark)
        if (((set >> mark) & one) == 0)
            most = std::max(most, logs[set | (one << mark)]);
    return most;
}

bool isWhole(MarkSet set, const std::vector<MarkSet> &accepted) {
    for (MarkSet left = set; left != 0; left = withoutLowest(left))
        if ((withoutLowest(left) & ~accepted[lowest(left)]) != 0)
            return false;
    return true;
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

MarkSet setOf(const std::vector<std::size_t> &marks) {
    MarkSet set = 0;
    for (const std::size_t mark : marks)
        set |= one << mark;
    return set;
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

MarkSet surestLargestSet(const std::vector<MarkSet> &accepted, const std::vector<std::vector<double>> &good) {
    std::vector<double> logs = logProducts(std::vector<MarkSet>(accepted.size(), 0), good);
    std::size_t size = 0;
    for (MarkSet set = 1; set < logs.size(); ++set) {
        if (isWhole(set, accepted))
            size = std::max(size, sizeOf(set));
        else
            logs[set] = never;
    }
    return best(logs, size);
}

LikelySet likeliestSet(const std::vector<MarkSet> &accepted, const std::vector<std::vector<double>> &good,
                       std::size_t size, double lookAhead) {
    assert(accepted.size() <= mostMarks && size <= accepted.size());
    const std::vector<double> logs = logProducts(accepted, good);
    const double mostProbable = std::exp(logs[best(logs, size)]);
    if (lookAhead <= 0 || size == accepted.size())
        return {best(logs, size), mostProbable};
    std::vector<double> scores(logs.size(), never);
    for (MarkSet set = 1; set < logs.size(); ++set)
        if (sizeOf(set) == size)
            scores[set] = logs[set] + lookAhead * bestWithOneMore(logs, set, accepted.size());
    return {best(scores, size), mostProbable};
}

} // namespace model
