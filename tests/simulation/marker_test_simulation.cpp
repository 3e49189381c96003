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

/// The method as shipped, as first described, and what else was tried: one change of the shipped one each.
std::vector<Method> methods() {
    const model::MarkerRules shipped;
    model::MarkerRules plain;
    plain.lookAhead = 0;
    plain.surestSet = false;
    plain.sharedInformation = false;
    plain.model = {.spread = 0.45, .featureError = 0, .heightWeights = {1}};
    const auto changed = [&](const auto &change) {
        model::MarkerRules rules = shipped;
        change(rules);
        return rules;
    };
    using Rules = model::MarkerRules;
    return {{"shipped", shipped},
            {"as first described", plain},
            {"own information", changed([](Rules &r) { r.sharedInformation = false; })},
            {"own, raised by felt", changed([](Rules &r) {
                 r.sharedInformation = false;
                 r.raisedByFelt = {{0.7, 0.96}};
             })},
            {"first model", changed([&](Rules &r) { r.model = plain.model; })},
            {"smallest indices", changed([](Rules &r) { r.surestSet = false; })},
            {"no look-ahead", changed([](Rules &r) { r.lookAhead = 0; })},
            {"whole target", changed([](Rules &r) { r.wholeTarget = true; })},
            {"confirm last 24", changed([](Rules &r) { r.confirmLast = 24, r.confirmTo = 0.97; })},
            {"stop at 0.10", changed([](Rules &r) { r.noLargerSetBelow = 0.10; })},
            {"wide sensitivity", changed([](Rules &r) { r.model.sensitivitySpread = 1.2; })}};
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
    double marksSquared = 0;
    int pairs = 0, bad = 0, veryBad = 0;       // accepted; of them confused in 5 or 10 of 100 and more
    int acceptedAnywhere = 0, badAnywhere = 0; // also outside of the set
    double stated = 0;                         // sum of 1 - P(good) over the pairs of the sets
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
    tally.marksSquared += std::pow(static_cast<double>(state.accepted.size()), 2);
    tally.trueMarks += client.largestTrueSet();
    tally.raised += state.raised ? 1 : 0;
    ++tally.ends[static_cast<std::size_t>(*state.end)];
    bool anyBad = false;
    for (const auto &pair : state.pairs) {
        const double confusion = client.confusion(pair.first, pair.second);
        tally.calibration.add(pair.good, confusion < 0.05);
        const bool inSet = std::ranges::count(state.accepted, pair.first) > 0 &&
                           std::ranges::count(state.accepted, pair.second) > 0;
        tally.acceptedAnywhere += pair.accepted ? 1 : 0;
        tally.badAnywhere += pair.accepted && confusion >= 0.05 ? 1 : 0;
        if (!inSet)
            continue;
        tally.stated += 1 - pair.good;
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

void printHead(int firstSeed) {
    std::printf("seeds from %d; ranges are 95 %%\n", firstSeed);
    std::printf(
        "method                 group       clients trials most   marks (range)     true  pairs  bad %% "
        "(range)       10%%+  clients raised  ms\n");
}

void print(const Method &method, const Group &group, const Tally &t) {
    const auto range = wilson(t.bad, t.pairs);
    const double clients = t.clients;
    const double mean = static_cast<double>(t.marks) / clients;
    const double spread = std::sqrt(std::max(0.0, t.marksSquared / clients - mean * mean) / clients);
    std::printf(
        "%-22s %-11s %5d  %6.1f %4d  %5.2f (%4.2f-%4.2f) %5.2f  %5d %5.1f (%4.1f-%4.1f) %5.1f  %5.1f  "
        "%5.1f  %6.2f\n",
        method.name.c_str(), group.name.c_str(), t.clients, t.trials / clients, t.mostTrials, mean,
        mean - 1.96 * spread, mean + 1.96 * spread, static_cast<double>(t.trueMarks) / clients, t.pairs,
        percent(t.bad, t.pairs), range[0], range[1], percent(t.veryBad, t.pairs),
        percent(t.clientsWithBad, t.clients), percent(t.raised, t.clients), t.slowest);
    std::printf(
        "    stated bad %.1f %%, accepted anywhere %d, of them bad %.1f %%; ends: limit %d, all in %d, "
        "no larger set %d; truly good by stated probability:",
        t.pairs == 0 ? 0.0 : 100 * t.stated / t.pairs, t.acceptedAnywhere,
        percent(t.badAnywhere, t.acceptedAnywhere), t.ends[0], t.ends[1], t.ends[2]);
    for (std::size_t band = 0; band < t.calibration.pairs.size(); ++band)
        std::printf(" %.1f-%.1f: %.2f of %d;", Calibration::edges[band], Calibration::edges[band + 1],
                    percent(t.calibration.good[band], t.calibration.pairs[band]) / 100,
                    t.calibration.pairs[band]);
    std::printf("\n");
}

} // namespace

int main(int argc, char **argv) {
    const std::vector<std::string> words(argv + 1, argv + argc);
    const auto number = [&](std::size_t index, int otherwise) {
        return words.size() > index ? std::atoi(words[index].c_str()) : otherwise;
    };
    const int clients = number(0, 200);
    const int ofNeuropathy = number(1, 5 * clients);
    const int firstSeed = number(2, 1000);
    if (clients < 1 || ofNeuropathy < 1 || firstSeed < 1) {
        std::fprintf(stderr, "usage: marker_test_simulation [CLIENTS [CLIENTS OF THE LAST GROUP [FIRST SEED "
                             "[METHOD...]]]]\nWithout METHOD: as shipped. Methods:\n");
        for (const Method &method : methods())
            std::fprintf(stderr, "  %s\n", method.name.c_str());
        return 2;
    }
    const std::vector<std::string> wanted =
        words.size() > 3 ? std::vector(words.begin() + 3, words.end()) : std::vector<std::string>{"shipped"};
    printHead(firstSeed);
    for (const Method &method : methods()) {
        if (std::find(wanted.begin(), wanted.end(), method.name) == wanted.end() && wanted.front() != "all")
            continue;
        for (const Group &group : groups()) {
            Tally tally;
            const int count = &group == &groups().back() ? ofNeuropathy : clients;
            const auto first = static_cast<std::uint64_t>(firstSeed);
            for (std::uint64_t seed = first; tally.clients < count; ++seed)
                run(method, group, seed, tally);
            print(method, group, tally);
            std::fflush(stdout);
        }
    }
    return 0;
}
