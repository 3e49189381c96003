#pragma once
#include "model/result.h"
#include "model/units.h"
#include <optional>
#include <string>
#include <vector>

/// The reading trial: sentences of ten words in falling size, read aloud and timed.
namespace model {

inline constexpr int wordsPerSentence = 10;

/// One sentence as it was read.
struct ReadSentence {
    LogMar size{}; // of its x-height at the trial's distance
    double seconds = 0;
    int wrongWords = 0;
    friend bool operator==(const ReadSentence &, const ReadSentence &) = default;
};

/// Words a minute: 60 x (10 - wrong) / seconds. Source: Minnesota Laboratory for Low-Vision Research.
[[nodiscard]] double wordsPerMinute(int wrongWords, double seconds);
/// Reading acuity of a chart that begins at 1.3 logMAR: 1.4 - 0.1 x sentences + 0.01 x wrong words, for its
/// own distance. Source: Minnesota Laboratory for Low-Vision Research.
[[nodiscard]] LogMar readingAcuity(int sentences, int wrongWords, LogMar largest = {1.3});
/// Speed at print size P: Rmax (1 - exp(-2.3 (P - P0) / (Pc - P0))), 0 below P0. Sizes as angles (MAR); P0
/// threshold, Pc critical print size. Source: ARVO meeting abstract 2413112.
[[nodiscard]] double speedAt(double size, double threshold, double critical, double maximum);

/// What a trial says. Speeds in words a minute, sizes for the trial's distance.
struct ReadingResult {
    LogMar acuity{};
    std::optional<LogMar> critical; // smallest print read at full speed (90 % of the maximum)
    std::optional<double> maximum;  // none with fewer than three sentences, and then `why` says so
    std::string why;                // why there is no critical size or maximum
    bool stillRising = false;       // speed was still rising at the largest print: both are lower bounds
    friend bool operator==(const ReadingResult &, const ReadingResult &) = default;
};
/// The curve of speedAt() fitted by least squares, with its threshold within a line below the
/// smallest print that was read. Sentences in any
/// order; one with no right word counts for the acuity as 10 wrong and not for the speed. Fails with Missing
/// without a sentence, OutOfRange for seconds or words that cannot be, and NotUnderstood if a size stands
/// twice or the sizes are not 0.1 logMAR apart.
[[nodiscard]] Result<ReadingResult> readingResult(std::vector<ReadSentence> sentences);

/// Reads a trial as it is kept: "1.3: 4.2 s, 0 wrong; 1.2: 4.5 s, 1 wrong". Fails with NotUnderstood.
[[nodiscard]] Result<std::vector<ReadSentence>> parseTrial(const std::string &typed);
/// The other way round.
[[nodiscard]] std::string trialText(const std::vector<ReadSentence> &sentences);
/// Reads one line of a trial: "4.2", "4.2 s, 1 wrong", "4.2 1"; wrong words 0 to 10, seconds above 0 and at
/// most 600; "not read" is ten wrong words. Fails with NotUnderstood or OutOfRange.
[[nodiscard]] Result<ReadSentence> parseReadLine(LogMar size, const std::string &typed);

} // namespace model
