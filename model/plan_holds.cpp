#include "model/plan_holds.h"
#include "model/evaluate.h"
#include "model/rule_words.h"
#include "model/sentence.h"
#include <algorithm>
#include <array>

namespace model {
namespace {

constexpr std::size_t mostTold = 3;
constexpr std::size_t mostNames = 4;

std::string namesOf(const PlanProblem &built, const std::vector<int> &items) {
    std::string names;
    for (std::size_t k = 0; k < items.size() && k < mostNames; ++k)
        names += (k == 0 ? "" : ", ") + built.problem.items[items[k]].name;
    return items.size() > mostNames
               ? Sentence::tr("{1} and {2} more", {names, std::to_string(items.size() - mostNames)})
               : names;
}

/// Told before those of size and reach.
bool doesHarm(const BrokenRule &broken) {
    static constexpr std::array rules{"chemical", "allergen", "hazard", "apart", "hot"};
    return std::ranges::find(rules, broken.rule) != rules.end();
}

std::string sentenceOf(const PlanProblem &built, const BrokenRule &broken) {
    const std::string where =
        broken.places.empty() ? ""
                              : Sentence::tr(" in {1}", {built.problem.places[broken.places.front()].name});
    const std::string which =
        broken.items.empty() ? Sentence::tr("The whole plan") : namesOf(built, broken.items) + where;
    const std::string rule =
        broken.rule == "marker" ? Sentence::tr("that mark may not be used there") : shortRule(broken.rule);
    return sentenceCase(which) + ": " + rule + ".";
}

} // namespace

std::vector<std::string> brokenToday(const WhyLines &lines) {
    std::vector<std::string> told;
    auto all = brokenRules(lines.problem().problem, lines.shown());
    std::stable_partition(all.begin(), all.end(), doesHarm);
    for (std::size_t k = 0; k < all.size() && k < mostTold; ++k)
        told.push_back(sentenceOf(lines.problem(), all[k]));
    if (all.size() > mostTold)
        told.push_back(Sentence::tr("And {1} more.", {std::to_string(all.size() - mostTold)}));
    return told;
}

std::vector<std::string> brokenToday(const Case &record, const Findings &findings) {
    const auto lines = WhyLines::of(record, findings);
    return lines ? brokenToday(*lines) : std::vector<std::string>{};
}

} // namespace model
