#pragma once
#include "model/contents.h"
#include "model/contents_reading.h"

namespace model::words {

/// Understands one thing of a contents line, separators taken off.
[[nodiscard]] ContentsItem parseItem(const std::string &text, const Lexicon &lexicon);
/// "2 small and 1 large tin of tuna" as one text for each amount; any other text as it is.
[[nodiscard]] std::vector<std::string> amountsParted(const std::string &text);

/// What to ask about a thing, with the answers as lines.
struct Doubt {
    std::string question;
    std::vector<DoubtAnswer> answers;
};
/// Doubts about amounts: sound-alike counts, two counts or sizes, unlikely counts, "often".
[[nodiscard]] std::optional<Doubt> amountDoubt(const Reading &reading);
/// An unlikely size. `entry`: whose usual pack is compared.
[[nodiscard]] std::optional<Doubt> sizeDoubt(const Reading &reading, const CatalogueThing *entry);
/// Two things in one: "salt and pepper".
[[nodiscard]] std::optional<Doubt> splitDoubt(const Reading &reading, const Lexicon &lexicon);
/// The name: nearly another one, the beginning of several, or part of one. Sets the entry that it most likely
/// is, or that it surely is if it gives no doubt.
[[nodiscard]] std::optional<Doubt> nameDoubt(Reading &reading, std::string &name, const Lexicon &lexicon);
/// Shape and size of a name that is not known.
[[nodiscard]] std::optional<Doubt> shapeDoubt(const Reading &reading, const std::string &name);
/// Words in brackets that say nothing.
[[nodiscard]] std::optional<Doubt> factDoubt(const Reading &reading);

} // namespace model::words
