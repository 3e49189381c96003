#pragma once
#include <compare>
#include <string>

namespace model {

/// A random name for a record: 32 hexadecimal digits (128 bits), so that the records of two laptops never
/// clash. Empty means "none".
struct Id {
    std::string text;
    friend auto operator<=>(const Id &, const Id &) = default;
    [[nodiscard]] bool empty() const { return text.empty(); }
};

[[nodiscard]] Id newId();

} // namespace model
