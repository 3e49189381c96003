#include "tests/model/random_kitchen.h"
#include <array>
#include <cmath>
#include <map>
#include <random>
#include <string_view>

namespace model::fixtures {
namespace {

/// std distributions differ between libraries; these do not.
class Dice {
public:
    explicit Dice(std::uint64_t seed) : m_engine(seed) {}
    int below(int count) { return static_cast<int>(m_engine() % static_cast<std::uint64_t>(count)); }
    bool chance(int percent) { return below(100) < percent; }
    /// Two decimals, from low to high.
    double between(double low, double high) {
        const int steps = static_cast<int>(std::lround((high - low) * 100.0));
        return (static_cast<int>(std::lround(low * 100.0)) + below(steps + 1)) / 100.0;
    }

private:
    std::mt19937_64 m_engine;
};

struct Kind {
    std::string_view group, sub, shape, surface;
    double width, depth, height, weight;
    char klass;
    ProblemStorage storage;
    std::string_view area;
};

constexpr auto dry = ProblemStorage::Dry;
constexpr std::array<Kind, 24> kinds{{
    {"spices", "spice jars", "jar", "glass", 4.8, 4.8, 10.5, 0.09, 'F', dry, "hob"},
    {"spices", "herb jars", "jar", "glass", 4.8, 4.8, 10.5, 0.05, 'F', dry, "hob"},
    {"tins", "soups", "can", "metal", 7.4, 7.4, 10.8, 0.46, 'F', dry, "prep"},
    {"tins", "pulses", "can", "metal", 7.4, 7.4, 10.8, 0.47, 'F', dry, "prep"},
    {"tins", "fruit", "can", "metal", 7.4, 7.4, 10.6, 0.48, 'F', dry, "prep"},
    {"baking", "flours", "bag", "card", 10.5, 7.0, 17.0, 1.1, 'F', dry, "prep"},
    {"baking", "sugars", "bag", "card", 9.0, 6.5, 14.0, 0.8, 'F', dry, "prep"},
    {"baking", "essences", "bottle", "glass", 4.0, 4.0, 10.0, 0.08, 'F', dry, "prep"},
    {"staples", "pasta", "bag", "film", 12.0, 7.0, 22.0, 0.55, 'F', dry, "hob"},
    {"staples", "rice", "canister", "plastic", 11.0, 11.0, 20.0, 0.9, 'F', dry, "hob"},
    {"breakfast", "cereals", "box", "card", 19.0, 6.5, 28.0, 0.55, 'F', dry, "table"},
    {"breakfast", "spreads", "jar", "glass", 7.0, 7.0, 10.0, 0.42, 'F', dry, "table"},
    {"sauces", "oils", "bottle", "glass", 7.0, 7.0, 27.0, 1.2, 'F', dry, "hob"},
    {"sauces", "ketchups", "bottle", "plastic", 6.8, 5.0, 19.0, 0.5, 'F', dry, "table"},
    {"crockery", "mugs", "mug", "ceramic", 10.0, 9.0, 10.0, 0.35, 'N', dry, "table"},
    {"crockery", "bowls", "bowl", "ceramic", 16.0, 16.0, 8.0, 0.5, 'N', dry, "table"},
    {"cookware", "pans", "pan", "metal", 21.0, 24.0, 12.0, 1.3, 'N', dry, "hob"},
    {"cookware", "knives", "tool", "metal", 5.0, 25.0, 3.5, 0.15, 'N', dry, "prep"},
    {"cleaning", "sprays", "bottle", "plastic", 9.0, 6.0, 26.0, 0.8, 'C', dry, "sink"},
    {"cleaning", "powders", "box", "card", 13.0, 7.0, 18.0, 0.9, 'C', dry, "sink"},
    {"chilled", "yoghurts", "tub", "plastic", 9.5, 9.5, 11.0, 0.5, 'F', ProblemStorage::Fridge, "fridge"},
    {"chilled", "tubs", "tub", "plastic", 12.0, 9.0, 6.5, 0.5, 'F', ProblemStorage::Fridge, "fridge"},
    {"frozen", "vegetables", "bag", "film", 17.0, 6.0, 21.0, 0.9, 'F', ProblemStorage::Freezer, "fridge"},
    {"frozen", "meals", "box", "card", 15.0, 5.0, 18.0, 0.45, 'F', ProblemStorage::Freezer, "hob"},
}};

struct Point {
    double x, y;
};

Point areaAt(std::string_view name) {
    static const std::map<std::string_view, Point> areas{{"hob", {0, 0}},
                                                         {"prep", {0.9, 0}},
                                                         {"sink", {1.9, 0}},
                                                         {"fridge", {2.7, 0.5}},
                                                         {"table", {2.1, 2.3}}};
    return areas.at(name);
}

ProblemItem randomItem(Dice &dice, int number) {
    const Kind &kind = kinds[dice.below(static_cast<int>(kinds.size()))];
    ProblemItem item;
    item.group = kind.group;
    item.sub = kind.sub;
    item.name = item.sub + " " + std::to_string(number);
    item.shape = kind.shape;
    item.surface = kind.surface;
    item.widthCm = dice.between(kind.width * 0.95, kind.width * 1.1);
    item.depthCm = dice.between(kind.depth * 0.95, kind.depth * 1.1);
    item.heightCm = dice.between(kind.height * 0.95, kind.height * 1.1);
    item.weightKg = dice.between(kind.weight * 0.8, kind.weight * 1.3 + 0.02);
    item.usesPerWeek = dice.chance(20) ? dice.between(3, 14) : dice.between(0.1, 2);
    item.refillsPerWeek = kind.klass == 'N' ? 0 : dice.between(0.01, 0.4);
    item.sound = dice.between(0, 1);
    item.storage = kind.storage;
    item.klass = kind.klass;
    item.allergen = kind.klass == 'F' && dice.chance(15);
    item.glass = kind.surface == "glass" || kind.surface == "ceramic";
    item.hazard = kind.klass == 'C' ? dice.chance(70) : kind.sub == "knives";
    item.hotUse = kind.sub == "pans";
    item.spoils = kind.klass == 'F' && dice.chance(35);
    const Point area = areaAt(kind.area);
    item.areaX = area.x;
    item.areaY = area.y;
    return item;
}

struct Shelf {
    double height, clear, depth;
    bool secure, counter;
};

struct Bay {
    ProblemStorage storage;
    std::string_view name, area;
    std::vector<Shelf> shelves;
};

const std::vector<Bay> &dryBays() {
    static const std::vector<Bay> bays{
        {dry, "base cupboard", "sink", {{22, 45, 34, true, false}, {60, 30, 34, true, false}}},
        {dry, "wall cupboard", "hob", {{104, 34, 30, false, false}, {136, 32, 30, false, false}}},
        {dry,
         "drawers",
         "prep",
         {{82, 16, 45, false, false}, {54, 30, 45, false, false}, {24, 34, 45, false, false}}},
        {dry,
         "larder",
         "table",
         {{18, 36, 34, false, false},
          {52, 34, 34, false, false},
          {86, 34, 34, false, false},
          {121, 34, 34, false, false},
          {156, 30, 34, true, false}}},
        {dry, "worktop", "prep", {{91, 99, 45, false, true}}},
    };
    return bays;
}

const Bay &coldBay(ProblemStorage storage) {
    static const Bay fridge{ProblemStorage::Fridge,
                            "fridge",
                            "fridge",
                            {{80, 28, 36, false, false}, {112, 28, 36, false, false}}};
    static const Bay freezer{ProblemStorage::Freezer,
                             "freezer",
                             "fridge",
                             {{46, 26, 36, false, false}, {74, 26, 36, false, false}}};
    return storage == ProblemStorage::Fridge ? fridge : freezer;
}

double addBay(Problem &problem, const Bay &bay, Dice &dice, double widest) {
    const int number = problem.places.empty() ? 0 : problem.places.back().bay + 1;
    const Point area = areaAt(bay.area);
    double added = 0;
    for (std::size_t k = 0; k < bay.shelves.size(); ++k) {
        const Shelf &shelf = bay.shelves[k];
        ProblemPlace place;
        place.name = std::string(bay.name) + " " + std::to_string(number) + " shelf " + std::to_string(k);
        place.heightCm = shelf.height;
        place.clearCm = shelf.clear;
        place.depthCm = shelf.depth;
        place.widthCm = dice.between(widest * 0.6, widest);
        place.storage = bay.storage;
        place.secure = shelf.secure;
        place.counter = shelf.counter;
        place.lit = dice.chance(70);
        place.bay = number;
        place.x = area.x + dice.between(0, 0.6) - 0.3;
        place.y = area.y + dice.between(0, 0.6) - 0.3;
        problem.places.push_back(place);
        added += place.widthCm;
    }
    return added;
}

double widthOf(const Problem &problem, ProblemStorage storage) {
    double sum = 0;
    for (const ProblemItem &item : problem.items)
        if (item.storage == storage)
            sum += item.widthCm + 1;
    return sum;
}

void addPlaces(Problem &problem, Dice &dice) {
    constexpr double spare = 1.45;
    double have = 0;
    const double need = widthOf(problem, dry) * spare;
    for (std::size_t k = 0; k < dryBays().size() || have < need; ++k)
        have += addBay(problem, dryBays()[k % dryBays().size()], dice, problem.items.size() < 40 ? 75 : 90);
    for (const ProblemStorage storage : {ProblemStorage::Fridge, ProblemStorage::Freezer}) {
        const double cold = widthOf(problem, storage) * spare;
        for (double sum = 0; sum < cold;)
            sum += addBay(problem, coldBay(storage), dice, 70);
    }
}

void addCurrentPlaces(Problem &problem, Dice &dice) {
    for (ProblemItem &item : problem.items) {
        const int p = dice.below(static_cast<int>(problem.places.size()));
        const ProblemPlace &place = problem.places[p];
        if (place.storage != item.storage || place.clearCm < item.heightCm + 1 ||
            place.depthCm < item.depthCm)
            continue;
        item.current = p;
        item.keep = dice.below(3);
    }
}

ProblemMarker marker(std::string_view name, double fix, double read, double learn, double cost) {
    ProblemMarker made;
    made.name = name;
    made.surfaces = {"glass", "metal", "plastic"};
    made.fixMinutes = fix;
    made.readSeconds = read;
    made.learnMinutes = learn;
    made.cost = cost;
    return made;
}

void addMarkers(Problem &problem, Dice &dice) {
    problem.markers = {marker("small dot", 1, 1, 18, 0.09), marker("large dot", 1, 1, 18, 0.14),
                       marker("two dots", 1, 1, 18, 0.2),   marker("band", 0.3, 1, 18, 0.05),
                       marker("felt", 1, 1, 18, 0.1),       marker("braille label", 3, 4, 0, 0.3)};
    problem.markers[0].survivesFreezer = false;
    problem.markers[4].survivesWet = false;
    problem.markers[0].surfaces.emplace_back("card");
    problem.markers[4].surfaces.emplace_back("card");
    problem.markers[5].surfaces = {"glass", "metal", "plastic", "card", "film", "ceramic"};
    problem.markers[5].ownText = true;
    const std::size_t count = problem.markers.size();
    problem.confusion.assign(count, std::vector<double>(count, 1.0));
    for (std::size_t m = 0; m < count; ++m) {
        for (std::size_t n = m + 1; n < count; ++n)
            problem.confusion[m][n] = problem.confusion[n][m] = dice.between(1, 30) / 100.0;
        problem.miss.push_back(dice.between(0.5, 10) / 100.0);
    }
    problem.confusion[5][5] = 0.03;
}

} // namespace

Problem randomKitchen(std::uint64_t seed, int items) {
    Dice dice(seed);
    Problem problem;
    problem.client.children = dice.chance(30);
    problem.client.usableVision = dice.chance(50);
    problem.client.avoidsAllergen = dice.chance(50);
    problem.client.reachLowCm = dice.between(10, 20);
    for (int i = 0; i < items; ++i)
        problem.items.push_back(randomItem(dice, i));
    addPlaces(problem, dice);
    addCurrentPlaces(problem, dice);
    addMarkers(problem, dice);
    problem.oneThingPerMark = seed % 2 == 1;
    return problem;
}

Problem tinyKitchen(std::uint64_t seed, int items) {
    Dice dice(seed);
    Problem problem;
    problem.client.usableVision = dice.chance(50);
    for (int i = 0; i < items; ++i) {
        ProblemItem item = randomItem(dice, i);
        item.shape = "jar";
        item.surface = dice.chance(80) ? "glass" : "card";
        item.storage = dry;
        item.klass = dice.chance(85) ? 'F' : 'C';
        item.group = dice.chance(50) ? "one" : "two";
        item.sub = item.group + (dice.chance(50) ? " a" : " b");
        item.widthCm = dice.between(6.5, 7.5);
        item.depthCm = 7;
        item.heightCm = dice.between(9.5, 11);
        item.weightKg = dice.between(0.35, 0.45);
        problem.items.push_back(item);
    }
    const std::vector<Shelf> shelves{{120, 30, 30, true, false}, {150, 30, 30, false, false}};
    const double width = 8.5 * items / 1.6;
    addBay(problem, {dry, "cupboard", "hob", shelves}, dice, width / 0.8);
    if (dice.chance(50))
        addBay(problem, {dry, "rack", "prep", {{90, 30, 30, false, false}}}, dice, width);
    addCurrentPlaces(problem, dice);
    addMarkers(problem, dice);
    problem.markers = {problem.markers[0], problem.markers[3]};
    problem.confusion = {{1, 0.03}, {0.03, 1}};
    problem.miss = {0.02, 0.02};
    return problem;
}

} // namespace model::fixtures
