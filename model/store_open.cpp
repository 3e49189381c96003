#include "model/migrations.h"
#include "model/passphrase.h"
#include "model/recovery_code.h"
#include "model/sentence.h"
#include "model/store_inner.h"
#include "model/store_options.h"
#include <algorithm>

namespace model {
namespace {

namespace fs = std::filesystem;

constexpr std::size_t saltSize = 16;
constexpr std::string_view plainStart = "SQLite format 3";

/// A secret as typed, in each form in which it may open a slot.
struct Candidate {
    SlotKind kind{};
    SecretBytes secret;
};

struct Unlocked {
    Candidate candidate;
    SecretBytes dataKey;
};

void removeQuietly(const fs::path &path) {
    std::error_code ignored;
    fs::remove(path, ignored);
}

bool isThere(const fs::path &path) {
    std::error_code ignored;
    return fs::exists(path, ignored);
}

/// What a stop in the middle of a change leaves behind.
void removeLeftovers(const fs::path &folder) {
    for (const auto *name : {keyFileName, keyCopyName})
        removeQuietly(folder / (std::string(name) + ".new"));
}

void removeUnfinished(const fs::path &folder) {
    removeLeftovers(folder);
    removeQuietly(folder / databaseNewName);
    removeQuietly(folder / (std::string(databaseNewName) + "-journal"));
}

/// The first bytes of an encrypted file are its salt; those of a plain one say what it is.
Result<void> checkStart(const fs::path &path, const ByteArray<saltSize> &salt) {
    const auto start = platform::readStart(path, saltSize);
    if (!start && start.error().code == ErrorCode::Missing)
        return fail(ErrorCode::Missing,
                    Sentence::tr("The file records.db is missing though its key file is here. Nothing was "
                                 "made in its place. Put the file back, or restore the last backup."));
    if (!start)
        return tl::unexpected(start.error());
    if (std::ranges::equal(*start, salt))
        return {};
    if (start->size() == saltSize &&
        std::ranges::equal(ByteView(*start).first(plainStart.size()), plainStart))
        return fail(ErrorCode::NotEncrypted,
                    Sentence::tr("The file records.db is not encrypted, so it is not Feltmark's own. It was "
                                 "not opened. Restore the last backup."));
    return fail(ErrorCode::DamagedDatabase,
                Sentence::tr("The files records.db and records.key do not belong together, or records.db is "
                             "damaged at its start. Put both back from the same backup."));
}

/// A store that was being made when the program stopped between the last two renames.
Result<void> finishCreation(const fs::path &folder, const ByteArray<saltSize> &salt) {
    if (isThere(folder / databaseName) || !checkStart(folder / databaseNewName, salt))
        return {};
    return platform::renameDurably(folder / databaseNewName, folder / databaseName);
}

Result<KeyFile> readKeys(const fs::path &folder) {
    auto keys = readKeyFile(folder / keyFileName);
    if (!keys && keys.error().code == ErrorCode::Missing)
        return fail(ErrorCode::Missing,
                    Sentence::tr("The key file records.key is missing; without it no passphrase can be "
                                 "tried. Put back its copy, records.key.bak, or restore the last backup."));
    return keys;
}

/// A recovery code has the form of one; all else can only be a passphrase, and a code may be one too.
Result<std::vector<Candidate>> candidatesOf(std::string_view secret, const Result<SecretBytes> &code) {
    std::vector<Candidate> candidates;
    if (code)
        candidates.push_back(
            {SlotKind::RecoveryCode, code->read([](ByteView b) { return SecretBytes::copyOf(b); })});
    auto passphrase = normalisedPassphrase(secret);
    if (!passphrase)
        return fail(ErrorCode::WrongSecret, passphrase.error().sentence);
    candidates.push_back({SlotKind::Passphrase, std::move(*passphrase)});
    return candidates;
}

Result<Unlocked> unlock(const KeyFile &keys, std::string_view secret) {
    const auto code = readRecoveryCode(secret);
    auto candidates = candidatesOf(secret, code);
    if (!candidates)
        return tl::unexpected(candidates.error());
    auto answer = Error{ErrorCode::WrongSecret, Sentence::tr("No secret of this kind opens these records.")};
    for (auto &candidate : *candidates) {
        const auto *slot = keys.slot(candidate.kind);
        if (slot == nullptr)
            continue;
        auto key = unsealKey(keys.databaseSalt, *slot, candidate.secret);
        if (key)
            return Unlocked{std::move(candidate), std::move(*key)};
        answer = key.error();
    }
    if (!code && code.error().code == ErrorCode::WrongSecret && answer.code == ErrorCode::WrongSecret)
        answer = code.error(); // it has the form of a code: say which group is wrong
    return tl::unexpected(answer);
}

Result<void> checkWhole(Database &database) {
    if (database.text("PRAGMA quick_check") != "ok")
        return fail(ErrorCode::DamagedDatabase,
                    Sentence::tr("The file records.db is damaged. Your passphrase is right. Restore the last "
                                 "backup, and keep the damaged folder as it is."));
    return {};
}

/// A sound copy beside the records before their tables change.
Result<void> backUpBeforeMigration(Database &database, const fs::path &folder, const SecretBytes &key,
                                   const ByteArray<saltSize> &salt, std::int64_t version) {
    const auto space = platform::freeSpace(folder);
    if (space && *space < 3 * fs::file_size(folder / databaseName))
        return fail(
            ErrorCode::Full,
            Sentence::tr("There is too little space on the disk to bring the records to this version of the "
                         "program safely. Free some space and try again; nothing was changed."));
    const auto path = folder / ("records-version-" + std::to_string(version) + ".db");
    if (auto made = platform::writeDurably(path, {}); !made)
        return made;
    database.backUpTo(path, key, salt);
    return {};
}

bool isWeaker(KeyCost stored, KeyCost wanted) {
    return stored.kibibytes < wanted.kibibytes || stored.passes < wanted.passes;
}

} // namespace

/// Private parts of opening that need Store::Inner.
struct StoreOpening {
    static std::set<Notice> noticesOf(Database &database, const AuditChain &chain, const fs::path &folder,
                                      const KeyFile &keys) {
        std::set<Notice> notices;
        const auto bytes = platform::readStart(folder / headName, 4096);
        const auto head = bytes ? chain.decodeHeads(*bytes) : std::nullopt;
        if (!head)
            notices.insert(Notice::NoHead);
        else if (!auditHolds(database, *head))
            notices.insert(Notice::OlderRecords);
        if (keys.generation < database.number("SELECT generation FROM key_file"))
            notices.insert(Notice::OlderKeyFile);
        return notices;
    }

