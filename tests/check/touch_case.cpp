#include "model/marker_test.h"
#include "tests/check/json_field.h"
#include <CLI/CLI.hpp>
#include <cmath>
#include <iomanip>
#include <iostream>
#include <optional>

/// A marker test on standard input and output, for whoever wants to answer in a client's place.
namespace {

using namespace model;
using check::BadInput;

constexpr int done = 0, badInput = 2;

struct Arguments {
    std::string file;
    int limit = 160;
    double credible = 0.90;
    std::uint64_t seed = 1;
};

void addOptions(CLI::App &app, Arguments &arguments) {
    app.add_option("FEATURES.json", arguments.file, "marks with name, size, height and texture")->required();
    app.add_option("--limit", arguments.limit, "most trials");
    app.add_option("--credible", arguments.credible, "probability from which on a pair is accepted");
    app.add_option("--seed", arguments.seed, "of order and catch trials");
}

MarkerTestSetup setupOf(const Arguments &arguments) {
    const nlohmann::json json = check::readJson(arguments.file);
    MarkerTestSetup setup{
        .marks = {}, .seed = arguments.seed, .limit = arguments.limit, .credible = arguments.credible};
    constexpr double most = 50;
    const check::Field markers = check::Field(json, arguments.file, "").at("markers");
    for (const check::Field &mark : markers.list()) {
        (void)mark.at("name").text();
        setup.marks.push_back({mark.at("size").number(-most, most), mark.at("height").number(-most, most),
                               mark.at("texture").number(-most, most)});
    }
    if (setup.marks.size() < 2 || setup.marks.size() > mostMarks)
        markers.refuse("must be a list of 2 to 16 marks");
    if (const auto checked = checkSetup(setup); !checked)
        throw BadInput(checked.error().sentence);
    return setup;
}

/// None for `quit` and at the end of the input.
std::optional<TouchAnswer> readAnswer(int line) {
    std::string word;
    if (!std::getline(std::cin, word))
        return std::nullopt;
    while (!word.empty() && std::isspace(static_cast<unsigned char>(word.back())) != 0)
        word.pop_back();
    if (word == "quit")
        return std::nullopt;
    if (word == "same")
        return TouchAnswer::Same;
    if (word == "different")
        return TouchAnswer::Different;
    if (word == "unsure")
        return TouchAnswer::Unsure;
    if (word == "repeat")
        return TouchAnswer::Repeat;
    throw BadInput("standard input: line " + std::to_string(line) +
                   ": must be same, different, unsure, repeat or quit");
}

const char *reason(MarkerTestEnd end) {
    switch (end) {
    case MarkerTestEnd::Limit:
        return "limit";
    case MarkerTestEnd::AllIn:
        return "all";
    case MarkerTestEnd::NoLargerSet:
        return "no-larger-set";
    case MarkerTestEnd::Stopped:
        return "stopped";
    }
    return "";
}

/// "set 0,2,4 weakest 2,4 0.93 trials 133 reason limit"; the probability is never rounded up.
void printResult(const MarkerTestState &state) {
    std::cout << "set ";
    for (std::size_t i = 0; i < state.accepted.size(); ++i)
        std::cout << (i == 0 ? "" : ",") << state.accepted[i];
    std::cout << " weakest ";
    if (state.weakest)
        std::cout << state.weakest->first << ',' << state.weakest->second << ' ';
    else
        std::cout << "none ";
    constexpr double hundred = 100;
    std::cout << std::fixed << std::setprecision(2)
              << (state.weakest ? std::floor(hundred * state.weakest->good) / hundred : 0.0) << " trials "
              << state.trials << " reason " << reason(*state.end) << '\n';
}

int run(const Arguments &arguments) {
    MarkerTest test(setupOf(arguments));
    MarkerTestState state = test.state();
    for (int line = 1; state.next; ++line) {
        std::cout << "give " << state.next->first << ' ' << state.next->second << std::endl;
        if (const auto answer = readAnswer(line))
            test.add({*state.next, *answer});
        else
            test.stop();
        state = test.state();
    }
    printResult(state);
    return done;
}

} // namespace

int main(int argc, char **argv) {
    CLI::App app("Asks for pairs of marks until it knows which of them a client can tell apart.",
                 "touch_case");
    Arguments arguments;
    addOptions(app, arguments);
    try {
        app.parse(argc, argv);
        return run(arguments);
    } catch (const CLI::CallForHelp &) {
        std::cout << app.help();
        return done;
    } catch (const CLI::ParseError &wrong) {
        std::cerr << "touch_case: " << wrong.what() << '\n';
    } catch (const std::exception &wrong) {
        std::cerr << "touch_case: " << wrong.what() << '\n';
    }
    return badInput;
}
