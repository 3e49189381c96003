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

} // namespace demo_case
