#pragma once
#include <QQuickItem>
#include <QStringList>

namespace layout {

/// What a person with large text would find wrong under `root`, one sentence for each: words that are cut,
/// words outside their box, a control under 44 pixels, siblings of a column or row that overlap, a focus ring
/// that has no room.
[[nodiscard]] QStringList faultsUnder(QQuickItem *root);

/// Lets the window lay itself out until nothing moves any more. False if it never comes to rest.
[[nodiscard]] bool settle(QQuickItem *root);

/// From now on the running test fails at every warning of Qt about a file of the window: a loop in the
/// layout, a part that cannot be made, an unknown property say so only there.
void failOnWarnings();

} // namespace layout