    static Result<void> recordOpening(Store::Inner &inner, SlotKind kind) {
        Statement last(inner.database, "SELECT at FROM audit WHERE seq = ?", inner.head.sequence);
        const bool clockBehind = last.step() && timeStamp() < last.text(0);
        const std::string secret = kind == SlotKind::Passphrase ? "passphrase" : "recovery code";
        return inner.commit(
            {.author = inner.author, .visit = {}, .what = "store.opened"}, "",
            secret + (clockBehind ? ", clock behind the entry before" : ""), [&]() -> Result<void> {
                Statement(inner.database, "UPDATE key_file SET generation = max(generation, ?)",
                          inner.keys.generation)
                    .run();
                return {};
            });
    }

    /// A stronger seal when more is wanted than the slot has. The store is open either way.
    static void sealStronger(Store::Inner &inner, const Candidate &candidate, KeyCost wanted) {
        const KeyCost stored = inner.keys.slot(candidate.kind)->cost;
        if (!isWeaker(stored, wanted) || inner.notices.contains(Notice::OlderKeyFile))
            return;
        const KeyCost both{std::max(stored.passes, wanted.passes),
                           std::max(stored.kibibytes, wanted.kibibytes)};
        (void)inner.replaceSlot(candidate.kind, candidate.secret, both, "key.strengthened");
    }

