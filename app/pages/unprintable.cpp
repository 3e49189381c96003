#include "app/pages/unprintable.h"
#include "model/planning.h"
#include <QObject>
#include <QRegularExpression>
#include <QStringList>
#include <algorithm>

namespace app {
namespace {

QStringList charactersIn(const QString &sentence) {
    static const QRegularExpression code(QStringLiteral("U\\+([0-9A-F]{4,6})"));
    QStringList found;
    for (auto match = code.globalMatch(sentence); match.hasNext();) {
        const char32_t character = match.next().captured(1).toUInt(nullptr, 16);
        found << QString::fromUcs4(&character, 1);
    }
    return found;
}

/// What the papers may print of this client: a name and, for a thing, its place.
QStringList namesIn(const model::Case &record) {
    const auto words = [](const std::string &utf8) { return QString::fromStdString(utf8); };
    QStringList names{words(record.client.name)};
    for (const auto &unit : record.units)
        names << words(unit.name);
    for (const auto &place : record.places)
        names << words(place.name);
    for (const auto &thing : record.things)
        names << (thing.place ? QObject::tr("%1, %2").arg(words(thing.name),
                                                          words(model::placeWords(record, *thing.place)))
                              : words(thing.name));
    for (const auto &goal : record.goals)
        names << words(goal.sentence);
    return names;
}

} // namespace

QString whereTheyStand(const QString &sentence, const model::Case &record) {
    const QStringList characters = charactersIn(sentence);
    QStringList names;
    for (const QString &name : namesIn(record))
        if (!names.contains(name) && std::ranges::any_of(characters, [&](const QString &character) {
                return name.contains(character);
            }))
            names << name;
    constexpr int most = 3;
    if (names.isEmpty())
        return {};
    const QString more = names.size() > most
                             ? QLatin1Char(' ') + QObject::tr("And %1 more.").arg(names.size() - most)
                             : QString();
    return QLatin1Char(' ') + QObject::tr("In: %1.").arg(names.mid(0, most).join(QStringLiteral("; "))) +
           more;
}

} // namespace app
