#include "app/local_words.h"
#include "model/sentence.h"
#include <QCoreApplication>
#include <QRegularExpression>
#include <QStringList>
#include <QTranslator>
#include <algorithm>
#include <array>

namespace app {
namespace {

bool inAmerican = false;

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

struct Spelling {
    const char *british;
    const char *american;
};
constexpr std::array spellings{
    Spelling{"centred", "centered"},   Spelling{"labelling", "labeling"}, Spelling{"colour", "color"},
    Spelling{"neighbour", "neighbor"}, Spelling{"grey", "gray"},          Spelling{"centre", "center"},
    Spelling{"metre", "meter"},        Spelling{"litre", "liter"},        Spelling{"labelled", "labeled"},
    Spelling{"yoghurt", "yogurt"},     Spelling{"judgement", "judgment"}, Spelling{"practise", "practice"},
    Spelling{"mould", "mold"},         Spelling{"organis", "organiz"},    Spelling{"recognis", "recogniz"},
    Spelling{"favour", "favor"},       Spelling{"behaviour", "behavior"}, Spelling{"catalogue", "catalog"},
    Spelling{"memoris", "memoriz"},    Spelling{"aluminium", "aluminum"}};

QRegularExpression anyBritish() {
    QStringList parts;
    for (const Spelling &spelling : spellings)
        parts << QLatin1String(spelling.british);
    return QRegularExpression(parts.join(QLatin1Char('|')), QRegularExpression::CaseInsensitiveOption);
}

QString inCaseOf(const QString &original, QString american) {
    if (original.isUpper())
        return american.toUpper();
    if (original.front().isUpper())
        american.front() = american.front().toUpper();
    return american;
}

QString americanSpelling(const QString &sentence) {
    static const QRegularExpression british = anyBritish();
    QString out;
    qsizetype done = 0;
    for (auto found = british.globalMatch(sentence); found.hasNext();) {
        const auto match = found.next();
        const auto spelling =
            std::ranges::find(spellings, match.captured().toLower(),
                              [](const Spelling &each) { return QString::fromLatin1(each.british); });
        out += sentence.mid(done, match.capturedStart() - done) +
               inCaseOf(match.captured(), QString::fromLatin1(spelling->american));
        done = match.capturedEnd();
    }
    return out + sentence.mid(done);
}

std::string translated(std::string_view sentence) {
    return QCoreApplication::translate("Sentence", std::string(sentence).c_str()).toStdString();
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

void translateModel(bool translate) {
    model::Sentence::sayBy(translate ? &translated : nullptr);
}

void useAmericanWords(bool use) {
    inAmerican = use;
}

QString localWords(const QString &sentence) {
    if (!inAmerican)
        return sentence;
    QString words = americanSpelling(sentence);
    for (const Measure &measure : measures)
        words = withUnit(words, measure);
    return words;
}

} // namespace app
