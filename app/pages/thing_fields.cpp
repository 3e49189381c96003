#include "app/pages/contents_page.h"
#include "app/pages/entries.h"
#include "model/contents.h"
#include "model/lexicon.h"
#include "model/meanings.h"
#include "model/sentence.h"
#include <algorithm>

namespace app {

using model::Case;
using model::ErrorCode;
using model::fail;
using model::Id;
using model::Result;
using model::Sentence;
using model::Thing;

namespace {

Result<void> writeAllergens(Thing &thing, const QString &typed) {
    std::vector<model::AllergenFact> facts;
    for (const QString &part : typed.split(QLatin1Char(','), Qt::SkipEmptyParts)) {
        const std::string word = part.trimmed().toLower().toStdString();
        const auto found = std::ranges::find_if(model::allergens(), [&](const model::AllergenName &name) {
            return name.key == word || name.words == word;
        });
        if (found == model::allergens().end())
            return fail(
                ErrorCode::NotUnderstood,
                Sentence::tr("Not one of the 14 allergens: {1}. For example gluten, milk, nuts. Kept.",
                             {word}));
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

QString factsOf(const Thing &thing) {
    QStringList words;
    for (const auto &fact : thing.dietFacts)
        words << text(fact);
    return words.join(QStringLiteral(", "));
}

Result<void> renameGroup(Case &record, const Id &id, const QString &typed) {
    const std::string before = std::ranges::find(record.things, id, &Thing::id)->group;
    if (typed.trimmed().isEmpty())
        return {};
    for (Thing &thing : record.things)
        if (thing.group == before) {
            thing.group = typed.trimmed().toStdString();
            thing.usual.erase("group");
        }
    return {};
}

} // namespace

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
        {{.key = "asLine",
          .label = tr("In one line"),
          .hint = tr("What the line says is changed, the rest stays")},
         [this, thing] { return text(model::contentsLine(thing(), m_session.lexicon())); },
         [this, id](Case &r, const QString &typed) -> Result<void> {
             auto &changed = *std::ranges::find(r.things, id, &Thing::id);
             auto corrected = model::correctedBy(changed, typed.toStdString(), m_session.lexicon());
             if (!corrected)
                 return tl::unexpected(corrected.error());
             changed = std::move(*corrected);
             return {};
         }},
        {{.key = "name", .label = tr("Name")},
         [thing] { return text(thing().name); },
         writing("name",
                 [](Thing &t, const QString &typed) -> Result<void> {
                     if (typed.trimmed().isEmpty())
                         return fail(ErrorCode::Missing,
                                     Sentence::tr("A name is needed. The one before is kept."));
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
        {{.key = "directions",
          .kind = FieldKind::Multiline,
          .label = tr("How to prepare it, as read on the pack"),
          .hint = tr("For a spoken tag; short")},
         [thing] { return text(thing().directions); },
         writing("directions",
                 [](Thing &t, const QString &typed) -> Result<void> {
                     t.directions = typed.trimmed().toStdString();
                     return {};
                 })},
        {{.key = "dietFacts",
          .label = tr("Diet facts as read on the pack"),
          .hint = tr("Of those that the client page names, with commas")},
         [thing] { return factsOf(thing()); },
         [id](Case &r, const QString &typed) -> Result<void> {
             auto facts = model::readThingFacts(typed.toStdString(), r.diet);
             if (!facts)
                 return tl::unexpected(facts.error());
             std::ranges::find(r.things, id, &Thing::id)->dietFacts = std::move(*facts);
             return {};
         }},
        {{.key = "group",
          .label = tr("Group"),
          .hint = tr("What it is kept with, in the client's words: shelves are named by it")},
         [thing] { return text(thing().group); },
         writing("group",
                 [](Thing &t, const QString &typed) -> Result<void> {
                     t.group = typed.trimmed().toStdString();
                     return {};
                 })},
        {{.key = "groupName",
          .label = tr("Another name for the whole group"),
          .hint = tr("Every thing of this group takes it")},
         {},
         [id](Case &r, const QString &typed) { return renameGroup(r, id, typed); }},
        flag("glass", tr("Breakable"), &Thing::glass),
        flag("hazards", tr("Can hurt: poison, caustic, flammable or sharp"), &Thing::hazard),
        flag("hotUse", tr("Handled hot"), &Thing::hotUse),
        flag("spoilsMeal", tr("A mix-up spoils the meal"), &Thing::spoilsMeal),
        flag("own", tr("The client's own, for her own place"), &Thing::own),
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

} // namespace app
