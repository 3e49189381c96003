#include "model/place_choice.h"
#include "model/evaluate.h"
#include "model/rule_words.h"
#include <algorithm>

namespace model {

std::vector<std::string> refusedBy(const PlanProblem &built, int item, int place) {
    std::vector<std::string> rules = placeRules(built.problem, item, place);
    std::erase_if(rules, [](const std::string &rule) { return rule == "overruled" || rule == "keep"; });
    return rules;
}

std::vector<PlaceChoice> placeChoices(const WhyLines &plan, const Id &thing) {
    const PlanProblem &built = plan.problem();
    const auto found = std::find(built.things.begin(), built.things.end(), thing);
    std::vector<PlaceChoice> choices;
    if (found == built.things.end())
        return choices;
    const int item = static_cast<int>(found - built.things.begin());
    for (int p = 0; p < static_cast<int>(built.places.size()); ++p) {
        const auto rules = refusedBy(built, item, p);
        choices.push_back({built.places[p], rules.empty() ? std::string() : shortRule(rules.front())});
    }
    std::stable_partition(choices.begin(), choices.end(),
                          [](const PlaceChoice &choice) { return choice.why.empty(); });
    return choices;
}

} // namespace model
