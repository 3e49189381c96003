#pragma once
#include "model/secret.h"
#include "model/store.h"
#include <optional>

namespace model {

class Database;

/// The last row of the chain.
struct AuditHead {
    std::int64_t sequence = 0; // 0: no rows
    ByteArray<32> mac{};
    friend bool operator==(const AuditHead &, const AuditHead &) = default;
};

/// The trail as a chain: each row carries a keyed BLAKE2b over the row before and its own words, so that a
/// row changed, taken out or put in by someone without the key shows. What the database cannot show by
/// itself, a cut end or a whole older file, shows against the head that is kept in a file beside it. Somebody
/// who puts back an older copy of the whole folder is not noticed.
class AuditChain {
public:
    explicit AuditChain(const SecretBytes &dataKey);

    /// Adds a row after `before`, within the caller's transaction. Throws DatabaseError.
    [[nodiscard]] AuditHead append(Database &database, const AuditRow &row, const AuditHead &before) const;
    /// Recomputes the whole chain. Fails with DamagedDatabase and names the first row that does not fit.
    [[nodiscard]] Result<AuditHead> verify(Database &database) const;

    /// The head as it lies outside the database, sealed against change: 76 bytes.
    [[nodiscard]] Bytes encodeHead(const AuditHead &head) const;
    /// The furthest of the sealed heads in a file; none: damaged, or of another store.
    [[nodiscard]] std::optional<AuditHead> decodeHeads(ByteView bytes) const;

private:
    [[nodiscard]] std::optional<AuditHead> decodeHead(ByteView bytes) const;
    [[nodiscard]] ByteArray<32> macOf(const AuditRow &row, const ByteArray<32> &before) const;
    SecretBytes m_key;
};

[[nodiscard]] AuditHead lastAuditRow(Database &database);
[[nodiscard]] std::vector<AuditRow> auditRows(Database &database);
/// True if the row of `head` is there with the same mac.
[[nodiscard]] bool auditHolds(Database &database, const AuditHead &head);

} // namespace model
