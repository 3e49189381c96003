#include "demo_case.h"
#include <map>
#include <stdexcept>

namespace demo_case {

using namespace model;

Findings findings(const Case &record) {
    return findingsOf(record, day);
}

const Case &planned(const std::string &name) {
    static std::map<std::string, Case> known;
    const auto found = known.find(name);
    if (found != known.end())
        return found->second;
    Case record = demo::byName(name).value();
    if (!record.plan)
        record.plan = makePlan(record, findings(record), SolveOptions{}, day).value();
    return known.emplace(name, std::move(record)).first->second;
}

Case asItStands(const std::string &name) {
    Case record = demo::byName(name).value();
    const std::vector<std::string> marks{"", "ribbed-band", "", "large-bump",
                                         record.client.readsBraille ? "braille" : "large-print"};
    Plan plan;
    plan.made = day;
    plan.meaningMarks = {{"hazard", "disc-tag"}, {"allergen", "bump-row"}};
    for (const std::string &fact : record.diet.facts)
        plan.meaningMarks.push_back({"diet:" + fact, "cord"});
    for (const Thing &thing : record.things) {
        PlanLine line;
        line.thing = thing.id;
        line.place = thing.place.value();
        line.order = static_cast<int>(plan.lines.size());
        line.marker = marks[plan.lines.size() % marks.size()];
        line.meanings = meaningsOf(thing, record.diet);
        line.labelText = thing.name;
        plan.lines.push_back(line);
    }
    plan.lines[1].place = record.places[1].id;
    record.plan = plan;
    return record;
}

} // namespace demo_case
