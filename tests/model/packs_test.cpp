#include "model/packs.h"
#include <gmock/gmock.h>

namespace {

using namespace model;

struct Counted {
    const char *line;
    int packs;
};

class Packs : public testing::TestWithParam<Counted> {};

TEST_P(Packs, areWhatStandsThere) {
    const auto items = parseContents(GetParam().line);
    ASSERT_TRUE(items);
    EXPECT_EQ(packsOf(items->front().thing), GetParam().packs);
}

// How packs are sold and spoken of is common practice; the weight of a piece is a default of this program.
INSTANTIATE_TEST_SUITE_P(OfALine, Packs,
                         testing::Values(Counted{"6 eggs", 1}, Counted{"12 eggs", 2},
                                         Counted{"2 boxes of eggs", 2}, Counted{"eggs", 1},
                                         Counted{"3 onions", 1}, Counted{"2 bags of onions", 2},
                                         Counted{"8 oranges", 2}, Counted{"6 rolls", 1},
                                         Counted{"3 lettuces", 3}, Counted{"4 chopped tomatoes", 4},
                                         Counted{"2 tea bags", 2}, Counted{"2 potatoes 2 kg", 2},
                                         Counted{"3 ajvar", 3}));

} // namespace
