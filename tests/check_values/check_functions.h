#pragma once
#include <cstdio>
#include <functional>
#include <map>
#include <string>
#include <vector>

/// The program's own functions by the names that the check values use. No formula stands here.
namespace check {

using Input = std::vector<std::string>;
/// A number in full, or a word.
using Function = std::function<std::string(const Input &)>;
using Functions = std::map<std::string, Function>;

inline std::string shown(double value) {
    char text[40];
    std::snprintf(text, sizeof text, "%.15g", value);
    return text;
}
inline double number(const Input &input, std::size_t i) {
    return std::stod(input.at(i));
}
inline int whole(const Input &input, std::size_t i) {
    return std::stoi(input.at(i));
}

[[nodiscard]] Functions sightFunctions();
[[nodiscard]] Functions touchFunctions();
[[nodiscard]] Functions reachFunctions();
[[nodiscard]] Functions brailleFunctions();

} // namespace check
