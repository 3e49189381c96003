#pragma once
#include "model/plan.h"
#include "model/plan_weights.h"
#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <utility>
#include <vector>

/// The placement problem in numbers, and what may be said of a solution. Knows nothing of clients or screens.
namespace model {

enum class ProblemStorage { Dry, Fridge, Freezer };

struct ProblemClient {
    double knuckleCm = 75, shoulderCm = 140, reachLowCm = 30, reachHighCm = 185;
    bool children = false;
    double childReachCm = 150;
    bool usableVision = false;
    bool avoidsAllergen = false;
    double heavyKg = 2.0;
};

struct ProblemPlace {
    std::string name;
    double heightCm = 0, widthCm = 0, depthCm = 0, clearCm = 0;
    ProblemStorage storage = ProblemStorage::Dry;
    bool secure = false, lit = true, counter = false;
    int bay = 0;
    double x = 0, y = 0;       // metres
    double runX = 1, runY = 0; // which way left to right runs
};

struct ProblemItem {
    std::string name, group, sub, shape, surface;
    double widthCm = 0, depthCm = 0, heightCm = 0, weightKg = 0;
    double usesPerWeek = 0, refillsPerWeek = 0, sound = 0;
    ProblemStorage storage = ProblemStorage::Dry;
    char klass = 'F'; // F food, C chemical, N neither
    bool allergen = false, glass = false, hazard = false, hotUse = false, spoils = false;
    double areaX = 0, areaY = 0;                  // metres, where it is used
    int current = -1;                             // place, or -1
    int keep = 0;                                 // 0..3
    std::optional<int> pinnedCode = std::nullopt; // the mark that the therapist chose; 0 none
    bool touchesFood = false;                     // tableware and the like: kept from chemicals as food is
    std::vector<int> forbidden;                   // places ruled out by the therapist
    double runCm = 0;                 // width taken on the shelf by several packs alike; 0: its own width
    std::vector<int> unreadable = {}; // codes whose words have no room on it in a size that this client reads
};

struct ProblemMarker {
    std::string name;
    std::vector<std::string> surfaces;
    bool survivesFreezer = true, survivesWet = true, ownText = false;
    double fixMinutes = 0, readSeconds = 0, learnMinutes = 0, cost = 0;
};

/// Markers are those left for codes, reserved meaning markers taken out. Code 0 is "no mark", code k is
/// markers [k - 1].
struct Problem {
    ProblemClient client;
    std::vector<ProblemPlace> places;
    std::vector<ProblemItem> items;
    std::vector<ProblemMarker> markers;
    /// [m][n], markers by themselves; the diagonal is 1 or the misreading rate.
    std::vector<std::vector<double>> confusion;
    std::vector<double> miss;               // [m] = q[none][m]
    double changeMinutes = 0;               // charged per changed line when `shown` is given
    std::vector<int> shownPlace, shownCode; // the plan that the therapist sees, or empty
    std::vector<std::pair<int, int>> apart; // items that must not stand in one place, nor on the next shelf
    bool allergenApart = false;     // food with the avoided allergen never shares a place with other food
    bool oneThingPerMark = false;   // in one place a mark to feel stands for one thing of its shape
    std::optional<int> mostToLearn; // kinds of marks that have to be learnt, codes only
    PlanWeights weights;
};

struct Placement {
    std::vector<int> place; // per item
    std::vector<int> code;  // per item, 0 none
    friend bool operator==(const Placement &, const Placement &) = default;
};

} // namespace model
