#include "model/audit.h"
#include "model/database.h"
#include "model/sentence.h"
#include <algorithm>
#include <sodium.h>

namespace model {
namespace {

constexpr std::string_view headMagic = "FMAH";
constexpr std::size_t headSize = 4 + 8 + 32;
constexpr std::size_t sealedHeadSize = headSize + 32;

void append64(Bytes &out, std::uint64_t value) {
    for (unsigned shift = 0; shift < 64; shift += 8)
        out.push_back(static_cast<unsigned char>(value >> shift));
}

void appendText(Bytes &out, const std::string &text) {
    append64(out, text.size()); // with its length, so that no two rows read the same
    out.insert(out.end(), text.begin(), text.end());
}

AuditRow rowOf(const Statement &statement) {
    return {.sequence = statement.number(0),
            .at = statement.text(1),
            .author = statement.text(2),
            .what = statement.text(3),
            .object = statement.text(4),
            .detail = statement.text(5)};
}

ByteArray<32> keyedHash(const SecretBytes &key, ByteView bytes) {
    ByteArray<32> mac{};
    key.read([&](ByteView secret) {
        crypto_generichash(mac.data(), mac.size(), bytes.data(), bytes.size(), secret.data(), secret.size());
    });
    return mac;
}

} // namespace

AuditChain::AuditChain(const SecretBytes &dataKey) : m_key(32) {
    dataKey.read([&](ByteView key) {
        m_key.write([&](std::span<unsigned char> out) {
            crypto_kdf_derive_from_key(out.data(), out.size(), 1, "FMaudit_", key.data());
        });
    });
}

ByteArray<32> AuditChain::macOf(const AuditRow &row, const ByteArray<32> &before) const {
    Bytes bytes(before.begin(), before.end());
    append64(bytes, static_cast<std::uint64_t>(row.sequence));
    for (const auto *text : {&row.at, &row.author, &row.what, &row.object, &row.detail})
        appendText(bytes, *text);
    return keyedHash(m_key, bytes);
}

AuditHead AuditChain::append(Database &database, const AuditRow &row, const AuditHead &before) const {
    AuditRow numbered = row;
    numbered.sequence = before.sequence + 1;
    const AuditHead head{numbered.sequence, macOf(numbered, before.mac)};
    Statement(database, "INSERT INTO audit(seq, at, author, what, object, detail, mac) VALUES(?,?,?,?,?,?,?)",
              numbered.sequence, numbered.at, numbered.author, numbered.what, numbered.object,
              numbered.detail, head.mac)
        .run();
    return head;
}

Result<AuditHead> AuditChain::verify(Database &database) const {
    Statement rows(database, "SELECT seq, at, author, what, object, detail, mac FROM audit ORDER BY seq");
    AuditHead head;
    while (rows.step()) {
        const auto row = rowOf(rows);
        const auto mac = macOf(row, head.mac);
        if (row.sequence != head.sequence + 1 || !std::ranges::equal(rows.blob(6), mac))
            return fail(
                ErrorCode::DamagedDatabase,
                Sentence::tr("The trail of who did what does not fit at entry {1}: it was changed outside "
                             "the program. Keep this folder as it is, and compare it with the last backup.",
                             {std::to_string(head.sequence + 1)}));
        head = {row.sequence, mac};
    }
    return head;
}

Bytes AuditChain::encodeHead(const AuditHead &head) const {
    Bytes bytes(headMagic.begin(), headMagic.end());
    append64(bytes, static_cast<std::uint64_t>(head.sequence));
    bytes.insert(bytes.end(), head.mac.begin(), head.mac.end());
    const auto seal = keyedHash(m_key, bytes);
    bytes.insert(bytes.end(), seal.begin(), seal.end());
    return bytes;
}

std::optional<AuditHead> AuditChain::decodeHead(ByteView bytes) const {
    if (!std::ranges::equal(bytes.first(headMagic.size()), headMagic) ||
        !std::ranges::equal(keyedHash(m_key, bytes.first(headSize)), bytes.last(32)))
        return std::nullopt;
    AuditHead head;
    std::uint64_t sequence = 0;
    for (unsigned i = 0; i < 8; ++i)
        sequence |= static_cast<std::uint64_t>(bytes[headMagic.size() + i]) << (8 * i);
    head.sequence = static_cast<std::int64_t>(sequence);
    std::ranges::copy(bytes.subspan(headMagic.size() + 8, 32), head.mac.begin());
    return head;
}

std::optional<AuditHead> AuditChain::decodeHeads(ByteView bytes) const {
    std::optional<AuditHead> furthest;
    for (; bytes.size() >= sealedHeadSize; bytes = bytes.subspan(sealedHeadSize)) {
        const auto head = decodeHead(bytes.first(sealedHeadSize));
        if (head && (!furthest || head->sequence > furthest->sequence))
            furthest = head;
    }
    return furthest;
}

AuditHead lastAuditRow(Database &database) {
    Statement last(database, "SELECT seq, mac FROM audit ORDER BY seq DESC LIMIT 1");
    AuditHead head;
    if (last.step()) {
        head.sequence = last.number(0);
        const auto mac = last.blob(1);
        std::ranges::copy(mac.first(std::min(mac.size(), head.mac.size())), head.mac.begin());
    }
    return head;
}

std::vector<AuditRow> auditRows(Database &database) {
    Statement rows(database, "SELECT seq, at, author, what, object, detail FROM audit ORDER BY seq");
    std::vector<AuditRow> found;
    while (rows.step())
        found.push_back(rowOf(rows));
    return found;
}

bool auditHolds(Database &database, const AuditHead &head) {
    if (head.sequence == 0)
        return true;
    Statement row(database, "SELECT mac FROM audit WHERE seq = ?", head.sequence);
    return row.step() && std::ranges::equal(row.blob(0), head.mac);
}

} // namespace model
