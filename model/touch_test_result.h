#pragma once
#include "model/case.h"
#include "model/marker_test.h"
#include <optional>
#include <string>
#include <utility>
#include <vector>

/// From the record of a marker test to what it means.
namespace model {

/// A test of these marks of the kit, and of the bare surface if `withBlank`. Certainty 0.95 where reduced
/// feeling in the hands is told, measured or not asked about, else 0.90.
[[nodiscard]] TouchTestRecord newTouchTest(const Case &record, const std::vector<std::string> &keys,
                                           bool withBlank, std::int64_t seed);

[[nodiscard]] MarkerTestSetup setupOf(const TouchTestRecord &test);
/// The state after its log. Fails like replay().
[[nodiscard]] Result<MarkerTestState> stateOf(const TouchTestRecord &test);
/// The newest test that came to its end, or nullptr.
[[nodiscard]] const TouchTestRecord *endedTouchTest(const Case &record);
/// The newest test if it is still under way, or nullptr.
[[nodiscard]] const TouchTestRecord *openTouchTest(const Case &record);

/// What the test says of each pair of marks, for the plan.
[[nodiscard]] MeasuredConfusion confusionOf(const TouchTestRecord &test, const MarkerTestState &state);

/// "A larger set is not likely."
[[nodiscard]] std::string wordsOf(MarkerTestEnd end);
/// Kit keys of the accepted set without the blank; empty unless it is a pair of marks or one mark against
/// the blank.
[[nodiscard]] std::vector<std::string> acceptedKeys(const TouchTestRecord &test,
                                                    const MarkerTestState &state);
/// The result in one or two plain sentences: set, weakest pair with its probability, what ended the test.
[[nodiscard]] std::string resultInWords(const Case &record, const TouchTestRecord &test,
                                        const MarkerTestState &state);
/// "ridge and felt square: 2 of 100; 0.97 sure, 6 trials, accepted"
[[nodiscard]] std::string pairInWords(const Case &record, const TouchTestRecord &test,
                                      const PairResult &pair);
/// Name of a mark of the test; "bare surface" for the blank.
[[nodiscard]] std::string markName(const Case &record, const TestedMark &mark);

/// Slots of the tray: every mark lies in two, numbered at random from the seed, so that a number says
/// nothing.
class Slots {
public:
    explicit Slots(const TouchTestRecord &test);
    [[nodiscard]] int count() const { return static_cast<int>(m_mark.size()); }
    /// The mark in a slot, from 1.
    [[nodiscard]] std::size_t markIn(int slot) const { return m_mark[static_cast<std::size_t>(slot) - 1]; }
    /// Slots to take the two marks of a trial from; which of the twin slots comes from the seed and the
    /// number of the trial.
    [[nodiscard]] std::pair<int, int> forTrial(const GivenPair &given, int trial) const;

private:
    std::int64_t m_seed;
    std::vector<std::size_t> m_mark;
};

inline constexpr int recheckTrials = 10;
/// The pair to give next in the recheck on real containers: pairs of the accepted set in turn, the weakest
/// first, every third time the same mark twice. None when ten are done or there is no pair.
[[nodiscard]] std::optional<GivenPair> nextRecheck(const TouchTestRecord &test, const MarkerTestState &state);
/// The test with its accepted marks alone: what lies on the containers of the recheck.
[[nodiscard]] TouchTestRecord onContainers(const TouchTestRecord &test, const MarkerTestState &state);
/// "9 of 10 right." with what to do about it.
[[nodiscard]] std::string recheckInWords(const TouchTestRecord &test);

} // namespace model
