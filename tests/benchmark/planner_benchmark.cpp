#include "model/construct.h"
#include "model/search_random.h"
#include "model/solve.h"
#include "tests/model/random_kitchen.h"
#include <benchmark/benchmark.h>

/// The planner on invented kitchens of 25, 80 and 200 things.
namespace {

using namespace model;

constexpr std::uint64_t kitchenSeed = 5;

Problem kitchen(const benchmark::State &state) {
    return fixtures::randomKitchen(kitchenSeed, static_cast<int>(state.range(0)));
}

SolveOptions options(double seconds) {
    SolveOptions made;
    made.moves = movesFor(seconds);
    return made;
}

void plan(benchmark::State &state) {
    const Problem problem = kitchen(state);
    MilliMinutes total = 0;
    for (auto _ : state)
        total = solve(problem, options(0.2)).terms.total();
    state.counters["mmin"] = static_cast<double>(total);
}
BENCHMARK(plan)->Arg(25)->Arg(80)->Arg(200)->Unit(benchmark::kMillisecond)->UseRealTime();

void planOnOneThread(benchmark::State &state) {
    const Problem problem = kitchen(state);
    SolveOptions single = options(0.2);
    single.threads = 1;
    for (auto _ : state)
        benchmark::DoNotOptimize(solve(problem, single));
}
BENCHMARK(planOnOneThread)->Arg(25)->Arg(80)->Arg(200)->Unit(benchmark::kMillisecond);

void firstPlan(benchmark::State &state) {
    const SearchTables tables(kitchen(state));
    for (auto _ : state) {
        SearchState search(tables);
        construct(search);
        benchmark::DoNotOptimize(search.total());
    }
}
BENCHMARK(firstPlan)->Arg(25)->Arg(80)->Arg(200)->Unit(benchmark::kMicrosecond);

/// One thing may no longer stand where it does.
void changedPlan(benchmark::State &state) {
    Problem problem = kitchen(state);
    const Solution shown = solve(problem, options(0.05));
    if (!shown.placement)
        return state.SkipWithError("no plan to change");
    problem.changeMinutes = 0.3;
    problem.shownPlace = shown.placement->place;
    problem.shownCode = shown.placement->code;
    problem.items[7].forbidden = {shown.placement->place[7]};
    for (auto _ : state)
        benchmark::DoNotOptimize(resolve(problem, *shown.placement, options(0.2)));
}
BENCHMARK(changedPlan)->Arg(25)->Arg(80)->Arg(200)->Unit(benchmark::kMillisecond)->UseRealTime();

void whyOneLine(benchmark::State &state) {
    const Problem problem = kitchen(state);
    const Solution shown = solve(problem, options(0.05));
    if (!shown.placement)
        return state.SkipWithError("no plan to give reasons for");
    for (auto _ : state)
        benchmark::DoNotOptimize(reason(problem, *shown.placement, 3));
}
BENCHMARK(whyOneLine)->Arg(25)->Arg(80)->Arg(200)->Unit(benchmark::kMillisecond);

void countOnePlan(benchmark::State &state) {
    const Problem problem = kitchen(state);
    const Solution shown = solve(problem, options(0.05));
    if (!shown.placement)
        return state.SkipWithError("no plan to count");
    for (auto _ : state)
        benchmark::DoNotOptimize(evaluate(problem, *shown.placement));
}
BENCHMARK(countOnePlan)->Arg(25)->Arg(80)->Arg(200)->Unit(benchmark::kMillisecond);

} // namespace
