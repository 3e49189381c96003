#pragma once
#include "model/case.h"
#include "model/marks.h"
#include "model/measurement.h"
#include "model/result.h"
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace model {

enum class Sureness { Measured, Estimated, NotMeasured };

/// One thing that the measurements mean, with what it was worked out from.
struct Finding {
    Domain domain{};
    std::string topic;   // "Label size at 60 cm"
    std::string answer;  // "about 36 point"
    std::string because; // one or two sentences: inputs, and what it means for the plan
    std::string source;  // formula or publication, or "common practice"
    Sureness sureness = Sureness::NotMeasured;
    std::vector<Id> from; // measurements it was computed from
    friend bool operator==(const Finding &, const Finding &) = default;
};

/// A caution that stands on screen and paper while its cause holds.
struct Caution {
    std::string sentence;
    std::string because; // the fact, or "not asked"
    bool urgent = false; // first line of the visit: smoke alarm, same-day eye referral ...
    friend bool operator==(const Caution &, const Caution &) = default;
};

/// A body height or limit that the plan uses.
struct ReachValue {
    Centimetres value{};
    Basis basis = Basis::Usual;
    friend bool operator==(const ReachValue &, const ReachValue &) = default;
};

/// All that the assessment means. A value; worked out anew from the case at every change.
struct Findings {
    std::vector<Finding> all;
    std::vector<Caution> cautions;
    bool usableVision = false;
    bool readsBraille = false;
    bool readsLargePrint = false;
    Points paperSize{18}; // body size of this client's papers
    ReachValue knuckle{{75}, Basis::Usual};
    ReachValue shoulder{{140}, Basis::Usual};
    ReachValue reachLow{{30}, Basis::Usual};
    ReachValue reachHigh{{185}, Basis::Usual};
    ReachValue eye{{150}, Basis::Usual};
    std::optional<LogMar>
        printAcuity;         // acuity that label sizes go by; none: not measured, or below the chart
    bool belowChart = false; // acuity below every chart: print will not do
    std::optional<double> contrastSensitivity; // log units, the lowest recorded
    Kilograms heavyLimit{2.0};
    Basis heavyLimitBasis = Basis::Usual;
    bool children = true;
    Centimetres childReach{150};
    double touchSensitivity = 1.0; // 1 normal, less if reduced
    // Kit keys told apart in the marker test, else expected to be from the kit; never one that is banned.
    // None or one is a result: no pair of marks can be told apart.
    std::vector<std::string> acceptedMarks;
    MeasuredConfusion measuredConfusion;            // of the marker test; empty if none came to its end
    std::map<std::string, std::string> bannedMarks; // key -> reason in words
    friend bool operator==(const Findings &, const Findings &) = default;
};

[[nodiscard]] Findings findingsOf(const Case &record, Date on);

/// Reads what was typed for a measurement, for the message beside its field.
/// Ok: the value said back in words ("logMAR 0.60"); Fails with NotUnderstood ("Not an acuity: 6/. For
/// example 6/24.") or OutOfRange.
[[nodiscard]] Result<std::string> readBack(const Measurement &measurement);

/// Reads a length with its unit: "40", "40 cm", "400 mm", "1.4 m", "16 in", "5 ft 3 in"; a bare number is cm.
/// Fails with NotUnderstood, or OutOfRange unless 0 < length <= `longest`.
[[nodiscard]] Result<Length> parseLength(const std::string &typed, Centimetres longest);

} // namespace model
