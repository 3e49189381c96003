#pragma once
#include "model/case.h"
#include <string>
#include <vector>

/// Meanings that have a mark of their own, the same everywhere. A meaning is a key: "hazard", "allergen",
/// "own", or "diet:" and the fact in the client's words.
namespace model {

/// Judgement: more marks than that are not told apart in a hurry.
inline constexpr std::size_t mostDietFacts = 3;

/// Those for which a mark is reserved, the first one first: hazard always, allergen where one is avoided, the
/// first diet facts that the client wants, own where she has a bin or a thing of her own.
[[nodiscard]] std::vector<std::string> meaningsWanted(const Case &record);
/// "hazard", "allergen", "the client's own", "low salt".
[[nodiscard]] std::string meaningName(const std::string &meaning);
[[nodiscard]] bool isDietFact(const std::string &meaning);
/// What a label must say of what does harm and has no mark that means it: "danger" of a hazard, "avoid" of an
/// avoided allergen; empty if nothing, and for medicines, whose labels are the pharmacist's.
[[nodiscard]] std::string warningWord(const Thing &thing, const Diet &diet,
                                      const std::vector<MeaningMark> &reserved);

/// Sentences on what got no mark, or too many: diet facts beyond the most, meanings for which no touch mark
/// is left, more meanings than the client may learn.
[[nodiscard]] std::vector<std::string> meaningsTold(const Case &record,
                                                    const std::vector<MeaningMark> &reserved);

/// Facts between commas, each once. Fails with OutOfRange for one of more than 30 letters.
[[nodiscard]] Result<std::vector<std::string>> readDietFacts(const std::string &typed);
/// The same for a thing: only facts that the client wants marked. Fails with NotUnderstood and names them.
[[nodiscard]] Result<std::vector<std::string>> readThingFacts(const std::string &typed, const Diet &diet);

} // namespace model
