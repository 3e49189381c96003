#pragma once
#include "model/units.h"
#include <string>
#include <vector>

/// The sentences of the reading trial. All of them are equally long and alike in build: ten words, 60
/// characters with the blanks, no word longer than eleven letters; who did what with what, and where or when,
/// in the past; no names, commas, figures or capitals but the first. No one, verb or place stands twice in a
/// version.
namespace model {

/// Three sheets of different sentences, so that a client does not learn them.
enum class ReadingVersion { A, B, C };
inline constexpr int readingLines = 12;
inline constexpr int readingCharacters = 60;
/// The first line, at the distance of the trial; each line below is 0.1 logMAR smaller.
inline constexpr LogMar largestReading{1.3};

/// The sentences of a version, without full stops, line by line from the largest.
[[nodiscard]] std::vector<std::string> readingSentences(ReadingVersion version);
/// Size of a line, counted from 1.
[[nodiscard]] LogMar readingSize(int line);
/// "A".
[[nodiscard]] std::string nameOf(ReadingVersion version);

} // namespace model
