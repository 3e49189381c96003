#include "model/lifting.h"
#include "model/reach.h"
#include "tests/check_values/check_functions.h"

namespace check {

using namespace model;

namespace {

double landmark(Centimetres stature, const std::string &name) {
    const BodyHeights body = bodyHeights(stature, std::nullopt);
    if (name == "lower leg")
        return body.lowerLeg.value;
    if (name == "knuckle")
        return body.knuckle.value;
    if (name == "elbow")
        return body.elbow.value;
    if (name == "shoulder")
        return body.shoulder.value;
    return name == "eye" ? body.eye.value : body.overhead.value;
}

std::string zone(const Input &input) {
    switch (reachZone({number(input, 0)}, {number(input, 1)})) {
    case ReachZone::Floor:
        return "Z1";
    case ReachZone::Low:
        return "Z2";
    case ReachZone::Best:
        return "Z3";
    case ReachZone::High:
        return "Z4";
    case ReachZone::Overhead:
        return "Z5";
    }
    return {};
}

std::string seated(const Input &input) {
    const auto approach = input.at(0) == "forward" ? Approach::Forward : Approach::Side;
    const auto high = seatedHighReach(approach, {number(input, 1)}, {number(input, 2)});
    return high ? shown(high->value) : "none";
}

Sex sexOf(const std::string &word) {
    return word == "female" ? Sex::Female : Sex::Male;
}

std::string lift(const Input &i) {
    const auto limit = liftFilter({.from = {number(i, 0)},
                                   .to = {number(i, 1)},
                                   .stature = {number(i, 2)},
                                   .sex = sexOf(i.at(3)),
                                   .arms = i.at(4) == "close" ? Arms::Close : Arms::Out,
                                   .twistDegrees = number(i, 5),
                                   .perMinute = number(i, 6)});
    return limit ? shown(limit->value) : "refused";
}

double niosh(const Input &i, std::size_t from) {
    return nioshLimit({number(i, from), number(i, from + 1), number(i, from + 2), number(i, from + 3),
                       number(i, from + 4), number(i, from + 5)})
        ->value;
}

} // namespace

Functions reachFunctions() {
    Functions all;
    all["share"] = [](const Input &i) { return shown(landmark({1}, i.at(0))); };
    all["body"] = [](const Input &i) { return shown(landmark({number(i, 0)}, i.at(1))); };
    all["zone"] = zone;
    all["overhead-at-age"] = [](const Input &i) {
        return shown(bodyHeights({number(i, 0)}, whole(i, 1)).overhead.value);
    };
    all["seated-high"] = seated;
    all["seated-low"] = [](const Input &) { return shown(seatedLowReach.value); };
    all["lift"] = lift;
    all["lift-seated"] = [](const Input &i) { return shown(seatedFilter(sexOf(i.at(0))).value); };
    all["niosh-hm"] = [](const Input &i) {
        return shown(nioshFactors({.horizontal = number(i, 0)}).horizontal);
    };
    all["niosh-vm"] = [](const Input &i) { return shown(nioshFactors({.vertical = number(i, 0)}).vertical); };
    all["niosh-dm"] = [](const Input &i) { return shown(nioshFactors({.travel = number(i, 0)}).distance); };
    all["niosh-am"] = [](const Input &i) {
        return shown(nioshFactors({.asymmetry = number(i, 0)}).asymmetry);
    };
    all["niosh"] = [](const Input &i) { return shown(niosh(i, 0)); };
    all["niosh-index"] = [](const Input &i) { return shown(number(i, 0) / niosh(i, 1)); };
    return all;
}

} // namespace check
