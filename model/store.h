#pragma once
#include "model/case.h"
#include "model/photo.h"
#include "model/result.h"
#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace model {

/// Cost of the key derivation (Argon2id). Tests use the cheapest allowed.
struct KeyCost {
    unsigned passes = 3;
    unsigned kibibytes = 256 * 1024;
    [[nodiscard]] static KeyCost cheapest() { return {1, 8 * 1024}; }
};

/// What stands in the caseload without opening a client.
struct ClientSummary {
    Id id;
    std::string name;
    std::string code;
    bool archived = false;
    std::optional<Date> lastVisit;
    std::optional<Date> nextReview; // earliest review of a goal that has no rating from that day on
    std::string search;             // name and code, case and accents aside: compare with searchForm()
};

/// Who did what, for the stamp of each record and for the audit.
struct Action {
    std::string author; // the therapist's name or initials
    Id visit;           // the visit it belongs to, may be empty
    std::string what;   // "client.changed", "plan.made", "paper.exported": a code, never a client's data
    std::string form{}; // the form whose draft this saves, and which is deleted with it; may be empty
};

struct AuditRow {
    std::int64_t sequence = 0;
    std::string at, author, what, object, detail;
};

struct Draft {
    std::string form;
    Id client;
    std::string text;
};

struct StoreOptions; // model/store_options.h, for tests

/// The encrypted records of one practice: a folder with records.db and records.key. Move-only; one instance
/// at a time. Every function that changes records commits one transaction, with its audit row, before it
/// returns. A draft has no row of its own. Used from one thread at a time, which may be another one than that
/// which opened it.
/// create, open, changePassphrase and renewRecoveryCode work out keys for a second or more: call them on a
/// worker thread.
class Store {
public:
    struct Made;
    /// Makes a new store in `folder` (made if missing, must hold no store). Fails with WeakSecret, ReadOnly,
    /// Full, NotEncrypted, Refused (a store is there already).
    [[nodiscard]] static Result<Made> create(const std::filesystem::path &folder, std::string_view passphrase,
                                             const std::string &author, KeyCost cost);
    /// Opens with the passphrase or the recovery code. Fails with Missing, WrongSecret, DamagedKeyFile,
    /// DamagedDatabase, NewerVersion, Busy, NotEncrypted, ReadOnly.
    [[nodiscard]] static Result<Store> open(const std::filesystem::path &folder, std::string_view secret,
                                            const std::string &author, KeyCost wanted);
    [[nodiscard]] static Result<Store> open(const std::filesystem::path &folder, std::string_view secret,
                                            const std::string &author, KeyCost wanted,
                                            const StoreOptions &options);
    [[nodiscard]] static bool existsIn(const std::filesystem::path &folder);
    /// Puts records.key.bak in the place of a damaged or missing records.key, which is kept as
    /// records.key.damaged. Fails with Missing, DamagedKeyFile when the copy is no better, Refused when
    /// records.key is sound, Busy.
    [[nodiscard]] static Result<void> restoreKeyFile(const std::filesystem::path &folder);

    Store(Store &&) noexcept;
    Store &operator=(Store &&) noexcept;
    ~Store(); // closes the connection and wipes the key

    [[nodiscard]] Result<std::vector<ClientSummary>> caseload() const;
    [[nodiscard]] Result<Case> load(const Id &client) const;
    /// Writes what differs, in one transaction, with the stamp and an audit row. A client that was here
    /// before must have been loaded by this store. Fails with Changed when a record is not as it was then.
    [[nodiscard]] Result<void> save(const Case &before, const Case &after, const Action &action);
    /// An audit row alone: viewed, exported, locked.
    [[nodiscard]] Result<void> note(const Action &action, const Id &object, const std::string &detail);

    [[nodiscard]] Result<void> saveDraft(const Draft &draft); // empty text deletes it
    [[nodiscard]] Result<std::vector<Draft>> drafts() const;

    /// Keeps a photograph of a saved client, encrypted with the rest; `picture` is as it will be shown. Fails
    /// with Missing without a description, OutOfRange for an empty picture or one above `largestPhoto`.
    [[nodiscard]] Result<void> addPhoto(const Photo &photo, std::span<const std::uint8_t> picture,
                                        const Action &action);
    [[nodiscard]] Result<std::vector<Photo>> photos(const Id &client) const; // oldest first
    /// The picture of a photograph. Fails with Missing.
    [[nodiscard]] Result<std::vector<std::uint8_t>> picture(const Id &photo) const;
    /// Takes it out of the records for good. Fails with Missing.
    [[nodiscard]] Result<void> removePhoto(const Photo &photo, const Action &action);

    /// The recovery code stays good, and the old passphrase opens nothing but older backups.
    [[nodiscard]] Result<void> changePassphrase(std::string_view newPassphrase, KeyCost cost);
    /// A new code, to be shown once; the one before opens nothing but older backups.
    [[nodiscard]] Result<std::string> renewRecoveryCode(KeyCost cost);
    /// What looked wrong on opening, in sentences; empty as a rule. An older copy of the records or of the
    /// key file was put back, or the end of the audit trail is missing. They come again until they are
    /// accepted.
    [[nodiscard]] std::vector<std::string> notices() const;
    [[nodiscard]] Result<void> acceptNotices(const Action &action);
    [[nodiscard]] Result<std::vector<AuditRow>> audit() const;
    /// Recomputes the keyed chain. Fails with DamagedDatabase and names the first row that does not fit.
    [[nodiscard]] Result<std::int64_t> verifyAudit() const;
    /// Reads every page and checks foreign keys and the audit chain.
    [[nodiscard]] Result<void> verify() const;
    /// A small value of the program itself (text size, theme); never client data.
    [[nodiscard]] Result<void> saveSetting(const std::string &key, const std::string &value);
    [[nodiscard]] Result<std::optional<std::string>> setting(const std::string &key) const;

private:
    friend struct StoreOpening;
    struct Inner;
    explicit Store(std::unique_ptr<Inner> inner);
    std::unique_ptr<Inner> m_inner;
};

struct Store::Made {
    Store store;
    std::string recoveryCode; // 8 groups, shown once
};

/// Fails with WeakSecret and says why: shorter than 15 characters, longer than 1024 bytes, a common phrase.
[[nodiscard]] Result<void> checkPassphrase(std::string_view passphrase);
/// Text for searching: compatibility forms, accents and case aside.
[[nodiscard]] std::string searchForm(std::string_view text);
/// True if `typed` is group `number` (1..8) of the code, spaces and case aside.
[[nodiscard]] bool recoveryGroupMatches(const std::string &code, int number, std::string_view typed);

} // namespace model
