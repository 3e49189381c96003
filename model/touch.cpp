#include "model/touch.h"
#include "model/sentence.h"
#include "model/typed.h"
#include <algorithm>
#include <cmath>

namespace model {

const std::vector<Filament> &filaments() {
    using enum FeelingBand;
    static const std::vector<Filament> kit{
        {1.65, {0.008}, Normal},
        {2.36, {0.02}, Normal},
        {2.44, {0.04}, Normal},
        {2.83, {0.07}, Normal},
        {3.22, {0.16}, DiminishedLightTouch},
        {3.61, {0.4}, DiminishedLightTouch},
        {3.84, {0.6}, DiminishedProtective},
        {4.08, {1}, DiminishedProtective},
        {4.17, {1.4}, DiminishedProtective},
        {4.31, {2}, DiminishedProtective},
        {4.56, {4}, LossOfProtective},
        {4.74, {6}, LossOfProtective},
        {4.93, {8}, LossOfProtective},
        {5.07, {10}, LossOfProtective},
        {5.18, {15}, LossOfProtective},
        {5.46, {26}, LossOfProtective},
        {5.88, {60}, LossOfProtective},
        {6.10, {100}, LossOfProtective},
        {6.45, {180}, LossOfProtective},
        {6.65, {300}, DeepPressureOnly},
    };
    return kit;
}

namespace {

bool isOneOf(const std::string &text, std::initializer_list<const char *> choices) {
    return std::any_of(choices.begin(), choices.end(), [&](const char *choice) { return text == choice; });
}

std::string nearestMarking(double value, double (*of)(const Filament &)) {
    const auto &kit = filaments();
    const auto nearest = std::min_element(kit.begin(), kit.end(), [&](const Filament &a, const Filament &b) {
        return std::abs(of(a) - value) < std::abs(of(b) - value);
    });
    return typed::words(nearest->marking, 2, typed::Zeros::Keep);
}

} // namespace

Result<FeelingBand> parseFilament(const std::string &typed) {
    const std::string text = typed::tidy(typed);
    if (isOneOf(text, {"not felt", "none", "nothing", "nothing felt", "untestable", "> 6.65", ">6.65"}))
        return FeelingBand::NotFelt;
    const auto value = typed::numberAndUnit(text);
    const bool grams = value && isOneOf(value->unit, {"g", "gram", "grams", "gf"});
    if (!value || (!grams && !value->unit.empty()))
        return fail(ErrorCode::NotUnderstood,
                    typed::notA(Sentence::tr("a filament"), typed, Sentence::tr("3.61, or \"not felt\"")));
    const auto of = grams ? +[](const Filament &f) { return f.target.value; }
                          : +[](const Filament &f) { return f.marking; };
    for (const Filament &filament : filaments())
        if (std::abs(of(filament) - value->value) < 1e-6)
            return filament.band;
    return fail(ErrorCode::OutOfRange, Sentence::tr("No such filament in the kit: {1}. Nearest is {2}. Kept.",
                                                    {typed, nearestMarking(value->value, of)}));
}

std::string wordsOf(FeelingBand band) {
    switch (band) {
    case FeelingBand::Normal:
        return Sentence::tr("normal");
    case FeelingBand::DiminishedLightTouch:
        return Sentence::tr("diminished light touch");
    case FeelingBand::DiminishedProtective:
        return Sentence::tr("diminished protective sensation");
    case FeelingBand::LossOfProtective:
        return Sentence::tr("loss of protective sensation");
    case FeelingBand::DeepPressureOnly:
        return Sentence::tr("deep pressure only");
    case FeelingBand::NotFelt:
        return Sentence::tr("no filament felt");
    }
    return {};
}

bool protectionReduced(FeelingBand band) {
    return band >= FeelingBand::DiminishedProtective;
}

TwoPointGrade twoPointGrade(Millimetres spacing) {
    if (spacing.value < 6)
        return TwoPointGrade::Normal;
    if (spacing.value <= 10)
        return TwoPointGrade::Fair;
    return spacing.value <= 15 ? TwoPointGrade::Poor : TwoPointGrade::Protective;
}

Result<TwoPoint> parseTwoPoint(const std::string &typed) {
    const std::string text = typed::tidy(typed);
    if (isOneOf(text, {"one point only", "one point", "one only", "protective"}))
        return TwoPoint{std::nullopt, TwoPointGrade::Protective};
    if (isOneOf(text, {"nothing felt", "nothing", "not felt", "none", "anaesthetic"}))
        return TwoPoint{std::nullopt, TwoPointGrade::Anaesthetic};
    const auto value = typed::numberAndUnit(text);
    if (!value || !(value->unit.empty() || value->unit == "mm"))
        return fail(ErrorCode::NotUnderstood,
                    typed::notA(Sentence::tr("a spacing in millimetres"), typed,
                                Sentence::tr("5, \"one point only\" or \"nothing felt\"")));
    if (!(value->value >= 1 && value->value <= 30))
        return fail(ErrorCode::OutOfRange,
                    Sentence::tr("Not a possible spacing: {1}. The test goes from 1 to 30 mm. Try 5. Kept.",
                                 {typed}));
    return TwoPoint{Millimetres{value->value}, twoPointGrade({value->value})};
}

std::string wordsOf(TwoPointGrade grade) {
    switch (grade) {
    case TwoPointGrade::Normal:
        return Sentence::tr("normal");
    case TwoPointGrade::Fair:
        return Sentence::tr("fair");
    case TwoPointGrade::Poor:
        return Sentence::tr("poor");
    case TwoPointGrade::Protective:
        return Sentence::tr("protective only");
    case TwoPointGrade::Anaesthetic:
        return Sentence::tr("nothing felt");
    }
    return {};
}

Millimetres usualTwoPoint(int age) {
    if (age < 37)
        return {1.95};
    return {age < 65 ? 2.68 : 5.03};
}

double markingByFormula(GramsForce force) {
    constexpr double milligrams = 1000;
    return std::log10(10 * milligrams * force.value);
}

GramsForce forceByFormula(double marking) {
    constexpr double tenMilligrams = 1e4;
    return {std::pow(10.0, marking) / tenMilligrams};
}

Millimetres smallestGap(Millimetres staticSpacing) {
    return {std::max(3.0, 1.5 * staticSpacing.value)};
}

Result<ShapesNamed> parseShapes(const std::string &typed) {
    const std::string text = typed::tidy(typed);
    auto cut = text.find('/');
    std::size_t width = 1;
    if (cut == std::string::npos) {
        cut = text.find(" of ");
        width = 4;
    }
    if (cut == std::string::npos)
        return fail(ErrorCode::NotUnderstood, typed::notA(Sentence::tr("a count of shapes"), typed, "4/5"));
    const auto right = typed::number(typed::tidy(text.substr(0, cut)));
    const auto tried = typed::number(typed::tidy(text.substr(cut + width)));
    if (!right || !tried)
        return fail(ErrorCode::NotUnderstood, typed::notA(Sentence::tr("a count of shapes"), typed, "4/5"));
    const bool whole = *right == std::floor(*right) && *tried == std::floor(*tried);
    if (!whole || *tried < 1 || *tried > 100 || *right < 0 || *right > *tried)
        return fail(ErrorCode::OutOfRange, Sentence::tr("Not a possible count: {1}. First how many were "
                                                        "named right, then how many were tried: 4/5. Kept.",
                                                        {typed}));
    return ShapesNamed{static_cast<int>(*right), static_cast<int>(*tried)};
}

double sensitivityOf(FeelingBand band) {
    switch (band) {
    case FeelingBand::Normal:
        return 1.0;
    case FeelingBand::DiminishedLightTouch:
        return 0.8;
    case FeelingBand::DiminishedProtective:
        return 0.5;
    case FeelingBand::LossOfProtective:
        return 0.3;
    case FeelingBand::DeepPressureOnly:
    case FeelingBand::NotFelt:
        return 0.1;
    }
    return 0.1;
}

double sensitivityOf(TwoPointGrade grade) {
    switch (grade) {
    case TwoPointGrade::Normal:
        return 1.0;
    case TwoPointGrade::Fair:
        return 0.8;
    case TwoPointGrade::Poor:
        return 0.5;
    case TwoPointGrade::Protective:
        return 0.3;
    case TwoPointGrade::Anaesthetic:
        return 0.1;
    }
    return 0.1;
}

} // namespace model
