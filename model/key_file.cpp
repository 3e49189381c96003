#include "model/key_file.h"
#include "model/platform.h"
#include "model/sentence.h"
#include <algorithm>
#include <cstring>
#include <sodium.h>

namespace model {
namespace {

constexpr std::string_view magic = "FMKF";
constexpr unsigned char version = 1;
constexpr unsigned char argon2id = 1;
constexpr std::size_t headSize = 4 + 1 + 4 + 16 + 1;
constexpr std::size_t slotSize = 98;
constexpr std::size_t checksumSize = 32;
constexpr std::size_t mostBytes = 64 * 1024;
constexpr unsigned mostPasses = 64;
constexpr unsigned fewestKibibytes = 8 * 1024;
constexpr unsigned mostKibibytes = 4U * 1024 * 1024;
constexpr KeyCost smallMemory{3, 64 * 1024}; // RFC 9106 section 4, second recommended choice, in one lane

static_assert(crypto_pwhash_SALTBYTES == 16);
static_assert(crypto_aead_xchacha20poly1305_ietf_NPUBBYTES == 24);
static_assert(crypto_aead_xchacha20poly1305_ietf_KEYBYTES == 32);
static_assert(crypto_aead_xchacha20poly1305_ietf_ABYTES == 16);

tl::unexpected<Error> damaged() {
    return fail(ErrorCode::DamagedKeyFile,
                Sentence::tr("The key file records.key is damaged, so no passphrase can be tried. Put back "
                             "its copy, records.key.bak, or restore a backup. The records are not lost."));
}

void append(Bytes &out, ByteView bytes) {
    out.insert(out.end(), bytes.begin(), bytes.end());
}

void append32(Bytes &out, std::uint32_t value) {
    for (unsigned shift = 0; shift < 32; shift += 8)
        out.push_back(static_cast<unsigned char>(value >> shift));
}

/// Takes fields off the front; the caller has checked the length.
class Reader {
public:
    explicit Reader(ByteView bytes) : m_rest(bytes) {}
    ByteView take(std::size_t size) {
        const auto front = m_rest.first(size);
        m_rest = m_rest.subspan(size);
        return front;
    }
    template<std::size_t N> ByteArray<N> array() {
        ByteArray<N> out{};
        std::ranges::copy(take(N), out.begin());
        return out;
    }
    unsigned char u8() { return take(1)[0]; }
    std::uint32_t u32() {
        std::uint32_t value = 0;
        const auto bytes = take(4);
        for (unsigned i = 0; i < 4; ++i)
            value |= static_cast<std::uint32_t>(bytes[i]) << (8 * i);
        return value;
    }

private:
    ByteView m_rest;
};

ByteArray<checksumSize> checksum(ByteView bytes) {
    ByteArray<checksumSize> sum{};
    crypto_generichash(sum.data(), sum.size(), bytes.data(), bytes.size(), nullptr, 0);
    return sum;
}

void appendSlotHead(Bytes &out, const KeySlot &slot) {
    out.push_back(static_cast<unsigned char>(slot.kind));
    out.push_back(argon2id);
    append32(out, slot.cost.passes);
    append32(out, slot.cost.kibibytes);
    append(out, slot.salt);
}

/// What is bound to a seal besides the key.
Bytes additionalData(const ByteArray<16> &databaseSalt, const KeySlot &slot) {
    Bytes data(magic.begin(), magic.end());
    data.push_back(version);
    append(data, databaseSalt);
    appendSlotHead(data, slot);
    return data;
}

/// No value: not enough memory.
std::optional<SecretBytes> derive(const SecretBytes &secret, const KeySlot &slot) {
    SecretBytes key(32);
    const int failed = secret.read([&](ByteView typed) {
        return key.write([&](std::span<unsigned char> out) {
            return crypto_pwhash(out.data(), out.size(), reinterpret_cast<const char *>(typed.data()),
                                 typed.size(), slot.salt.data(), slot.cost.passes,
                                 static_cast<std::size_t>(slot.cost.kibibytes) * 1024,
                                 crypto_pwhash_ALG_ARGON2ID13);
        });
    });
    if (failed != 0)
        return std::nullopt;
    return key;
}

tl::unexpected<Error> noMemory() {
    return fail(
        ErrorCode::InputOutput,
        Sentence::tr(
            "There is not enough free memory to work out the key. Close other programs and try again."));
}

KeySlot decodeSlot(Reader &reader, unsigned char &derivation) {
    KeySlot slot;
    slot.kind = static_cast<SlotKind>(reader.u8());
    derivation = reader.u8();
    slot.cost.passes = reader.u32();
    slot.cost.kibibytes = reader.u32();
    slot.salt = reader.array<16>();
    slot.nonce = reader.array<24>();
    slot.sealed = reader.array<48>();
    return slot;
}

bool costAllowed(KeyCost cost) {
    return cost.passes >= 1 && cost.passes <= mostPasses && cost.kibibytes >= fewestKibibytes &&
           cost.kibibytes <= mostKibibytes;
}

} // namespace

const KeySlot *KeyFile::slot(SlotKind kind) const {
    const auto found = std::ranges::find(slots, kind, &KeySlot::kind);
    return found == slots.end() ? nullptr : &*found;
}

void KeyFile::put(const KeySlot &slot) {
    std::erase_if(slots, [&](const KeySlot &old) { return old.kind == slot.kind; });
    slots.push_back(slot);
    std::ranges::sort(slots, {}, &KeySlot::kind);
}

Bytes encode(const KeyFile &file) {
    Bytes out(magic.begin(), magic.end());
    out.push_back(version);
    append32(out, file.generation);
    append(out, file.databaseSalt);
    out.push_back(static_cast<unsigned char>(file.slots.size()));
    for (const auto &slot : file.slots) {
        appendSlotHead(out, slot);
        append(out, slot.nonce);
        append(out, slot.sealed);
    }
    append(out, checksum(out));
    return out;
}

Result<KeyFile> decodeKeyFile(ByteView bytes) {
    readyCrypto();
    if (bytes.size() < headSize + checksumSize || bytes.size() > mostBytes)
        return damaged();
    const auto content = bytes.first(bytes.size() - checksumSize);
    if (!std::ranges::equal(checksum(content), bytes.last(checksumSize)) ||
        !std::ranges::equal(content.first(magic.size()), magic))
        return damaged();

    Reader reader(content.subspan(magic.size()));
    const auto newer = [] {
        return fail(ErrorCode::NewerVersion,
                    Sentence::tr("These records were written by a newer version of Feltmark. Update the "
                                 "program on this computer; nothing was changed."));
    };
    if (reader.u8() != version)
        return newer();
    KeyFile file;
    file.generation = reader.u32();
    file.databaseSalt = reader.array<16>();
    const std::size_t count = reader.u8();
    if (count == 0 || content.size() != headSize + count * slotSize)
        return damaged();
    for (std::size_t i = 0; i < count; ++i) {
        unsigned char derivation = 0;
        const auto slot = decodeSlot(reader, derivation);
        if (derivation != argon2id)
            return newer();
        if (!costAllowed(slot.cost))
            return damaged();
        file.slots.push_back(slot);
    }
    return file;
}

Result<KeyFile> readKeyFile(const std::filesystem::path &path) {
    return platform::readStart(path, mostBytes + 1).and_then([](const Bytes &bytes) {
        return decodeKeyFile(bytes);
    });
}

Result<KeySlot> sealKey(const ByteArray<16> &databaseSalt, SlotKind kind, const SecretBytes &secret,
                        const SecretBytes &dataKey, KeyCost cost) {
    KeySlot slot;
    slot.kind = kind;
    slot.cost = cost;
    randombytes_buf(slot.salt.data(), slot.salt.size());
    randombytes_buf(slot.nonce.data(), slot.nonce.size());
    auto key = derive(secret, slot);
    if (!key && cost.kibibytes > smallMemory.kibibytes) {
        slot.cost = smallMemory;
        key = derive(secret, slot);
    }
    if (!key)
        return noMemory();
    const auto bound = additionalData(databaseSalt, slot);
    key->read([&](ByteView wrapping) {
        dataKey.read([&](ByteView plain) {
            crypto_aead_xchacha20poly1305_ietf_encrypt(slot.sealed.data(), nullptr, plain.data(),
                                                       plain.size(), bound.data(), bound.size(), nullptr,
                                                       slot.nonce.data(), wrapping.data());
        });
    });
    return slot;
}

Result<SecretBytes> unsealKey(const ByteArray<16> &databaseSalt, const KeySlot &slot,
                              const SecretBytes &secret) {
    const auto key = derive(secret, slot);
    if (!key)
        return noMemory();
    const auto bound = additionalData(databaseSalt, slot);
    SecretBytes dataKey(32);
    const int failed = key->read([&](ByteView wrapping) {
        return dataKey.write([&](std::span<unsigned char> plain) {
            return crypto_aead_xchacha20poly1305_ietf_decrypt(
                plain.data(), nullptr, nullptr, slot.sealed.data(), slot.sealed.size(), bound.data(),
                bound.size(), slot.nonce.data(), wrapping.data());
        });
    });
    if (failed != 0)
        return fail(ErrorCode::WrongSecret,
                    Sentence::tr("This passphrase or recovery code does not open the records. Check capital "
                                 "letters and the keyboard's language, then type it again."));
    return dataKey;
}

Result<void> replaceKeyFile(const std::filesystem::path &folder, const KeyFile &file,
                            const std::vector<SlotProof> &proofs) {
    const auto fresh = folder / (std::string(keyFileName) + ".new");
    const auto written = encode(file);
    if (auto done = platform::writeDurably(fresh, written); !done)
        return done;
    const auto readBack = platform::readStart(fresh, mostBytes).and_then([](const Bytes &bytes) {
        return decodeKeyFile(bytes);
    });
    const auto unread = [] {
        return fail(ErrorCode::InputOutput,
                    Sentence::tr("The disk did not keep the new key file as it was written. The old one is "
                                 "still in force. Try again, or move the records to another disk."));
    };
    if (!readBack || *readBack != file)
        return unread();
    for (const auto &proof : proofs) {
        const auto *slot = readBack->slot(proof.kind);
        if (slot == nullptr || !unsealKey(readBack->databaseSalt, *slot, *proof.secret))
            return unread();
    }
    return platform::renameDurably(fresh, folder / keyFileName);
}

Result<void> refreshKeyCopy(const std::filesystem::path &folder) {
    const auto fresh = folder / (std::string(keyCopyName) + ".new");
    return platform::readStart(folder / keyFileName, mostBytes)
        .and_then([&](const Bytes &bytes) { return platform::writeDurably(fresh, bytes); })
        .and_then([&] { return platform::renameDurably(fresh, folder / keyCopyName); });
}

} // namespace model
