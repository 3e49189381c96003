#pragma once
#include "model/solve.h"
#include "tests/model/second_evaluator.h"
#include <gmock/gmock.h>

namespace model::fixtures {

/// What was solved breaks no rule and costs what it says, by the program's own recount and by the second one.
inline void expectSound(const Problem &problem, const Solution &solution) {
    ASSERT_TRUE(solution.placement);
    EXPECT_THAT(brokenRules(problem, *solution.placement), testing::IsEmpty());
    EXPECT_EQ(solution.terms, evaluate(problem, *solution.placement));
    const SecondCount second = secondCount(problem, *solution.placement);
    EXPECT_THAT(second.broken, testing::IsEmpty());
    EXPECT_EQ(solution.terms, second.terms);
}

} // namespace model::fixtures
