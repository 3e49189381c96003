#include "model/construct.h"
#include "model/demo.h"
#include "model/planning.h"
#include "model/solve.h"
#include "tests/check/plan_files.h"
#include "tests/model/random_kitchen.h"
#include <CLI/CLI.hpp>
#include <algorithm>
#include <atomic>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <ctime>
#include <functional>
#include <string>
#include <sys/resource.h>
#include <vector>

/// The numbers that the planner is to reach, as one table: how near the best known plan, how fast, how much
/// is kept. The share of good plans does not depend on the load of the machine, since a budget of moves
/// stands for the seconds; the times do.
namespace {

using namespace model;
using Milliseconds = double;

/// Of the processor, by all threads together: does not grow with the load.
class ProcessorTime {
public:
    [[nodiscard]] Milliseconds spent() const {
        return 1000.0 * static_cast<double>(std::clock() - m_start) / CLOCKS_PER_SEC;
    }

private:
    std::clock_t m_start = std::clock();
};

constexpr double changeMinutes = 0.3;

struct Kitchen {
    std::string name;
    Problem problem;
    MilliMinutes bestKnown = 0; // 0: none
};

struct Arguments {
    std::string folder = FELTMARK_PLAN_CASES;
    int seeds = 100, firstSeed = 1, threads = 2;
    std::vector<std::string> parts;
};

Milliseconds timed(const std::function<void()> &work) {
    const auto start = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start).count();
}

double quantile(std::vector<double> values, double share) {
    if (values.empty())
        return 0;
    std::sort(values.begin(), values.end());
    return values[static_cast<std::size_t>(std::lround(share * static_cast<double>(values.size() - 1)))];
}

double mean(const std::vector<double> &values) {
    double sum = 0;
    for (const double value : values)
        sum += value;
    return values.empty() ? 0 : sum / static_cast<double>(values.size());
}

double shareUpTo(const std::vector<double> &values, double limit) {
    const auto count = std::count_if(values.begin(), values.end(), [&](double v) { return v <= limit; });
    return values.empty() ? 0 : 100.0 * static_cast<double>(count) / static_cast<double>(values.size());
}

Kitchen fromFile(const std::string &folder, const std::string &name) {
    const check::PlanCase planCase = check::readPlanCase(folder + "/" + name + ".json");
    const Placement best = check::readPlacement(folder + "/" + name + ".best.json", planCase);
    return {name, planCase.problem, evaluate(planCase.problem, best).total()};
}

SolveOptions options(const Arguments &arguments, double seconds, int seed) {
    SolveOptions made;
    made.moves = movesFor(seconds);
    made.threads = arguments.threads;
    made.seed = static_cast<std::uint64_t>(seed);
    return made;
}

void quality(const Arguments &arguments, const Kitchen &kitchen, double seconds, int seeds) {
    std::vector<double> gaps, times;
    int illegal = 0;
    MilliMinutes best = 0;
    const ProcessorTime processor;
    for (int seed = 0; seed < seeds; ++seed) {
        Solution solution;
        times.push_back(timed([&] {
            solution = solve(kitchen.problem, options(arguments, seconds, arguments.firstSeed + seed));
        }));
        if (!solution.placement || !brokenRules(kitchen.problem, *solution.placement).empty() ||
            evaluate(kitchen.problem, *solution.placement) != solution.terms) {
            ++illegal;
            continue;
        }
        const MilliMinutes total = solution.terms.total();
        best = best == 0 ? total : std::min(best, total);
        gaps.push_back(100.0 * static_cast<double>(total - kitchen.bestKnown) /
                       static_cast<double>(kitchen.bestKnown));
    }
    std::printf(
        "%-16s %4.1f s %4d seeds: within 0 %% %5.1f, 1 %% %5.1f, 2 %% %5.1f of 100; gap mean %5.2f %%, "
        "worst %5.2f %%; best %lld (known %lld); illegal %d; %.0f ms, slowest %.0f; processor %.0f ms a "
        "thread\n",
        kitchen.name.c_str(), seconds, seeds, shareUpTo(gaps, 0), shareUpTo(gaps, 1), shareUpTo(gaps, 2),
        mean(gaps), quantile(gaps, 1), static_cast<long long>(best),
        static_cast<long long>(kitchen.bestKnown), illegal, quantile(times, 0.5), quantile(times, 1),
        processor.spent() / seeds / arguments.threads);
}

