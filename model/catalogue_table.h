#pragma once
#include <string_view>

/// The rows from which the catalogue is made, one thing a line, columns parted by "|":
///
///     name; other names | group/sub | usual pack, least-most on sale | shape surface | width depth height
///     (cm) kg
///         | uses refills (a week) sound | storage class area | allergens | flags | date row
///
/// A "?" before an allergen: may contain. Flags: g breakable, h hazard, s sharp, t used hot, m a mix-up
/// spoils the meal, p medicine. Date: bb best before, ub use by, with the row of the keeping-time data; "-"
/// is none. All figures are usual sizes and weights of such packs, common practice, to be confirmed on the
/// shelf.
namespace model::tables {

[[nodiscard]] std::string_view dryFood();
[[nodiscard]] std::string_view morePantry();
[[nodiscard]] std::string_view coldFood();
[[nodiscard]] std::string_view moreCold();
[[nodiscard]] std::string_view household();
[[nodiscard]] std::string_view moreHousehold();
[[nodiscard]] std::string_view kitchenware();

} // namespace model::tables
