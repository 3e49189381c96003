#include "app/session.h"
#include "model/demo.h"
#include "model/own_things.h"
#include "model/sentence.h"
#include <algorithm>

namespace app {

using model::Case;
using model::ErrorCode;
using model::fail;
using model::Result;
using model::Sentence;

namespace {

constexpr std::size_t keptSteps = 200;
const QString ownThingsKey = QStringLiteral("own-things");

model::ClientSummary summaryOf(const Case &record) {
    model::ClientSummary summary;
    summary.id = record.client.id;
    summary.name = record.client.name;
    summary.code = record.client.code;
    summary.archived = record.client.archived;
    for (const auto &visit : record.visits)
        summary.lastVisit = std::max(summary.lastVisit, visit.date);
    for (const auto &goal : record.goals)
        if (goal.review && (!summary.nextReview || *goal.review < *summary.nextReview))
            summary.nextReview = goal.review;
    summary.search = model::searchForm(record.client.name + " " + record.client.code);
    return summary;
}

} // namespace

void Session::openPractice() {
    close();
    m_practice = model::demo::all();
    m_author = tr("Practice");
}

void Session::openStore(model::Store store, const QString &author) {
    close();
    m_store.emplace(std::move(store));
    m_author = author;
    if (const auto drafts = m_store->drafts())
        for (const auto &draft : *drafts)
            m_drafts[QString::fromStdString(draft.form)] = QString::fromStdString(draft.text);
    readOwnThings();
}

void Session::readOwnThings() {
    const auto own = model::ownThingsFrom(setting(ownThingsKey).toStdString());
    m_keepsOwn = own.has_value(); // what cannot be read is not written over
    if (!own || own->empty())
        return;
    m_own = *own;
    m_lexicon.emplace(m_own);
}

const model::Lexicon &Session::lexicon() const {
    return m_lexicon ? *m_lexicon : model::Lexicon::standard();
}

void Session::learn(const model::Thing &thing) {
    if (!model::isNewWord(thing, lexicon()))
        return;
    model::addOwnThing(m_own, model::ownThing(thing));
    m_lexicon.emplace(m_own);
    if (m_keepsOwn)
        keepSetting(ownThingsKey, QString::fromStdString(model::ownThingsText(m_own)));
}

void Session::close() {
    closeClient();
    m_store.reset();
    m_practice.reset();
    m_drafts.clear();
    m_settings.clear();
    m_own.clear();
    m_lexicon.reset();
    m_keepsOwn = true;
    m_practicePhotos.clear();
}

Result<std::vector<model::ClientSummary>> Session::caseload() const {
    if (m_store)
        return m_store->caseload();
    std::vector<model::ClientSummary> summaries;
    for (const auto &record : *m_practice)
        summaries.push_back(summaryOf(record));
    return summaries;
}

Result<void> Session::openClient(const model::Id &client) {
    closeClient();
    auto record = load(client);
    if (!record)
        return tl::unexpected(record.error());
    m_stored = std::move(*record);
    m_sharing = sharingOf(client);
    takeWithKitchen();
    return note("client.opened", {});
}

Result<Case> Session::load(const model::Id &client) const {
    if (m_store)
        return m_store->load(client);
    const auto found =
        std::ranges::find_if(*m_practice, [&](const Case &record) { return record.client.id == client; });
    if (found == m_practice->end())
        return fail(ErrorCode::Missing, Sentence::tr("This client is not in the practice caseload."));
    return *found;
}

Result<void> Session::addClient(const QString &name, const QString &code) {
    if (name.trimmed().isEmpty())
        return fail(ErrorCode::Missing, Sentence::tr("A name is needed. For example Alex Example."));
    if (code.trimmed().isEmpty())
        return fail(
            ErrorCode::Missing,
            Sentence::tr("A short code is needed: papers carry it in place of the name. For example A7."));
    const auto others = caseload();
    if (!others)
        return tl::unexpected(others.error());
    const std::string wanted = code.trimmed().toStdString();
    for (const auto &other : *others)
        if (model::searchForm(other.code) == model::searchForm(wanted))
            return fail(ErrorCode::Refused, Sentence::tr("The code {1} is taken. Choose another.", {wanted}));
    Case record = model::newCase(name.trimmed().toStdString(), wanted);
    record.client.invented = isPractice();
    closeClient();
    if (m_store) {
        const model::Action action{m_author.toStdString(), {}, "client.added"};
        if (auto saved = m_store->save(Case{}, record, action); !saved)
            return saved;
    } else {
        m_practice->push_back(record);
    }
    m_stored = std::move(record);
    takeWithKitchen();
    return {};
}

void Session::closeClient() {
    m_record.reset();
    m_stored = {};
    m_other.reset();
    m_sharing.reset();
    m_sharingTrouble.clear();
    m_together.reset();
    m_whys.reset();
    m_told.reset();
    m_changedSince.reset();
    m_bases.clear();
    m_findings = {};
    m_done.clear();
    m_undone.clear();
}

const model::Visit *Session::visit() const {
    if (!m_record || m_record->visits.empty() || m_record->visits.back().closed)
        return nullptr;
    return &m_record->visits.back();
}

Result<void> Session::edit(const QString &words, const std::string &what, const Change &change) {
    Case after = *m_record;
    change(after);
    if (after == *m_record)
        return {};
    Step step{words, *m_record, after};
    if (after.plan && (!m_record->plan || m_record->plan->id != after.plan->id))
        rememberBasis(model::planBasis(after, m_other ? &*m_other : nullptr)); // before it is shown
    if (auto saved = save(after, what); !saved)
        return saved;
    addStep(std::move(step));
    return {};
}

void Session::addStep(Step step) {
    m_done.push_back(std::move(step));
    if (m_done.size() > keptSteps)
        m_done.erase(m_done.begin());
    m_undone.clear();
}

Result<QString> Session::move(std::vector<Step> &from, std::vector<Step> &to, bool back) {
    if (from.empty())
        return fail(ErrorCode::Missing,
                    back ? Sentence::tr("Nothing to undo.") : Sentence::tr("Nothing to do again."));
    Step step = std::move(from.back());
    auto saved = step.sharing ? setSharing(back ? step.sharing->first : step.sharing->second)
                 : step.photo ? movePhoto(*step.photo, back)
                              : save(back ? step.before : step.after, back ? "undone" : "redone");
    if (!saved) {
        from.push_back(std::move(step));
        return tl::unexpected(saved.error());
    }
    from.pop_back();
    to.push_back(std::move(step));
    return to.back().words;
}

Result<QString> Session::undo() {
    return move(m_done, m_undone, true);
}

Result<QString> Session::redo() {
    return move(m_undone, m_done, false);
}

/// What belongs to the kitchen goes into the record that keeps it.
Result<void> Session::save(const Case &after, const std::string &what) {
    Case own = after;
    std::optional<Case> other = m_other;
    if (other && m_sharing->partner == after.client.id) {
        model::takeKitchen(*other, after);
        model::takeKitchen(own, m_stored);
        if (auto saved = saveOne(*m_other, *other, what); !saved)
            return saved;
    }
    if (auto saved = saveOne(m_stored, own, what); !saved) {
        if (other)
            (void)saveOne(*other, *m_other, "undone"); // a failure changes nothing
        return saved;
    }
    m_stored = std::move(own);
    m_other = std::move(other);
    take(after);
    return {};
}

Result<void> Session::saveOne(const Case &before, const Case &after, const std::string &what) {
    if (after == before)
        return {};
    if (m_store) {
        const model::Action action{m_author.toStdString(), visit() ? visit()->id : model::Id{}, what};
        return m_store->save(before, after, action);
    }
    const auto found = std::ranges::find_if(
        *m_practice, [&](const Case &record) { return record.client.id == after.client.id; });
    if (found != m_practice->end())
        *found = after;
    return {};
}

void Session::take(Case record) {
    m_together.reset();
    m_whys.reset();
    m_told.reset();
    m_changedSince.reset();
    m_record = std::move(record);
    m_findings = model::findingsOf(*m_record, today());
    emit changed();
}

Result<void> Session::note(const std::string &what, const QString &detail) {
    if (!m_store)
        return {};
    const model::Id visited = visit() ? visit()->id : model::Id{};
    return m_store->note({m_author.toStdString(), visited, what},
                         m_record ? m_record->client.id : model::Id{}, detail.toStdString());
}

void Session::keepDraft(const QString &form, const QString &text) {
    if (text.isEmpty() && !m_drafts.contains(form))
        return;
    m_drafts[form] = text;
    if (text.isEmpty())
        m_drafts.erase(form);
    if (m_store && m_record)
        (void)m_store->saveDraft({form.toStdString(), m_record->client.id, text.toStdString()});
}

QString Session::draft(const QString &form) const {
    const auto found = m_drafts.find(form);
    return found == m_drafts.end() ? QString() : found->second;
}

QString Session::setting(const QString &key) const {
    if (m_store)
        if (const auto value = m_store->setting(key.toStdString()); value && *value)
            return QString::fromStdString(**value);
    const auto found = m_settings.find(key);
    return found == m_settings.end() ? QString() : found->second;
}

void Session::keepSetting(const QString &key, const QString &value) {
    m_settings[key] = value;
    if (m_store)
        (void)m_store->saveSetting(key.toStdString(), value.toStdString());
}

} // namespace app
