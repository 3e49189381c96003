#include "model/shelf_reach.h"
#include "model/findings_parts.h"
#include "model/lift_words.h"
#include "model/read_measurement.h"
#include "model/sentence.h"
#include "model/typed.h"
#include "model/usual_sizes.h"
#include <algorithm>

namespace model {

namespace {

constexpr Centimetres worktopDepth{60}, worktopHeight{91};

std::string cm(Centimetres height) {
    return Sentence::tr("{1} cm", {typed::words(height.value, 0)});
}

std::string said(const ReachValue &value) {
    switch (value.basis) {
    case Basis::Measured:
        return cm(value.value);
    case Basis::Told:
        return Sentence::tr("{1}, as told", {cm(value.value)});
    case Basis::Estimated:
        return Sentence::tr("{1}, estimated", {cm(value.value)});
    case Basis::Usual:
        return Sentence::tr("{1}, a usual value", {cm(value.value)});
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
        return {place, ReachEase::Out, Sentence::tr("{1}, above the highest reach ({2}).", {at, said(high)})};
    if (height < findings.reachLow.value)
        return {place, ReachEase::Out,
                Sentence::tr("{1}, below the lowest reach ({2}).", {at, said(findings.reachLow)})};
    if (height > findings.shoulder.value)
        return {place, ReachEase::Stretch,
                Sentence::tr("{1}, above the shoulder ({2}).", {at, said(findings.shoulder)})};
    if (height < findings.knuckle.value)
        return {place, ReachEase::Stretch,
                Sentence::tr("{1}, below the knuckles ({2}).", {at, said(findings.knuckle)})};
    return {place, ReachEase::Easy,
            Sentence::tr("{1}, between knuckles ({2}) and shoulder ({3}).",
                         {at, said(findings.knuckle), said(findings.shoulder)})};
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
        return Sentence::tr("easy");
    case ReachEase::Stretch:
        return Sentence::tr("a stretch");
    case ReachEase::Out:
        return Sentence::tr("out of reach");
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
                reach.because += Sentence::tr(" Its height was not measured: a usual one.");
            if (reach.ease != ReachEase::Out)
                reach.because += liftWords(record, findings, size.height, size.depth, seated);
            all.push_back(std::move(reach));
        }
    }
    return all;
}

} // namespace model
