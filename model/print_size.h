#pragma once
#include "model/better_eye.h"
#include "model/case.h"
#include "model/findings.h"
#include <optional>
#include <vector>

namespace model {

/// Beyond this no print is offered: "print will not do". A default of this program.
inline constexpr Points largestPrint{72};
/// Body text of large-print papers is never smaller.
inline constexpr Points smallestPaper{18};

/// Type in the papers' face that is `reserve` times the threshold of `acuity` at `distance`, in whole points,
/// rounded up. None if it would be larger than largestPrint.
[[nodiscard]] std::optional<Points> printFor(LogMar acuity, Centimetres distance, double reserve);

/// Print that the reading trial asks for, at the trial's distance.
struct ReadingSize {
    Points size; // critical print size, or twice the reading acuity where there was too little for a curve
    Centimetres distance;
    LogMar acuity;
    bool critical = false;
    Id from;
};
/// Reading acuity, critical print size and maximum speed of the newest reading trial. None without one.
[[nodiscard]] std::optional<ReadingSize> readingTrialFindings(const Case &record, std::vector<Finding> &all);

struct PrintMeaning {
    std::vector<Finding> all;
    bool readsLargePrint = false;
    Points paperSize = smallestPaper;
};
/// Label sizes, size of the papers, and whether print will do at all. `eye` is the near acuity if there is
/// one.
[[nodiscard]] PrintMeaning printMeaning(const Case &record, const std::optional<BetterEye> &eye,
                                        std::optional<double> logContrast);

} // namespace model
