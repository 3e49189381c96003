#pragma once
#include "model/audit.h"
#include "model/database.h"
#include "model/key_file.h"
#include "model/platform.h"
#include "model/store.h"
#include <map>
#include <set>

namespace model {

inline constexpr auto databaseName = "records.db";
inline constexpr auto databaseNewName = "records.db.new";
inline constexpr auto headName = "records.head";
inline constexpr auto lockName = "records.lock";

enum class Notice { OlderRecords, NoHead, OlderKeyFile };
[[nodiscard]] std::string sentenceOf(Notice notice);

/// The file of the head: its two latest, so that one survives a write that was cut short.
[[nodiscard]] Result<void> writeHeads(const std::filesystem::path &folder, const AuditChain &chain,
                                      const AuditHead &head);

/// UTC now, as written in the records.
[[nodiscard]] std::string timeStamp();

/// What is thrown below, as an Error.
template<class F> std::invoke_result_t<F> caught(F work) {
    try {
        return work();
    } catch (const DatabaseError &problem) {
        return tl::unexpected<Error>(errorFrom(problem));
    } catch (const NotEncryptedError &) {
        return fail(ErrorCode::NotEncrypted,
                    "This build of the program cannot encrypt, so it does not touch the "
                    "records. Install Feltmark again from its own package.");
    } catch (const std::bad_alloc &) {
        return fail(ErrorCode::InputOutput,
                    "The computer has run out of memory. Close other programs and try again.");
    } catch (const std::exception &) {
        return fail(ErrorCode::InputOutput,
                    "The system refused something that the records need. Nothing was changed. "
                    "Close the program, start it again, and try once more.");
    }
}

/// An open store. The connection closes before the key is wiped and the lock let go.
struct Store::Inner {
    std::filesystem::path folder;
    std::string author;
    Journal journal = Journal::Delete;
    platform::LockFile lock;
    SecretBytes dataKey;
    KeyFile keys;
    AuditChain chain;
    Database database;
    AuditHead head;
    std::set<Notice> notices;
    std::map<std::string, std::map<std::string, std::int64_t>>
        revisions;         // client -> record -> as last read or written
    bool doubtful = false; // the disk failed: open again before the next use

    /// The only way in: opens again after a failure of the disk, and turns what is thrown into an Error.
    template<class F> std::invoke_result_t<F> use(F work) {
        return caught([&] {
            reopenIfDoubtful();
            try {
                return work();
            } catch (const DatabaseError &problem) {
                doubtful = errorFrom(problem).code == ErrorCode::InputOutput;
                throw;
            }
        });
    }
    /// Makes `change` and adds the audit row, in one transaction.
    Result<void> commit(const Action &action, const std::string &object, const std::string &detail,
                        const std::function<Result<void>()> &change);
    Result<void> replaceSlot(SlotKind kind, const SecretBytes &secret, KeyCost cost, const std::string &what);
    void readRevisions(const std::string &client);
    void keepHead() const;
    void reopenIfDoubtful();
    [[nodiscard]] Result<void> trailFits() const;
};

} // namespace model
