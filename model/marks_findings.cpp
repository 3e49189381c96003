#include "model/findings_parts.h"
#include "model/read_measurement.h"
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

std::string names(const std::vector<std::string> &keys) {
    std::string words;
    for (const std::string &key : keys)
        words += (words.empty() ? "" : ", ") + markerOf(key)->name;
    return words;
}

std::string onlyOne(const std::vector<std::string> &keys) {
    return keys.empty() ? "no pair expected" : "no pair expected; " + names(keys) + " alone, for one meaning";
}

Finding acceptedFinding(const std::vector<std::string> &keys, const std::vector<std::string> &without,
                        const Measurement &from) {
    const std::string topic = "Marks told apart";
    std::string because = keys.empty()
                              ? "No two marks are safe to tell apart: place, container shape and, if heard, "
                                "speech carry the plan. Test again at the next review."
                          : keys.size() == 1 ? "One mark alone makes no pair: it can mean one thing only."
                                             : "Found in the marker test.";
    if (!without.empty())
        because += " Left out for safety: " + names(without) + ".";
    return measured(Domain::Touch, topic, keys.empty() ? "no pair" : names(keys), because, "marker test",
                    {from.id});
}

} // namespace

MarksMeaning marksMeaning(const Case &record, double sensitivity,
                          const std::map<std::string, std::string> &banned) {
    MarksMeaning meaning;
    if (const Measurement *result = newestResult(record, Test::AcceptedMarks)) {
        if (const auto keys = readMarks(result->typed)) {
            std::vector<std::string> without;
            for (const std::string &key : *keys)
                (banned.contains(key) ? without : meaning.accepted).push_back(key);
            meaning.all.push_back(acceptedFinding(meaning.accepted, without, *result));
            return meaning;
        } else {
            meaning.all.push_back(notUnderstood(*result, keys.error()));
        }
    }
    std::vector<const Marker *> allowed;
    for (const Marker &marker : markerKit())
        if (marker.medium == MarkMedium::Touch && !banned.contains(marker.key) &&
            missed(marker, sensitivity) < confusionLimit)
            allowed.push_back(&marker);
    const LargestSet largest(allowed, sensitivity);
    for (const Marker *marker : largest.best())
        meaning.accepted.push_back(marker->key);
    meaning.all.push_back(
        notMeasured(Domain::Touch, "Marks told apart",
                    meaning.accepted.size() > 1 ? names(meaning.accepted) : onlyOne(meaning.accepted),
                    "Not tested with the client: expected from the kit's features and the sensitivity. Do "
                    "the marker test before "
                    "many things are marked.",
                    "confusion is Phi(-d/2), less than 5 percent for each pair (Thurstone)"));
    return meaning;
}

} // namespace model
