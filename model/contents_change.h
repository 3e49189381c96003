#pragma once
#include "model/contents.h"
#include "model/lexicon.h"

namespace model {

/// What a line does to the things of one place.
struct ContentsChange {
    std::vector<ContentsItem> added;
    std::vector<Thing> changed; // stood there before, as they are now
    std::vector<Thing> removed;
    std::vector<std::string> notFound; // was to be removed and does not stand there
};

/// Reads a line as what stands at a place: a thing that stands there already is corrected by what the line
/// says of it, "remove rice" takes one away, anything else is new. Fails as parseContents() does.
[[nodiscard]] Result<ContentsChange> changeBy(const std::string &line, const std::vector<Thing> &here,
                                              const Lexicon &lexicon);

/// One line of a list that was pasted or read from a file.
struct ListedLine {
    int number = 0; // in the list, from 1
    std::string text;
    std::string place; // as named by the list; empty: the place in hand
    std::vector<ContentsItem> items;
    std::string problem; // a sentence with the number; empty: understood
};

/// Reads a list: one line of contents each, bullets and "1." aside; a line that ends with a colon names the
/// place of those below it. A first line with column names, parted by commas, semicolons or tabs, makes it a
/// table: name, count, size, use, place and note are known columns.
[[nodiscard]] std::vector<ListedLine> readList(const std::string &text, const Lexicon &lexicon);

} // namespace model
