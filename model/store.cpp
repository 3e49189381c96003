#include "model/store.h"
#include "model/codec.h"
#include "model/passphrase.h"
#include "model/recovery_code.h"
#include "model/sentence.h"
#include "model/store_inner.h"
#include <algorithm>

namespace model {
namespace {

std::string isoOrEmpty(const std::optional<Date> &date) {
    return date ? isoDate(*date) : std::string();
}

std::optional<Date> dateFrom(const std::string &text) {
    const auto date = parseDate(text);
    return date ? std::optional(*date) : std::nullopt;
}

std::optional<Date> lastVisitOf(const Case &record) {
    std::optional<Date> last;
    for (const auto &visit : record.visits) {
        if (visit.date && (!last || *visit.date > *last))
            last = visit.date;
    }
    return last;
}

bool isReviewed(const Goal &goal, const Case &record) {
    return std::ranges::any_of(record.ratings, [&](const Rating &rating) {
        return rating.goal == goal.id && rating.date && *rating.date >= *goal.review;
    });
}

std::optional<Date> nextReviewOf(const Case &record) {
    std::optional<Date> next;
    for (const auto &goal : record.goals) {
        if (goal.review && !isReviewed(goal, record) && (!next || *goal.review < *next))
            next = goal.review;
    }
    return next;
}

/// The row of the caseload. 3.x of the library knows no "insert or update" in one.
void writeClient(Database &database, const Case &record) {
    const auto &client = record.client;
    const auto search = searchForm(client.name + " " + client.code);
    const auto archived = client.archived ? 1 : 0;
    const auto lastVisit = isoOrEmpty(lastVisitOf(record));
    const auto nextReview = isoOrEmpty(nextReviewOf(record));
    Statement(
        database,
        "UPDATE client SET name = ?, code = ?, search = ?, archived = ?, last_visit = ?, next_review = ? "
        "WHERE id = ?",
        client.name, client.code, search, archived, lastVisit, nextReview, client.id.text)
        .run();
    if (database.changes() == 0)
        Statement(database, "INSERT INTO client VALUES(?,?,?,?,?,?,?)", client.id.text, client.name,
                  client.code, search, archived, lastVisit, nextReview)
            .run();
}

struct Stamp {
    std::string client, author, at, visit;
};

void writeRecord(Database &database, const Record &record, std::int64_t revision, bool removed,
                 const Stamp &stamp) {
    const std::string body = removed ? std::string() : record.body;
    Statement(database,
              "INSERT OR REPLACE INTO record(id, kind, client, author, at, revision, visit, removed, body) "
              "VALUES(?,?,?,?,?,?,?,?,?)",
              record.id.text, record.kind, stamp.client, stamp.author, stamp.at, revision, stamp.visit,
              removed ? 1 : 0, body)
        .run();
}

/// Revision of a stored record, and the client it belongs to; 0 if there is none.
std::int64_t storedRevision(Database &database, const Id &id, const std::string &client) {
    Statement row(database, "SELECT revision, client FROM record WHERE id = ?", id.text);
    if (!row.step())
        return 0;
    return row.text(1) == client ? row.number(0) : -1;
}

Error changedElsewhere() {
    return {ErrorCode::Changed,
            Sentence::tr("These records were changed elsewhere since you opened the client. Open the client "
                         "again; what you typed is kept as a draft.")};
}

} // namespace

Store::Store(std::unique_ptr<Inner> inner) : m_inner(std::move(inner)) {}
Store::Store(Store &&) noexcept = default;
Store &Store::operator=(Store &&) noexcept = default;
Store::~Store() = default;

Result<std::vector<ClientSummary>> Store::caseload() const {
    return m_inner->use([&]() -> Result<std::vector<ClientSummary>> {
        std::vector<ClientSummary> found;
        Statement rows(m_inner->database,
                       "SELECT id, name, code, archived, last_visit, next_review, search FROM client "
                       "ORDER BY search, id");
        while (rows.step())
            found.push_back({.id = {rows.text(0)},
                             .name = rows.text(1),
                             .code = rows.text(2),
                             .archived = rows.number(3) != 0,
                             .lastVisit = dateFrom(rows.text(4)),
                             .nextReview = dateFrom(rows.text(5)),
                             .search = rows.text(6)});
        return found;
    });
}

Result<Case> Store::load(const Id &client) const {
    return m_inner->use([&]() -> Result<Case> {
        std::vector<Record> records;
        Statement rows(m_inner->database,
                       "SELECT id, kind, body FROM record WHERE client = ? AND removed = 0 "
                       "ORDER BY kind <> 'client', id",
                       client.text);
        while (rows.step())
            records.push_back({{rows.text(0)}, rows.text(1), rows.text(2)});
        if (records.empty())
            return fail(
                ErrorCode::Missing,
                Sentence::tr("This client is not in the records. Go back to the caseload and choose again."));
        m_inner->readRevisions(client.text);
        return fromRecords(records);
    });
}

Result<void> Store::save(const Case &before, const Case &after, const Action &action) {
    const auto &id = after.client.id;
    if (id.empty() || (!before.client.id.empty() && before.client.id != id))
        return fail(ErrorCode::Refused,
                    Sentence::tr("The change does not belong to this client. Open the client again."));
    return m_inner->use([&]() -> Result<void> {
        auto changes = recordChanges(before, after);
        std::erase_if(changes.removed,
                      [](const Record &record) { return record.id.empty(); }); // of no client at all
        auto &database = m_inner->database;
        auto &known = m_inner->revisions[id.text];
        auto next = known;
        const Stamp stamp{id.text, action.author.empty() ? m_inner->author : action.author, timeStamp(),
                          action.visit.text};
        const auto write = [&](const Record &record, bool removed) {
            auto &revision = next[record.id.text];
            if (storedRevision(database, record.id, id.text) != revision)
                return false;
            writeRecord(database, record, ++revision, removed, stamp);
            return true;
        };
        const auto detail = std::to_string(changes.written.size()) + " written, " +
                            std::to_string(changes.removed.size()) + " removed";
        auto done = m_inner->commit(action, id.text, detail, [&]() -> Result<void> {
            writeClient(database, after);
            const auto writes = [&](const Record &record) { return write(record, false); };
            const auto removes = [&](const Record &record) { return write(record, true); };
            if (!std::ranges::all_of(changes.written, writes) ||
                !std::ranges::all_of(changes.removed, removes))
                return tl::unexpected(changedElsewhere());
            if (!action.form.empty())
                Statement(database, "DELETE FROM draft WHERE form = ? AND client = ?", action.form, id.text)
                    .run();
            return {};
        });
        if (done)
            known = std::move(next);
        return done;
    });
}

Result<void> Store::note(const Action &action, const Id &object, const std::string &detail) {
    return m_inner->use(
        [&] { return m_inner->commit(action, object.text, detail, [] { return Result<void>(); }); });
}

Result<void> Store::saveDraft(const Draft &draft) {
    return m_inner->use([&]() -> Result<void> {
        Transaction transaction(m_inner->database);
        if (draft.text.empty())
            Statement(m_inner->database, "DELETE FROM draft WHERE form = ? AND client = ?", draft.form,
                      draft.client.text)
                .run();
        else
            Statement(m_inner->database,
                      "INSERT OR REPLACE INTO draft(form, client, text, at) VALUES(?,?,?,?)", draft.form,
                      draft.client.text, draft.text, timeStamp())
                .run();
        transaction.commit();
        return {};
    });
}

Result<std::vector<Draft>> Store::drafts() const {
    return m_inner->use([&]() -> Result<std::vector<Draft>> {
        std::vector<Draft> found;
        Statement rows(m_inner->database,
                       "SELECT form, client, text FROM draft ORDER BY at DESC, form, client");
        while (rows.step())
            found.push_back({rows.text(0), {rows.text(1)}, rows.text(2)});
        return found;
    });
}

Result<void> Store::changePassphrase(std::string_view newPassphrase, KeyCost cost) {
    return m_inner->use([&]() -> Result<void> {
        if (auto accepted = checkPassphraseOf(newPassphrase, m_inner->author); !accepted)
            return accepted;
        return normalisedPassphrase(newPassphrase).and_then([&](const SecretBytes &secret) {
            return m_inner->replaceSlot(SlotKind::Passphrase, secret, cost, "passphrase.changed");
        });
    });
}

Result<std::string> Store::renewRecoveryCode(KeyCost cost) {
    return m_inner->use([&]() -> Result<std::string> {
        const auto secret = SecretBytes::random(recoveryBytes);
        return m_inner->replaceSlot(SlotKind::RecoveryCode, secret, cost, "recovery-code.renewed").map([&] {
            return writeRecoveryCode(secret);
        });
    });
}

std::vector<std::string> Store::notices() const {
    std::vector<std::string> sentences;
    for (const auto notice : m_inner->notices)
        sentences.push_back(sentenceOf(notice));
    return sentences;
}

Result<void> Store::acceptNotices(const Action &action) {
    return m_inner->use([&]() -> Result<void> {
        auto done = m_inner->commit(
            action, "", std::to_string(m_inner->notices.size()) + " notices accepted", [&]() -> Result<void> {
                Statement(m_inner->database, "UPDATE key_file SET generation = ?", m_inner->keys.generation)
                    .run();
                return {};
            });
        if (!done)
            return done;
        m_inner->notices.clear();
        return writeHeads(m_inner->folder, m_inner->chain, m_inner->head);
    });
}

Result<std::vector<AuditRow>> Store::audit() const {
    return m_inner->use([&]() -> Result<std::vector<AuditRow>> { return auditRows(m_inner->database); });
}

Result<std::int64_t> Store::verifyAudit() const {
    return m_inner->use([&]() -> Result<std::int64_t> {
        return m_inner->trailFits()
            .and_then([&] { return m_inner->chain.verify(m_inner->database); })
            .map([](const AuditHead &head) { return head.sequence; });
    });
}

Result<void> Store::verify() const {
    auto sound = m_inner->use([&]() -> Result<void> {
        if (m_inner->database.text("PRAGMA integrity_check") != "ok" ||
            Statement(m_inner->database, "PRAGMA foreign_key_check").step())
            return fail(ErrorCode::DamagedDatabase,
                        Sentence::tr("The file records.db is damaged. Restore the last backup, and keep the "
                                     "damaged folder as it is."));
        return {};
    });
    if (!sound)
        return sound;
    return verifyAudit().map([](std::int64_t) {});
}

Result<void> Store::saveSetting(const std::string &key, const std::string &value) {
    return m_inner->use([&] {
        return m_inner->commit(
            {.author = {}, .visit = {}, .what = "setting.changed"}, "", key, [&]() -> Result<void> {
                Statement(m_inner->database, "INSERT OR REPLACE INTO setting(key, value) VALUES(?,?)", key,
                          value)
                    .run();
                return {};
            });
    });
}

Result<std::optional<std::string>> Store::setting(const std::string &key) const {
    return m_inner->use([&]() -> Result<std::optional<std::string>> {
        Statement row(m_inner->database, "SELECT value FROM setting WHERE key = ?", key);
        return row.step() ? std::optional(row.text(0)) : std::nullopt;
    });
}

} // namespace model