    static Result<Store> withKey(const fs::path &folder, platform::LockFile lock, const KeyFile &keys,
                                 Unlocked unlocked, const std::string &author, KeyCost wanted,
                                 Journal journal) {
        if (auto start = checkStart(folder / databaseName, keys.databaseSalt); !start)
            return tl::unexpected(start.error());
        Database database(folder / databaseName, unlocked.dataKey, keys.databaseSalt, journal);
        auto ready = checkWhole(database).and_then([&] {
            return migrate(database, migrations(), [&](std::int64_t version) {
                return backUpBeforeMigration(database, folder, unlocked.dataKey, keys.databaseSalt, version);
            });
        });
        if (!ready)
            return tl::unexpected(ready.error());
        AuditChain chain(unlocked.dataKey);
        const auto head = lastAuditRow(database);
        auto notices = noticesOf(database, chain, folder, keys);
        auto inner = std::make_unique<Store::Inner>(Store::Inner{.folder = folder,
                                                                 .author = author,
                                                                 .journal = journal,
                                                                 .lock = std::move(lock),
                                                                 .dataKey = std::move(unlocked.dataKey),
                                                                 .keys = keys,
                                                                 .chain = std::move(chain),
                                                                 .database = std::move(database),
                                                                 .head = head,
                                                                 .notices = std::move(notices),
                                                                 .revisions = {}});
        if (auto recorded = recordOpening(*inner, unlocked.candidate.kind); !recorded)
            return tl::unexpected(recorded.error());
        sealStronger(*inner, unlocked.candidate, wanted);
        return Store(std::move(inner));
    }

    /// The database under its temporary name, closed again; and the head of its trail.
    static Result<AuditHead> makeDatabase(const fs::path &folder, const SecretBytes &dataKey,
                                          const KeyFile &keys, const std::string &author) {
        const auto path = folder / databaseNewName;
        if (auto made = platform::writeDurably(path, {}); !made)
            return tl::unexpected(made.error());
        const AuditChain chain(dataKey);
        AuditHead head;
        {
            Database database(path, dataKey, keys.databaseSalt, Journal::Delete);
            auto migrated = migrate(database, migrations(), [](std::int64_t) { return Result<void>(); });
            if (!migrated)
                return tl::unexpected(migrated.error());
            Transaction transaction(database);
            head = chain.append(
                database,
                {.at = timeStamp(), .author = author, .what = "store.created", .object = {}, .detail = {}},
                {});
            transaction.commit();
        }
        if (!checkStart(path, keys.databaseSalt))
            throw NotEncryptedError();
        auto kept = writeHeads(folder, chain, head);
        if (!kept)
            return tl::unexpected(kept.error());
        return head;
    }

    /// Everything on the disk; the key file comes last but one, so that a stop before it leaves no store.
    static Result<KeyFile> makeFiles(const fs::path &folder, const SecretBytes &dataKey,
                                     const SecretBytes &passphrase, const SecretBytes &recovery,
                                     const std::string &author, KeyCost cost) {
        KeyFile keys;
        SecretBytes::random(saltSize).read(
            [&](ByteView salt) { std::ranges::copy(salt, keys.databaseSalt.begin()); });
        for (const auto &[kind, secret] :
             {std::pair{SlotKind::Passphrase, &passphrase}, std::pair{SlotKind::RecoveryCode, &recovery}}) {
            const auto slot = sealKey(keys.databaseSalt, kind, *secret, dataKey, cost);
            if (!slot)
                return tl::unexpected(slot.error());
            keys.put(*slot);
        }
        auto made = makeDatabase(folder, dataKey, keys, author)
                        .and_then([&](const AuditHead &) {
                            return replaceKeyFile(
                                folder, keys,
                                {{SlotKind::Passphrase, &passphrase}, {SlotKind::RecoveryCode, &recovery}});
                        })
                        .and_then([&] {
                            return platform::renameDurably(folder / databaseNewName, folder / databaseName);
                        })
                        .and_then([&] { return refreshKeyCopy(folder); });
        if (!made)
            return tl::unexpected(made.error());
        return keys;
    }

