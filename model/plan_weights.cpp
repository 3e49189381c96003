#include "model/plan_weights.h"
#include "model/typed.h"
#include <cmath>

namespace model {
namespace {

constexpr double mostWeight = 1000;

bool possible(double value) {
    return std::isfinite(value) && value >= 0 && value <= mostWeight;
}

} // namespace

const std::vector<WeightInfo> &weightInfos() {
    static const std::string judgement =
        "Judgement, no source. Change it when this client's days say otherwise.";
    static const std::string clock = "Judgement. Time it with this client, then change it.";
    static const std::vector<WeightInfo> all{
        {"reach", "A step of height out of easy reach", "minutes a use", clock, &PlanWeights::reach},
        {"walk", "A metre of walking", "minutes a use", clock, &PlanWeights::walk},
        {"dark", "A use of a dark place", "minutes a use", judgement, &PlanWeights::dark},
        {"move", "A thing that leaves its place", "minutes once, spread over 12 weeks", judgement,
         &PlanWeights::move},
        {"group", "A further unit for things of one group", "minutes a week", judgement, &PlanWeights::group},
        {"shelf-mates", "A further place for things of one kind", "minutes a week", judgement,
         &PlanWeights::shelfMates},
        {"learning", "Learning a mark", "times the minutes of the mark, 18 as a rule, spread over 12 weeks",
         "Judgement. The count of practice rounds in the marker test shows more.", &PlanWeights::learning},
        {"marking", "Fixing and reading marks", "times the minutes of the mark", clock,
         &PlanWeights::marking},
        {"wrong-pick", "A wrong pick", "minutes each", judgement, &PlanWeights::wrongPick},
        {"spoilt-meal", "A wrong pick that spoils a meal", "times as bad", judgement,
         &PlanWeights::spoiltMeal}};
    return all;
}

Result<double> readPlanWeight(const std::string &typed) {
    const auto value = typed::number(typed::tidy(typed));
    if (!value)
        return fail(ErrorCode::NotUnderstood, typed::notA("a number", typed, "0.5"));
    if (!possible(*value))
        return fail(ErrorCode::OutOfRange, "A weight is from 0 to 1000; 0 leaves it out of the plan.");
    return *value;
}

Result<void> checkWeights(const PlanWeights &weights) {
    for (const WeightInfo &info : weightInfos()) {
        if (!possible(weights.*info.value))
            return fail(ErrorCode::OutOfRange,
                        "The weight of \"" + info.asked +
                            "\" is not from 0 to 1000. Set it anew, or take the usual one.");
    }
    return {};
}

std::string weightWords(double value) {
    return typed::words(value, 3);
}

} // namespace model
