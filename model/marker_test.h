#pragma once
#include "model/mark_sets.h"
#include "model/marker_posterior.h"
#include "model/result.h"
#include <cstdint>
#include <optional>
#include <vector>

/// The marker test: which marks can this client tell apart? Marks are given in pairs, one after the other,
/// the client says "same" or "different". A pure value: the same setup and the same answers give the same
/// next pair and the same result, so that a log is the test, taking back is dropping its last line, and a
/// pause is nothing.
namespace model {

struct MarkerAnswer {
    GivenPair given;
    TouchAnswer answer{};
    friend bool operator==(const MarkerAnswer &, const MarkerAnswer &) = default;
};

/// Below a posterior mean of `below` the program asks for `credible` by itself.
struct RaisedCredible {
    double below = 0, credible = 0;
    friend bool operator==(const RaisedCredible &, const RaisedCredible &) = default;
};

/// How pairs are chosen and accepted. The defaults are what the simulation in tests/simulation found best;
/// other values are for that simulation.
struct MarkerRules {
    MarkerModel model = {};
    double noLargerSetBelow = 0.02; // a test ends if no larger set is more probable than this
    double lookAhead = 1;           // weight of the best set one mark larger still, when a set is aimed at
    bool surestSet = true;          // of equally large sets take the surest, not the one of smallest indices
    bool sharedInformation = true;  // the next pair tells most of all pairs asked about, not of itself alone
    std::vector<RaisedCredible> raised{{0.6, 0.95}}; // by sensitivity, lowest first
    std::vector<RaisedCredible> raisedByFelt = {};   // by the share felt of all features, lowest first
    bool wholeTarget = false; // a set to aim at counts with all its pairs, accepted or not
    int confirmLast = 0;      // the last trials go to pairs of the accepted set
    double confirmTo = 0;     // that are less sure than this, as do those when no larger set is likely
    friend bool operator==(const MarkerRules &, const MarkerRules &) = default;
};

/// What a test starts with.
struct MarkerTestSetup {
    std::vector<MarkFeatures> marks;
    std::uint64_t seed = 1; // order within a pair, places and marks of the catch trials
    int limit = 160;        // trials
    double credible = 0.90; // probability that a pair is good, from which on it is accepted
    MarkerRules rules = {};
    friend bool operator==(const MarkerTestSetup &, const MarkerTestSetup &) = default;
};
/// Fails with OutOfRange unless there are 2 to 16 marks with features of -50 to 50 steps, a limit of 1 to
/// 1000 and `credible` within 0.5 to 0.999.
[[nodiscard]] Result<void> checkSetup(const MarkerTestSetup &setup);

enum class MarkerTestEnd {
    Limit,       // as many trials as were agreed
    AllIn,       // every pair is accepted
    NoLargerSet, // a larger set is not likely
    Stopped,     // by client or therapist
};

struct PairResult {
    std::size_t first = 0, second = 0; // first < second
    int trials = 0;                    // answered same or different
    int different = 0;
    double good = 0;      // probability that it is confused in less than 5 of 100
    double confusion = 0; // posterior mean
    bool accepted = false;
    friend bool operator==(const PairResult &, const PairResult &) = default;
};

/// All that can be said after some answers.
struct MarkerTestState {
    std::optional<GivenPair> next; // none: the test is at its end
    std::optional<MarkerTestEnd> end;
    std::vector<PairResult> pairs;     // by first, then second
    std::vector<std::size_t> accepted; // largest set of which every pair is accepted
    std::optional<PairResult> weakest; // of the accepted set; none if it is no pair
    int trials = 0;                    // all that count: unsure does, repeat does not
    double sensitivity = 1;            // posterior mean
    double credible = 0.90;            // in force
    bool raised = false;               // because the sensitivity is low
    bool answersVary = false;          // "different" to more than 2 of the first 8 catch trials
    bool tellNothing = false;          // "different" to nearly all catch trials: no pair is accepted
    friend bool operator==(const MarkerTestState &, const MarkerTestState &) = default;
};

/// Asked for where reduced feeling in the hands is known beforehand.
inline constexpr double raisedCredible = 0.95;

/// A test under way. Keeps what is known so far, so that the next pair is found at once.
class MarkerTest {
public:
    /// `setup` has passed checkSetup().
    explicit MarkerTest(MarkerTestSetup setup);
    /// `given` is of this setup's marks.
    void add(const MarkerAnswer &answer);
    /// Client or therapist ends it.
    void stop() { m_stopped = true; }
    [[nodiscard]] MarkerTestState state() const;

private:
    struct Count {
        int answered = 0, different = 0;
    };
    [[nodiscard]] std::vector<PairResult> pairs(double credible) const;
    [[nodiscard]] double credibleFor(double sensitivity, double felt) const;
    [[nodiscard]] LikelySet targetOf(const MarkerTestState &state) const;
    [[nodiscard]] std::optional<MarkerTestEnd> endOf(const MarkerTestState &state,
                                                     const LikelySet &target) const;
    [[nodiscard]] GivenPair nextTrial(const MarkerTestState &state, const LikelySet &target) const;
    [[nodiscard]] GivenPair nextPair(const std::vector<PairResult> &pairs,
                                     const std::vector<bool> &asked) const;
    [[nodiscard]] std::vector<bool> toConfirm(const MarkerTestState &state) const;
    [[nodiscard]] bool tellNothing() const;
    [[nodiscard]] bool earlyEndAllowed(const MarkerTestState &state) const;

    MarkerTestSetup m_setup;
    MarkerPosterior m_posterior;
    std::vector<Count> m_counts; // by pair
    std::optional<GivenPair> m_lastUnsure;
    int m_trials = 0;
    int m_catches = 0, m_catchesDifferent = 0;    // different: of the first 8
    int m_catchesAnswered = 0, m_catchesSame = 0; // of all
    bool m_stopped = false;
};

/// The state after a log. Fails as checkSetup(), or with OutOfRange for an answer to a mark that is not
/// there.
[[nodiscard]] Result<MarkerTestState> replay(const MarkerTestSetup &setup,
                                             const std::vector<MarkerAnswer> &log, bool stopped);

/// True if trial `trial`, from 0, is a catch trial: 4 of the first 8, then 1 of every 9, at places drawn from
/// the seed.
[[nodiscard]] bool isCatchTrial(std::uint64_t seed, int trial);

} // namespace model