    static Result<Store::Made> create(const fs::path &folder, std::string_view passphrase,
                                      const std::string &author, KeyCost cost) {
        auto lock = platform::LockFile::take(folder / lockName);
        if (!lock)
            return tl::unexpected(lock.error());
        if (Store::existsIn(folder))
            return fail(ErrorCode::Refused, Sentence::tr("There are records in this folder already. Unlock "
                                                         "them, or choose another folder for new ones."));
        removeUnfinished(folder);
        auto typed = normalisedPassphrase(passphrase);
        if (!typed)
            return tl::unexpected(typed.error());
        auto dataKey = SecretBytes::random(32);
        const auto recovery = SecretBytes::random(recoveryBytes);
        auto store =
            makeFiles(folder, dataKey, *typed, recovery, author, cost).and_then([&](const KeyFile &keys) {
                return withKey(folder, std::move(*lock), keys,
                               {{SlotKind::Passphrase, std::move(*typed)}, std::move(dataKey)}, author, cost,
                               Journal::Delete);
            });
        if (!store) {
            // Nobody has put anything in yet, and nobody has seen the code: take it all away again.
            for (const auto *name : {keyFileName, keyCopyName, databaseName, headName})
                removeQuietly(folder / name);
            removeUnfinished(folder);
            return tl::unexpected(store.error());
        }
        return Store::Made{std::move(*store), writeRecoveryCode(recovery)};
    }
};

bool Store::existsIn(const fs::path &folder) {
    return isThere(folder / keyFileName) || isThere(folder / keyCopyName) || isThere(folder / databaseName);
}

Result<Store::Made> Store::create(const fs::path &folder, std::string_view passphrase,
                                  const std::string &author, KeyCost cost) {
    return caught([&]() -> Result<Made> {
        readyCrypto();
        auto ready = checkPassphraseOf(passphrase, author).and_then([&] {
            return platform::makePrivateFolder(folder);
        });
        if (!ready)
            return tl::unexpected(ready.error());
        return StoreOpening::create(folder, passphrase, author, cost);
    });
}

Result<Store> Store::open(const fs::path &folder, std::string_view secret, const std::string &author,
                          KeyCost wanted) {
    return open(folder, secret, author, wanted, {});
}

Result<Store> Store::open(const fs::path &folder, std::string_view secret, const std::string &author,
                          KeyCost wanted, const StoreOptions &options) {
    return caught([&]() -> Result<Store> {
        readyCrypto();
        if (!existsIn(folder))
            return fail(ErrorCode::Missing, Sentence::tr("There are no records in this folder. Check the "
                                                         "folder's name, or make new records there."));
        auto lock = platform::LockFile::take(folder / lockName);
        if (!lock)
            return tl::unexpected(lock.error());
        removeLeftovers(folder);
        const auto keys = readKeys(folder);
        if (!keys)
            return tl::unexpected(keys.error());
        auto ready = finishCreation(folder, keys->databaseSalt).and_then([&] {
            return checkStart(folder / databaseName, keys->databaseSalt);
        });
        if (!ready)
            return tl::unexpected(ready.error());
        auto unlocked = unlock(*keys, secret);
        if (!unlocked)
            return tl::unexpected(unlocked.error());
        return StoreOpening::withKey(folder, std::move(*lock), *keys, std::move(*unlocked), author, wanted,
                                     options.journalOff ? Journal::Off : Journal::Delete);
    });
}

Result<void> Store::restoreKeyFile(const fs::path &folder) {
    return caught([&]() -> Result<void> {
        const auto lock = platform::LockFile::take(folder / lockName);
        if (!lock)
            return tl::unexpected(lock.error());
        const auto current = readKeyFile(folder / keyFileName);
        if (current)
            return fail(ErrorCode::Refused,
                        Sentence::tr("The key file is sound, so its copy was not put back."));
        if (current.error().code != ErrorCode::DamagedKeyFile && current.error().code != ErrorCode::Missing)
            return tl::unexpected(current.error());
        const auto copy = readKeyFile(folder / keyCopyName);
        if (!copy)
            return tl::unexpected(copy.error());
        if (auto paired = checkStart(folder / databaseName, copy->databaseSalt); !paired)
            return paired;
        if (current.error().code == ErrorCode::DamagedKeyFile) {
            auto kept = platform::renameDurably(folder / keyFileName, folder / "records.key.damaged");
            if (!kept)
                return kept;
        }
        return replaceKeyFile(folder, *copy, {});
    });
}

} // namespace model
