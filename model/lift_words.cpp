#include "model/lift_words.h"
#include "model/findings_parts.h"
#include "model/read_measurement.h"
#include "model/typed.h"
#include <algorithm>
#include <cmath>

namespace model {

namespace {

constexpr double frail = 0.5; // at most half of a rule for workers; common practice
constexpr Centimetres worktop{91}, deep{30}, handsNear{25}, handsOut{50};

std::string kg(Kilograms weight) {
    return typed::words(weight.value, 1) + " kg";
}

std::optional<Kilograms> filterAt(const Case &record, Centimetres height, Centimetres depth) {
    const Measurement *result = newestResult(record, Test::Stature);
    const auto stature = result ? readHeight(*result) : Result<Centimetres>(Centimetres{0});
    if (!result || !stature)
        return std::nullopt;
    const auto limit = liftFilter({.from = height,
                                   .to = height,
                                   .stature = *stature,
                                   .sex = liftFiguresSaid(record).value_or(Sex::Female),
                                   .arms = depth > deep ? Arms::Out : Arms::Close});
    return limit ? std::optional(*limit) : std::nullopt;
}

std::string seatedWords(const Case &record) {
    const Kilograms filter = seatedFilter(liftFiguresSaid(record).value_or(Sex::Female));
    return " At most " + kg(filter * frail) + " seated, hands close: half of the lifting filter (" +
           kg(filter) + ").";
}

} // namespace

std::optional<Sex> liftFiguresSaid(const Case &record) {
    const Measurement *result = newestResult(record, Test::LiftFigures);
    if (!result)
        return std::nullopt;
    const auto sex = readLiftFigures(result->typed);
    return sex ? std::optional(*sex) : std::nullopt;
}

std::string figuresWords(const std::optional<Sex> &said) {
    if (!said)
        return "women's figures, the lower ones, since it was not said";
    return *said == Sex::Female ? "women's figures" : "men's figures";
}

NioshLift liftToWorktop(Centimetres height, Centimetres depth) {
    constexpr double poorBelow = 75; // cm; a fair grip counts 0.95 below, 1 above
    return {.horizontal = (depth > deep ? handsOut : handsNear).value,
            .vertical = height.value,
            .travel = std::abs(height.value - worktop.value),
            .coupling = height.value < poorBelow ? 0.95 : 1.0};
}

std::string liftWords(const Case &record, const Findings &findings, Centimetres height, Centimetres depth,
                      bool seated) {
    const bool measured = findings.heavyLimitBasis == Basis::Measured;
    const std::string lifted =
        " At most " + typed::words(findings.heavyLimit.value, 2) + " kg: what was lifted safely.";
    if (seated) {
        const Kilograms filter = seatedFilter(liftFiguresSaid(record).value_or(Sex::Female));
        return measured && findings.heavyLimit <= filter * frail ? lifted : seatedWords(record);
    }
    const auto filter = filterAt(record, height, depth);
    const Kilograms niosh = nioshLimit(liftToWorktop(height, depth)).value_or(Kilograms{0});
    const bool covered = niosh.value > 0;
    if (!covered && !filter)
        return measured ? lifted : " Light things only: the NIOSH equation does not reach so high.";
    const Kilograms least = (!covered ? *filter : filter ? std::min(*filter, niosh) : niosh) * frail;
    if (measured && findings.heavyLimit <= least)
        return lifted;
    const std::string most = " At most " + kg(least) + " with two hands: half of the ";
    if (!covered)
        return most + "lifting filter (" + kg(*filter) + "); the NIOSH equation does not reach so high.";
    if (!filter)
        return most + "NIOSH limit (" + kg(niosh) + "); the lifting filter needs a stature.";
    return most + "lifting filter (" + kg(*filter) + ") or of the NIOSH limit (" + kg(niosh) +
           "), whichever is less.";
}

Finding liftRulesFinding(const Case &record) {
    const Measurement *result = newestResult(record, Test::LiftFigures);
    Finding finding = estimated(
        Domain::Reach, "Two rules of lifting", "half of the lower one at most",
        "Lifting filter: " + figuresWords(liftFiguresSaid(record)) +
            ". NIOSH equation: hands 25 cm before the ankles, 50 cm for a shelf deeper than 30 cm, to or "
            "from a "
            "worktop at 91 cm, no turn, seldom, fair grip. Both are made for healthy workers with two free "
            "hands and a good footing, not for one hand, kneeling, a slippery floor or frail people; NIOSH "
            "not "
            "for sitting. What was lifted safely stands before both.",
        "HSE, INDG143 rev 4; Waters, Putz-Anderson and Garg 1994, DHHS (NIOSH) 94-110; half: common practice",
        {});
    if (result)
        finding.from.push_back(result->id);
    return finding;
}

} // namespace model
