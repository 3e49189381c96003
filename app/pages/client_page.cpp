#include "app/pages/client_page.h"
#include "app/pages/entries.h"
#include "model/meanings.h"
#include "model/nut_allergy.h"
#include "model/progress.h"
#include "model/sentence.h"
#include <algorithm>

namespace app {

using model::Case;
using model::ErrorCode;
using model::fail;
using model::Result;
using model::Sentence;

namespace {

/// A field that takes any text, into one string of the record.
template<class Part> auto anyText(Part Case::*part, std::string Part::*member) {
    return [part, member](Case &record, const QString &typed) -> Result<void> {
        record.*part.*member = typed.trimmed().toStdString();
        return {};
    };
}

template<class Part> auto yesOrNo(Part Case::*part, bool Part::*member) {
    return [part, member](Case &record, const QString &chosen) -> Result<void> {
        record.*part.*member = isYes(chosen);
        return {};
    };
}

template<class Part> auto anAnswer(Part Case::*part, model::Answer Part::*member) {
    return [part, member](Case &record, const QString &chosen) -> Result<void> {
        record.*part.*member = answerOf(chosen);
        return {};
    };
}

Result<void> writeName(Case &record, const QString &typed) {
    if (typed.trimmed().isEmpty())
        return fail(ErrorCode::Missing, Sentence::tr("A name is needed. The one before is kept."));
    record.client.name = typed.trimmed().toStdString();
    return {};
}

Result<void> writeBorn(Case &record, const QString &typed) {
    const auto date = dateOrNone(typed);
    if (!date)
        return tl::unexpected(date.error());
    if (*date && (**date > model::today() || model::ageInYears(**date, model::today()) > 120))
        return fail(
            ErrorCode::OutOfRange,
            Sentence::tr("A birth date lies within the last 120 years. For example 3 May 1950. Kept."));
    record.client.born = *date;
    return {};
}

Result<void> writePrintSize(Case &record, const QString &typed) {
    record.client.media.printSize.reset();
    if (typed.trimmed().isEmpty())
        return {};
    const auto points = number(typed, 18, 72, QStringLiteral("pt"));
    if (!points)
        return tl::unexpected(points.error());
    record.client.media.printSize = model::Points{*points};
    return {};
}

Result<void> writeAvoids(Case &record, const QString &typed) {
    std::vector<std::string> keys;
    for (const QString &part : typed.split(QLatin1Char(','), Qt::SkipEmptyParts)) {
        const std::string word = part.trimmed().toLower().toStdString();
        if (word.empty() || word == "none")
            continue;
        if (model::eitherNut(word))
            return fail(ErrorCode::NotUnderstood, model::eitherNutAsked());
        const auto &all = model::allergens();
        const auto found = std::ranges::find_if(
            all, [&](const model::AllergenName &name) { return name.key == word || name.words == word; });
        if (found == all.end()) {
            QStringList known;
            for (const auto &name : all)
                known << text(name.key);
            return fail(ErrorCode::NotUnderstood, QObject::tr("%1 is not one of the 14 allergens: %2. Kept.")
                                                      .arg(part.trimmed(), known.join(QStringLiteral(", ")))
                                                      .toStdString());
        }
        if (!std::ranges::count(keys, found->key))
            keys.push_back(found->key);
    }
    record.diet.avoids = keys;
    record.diet.asked = !typed.trimmed().isEmpty();
    return {};
}

QString avoids(const model::Diet &diet) {
    QStringList words;
    for (const auto &key : diet.avoids)
        words << text(key);
    return words.isEmpty() && diet.asked ? QStringLiteral("none") : words.join(QStringLiteral(", "));
}

Result<void> writeChildReach(Case &record, const QString &typed) {
    auto length = lengthOrNone(typed, 220);
    if (!length)
        return tl::unexpected(length.error());
    record.household.childReach = *length;
    return {};
}

Result<void> writeBraille(Case &record, const QString &chosen) {
    record.client.media.braille = brailleGrades().valueOf(chosen).value_or(model::BrailleGrade::None);
    return {};
}

} // namespace

std::vector<PageViewModel::FieldSpec> ClientPage::personFields() {
    const auto &c = record().client;
    using model::Client;
    return {
        {{.key = "person", .kind = FieldKind::Heading, .label = tr("Person and referral")}, {}, {}},
        {{.key = "name", .label = tr("Name")}, [&c] { return text(c.name); }, writeName},
        {{.key = "code", .label = tr("Code"), .hint = tr("Papers carry it in place of the name")},
         [&c] { return text(c.code); },
         [](Case &r, const QString &typed) -> Result<void> {
             if (typed.trimmed().isEmpty())
                 return fail(ErrorCode::Missing, Sentence::tr("A code is needed. The one before is kept."));
             r.client.code = typed.trimmed().toStdString();
             return {};
         }},
        {{.key = "born",
          .kind = FieldKind::Date,
          .label = tr("Birth date"),
          .hint = tr("For example 3 May 1950")},
         [&c] { return shown(c.born); },
         writeBorn},
        {{.key = "contact", .label = tr("Contact")},
         [&c] { return text(c.contact); },
         anyText(&Case::client, &Client::contact)},
        {{.key = "referredBy", .label = tr("Referred by")},
         [&c] { return text(c.referredBy); },
         anyText(&Case::client, &Client::referredBy)},
        {{.key = "question", .kind = FieldKind::Multiline, .label = tr("Question asked")},
         [&c] { return text(c.question); },
         anyText(&Case::client, &Client::question)},
        {{.key = "whomToAsk",
          .label = tr("Whom to ask"),
          .hint = tr("Stands on every paper: name and how to reach")},
         [&c] { return text(c.whomToAsk); },
         anyText(&Case::client, &Client::whomToAsk)},
    };
}

std::vector<PageViewModel::FieldSpec> ClientPage::paperFields() {
    const auto &c = record().client;
    using model::Client;
    return {
        {{.key = "media", .kind = FieldKind::Heading, .label = tr("Reading and papers")}, {}, {}},
        {{.key = "largePrint",
          .kind = FieldKind::Choice,
          .label = tr("Large print"),
          .choices = yesNoWords()},
         [&c] { return yesNo(c.media.largePrint); },
         [](Case &r, const QString &chosen) -> Result<void> {
             r.client.media.largePrint = isYes(chosen);
             return {};
         }},
        {{.key = "printSize",
          .kind = FieldKind::Number,
          .label = tr("Print size"),
          .hint = tr("18 to 72 points; empty: from what was measured"),
          .unit = tr("points")},
         [&c] { return c.media.printSize ? QString::number(c.media.printSize->value) : QString(); },
         writePrintSize},
        {{.key = "braille",
          .kind = FieldKind::Choice,
          .label = tr("Braille papers"),
          .choices = brailleGrades().words()},
         [&c] { return brailleGrades().wordOf(c.media.braille); },
         writeBraille},
        {{.key = "readsBraille",
          .kind = FieldKind::Choice,
          .label = tr("Reads braille"),
          .choices = yesNoWords()},
         [&c] { return yesNo(c.readsBraille); },
         yesOrNo(&Case::client, &Client::readsBraille)},
        {{.key = "tagReader",
          .kind = FieldKind::Choice,
          .label = tr("Has a reader for spoken tags"),
          .choices = yesNoWords()},
         [&c] { return yesNo(c.hasTagReader); },
         yesOrNo(&Case::client, &Client::hasTagReader)},
        {{.key = "codeReader",
          .kind = FieldKind::Choice,
          .label = tr("Square codes are wanted and can be read here"),
          .choices = yesNoWords()},
         [&c] { return yesNo(c.hasCodeReader); },
         yesOrNo(&Case::client, &Client::hasCodeReader)},
    };
}

std::vector<PageViewModel::FieldSpec> ClientPage::householdFields() {
    const auto &h = record().household;
    using model::Household;
    const auto words = [&h](const char *key, const QString &label,
                            std::string Household::*member) -> FieldSpec {
        return {{.key = key, .label = label},
                [&h, member] { return text(h.*member); },
                anyText(&Case::household, member)};
    };
    const auto answer = [&h](const char *key, const QString &label, const QString &hint,
                             model::Answer Household::*member) -> FieldSpec {
        return {{.key = key, .kind = FieldKind::YesNo, .label = label, .hint = hint},
                [&h, member] { return answerValue(h.*member); },
                anAnswer(&Case::household, member)};
    };
    return {
        {{.key = "household", .kind = FieldKind::Heading, .label = tr("Household")}, {}, {}},
        words("people", tr("Who lives here"), &Household::people),
        answer("children", tr("Children at home, or who visit"), tr("Not asked counts as yes"),
               &Household::children),
        {{.key = "childReach", .label = tr("Height a child reaches"), .hint = tr("For example 110 cm")},
         [&h] { return shown(h.childReach); },
         writeChildReach},
        answer("memoryLoss", tr("Another adult with memory loss"), tr("Not asked counts as yes"),
               &Household::adultWithMemoryLoss),
        answer("pets", tr("Pets"), {}, &Household::pets),
        words("whoShops", tr("Who shops"), &Household::whoShops),
        words("whoCooks", tr("Who cooks"), &Household::whoCooks),
        words("whoPutsAway", tr("Who puts the shopping away"), &Household::whoPutsAway),
        words("whoReads", tr("Who reads print"), &Household::whoReadsPrint),
        {{.key = "sharing",
          .kind = FieldKind::Choice,
          .label = tr("Consent to share"),
          .hint = tr("Yes: the household's sheet may name the client and health facts"),
          .choices = yesNoWords()},
         [&h] { return yesNo(h.sharingConsent); },
         yesOrNo(&Case::household, &Household::sharingConsent)},
    };
}

/// Allergens that nobody asked about are as open as a question without an answer.
bool ClientPage::isGap(const FormField &field) const {
    return PageViewModel::isGap(field) || (field.key == QLatin1String("avoids") && field.value.isEmpty());
}

std::vector<PageViewModel::FieldSpec> ClientPage::dietFields() {
    const auto &d = record().diet;
    return {
        {{.key = "diet", .kind = FieldKind::Heading, .label = tr("Diet")}, {}, {}},
        {{.key = "avoids",
          .label = tr("Allergens to avoid"),
          .hint = tr("With commas, for example gluten, peanuts; or none. Empty: not asked")},
         [&d] { return avoids(d); },
         writeAvoids},
        {{.key = "otherDiet", .label = tr("Other diet"), .hint = tr("Diabetes, low salt, thickened ...")},
         [&d] { return text(d.other); },
         anyText(&Case::diet, &model::Diet::other)},
        {{.key = "dietFacts",
          .label = tr("Diet facts to mark"),
          .hint = tr("That the client wants to feel on the pack, for example low salt, no sugar. At most "
                     "three get a mark")},
         [&d] {
             QStringList list;
             for (const auto &fact : d.facts)
                 list << text(fact);
             return list.join(QStringLiteral(", "));
         },
         [](Case &r, const QString &typed) {
             return model::readDietFacts(typed.toStdString()).map([&](const std::vector<std::string> &facts) {
                 r.diet.facts = facts;
             });
         }},
    };
}

PageViewModel::FieldSpec ClientPage::visitField() {
    const model::Id id = m_session.visit()->id;
    return {
        {.key = "plannedMinutes",
         .kind = FieldKind::Number,
         .label = tr("Minutes planned for this visit"),
         .hint = tr("10 to 240; where am I says how many are left")},
        [this] { return m_session.visit() ? QString::number(m_session.visit()->plannedMinutes) : QString(); },
        [id](Case &record, const QString &typed) -> Result<void> {
            const auto minutes = wholeNumber(typed, 10, 240);
            if (!minutes)
                return tl::unexpected(minutes.error());
            for (auto &visit : record.visits)
                if (visit.id == id)
                    visit.plannedMinutes = *minutes;
            return {};
        }};
}

void ClientPage::refresh() {
    const auto &client = record().client;
    m_kicker = client.invented ? tr("Invented, for practice") : tr("Code %1").arg(text(client.code));
    auto fields = personFields();
    for (auto part : {paperFields(), householdFields(), sharingFields(), dietFields()})
        for (auto &field : part)
            fields.push_back(std::move(field));
    if (m_session.visit())
        fields.push_back(visitField());
    setFields(std::move(fields));
    const auto *visit = m_session.visit();
    std::vector<ActionRow> actions{
        {.key = "startVisit",
         .title = visit ? tr("Go on with visit %1").arg(visit->number) : tr("Start a visit"),
         .keyName = m_shell.keys()->keyOf(QStringLiteral("startVisit")),
         .primary = true}};
    if (visit)
        actions.push_back({.key = "closeVisit",
                           .title = tr("Close visit %1").arg(visit->number),
                           .keyName = m_shell.keys()->keyOf(QStringLiteral("closeVisit"))});
    m_actions.setRows(std::move(actions));
    std::vector<ListRow> open;
    for (const auto &item : model::openItems(record(), m_session.today()))
        open.push_back({.key = text(item), .title = text(item)});
    m_rowsLabel = tr("Still open");
    m_rowsEmpty = tr("Nothing is open.");
    m_rows.setRows(std::move(open));
    emit refreshed();
}

void ClientPage::act(const QString &key) {
    if (key == QLatin1String("startVisit"))
        m_shell.startVisit();
    else if (key == QLatin1String("closeVisit"))
        m_shell.closeVisit();
}

} // namespace app
