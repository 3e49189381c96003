#include "model/plan_weights.h"
#include "model/sentence.h"
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
        Sentence::later("Judgement, no source. Change it when this client's days say otherwise.");
    static const std::string clock = Sentence::later("Judgement. Time it with this client, then change it.");
    static const std::vector<WeightInfo> all{
        {"reach", Sentence::later("A step of height out of easy reach"), Sentence::later("minutes a use"),
         clock, &PlanWeights::reach},
        {"walk", Sentence::later("A metre of walking"), Sentence::later("minutes a use"), clock,
         &PlanWeights::walk},
        {"dark", Sentence::later("A use of a dark place"), Sentence::later("minutes a use"), judgement,
         &PlanWeights::dark},
        {"move", Sentence::later("A thing that leaves its place"),
         Sentence::later("minutes once, spread over 12 weeks"), judgement, &PlanWeights::move},
        {"group", Sentence::later("A further unit for things of one group"),
         Sentence::later("minutes a week"), judgement, &PlanWeights::group},
        {"shelf-mates", Sentence::later("A further place for things of one kind"),
         Sentence::later("minutes a week"), judgement, &PlanWeights::shelfMates},
        {"learning", Sentence::later("Learning a mark"),
         Sentence::later("times the minutes of the mark, 18 as a rule, spread over 12 weeks"),
         Sentence::later("Judgement. The count of practice rounds in the marker test shows more."),
         &PlanWeights::learning},
        {"marking", Sentence::later("Fixing and reading marks"),
         Sentence::later("times the minutes of the mark"), clock, &PlanWeights::marking},
        {"wrong-pick", Sentence::later("A wrong pick"), Sentence::later("minutes each"), judgement,
         &PlanWeights::wrongPick},
        {"spoilt-meal", Sentence::later("A wrong pick that spoils a meal"), Sentence::later("times as bad"),
         judgement, &PlanWeights::spoiltMeal}};
    return all;
}

Result<double> readPlanWeight(const std::string &typed) {
    const auto value = typed::number(typed::tidy(typed));
    if (!value)
        return fail(ErrorCode::NotUnderstood, typed::notA(Sentence::tr("a number"), typed, "0.5"));
    if (!possible(*value))
        return fail(ErrorCode::OutOfRange,
                    Sentence::tr("A weight is from 0 to 1000; 0 leaves it out of the plan."));
    return *value;
}

Result<void> checkWeights(const PlanWeights &weights) {
    for (const WeightInfo &info : weightInfos()) {
        if (!possible(weights.*info.value))
            return fail(
                ErrorCode::OutOfRange,
                Sentence::tr(
                    "The weight of \"{1}\" is not from 0 to 1000. Set it anew, or take the usual one.",
                    {Sentence::tr(info.asked)}));
    }
    return {};
}

std::string weightWords(double value) {
    return typed::words(value, 3);
}

} // namespace model
