#pragma once
#include "model/result.h"
#include <string>
#include <vector>

namespace model {

/// What the plan weighs against what. Most rest on judgement alone, so each client can have weights of her
/// own.
struct PlanWeights {
    double reach = 0.15;     // minutes a use, for each step of height out of easy reach
    double walk = 0.05;      // minutes a use, for each metre, there and back
    double dark = 0.05;      // minutes a use, of a place without light
    double move = 6;         // minutes once, for a thing that leaves its place
    double group = 1;        // minutes a week, for each further unit that holds a group
    double shelfMates = 0.4; // minutes a week, for each further place that holds a sub-category
    double learning = 1;     // times the minutes to learn each mark
    double marking = 1;      // times the minutes to fix and read marks
    double wrongPick = 2;    // minutes each
    double spoiltMeal = 5;   // a wrong pick that spoils a meal is so many times worse
    friend bool operator==(const PlanWeights &, const PlanWeights &) = default;
};

/// One weight in the therapist's words.
struct WeightInfo {
    std::string key;
    std::string asked;   // "A step of height out of easy reach"
    std::string unit;    // "minutes a use"
    std::string restsOn; // what the usual value rests on
    double PlanWeights::*value = nullptr;
};

/// All weights, in the order in which they are shown.
[[nodiscard]] const std::vector<WeightInfo> &weightInfos();
/// A weight as typed. Fails with NotUnderstood, or with OutOfRange unless it is from 0 to 1000.
[[nodiscard]] Result<double> readPlanWeight(const std::string &typed);
/// The first weight that no plan can be made with (below 0, over 1000, no number), with a sentence that names
/// it.
[[nodiscard]] Result<void> checkWeights(const PlanWeights &weights);
/// "0.15", "1", "2.5"
[[nodiscard]] std::string weightWords(double value);

} // namespace model
