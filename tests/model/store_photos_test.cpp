#include "store_fixture.h"
#include <algorithm>
#include <fstream>

using namespace model;

namespace {

class StorePhotos : public StoreTest {
protected:
    StorePhotos() : record(makeFilled()) {
        picture.assign(50'000, 0);
        unsigned state = 3;
        for (auto &byte : picture) {
            state = state * 1664525U + 1013904223U;
            byte = static_cast<std::uint8_t>(state >> 24);
        }
    }
    [[nodiscard]] Photo photo(const std::string &description) const {
        return {{"photo-1"}, record.client.id, {"place-1"}, description, {}};
    }
    Case record;
    std::vector<std::uint8_t> picture;
    const Action action{"Ada Rowan", {}, "photo.added"};
};

} // namespace

TEST_F(StorePhotos, areKeptReadAndRemoved) {
    {
        auto store = tryOpen(passphrase);
        ASSERT_TRUE(store);
        ASSERT_TRUE(store->addPhoto(photo("Top shelf, tins in two rows"), picture, action));
    }
    auto store = tryOpen(passphrase);
    const auto photos = store->photos(record.client.id);
    ASSERT_THAT(*photos, testing::SizeIs(1));
    EXPECT_EQ(photos->front().description, "Top shelf, tins in two rows");
    EXPECT_EQ(photos->front().of, Id{"place-1"});
    EXPECT_FALSE(photos->front().at.empty());
    EXPECT_EQ(*store->picture(photos->front().id), picture);
    EXPECT_TRUE(store->verify());
    ASSERT_TRUE(store->removePhoto(photos->front(), action));
    EXPECT_EQ(codeOf(store->picture(photos->front().id)), ErrorCode::Missing);
    EXPECT_EQ(codeOf(store->removePhoto(photos->front(), action)), ErrorCode::Missing);
    EXPECT_THAT(*store->photos(record.client.id), testing::IsEmpty());
}

TEST_F(StorePhotos, needADescriptionAndASize) {
    auto store = tryOpen(passphrase);
    EXPECT_EQ(codeOf(store->addPhoto(photo("  "), picture, action)), ErrorCode::Missing);
    EXPECT_EQ(codeOf(store->addPhoto(photo("Shelf"), {}, action)), ErrorCode::OutOfRange);
    EXPECT_EQ(codeOf(store->addPhoto(photo("Shelf"), std::vector<std::uint8_t>(largestPhoto + 1), action)),
              ErrorCode::OutOfRange);
}

TEST_F(StorePhotos, lieInNoFileAsTheyAre) {
    {
        auto store = tryOpen(passphrase);
        ASSERT_TRUE(store->addPhoto(photo("Shelf"), picture, action));
    }
    const std::string part(picture.begin() + 1000, picture.begin() + 1032);
    for (const auto &entry : std::filesystem::recursive_directory_iterator(folder)) {
        if (!entry.is_regular_file())
            continue;
        std::ifstream in(entry.path(), std::ios::binary);
        const std::string bytes{std::istreambuf_iterator<char>(in), {}};
        EXPECT_EQ(bytes.find(part), std::string::npos) << entry.path();
    }
}
