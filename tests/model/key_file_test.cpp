#include "model/key_file.h"
#include "store_fixture.h"
#include <algorithm>
#include <sodium.h>

using namespace model;

namespace {

struct Sealed {
    KeyFile file;
    SecretBytes secret = SecretBytes::random(16);
    SecretBytes dataKey = SecretBytes::random(32);
};

Sealed sealed() {
    Sealed made;
    std::ranges::fill(made.file.databaseSalt, 7);
    for (const auto kind : {SlotKind::RecoveryCode, SlotKind::Passphrase})
        made.file.put(*sealKey(made.file.databaseSalt, kind, made.secret, made.dataKey, KeyCost::cheapest()));
    return made;
}

std::string textOf(const SecretBytes &secret) {
    return secret.read([](ByteView bytes) { return std::string(bytes.begin(), bytes.end()); });
}

ErrorCode unsealCode(const KeyFile &file, const SecretBytes &secret) {
    return unsealKey(file.databaseSalt, file.slots[0], secret).error().code;
}

} // namespace

TEST(KeyFile, isReadBackAsWritten) {
    const auto made = sealed();
    const auto bytes = encode(made.file);
    EXPECT_EQ(bytes.size(), 254U);
    const auto read = decodeKeyFile(bytes);
    ASSERT_TRUE(read);
    EXPECT_EQ(*read, made.file);
    const auto key = unsealKey(read->databaseSalt, *read->slot(SlotKind::Passphrase), made.secret);
    ASSERT_TRUE(key);
    EXPECT_EQ(textOf(*key), textOf(made.dataKey));
}

TEST(KeyFile, noticesEveryFlippedBit) {
    const auto bytes = encode(sealed().file);
    for (std::size_t bit = 0; bit < bytes.size() * 8; ++bit) {
        auto damaged = bytes;
        damaged[bit / 8] = static_cast<unsigned char>(damaged[bit / 8] ^ (1U << bit % 8));
        ASSERT_EQ(codeOf(decodeKeyFile(damaged)), ErrorCode::DamagedKeyFile) << "bit " << bit;
    }
}

