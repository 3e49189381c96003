#include "app/pages/entries.h"
#include "app/pages/kitchen_page.h"
#include "model/contents.h"
#include "model/planning.h"
#include "reports/kitchen_figure.h"
#include <algorithm>

namespace app {

using model::Case;
using model::ErrorCode;
using model::fail;
using model::Id;
using model::Result;
using model::Thing;

namespace {

QString usesWords(double perWeek) {
    if (perWeek == 7)
        return QObject::tr("daily");
    if (perWeek == 1)
        return QObject::tr("weekly");
    return QObject::tr("%1 times a week").arg(perWeek);
}

/// Frequency as hers and the catalogue's facts in soft words.
QString usualFacts(const Thing &thing) {
    QStringList facts;
    facts << shapes().wordOf(thing.shape).toLower();
    if (thing.width && thing.height)
        facts << QObject::tr("%1 by %2 cm").arg(thing.width->value.value).arg(thing.height->value.value);
    if (thing.usual.contains("uses") && thing.usesPerWeek)
        facts << usesWords(*thing.usesPerWeek);
    return facts.join(QStringLiteral(", "));
}

QString ownFacts(const Thing &thing) {
    QStringList facts;
    if (!thing.usual.contains("uses") && thing.usesPerWeek)
        facts << usesWords(*thing.usesPerWeek);
    if (thing.glass && !thing.usual.contains("glass"))
        facts << QObject::tr("glass");
    for (const auto &fact : thing.allergens)
        if (fact.state != model::AllergenState::ReadNoneListed)
            facts << (fact.state == model::AllergenState::Contains
                          ? text(fact.allergen)
                          : QObject::tr("%1, to be checked").arg(text(fact.allergen)));
    if (thing.hazard)
        facts << QObject::tr("can hurt");
    return facts.join(QStringLiteral(", "));
}

QString doubtWords(const Thing &thing) {
    return thing.doubt.empty() ? QObject::tr("shape and size?") : text(thing.doubt);
}

bool isDoubtful(const Thing &thing) {
    return !thing.doubt.empty() || !thing.width || !thing.height || !thing.depth;
}

Result<void> writeAllergens(Thing &thing, const QString &typed) {
    std::vector<model::AllergenFact> facts;
    for (const QString &part : typed.split(QLatin1Char(','), Qt::SkipEmptyParts)) {
        const std::string word = part.trimmed().toLower().toStdString();
        const auto found = std::ranges::find_if(model::allergens(), [&](const model::AllergenName &name) {
            return name.key == word || name.words == word;
        });
        if (found == model::allergens().end())
            return fail(ErrorCode::NotUnderstood,
                        "Not one of the 14 allergens: " + word + ". For example gluten, milk, nuts. Kept.");
        facts.push_back({found->key, model::AllergenState::Contains, ""});
    }
    thing.allergens = std::move(facts);
    return {};
}

QString allergensOf(const Thing &thing) {
    QStringList words;
    for (const auto &fact : thing.allergens)
        words << text(fact.allergen);
    return words.join(QStringLiteral(", "));
}

} // namespace

int ContentsPage::placeIndex() const {
    const auto rows = placeRows(record());
    const auto found = std::ranges::find(rows, text(m_place.text), &ListRow::key);
    return found == rows.end() ? -1 : static_cast<int>(found - rows.begin());
}

QStringList ContentsPage::commands() const {
    return {QStringLiteral("correct"), QStringLiteral("readBack"), QStringLiteral("nextGap"),
            QStringLiteral("previousGap")};
}

std::vector<PageViewModel::FieldSpec> ContentsPage::thingFields(const Id &id) {
    const auto thing = [this, id]() -> const Thing & {
        return *std::ranges::find(record().things, id, &Thing::id);
    };
    using Write = std::function<Result<void>(Thing &, const QString &)>;
    const auto writing = [id](const char *fact, Write write) {
        return [id, fact, write = std::move(write)](Case &r, const QString &typed) -> Result<void> {
            auto &changed = *std::ranges::find(r.things, id, &Thing::id);
            changed.usual.erase(fact);
            return write(changed, typed);
        };
    };
    const auto size = [&](const char *key, const QString &label,
                          std::optional<model::Length> Thing::*member) -> FieldSpec {
        const bool usual = thing().usual.contains(key);
        return {{.key = key, .label = label, .hint = usual ? tr("Usual, not measured") : QString()},
                [thing, member] { return shown(thing().*member); },
                writing(key, [member](Thing &t, const QString &typed) -> Result<void> {
                    auto length = lengthOrNone(typed, 200);
                    if (!length)
                        return tl::unexpected(length.error());
                    t.*member = std::move(*length);
                    return {};
                })};
    };
    const auto amount = [&](const char *key, const QString &label, const QString &unit, double most,
                            std::optional<double> Thing::*member) -> FieldSpec {
        return {{.key = key, .kind = FieldKind::Number, .label = label, .unit = unit},
                [thing, member] { return thing().*member ? QString::number(*(thing().*member)) : QString(); },
                writing(key, [member, most](Thing &t, const QString &typed) -> Result<void> {
                    (t.*member).reset();
                    if (typed.trimmed().isEmpty())
                        return {};
                    const auto value = number(typed, 0, most, {});
                    if (!value)
                        return tl::unexpected(value.error());
                    t.*member = *value;
                    return {};
                })};
    };
    const auto flag = [&](const char *key, const QString &label, bool Thing::*member) -> FieldSpec {
        return {{.key = key, .kind = FieldKind::Choice, .label = label, .choices = yesNoWords()},
                [thing, member] { return yesNo(thing().*member); },
                writing(key, [member](Thing &t, const QString &chosen) -> Result<void> {
                    t.*member = isYes(chosen);
                    return {};
                })};
    };
    return {
        {{.key = "name", .label = tr("Name")},
         [thing] { return text(thing().name); },
         writing("name",
                 [](Thing &t, const QString &typed) -> Result<void> {
                     if (typed.trimmed().isEmpty())
                         return fail(ErrorCode::Missing, "A name is needed. The one before is kept.");
                     t.name = typed.trimmed().toStdString();
                     return {};
                 })},
        {{.key = "count", .kind = FieldKind::Number, .label = tr("How many")},
         [thing] { return thing().count ? QString::number(*thing().count) : QString(); },
         writing("count",
                 [](Thing &t, const QString &typed) -> Result<void> {
                     t.count.reset();
                     if (typed.trimmed().isEmpty())
                         return {};
                     const auto count = wholeNumber(typed, 1, 999);
                     if (!count)
                         return tl::unexpected(count.error());
                     t.count = *count;
                     return {};
                 })},
        {{.key = "shape", .kind = FieldKind::Choice, .label = tr("Shape"), .choices = shapes().words()},
         [thing] { return shapes().wordOf(thing().shape); },
         writing("shape",
                 [](Thing &t, const QString &chosen) -> Result<void> {
                     t.shape = shapes().valueOf(chosen).value_or(t.shape);
                     return {};
                 })},
        {{.key = "surface", .kind = FieldKind::Choice, .label = tr("Surface"), .choices = surfaces().words()},
         [thing] { return surfaces().wordOf(thing().surface); },
         writing("surface",
                 [](Thing &t, const QString &chosen) -> Result<void> {
                     t.surface = surfaces().valueOf(chosen).value_or(t.surface);
                     return {};
                 })},
        size("width", tr("Width of one"), &Thing::width),
        size("depth", tr("Depth of one"), &Thing::depth),
        size("height", tr("Height of one"), &Thing::height),
        {{.key = "weight", .kind = FieldKind::Number, .label = tr("Weight of one"), .unit = tr("kg")},
         [thing] { return thing().weight ? QString::number(thing().weight->value) : QString(); },
         writing("weight",
                 [](Thing &t, const QString &typed) -> Result<void> {
                     t.weight.reset();
                     if (typed.trimmed().isEmpty())
                         return {};
                     const auto value = number(typed, 0.001, 50, QStringLiteral("kg"));
                     if (!value)
                         return tl::unexpected(value.error());
                     t.weight = model::Kilograms{*value};
                     return {};
                 })},
        amount("uses", tr("Uses a week"), {}, 100, &Thing::usesPerWeek),
        amount("refills", tr("New packs a week"), {}, 50, &Thing::refillsPerWeek),
        {{.key = "class", .kind = FieldKind::Choice, .label = tr("What it is"), .choices = klasses().words()},
         [thing] { return klasses().wordOf(thing().klass); },
         writing("class",
                 [](Thing &t, const QString &chosen) -> Result<void> {
                     t.klass = klasses().valueOf(chosen).value_or(t.klass);
                     return {};
                 })},
        {{.key = "storage", .kind = FieldKind::Choice, .label = tr("Storage"), .choices = storages().words()},
         [thing] { return storages().wordOf(thing().storage); },
         writing("storage",
                 [](Thing &t, const QString &chosen) -> Result<void> {
                     t.storage = storages().valueOf(chosen).value_or(t.storage);
                     return {};
                 })},
        {{.key = "allergens",
          .label = tr("Allergens as read on the pack"),
          .hint = tr("With commas; empty: none told")},
         [thing] { return allergensOf(thing()); },
         writing("allergens", writeAllergens)},
        flag("glass", tr("Breakable"), &Thing::glass),
        flag("hazards", tr("Can hurt: poison, caustic, flammable or sharp"), &Thing::hazard),
        flag("hotUse", tr("Handled hot"), &Thing::hotUse),
        flag("spoilsMeal", tr("A mix-up spoils the meal"), &Thing::spoilsMeal),
        {{.key = "keep",
          .kind = FieldKind::Choice,
          .label = tr("Must stay where it is"),
          .choices = yesNoWords()},
         [thing] { return yesNo(thing().keep == 3); },
         writing("keep",
                 [](Thing &t, const QString &chosen) -> Result<void> {
                     t.keep = isYes(chosen) ? 3 : 0;
                     return {};
                 })},
    };
}

void ContentsPage::refresh() {
    const auto places = placeRows(record());
    int index = placeIndex();
    if (index < 0 && !places.empty()) {
        m_place = {places.front().key.toStdString()};
        index = 0;
    }
    const bool correcting = std::ranges::count(record().things, m_thing, &Thing::id) > 0;
    if (!correcting)
        m_thing = {};
    m_kicker = places.empty() ? tr("No place yet: begin with the kitchen.")
                              : tr("Kitchen contents, place %1 of %2").arg(index + 1).arg(places.size());
    m_title = places.empty() ? QString() : text(model::placeWords(record(), m_place));
    if (correcting)
        setFields(thingFields(m_thing));
    else
        setFields({{{.key = "line",
                     .label = tr("What stands here"),
                     .hint = tr("A comma ends a thing. Say how many, how often, glass or heavy."),
                     .unavailable =
                         places.empty() ? tr("There is no place yet. Alt+5 opens the kitchen.") : QString()},
                    {},
                    {}}});
    std::vector<ActionRow> actions;
    if (correcting) {
        actions = {{.key = "done", .title = tr("Done, back to the shelf"), .primary = true},
                   {.key = "remove", .title = tr("Remove this thing")}};
    } else if (!places.empty()) {
        actions = {{.key = "next", .title = tr("Next place"), .primary = true},
                   {.key = "back", .title = tr("Place before")}};
    }
    m_actions.setRows(std::move(actions));
    std::vector<ListRow> rows;
    for (const auto &thing : record().things)
        if (thing.place == m_place)
            rows.push_back({.key = text(thing.id.text),
                            .title = text(thing.name),
                            .amount = thing.count ? QString::number(*thing.count) : QString(),
                            .facts = ownFacts(thing),
                            .usual = thing.usual.empty() ? QString() : usualFacts(thing),
                            .flag = isDoubtful(thing) ? doubtWords(thing) : QString()});
    m_rowsLabel = counted(rows.size(), tr("1 thing here"), tr("%1 things here"));
    m_rowsEmpty = tr("Nothing entered yet.");
    m_rows.setRows(std::move(rows));
    refreshFindings();
    m_drawing = drawingOf(record(), m_place);
    m_drawingWords = text(reports::kitchenFigure(record()).words);
    emit refreshed();
}

void ContentsPage::refreshFindings() {
    const auto place = std::ranges::find(record().places, m_place, &model::Place::id);
    if (place == record().places.end() || !place->height) {
        m_findings.setRows({});
        return;
    }
    const auto &f = m_session.findings();
    const double height = place->height->value.value;
    const auto cm = [](double value) { return QString::number(std::round(value)); };
    FindingRow reach{.key = "reach", .question = tr("Reach")};
    if (height > f.reachHigh.value.value || height < f.reachLow.value.value) {
        reach.answer = tr("Out of reach");
        reach.reason = tr("At %1 cm it lies outside %2 to %3 cm. The plan puts nothing here.")
                           .arg(cm(height), cm(f.reachLow.value.value), cm(f.reachHigh.value.value));
    } else if (height > f.shoulder.value.value || height < f.knuckle.value.value) {
        const double by = height > f.shoulder.value.value ? height - f.shoulder.value.value
                                                          : f.knuckle.value.value - height;
        reach.answer = height > f.shoulder.value.value ? tr("%1 cm above easy reach").arg(cm(by))
                                                       : tr("%1 cm below easy reach").arg(cm(by));
        reach.reason = tr("Easy reach is %1 to %2 cm. Daily things stand better there.")
                           .arg(cm(f.knuckle.value.value), cm(f.shoulder.value.value));
    } else {
        reach.answer = tr("Easy reach");
        reach.reason = tr("At %1 cm, between knuckle and shoulder.").arg(cm(height));
    }
    m_findings.setRows({reach});
}

void ContentsPage::edit(const QString &key, const QString &value) {
    if (key == QLatin1String("line"))
        takeLine(value);
    else
        PageViewModel::edit(key, value);
}

void ContentsPage::takeLine(const QString &line) {
    if (line.trimmed().isEmpty())
        return;
    auto items = model::parseContents(line.toStdString());
    if (!items) {
        say(items.error());
        return;
    }
    int doubts = 0;
    for (const auto &item : *items)
        doubts += item.doubt.empty() ? 0 : 1;
    const QString words = line.trimmed();
    const bool saved = change(words, "things.added", [&](Case &r) {
        for (auto &item : *items) {
            item.thing.id = model::newId();
            item.thing.doubt = item.doubt;
            item.thing.place = m_place;
            r.things.push_back(item.thing);
        }
    });
    if (!saved)
        return;
    m_session.keepDraft(text(record().client.id.text) + QStringLiteral("/contents/line"), {});
    clearField(QStringLiteral("line"));
    const QString count = counted(items->size(), tr("1 thing"), tr("%1 things"));
    const QString asked = doubts ? tr("%1 to ask, F3").arg(doubts) : tr("no doubts");
    say(tr("%1, %2. Place %3 of %4.").arg(count, asked).arg(placeIndex() + 1).arg(record().places.size()));
}

void ContentsPage::act(const QString &key) {
    if (key == QLatin1String("next"))
        step(1);
    else if (key == QLatin1String("back"))
        step(-1);
    else if (key == QLatin1String("done"))
        settle();
    else if (key == QLatin1String("remove")) {
        const Id id = m_thing;
        const QString name = text(std::ranges::find(record().things, id, &Thing::id)->name);
        if (change(tr("removed %1").arg(name), "thing.removed", [&](Case &r) {
                std::erase_if(r.things, [&](const Thing &t) { return t.id == id; });
                std::erase_if(r.overrules, [&](const model::Overrule &o) { return o.thing == id; });
            })) {
            say(tr("%1 removed.").arg(name));
            activated({});
        }
    }
}

void ContentsPage::settle() {
    const Id id = m_thing;
    const auto thing = std::ranges::find(record().things, id, &Thing::id);
    if (thing != record().things.end() && !thing->doubt.empty())
        change(tr("%1 settled").arg(text(thing->name)), "thing.settled",
               [&](Case &r) { std::ranges::find(r.things, id, &Thing::id)->doubt.clear(); });
    activated({});
    const auto left = std::ranges::count_if(record().things, isDoubtful);
    say(left ? tr("%1 doubts left.").arg(left) : tr("No doubts left."));
}

void ContentsPage::activated(const QString &row) {
    m_thing = {row.toStdString()};
    refresh();
    emit focusField(m_thing.empty() ? QStringLiteral("line") : QStringLiteral("name"));
}

void ContentsPage::command(const QString &name) {
    if (name == QLatin1String("correct") && !m_row.isEmpty())
        activated(m_row);
    else if (name == QLatin1String("nextGap"))
        nextDoubt(1);
    else if (name == QLatin1String("previousGap"))
        nextDoubt(-1);
    else if (name == QLatin1String("readBack")) {
        std::vector<model::ContentsItem> items;
        for (const auto &t : record().things)
            if (t.place == m_place)
                items.emplace_back().thing = t;
        say(items.empty() ? tr("Nothing entered yet.") : text(model::readContentsBack(items)));
    }
}

void ContentsPage::step(int by) {
    const auto places = placeRows(record());
    const int to = placeIndex() + by;
    if (to < 0 || to >= static_cast<int>(places.size())) {
        say(by > 0 ? tr("This is the last place. Alt+7 opens the plan.") : tr("This is the first place."));
        return;
    }
    m_place = {places[static_cast<std::size_t>(to)].key.toStdString()};
    refresh();
    sayAfterFocus(tr("%1. Place %2 of %3.").arg(m_title).arg(to + 1).arg(places.size()));
    emit focusField(QStringLiteral("line"));
}

void ContentsPage::nextDoubt(int by) {
    std::vector<const Thing *> doubtful;
    for (const auto &thing : record().things)
        if (isDoubtful(thing))
            doubtful.push_back(&thing);
    if (doubtful.empty()) {
        say(tr("No doubts left."));
        return;
    }
    const auto at = std::ranges::find_if(doubtful, [this](const Thing *t) { return t->id == m_thing; });
    const auto count = static_cast<int>(doubtful.size());
    const int from = at == doubtful.end() ? (by > 0 ? -1 : 0) : static_cast<int>(at - doubtful.begin());
    const Thing next = *doubtful[static_cast<std::size_t>((from + by + count) % count)];
    if (next.place)
        m_place = *next.place;
    const QString name = text(next.name);
    activated(text(next.id.text));
    sayAfterFocus(tr("%1: %2 %3 left.").arg(name, doubtWords(next)).arg(count));
    emit focusField(next.width ? QStringLiteral("name") : QStringLiteral("shape"));
}

} // namespace app
