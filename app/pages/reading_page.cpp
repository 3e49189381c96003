#include "app/pages/entries.h"
#include "app/pages/papers_folder.h"
#include "app/pages/sight_pages.h"
#include "model/read_measurement.h"
#include "model/sentence.h"
#include "model/sight.h"
#include "model/typed.h"
#include "reports/papers.h"
#include "reports/reading_sheet.h"
#include <algorithm>
#include <array>

namespace app {

using model::Case;
using model::Centimetres;
using model::ErrorCode;
using model::fail;
using model::Measurement;
using model::ReadingVersion;
using model::ReadSentence;
using model::Result;
using model::Sentence;

namespace {

/// Findings that a reading trial is about, by their topics as they are said.
bool isOfTrial(const std::string &topic) {
    static constexpr std::array topics{"Reading acuity",       "Critical print size", "Maximum reading speed",
                                       "Print size of papers", "Print size chosen",   "Contradiction",
                                       "Reading trial"};
    return std::ranges::any_of(topics, [&](const char *each) { return topic == Sentence::tr(each); });
}

const Choices<ReadingVersion> &versionChoices() {
    static const Choices<ReadingVersion> choices{{{QStringLiteral("A"), ReadingVersion::A},
                                                  {QStringLiteral("B"), ReadingVersion::B},
                                                  {QStringLiteral("C"), ReadingVersion::C}}};
    return choices;
}

/// The lines entered, from the largest; empty if there is no trial or it cannot be read.
std::vector<ReadSentence> sentencesOf(const Measurement *trial) {
    if (!trial)
        return {};
    return model::parseTrial(trial->typed).value_or(std::vector<ReadSentence>{});
}

QString lineText(const ReadSentence &sentence) {
    if (sentence.wrongWords == model::wordsPerSentence)
        return QObject::tr("not read");
    return QObject::tr("%1 s, %2 wrong").arg(sentence.seconds).arg(sentence.wrongWords);
}

bool isLine(const ReadSentence &sentence, int line) {
    return std::abs(sentence.size.value - model::readingSize(line).value) < 0.05;
}

/// The line after the smallest that was entered; one more than there are, after the last.
int nextLine(const std::vector<ReadSentence> &entered) {
    int next = 1;
    for (int line = 1; line <= model::readingLines; ++line)
        if (std::ranges::any_of(entered, [line](const auto &s) { return isLine(s, line); }))
            next = line + 1;
    return next;
}

} // namespace

const Measurement *ReadingPage::today() const {
    for (const Measurement &one : record().measurements)
        if (one.test == model::Test::ReadingTrial && one.date == m_session.today())
            return &one;
    return nullptr;
}

PageViewModel::FieldSpec ReadingPage::versionField() {
    return {{.key = "version",
             .kind = FieldKind::Choice,
             .label = tr("Sheet"),
             .hint = tr("Another one than last time, so that nothing is read from memory"),
             .choices = versionChoices().words()},
            [this] { return versionChoices().wordOf(m_version); },
            {}};
}

PageViewModel::FieldSpec ReadingPage::distanceField() {
    return {{.key = "distance",
             .label = tr("Distance from eyes to paper"),
             .hint = tr("20 to 50 cm; the sheet is made for it")},
            [this] { return m_distance; },
            [this](Case &r, const QString &typed) -> Result<void> {
                const auto distance = model::parseLength(typed.toStdString(), Centimetres{50});
                if (!distance)
                    return tl::unexpected(distance.error());
                if (distance->value < Centimetres{20})
                    return fail(ErrorCode::OutOfRange,
                                Sentence::tr("Too near for a sheet: {1}. It is made for 20 to 50 cm. Kept.",
                                             {typed.toStdString()}));
                m_distance = typed.trimmed();
                for (Measurement &one : r.measurements)
                    if (one.test == model::Test::ReadingTrial && one.date == m_session.today())
                        one.distanceTyped = m_distance.toStdString();
                return {};
            }};
}

Result<void> ReadingPage::writeLine(Case &record, int line, const QString &typed) const {
    auto sentences = sentencesOf(today());
    std::erase_if(sentences, [line](const ReadSentence &s) { return isLine(s, line); });
    if (!typed.trimmed().isEmpty()) {
        const auto sentence = model::parseReadLine(model::readingSize(line), typed.toStdString());
        if (!sentence)
            return tl::unexpected(sentence.error());
        sentences.push_back(*sentence);
    }
    std::ranges::sort(sentences, [](const auto &a, const auto &b) { return a.size > b.size; });
    const Measurement *old = today();
    Measurement trial = old ? *old : Measurement{};
    if (!old) {
        trial.id = model::newId();
        trial.test = model::Test::ReadingTrial;
        trial.date = m_session.today();
        trial.side = model::Side::Both;
        trial.withGlasses = true;
    }
    trial.typed = model::trialText(sentences);
    trial.distanceTyped = m_distance.toStdString();
    trial.method = "sheet " + model::nameOf(m_version);
    std::erase_if(record.measurements, [&](const Measurement &m) { return m.id == trial.id; });
    if (!sentences.empty())
        record.measurements.push_back(std::move(trial));
    return {};
}

PageViewModel::FieldSpec ReadingPage::lineField(int line) {
    const model::LogMar size = model::readingSize(line);
    FormField field{.key = QStringLiteral("line-%1").arg(line),
                    .label = tr("Line %1, logMAR %2").arg(line).arg(size.value, 0, 'f', 1),
                    .hint = line == 1 ? tr("Seconds and wrong words, for example 4.2 s, 1 wrong; or not read")
                                      : QString()};
    const auto lines = sentencesOf(today());
    const auto found = std::ranges::find_if(lines, [line](const auto &s) { return isLine(s, line); });
    if (found != lines.end() && found->wrongWords < model::wordsPerSentence)
        field.note = tr("%1 words a minute")
                         .arg(std::lround(model::wordsPerMinute(found->wrongWords, found->seconds)));
    return {field,
            [this, line]() -> QString {
                for (const ReadSentence &sentence : sentencesOf(today()))
                    if (isLine(sentence, line))
                        return lineText(sentence);
                return {};
            },
            [this, line](Case &r, const QString &typed) { return writeLine(r, line, typed); }};
}

void ReadingPage::edit(const QString &key, const QString &value) {
    if (key != QLatin1String("version")) {
        PageViewModel::edit(key, value);
        return;
    }
    m_version = versionChoices().valueOf(value).value_or(m_version);
    refresh();
}

void ReadingPage::act(const QString &key) {
    if (key == QLatin1String("sheet"))
        writeSheet();
    else
        m_shell.goTo(key);
}

void ReadingPage::command(const QString &name) {
    if (name == QLatin1String("readBack"))
        speakNext();
}

/// The sentence to be read next, spoken and shown nowhere: the client must not hear it first.
void ReadingPage::speakNext() {
    if (!m_reminded) {
        m_reminded = true;
        say(tr("Put headphones on. The same key again speaks the next sentence."));
        return;
    }
    const int next = nextLine(sentencesOf(today()));
    if (next > model::readingLines)
        say(tr("The last line is entered."));
    else
        m_shell.announce(
            tr("Line %1: %2.")
                .arg(next)
                .arg(text(model::readingSentences(m_version)[static_cast<std::size_t>(next - 1)])));
}

void ReadingPage::writeSheet() {
    const auto distance = model::parseLength(m_distance.toStdString(), Centimetres{50});
    if (!distance) {
        say(distance.error());
        return;
    }
    auto pdf = reports::readingSheetPdf(m_version, distance->value, m_session.today(),
                                        m_session.author().toStdString());
    if (!pdf) {
        say(pdf.error());
        return;
    }
    const QString folder = papersFolder(m_session);
    const reports::Paper sheet{reports::readingSheetName(m_version, distance->value), {}, std::move(*pdf)};
    if (const auto written = reports::writePapers({sheet}, folder.toStdString()); !written) {
        say(written.error());
        return;
    }
    say(tr("Sheet written to %1. Print it at full size: its ruler must be 100 millimetres long.")
            .arg(folder));
}

void ReadingPage::refresh() {
    if (const Measurement *trial = today()) {
        m_distance = text(trial->distanceTyped);
        if (trial->method.starts_with("sheet "))
            m_version = versionChoices().valueOf(text(trial->method).mid(6)).value_or(m_version);
    }
    const auto entered = sentencesOf(today()).size();
    m_kicker = tr("%1 of %2 lines entered").arg(entered).arg(model::readingLines);
    if (const QString key = m_shell.keys()->keyOf(QStringLiteral("readBack")); !key.isEmpty())
        m_kicker += tr(". %1 speaks the next sentence: headphones on").arg(key);
    std::vector<FieldSpec> fields{versionField(), distanceField()};
    for (int line = 1; line <= model::readingLines; ++line)
        fields.push_back(lineField(line));
    setFields(std::move(fields));
    m_actions.setRows({{.key = "sheet", .title = tr("Write the sheet to print")},
                       {.key = "sight", .title = tr("Back to sight")}});
    std::vector<FindingRow> rows;
    for (const auto &finding : m_session.findings().all)
        if (finding.domain == model::Domain::Sight && isOfTrial(finding.topic))
            rows.push_back(
                {.key = text(finding.topic),
                 .question = text(finding.topic),
                 .answer = text(finding.answer),
                 .reason = text(finding.because + Sentence::tr(" Source: {1}", {finding.source}))});
    m_findings.setRows(std::move(rows));
    emit refreshed();
}

} // namespace app
