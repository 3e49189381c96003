#pragma once
#include "model/case.h"
#include "model/findings.h"
#include "model/marks.h"
#include <vector>

/// Which marks of the kit this client may get, and which of them carry the meanings.
namespace model {

/// True if a safety fact rules the mark out, whoever made the list: magnets beside an implant, latex with an
/// allergy, rough or sharp marks on thin or numb skin, small parts where there are children. Not asked rules
/// out as well.
[[nodiscard]] bool ruledOut(const Marker &marker, const Case &record);

/// Marks in the order of the kit: those told apart in the marker test, or the whole kit while it was not
/// done, less what is ruled out, and text only where the client can read it.
[[nodiscard]] std::vector<Marker> usableMarks(const Case &record, const Findings &findings);

/// The touch marks reserved for the meanings that are wanted, see meanings.h: those of the last plan if they
/// are still usable, else the ones least confused with all others, by the marker test where it was done.
[[nodiscard]] std::vector<MeaningMark> reservedMarks(const Case &record, const std::vector<Marker> &usable,
                                                     const Findings &findings);

} // namespace model
