#pragma once
#include "model/case.h"
#include <QString>

namespace app {

/// Where the characters stand that `sentence` names as U+XXXX, for the therapist to write them in others:
/// " In: 🍅 sauce, larder, top shelf." Empty if it names none, or they stand in no name.
[[nodiscard]] QString whereTheyStand(const QString &sentence, const model::Case &record);

} // namespace app
