#pragma once
#include "model/secret.h"
#include "model/store.h"
#include <filesystem>
#include <vector>

namespace model {

/// The two secrets that open a store. The numbers are those in the file.
enum class SlotKind : unsigned char { Passphrase = 1, RecoveryCode = 2 };

/// The data key, sealed under a key that Argon2id derives from one secret.
struct KeySlot {
    SlotKind kind{};
    KeyCost cost;
    ByteArray<16> salt{};
    ByteArray<24> nonce{};
    ByteArray<48> sealed{};
    friend bool operator==(const KeySlot &a, const KeySlot &b) {
        return a.kind == b.kind && a.cost.passes == b.cost.passes && a.cost.kibibytes == b.cost.kibibytes &&
               a.salt == b.salt && a.nonce == b.nonce && a.sealed == b.sealed;
    }
};

/// What records.key holds. Format version 1, little endian:
/// "FMKF" | u8 version | u32 generation | 16 B database salt | u8 slots | slots | 32 B BLAKE2b of all before.
/// Slot, 98 B: u8 kind | u8 derivation (1 = Argon2id) | u32 passes | u32 KiB | 16 B salt | 24 B nonce | 48 B
/// sealed key. The seal is XChaCha20-Poly1305; magic, version, database salt and the slot up to its salt are
/// bound to it.
struct KeyFile {
    std::uint32_t generation = 1; // grows with every change
    ByteArray<16> databaseSalt{};
    std::vector<KeySlot> slots;
    [[nodiscard]] const KeySlot *slot(SlotKind kind) const; // none: nullptr
    void put(const KeySlot &slot);                          // replaces the slot of this kind
    friend bool operator==(const KeyFile &, const KeyFile &) = default;
};

[[nodiscard]] Bytes encode(const KeyFile &file);
/// Fails with DamagedKeyFile, also for a cost outside 1..64 passes and 8 MiB..4 GiB, or NewerVersion.
[[nodiscard]] Result<KeyFile> decodeKeyFile(ByteView bytes);
/// Fails with Missing, DamagedKeyFile, NewerVersion, ReadOnly, InputOutput.
[[nodiscard]] Result<KeyFile> readKeyFile(const std::filesystem::path &path);

/// Seals `dataKey`. When there is not enough memory for `cost` it takes 64 MiB and 3 passes; the slot says
/// what was used. Fails with InputOutput when there is not even memory for that.
[[nodiscard]] Result<KeySlot> sealKey(const ByteArray<16> &databaseSalt, SlotKind kind,
                                      const SecretBytes &secret, const SecretBytes &dataKey, KeyCost cost);
/// Fails with WrongSecret, or InputOutput when there is not enough memory.
[[nodiscard]] Result<SecretBytes> unsealKey(const ByteArray<16> &databaseSalt, const KeySlot &slot,
                                            const SecretBytes &secret);

/// A slot that must open again after it has been written.
struct SlotProof {
    SlotKind kind{};
    const SecretBytes *secret = nullptr; // not owned, never null
};

/// Replaces records.key in `folder`: writes a new file beside it, reads it back, opens each proof from what
/// was read, and only then renames. Until then the old file stays as it was.
[[nodiscard]] Result<void> replaceKeyFile(const std::filesystem::path &folder, const KeyFile &file,
                                          const std::vector<SlotProof> &proofs);
/// Makes records.key.bak equal to records.key, so that no old secret opens it any more.
[[nodiscard]] Result<void> refreshKeyCopy(const std::filesystem::path &folder);

inline constexpr auto keyFileName = "records.key";
inline constexpr auto keyCopyName = "records.key.bak";

} // namespace model
