#include "app/local_words.h"
#include <QRegularExpression>
#include <QStringList>
#include <QTranslator>
#include <array>

namespace app {
namespace {

bool customary = false;

constexpr double cmInAnInch = 2.54, kgInAPound = 0.45359237;

struct Measure {
    const char *metric;
    const char *unit;
    double factor, offset;
    int decimals;
};
constexpr std::array measures{Measure{"cm", "in", 1 / cmInAnInch, 0, 1},
                              Measure{"kg", "lb", 1 / kgInAPound, 0, 1},
                              Measure{"degrees Celsius", "degrees Fahrenheit", 1.8, 32, 0}};

QString converted(const QString &number, const Measure &measure) {
    QString words =
        QString::number(number.toDouble() * measure.factor + measure.offset, 'f', measure.decimals);
    if (words.endsWith(QLatin1String(".0")))
        words.chop(2);
    return words == QLatin1String("-0") ? QStringLiteral("0") : words;
}

QString withUnit(const QString &sentence, const Measure &measure) {
    const QRegularExpression amount(
        QStringLiteral("(?:(-?\\d+(?:\\.\\d+)?) (to|by) )?(-?\\d+(?:\\.\\d+)?) %1\\b(?! \\()")
            .arg(QLatin1String(measure.metric)));
    QString out;
    qsizetype done = 0;
    for (auto found = amount.globalMatch(sentence); found.hasNext();) {
        const auto match = found.next();
        out += sentence.mid(done, match.capturedEnd() - done) + QStringLiteral(" (");
        if (match.hasCaptured(1))
            out += converted(match.captured(1), measure) + QLatin1Char(' ') + match.captured(2) +
                   QLatin1Char(' ');
        out += converted(match.captured(3), measure) + QLatin1Char(' ') + QLatin1String(measure.unit) +
               QLatin1Char(')');
        done = match.capturedEnd();
    }
    return out + sentence.mid(done);
}

} // namespace

QStringList languages() {
    return {QStringLiteral("en_GB"), QStringLiteral("en_US")};
}

QString languageOf(const QString &desktop) {
    return languages().contains(desktop) ? desktop : languages().constFirst();
}

std::unique_ptr<QTranslator> translatorFor(const QString &language) {
    auto translator = std::make_unique<QTranslator>();
    if (!languages().contains(language) || language == languages().constFirst() ||
        !translator->load(QStringLiteral(":/translations/feltmark_%1.qm").arg(language)))
        return nullptr;
    return translator;
}

void showCustomaryUnits(bool show) {
    customary = show;
}

QString localWords(const QString &sentence) {
    if (!customary)
        return sentence;
    QString words = sentence;
    for (const Measure &measure : measures)
        words = withUnit(words, measure);
    return words;
}

} // namespace app
