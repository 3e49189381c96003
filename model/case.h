#pragma once
#include "model/client.h"
#include "model/goal.h"
#include "model/kitchen.h"
#include "model/marks.h"
#include "model/measurement.h"
#include "model/plan.h"
#include "model/touch_trials.h"
#include <vector>

namespace model {

/// One visit to the home. Things of the visit carry its id.
struct Visit {
    Id id;
    std::optional<Date> date;
    int number = 1; // from 1
    int plannedMinutes = 75;
    std::string whoWasThere;
    std::string note;
    std::string carriedOver; // what is left open for next time, in her words
    bool closed = false;
    friend bool operator==(const Visit &, const Visit &) = default;
};

/// All that is saved for one client. A plain value: screens change a copy and hand it back.
struct Case {
    Client client;
    SafetyFacts safety;
    Household household;
    Diet diet;
    std::vector<Measurement> measurements;
    std::vector<KitMark> kit;                // changes of the program's kit, see kit.h
    std::vector<TouchTestRecord> touchTests; // marker tests, oldest first
    std::vector<Unit> units;                 // in walk order
    std::vector<Place> places;               // by unit, then from the top
    std::vector<Thing> things;
    std::vector<Appliance> appliances;
    std::vector<Overrule> overrules;
    std::optional<PlanWishes> wishes; // none: usual weights
    std::optional<Plan> plan;
    std::vector<Goal> goals;
    std::vector<Rating> ratings;
    std::vector<Visit> visits; // by number
    friend bool operator==(const Case &, const Case &) = default;
};

/// A new client with nothing known, every part with an id of its own.
[[nodiscard]] Case newCase(std::string name, std::string code);

} // namespace model
