#include "model/shelf_reach.h"
#include "model/findings_parts.h"
#include "model/lift_words.h"
#include "model/read_measurement.h"
#include "model/typed.h"
#include "model/usual_sizes.h"
#include <algorithm>

namespace model {

namespace {

constexpr Centimetres worktopDepth{60}, worktopHeight{91};

std::string cm(Centimetres height) {
    return typed::words(height.value, 0) + " cm";
}

std::string said(const ReachValue &value) {
    switch (value.basis) {
    case Basis::Measured:
        return cm(value.value);
    case Basis::Told:
        return cm(value.value) + ", as told";
    case Basis::Estimated:
        return cm(value.value) + ", estimated";
    case Basis::Usual:
        return cm(value.value) + ", a usual value";
    }
    return {};
}

/// The highest reach at this place: seated, a worktop in front lowers it.
ReachValue highest(const Unit &unit, const Findings &findings, bool seated) {
    ReachValue high = findings.reachHigh;
    if (!seated || unit.kind != UnitKind::WallCupboard || high.basis == Basis::Measured)
        return high;
    if (const auto over = seatedHighReach(Approach::Forward, worktopDepth, worktopHeight))
        high.value = std::min(high.value, *over);
    return high;
}

ShelfReach judge(const Id &place, Centimetres height, const ReachValue &high, const Findings &findings) {
    const std::string at = cm(height);
    if (height > high.value)
        return {place, ReachEase::Out, at + ", above the highest reach (" + said(high) + ")."};
    if (height < findings.reachLow.value)
        return {place, ReachEase::Out, at + ", below the lowest reach (" + said(findings.reachLow) + ")."};
    if (height > findings.shoulder.value)
        return {place, ReachEase::Stretch, at + ", above the shoulder (" + said(findings.shoulder) + ")."};
    if (height < findings.knuckle.value)
        return {place, ReachEase::Stretch, at + ", below the knuckles (" + said(findings.knuckle) + ")."};
    return {place, ReachEase::Easy,
            at + ", between knuckles (" + said(findings.knuckle) + ") and shoulder (" +
                said(findings.shoulder) + ")."};
}

bool worksSeated(const Case &record) {
    const Measurement *result = newestResult(record, Test::Posture);
    const auto posture = result ? readPosture(result->typed) : Result<Posture>(Posture::Standing);
    return posture && *posture == Posture::Seated;
}

} // namespace

std::string wordsOf(ReachEase ease) {
    switch (ease) {
    case ReachEase::Easy:
        return "easy";
    case ReachEase::Stretch:
        return "a stretch";
    case ReachEase::Out:
        return "out of reach";
    }
    return {};
}

std::vector<ShelfReach> shelfReaches(const Case &record, const Findings &findings) {
    const bool seated = worksSeated(record);
    std::vector<ShelfReach> all;
    for (const Unit &unit : record.units) {
        const auto count = static_cast<int>(std::count_if(record.places.begin(), record.places.end(),
                                                          [&](const Place &p) { return p.unit == unit.id; }));
        for (const Place &place : record.places) {
            if (place.unit != unit.id)
                continue;
            const UsualSize size = sizeOf(place, unit, count);
            ShelfReach reach = judge(place.id, size.height, highest(unit, findings, seated), findings);
            if (!place.height)
                reach.because += " Its height was not measured: a usual one.";
            if (reach.ease != ReachEase::Out)
                reach.because += liftWords(record, findings, size.height, size.depth, seated);
            all.push_back(std::move(reach));
        }
    }
    return all;
}

} // namespace model
