#pragma once
#include "model/contents.h"
#include "model/contents_reading.h"

namespace model::words {

/// What a line says of one thing, ready to be written.
struct LineParts {
    std::vector<double> counts;
    std::string size; // "400 g"; empty: not said
    std::string name, like;
    bool quoted = false;
    std::optional<double> uses;
    std::vector<std::string> facts, mayContain, claims, notes;
    std::string unknown; // what is still to be asked
    bool really = false;
};

/// What was said, with what is still in doubt.
[[nodiscard]] LineParts partsOf(const Reading &reading);
/// One thing of a line, in the order of the grammar.
[[nodiscard]] std::string lineFrom(const LineParts &parts);
/// "daily", "3/week", "2/month".
[[nodiscard]] std::string oftenWords(double usesPerWeek);

} // namespace model::words
