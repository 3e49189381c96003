#include "model/lifting.h"
#include "model/sentence.h"
#include <algorithm>
#include <array>
#include <cmath>

namespace model {

namespace {

struct FilterRow {
    double womenClose, womenOut, menClose, menOut;
};
// In the order of ReachZone, from the floor up.
constexpr std::array<FilterRow, 5> filterRows{
    {{7, 3, 10, 5}, {13, 7, 20, 10}, {16, 10, 25, 15}, {13, 7, 20, 10}, {7, 3, 10, 5}}};

constexpr double loadConstant = 23; // kg

double twistFactor(double degrees) {
    if (degrees > 90)
        return 0.8;
    return degrees > 45 ? 0.9 : 1.0;
}

double frequencyFactor(double perMinute) {
    if (perMinute <= 0.5)
        return 1.0;
    if (perMinute <= 2)
        return 0.7;
    return perMinute <= 8 ? 0.5 : 0.2;
}

tl::unexpected<Error> impossible(const std::string &what) {
    return fail(ErrorCode::OutOfRange, Sentence::tr("No such lift: {1}", {what}));
}

} // namespace

Kilograms filterFigure(ReachZone zone, Sex sex, Arms arms) {
    const FilterRow &row = filterRows.at(static_cast<std::size_t>(zone));
    if (sex == Sex::Female)
        return {arms == Arms::Close ? row.womenClose : row.womenOut};
    return {arms == Arms::Close ? row.menClose : row.menOut};
}

Kilograms seatedFilter(Sex sex) {
    return {sex == Sex::Female ? 3.0 : 5.0};
}

Result<Kilograms> liftFilter(const Lift &lift) {
    if (!(lift.stature.value >= 50 && lift.stature.value <= 230))
        return impossible(Sentence::tr("stature must be from 50 to 230 cm."));
    if (!(lift.from.value >= 0 && lift.to.value >= 0 && lift.from.value <= 300 && lift.to.value <= 300))
        return impossible(Sentence::tr("hands must be from 0 to 300 cm above the floor."));
    if (!(lift.twistDegrees >= 0 && lift.twistDegrees <= 180))
        return impossible(Sentence::tr("a twist goes from 0 to 180 degrees."));
    if (!(lift.perMinute >= 0 && lift.perMinute <= 60))
        return impossible(Sentence::tr("lifts a minute go from 0 to 60."));
    const auto [low, high] = std::minmax(lift.from, lift.to);
    const auto first = static_cast<int>(reachZone(low, lift.stature));
    const auto last = static_cast<int>(reachZone(high, lift.stature));
    Kilograms least = filterFigure(static_cast<ReachZone>(first), lift.sex, lift.arms);
    for (int zone = first; zone <= last; ++zone)
        least = std::min(least, filterFigure(static_cast<ReachZone>(zone), lift.sex, lift.arms));
    return least * twistFactor(lift.twistDegrees) * frequencyFactor(lift.perMinute);
}

NioshFactors nioshFactors(const NioshLift &lift) {
    NioshFactors factors;
    if (lift.horizontal <= 63)
        factors.horizontal = std::min(1.0, 25.0 / lift.horizontal);
    if (lift.vertical <= 175)
        factors.vertical = 1 - 0.003 * std::abs(lift.vertical - 75);
    if (lift.travel <= 175)
        factors.distance = lift.travel <= 25 ? 1.0 : 0.82 + 4.5 / lift.travel;
    if (lift.asymmetry <= 135)
        factors.asymmetry = 1 - 0.0032 * lift.asymmetry;
    return factors;
}

Result<Kilograms> nioshLimit(const NioshLift &lift) {
    if (!(lift.horizontal >= 0 && lift.vertical >= 0 && lift.travel >= 0))
        return impossible(Sentence::tr("distances of the equation are not below 0."));
    if (!(lift.asymmetry >= 0 && lift.asymmetry <= 180))
        return impossible(Sentence::tr("the asymmetry angle goes from 0 to 180 degrees."));
    if (!(lift.frequency >= 0 && lift.frequency <= 1))
        return impossible(Sentence::tr("the frequency multiplier goes from 0 to 1."));
    if (!(lift.coupling >= 0.9 && lift.coupling <= 1))
        return impossible(Sentence::tr("the coupling multiplier goes from 0.90 (poor) to 1.00 (good)."));
    const NioshFactors factors = nioshFactors(lift);
    return Kilograms{loadConstant * factors.horizontal * factors.vertical * factors.distance *
                     factors.asymmetry * lift.frequency * lift.coupling};
}

} // namespace model
