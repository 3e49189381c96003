#include "model/key_file.h"
#include "store_fixture.h"

using namespace model;

namespace {

class StoreCost : public StoreTest {
protected:
    [[nodiscard]] unsigned passes(SlotKind kind) const {
        return readKeyFile(file("records.key"))->slot(kind)->cost.passes;
    }
    void openWanting(unsigned passesWanted) const {
        ASSERT_TRUE(Store::open(folder, passphrase, author, KeyCost{passesWanted, cheapest.kibibytes}));
    }
};

} // namespace

TEST_F(StoreCost, growsOnOpeningWhenMoreIsWanted) {
    makeFilled();
    EXPECT_EQ(passes(SlotKind::Passphrase), 1U);
    openWanting(2);
    EXPECT_EQ(passes(SlotKind::Passphrase), 2U);
    EXPECT_EQ(passes(SlotKind::RecoveryCode), 1U) << "its code was not typed";
    EXPECT_TRUE(tryOpen(recoveryCode));
    EXPECT_EQ(bytesOf("records.key.bak"), bytesOf("records.key"));
}

TEST_F(StoreCost, neverShrinks) {
    makeFilled();
    openWanting(2);
    const auto before = bytesOf("records.key");
    openWanting(1);
    EXPECT_EQ(bytesOf("records.key"), before);
}
