#include "app/pages/marker_kit_page.h"
#include "app/pages/entries.h"
#include "app/pages/papers_folder.h"
#include "app/viewmodels/sentences.h"
#include "reports/papers.h"
#include <algorithm>

namespace app {

using model::Case;
using model::ErrorCode;
using model::fail;
using model::Marker;
using model::Result;

namespace {

QString number(double value) {
    return QString::number(value, 'g', 4);
}

QString surfaceWords(const Marker &marker) {
    QStringList words;
    for (const auto &[word, surface] : surfaces().list)
        if (marker.surfaces.contains(surface))
            words << word.toLower();
    return words.join(QStringLiteral(", "));
}

Result<void> readSurfaces(Marker &marker, const QString &typed) {
    std::set<model::Surface> read;
    for (const QString &part : typed.split(QLatin1Char(','), Qt::SkipEmptyParts)) {
        const QString wanted = part.trimmed();
        const auto found = std::ranges::find_if(surfaces().list, [&](const auto &choice) {
            return choice.first.compare(wanted, Qt::CaseInsensitive) == 0;
        });
        if (found == surfaces().list.end())
            return fail(ErrorCode::NotUnderstood,
                        QObject::tr("Not a surface: %1. Possible: %2. Kept.")
                            .arg(wanted, surfaces().words().join(QStringLiteral(", ")).toLower())
                            .toStdString());
        read.insert(found->second);
    }
    marker.surfaces = read;
    return {};
}

Result<void> readHeat(Marker &marker, const QString &typed) {
    marker.heatLimit.reset();
    if (typed.trimmed().isEmpty())
        return {};
    const auto limit = app::number(typed, 30, 300, QStringLiteral("C"));
    if (!limit)
        return tl::unexpected(limit.error());
    marker.heatLimit = model::Celsius{*limit};
    return {};
}

/// "Size 2, height 1.2, texture 0.5 steps. On glass, metal. Not wet, not frozen. Up to 60 C. 0.08 each."
QString factsOf(const Marker &marker) {
    QStringList facts;
    if (marker.medium == model::MarkMedium::Touch)
        facts << QObject::tr("Size %1, height %2, texture %3 steps")
                     .arg(number(marker.size), number(marker.relief), number(marker.texture));
    facts << (marker.surfaces.empty() ? QObject::tr("no surface given")
                                      : QObject::tr("on %1").arg(surfaceWords(marker)));
    facts << (marker.survivesWet ? QObject::tr("bears wet") : QObject::tr("not where it gets wet"));
    facts << (marker.survivesFreezer ? QObject::tr("bears frost") : QObject::tr("not in the freezer"));
    facts << (marker.heatLimit ? QObject::tr("up to %1 C").arg(number(marker.heatLimit->value))
                               : QObject::tr("heat not known"));
    facts << QObject::tr("%1 each").arg(QString::number(marker.cost, 'f', 2));
    return capital(facts.join(QStringLiteral(", ")));
}

} // namespace

Marker MarkerKitPage::inHand() const {
    const Marker *marker = model::markerIn(record(), m_key);
    return marker ? *marker : Marker{};
}

PageViewModel::FieldSpec MarkerKitPage::field(FormField shown,
                                              const std::function<QString(const Marker &)> &read,
                                              const Write &write) {
    return {std::move(shown), [this, read] { return read(inHand()); },
            [this, write, key = m_key](Case &r, const QString &typed) -> Result<void> {
                Marker marker = inHand();
                if (const auto written = write(marker, typed); !written)
                    return written;
                return model::keepMark(r, marker, model::atHand(r, key));
            }};
}

PageViewModel::FieldSpec MarkerKitPage::wordsField(const char *key, const QString &label, const QString &hint,
                                                   std::string Marker::*member) {
    return field(
        {.key = key, .label = label, .hint = hint}, [member](const Marker &m) { return text(m.*member); },
        [member](Marker &m, const QString &typed) -> Result<void> {
            m.*member = typed.trimmed().toStdString();
            return {};
        });
}

PageViewModel::FieldSpec MarkerKitPage::numberField(const char *key, const QString &label,
                                                    const QString &hint, double most,
                                                    double Marker::*member) {
    return field(
        {.key = key, .kind = FieldKind::Number, .label = label, .hint = hint},
        [member](const Marker &m) { return number(m.*member); },
        [member, most](Marker &m, const QString &typed) -> Result<void> {
            const auto value = app::number(typed, 0, most, {});
            if (!value)
                return tl::unexpected(value.error());
            m.*member = *value;
            return {};
        });
}

PageViewModel::FieldSpec MarkerKitPage::factField(const char *key, const QString &label,
                                                  bool Marker::*member) {
    return field(
        {.key = key, .kind = FieldKind::Choice, .label = label, .choices = yesNoWords()},
        [member](const Marker &m) { return yesNo(m.*member); },
        [member](Marker &m, const QString &word) -> Result<void> {
            m.*member = isYes(word);
            return {};
        });
}

std::vector<PageViewModel::FieldSpec> MarkerKitPage::featureFields() {
    const QString steps = tr("In just-noticeable steps of a good finger, from the bare surface: 0 to 50");
    return {
        wordsField("name", tr("Mark"), tr("What it is called, for example cork disc"), &Marker::name),
        wordsField("feel", tr("What the finger finds"), tr("In words, for example a warm soft disc"),
                   &Marker::feel),
        numberField("size", tr("Size"), steps, 50, &Marker::size),
        numberField("height", tr("Height"), steps, 50, &Marker::relief),
        numberField("texture", tr("Texture"), steps, 50, &Marker::texture),
        wordsField("fix", tr("How to fix it"), tr("One sentence"), &Marker::howToFix),
        field({.key = "surfaces", .label = tr("Surfaces"), .hint = tr("For example glass, metal, plastic")},
              surfaceWords, readSurfaces)};
}

std::vector<PageViewModel::FieldSpec> MarkerKitPage::useFields() {
    return {
        factField("wet", tr("Bears wet"), &Marker::survivesWet),
        factField("cold", tr("Bears the freezer"), &Marker::survivesFreezer),
        field(
            {.key = "heat",
             .label = tr("Bears heat up to"),
             .hint = tr("Degrees C, 30 to 300; empty: not known")},
            [](const Marker &m) { return m.heatLimit ? number(m.heatLimit->value) : QString(); }, readHeat),
        numberField("price", tr("Price of one"), tr("In your money, for example 0.2"), 1000, &Marker::cost),
        numberField("minutes", tr("Minutes to fix one"), tr("For example 1"), 60, &Marker::fixMinutes),
        factField("magnetic", tr("Magnetic"), &Marker::magnetic),
        factField("latex", tr("Natural rubber"), &Marker::latex),
        factField("sticky", tr("Sticky"), &Marker::adhesive),
        factField("small", tr("Small enough to swallow"), &Marker::chokingSize),
        factField("sharp", tr("Sharp or rough"), &Marker::sharp),
        wordsField("caution", tr("Caution"), tr("Printed beside the mark"), &Marker::caution)};
}

std::vector<PageViewModel::FieldSpec> MarkerKitPage::fields() {
    std::vector<FieldSpec> all = featureFields();
    for (auto &spec : useFields())
        all.push_back(std::move(spec));
    all.push_back(
        {{.key = "inkit", .kind = FieldKind::Choice, .label = tr("At hand"), .choices = yesNoWords()},
         [this] { return yesNo(model::atHand(record(), m_key)); },
         [this](Case &r, const QString &word) { return model::keepMark(r, inHand(), isYes(word)); }});
    return all;
}

void MarkerKitPage::showRows() {
    std::vector<ListRow> rows;
    const auto &banned = m_session.findings().bannedMarks;
    for (const Marker &marker : model::wholeKitOf(record())) {
        const auto ban = banned.find(marker.key);
        rows.push_back(
            {.key = text(marker.key),
             .title = text(marker.name),
             .facts = ban == banned.end()
                          ? factsOf(marker)
                          : tr("Not for this client: %1. ").arg(text(ban->second)) + factsOf(marker),
             .flag = !model::atHand(record(), marker.key) ? tr("not at hand")
                     : ban != banned.end()                ? tr("ruled out")
                                                          : QString()});
    }
    m_rowsLabel = tr("Marks");
    m_rows.setRows(std::move(rows));
}

void MarkerKitPage::refresh() {
    if (!m_key.empty() && !model::markerIn(record(), m_key))
        m_key.clear();
    const auto kit = model::kitOf(record());
    m_kicker = tr("%1 marks at hand").arg(kit.size());
    setFields(m_key.empty() ? std::vector<FieldSpec>{} : fields());
    std::vector<ActionRow> actions;
    if (!m_key.empty()) {
        const bool usual = model::markerOf(m_key) != nullptr;
        actions.push_back({.key = "done", .title = tr("Done"), .primary = true});
        actions.push_back(
            {.key = "forget", .title = usual ? tr("Back to the usual figures") : tr("Remove this mark")});
    }
    actions.push_back({.key = "new", .title = tr("New mark of your own"), .primary = m_key.empty()});
    if (m_key.empty())
        actions.push_back({.key = "sheet", .title = tr("Write the kit sheet to print")});
    m_actions.setRows(std::move(actions));
    m_findings.setRows(
        {{.key = "figures",
          .question = tr("Features and prices"),
          .answer = tr("Defaults of this program"),
          .reason = tr("Common practice, not measured. Change what you know better; the marker test "
                       "finds out what this client can tell apart.")}});
    showRows();
    emit refreshed();
}

namespace {

Result<reports::Paper> kitSheet(const Session &session) {
    const model::AsWritten english;
    return reports::kitSheetToPrint(session.record(), model::findingsOf(session.record(), session.today()),
                                    session.today(), session.author().toStdString());
}

} // namespace

void MarkerKitPage::writeSheet() {
    const auto sheet = kitSheet(m_session);
    if (!sheet) {
        say(sheet.error());
        return;
    }
    const QString folder = papersFolder(m_session);
    if (const auto written = reports::writePapers({*sheet}, folder.toStdString()); !written) {
        say(written.error());
        return;
    }
    if (const auto noted = m_session.note("paper.exported", tr("1 file")); !noted)
        say(noted.error());
    say(tr("%1 written to %2. What is written there is not encrypted any more.")
            .arg(text(sheet->fileName), folder));
}

void MarkerKitPage::act(const QString &key) {
    if (key == QLatin1String("new")) {
        Marker fresh;
        const auto before = record().kit.size();
        fresh.name = tr("own mark %1").arg(before + 1).toStdString();
        fresh.size = 1;
        if (!change(tr("new mark"), "kit.added", [&](Case &r) { (void)model::keepMark(r, fresh, true); }))
            return;
        if (record().kit.size() > before)
            activated(text(record().kit.back().marker.key));
    } else if (key == QLatin1String("sheet")) {
        writeSheet();
    } else if (key == QLatin1String("done")) {
        const QString row = text(m_key);
        activated({});
        emit focusRow(row);
    } else if (key == QLatin1String("forget")) {
        if (change(tr("mark as it was"), "kit.forgotten", [&](Case &r) { model::forgetMark(r, m_key); })) {
            emit focusHeading();
            sayAfterFocus(tr("Done."));
        }
    }
}

void MarkerKitPage::activated(const QString &row) {
    m_key = row.toStdString();
    refresh();
    if (!m_key.empty())
        emit focusField(QStringLiteral("name"));
}

void MarkerKitPage::command(const QString & /*name*/) {
    if (!m_row.isEmpty())
        activated(m_row);
}

} // namespace app
