#pragma once
#include "model/findings.h"
#include "model/touch.h"
#include <optional>
#include <string>
#include <vector>

/// The rooms behind findingsOf: one function for each part of the assessment. Values in, values out.
namespace model {

/// Results of one test that count: typed, and at most a year older than the newest of them. In the order of
/// entry.
[[nodiscard]] std::vector<const Measurement *> countingResults(const Case &record, Test test);
/// The newest of them; the last entered if dates are equal or missing.
[[nodiscard]] const Measurement *newestResult(const Case &record, Test test);
/// Why a test has no result: "Not tested: refused." or "No result was entered."
[[nodiscard]] std::string whyMissing(const Case &record, Test test);
/// "right", "left", "both" or "".
[[nodiscard]] std::string wordsOf(Side side);

[[nodiscard]] Finding measured(Domain domain, std::string topic, std::string answer, std::string because,
                               std::string source, std::vector<Id> from);
[[nodiscard]] Finding estimated(Domain domain, std::string topic, std::string answer, std::string because,
                                std::string source, std::vector<Id> from);
[[nodiscard]] Finding notMeasured(Domain domain, std::string topic, std::string answer, std::string because,
                                  std::string source);
/// For something that was typed but cannot be read: the sentence of its error, nothing computed.
[[nodiscard]] Finding notUnderstood(const Measurement &measurement, const Error &error);

struct SightMeaning {
    std::vector<Finding> all;
    bool usableVision = false;
    bool readsLargePrint = false;
    Points paperSize{18};
    std::optional<double> fieldAcross; // degrees
    std::optional<LogMar> printAcuity;
    bool belowChart = false;
    std::optional<double> contrastSensitivity;
};
[[nodiscard]] SightMeaning sightMeaning(const Case &record);

struct TouchMeaning {
    std::vector<Finding> all;
    bool readsBraille = false;
    double sensitivity = 1.0;
    bool protectionReduced = false; // measured in either hand
    std::vector<Id> reducedFrom;    // the results that say so
};
[[nodiscard]] TouchMeaning touchMeaning(const Case &record);

struct MarksMeaning {
    std::vector<Finding> all;
    std::vector<std::string> accepted; // kit keys, without those that are banned
    MeasuredConfusion confusion;
};
[[nodiscard]] MarksMeaning marksMeaning(const Case &record, double sensitivity,
                                        const std::map<std::string, std::string> &banned);

struct ReachMeaning {
    std::vector<Finding> all;
    ReachValue knuckle, shoulder, reachLow, reachHigh, eye;
    Kilograms heavyLimit{2.0};
    Basis heavyLimitBasis = Basis::Usual;
};
[[nodiscard]] ReachMeaning reachMeaning(const Case &record, Date on);

/// Kit keys that a safety fact rules out, with the fact in words. A question that was not asked rules out as
/// well.
[[nodiscard]] std::map<std::string, std::string> bannedMarksOf(const Case &record, bool protectionReduced);

/// Urgent ones first, then in the order in which the questions are asked.
[[nodiscard]] std::vector<Caution> cautionsOf(const Case &record, const TouchMeaning &touch,
                                              const SightMeaning &sight);

} // namespace model
