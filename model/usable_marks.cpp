#include "model/usable_marks.h"
#include "model/fixing.h"
#include "model/kit.h"
#include "model/meanings.h"
#include <algorithm>
#include <map>

namespace model {
namespace {

bool canRead(MarkMedium medium, const Case &record, const Findings &findings) {
    switch (medium) {
    case MarkMedium::Touch:
        return true;
    case MarkMedium::Braille:
        return findings.readsBraille;
    case MarkMedium::LargePrint:
        return findings.readsLargePrint;
    case MarkMedium::SpokenTag:
        return record.client.hasTagReader && !record.safety.cautious(SafetyQuestion::HearsSpeech);
    }
    return false;
}

/// Told apart in the marker test, or expected to be; the findings hold which.
bool accepted(const Marker &marker, const Findings &findings) {
    const auto &keys = findings.acceptedMarks;
    return std::find(keys.begin(), keys.end(), marker.key) != keys.end();
}

/// Sum of the chances to be taken for any other mark, or the other for it, and to be missed.
double confusedWithOthers(const Marker &marker, const std::vector<Marker> &usable, const Findings &findings) {
    const double sensitivity = findings.touchSensitivity;
    const MeasuredConfusion &measured = findings.measuredConfusion;
    double sum = missed(marker, sensitivity, measured);
    for (const auto &other : usable) {
        if (other.key != marker.key && other.medium == MarkMedium::Touch)
            sum += confusion(marker, other, sensitivity, measured) +
                   confusion(other, marker, sensitivity, measured);
    }
    return sum;
}

std::string keptMark(const Case &record, const std::string &meaning) {
    if (record.plan) {
        for (const auto &mark : record.plan->meaningMarks) {
            if (mark.meaning == meaning)
                return mark.marker;
        }
    }
    return "";
}

} // namespace

bool ruledOut(const Marker &marker, const Case &record) {
    using enum SafetyQuestion;
    const auto cautious = [&](SafetyQuestion question) { return record.safety.cautious(question); };
    return (marker.magnetic && cautious(Implant)) || (marker.latex && cautious(LatexAllergy)) ||
           (marker.sharp && (cautious(ReducedProtectiveFeeling) || cautious(FragileSkin))) ||
           (marker.chokingSize && record.household.children != Answer::No);
}

std::vector<Marker> usableMarks(const Case &record, const Findings &findings) {
    std::vector<Marker> out;
    for (const auto &marker : kitOf(record)) {
        const bool told = marker.medium != MarkMedium::Touch || accepted(marker, findings);
        if (told && canRead(marker.medium, record, findings) && !findings.bannedMarks.contains(marker.key) &&
            !ruledOut(marker, record))
            out.push_back(marker);
    }
    return out;
}

std::vector<MeaningMark> reservedMarks(const Case &record, const std::vector<Marker> &usable,
                                       const Findings &findings) {
    // Least confused first, ties in the order of the kit. What is drawn comes last: it goes with the empty
    // pack, and has to dry on the next one.
    std::multimap<std::pair<bool, double>, std::string> touch;
    for (const auto &marker : usable) {
        if (marker.medium == MarkMedium::Touch)
            touch.emplace(
                std::pair{holdOf(marker) == Hold::Drawn, confusedWithOthers(marker, usable, findings)},
                marker.key);
    }
    const auto take = [&](const std::string &key) {
        const auto found =
            std::find_if(touch.begin(), touch.end(), [&](const auto &mark) { return mark.second == key; });
        if (found == touch.end())
            return false;
        touch.erase(found);
        return true;
    };
    std::vector<MeaningMark> out;
    for (const auto &meaning : meaningsWanted(record)) {
        if (const std::string kept = keptMark(record, meaning); take(kept))
            out.push_back({meaning, kept});
    }
    for (const auto &meaning : meaningsWanted(record)) {
        const bool has =
            std::any_of(out.begin(), out.end(), [&](const auto &m) { return m.meaning == meaning; });
        if (has || touch.empty())
            continue;
        const std::string best = touch.begin()->second;
        out.push_back({meaning, best});
        take(best);
    }
    return out;
}

} // namespace model
