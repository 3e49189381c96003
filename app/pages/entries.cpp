#include "app/pages/entries.h"
#include "app/viewmodels/page_view_model.h"
#include "model/findings.h"

namespace app {

using model::ErrorCode;
using model::fail;
using model::Result;

namespace {

struct Entries {
    Q_DECLARE_TR_FUNCTIONS(Entries)
};

} // namespace

QString answerValue(model::Answer answer) {
    switch (answer) {
    case model::Answer::NotAsked:
        return {};
    case model::Answer::Yes:
        return QStringLiteral("yes");
    case model::Answer::No:
        return QStringLiteral("no");
    }
    return {};
}

model::Answer answerOf(const QString &value) {
    if (value == QLatin1String("yes"))
        return model::Answer::Yes;
    return value == QLatin1String("no") ? model::Answer::No : model::Answer::NotAsked;
}

QString counted(std::size_t n, const QString &one, const QString &many) {
    return n == 1 ? one : many.arg(n);
}

QStringList yesNoWords() {
    return {Entries::tr("Yes"), Entries::tr("No")};
}

QString yesNo(bool value) {
    return yesNoWords().at(value ? 0 : 1);
}

bool isYes(const QString &word) {
    return word == yesNoWords().first();
}

Result<double> number(const QString &typed, double least, double most, const QString &unit) {
    QString digits = typed.trimmed();
    if (!unit.isEmpty() && digits.endsWith(unit, Qt::CaseInsensitive))
        digits = digits.chopped(unit.size()).trimmed();
    digits.replace(QLatin1Char(','), QLatin1Char('.'));
    bool read = false;
    const double value = digits.toDouble(&read);
    const QString range = Entries::tr("%1 to %2 %3").arg(least).arg(most).arg(unit).trimmed();
    if (!read || !std::isfinite(value))
        return fail(ErrorCode::NotUnderstood,
                    Entries::tr("Not a number: %1. Try %2. Kept.").arg(typed, range).toStdString());
    if (value < least || value > most)
        return fail(ErrorCode::OutOfRange,
                    Entries::tr("%1 cannot be. Possible: %2. Kept.").arg(typed, range).toStdString());
    return value;
}

Result<int> wholeNumber(const QString &typed, int least, int most) {
    const auto value = number(typed, least, most, {});
    if (!value)
        return tl::unexpected(value.error());
    if (*value != std::floor(*value))
        return fail(ErrorCode::NotUnderstood,
                    Entries::tr("Not a whole number: %1. Kept.").arg(typed).toStdString());
    return static_cast<int>(*value);
}

Result<std::optional<model::Length>> lengthOrNone(const QString &typed, double longestCm) {
    if (typed.trimmed().isEmpty())
        return std::nullopt;
    auto length = model::parseLength(typed.toStdString(), {longestCm});
    if (!length)
        return tl::unexpected(length.error());
    return std::optional(std::move(*length));
}

Result<std::optional<model::Date>> dateOrNone(const QString &typed) {
    if (typed.trimmed().isEmpty())
        return std::nullopt;
    const auto date = model::parseDate(typed.toStdString());
    if (!date)
        return tl::unexpected(date.error());
    return std::optional(*date);
}

QString shown(const std::optional<model::Length> &length) {
    if (!length)
        return {};
    if (!length->typed.empty())
        return text(length->typed);
    return Entries::tr("%1 cm").arg(length->value.value);
}

QString shown(const std::optional<model::Date> &date) {
    return date ? text(model::dateInWords(*date)) : QString();
}

const Choices<model::UnitKind> &unitKinds() {
    using enum model::UnitKind;
    static const Choices<model::UnitKind> choices{{{Entries::tr("Wall cupboard"), WallCupboard},
                                                   {Entries::tr("Base cupboard"), BaseCupboard},
                                                   {Entries::tr("Drawer stack"), DrawerStack},
                                                   {Entries::tr("Larder"), Larder},
                                                   {Entries::tr("Worktop"), Worktop},
                                                   {Entries::tr("Fridge"), Fridge},
                                                   {Entries::tr("Freezer"), Freezer},
                                                   {Entries::tr("Rack"), Rack}}};
    return choices;
}

const Choices<model::WorkArea> &workAreas() {
    using enum model::WorkArea;
    static const Choices<model::WorkArea> choices{{{Entries::tr("None"), None},
                                                   {Entries::tr("Cooker"), Hob},
                                                   {Entries::tr("Worktop where food is prepared"), Prep},
                                                   {Entries::tr("Sink"), Sink},
                                                   {Entries::tr("Fridge"), Fridge},
                                                   {Entries::tr("Table"), Table},
                                                   {Entries::tr("Door"), Entry}}};
    return choices;
}

const Choices<model::Storage> &storages() {
    using enum model::Storage;
    static const Choices<model::Storage> choices{
        {{Entries::tr("Dry"), Dry}, {Entries::tr("Fridge"), Fridge}, {Entries::tr("Freezer"), Freezer}}};
    return choices;
}

const Choices<model::Light> &lights() {
    using enum model::Light;
    static const Choices<model::Light> choices{{{Entries::tr("Not asked"), NotAsked},
                                                {Entries::tr("Bright"), Bright},
                                                {Entries::tr("Fair"), Fair},
                                                {Entries::tr("Dim"), Dim}}};
    return choices;
}

const Choices<model::BrailleGrade> &brailleGrades() {
    using enum model::BrailleGrade;
    static const Choices<model::BrailleGrade> choices{{{Entries::tr("No braille"), None},
                                                       {Entries::tr("Uncontracted"), Uncontracted},
                                                       {Entries::tr("Contracted"), Contracted}}};
    return choices;
}

const Choices<model::Klass> &klasses() {
    using enum model::Klass;
    static const Choices<model::Klass> choices{{{Entries::tr("Food"), Food},
                                                {Entries::tr("Cleaning or other chemical"), Chemical},
                                                {Entries::tr("Neither"), Neither}}};
    return choices;
}

const Choices<model::Shape> &shapes() {
    using enum model::Shape;
    static const Choices<model::Shape> choices{{{Entries::tr("Jar"), Jar},
                                                {Entries::tr("Bottle"), Bottle},
                                                {Entries::tr("Tin"), Can},
                                                {Entries::tr("Box"), Box},
                                                {Entries::tr("Bag"), Bag},
                                                {Entries::tr("Packet"), Packet},
                                                {Entries::tr("Tub"), Tub},
                                                {Entries::tr("Canister"), Canister},
                                                {Entries::tr("Tube"), Tube},
                                                {Entries::tr("Mug"), Mug},
                                                {Entries::tr("Plate"), Plate},
                                                {Entries::tr("Bowl"), Bowl},
                                                {Entries::tr("Pan"), Pan},
                                                {Entries::tr("Tool"), Tool},
                                                {Entries::tr("Other"), Other}}};
    return choices;
}

const Choices<model::Surface> &surfaces() {
    using enum model::Surface;
    static const Choices<model::Surface> choices{{{Entries::tr("Glass"), Glass},
                                                  {Entries::tr("Metal"), Metal},
                                                  {Entries::tr("Plastic"), Plastic},
                                                  {Entries::tr("Card"), Card},
                                                  {Entries::tr("Foil"), Foil},
                                                  {Entries::tr("Paper"), Paper},
                                                  {Entries::tr("Cloth"), Cloth},
                                                  {Entries::tr("Ceramic"), Ceramic},
                                                  {Entries::tr("Wood"), Wood}}};
    return choices;
}

} // namespace app
