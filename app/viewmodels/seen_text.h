#pragma once
#include <QString>

namespace app {

/// A text without characters that cannot be seen, as they come in with what is pasted.
struct SeenText {
    QString text;
    QString told; // what was done to it, a sentence; empty: nothing
};
/// Tabs and, unless `lines` are allowed, ends of lines become spaces; control characters are left out. Marks
/// of writing direction and joiners of emoji stay.
[[nodiscard]] SeenText seenText(const QString &typed, bool lines);

} // namespace app
