#include "model/reach.h"
#include <gtest/gtest.h>

namespace model {

TEST(Reach, zonesOfOneMetreSixty) {
    // Shares 0.14, 0.44, 0.63, 0.82 and 1.18 of stature: common practice; products recomputed.
    const BodyHeights body = bodyHeights({160}, std::nullopt);
    EXPECT_NEAR(body.lowerLeg.value, 22.4, 1e-9);
    EXPECT_NEAR(body.knuckle.value, 70.4, 1e-9);
    EXPECT_NEAR(body.elbow.value, 100.8, 1e-9);
    EXPECT_NEAR(body.shoulder.value, 131.2, 1e-9);
    EXPECT_NEAR(body.overhead.value, 188.8, 1e-9);
}

TEST(Reach, lieWithinTwoPercentOfThePublishedBodySizes) {
    // Pheasant, Bodyspace 1996: British adults 19-65, 50th percentile; stature seen, the other rows from
    // memory.
    struct Row {
        const char *who;
        double stature, eye, shoulder, elbow, knuckle, overhead;
    };
    const Row rows[] = {{"women", 161.0, 150.5, 131.0, 100.5, 72.0, 190.5},
                        {"men", 174.0, 163.0, 142.5, 109.0, 75.5, 206.0}};
    for (const Row &row : rows) {
        const BodyHeights body = bodyHeights({row.stature}, 40);
        EXPECT_NEAR(body.eye.value / row.eye, 1, 0.02) << row.who;
        EXPECT_NEAR(body.shoulder.value / row.shoulder, 1, 0.02) << row.who;
        EXPECT_NEAR(body.elbow.value / row.elbow, 1, 0.02) << row.who;
        EXPECT_NEAR(body.knuckle.value / row.knuckle, 1, 0.02) << row.who;
        EXPECT_NEAR(body.overhead.value / row.overhead, 1, 0.02) << row.who;
    }
}

TEST(Reach, losesTenCentimetresOverheadFromSeventyFive) {
    // Common practice: 1.18 H - 100 mm.
    EXPECT_NEAR(bodyHeights({160}, 74).overhead.value, 188.8, 1e-9);
    EXPECT_NEAR(bodyHeights({160}, 75).overhead.value, 178.8, 1e-9);
}

TEST(Reach, boundariesBelongToTheZoneAbove) {
    const std::pair<double, ReachZone> rows[] = {{0, ReachZone::Floor},        {22.3, ReachZone::Floor},
                                                 {22.4, ReachZone::Low},       {70.3, ReachZone::Low},
                                                 {70.4, ReachZone::Best},      {100.7, ReachZone::Best},
                                                 {100.8, ReachZone::High},     {131.1, ReachZone::High},
                                                 {131.2, ReachZone::Overhead}, {188.8, ReachZone::Overhead}};
    for (const auto &[height, zone] : rows)
        EXPECT_EQ(reachZone({height + 1e-9}, {160}), zone) << height;
}

TEST(Reach, fromAWheelchairFollowsTheStandard) {
    // ADA 2010 Standards, 308.2.1, 308.2.2, 308.3.1, 308.3.2.
    struct Row {
        Approach approach;
        double depth, obstruction;
        std::optional<double> high;
    };
    const Row rows[] = {
        {Approach::Forward, 0, 0, 122.0},    {Approach::Forward, 51.0, 0, 122.0},
        {Approach::Forward, 51.1, 0, 112.0}, {Approach::Forward, 63.5, 0, 112.0},
        {Approach::Forward, 63.6, 0, {}},    {Approach::Side, 25.5, 86.5, 122.0},
        {Approach::Side, 25.6, 86.5, 117.0}, {Approach::Side, 61.0, 86.5, 117.0},
        {Approach::Side, 61.1, 86.5, {}},    {Approach::Side, 30.0, 86.6, {}},
    };
    for (const Row &row : rows) {
        const auto high = seatedHighReach(row.approach, {row.depth}, {row.obstruction});
        ASSERT_EQ(high.has_value(), row.high.has_value()) << row.depth;
        if (high) {
            EXPECT_EQ(high->value, *row.high) << row.depth;
        }
    }
    EXPECT_EQ(seatedLowReach.value, 38);
}

} // namespace model
