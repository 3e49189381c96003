#include "model/search_random.h"
#include "model/touch_test_result.h"
#include <algorithm>
#include <numeric>

namespace model {

namespace {

SearchRandom drawn(std::int64_t seed, std::int64_t question) {
    SearchRandom mixed(static_cast<std::uint64_t>(seed));
    return SearchRandom(mixed.next() * 0x9e3779b97f4a7c15U + static_cast<std::uint64_t>(question));
}

constexpr std::int64_t askNumbers = -1, askRecheck = -2;

std::vector<PairResult> acceptedPairs(const MarkerTestState &state) {
    std::vector<PairResult> pairs;
    const auto in = [&](std::size_t mark) { return std::ranges::count(state.accepted, mark) > 0; };
    for (const PairResult &pair : state.pairs)
        if (in(pair.first) && in(pair.second))
            pairs.push_back(pair);
    std::ranges::stable_sort(pairs, {}, &PairResult::good);
    return pairs;
}

} // namespace

Slots::Slots(const TouchTestRecord &test) : m_seed(test.seed), m_mark(2 * test.marks.size()) {
    for (std::size_t slot = 0; slot < m_mark.size(); ++slot)
        m_mark[slot] = slot / 2;
    SearchRandom random = drawn(m_seed, askNumbers);
    for (std::size_t slot = m_mark.size(); slot > 1; --slot)
        std::swap(m_mark[slot - 1], m_mark[static_cast<std::size_t>(random.below(static_cast<int>(slot)))]);
}

std::pair<int, int> Slots::forTrial(const GivenPair &given, int trial) const {
    const auto twins = [this](std::size_t mark) {
        std::vector<int> found;
        for (int slot = 1; slot <= count(); ++slot)
            if (markIn(slot) == mark)
                found.push_back(slot);
        return found;
    };
    SearchRandom random = drawn(m_seed, trial);
    const auto first = static_cast<std::size_t>(random.below(2));
    const std::size_t second = given.isCatch() ? 1 - first : static_cast<std::size_t>(random.below(2));
    return {twins(given.first)[first], twins(given.second)[second]};
}

TouchTestRecord onContainers(const TouchTestRecord &test, const MarkerTestState &state) {
    TouchTestRecord few = test;
    few.marks.clear();
    for (const std::size_t mark : state.accepted)
        few.marks.push_back(test.marks[mark]);
    return few;
}

std::optional<GivenPair> nextRecheck(const TouchTestRecord &test, const MarkerTestState &state) {
    const auto done = std::ranges::count_if(
        test.recheck, [](const TouchTrial &trial) { return trial.answer != TouchAnswer::Repeat; });
    const auto pairs = acceptedPairs(state);
    if (done >= recheckTrials || pairs.empty())
        return std::nullopt;
    SearchRandom random = drawn(test.seed, askRecheck - done);
    const bool turned = random.below(2) == 1;
    constexpr int catchEvery = 3;
    const int cycle = static_cast<int>(done) / catchEvery;
    const bool isCatch =
        static_cast<int>(done) % catchEvery == drawn(test.seed, askRecheck - cycle).below(catchEvery);
    const int pairNumber = static_cast<int>(done) - cycle;
    const PairResult &pair = pairs[static_cast<std::size_t>(pairNumber) % pairs.size()];
    if (isCatch) {
        const std::size_t mark = turned ? pair.second : pair.first;
        return GivenPair{mark, mark};
    }
    return turned ? GivenPair{pair.second, pair.first} : GivenPair{pair.first, pair.second};
}

} // namespace model
