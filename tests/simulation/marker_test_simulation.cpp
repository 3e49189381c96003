#include "tests/simulation/made_up_clients.h"
#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <string>

/// How the marker test does with made-up clients: how many trials, how large a set, how often a pair is
/// accepted that is confused too often. Prints the table; says nothing of real people.
namespace {

using namespace simulation;

struct Method {
    std::string name;
    model::MarkerRules rules;
};

/// The method as first described: neither look-ahead nor surest set, 0.95 below 0.6; and what was tried
/// since.
std::vector<Method> methods() {
    const model::MarkerRules shipped;
    model::MarkerRules plain = shipped;
    plain.lookAhead = 0;
    plain.surestSet = false;
    plain.raisedByFelt.clear();
    plain.model.spread = 0.45;
    plain.model.featureError = 0;
    plain.model.heightWeights = {1};
    model::MarkerRules sooner = shipped;
    sooner.noLargerSetBelow = 0.10;
    model::MarkerRules looser = shipped;
    looser.model = plain.model;
    model::MarkerRules wider = shipped;
    wider.model.sensitivitySpread = 1.2;
    return {{"shipped", shipped},
            {"as first described", plain},
            {"stop at 0.10", sooner},
            {"first model, new rules", looser},
            {"wide sensitivity", wider}};
}

/// Shares of truly good pairs by stated probability.
struct Calibration {
    static constexpr std::array<double, 6> edges{0, 0.2, 0.5, 0.8, 0.9, 1.0};
    std::array<int, 5> pairs{}, good{};
    void add(double stated, bool isGood) {
        std::size_t band = 0;
        while (band + 2 < edges.size() && stated >= edges[band + 1])
            ++band;
        ++pairs[band];
        good[band] += isGood ? 1 : 0;
    }
};

struct Tally {
    int clients = 0, trials = 0, mostTrials = 0, clientsWithBad = 0, raised = 0;
    std::size_t marks = 0, trueMarks = 0;
    int pairs = 0, bad = 0, veryBad = 0; // accepted; of them confused in 5 or 10 of 100 and more
    std::array<int, 4> ends{};
    double slowest = 0; // ms of processor time from an answer to the next pair
    Calibration calibration;
};

void run(const Method &method, const Group &group, std::uint64_t seed, Tally &tally) {
    MadeUpClient client(group, seed);
    model::MarkerTest test({.marks = nominalMarks(), .seed = seed, .rules = method.rules});
    model::MarkerTestState state = test.state();
    while (state.next) {
        const model::MarkerAnswer answer{*state.next, client.answer(*state.next)};
        const std::clock_t before = std::clock();
        test.add(answer);
        state = test.state();
        tally.slowest =
            std::max(tally.slowest, 1000.0 * static_cast<double>(std::clock() - before) / CLOCKS_PER_SEC);
    }
    ++tally.clients;
    tally.trials += state.trials;
    tally.mostTrials = std::max(tally.mostTrials, state.trials);
    tally.marks += state.accepted.size();
    tally.trueMarks += client.largestTrueSet();
    tally.raised += state.raised ? 1 : 0;
    ++tally.ends[static_cast<std::size_t>(*state.end)];
    bool anyBad = false;
    for (const auto &pair : state.pairs) {
        const double confusion = client.confusion(pair.first, pair.second);
        tally.calibration.add(pair.good, confusion < 0.05);
        const bool inSet = std::ranges::count(state.accepted, pair.first) > 0 &&
                           std::ranges::count(state.accepted, pair.second) > 0;
        if (!inSet)
            continue;
        ++tally.pairs;
        tally.bad += confusion >= 0.05 ? 1 : 0;
        tally.veryBad += confusion >= 0.10 ? 1 : 0;
        anyBad = anyBad || confusion >= 0.05;
    }
    tally.clientsWithBad += anyBad ? 1 : 0;
}

double percent(int part, int whole) {
    return whole == 0 ? 0 : 100.0 * part / whole;
}

/// 95 % interval of a share, in percent (Wilson 1927).
std::array<double, 2> wilson(int part, int whole) {
    if (whole == 0)
        return {0, 100};
    const double z = 1.959964;
    const double n = whole;
    const double p = part / n;
    const double middle = (p + z * z / (2 * n)) / (1 + z * z / n);
    const double half = z / (1 + z * z / n) * std::sqrt(p * (1 - p) / n + z * z / (4 * n * n));
    return {100 * (middle - half), 100 * (middle + half)};
}

void print(const Method &method, const Group &group, const Tally &t) {
    const auto range = wilson(t.bad, t.pairs);
    std::printf(
        "%-22s %-11s %5d  %6.1f %4d  %5.2f %5.2f  %5d %5.1f (%4.1f-%4.1f) %5.1f  %5.1f  %5.1f  %6.2f\n",
        method.name.c_str(), group.name.c_str(), t.clients, 1.0 * t.trials / t.clients, t.mostTrials,
        1.0 * static_cast<double>(t.marks) / t.clients, static_cast<double>(t.trueMarks) / t.clients, t.pairs,
        percent(t.bad, t.pairs), range[0], range[1], percent(t.veryBad, t.pairs),
        percent(t.clientsWithBad, t.clients), percent(t.raised, t.clients), t.slowest);
    std::printf("    ends: limit %d, all in %d, no larger set %d; truly good by stated probability:",
                t.ends[0], t.ends[1], t.ends[2]);
    for (std::size_t band = 0; band < t.calibration.pairs.size(); ++band)
        std::printf(" %.1f-%.1f: %.2f of %d;", Calibration::edges[band], Calibration::edges[band + 1],
                    percent(t.calibration.good[band], t.calibration.pairs[band]) / 100,
                    t.calibration.pairs[band]);
    std::printf("\n");
}

} // namespace

int main(int argc, char **argv) {
    const int clients = argc > 1 ? std::atoi(argv[1]) : 200;
    const int ofNeuropathy = argc > 2 ? std::atoi(argv[2]) : 5 * clients;
    const bool all = argc > 3 && std::string(argv[3]) == "all";
    if (clients < 1 || ofNeuropathy < 1) {
        std::fprintf(stderr, "usage: marker_test_simulation [CLIENTS [CLIENTS OF THE LAST GROUP]] [all]\n");
        return 2;
    }
    std::printf(
        "method                 group       clients trials most   marks  true  pairs  bad %% (95 %% range)"
        " 10%%+  clients raised  ms\n");
    for (const Method &method : methods()) {
        for (const Group &group : groups()) {
            Tally tally;
            const int count = &group == &groups().back() ? ofNeuropathy : clients;
            for (int i = 0; i < count; ++i)
                run(method, group, 1000 + static_cast<std::uint64_t>(i), tally);
            print(method, group, tally);
            std::fflush(stdout);
        }
        if (!all)
            break;
    }
    return 0;
}
