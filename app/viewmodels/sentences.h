#pragma once
#include <QString>
#include <QStringList>

namespace app {

/// The parts as sentences, each with a full stop or a mark of its own. A part that is empty, or that the
/// words before it end with already, is left out: nothing is heard twice.
[[nodiscard]] QString sentencesOnce(const QStringList &parts);
/// With a capital first letter, where it begins a heading.
[[nodiscard]] QString capital(QString words);
/// At most about 200 letters, cut between words, with an ellipsis where something was left out.
[[nodiscard]] QString cutShort(const QString &words);
/// In small letters, without spaces and hyphens.
[[nodiscard]] QString joinedWords(const QString &words);
/// Whether `typed` is a part of the title, or the beginning of some of its words with or without spaces and
/// hyphens: "markertest" and "marker-test" find "Marker test".
[[nodiscard]] bool isFoundBy(const QString &title, const QString &typed);

} // namespace app
