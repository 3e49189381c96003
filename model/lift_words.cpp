#include "model/lift_words.h"
#include "model/findings_parts.h"
#include "model/read_measurement.h"
#include "model/sentence.h"
#include "model/typed.h"
#include <algorithm>
#include <cmath>

namespace model {

namespace {

constexpr double frail = 0.5; // at most half of a rule for workers; common practice
constexpr Centimetres worktop{91}, deep{30}, handsNear{25}, handsOut{50};

std::string kg(Kilograms weight) {
    return Sentence::tr("{1} kg", {typed::words(weight.value, 1)});
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
    return Sentence::tr(" At most {1} seated, hands close: half of the lifting filter ({2}).",
                        {kg(filter * frail), kg(filter)});
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
        return Sentence::tr("women's figures, the lower ones, since it was not said");
    return *said == Sex::Female ? Sentence::tr("women's figures") : Sentence::tr("men's figures");
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
    const std::string lifted = Sentence::tr(" At most {1} kg: what was lifted safely.",
                                            {typed::words(findings.heavyLimit.value, 2)});
    if (seated) {
        const Kilograms filter = seatedFilter(liftFiguresSaid(record).value_or(Sex::Female));
        return measured && findings.heavyLimit <= filter * frail ? lifted : seatedWords(record);
    }
    const auto filter = filterAt(record, height, depth);
    const Kilograms niosh = nioshLimit(liftToWorktop(height, depth)).value_or(Kilograms{0});
    const bool covered = niosh.value > 0;
    if (!covered && !filter)
        return measured ? lifted
                        : Sentence::tr(" Light things only: the NIOSH equation does not reach so high.");
    const Kilograms least = (!covered ? *filter : filter ? std::min(*filter, niosh) : niosh) * frail;
    if (measured && findings.heavyLimit <= least)
        return lifted;
    const std::string most = Sentence::tr(" At most {1} with two hands: half of the ", {kg(least)});
    if (!covered)
        return Sentence::tr("{1}lifting filter ({2}); the NIOSH equation does not reach so high.",
                            {most, kg(*filter)});
    if (!filter)
        return Sentence::tr("{1}NIOSH limit ({2}); the lifting filter needs a stature.", {most, kg(niosh)});
    return Sentence::tr("{1}lifting filter ({2}) or of the NIOSH limit ({3}), whichever is less.",
                        {most, kg(*filter), kg(niosh)});
}

Finding liftRulesFinding(const Case &record) {
    const Measurement *result = newestResult(record, Test::LiftFigures);
    Finding finding = estimated(
        Domain::Reach, Sentence::tr("Two rules of lifting"), Sentence::tr("half of the lower one at most"),
        Sentence::tr(
            "Lifting filter: {1}. NIOSH equation: hands 25 cm before the ankles, 50 cm for a shelf deeper "
            "than 30 cm, to or from a worktop at 91 cm, no turn, seldom, fair grip. Both are made for "
            "healthy workers with two free hands and a good footing, not for one hand, kneeling, a slippery "
            "floor or frail people; NIOSH not for sitting. What was lifted safely stands before both.",
            {figuresWords(liftFiguresSaid(record))}),
        Sentence::tr("HSE, INDG143 rev 4; Waters, Putz-Anderson and Garg 1994, DHHS (NIOSH) 94-110; half: "
                     "common practice"),
        {});
    if (result)
        finding.from.push_back(result->id);
    return finding;
}

} // namespace model
