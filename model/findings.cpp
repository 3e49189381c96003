#include "model/findings.h"
#include "model/findings_parts.h"
#include "model/sentence.h"
#include "model/typed.h"
#include <algorithm>

namespace model {

namespace {

constexpr int daysThatCount = 365;

std::optional<Date> newestDate(const std::vector<const Measurement *> &results) {
    std::optional<Date> newest;
    for (const Measurement *result : results)
        if (result->date && (!newest || *result->date > *newest))
            newest = result->date;
    return newest;
}

bool hasUnsafeMemory(const Household &household) {
    return household.adultWithMemoryLoss == Answer::Yes;
}

/// Anybody at home from whom hazards must be locked away; not asked counts as yes.
bool needsSecureStorage(const Household &household) {
    return household.children != Answer::No || household.adultWithMemoryLoss != Answer::No ||
           household.pets != Answer::No;
}

void append(std::vector<Finding> &all, const std::vector<Finding> &more) {
    all.insert(all.end(), more.begin(), more.end());
}

} // namespace

std::vector<const Measurement *> countingResults(const Case &record, Test test) {
    std::vector<const Measurement *> results;
    for (const Measurement &measurement : record.measurements)
        if (measurement.test == test && !typed::tidy(measurement.typed).empty())
            results.push_back(&measurement);
    const auto newest = newestDate(results);
    if (!newest)
        return results;
    const Date oldest = addDays(*newest, -daysThatCount);
    std::erase_if(results, [&](const Measurement *result) { return result->date && *result->date < oldest; });
    return results;
}

const Measurement *newestResult(const Case &record, Test test) {
    const Measurement *newest = nullptr;
    for (const Measurement *result : countingResults(record, test))
        if (!newest || !newest->date || (result->date && *result->date >= *newest->date))
            newest = result;
    return newest;
}

std::string whyMissing(const Case &record, Test test) {
    for (auto it = record.measurements.rbegin(); it != record.measurements.rend(); ++it)
        if (it->test == test && !it->notTestedBecause.empty())
            return Sentence::tr("Not tested: {1}.", {it->notTestedBecause});
    return Sentence::tr("No result was entered.");
}

std::string wordsOf(Side side) {
    switch (side) {
    case Side::NotStated:
        return "";
    case Side::Right:
        return "right";
    case Side::Left:
        return "left";
    case Side::Both:
        return "both";
    }
    return "";
}

Finding measured(Domain domain, std::string topic, std::string answer, std::string because,
                 std::string source, std::vector<Id> from) {
    return {domain,
            std::move(topic),
            std::move(answer),
            std::move(because),
            std::move(source),
            Sureness::Measured,
            std::move(from)};
}

Finding estimated(Domain domain, std::string topic, std::string answer, std::string because,
                  std::string source, std::vector<Id> from) {
    return {domain,
            std::move(topic),
            std::move(answer),
            std::move(because),
            std::move(source),
            Sureness::Estimated,
            std::move(from)};
}

Finding notMeasured(Domain domain, std::string topic, std::string answer, std::string because,
                    std::string source) {
    return {domain,
            std::move(topic),
            std::move(answer),
            std::move(because),
            std::move(source),
            Sureness::NotMeasured,
            {}};
}

Finding notUnderstood(const Measurement &measurement, const Error &error) {
    const TestInfo &info = infoOf(measurement.test);
    return {info.domain,     Sentence::tr(info.name),        Sentence::tr("not understood, so not used"),
            error.sentence,  Sentence::tr("what was typed"), Sureness::NotMeasured,
            {measurement.id}};
}

Findings findingsOf(const Case &record, Date on) {
    const SightMeaning sight = sightMeaning(record);
    const TouchMeaning touch = touchMeaning(record);
    const ReachMeaning reach = reachMeaning(record, on);

    Findings findings;
    findings.bannedMarks = bannedMarksOf(record, touch.protectionReduced);
    const MarksMeaning marks = marksMeaning(record, touch.sensitivity, findings.bannedMarks);
    append(findings.all, sight.all);
    append(findings.all, touch.all);
    append(findings.all, marks.all);
    append(findings.all, reach.all);
    findings.cautions = cautionsOf(record, touch, sight);
    findings.usableVision = sight.usableVision;
    findings.printAcuity = sight.printAcuity;
    findings.belowChart = sight.belowChart;
    findings.contrastSensitivity = sight.contrastSensitivity;
    findings.readsLargePrint = sight.readsLargePrint;
    findings.paperSize = sight.paperSize;
    findings.readsBraille = touch.readsBraille;
    findings.touchSensitivity = touch.sensitivity;
    findings.acceptedMarks = marks.accepted;
    findings.measuredConfusion = marks.confusion;
    findings.knuckle = reach.knuckle;
    findings.shoulder = reach.shoulder;
    findings.reachLow = reach.reachLow;
    findings.reachHigh = reach.reachHigh;
    findings.eye = reach.eye;
    findings.heavyLimit = reach.heavyLimit;
    findings.heavyLimitBasis = reach.heavyLimitBasis;
    findings.children = needsSecureStorage(record.household);
    if (hasUnsafeMemory(record.household))
        findings.childReach = Centimetres{300}; // out of reach does not help: only a lock does
    else if (record.household.childReach)
        findings.childReach = record.household.childReach->value;
    return findings;
}

} // namespace model
