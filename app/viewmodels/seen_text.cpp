#include "app/viewmodels/seen_text.h"
#include <QCoreApplication>

namespace app {
namespace {

struct Seen {
    Q_DECLARE_TR_FUNCTIONS(Seen)
};

bool isSpaceToBe(QChar letter, bool lines) {
    const bool ends =
        letter == QLatin1Char('\n') || letter == QChar::ParagraphSeparator || letter == QChar::LineSeparator;
    return letter == QLatin1Char('\t') || (!lines && ends);
}

bool isUnseen(QChar letter) {
    return letter.category() == QChar::Other_Control && letter != QLatin1Char('\n');
}

} // namespace

SeenText seenText(const QString &typed, bool lines) {
    QString in = typed;
    in.replace(QLatin1String("\r\n"), QLatin1String("\n")).replace(QLatin1Char('\r'), QLatin1Char('\n'));
    SeenText out;
    int spaces = 0;
    int unseen = 0;
    for (const QChar letter : std::as_const(in)) {
        if (isSpaceToBe(letter, lines)) {
            out.text += QLatin1Char(' ');
            ++spaces;
        } else if (isUnseen(letter)) {
            ++unseen;
        } else {
            out.text += letter;
        }
    }
    if (spaces > 0)
        out.told = Seen::tr("Tabs and ends of lines became spaces.");
    if (unseen > 0)
        out.told += (spaces > 0 ? QStringLiteral(" ") : QString()) +
                    (unseen == 1 ? Seen::tr("1 character that cannot be seen was left out.")
                                 : Seen::tr("%1 characters that cannot be seen were left out.").arg(unseen));
    return out;
}

} // namespace app
