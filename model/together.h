#pragma once
#include "model/case.h"
#include "model/findings.h"
#include <string>
#include <vector>

/// Two clients who live with one kitchen: one plan, the stricter rule of each, every label in a medium of
/// each. Records, papers and consents stay apart.
namespace model {

/// What one plan for both goes by.
struct Together {
    Case record;                      // kitchen, wishes and plan of the first; of both the cautious answers
    Findings findings;                // the narrower of each
    std::vector<std::string> clashes; // what the two need against each other, one sentence each
};

/// `keeper` holds the kitchen. Marks are those that both tell apart; a label that only one of them reads is
/// made in two media, and counted as such.
[[nodiscard]] Together together(const Case &keeper, const Case &partner, Date on);

/// The reader's own record with the shared kitchen and its plan, labels in a medium that the reader reads;
/// for the reader's own papers. `reader` are her own findings.
[[nodiscard]] Case ownShare(const Case &own, const Findings &reader, const Case &shared);

/// The text media that this client reads on a label, in the order of the kit.
[[nodiscard]] std::vector<MarkMedium> labelMedia(const Case &record, const Findings &findings);

/// What one needs and the other cannot have, or must not forget.
[[nodiscard]] std::vector<std::string> clashesOf(const Case &keeper, const Findings &one, const Case &partner,
                                                 const Findings &other);

} // namespace model
