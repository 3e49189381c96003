#pragma once
#include "model/result.h"
#include <string>

namespace model {

/// Which parts of the field are missing, both eyes open. Side not attended to is another thing and is never
/// inferred from this.
struct FieldLoss {
    bool left = false, right = false, upper = false, lower = false, centre = false, around = false;
    friend bool operator==(const FieldLoss &, const FieldLoss &) = default;
};
/// Reads "none", "left half", "left and lower", "centre", "all round". Fails with NotUnderstood.
[[nodiscard]] Result<FieldLoss> parseFieldLoss(const std::string &typed);
/// "left side and centre missing", "nothing missing".
[[nodiscard]] std::string wordsOf(const FieldLoss &loss);
/// Which side of a shelf to favour, where to stand, how labels are set; empty if nothing is missing. Common
/// practice, after Zihl 1995 (reading with half a field) for left and right.
[[nodiscard]] std::string adviceFor(const FieldLoss &loss);

} // namespace model
