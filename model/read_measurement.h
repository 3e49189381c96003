#pragma once
#include "model/lifting.h"
#include "model/measurement.h"
#include "model/result.h"
#include "model/sight.h"
#include <optional>
#include <string>
#include <vector>

/// Reading the value out of what was typed for one test. All fail with NotUnderstood, OutOfRange or Missing.
namespace model {

/// The test distance, or none if none was typed. At most 20 m.
[[nodiscard]] Result<std::optional<Centimetres>> readDistance(const Measurement &measurement);
[[nodiscard]] Result<Acuity> readAcuity(const Measurement &measurement);
/// Log units, 0 to 2.4.
[[nodiscard]] Result<double> readContrast(const std::string &typed);
/// Degrees across, above 0 and at most 180.
[[nodiscard]] Result<double> readField(const std::string &typed);
/// 4 to 200 points: "24", "24 point", "N24".
[[nodiscard]] Result<Points> readPoints(const std::string &typed);
[[nodiscard]] Result<bool> readYesNo(const std::string &typed);
/// Kit keys of the marks named; empty for "none".
[[nodiscard]] Result<std::vector<std::string>> readMarks(const std::string &typed);
/// A height of the reach tests, above the floor. The lowest reach may be the floor itself, 0.
[[nodiscard]] Result<Centimetres> readHeight(const Measurement &measurement);
/// "standing" or "seated".
enum class Posture { Standing, Seated };
[[nodiscard]] Result<Posture> readPosture(const std::string &typed);
/// Height of soles, 0 for "none" or "slippers", at most 15 cm.
[[nodiscard]] Result<Centimetres> readSoles(const std::string &typed);
/// "women's" or "men's".
[[nodiscard]] Result<Sex> readLiftFigures(const std::string &typed);
/// Kilograms, grams or pounds; above 0 and at most 50 kg.
[[nodiscard]] Result<Kilograms> readWeight(const std::string &typed);

} // namespace model
