#pragma once
#include <compare>
#include <optional>
#include <string>

namespace model {

/// A number with its unit in the type. `value` is in the unit that the alias names.
template<class Tag> struct Quantity {
    double value{};
    friend constexpr auto operator<=>(const Quantity &, const Quantity &) = default;
    friend constexpr Quantity operator+(Quantity a, Quantity b) { return {a.value + b.value}; }
    friend constexpr Quantity operator-(Quantity a, Quantity b) { return {a.value - b.value}; }
    friend constexpr Quantity operator*(Quantity a, double k) { return {a.value * k}; }
    friend constexpr Quantity operator*(double k, Quantity a) { return {a.value * k}; }
    friend constexpr double operator/(Quantity a, Quantity b) { return a.value / b.value; }
};

using Centimetres = Quantity<struct CentimetresTag>;
using Millimetres = Quantity<struct MillimetresTag>;
using Kilograms = Quantity<struct KilogramsTag>;
using GramsForce = Quantity<struct GramsForceTag>;
using Points = Quantity<struct PointsTag>; // 1 point = 25.4/72 mm
using Celsius = Quantity<struct CelsiusTag>;
using LogMar = Quantity<struct LogMarTag>;

/// How a fact came to be known.
enum class Basis { Measured, Told, Estimated, Usual };

/// A length as it was typed, and what it means. Never 0 for "not measured": use std::optional.
struct Length {
    Centimetres value{};
    std::string typed;
    Basis basis = Basis::Measured;
    friend bool operator==(const Length &, const Length &) = default;
};

} // namespace model
