#pragma once

namespace app {

/// Gives text fields and text areas an accessible interface of our own. Call once, before QML is loaded.
///
/// Qt 6.4 does not read a preset text on entry or by line, tells of no deleted letter, loses the description
/// to the placeholder and the name of a password field, and shows a typed secret to the reader. A text
/// control declares `property string spokenName` and, if it has one, `property string spokenHint`.
void installTextAccessible();

} // namespace app
