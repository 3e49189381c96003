#include "app/viewmodels/sentences.h"

namespace app {
namespace {

bool endsSentence(const QString &words) {
    return words.endsWith(QChar(0x2026)) || words.endsWith(QLatin1Char('.')) ||
           words.endsWith(QLatin1Char('?')) || words.endsWith(QLatin1Char('!'));
}

/// "Step 7 of 9: Plan." ends with "Plan", "Marker test." with "Marker test", but "Explanation." not with
/// "Nation".
bool endsWithPart(const QString &said, const QString &sentence) {
    if (!said.endsWith(sentence, Qt::CaseInsensitive))
        return false;
    const auto before = said.size() - sentence.size();
    return before == 0 || said.at(before - 1).isSpace();
}

bool isBetweenWords(QChar letter) {
    return letter.isSpace() || letter.category() == QChar::Punctuation_Dash;
}

} // namespace

QString sentencesOnce(const QStringList &parts) {
    QString said;
    for (const QString &part : parts) {
        const QString words = part.trimmed();
        if (words.isEmpty())
            continue;
        const QString sentence = endsSentence(words) ? words : words + QLatin1Char('.');
        if (endsWithPart(said, sentence))
            continue;
        said += (said.isEmpty() ? QString() : QStringLiteral(" ")) + sentence;
    }
    return said;
}

QString capital(QString words) {
    if (!words.isEmpty())
        words[0] = words[0].toUpper();
    return words;
}

QString cutShort(const QString &words) {
    constexpr qsizetype most = 200;
    constexpr qsizetype leastOfWords = 100; // else it is cut within a word
    if (words.size() <= most)
        return words;
    qsizetype end = words.lastIndexOf(QLatin1Char(' '), most);
    if (end < leastOfWords)
        end = words.at(most - 1).isHighSurrogate() ? most - 1 : most;
    return words.left(end).trimmed() + QChar(0x2026);
}

QString joinedWords(const QString &words) {
    QString out;
    for (const QChar letter : words.toLower())
        if (!isBetweenWords(letter))
            out += letter;
    return out;
}

bool isFoundBy(const QString &title, const QString &typed) {
    const QString wanted = typed.trimmed();
    if (title.contains(wanted, Qt::CaseInsensitive))
        return true;
    const QString joined = joinedWords(wanted);
    for (qsizetype from = 0; from < title.size(); ++from)
        if ((from == 0 || isBetweenWords(title.at(from - 1))) &&
            joinedWords(title.mid(from)).startsWith(joined))
            return true;
    return false;
}

} // namespace app
