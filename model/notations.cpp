#include "model/notations.h"
#include "model/sentence.h"
#include "model/typed.h"
#include <cmath>

namespace model {

namespace {

constexpr double pointsPerM = 8;

/// `figures` significant figures, no trailing zeros, no exponent.
std::string significant(double value, int figures) {
    const int whole = static_cast<int>(std::floor(std::log10(value))) + 1;
    const int decimals = figures - whole;
    if (decimals >= 0)
        return typed::words(value, decimals);
    const double step = std::pow(10.0, -decimals);
    return typed::words(std::round(value / step) * step, 0);
}

} // namespace

std::string snellenOf(LogMar acuity, double distance) {
    return typed::words(distance, 2) + "/" + significant(distance * minutesOf(acuity), 4);
}

double decimalOf(LogMar acuity) {
    return std::pow(10.0, -acuity.value);
}

double minutesOf(LogMar acuity) {
    return std::pow(10.0, acuity.value);
}

std::optional<double> letterScoreOf(LogMar acuity) {
    const double letters = 85 - 50 * acuity.value;
    return letters >= 0 ? std::optional(letters) : std::nullopt;
}

double mUnitsAt(LogMar acuity, Centimetres distance) {
    return minutesOf(acuity) * distance.value / 100;
}

double nPointsAt(LogMar acuity, Centimetres distance) {
    return mUnitsAt(acuity, distance) * pointsPerM;
}

LogMar atDistance(LogMar acuity, Centimetres from, Centimetres to) {
    return {acuity.value + std::log10(from / to)};
}

std::optional<LogMar> meanAcuity(const std::vector<Acuity> &acuities) {
    double sum = 0;
    for (const Acuity &acuity : acuities) {
        if (!acuity.logMar)
            return std::nullopt;
        sum += acuity.logMar->value;
    }
    return acuities.empty() ? std::nullopt
                            : std::optional(LogMar{sum / static_cast<double>(acuities.size())});
}

std::string allNotations(const Acuity &acuity, std::optional<Centimetres> distance) {
    if (!acuity.logMar)
        return wordsOf(acuity);
    const LogMar value = *acuity.logMar;
    std::string words =
        Sentence::tr("{1}, {2}, decimal {3}, {4}", {snellenOf(value, 6), snellenOf(value, 20),
                                                    significant(decimalOf(value), 2), wordsOf(acuity)});
    if (const auto letters = letterScoreOf(value))
        words += Sentence::tr(", {1} letters", {typed::words(*letters, 0)});
    if (distance)
        words += Sentence::tr("; at {1} cm {2} M, N{3}",
                              {typed::words(distance->value, 1), significant(mUnitsAt(value, *distance), 2),
                               significant(nPointsAt(value, *distance), 2)});
    return words;
}

} // namespace model
