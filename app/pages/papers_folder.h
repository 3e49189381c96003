#pragma once
#include "app/session.h"
#include <QStandardPaths>

namespace app {

/// The folder that papers were written to last, else the user's documents.
[[nodiscard]] inline QString papersFolder(const Session &session) {
    const QString folder = session.setting(QStringLiteral("papersFolder"));
    return folder.isEmpty() ? QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation) : folder;
}

} // namespace app
