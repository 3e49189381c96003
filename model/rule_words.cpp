#include "model/rule_words.h"
#include <cmath>
#include <map>

namespace model {
namespace {

std::string oneDecimal(double value) {
    const auto tenths = static_cast<long long>(std::llround(value * 10));
    return std::to_string(tenths / 10) + "." + std::to_string(tenths % 10);
}

std::string cm(double value) {
    const std::string text = oneDecimal(value);
    return (text.ends_with(".0") ? text.substr(0, text.size() - 2) : text) + " cm";
}

std::string storageWords(ProblemStorage storage) {
    switch (storage) {
    case ProblemStorage::Dry:
        return "a dry place";
    case ProblemStorage::Fridge:
        return "the fridge";
    case ProblemStorage::Freezer:
        return "the freezer";
    }
    return "";
}

/// What is so, for a rule about sizes, reach and weight.
std::string bodyFact(const ProblemClient &client, const ProblemItem &item, const ProblemPlace &place,
                     const std::string &rule) {
    const std::string zone = cm(client.knuckleCm) + " to " + cm(client.shoulderCm);
    if (rule == "storage")
        return "it belongs in " + storageWords(item.storage) + ". Correct how it is kept if that is not so.";
    if (rule == "height")
        return "it is " + cm(item.heightCm) + " high and needs 1 cm above it; the place has " +
               cm(place.clearCm) + ". Correct the sizes if they are not so.";
    if (rule == "depth")
        return "it is " + cm(item.depthCm) + " deep and the place " + cm(place.depthCm) +
               ". Correct the sizes if they are not so.";
    if (rule == "width")
        return "it needs " + cm((item.runCm > 0 ? item.runCm : item.widthCm) + 1) +
               " of width and the place has " + cm(place.widthCm) + ". Correct the sizes if they are not so.";
    if (rule == "reach")
        return "at " + cm(place.heightCm) + " it is out of reach, " + cm(client.reachLowCm) + " to " +
               cm(client.reachHighCm) + ". Correct the reach if that is not so.";
    if (rule == "heavy")
        return "it weighs " + oneDecimal(item.weightKg) + " kg, the limit is " + oneDecimal(client.heavyKg) +
               " kg, so it stands between knuckle and shoulder, " + zone +
               ". Correct the weight or the limit if that is not so.";
    if (rule == "hot")
        return "it is handled hot and the place is above the shoulder, " + cm(client.shoulderCm) +
               ". Correct the fact if it is not handled hot.";
    return "you ruled that place out. Take that back first.";
}

} // namespace

std::string shortRule(const std::string &rule) {
    static const std::map<std::string, std::string> words{
        {"storage", "wrong kind of storage"},
        {"height", "not high enough inside"},
        {"depth", "not deep enough"},
        {"width", "no width left"},
        {"reach", "out of reach"},
        {"heavy", "too heavy for that height"},
        {"hot", "hot above the shoulder"},
        {"hazard", "a hazard within reach of those at home"},
        {"keep", "it has to stay"},
        {"overruled", "ruled out by you or by a caution"},
        {"chemical", "chemicals never share a place with food or what food touches"},
        {"allergen",
         "food with the avoided allergen never shares a place with other food or bare tools and tableware"},
        {"kinds", "more kinds of marks than this client is to learn"},
        {"alike", "what feels alike would carry the same mark"},
        {"once", "something of the same shape carries the same mark there"},
        {"apart", "too near to what feels alike and would do harm"}};
    const auto found = words.find(rule);
    return found == words.end() ? rule : found->second;
}

std::string refusal(const PlanProblem &built, int i, int p, const std::string &rule) {
    const ProblemItem &item = built.problem.items[i];
    const ProblemPlace &place = built.problem.places[p];
    const std::string start = sentenceCase(item.name) + " cannot stand in: " + place.name + ". ";
    if (rule == "hazard")
        return start +
               "It is a hazard, and the place is neither locked nor above the reach of children, pets or "
               "others "
               "who may not know it. This rule is not overruled: correct the fact itself, with who said so.";
    if (rule == "chemical")
        return start +
               "Chemicals never share a place with food or what food touches. This rule is not overruled: if "
               "one of them "
               "is wrongly "
               "entered, correct the fact itself, with who said so.";
    if (rule == "allergen")
        return start +
               "Food with the avoided allergen never shares a place with other food or with what food "
               "touches. "
               "This rule is not overruled: if a pack is wrongly entered, read it and correct the fact, with "
               "who read it.";
    if (rule == "apart")
        return start + "Something stands there or beside it that feels alike, and a mix-up would do harm. "
                       "This rule is "
                       "not overruled: change the container, or correct the fact itself, with who said so.";
    return start + sentenceCase(bodyFact(built.problem.client, item, place, rule));
}

} // namespace model
