#include "model/rule_words.h"
#include "model/sentence.h"
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
    return Sentence::tr("{1} cm", {(text.ends_with(".0") ? text.substr(0, text.size() - 2) : text)});
}

std::string storageWords(ProblemStorage storage) {
    switch (storage) {
    case ProblemStorage::Dry:
        return Sentence::tr("a dry place");
    case ProblemStorage::Fridge:
        return Sentence::tr("the fridge");
    case ProblemStorage::Freezer:
        return Sentence::tr("the freezer");
    }
    return "";
}

/// What is so, for a rule about sizes, reach and weight.
std::string bodyFact(const ProblemClient &client, const ProblemItem &item, const ProblemPlace &place,
                     const std::string &rule) {
    const std::string zone = Sentence::tr("{1} to {2}", {cm(client.knuckleCm), cm(client.shoulderCm)});
    if (rule == "storage")
        return Sentence::tr("it belongs in {1}. Correct how it is kept if that is not so.",
                            {storageWords(item.storage)});
    if (rule == "height")
        return Sentence::tr("it is {1} high and needs 1 cm above it; the place has {2}. Correct the sizes if "
                            "they are not so.",
                            {cm(item.heightCm), cm(place.clearCm)});
    if (rule == "depth")
        return Sentence::tr("it is {1} deep and the place {2}. Correct the sizes if they are not so.",
                            {cm(item.depthCm), cm(place.depthCm)});
    if (rule == "width")
        return Sentence::tr(
            "it needs {1} of width and the place has {2}. Correct the sizes if they are not so.",
            {cm((item.runCm > 0 ? item.runCm : item.widthCm) + 1), cm(place.widthCm)});
    if (rule == "reach")
        return Sentence::tr("at {1} it is out of reach, {2} to {3}. Correct the reach if that is not so.",
                            {cm(place.heightCm), cm(client.reachLowCm), cm(client.reachHighCm)});
    if (rule == "heavy")
        return Sentence::tr("it weighs {1} kg, the limit is {2} kg, so it stands between knuckle and "
                            "shoulder, {3}. Correct the weight or the limit if that is not so.",
                            {oneDecimal(item.weightKg), oneDecimal(client.heavyKg), zone});
    if (rule == "hot")
        return Sentence::tr("it is handled hot and the place is above the shoulder, {1}. Correct the fact if "
                            "it is not handled hot.",
                            {cm(client.shoulderCm)});
    return Sentence::tr("you ruled that place out. Take that back first.");
}

} // namespace

std::string shortRule(const std::string &rule) {
    static const std::map<std::string, std::string> words{
        {"storage", Sentence::later("wrong kind of storage")},
        {"height", Sentence::later("not high enough inside")},
        {"depth", Sentence::later("not deep enough")},
        {"width", Sentence::later("no width left")},
        {"reach", Sentence::later("out of reach")},
        {"heavy", Sentence::later("too heavy for that height")},
        {"hot", Sentence::later("hot above the shoulder")},
        {"hazard", Sentence::later("a hazard within reach of those at home")},
        {"keep", Sentence::later("it has to stay")},
        {"overruled", Sentence::later("ruled out by you or by a caution")},
        {"chemical", Sentence::later("chemicals never share a place with food or what food touches")},
        {"allergen", Sentence::later("food with the avoided allergen never shares a place with other food or "
                                     "bare tools and tableware")},
        {"kinds", Sentence::later("more kinds of marks than this client is to learn")},
        {"alike", Sentence::later("what feels alike would carry the same mark")},
        {"once", Sentence::later("something of the same shape carries the same mark there")},
        {"apart", Sentence::later("too near to what feels alike and would do harm")}};
    const auto found = words.find(rule);
    return found == words.end() ? rule : Sentence::tr(found->second);
}

std::string refusal(const PlanProblem &built, int i, int p, const std::string &rule) {
    const ProblemItem &item = built.problem.items[i];
    const ProblemPlace &place = built.problem.places[p];
    const std::string start =
        Sentence::tr("{1} cannot stand in: {2}. ", {sentenceCase(item.name), place.name});
    if (rule == "hazard")
        return Sentence::tr("{1}It is a hazard, and the place is neither locked nor above the reach of "
                            "children, pets or others who may not know it. This rule is not overruled: "
                            "correct the fact itself, with who said so.",
                            {start});
    if (rule == "chemical")
        return Sentence::tr(
            "{1}Chemicals never share a place with food or what food touches. This rule is not overruled: if "
            "one of them is wrongly entered, correct the fact itself, with who said so.",
            {start});
    if (rule == "allergen")
        return Sentence::tr("{1}Food with the avoided allergen never shares a place with other food or with "
                            "what food touches. This rule is not overruled: if a pack is wrongly entered, "
                            "read it and correct the fact, with who read it.",
                            {start});
    if (rule == "apart")
        return Sentence::tr(
            "{1}Something stands there or beside it that feels alike, and a mix-up would do harm. This rule "
            "is not overruled: change the container, or correct the fact itself, with who said so.",
            {start});
    return start + sentenceCase(bodyFact(built.problem.client, item, place, rule));
}

} // namespace model
