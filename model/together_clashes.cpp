#include "model/kit.h"
#include "model/plan_safety.h"
#include "model/planning.h"
#include "model/together.h"
#include "model/typed.h"
#include "model/usable_marks.h"
#include <algorithm>

namespace model {
namespace {

/// One of the two, with what is known of her.
struct Person {
    const Case &record;
    const Findings &findings;
    [[nodiscard]] const std::string &name() const { return record.client.name; }
};

std::string heights(const ReachValue &from, const ReachValue &to) {
    return typed::words(from.value.value, 0) + " to " + typed::words(to.value.value, 0) + " cm";
}

void tellReach(const Person &one, const Person &other, std::vector<std::string> &told) {
    const Findings &a = one.findings, &b = other.findings;
    if (std::max(a.reachLow.value, b.reachLow.value) > std::min(a.reachHigh.value, b.reachHigh.value))
        told.push_back("No height is in reach of both: " + one.name() + " reaches " +
                       heights(a.reachLow, a.reachHigh) + ", " + other.name() + " " +
                       heights(b.reachLow, b.reachHigh) +
                       ". One plan for both cannot be: give each shelves of her or his own.");
    else if (std::max(a.knuckle.value, b.knuckle.value) > std::min(a.shoulder.value, b.shoulder.value))
        told.push_back("No height is easy for both: for " + one.name() + " it is " +
                       heights(a.knuckle, a.shoulder) + ", for " + other.name() + " " +
                       heights(b.knuckle, b.shoulder) + ". Settle who uses each daily thing.");
}

std::string mediumWords(MarkMedium medium) {
    switch (medium) {
    case MarkMedium::Touch:
        return "touch";
    case MarkMedium::Braille:
        return "braille";
    case MarkMedium::LargePrint:
        return "large print";
    case MarkMedium::SpokenTag:
        return "spoken tags";
    }
    return {};
}

void tellMedia(const Person &one, const Person &other, std::vector<std::string> &told) {
    const auto media = labelMedia(one.record, one.findings);
    const auto others = labelMedia(other.record, other.findings);
    for (const auto &[person, none] : {std::pair{&one, media.empty()}, std::pair{&other, others.empty()}})
        if (none)
            told.push_back(person->name() + " reads no label: what must be told by both gets a touch mark, a "
                                            "place and a shape of its own.");
    const bool shared =
        std::ranges::any_of(media, [&](MarkMedium medium) { return std::ranges::count(others, medium) > 0; });
    if (!media.empty() && !others.empty() && !shared)
        told.push_back(one.name() + " reads " + mediumWords(media.front()) + ", " + other.name() + " " +
                       mediumWords(others.front()) + ": each label is made in both.");
}

void tellMarks(const Person &one, const Person &other, std::size_t both, std::vector<std::string> &told) {
    const std::size_t most = std::max(one.findings.acceptedMarks.size(), other.findings.acceptedMarks.size());
    if (both < 2)
        told.emplace_back(
            "No pair of touch marks is told apart by both: labels in both media, place and shape "
            "must do.");
    else if (both < most)
        told.push_back("Of the touch marks that one of them tells apart, " + std::to_string(both) + " of " +
                       std::to_string(most) + " will do for both; only these are used.");
}

void tellMarksInUse(const Person &one, const Person &other, std::vector<std::string> &told) {
    for (const Thing &thing : one.record.things) {
        const Marker *marker = markerIn(one.record, thing.markInUse);
        for (const Person *person : {&one, &other})
            if (marker && ruledOut(*marker, person->record))
                told.push_back("The mark in use on " + thing.name + " (" + marker->name +
                               ") is ruled out for " + person->name() + ": take it off.");
    }
}

std::string allergenNames(const Diet &diet, const Diet &other) {
    std::string names;
    for (const AllergenName &allergen : allergens())
        if (std::ranges::count(diet.avoids, allergen.key) > 0 &&
            std::ranges::count(other.avoids, allergen.key) == 0)
            names += (names.empty() ? "" : ", ") + allergen.words;
    return names;
}

/// Common practice: apart on the shelf is not apart on the knife.
void tellAllergens(const Person &one, const Person &other, std::vector<std::string> &told) {
    const std::string names = allergenNames(one.record.diet, other.record.diet);
    if (names.empty())
        return;
    told.push_back(
        one.name() + " must avoid " + names + ", " + other.name() +
        " need not. Ask both whether any is kept here at all; if so, with a board, knife and cloth "
        "of its own, and hands washed after it. Follow the doctor's or dietitian's advice.");
    if (other.record.safety.cautious(SafetyQuestion::MemoryDifficulty))
        told.push_back("A rule of this kind may be forgotten by " + other.name() +
                       ": the safer way is to have none in the house, if both agree.");
}

void tellMemory(const Person &one, const Person &other, std::vector<std::string> &told) {
    if (other.record.safety.answer(SafetyQuestion::MemoryDifficulty) != Answer::Yes ||
        one.record.safety.answer(SafetyQuestion::MemoryDifficulty) == Answer::Yes)
        return;
    if (const auto most = mostKindsOfMarks(other.record))
        told.push_back(other.name() + " learns few kinds of marks: at most " + std::to_string(*most) +
                       " for both, so more is told by labels and places.");
    told.push_back("Dangers are locked away from " + other.name() + "; " + one.name() +
                   " needs a lock that opens by touch, and a place for the key.");
}

void tellSides(const Person &one, const Person &other, std::vector<std::string> &told) {
    constexpr SafetyQuestion question = SafetyQuestion::OneSideNotAttended;
    const bool yes = one.record.safety.answer(question) == Answer::Yes;
    if (yes != (other.record.safety.answer(question) == Answer::Yes))
        told.push_back((yes ? one : other).name() +
                       " does not attend to one side: the order on each shelf, and where new stock goes, "
                       "follow that for both.");
}

std::size_t acceptedByEach(const Findings &one, const Findings &other) {
    return static_cast<std::size_t>(std::ranges::count_if(one.acceptedMarks, [&](const std::string &key) {
        return std::ranges::count(other.acceptedMarks, key) > 0;
    }));
}

} // namespace

std::vector<std::string> clashesOf(const Case &keeper, const Findings &one, const Case &partner,
                                   const Findings &other) {
    const Person first{keeper, one}, second{partner, other};
    std::vector<std::string> told;
    tellReach(first, second, told);
    tellMedia(first, second, told);
    tellMarks(first, second, acceptedByEach(one, other), told);
    tellMarksInUse(first, second, told);
    for (const auto &[a, b] : {std::pair{&first, &second}, std::pair{&second, &first}}) {
        tellAllergens(*a, *b, told);
        tellMemory(*a, *b, told);
    }
    tellSides(first, second, told);
    return told;
}

} // namespace model
