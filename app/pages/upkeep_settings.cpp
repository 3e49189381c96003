#include "app/pages/entries.h"
#include "app/pages/upkeep_page.h"
#include "model/due_dates.h"
#include "model/sentence.h"
#include <algorithm>

/// The fields of the upkeep page: dates of one thing, and what the client chose.
namespace app {

using model::Case;
using model::ErrorCode;
using model::fail;
using model::Result;
using model::Sentence;
using model::Thing;
using model::UpkeepWishes;

namespace {

UpkeepWishes wishesOf(const Case &record) {
    return record.upkeep.value_or(UpkeepWishes{});
}

UpkeepWishes &wishesIn(Case &record) {
    if (!record.upkeep) {
        record.upkeep.emplace();
        record.upkeep->id = model::newId();
    }
    return *record.upkeep;
}

const Choices<model::DateRegion> &regions() {
    using enum model::DateRegion;
    static const Choices<model::DateRegion> all{
        {{QObject::tr("Not asked"), NotAsked},
         {QObject::tr("European Union or United Kingdom"), EuropeOrUk},
         {QObject::tr("United States"), UnitedStates}}};
    return all;
}

Thing &thingIn(Case &record, const model::Id &id) {
    return *std::ranges::find(record.things, id, &Thing::id);
}

} // namespace

PageViewModel::FieldSpec UpkeepPage::dayField(const char *key, const QString &label,
                                              std::optional<model::Date> Thing::*member) {
    const model::Id id = thingInHand()->id;
    return {{.key = key, .label = label, .hint = tr("For example 25 Nov 2026; empty: not known")},
            [this, member] { return thingInHand() ? shown(thingInHand()->*member) : QString(); },
            [this, id, member](Case &r, const QString &typed) -> Result<void> {
                const auto date = dateOrNone(typed);
                if (!date)
                    return tl::unexpected(date.error());
                if (*date && **date > m_session.today())
                    return fail(ErrorCode::OutOfRange,
                                Sentence::tr("That day is still to come: {1}. Not after today. Kept.",
                                             {typed.toStdString()}));
                thingIn(r, id).*member = *date;
                return {};
            }};
}

std::vector<PageViewModel::FieldSpec> UpkeepPage::dateFields(const Thing &thing) {
    const QString name = text(thing.name);
    const model::Id id = thing.id;
    return {{{.key = "printed",
              .label = tr("Date on the pack of %1").arg(name),
              .hint = tr("For example use by 28 Nov 2026, best before 30/4/2027; empty: not read")},
             [this] { return thingInHand() ? text(model::printedDateInWords(*thingInHand())) : QString(); },
             [id](Case &r, const QString &typed) {
                 return model::readPrintedDate(thingIn(r, id), typed.toStdString());
             }},
            dayField("bought", tr("Bought"), &Thing::bought),
            dayField("openedOn", tr("Opened"), &Thing::opened)};
}

PageViewModel::FieldSpec UpkeepPage::weekdayField(const char *key, const QString &label,
                                                  const QString &otherwise,
                                                  std::optional<int> UpkeepWishes::*member) {
    QStringList choices{otherwise};
    for (int day = 1; day <= 7; ++day)
        choices << text(model::weekdayName(day));
    return {{.key = key, .kind = FieldKind::Choice, .label = label, .choices = choices},
            [this, member, choices] { return choices.at((wishesOf(record()).*member).value_or(0)); },
            [member, choices](Case &r, const QString &chosen) -> Result<void> {
                const int day = static_cast<int>(choices.indexOf(chosen));
                wishesIn(r).*member = day > 0 ? std::optional(day) : std::nullopt;
                return {};
            }};
}

PageViewModel::FieldSpec UpkeepPage::priceField(const char *key, const QString &label,
                                                double UpkeepWishes::*member) {
    constexpr double most = 1000;
    return {
        {.key = key, .kind = FieldKind::Number, .label = label, .hint = tr("A default until you change it")},
        [this, member] { return QString::number(wishesOf(record()).*member, 'f', 2); },
        [member](Case &r, const QString &typed) -> Result<void> {
            const auto price = number(typed, 0, most, {});
            if (!price)
                return tl::unexpected(price.error());
            wishesIn(r).*member = *price;
            return {};
        }};
}

PageViewModel::FieldSpec UpkeepPage::roundDayField() {
    return {{.key = "roundDay",
             .kind = FieldKind::Number,
             .label = tr("Clean and audit: day of the month"),
             .hint = tr("1 to 31, the last day in a shorter month; empty: the day of the plan")},
            [this] {
                const auto day = wishesOf(record()).roundDay;
                return day ? QString::number(*day) : QString();
            },
            [](Case &r, const QString &typed) -> Result<void> {
                const auto day = model::readRoundDay(typed.toStdString());
                if (!day)
                    return tl::unexpected(day.error());
                wishesIn(r).roundDay = *day;
                return {};
            }};
}

PageViewModel::FieldSpec UpkeepPage::regionField() {
    return {{.key = "region",
             .kind = FieldKind::Choice,
             .label = tr("Where the food is sold"),
             .hint = tr("There use by is about safety or quality. Not asked: safety, the stricter"),
             .choices = regions().words()},
            [this] { return regions().wordOf(wishesOf(record()).region); },
            [](Case &r, const QString &chosen) -> Result<void> {
                wishesIn(r).region = regions().valueOf(chosen).value_or(model::DateRegion::NotAsked);
                return {};
            }};
}

PageViewModel::FieldSpec UpkeepPage::currencyField() {
    return {{.key = "currency", .label = tr("Word for the money"), .hint = tr("Stands after each price")},
            [this] { return text(wishesOf(record()).currency); },
            [](Case &r, const QString &typed) -> Result<void> {
                wishesIn(r).currency = typed.trimmed().toStdString();
                return {};
            }};
}

std::vector<PageViewModel::FieldSpec> UpkeepPage::settingFields() {
    return {regionField(),
            weekdayField("fridgeDay", tr("Fridge check"), tr("A week after the plan, and so on"),
                         &UpkeepWishes::fridgeWeekday),
            roundDayField(),
            weekdayField("roundWeekday", tr("Clean and audit: wait for a"), tr("Any day of the week"),
                         &UpkeepWishes::roundWeekday),
            currencyField(),
            priceField("clipPrice", tr("Price of a clip for a bag"), &UpkeepWishes::clipPrice),
            priceField("potPrice", tr("Price of a pot for marks"), &UpkeepWishes::potPrice)};
}

void UpkeepPage::done(std::optional<model::Date> UpkeepWishes::*member, const QString &words) {
    if (change(words, "upkeep.done", [&](Case &r) { wishesIn(r).*member = m_session.today(); }))
        say(tr("%1 today.").arg(words));
}

} // namespace app
