#include "app/viewmodels/page_view_model.h"
#include "app/viewmodels/seen_text.h"
#include <QTimer>
#include <algorithm>

namespace app {
namespace {

/// "Name: Ada", "Seizures? yes", or the label alone.
QString withValue(const QString &label, const QString &value) {
    if (value.isEmpty())
        return label;
    return label + (label.endsWith(QLatin1Char('?')) ? QStringLiteral(" ") : QStringLiteral(": ")) + value;
}

} // namespace

PageViewModel::PageViewModel(Session &session, ShellViewModel &shell) : m_session(session), m_shell(shell) {
    connect(&session, &Session::changed, this, [this] {
        m_refusedLast.clear();
        if (m_session.hasClient())
            refresh();
    });
}

void PageViewModel::edit(const QString &key, const QString &typed) {
    const auto spec = std::ranges::find_if(m_fields, [&](const FieldSpec &s) { return s.field.key == key; });
    if (spec == m_fields.end() || !spec->write)
        return;
    const QString value = cleaned(spec->field, typed);
    const auto write = spec->write; // the fields may be replaced while the record changes
    const QString words = withValue(spec->field.label, value);
    const QString name = fieldName(key);
    const QString draft = draftName(key);
    model::Case after = m_session.hasClient() ? record() : model::Case{};
    if (const auto written = write(after, value); !written) {
        refuse(key, value, text(written.error().sentence));
        return;
    }
    m_pending.erase(name);
    m_refusedLast.clear();
    m_session.keepDraft(draft, {});
    if (m_session.hasClient())
        change(words, "field." + key.toStdString(), [&](model::Case &record) { record = after; });
    refresh();
    if (value != typed)
        showAgain(key);
}

/// Without characters that cannot be seen; what was done to the text stands beside the field.
QString PageViewModel::cleaned(const FormField &field, const QString &typed) {
    const SeenText seen = seenText(typed, field.kind == FieldKind::Multiline);
    m_told.erase(fieldName(field.key));
    if (!seen.told.isEmpty())
        m_told[fieldName(field.key)] = seen.told;
    return seen.text;
}

/// The entry still holds what was typed, also where the record's value is the one of before.
void PageViewModel::showAgain(const QString &key) {
    std::vector<FormField> rows = m_form.rows();
    const auto field = std::ranges::find(rows, key, &FormField::key);
    if (field == rows.end())
        return;
    const QString value = field->value;
    field->value += QLatin1Char(' '); // two changes, so that the entry sees one
    m_form.setRows(rows);
    field->value = value;
    m_form.setRows(std::move(rows));
}

void PageViewModel::refuse(const QString &key, const QString &typed, const QString &sentence) {
    m_pending[fieldName(key)] = {typed, sentence};
    m_refusedLast = fieldName(key);
    m_typedHere.insert(fieldName(key));
    m_session.keepDraft(draftName(key), typed);
    showFields();
}

QString PageViewModel::takeBackRefused() {
    const auto spec = std::ranges::find_if(
        m_fields, [this](const FieldSpec &s) { return fieldName(s.field.key) == m_refusedLast; });
    m_refusedLast.clear();
    return spec == m_fields.end() ? QString() : forgetTyped(QString(spec->field.key));
}

bool PageViewModel::takeBack(const QString &key) {
    const QString words = forgetTyped(key);
    if (words.isEmpty())
        return false;
    m_refusedLast.clear();
    say(tr("Undone: %1.").arg(words));
    return true;
}

/// What it was; empty: all in the field is accepted.
QString PageViewModel::forgetTyped(const QString &key) {
    const auto refused = m_pending.find(fieldName(key));
    const auto spec = std::ranges::find_if(m_fields, [&](const FieldSpec &s) { return s.field.key == key; });
    if (refused == m_pending.end() || spec == m_fields.end())
        return {};
    const QString words = withValue(spec->field.label, refused->second.typed);
    m_session.keepDraft(draftName(spec->field.key), {});
    m_pending.erase(refused);
    showFields();
    return words;
}

bool PageViewModel::isGap(const FormField &field) const {
    return !field.error.isEmpty() || (field.kind == FieldKind::YesNo && field.value.isEmpty());
}

void PageViewModel::nextGap(const QString &from, int by) {
    const auto &fields = m_form.rows();
    const int all = static_cast<int>(fields.size());
    const auto here = std::ranges::find(fields, from, &FormField::key);
    int at = here != fields.end() ? static_cast<int>(here - fields.begin()) : by > 0 ? -1 : all;
    for (int steps = 0; steps < all; ++steps) {
        at = (at + by + all) % all;
        const FormField &field = fields[static_cast<std::size_t>(at)];
        if (field.key != from && isGap(field)) {
            emit focusField(field.key);
            return;
        }
    }
    say((here != fields.end() && isGap(*here) ? tr("Nothing else is open on this page.")
                                              : tr("Nothing is open on this page.")) +
        nextStepWords());
}

/// " Alt+3: Touch." on the page of a step with another behind it; else nothing.
QString PageViewModel::nextStepWords() const {
    const auto &steps = m_shell.steps()->rows();
    const auto here = std::ranges::find(steps, m_shell.page(), &Step::key);
    if (here == steps.end() || here->number == 0)
        return {};
    const auto next = std::ranges::find(steps, here->number + 1, &Step::number);
    if (next == steps.end())
        return {};
    return QLatin1Char(' ') +
           tr("%1: %2.").arg(m_shell.keys()->keyOrTitle(QStringLiteral("step%1").arg(next->number)),
                             next->title);
}

void PageViewModel::goBack() {
    static const QStringList leaves{QStringLiteral("done"), QStringLiteral("line"), QStringLiteral("lines"),
                                    QStringLiteral("leave"), QStringLiteral("dates")};
    const auto &actions = m_actions.rows();
    const auto way =
        std::ranges::find_if(actions, [](const ActionRow &row) { return leaves.contains(row.key); });
    if (way != actions.end())
        act(QString(way->key));
}

void PageViewModel::typing(const QString &key, const QString &typed) {
    m_typedHere.insert(fieldName(key));
    m_session.keepDraft(draftName(key), typed);
}

void PageViewModel::setFields(std::vector<FieldSpec> fields) {
    // What is refused says why again, as when it was typed.
    const auto whyNotTaken = [this](const FieldSpec &spec, const QString &kept) {
        if (spec.write && m_session.hasClient()) {
            model::Case tried = record();
            if (const auto written = spec.write(tried, kept); !written)
                return text(written.error().sentence);
        }
        return tr("Typed before and not taken yet. Press Return to take it.");
    };
    m_fields = std::move(fields);
    for (const auto &spec : m_fields) {
        const QString kept = m_session.draft(draftName(spec.field.key));
        const QString name = fieldName(spec.field.key);
        if (!kept.isEmpty() && !m_typedHere.contains(name) && !m_pending.contains(name))
            m_pending[name] = {kept, whyNotTaken(spec, kept)};
    }
    showFields();
}

void PageViewModel::showFields() {
    std::vector<FormField> shown;
    for (const auto &spec : m_fields) {
        FormField field = spec.field;
        if (spec.read)
            field.value = spec.read();
        if (const auto found = m_pending.find(fieldName(field.key)); found != m_pending.end()) {
            field.value = found->second.typed;
            field.error = found->second.sentence;
        }
        if (const auto told = m_told.find(fieldName(field.key)); told != m_told.end())
            field.note = told->second;
        shown.push_back(std::move(field));
    }
    m_form.setRows(std::move(shown));
}

void PageViewModel::sayAfterFocus(const QString &text, int afterMs) {
    QTimer::singleShot(afterMs, &m_shell, [shell = &m_shell, text] { shell->say(text); });
}

bool PageViewModel::change(const QString &words, const std::string &what, const Session::Change &how) {
    const auto saved = m_session.edit(words, what, how);
    if (!saved)
        say(tr("Not saved. %1 What you typed is kept.").arg(text(saved.error().sentence)));
    return saved.has_value();
}

void PageViewModel::clearField(const QString &key) {
    m_pending.erase(fieldName(key));
    m_session.keepDraft(draftName(key), {});
    std::vector<FormField> rows = m_form.rows();
    const auto found = std::ranges::find(rows, key, &FormField::key);
    if (found == rows.end())
        return;
    found->error.clear();
    found->value = QStringLiteral(" "); // two changes, so that the entry sees one
    m_form.setRows(rows);
    found->value.clear();
    m_form.setRows(std::move(rows));
}

QString PageViewModel::fieldName(const QString &key) const {
    const QString about = subject();
    return about.isEmpty() ? key : about + QLatin1Char('/') + key;
}

QString PageViewModel::draftName(const QString &key) const {
    return (m_session.hasClient() ? text(record().client.id.text) : QString()) + QLatin1Char('/') +
           m_shell.page() + QLatin1Char('/') + fieldName(key);
}

} // namespace app
