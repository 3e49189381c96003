#include "model/marker_test.h"
#include "model/search_random.h"
#include "model/sentence.h"
#include <algorithm>
#include <cmath>

namespace model {

namespace {

constexpr int directTrials = 2; // answered trials of its own before a pair is accepted
constexpr int firstBlock = 8, catchesInFirst = 4, laterBlock = 9;
constexpr int catchesWatched = 8, mostDifferent = 2, varyingGoOnTo = 60;

/// One number for a question about one trial; the same on every computer.
SearchRandom randomOf(std::uint64_t seed, int trial, std::uint64_t question) {
    SearchRandom mixed(seed * 0x9e3779b97f4a7c15U + question);
    const std::uint64_t high = mixed.next();
    const std::uint64_t low = mixed.next();
    return SearchRandom(((high << 32U) | low) + static_cast<std::uint64_t>(trial) * 0xd1342543de82ef95U);
}
constexpr std::uint64_t askOrder = 1, askCatchMark = 2, askCatchPlace = 3;

struct Goodness {
    std::vector<MarkSet> accepted;         // by mark
    std::vector<std::vector<double>> good; // by mark and mark
};

Goodness goodnessOf(std::size_t marks, const std::vector<PairResult> &pairs) {
    Goodness all{std::vector<MarkSet>(marks, 0),
                 std::vector<std::vector<double>>(marks, std::vector<double>(marks, 0))};
    for (const PairResult &pair : pairs) {
        all.good[pair.first][pair.second] = all.good[pair.second][pair.first] = pair.good;
        if (!pair.accepted)
            continue;
        all.accepted[pair.first] |= MarkSet{1} << pair.second;
        all.accepted[pair.second] |= MarkSet{1} << pair.first;
    }
    return all;
}

bool within(const PairResult &pair, MarkSet set) {
    return ((set >> pair.first) & (set >> pair.second) & 1U) != 0;
}

bool anyOf(const std::vector<bool> &asked) {
    return std::ranges::find(asked, true) != asked.end();
}

/// The set's pairs that are not accepted; all of them if they are, or if all are to be asked about.
std::vector<bool> openPairs(const std::vector<PairResult> &pairs, MarkSet set, bool all) {
    std::vector<bool> whole(pairs.size(), false);
    std::vector<bool> open(pairs.size(), false);
    for (std::size_t i = 0; i < pairs.size(); ++i) {
        whole[i] = within(pairs[i], set);
        open[i] = whole[i] && !pairs[i].accepted;
    }
    return all || !anyOf(open) ? whole : open;
}

std::optional<PairResult> weakestWithin(const std::vector<PairResult> &pairs, MarkSet set) {
    std::optional<PairResult> weakest;
    for (const PairResult &pair : pairs)
        if (within(pair, set) && (!weakest || pair.good < weakest->good))
            weakest = pair;
    return weakest;
}

bool samePair(const GivenPair &given, const PairResult &pair) {
    return std::minmax(given.first, given.second) == std::minmax(pair.first, pair.second);
}

bool isFeature(double value) {
    return std::abs(value) <= 50; // false for what is no number
}

} // namespace

Result<void> checkSetup(const MarkerTestSetup &setup) {
    if (setup.marks.size() < 2 || setup.marks.size() > mostMarks)
        return fail(ErrorCode::OutOfRange,
                    Sentence::tr("A marker test takes 2 to 16 marks, this one has {1}. Choose again.",
                                 {std::to_string(setup.marks.size())}));
    for (const MarkFeatures &mark : setup.marks)
        if (!isFeature(mark.size) || !isFeature(mark.height) || !isFeature(mark.texture))
            return fail(ErrorCode::OutOfRange,
                        Sentence::tr("Size, height and texture of a mark go from -50 to 50 steps."));
    if (setup.limit < 1 || setup.limit > 1000)
        return fail(ErrorCode::OutOfRange, Sentence::tr("The limit of trials goes from 1 to 1000. Try 160."));
    if (!(setup.credible >= 0.5 && setup.credible <= 0.999))
        return fail(ErrorCode::OutOfRange, Sentence::tr("The certainty goes from 0.5 to 0.999. Try 0.9."));
    return {};
}

bool isCatchTrial(std::uint64_t seed, int trial) {
    if (trial >= firstBlock) {
        const int block = (trial - firstBlock) / laterBlock;
        return randomOf(seed, block, askCatchPlace).below(laterBlock) == (trial - firstBlock) % laterBlock;
    }
    SearchRandom random = randomOf(seed, -1, askCatchPlace);
    int open = catchesInFirst;
    for (int place = 0; place < trial; ++place)
        open -= random.below(firstBlock - place) < open ? 1 : 0;
    return random.below(firstBlock - trial) < open;
}

MarkerTest::MarkerTest(MarkerTestSetup setup)
    : m_setup(std::move(setup)), m_posterior(m_setup.marks, m_setup.rules.model),
      m_counts(m_posterior.pairCount()) {}

void MarkerTest::add(const MarkerAnswer &answer) {
    if (answer.answer == TouchAnswer::Repeat)
        return;
    ++m_trials;
    m_lastUnsure.reset();
    const bool isCatch = answer.given.isCatch();
    m_catches += isCatch ? 1 : 0;
    if (answer.answer == TouchAnswer::Unsure) {
        m_lastUnsure = answer.given;
        return;
    }
    const bool different = answer.answer == TouchAnswer::Different;
    m_posterior.answer(answer.given.first, answer.given.second, !different);
    if (isCatch) {
        m_catchesDifferent += different && m_catches <= catchesWatched ? 1 : 0;
        ++m_catchesAnswered;
        m_catchesSame += different ? 0 : 1;
        return;
    }
    Count &count = m_counts[m_posterior.pairOf(answer.given.first, answer.given.second)];
    ++count.answered;
    count.different += different ? 1 : 0;
}

std::vector<PairResult> MarkerTest::pairs(double credible) const {
    std::vector<PairResult> all;
    for (std::size_t a = 0; a < m_posterior.markCount(); ++a)
        for (std::size_t b = a + 1; b < m_posterior.markCount(); ++b) {
            const std::size_t pair = m_posterior.pairOf(a, b);
            PairResult result{.first = a,
                              .second = b,
                              .trials = m_counts[pair].answered,
                              .different = m_counts[pair].different,
                              .good = m_posterior.good(pair),
                              .confusion = m_posterior.confusion(pair)};
            result.accepted = result.good >= credible && result.trials >= directTrials && !tellNothing();
            all.push_back(result);
        }
    return all;
}

/// Who calls the same mark different nearly every time says "different" to everything: that tells nothing of
/// any pair. The share is a default of this program.
bool MarkerTest::tellNothing() const {
    constexpr int oneIn = 10;
    return m_catchesAnswered >= catchesWatched && oneIn * m_catchesSame <= m_catchesAnswered;
}

/// The first catch trials come before any verdict, and where answers vary many more trials do.
bool MarkerTest::earlyEndAllowed(const MarkerTestState &state) const {
    return m_trials >= (state.answersVary ? varyingGoOnTo : firstBlock);
}

double MarkerTest::credibleFor(double sensitivity, double felt) const {
    double credible = m_setup.credible;
    for (const RaisedCredible &step : m_setup.rules.raised)
        if (sensitivity < step.below)
            credible = std::max(credible, step.credible);
    for (const RaisedCredible &step : m_setup.rules.raisedByFelt)
        if (felt < step.below)
            credible = std::max(credible, step.credible);
    return credible;
}

MarkerTestState MarkerTest::state() const {
    MarkerTestState state;
    state.trials = m_trials;
    state.sensitivity = m_posterior.sensitivity();
    state.credible = credibleFor(state.sensitivity, m_posterior.felt());
    state.raised = state.credible > m_setup.credible;
    state.answersVary = m_catchesDifferent > mostDifferent;
    state.tellNothing = tellNothing();
    state.pairs = pairs(state.credible);
    const Goodness goodness = goodnessOf(m_posterior.markCount(), state.pairs);
    const MarkSet best = m_setup.rules.surestSet ? surestLargestSet(goodness.accepted, goodness.good)
                                                 : largestSet(goodness.accepted);
    state.accepted = marksOf(best);
    state.weakest = weakestWithin(state.pairs, best);
    const LikelySet target = targetOf(state);
    state.end = endOf(state, target);
    if (!state.end)
        state.next = nextTrial(state, target);
    return state;
}

/// The set to be reached next: one mark larger; all marks if every pair is accepted.
LikelySet MarkerTest::targetOf(const MarkerTestState &state) const {
    const std::size_t marks = m_posterior.markCount();
    const Goodness goodness = goodnessOf(marks, state.pairs);
    const std::size_t size = std::min(marks, state.accepted.size() + 1);
    const std::vector<MarkSet> none(marks, 0);
    return likeliestSet(m_setup.rules.wholeTarget ? none : goodness.accepted, goodness.good, size,
                        m_setup.rules.lookAhead);
}

std::optional<MarkerTestEnd> MarkerTest::endOf(const MarkerTestState &state, const LikelySet &target) const {
    if (m_stopped)
        return MarkerTestEnd::Stopped;
    if (m_trials >= m_setup.limit)
        return MarkerTestEnd::Limit;
    if (!earlyEndAllowed(state))
        return std::nullopt;
    if (state.tellNothing)
        return MarkerTestEnd::NoLargerSet;
    if (state.accepted.size() == m_posterior.markCount())
        return MarkerTestEnd::AllIn;
    if (target.mostProbable < m_setup.rules.noLargerSetBelow && !anyOf(toConfirm(state)))
        return MarkerTestEnd::NoLargerSet;
    return std::nullopt;
}

/// Pairs of the accepted set to be made surer, at the end of the test or when no larger set is likely; none
/// if all are sure enough.
std::vector<bool> MarkerTest::toConfirm(const MarkerTestState &state) const {
    std::vector<bool> asked(state.pairs.size(), false);
    if (!state.weakest)
        return asked;
    const MarkSet set = setOf(state.accepted);
    for (std::size_t i = 0; i < state.pairs.size(); ++i)
        asked[i] = within(state.pairs[i], set) && state.pairs[i].good < m_setup.rules.confirmTo;
    return asked;
}

GivenPair MarkerTest::nextTrial(const MarkerTestState &state, const LikelySet &target) const {
    if (isCatchTrial(m_setup.seed, m_trials)) {
        const int marks = static_cast<int>(m_posterior.markCount());
        const int mark = randomOf(m_setup.seed, m_trials, askCatchMark).below(marks);
        return {static_cast<std::size_t>(mark), static_cast<std::size_t>(mark)};
    }
    const bool last = m_setup.limit - m_trials <= m_setup.rules.confirmLast;
    const bool smaller = target.mostProbable < m_setup.rules.noLargerSetBelow;
    std::vector<bool> asked =
        last || smaller ? toConfirm(state) : std::vector<bool>(state.pairs.size(), false);
    if (!anyOf(asked))
        asked = openPairs(state.pairs, target.marks, m_setup.rules.wholeTarget);
    return nextPair(state.pairs, asked);
}

/// Of the pairs asked about the one that tells most; one that was just left unsure waits a trial if it can.
GivenPair MarkerTest::nextPair(const std::vector<PairResult> &pairs, const std::vector<bool> &asked) const {
    constexpr double same = 1e-12;
    const PairResult *best = nullptr;
    const PairResult *waiting = nullptr;
    double most = 0;
    std::vector<std::size_t> all;
    for (std::size_t i = 0; i < pairs.size() && m_setup.rules.sharedInformation; ++i)
        if (asked[i])
            all.push_back(m_posterior.pairOf(pairs[i].first, pairs[i].second));
    for (std::size_t i = 0; i < pairs.size(); ++i) {
        const PairResult &pair = pairs[i];
        if (!asked[i])
            continue;
        if (m_lastUnsure && samePair(*m_lastUnsure, pair)) {
            waiting = &pair;
            continue;
        }
        const double bits = m_posterior.information(m_posterior.pairOf(pair.first, pair.second), all);
        if (!best || bits > most + same) {
            best = &pair;
            most = bits;
        }
    }
    const PairResult &chosen = best ? *best : *waiting;
    const bool turned = randomOf(m_setup.seed, m_trials, askOrder).below(2) == 1;
    return turned ? GivenPair{chosen.second, chosen.first} : GivenPair{chosen.first, chosen.second};
}

Result<MarkerTestState> replay(const MarkerTestSetup &setup, const std::vector<MarkerAnswer> &log,
                               bool stopped) {
    if (const auto checked = checkSetup(setup); !checked)
        return tl::unexpected(checked.error());
    MarkerTest test(setup);
    for (const MarkerAnswer &answer : log) {
        if (std::max(answer.given.first, answer.given.second) >= setup.marks.size())
            return fail(ErrorCode::OutOfRange,
                        Sentence::tr("The log of this marker test names a mark that is not in it."));
        test.add(answer);
    }
    if (stopped)
        test.stop();
    return test.state();
}

} // namespace model
