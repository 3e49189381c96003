#include "model/solve.h"
#include "tests/check/json_field.h"
#include "tests/check/plan_files.h"
#include <CLI/CLI.hpp>
#include <chrono>
#include <cmath>
#include <iostream>
#include <optional>

/// Places the things of a kitchen given as a JSON file, or counts a plan that is given.
namespace {

using namespace model;
using check::BadInput;
using Json = nlohmann::ordered_json;

constexpr double changeMinutes = 0.3; // charged per changed line when a plan is changed
constexpr int yes = 0, no = 1, badInput = 2;

struct Arguments {
    std::string caseFile, evaluateFile, fromFile;
    double seconds = 0.2;
    int threads = 2;
    std::int64_t seed = 1;
    std::vector<std::string> pins, bans;
};

struct ItemPlace {
    int item = 0, place = 0;
};

int wholeNumber(const std::string &text, const std::string &what) {
    if (text.empty() || text.size() > 9 || text.find_first_not_of("0123456789") != std::string::npos)
        throw BadInput(what + ": must be ITEM=PLACE, two ids");
    return std::stoi(text);
}

ItemPlace itemPlace(const std::string &option, const std::string &word, const check::PlanCase &planCase) {
    const std::string what = option + " " + word;
    const std::size_t equals = word.find('=');
    if (equals == std::string::npos)
        throw BadInput(what + ": must be ITEM=PLACE, two ids");
    return {check::indexOf(planCase.itemIds, wholeNumber(word.substr(0, equals), what), what + ": item"),
            check::indexOf(planCase.placeIds, wholeNumber(word.substr(equals + 1), what), what + ": place")};
}

void forbidAllBut(ProblemItem &item, int place, int places) {
    for (int p = 0; p < places; ++p)
        if (p != place)
            item.forbidden.push_back(p);
}

void overrule(const Arguments &arguments, const check::PlanCase &planCase, Problem &problem) {
    for (const std::string &word : arguments.pins) {
        const ItemPlace pin = itemPlace("--pin", word, planCase);
        forbidAllBut(problem.items[pin.item], pin.place, static_cast<int>(problem.places.size()));
    }
    for (const std::string &word : arguments.bans) {
        const ItemPlace ban = itemPlace("--forbid", word, planCase);
        problem.items[ban.item].forbidden.push_back(ban.place);
    }
}

std::vector<int> idsOf(const std::vector<int> &indexes, const std::vector<int> &ids) {
    std::vector<int> all;
    for (const int index : indexes)
        all.push_back(ids[index]);
    return all;
}

Json objective(const Terms &terms) {
    return {{"objective", terms.total()},
            {"terms",
             {{"unary", terms.unary},
              {"bay", terms.bay},
              {"place", terms.place},
              {"type", terms.type},
              {"mark", terms.mark},
              {"risk", terms.risk}}}};
}

int answer(const Json &json, int code) {
    std::cout << json.dump(-1, ' ', false, Json::error_handler_t::replace) << std::endl;
    if (!std::cout)
        throw BadInput("standard output: cannot be written");
    return code;
}

int evaluatePlan(const check::PlanCase &planCase, const Problem &problem, const Placement &placement) {
    Json json = objective(evaluate(problem, placement));
    json["broken"] = Json::array();
    for (const BrokenRule &rule : brokenRules(problem, placement))
        json["broken"].push_back({{"rule", rule.rule},
                                  {"items", idsOf(rule.items, planCase.itemIds)},
                                  {"places", idsOf(rule.places, planCase.placeIds)}});
    return answer(json, yes);
}

int sayWhatIsShort(const check::PlanCase &planCase, const Problem &problem, bool cut) {
    Json json;
    json["infeasible"] = Json::array();
    for (const ProblemShortage &shortage : shortages(problem)) {
        Json one{{"rule", shortage.rule}};
        one["need_cm"] = shortage.needCm ? Json(*shortage.needCm) : Json();
        one["have_cm"] = shortage.haveCm ? Json(*shortage.haveCm) : Json();
        one["items"] = idsOf(shortage.items, planCase.itemIds);
        one["places"] = idsOf(shortage.places, planCase.placeIds);
        one["sentence"] = shortage.sentence;
        json["infeasible"].push_back(one);
    }
    if (cut)
        json["cut"] = true;
    return answer(json, no);
}

class Clock {
public:
    [[nodiscard]] double seconds() const {
        return std::chrono::duration<double>(std::chrono::steady_clock::now() - m_start).count();
    }

private:
    std::chrono::steady_clock::time_point m_start = std::chrono::steady_clock::now();
};

/// The plan to compare with: the one given, or what becomes of it without overrules if it breaks rules
/// itself.
MilliMinutes costBefore(const Problem &asGiven, const Placement &from, const SolveOptions &options) {
    if (brokenRules(asGiven, from).empty())
        return evaluate(asGiven, from).total();
    Problem unpinned = asGiven;
    unpinned.changeMinutes = changeMinutes;
    unpinned.shownPlace = from.place;
    unpinned.shownCode = from.code;
    return resolve(unpinned, from, options).terms.total();
}

Json changedItems(const check::PlanCase &planCase, const Placement &from, const Placement &to) {
    Json changed = Json::array();
    for (std::size_t i = 0; i < from.place.size(); ++i)
        if (from.place[i] != to.place[i] || from.code[i] != to.code[i])
            changed.push_back(planCase.itemIds[i]);
    return changed;
}

int plan(const Arguments &arguments, const check::PlanCase &planCase, Problem problem,
         const std::optional<Placement> &from) {
    const Clock clock;
    const double safety = 10 * arguments.seconds + 30; // never reached on a sound machine
    SolveOptions options;
    options.moves = movesFor(arguments.seconds);
    options.threads = arguments.threads;
    options.seed = static_cast<std::uint64_t>(arguments.seed);
    options.stop = [&] { return clock.seconds() > safety; };
    if (from) {
        problem.changeMinutes = changeMinutes;
        problem.shownPlace = from->place;
        problem.shownCode = from->code;
    }
    const Solution solution = from ? resolve(problem, *from, options) : solve(problem, options);
    if (!solution.placement)
        return sayWhatIsShort(planCase, problem, solution.stopped);
    Json json = objective(solution.terms);
    json["place"] = idsOf(solution.placement->place, planCase.placeIds);
    json["code"] = solution.placement->code;
    json["seconds"] = clock.seconds();
    if (solution.stopped)
        json["cut"] = true;
    if (from) {
        json["changed"] = changedItems(planCase, *from, *solution.placement);
        json["price_mmin"] = solution.terms.total() - costBefore(planCase.problem, *from, options);
    }
    return answer(json, yes);
}

void addOptions(CLI::App &app, Arguments &arguments) {
    app.add_option("CASE.json", arguments.caseFile, "the kitchen")->required();
    app.add_option("--evaluate", arguments.evaluateFile, "count this plan, solve nothing");
    app.add_option("--from", arguments.fromFile, "change this plan as little as possible");
    app.add_option("--seconds", arguments.seconds, "stands for a fixed budget of moves");
    app.add_option("--threads", arguments.threads, "does not change the answer");
    app.add_option("--seed", arguments.seed, "another seed may give another plan");
    app.add_option("--pin", arguments.pins, "ITEM=PLACE: must stand there")->expected(1)->take_all();
    app.add_option("--forbid", arguments.bans, "ITEM=PLACE: must not stand there")->expected(1)->take_all();
}

void checkOptions(const Arguments &arguments) {
    constexpr double mostSeconds = 3600;
    constexpr int mostThreads = 64;
    if (!(arguments.seconds > 0) || arguments.seconds > mostSeconds)
        throw BadInput("--seconds: must be over 0 and at most 3600");
    if (arguments.threads < 1 || arguments.threads > mostThreads)
        throw BadInput("--threads: must be from 1 to 64");
    if (arguments.seed < 0)
        throw BadInput("--seed: must be 0 or more");
    if (!arguments.evaluateFile.empty() && !arguments.fromFile.empty())
        throw BadInput("--evaluate and --from: give one of them");
}

int run(const Arguments &arguments) {
    checkOptions(arguments);
    const check::PlanCase planCase = check::readPlanCase(arguments.caseFile);
    Problem problem = planCase.problem;
    overrule(arguments, planCase, problem);
    if (!arguments.evaluateFile.empty())
        return evaluatePlan(planCase, problem, check::readPlacement(arguments.evaluateFile, planCase));
    std::optional<Placement> from;
    if (!arguments.fromFile.empty())
        from = check::readPlacement(arguments.fromFile, planCase);
    return plan(arguments, planCase, std::move(problem), from);
}

} // namespace

int main(int argc, char **argv) {
    CLI::App app("Places the things of a kitchen, or counts a plan.", "plan_case");
    Arguments arguments;
    addOptions(app, arguments);
    try {
        app.parse(argc, argv);
        return run(arguments);
    } catch (const CLI::CallForHelp &) {
        std::cout << app.help();
        return yes;
    } catch (const CLI::ParseError &wrong) {
        std::cerr << "plan_case: " << wrong.what() << '\n';
    } catch (const std::exception &wrong) {
        std::cerr << "plan_case: " << wrong.what() << '\n';
    }
    return badInput;
}
