#include "app/viewmodels/partner_lines.h"
#include <QRegularExpression>
#include <algorithm>
#include <array>

namespace app {
namespace {

using model::Case;
using model::Thing;

template<std::size_t Count> bool isAmong(const std::array<const char *, Count> &words, const QString &word) {
    return std::ranges::any_of(words, [&](const char *one) { return word == QLatin1String(one); });
}

/// Kitchen, things and work; a page that is not named here is held back.
bool isShown(const QString &page) {
    static constexpr std::array pages{"kitchen", "contents", "plan",   "appliances",
                                      "upkeep",  "legible",  "reading"};
    return isAmong(pages, page);
}

/// Work to be done and heat. Other findings tell what was measured of the client, or follow from it.
bool isWork(const FindingRow &finding) {
    return finding.key.startsWith(QLatin1String("task")) || finding.key == QLatin1String("supplies") ||
           (finding.key == QLatin1String("caution") && !finding.question.isEmpty());
}

/// Of a reading trial only which sheet lies there: times and wrong words are the client's.
bool isOfThePerson(const QString &page, const FormField &field) {
    return page == QLatin1String("reading") && field.key != QLatin1String("version") &&
           field.key != QLatin1String("distance");
}

/// As on the sheet for the household.
bool isHeldBack(const Thing &thing, const Case &record) {
    return (thing.medicine || thing.own) && !record.household.sharingConsent;
}

std::vector<Thing> heldBack(const Case &record, const Case *other) {
    std::vector<Thing> held;
    for (const Case *one : {&record, other})
        if (one)
            std::ranges::copy_if(one->things, std::back_inserter(held),
                                 [&](const Thing &thing) { return isHeldBack(thing, *one); });
    return held;
}

bool isNameOf(const QString &words, const std::vector<Thing> &held) {
    return std::ranges::any_of(held, [&](const Thing &thing) {
        return words.trimmed().compare(text(thing.name), Qt::CaseInsensitive) == 0;
    });
}

bool isRowOf(const ListRow &row, const std::vector<Thing> &held) {
    return isNameOf(row.title, held) || std::ranges::any_of(held, [&](const Thing &thing) {
               return !thing.id.text.empty() && row.key.contains(text(thing.id.text));
           });
}

QString withoutWord(QString words, const QString &word, const QString &instead,
                    QRegularExpression::PatternOptions options) {
    const QRegularExpression whole(QStringLiteral("(?<!\\w)%1(?!\\w)").arg(QRegularExpression::escape(word)),
                                   options | QRegularExpression::UseUnicodePropertiesOption);
    return words.replace(whole, instead);
}

/// Parts of the name and the code as whole words become "the client", or what is said `instead`.
QString withoutClient(QString words, const model::Client &client, const QString &instead) {
    static const QRegularExpression spaces(QStringLiteral("\\s+"));
    const QString all = text(client.name) + QLatin1Char(' ') + text(client.code);
    for (const QString &part : all.split(spaces, Qt::SkipEmptyParts))
        if (part.size() > 1)
            words = withoutWord(words, part, instead, QRegularExpression::CaseInsensitiveOption);
    return words;
}

/// A word with a capital that is written in these fields without being anybody's name.
bool isCommonWord(const QString &word) {
    static constexpr std::array common{"Adult",
                                       "All",
                                       "Alone",
                                       "Aunt",
                                       "Both",
                                       "Brother",
                                       "Carer",
                                       "Child",
                                       "Children",
                                       "Cleaner",
                                       "Client",
                                       "Cousin",
                                       "Daughter",
                                       "Delivery",
                                       "Doctor",
                                       "Dr",
                                       "Everybody",
                                       "Everyone",
                                       "Family",
                                       "Father",
                                       "Flat",
                                       "Four",
                                       "Friday",
                                       "Friend",
                                       "From",
                                       "Grandchild",
                                       "Grandchildren",
                                       "Granddaughter",
                                       "Grandson",
                                       "He",
                                       "Help",
                                       "Helper",
                                       "Her",
                                       "Him",
                                       "His",
                                       "Home",
                                       "Husband",
                                       "In",
                                       "It",
                                       "Live",
                                       "Lives",
                                       "Meals",
                                       "Miss",
                                       "Monday",
                                       "Mother",
                                       "Mr",
                                       "Mrs",
                                       "Ms",
                                       "Neighbor",
                                       "Neighbour",
                                       "Nephew",
                                       "Niece",
                                       "No",
                                       "Nobody",
                                       "None",
                                       "Nurse",
                                       "On",
                                       "One",
                                       "Online",
                                       "Or",
                                       "Our",
                                       "Own",
                                       "Parents",
                                       "Partner",
                                       "Saturday",
                                       "She",
                                       "Sister",
                                       "Social",
                                       "Some",
                                       "Somebody",
                                       "Son",
                                       "Sunday",
                                       "The",
                                       "Their",
                                       "They",
                                       "Three",
                                       "Thursday",
                                       "Tuesday",
                                       "Two",
                                       "Uncle",
                                       "Visits",
                                       "Wednesday",
                                       "Wife",
                                       "With",
                                       "Yes",
                                       "Your"};
    return isAmong(common, word);
}

/// Whoever lives here, helps or may be asked, as far as a name stands in these fields.
QStringList peopleNamed(const Case &record) {
    static const QRegularExpression capital(QStringLiteral("(?<![\\p{L}\\d])\\p{Lu}[\\p{L}]+"));
    const model::Household &house = record.household;
    QStringList names;
    for (const std::string &field :
         {house.people, house.whoShops, house.whoCooks, house.whoPutsAway, house.whoReadsPrint,
          record.client.whomToAsk, record.client.contact, record.client.referredBy}) {
        auto found = capital.globalMatch(text(field));
        while (found.hasNext())
            if (const QString word = found.next().captured(); !isCommonWord(word) && !names.contains(word))
                names << word;
    }
    return names;
}

QString withoutNames(QString words, const Case &record, const QString &client) {
    words = withoutClient(std::move(words), record.client, client);
    for (const QString &name : peopleNamed(record))
        words = withoutWord(std::move(words), name, QObject::tr("somebody"), {});
    return words;
}

QString sentence(const QStringList &parts, const QString &between) {
    QStringList filled = parts;
    filled.removeAll(QString());
    return filled.join(between);
}

QStringList formLines(const QString &page, const std::vector<FormField> &fields,
                      const std::vector<Thing> &held) {
    QStringList lines;
    for (const FormField &field : fields) {
        if (isNameOf(field.value, held))
            return {}; // the fields of a thing that is held back
        if (!field.value.isEmpty() && !isOfThePerson(page, field))
            lines << sentence({field.label, field.value}, QStringLiteral(": "));
    }
    return lines;
}

} // namespace

QStringList partnerLines(const QString &page, const QString &title, PageViewModel &model, const Case &record,
                         const Case *other) {
    QStringList lines{title};
    if (!isShown(page))
        return lines << QObject::tr("This page is not shown to others.");
    const std::vector<Thing> held = heldBack(record, other);
    for (const FindingRow &finding : model.findings()->rows())
        if (isWork(finding))
            lines << sentence({finding.question, finding.answer}, QStringLiteral(". "));
    lines << formLines(page, model.form()->rows(), held);
    for (const ListRow &row : model.rows()->rows())
        if (!isRowOf(row, held))
            lines << sentence({row.section, sentence({row.title, row.amount}, QStringLiteral(", ")),
                               page == QLatin1String("legible") ? QString() : row.facts},
                              QStringLiteral(". "));
    for (QString &line : lines) {
        line = withoutNames(line, record, QObject::tr("the client"));
        if (other)
            line = withoutNames(line, *other, QObject::tr("the other client"));
    }
    lines.removeAll(QString());
    return lines;
}

} // namespace app
