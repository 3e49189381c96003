#include "model/store_inner.h"
#include "model/sentence.h"
#include <algorithm>
#include <chrono>
#include <utility>

namespace model {

std::string sentenceOf(Notice notice) {
    switch (notice) {
    case Notice::OlderRecords:
        return Sentence::tr("The records are older than when they were last used here, or the end of their "
                            "trail was cut off. If you have just restored a backup, this is as it should be. "
                            "If not, keep this folder as it is and compare it with the last backup.");
    case Notice::NoHead:
        return Sentence::tr(
            "The file records.head is missing or damaged, so it cannot be told whether an older copy of the "
            "records was put back. If you have just restored a backup, this is as it should be.");
    case Notice::OlderKeyFile:
        return Sentence::tr("An older key file was put back, so an older passphrase opens the records again. "
                            "Change the passphrase now.");
    }
    return {};
}

std::string timeStamp() {
    return isoTime(std::chrono::floor<std::chrono::seconds>(std::chrono::system_clock::now()));
}

Result<void> writeHeads(const std::filesystem::path &folder, const AuditChain &chain, const AuditHead &head) {
    auto bytes = chain.encodeHead(head);
    const auto again = bytes;
    bytes.insert(bytes.end(), again.begin(), again.end());
    return platform::writeDurably(folder / headName, bytes);
}

Result<void> Store::Inner::commit(const Action &action, const std::string &object, const std::string &detail,
                                  const std::function<Result<void>()> &change) {
    Transaction transaction(database);
    if (auto changed = change(); !changed)
        return changed;
    const AuditRow row{.at = timeStamp(),
                       .author = action.author.empty() ? author : action.author,
                       .what = action.what,
                       .object = object,
                       .detail = detail};
    const auto next = chain.append(database, row, head);
    transaction.commit();
    head = next;
    keepHead();
    return {};
}

/// The file is replaced inside the transaction: if the program dies between the two, the key file is the
/// newer one, which the next start accepts.
Result<void> Store::Inner::replaceSlot(SlotKind kind, const SecretBytes &secret, KeyCost cost,
                                       const std::string &what) {
    const auto slot = sealKey(keys.databaseSalt, kind, secret, dataKey, cost);
    if (!slot)
        return tl::unexpected(slot.error());
    KeyFile next = keys;
    next.put(*slot);
    const auto known = database.number("SELECT generation FROM key_file");
    next.generation = std::max(keys.generation, static_cast<std::uint32_t>(known)) + 1;

    auto done = commit({.author = author, .visit = {}, .what = what}, "", "", [&]() -> Result<void> {
        Statement(database, "UPDATE key_file SET generation = ?", next.generation).run();
        auto replaced = replaceKeyFile(folder, next, {{kind, &secret}});
        if (replaced)
            keys = next;
        return replaced;
    });
    if (!done)
        return done;
    notices.erase(Notice::OlderKeyFile);
    if (!refreshKeyCopy(folder))
        return fail(ErrorCode::InputOutput,
                    Sentence::tr("The change is done, but records.key.bak could not be renewed and still "
                                 "opens with the old secret. Delete that file when the disk is well again."));
    return {};
}

void Store::Inner::readRevisions(const std::string &client) {
    auto &known = revisions[client];
    known.clear();
    Statement rows(database, "SELECT id, revision FROM record WHERE client = ?", client);
    while (rows.step())
        known[rows.text(0)] = rows.number(1);
}

/// Without waiting for the disk: a head that lags behind the records raises no alarm.
void Store::Inner::keepHead() const {
    if (notices.contains(Notice::OlderRecords) || notices.contains(Notice::NoHead))
        return;
    const auto bytes = chain.encodeHead(head);
    (void)platform::overwriteAt(folder / headName, head.sequence % 2 == 0 ? 0 : bytes.size(), bytes);
}

/// After a failed write nobody knows what the disk has; the file itself tells.
void Store::Inner::reopenIfDoubtful() {
    if (!doubtful)
        return;
    { const Database closed = std::move(database); }
    database = Database(folder / databaseName, dataKey, keys.databaseSalt, journal);
    head = lastAuditRow(database);
    for (const auto &[client, known] : std::exchange(revisions, {}))
        readRevisions(client);
    doubtful = false;
}

Result<void> Store::Inner::trailFits() const {
    for (const auto notice : {Notice::OlderRecords, Notice::NoHead}) {
        if (notices.contains(notice))
            return fail(ErrorCode::DamagedDatabase, sentenceOf(notice));
    }
    return {};
}

} // namespace model
