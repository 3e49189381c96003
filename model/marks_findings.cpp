#include "model/findings_parts.h"
#include "model/kit.h"
#include "model/read_measurement.h"
#include "model/sentence.h"
#include "model/touch_test_result.h"
#include <algorithm>

namespace model {

namespace {

constexpr double confusionLimit = 0.05;

bool apart(const Marker &a, const Marker &b, double sensitivity) {
    return confusion(a, b, sensitivity) < confusionLimit && confusion(b, a, sensitivity) < confusionLimit;
}

/// The largest set of the marks in which every pair is told apart and none is missed; of equal sets the first
/// found.
class LargestSet {
public:
    LargestSet(const std::vector<const Marker *> &marks, double sensitivity)
        : m_marks(marks), m_sensitivity(sensitivity) {
        std::vector<const Marker *> chosen;
        extend(0, chosen);
    }
    [[nodiscard]] const std::vector<const Marker *> &best() const { return m_best; }

private:
    void extend(std::size_t from, std::vector<const Marker *> &chosen) {
        if (chosen.size() > m_best.size())
            m_best = chosen;
        for (std::size_t i = from; i < m_marks.size(); ++i) {
            const bool fits = std::all_of(chosen.begin(), chosen.end(), [&](const Marker *other) {
                return apart(*m_marks[i], *other, m_sensitivity);
            });
            if (!fits)
                continue;
            chosen.push_back(m_marks[i]);
            extend(i + 1, chosen);
            chosen.pop_back();
        }
    }

    const std::vector<const Marker *> &m_marks;
    double m_sensitivity;
    std::vector<const Marker *> m_best;
};

std::string names(const Case &record, const std::vector<std::string> &keys) {
    std::string words;
    for (const std::string &key : keys) {
        const Marker *marker = markerIn(record, key);
        words += (words.empty() ? "" : ", ") + (marker ? marker->name : key);
    }
    return words;
}

std::string onlyOne(const Case &record, const std::vector<std::string> &keys) {
    return keys.empty() ? Sentence::tr("no pair expected")
                        : Sentence::tr("no pair expected; {1} alone, for one meaning", {names(record, keys)});
}

/// `how` says where the set comes from.
Finding acceptedFinding(const Case &record, const std::vector<std::string> &keys,
                        const std::vector<std::string> &without, const std::string &how, const Id &from) {
    const std::string topic = Sentence::tr("Marks told apart");
    std::string because =
        keys.empty() ? Sentence::tr("No two marks are safe to tell apart: place, container shape and, if "
                                    "heard, speech carry the plan. Test again at the next review.")
        : keys.size() == 1 ? Sentence::tr("One mark alone makes no pair: it can mean one thing only.")
                           : how;
    if (!without.empty())
        because += Sentence::tr(" Left out for safety: {1}.", {names(record, without)});
    return measured(Domain::Touch, topic, keys.empty() ? Sentence::tr("no pair") : names(record, keys),
                    because, Sentence::tr("marker test"), {from});
}

/// Splits the keys of a set by what safety forbids, and says so.
void takeSet(const Case &record, const std::vector<std::string> &keys, const std::string &how, const Id &from,
             const std::map<std::string, std::string> &banned, MarksMeaning &meaning) {
    std::vector<std::string> without;
    for (const std::string &key : keys)
        (banned.contains(key) ? without : meaning.accepted).push_back(key);
    meaning.all.push_back(acceptedFinding(record, meaning.accepted, without, how, from));
}

void openTestFinding(const Case &record, MarksMeaning &meaning) {
    const TouchTestRecord *open = openTouchTest(record);
    if (!open)
        return;
    const std::size_t trials = open->trials.size();
    meaning.all.push_back(notMeasured(
        Domain::Touch, Sentence::tr("Marker test"),
        Sentence::tr(
            "under way, {1}",
            {(trials == 1 ? Sentence::tr("1 trial") : Sentence::tr("{1} trials", {std::to_string(trials)}))}),
        Sentence::tr("It has no result before it ends. It goes on where it was left."),
        Sentence::tr("marker test")));
}

/// True if a marker test of this program gave a result, and no newer one was typed in.
bool takeEndedTest(const Case &record, const std::map<std::string, std::string> &banned,
                   MarksMeaning &meaning) {
    const TouchTestRecord *test = endedTouchTest(record);
    const Measurement *typedIn = newestResult(record, Test::AcceptedMarks);
    if (!test || (typedIn && typedIn->date > test->begun))
        return false;
    const auto state = stateOf(*test);
    if (!state)
        return false;
    meaning.confusion = confusionOf(*test, *state);
    std::string how = resultInWords(record, *test, *state);
    if (state->weakest)
        how += " " + recheckInWords(*test);
    takeSet(record, acceptedKeys(*test, *state), how, test->id, banned, meaning);
    return true;
}

} // namespace

MarksMeaning marksMeaning(const Case &record, double sensitivity,
                          const std::map<std::string, std::string> &banned) {
    MarksMeaning meaning;
    openTestFinding(record, meaning);
    if (takeEndedTest(record, banned, meaning))
        return meaning;
    if (const Measurement *result = newestResult(record, Test::AcceptedMarks)) {
        if (const auto keys = readMarks(result->typed)) {
            takeSet(record, *keys, Sentence::tr("Found in the marker test."), result->id, banned, meaning);
            return meaning;
        } else {
            meaning.all.push_back(notUnderstood(*result, keys.error()));
        }
    }
    const std::vector<Marker> kit = kitOf(record);
    std::vector<const Marker *> allowed;
    for (const Marker &marker : kit)
        if (marker.medium == MarkMedium::Touch && !banned.contains(marker.key) &&
            missed(marker, sensitivity) < confusionLimit)
            allowed.push_back(&marker);
    const LargestSet largest(allowed, sensitivity);
    for (const Marker *marker : largest.best())
        meaning.accepted.push_back(marker->key);
    meaning.all.push_back(notMeasured(
        Domain::Touch, Sentence::tr("Marks told apart"),
        meaning.accepted.size() > 1 ? names(record, meaning.accepted) : onlyOne(record, meaning.accepted),
        Sentence::tr("Not tested with the client: expected from the kit's features and the sensitivity. Do "
                     "the marker test before many things are marked."),
        Sentence::tr("confusion is Phi(-d/2), less than 5 percent for each pair (Thurstone)")));
    return meaning;
}

} // namespace model
