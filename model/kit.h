#pragma once
#include "model/case.h"
#include <string>
#include <vector>

/// The marks that are at hand for a client: the program's kit with what was changed, added or left out.
namespace model {

/// In the order of the program's kit, own marks after it; without those that are not at hand.
[[nodiscard]] std::vector<Marker> kitOf(const Case &record);
/// With those that are not at hand.
[[nodiscard]] std::vector<Marker> wholeKitOf(const Case &record);
/// The mark with this key, at hand or not, as this client has it, or nullptr. Points into the record or the
/// program's kit.
[[nodiscard]] const Marker *markerIn(const Case &record, const std::string &key);
/// True unless it was left out of the kit.
[[nodiscard]] bool atHand(const Case &record, const std::string &key);

/// Puts a mark into the kit of a client, changed or new; a new one gets a key of its own from its name.
/// Fails with Missing without a name, Refused if another mark has the name, OutOfRange for a figure that
/// cannot be.
[[nodiscard]] Result<void> keepMark(Case &record, Marker marker, bool inKit);
/// Takes back every change of a mark of the program's kit; removes an own mark.
void forgetMark(Case &record, const std::string &key);

/// The safety facts that rule the mark out, with what of it they concern: "an implant (magnetic)".
[[nodiscard]] std::vector<std::string> factsThatBan(const Marker &marker);
/// "glass".
[[nodiscard]] std::string wordsOf(Surface surface);

} // namespace model
