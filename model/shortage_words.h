#pragma once
#include "model/problem.h"
#include <cstdint>
#include <string>
#include <vector>

/// The sentences that say what is short and what would mend it.
namespace model {

/// "a", "a and b", "a, b and 4 more".
[[nodiscard]] std::string listed(const std::vector<std::string> &names);
/// "50.3 cm", from thousandths.
[[nodiscard]] std::string centimetres(std::int64_t thousandths);
[[nodiscard]] std::string placeNames(const Problem &problem, const std::vector<int> &places);
[[nodiscard]] std::string itemNames(const Problem &problem, const std::vector<int> &items);

[[nodiscard]] std::vector<int> placesOfItsStorage(const Problem &problem, int i);
/// For a thing that may stand nowhere: the rules of the place that fewest keep it out of; "storage" if no
/// place has its storage.
[[nodiscard]] std::vector<std::string> easiestToMend(const Problem &problem, int i);
/// Things that may stand nowhere, by the same rules in each place: these rules, and what would help.
[[nodiscard]] std::string nowhereSentence(const Problem &problem, const std::vector<int> &items);
/// Things that need more width than the places where they may stand have; `rules` keep them from other
/// places.
[[nodiscard]] std::string widthSentence(const Problem &problem, const std::vector<int> &items,
                                        const std::vector<int> &places,
                                        const std::vector<std::string> &rules);
/// The same where the places are short because chemicals and food stand apart, the chemicals in
/// `chemicalPlaces`.
[[nodiscard]] std::string chemicalSentence(const Problem &problem, const std::vector<int> &items,
                                           const std::vector<int> &places,
                                           const std::vector<int> &chemicalPlaces);
/// The nearest thing to a plan that was found: what is overfull there.
[[nodiscard]] std::string overfullSentence(const Problem &problem, const std::vector<int> &items, int place);
[[nodiscard]] std::string mixedSentence(const Problem &problem, int place);
[[nodiscard]] std::string allergenSentence(const Problem &problem, int place);
/// Marks that were chosen by hand and cannot be: "alike", "once", "kinds" or "marker".
[[nodiscard]] std::string markSentence(const Problem &problem, const std::string &rule,
                                       const std::vector<int> &items);
[[nodiscard]] std::string nearSentence(const Problem &problem, const std::vector<int> &items);

[[nodiscard]] std::int64_t widthNeeded(const Problem &problem, const std::vector<int> &items); // thousandths
[[nodiscard]] std::int64_t widthThere(const Problem &problem, const std::vector<int> &places); // thousandths

} // namespace model