/// The smallest of some budgets that gives a legal plan, and how long it takes.
void firstLegal(const Arguments &arguments, const Problem &problem) {
    for (const double seconds : {0.05, 0.1, 0.2, 0.5, 1.0}) {
        const ProcessorTime processor;
        Solution solution;
        const Milliseconds took = timed([&] { solution = solve(problem, options(arguments, seconds, 1)); });
        const Milliseconds spent = processor.spent() / arguments.threads;
        if (!solution.placement || !brokenRules(problem, *solution.placement).empty())
            continue;
        std::printf(
            "1,500 things: a legal plan with the moves of %.2f s, in %.0f ms, processor %.0f ms a thread\n",
            seconds, took, spent);
        return;
    }
    std::printf("1,500 things: no legal plan with the moves of 1 s\n");
}

/// 1,500 things: whether there is a plan in about a second, how often progress is told, how soon a stop is
/// obeyed.
void large(const Arguments &arguments) {
    const Problem problem = fixtures::randomKitchen(5, 1500);
    std::atomic<int> told = 0;
    Solution solution;
    bool legal = false;
    SolveOptions whole = options(arguments, 1, 1);
    whole.progress = [&told](double) { ++told; };
    const Milliseconds first = timed([&] {
        const SearchTables tables(problem);
        SearchState state(tables);
        construct(state);
        legal = state.legal();
    });
    firstLegal(arguments, problem);
    const ProcessorTime processor;
    const Milliseconds all = timed([&] { solution = solve(problem, whole); });
    const Milliseconds spent = processor.spent();
    SolveOptions stopped = options(arguments, 1, 1);
    stopped.stop = [] { return true; };
    const Milliseconds stop = timed([&] { (void)solve(problem, stopped); });
    rusage used{};
    getrusage(RUSAGE_SELF, &used);
    std::printf(
        "1,500 things / %zu places: %s; first plan in %.0f ms (%s), 1 s of moves on %d threads in %.0f ms "
        "(processor %.0f ms), progress told %d times, stopped at once after %.0f ms; %ld MB at most\n",
        problem.places.size(),
        solution.placement && brokenRules(problem, *solution.placement).empty() ? "legal plan" : "NO PLAN",
        first, legal ? "legal" : "not yet legal", arguments.threads, all, spent, told.load(), stop,
        used.ru_maxrss / 1024);
}

struct Edit {
    std::string kind;
    std::function<void(Problem &, const Placement &, int)> make;
};

const std::vector<Edit> &edits() {
    static const std::vector<Edit> all{
        {"not there",
         [](Problem &p, const Placement &shown, int i) { p.items[i].forbidden.push_back(shown.place[i]); }},
        {"four times the use", [](Problem &p, const Placement &, int i) { p.items[i].usesPerWeek *= 4; }},
        {"4 cm wider", [](Problem &p, const Placement &, int i) { p.items[i].widthCm += 4; }}};
    return all;
}

int changedLines(const Placement &one, const Placement &other) {
    int changed = 0;
    for (std::size_t i = 0; i < one.place.size(); ++i)
        changed += one.place[i] != other.place[i] || one.code[i] != other.code[i];
    return changed;
}

/// One edit at a time of a shown plan, changed as little as possible; the price is against a fresh plan of
/// the same budget as the shown one.
void replan(const Arguments &arguments, const Kitchen &kitchen, int count) {
    constexpr int shownPlans = 3;
    std::vector<double> times, changed, prices;
    int none = 0;
    for (int k = 0; k < count; ++k) {
        const int seed = 1 + k % shownPlans;
        const Placement shown = *solve(kitchen.problem, options(arguments, 0.5, seed)).placement;
        Problem edited = kitchen.problem;
        edits()[static_cast<std::size_t>(k / shownPlans) % edits().size()].make(
            edited, shown, (k * 37) % static_cast<int>(edited.items.size()));
        Problem near = edited;
        near.changeMinutes = changeMinutes;
        near.shownPlace = shown.place;
        near.shownCode = shown.code;
        Solution kept;
        times.push_back(timed([&] { kept = resolve(near, shown, options(arguments, 0.2, 1)); }));
        if (!kept.placement || !brokenRules(edited, *kept.placement).empty()) {
            ++none;
            continue;
        }
        changed.push_back(changedLines(*kept.placement, shown));
        const MilliMinutes fresh = solve(edited, options(arguments, 0.5, seed)).terms.total();
        prices.push_back(100.0 * static_cast<double>(kept.terms.total() - fresh) /
                         static_cast<double>(fresh));
    }
    std::printf("%-16s %d edits: %.0f ms, slowest %.0f; lines changed %.0f, most %.0f; price mean %.2f %%, "
                "worst %.2f %%; no plan %d\n",
                kitchen.name.c_str(), count, quantile(times, 0.5), quantile(times, 1), quantile(changed, 0.5),
                quantile(changed, 1), mean(prices), quantile(prices, 1), none);
}

