#include "tests/model/worked_kitchen.h"

namespace model::fixtures {
namespace {

ProblemPlace shelf(const char *name, double height) {
    ProblemPlace place;
    place.name = name;
    place.heightCm = height;
    place.widthCm = 20;
    place.depthCm = 30;
    place.clearCm = 40;
    place.x = 1; // metres from the work area
    return place;
}

ProblemItem jar(const char *name) {
    ProblemItem item;
    item.name = name;
    item.group = "baking";
    item.sub = name;
    item.shape = "jar";
    item.surface = "glass";
    item.widthCm = item.depthCm = 7;
    item.heightCm = 10;
    item.weightKg = 0.4;
    item.usesPerWeek = 7;
    item.refillsPerWeek = 0.1;
    item.sound = 0.5;
    item.spoils = true;
    return item;
}

ProblemMarker marker(const char *name, double fixMinutes) {
    ProblemMarker made;
    made.name = name;
    made.surfaces = {"glass"};
    made.fixMinutes = fixMinutes;
    made.readSeconds = 1;
    made.learnMinutes = 18;
    made.cost = 0.1;
    return made;
}

} // namespace

Problem workedKitchen() {
    Problem problem;
    problem.places = {shelf("A", 120), shelf("B", 160)};
    problem.items = {jar("salt"), jar("sugar"), jar("vinegar")};
    ProblemItem &bottle = problem.items[vinegar];
    bottle.group = "sauces";
    bottle.shape = "bottle";
    bottle.heightCm = 25;
    bottle.weightKg = 0.6;
    bottle.usesPerWeek = 1;
    bottle.spoils = false;
    problem.markers = {marker("dot", 1.0), marker("band", 0.3)};
    problem.confusion = {{1, 0.03}, {0.03, 1}};
    problem.miss = {0.02, 0.02};
    return problem;
}

} // namespace model::fixtures
