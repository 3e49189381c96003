#pragma once
#include "model/contents_line.h"

namespace model::words {

/// What a line says of one thing, with what stood behind a comma and belongs to it: "cake, no nuts, daily".
struct Piece {
    std::string text;
    std::string said;           // as it was said, if it has to be asked; else empty
    std::optional<Doubt> doubt; // another thing, or more of this one?
};

/// The things of a line that was cleaned.
[[nodiscard]] std::vector<Piece> piecesOf(const std::string &line, const Lexicon &lexicon);

} // namespace model::words