void why(const Arguments &arguments, const Kitchen &kitchen) {
    const Solution shown = solve(kitchen.problem, options(arguments, 0.2, 1));
    std::vector<double> times;
    const Milliseconds all = timed([&] {
        for (int i = 0; i < static_cast<int>(kitchen.problem.items.size()); ++i)
            times.push_back(timed([&] { (void)reason(kitchen.problem, *shown.placement, i); }));
    });
    std::printf("%-16s why of a line %.2f ms, slowest %.2f; of all lines %.0f ms\n", kitchen.name.c_str(),
                quantile(times, 0.5), quantile(times, 1), all);
}

void whyOfDemo() {
    for (Case record : demo::all()) {
        const Findings findings = findingsOf(record, today());
        const Result<Plan> plan = makePlan(record, findings, SolveOptions{}, today());
        if (!plan || plan->lines.empty())
            continue;
        record.plan = *plan;
        std::vector<double> times;
        for (const PlanLine &line : record.plan->lines)
            times.push_back(timed([&] { (void)whyLine(record, findings, line.thing); }));
        std::printf("%-16s why of a line in words %.2f ms, slowest %.2f; %zu lines\n",
                    record.client.code.c_str(), quantile(times, 0.5), quantile(times, 1), times.size());
    }
}

bool wanted(const Arguments &arguments, const std::string &part) {
    return arguments.parts.empty() ||
           std::find(arguments.parts.begin(), arguments.parts.end(), part) != arguments.parts.end();
}

/// Kitchens of 80 things that are in no file; best known is the best of some longer runs made here.
std::vector<Kitchen> unseen(const Arguments &arguments, int count) {
    std::vector<Kitchen> all;
    for (int seed = 1; static_cast<int>(all.size()) < count; ++seed) {
        Kitchen kitchen{"invented-80-" + std::to_string(seed), fixtures::randomKitchen(100 + seed, 80), 0};
        for (int run = 1; run <= 3; ++run) {
            const Solution best = solve(kitchen.problem, options(arguments, 3, 1000 + run));
            if (best.placement && (kitchen.bestKnown == 0 || best.terms.total() < kitchen.bestKnown))
                kitchen.bestKnown = best.terms.total();
        }
        if (kitchen.bestKnown > 0)
            all.push_back(kitchen);
    }
    return all;
}

void run(const Arguments &arguments) {
    const auto file = [&](const char *name) { return fromFile(arguments.folder, name); };
    if (wanted(arguments, "large")) // first, since it tells the most memory used
        large(arguments);
    if (wanted(arguments, "small"))
        for (const char *name : {"kitchen-25-11", "kitchen-25-12"})
            quality(arguments, file(name), 0.2, arguments.seeds);
    if (wanted(arguments, "usual"))
        for (const double seconds : {0.2, 0.4})
            for (const char *name : {"kitchen-80-21", "kitchen-80-22"})
                quality(arguments, file(name), seconds, arguments.seeds);
    if (wanted(arguments, "long"))
        for (const char *name : {"kitchen-80-21", "kitchen-80-22"})
            quality(arguments, file(name), 1.5, arguments.seeds);
    if (wanted(arguments, "unseen"))
        for (const Kitchen &kitchen : unseen(arguments, 4))
            quality(arguments, kitchen, 0.2, arguments.seeds);
    if (wanted(arguments, "big"))
        quality(arguments, file("kitchen-200-31"), 1, std::max(1, arguments.seeds / 5));
    if (wanted(arguments, "replan"))
        replan(arguments, file("kitchen-200-31"), 30);
    if (wanted(arguments, "why")) {
        why(arguments, file("kitchen-80-21"));
        whyOfDemo();
    }
}

} // namespace

int main(int argc, char **argv) {
    CLI::App app("The numbers that the planner is to reach.", "plan_numbers");
    Arguments arguments;
    app.add_option("--folder", arguments.folder, "kitchens as JSON, with their best known plans beside them");
    app.add_option("--seeds", arguments.seeds, "seeds for each kitchen");
    app.add_option("--first-seed", arguments.firstSeed, "the first of them");
    app.add_option("--threads", arguments.threads, "threads");
    app.add_option("parts", arguments.parts,
                   "some of: large small usual long unseen big replan why; else all");
    CLI11_PARSE(app, argc, argv);
    std::setvbuf(stdout, nullptr, _IOLBF, BUFSIZ);
    try {
        run(arguments);
    } catch (const std::exception &wrong) {
        std::fprintf(stderr, "plan_numbers: %s\n", wrong.what());
        return 2;
    }
    return 0;
}