TEST(KeyFile, noticesEveryCut) {
    const auto bytes = encode(sealed().file);
    for (std::size_t size = 0; size < bytes.size(); ++size)
        ASSERT_EQ(codeOf(decodeKeyFile(ByteView(bytes).first(size))), ErrorCode::DamagedKeyFile) << size;
    auto longer = bytes;
    longer.push_back(0);
    EXPECT_EQ(codeOf(decodeKeyFile(longer)), ErrorCode::DamagedKeyFile);
    EXPECT_EQ(codeOf(decodeKeyFile(Bytes(100'000, 1))), ErrorCode::DamagedKeyFile);
}

/// Somebody who can work out the checksum still cannot change a field: all of them are bound to the seal.
TEST(KeyFile, doesNotOpenWithChangedParameters) {
    const auto made = sealed();
    const auto changed = [&](const std::function<void(KeyFile &)> &change) {
        auto file = made.file;
        change(file);
        const auto read = decodeKeyFile(encode(file));
        return read ? unsealCode(*read, made.secret) : read.error().code;
    };
    EXPECT_EQ(changed([](KeyFile &f) { f.databaseSalt[3] ^= 1; }), ErrorCode::WrongSecret);
    EXPECT_EQ(changed([](KeyFile &f) { f.slots[0].cost.passes = 2; }), ErrorCode::WrongSecret);
    EXPECT_EQ(changed([](KeyFile &f) { f.slots[0].cost.kibibytes += 1024; }), ErrorCode::WrongSecret);
    EXPECT_EQ(changed([](KeyFile &f) { f.slots[0].salt[0] ^= 1; }), ErrorCode::WrongSecret);
    EXPECT_EQ(changed([](KeyFile &f) { f.slots[0].nonce[0] ^= 1; }), ErrorCode::WrongSecret);
    EXPECT_EQ(changed([](KeyFile &f) { f.slots[0].sealed[47] ^= 1; }), ErrorCode::WrongSecret);
    EXPECT_EQ(changed([](KeyFile &f) { f.slots[0].kind = SlotKind::RecoveryCode; }), ErrorCode::WrongSecret);
}

TEST(KeyFile, refusesACostThatWouldStopTheComputer) {
    for (const KeyCost cost :
         {KeyCost{0, 8192}, KeyCost{65, 8192}, KeyCost{1, 8191}, KeyCost{1, 4 * 1024 * 1024 + 1}}) {
        auto file = sealed().file;
        file.slots[1].cost = cost;
        EXPECT_EQ(codeOf(decodeKeyFile(encode(file))), ErrorCode::DamagedKeyFile);
    }
}

TEST(KeyFile, tellsANewerVersionFromDamage) {
    const auto with = [](std::size_t place, unsigned char value) {
        auto bytes = encode(sealed().file);
        bytes[place] = value;
        // BLAKE2b of all before, as the format says.
        crypto_generichash(bytes.data() + bytes.size() - 32, 32, bytes.data(), bytes.size() - 32, nullptr, 0);
        return codeOf(decodeKeyFile(bytes));
    };
    constexpr std::size_t firstDerivation = 4 + 1 + 4 + 16 + 1 + 1;
    EXPECT_EQ(with(4, 2), ErrorCode::NewerVersion);
    EXPECT_EQ(with(firstDerivation, 2), ErrorCode::NewerVersion);
    EXPECT_EQ(with(0, 'G'), ErrorCode::DamagedKeyFile);
    EXPECT_EQ(with(firstDerivation - 2, 3), ErrorCode::DamagedKeyFile); // three slots, two there
    EXPECT_EQ(codeOf(decodeKeyFile(encode(KeyFile{}))), ErrorCode::DamagedKeyFile);
}

#ifndef __SANITIZE_ADDRESS__ // it needs the address space for itself
TEST(KeyFile, takesLessMemoryWhenThereIsTooLittle) {
    const auto code = withLittleMemory(120U << 20U, [] {
        const auto secret = SecretBytes::random(16);
        const auto key = SecretBytes::random(32);
        const auto slot = sealKey({}, SlotKind::Passphrase, secret, key, KeyCost{1, 256 * 1024});
        if (!slot || slot->cost.kibibytes != 64 * 1024 || slot->cost.passes != 3)
            return 1;
        return unsealKey({}, *slot, secret) ? 0 : 2;
    });
    EXPECT_EQ(code, 0);
}

TEST(KeyFile, saysWhenThereIsNoMemoryAtAll) {
    const auto code = withLittleMemory(20U << 20U, [] {
        const auto slot =
            sealKey({}, SlotKind::Passphrase, SecretBytes::random(16), SecretBytes::random(32), KeyCost{});
        return slot || slot.error().code != ErrorCode::InputOutput ? 1 : 0;
    });
    EXPECT_EQ(code, 0);
}

#endif

namespace {

class KeyFileOnDisk : public StoreTest {
protected:
    KeyFileOnDisk() { std::filesystem::create_directories(folder); }
};

} // namespace

TEST_F(KeyFileOnDisk, isReplacedOnlyWhenTheNewOneOpens) {
    const auto made = sealed();
    ASSERT_TRUE(replaceKeyFile(folder, made.file, {{SlotKind::Passphrase, &made.secret}}));
    const auto before = bytesOf("records.key");

    auto next = made.file;
    next.generation = 2;
    const auto otherSecret = SecretBytes::random(16);
    EXPECT_EQ(codeOf(replaceKeyFile(folder, next, {{SlotKind::Passphrase, &otherSecret}})),
              ErrorCode::InputOutput);
    EXPECT_EQ(bytesOf("records.key"), before);

    ASSERT_TRUE(replaceKeyFile(folder, next, {{SlotKind::Passphrase, &made.secret}}));
    EXPECT_EQ(readKeyFile(file("records.key"))->generation, 2U);
    ASSERT_TRUE(refreshKeyCopy(folder));
    EXPECT_EQ(bytesOf("records.key.bak"), bytesOf("records.key"));
    EXPECT_THAT(fileNames(), ::testing::ElementsAre("records.key", "records.key.bak"));
}
