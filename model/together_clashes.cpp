#include "model/kit.h"
#include "model/plan_safety.h"
#include "model/planning.h"
#include "model/sentence.h"
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
    return Sentence::tr("{1} to {2} cm",
                        {typed::words(from.value.value, 0), typed::words(to.value.value, 0)});
}

void tellReach(const Person &one, const Person &other, std::vector<std::string> &told) {
    const Findings &a = one.findings, &b = other.findings;
    if (std::max(a.reachLow.value, b.reachLow.value) > std::min(a.reachHigh.value, b.reachHigh.value))
        told.push_back(Sentence::tr(
            "No height is in reach of both: {1} reaches {2}, {3} {4}. One plan for both cannot be: give each "
            "shelves of her or his own.",
            {one.name(), heights(a.reachLow, a.reachHigh), other.name(), heights(b.reachLow, b.reachHigh)}));
    else if (std::max(a.knuckle.value, b.knuckle.value) > std::min(a.shoulder.value, b.shoulder.value))
        told.push_back(Sentence::tr(
            "No height is easy for both: for {1} it is {2}, for {3} {4}. Settle who uses each daily thing.",
            {one.name(), heights(a.knuckle, a.shoulder), other.name(), heights(b.knuckle, b.shoulder)}));
}

std::string mediumWords(MarkMedium medium) {
    switch (medium) {
    case MarkMedium::Touch:
        return Sentence::tr("touch");
    case MarkMedium::Braille:
        return Sentence::tr("braille");
    case MarkMedium::LargePrint:
        return Sentence::tr("large print");
    case MarkMedium::SpokenTag:
        return Sentence::tr("spoken tags");
    }
    return {};
}

void tellMedia(const Person &one, const Person &other, std::vector<std::string> &told) {
    const auto media = labelMedia(one.record, one.findings);
    const auto others = labelMedia(other.record, other.findings);
    for (const auto &[person, none] : {std::pair{&one, media.empty()}, std::pair{&other, others.empty()}})
        if (none)
            told.push_back(Sentence::tr("{1} reads no label: what must be told by both gets a touch mark, a "
                                        "place and a shape of its own.",
                                        {person->name()}));
    const bool shared =
        std::ranges::any_of(media, [&](MarkMedium medium) { return std::ranges::count(others, medium) > 0; });
    if (!media.empty() && !others.empty() && !shared)
        told.push_back(Sentence::tr(
            "{1} reads {2}, {3} {4}: each label is made in both.",
            {one.name(), mediumWords(media.front()), other.name(), mediumWords(others.front())}));
}

void tellMarks(const Person &one, const Person &other, std::size_t both, std::vector<std::string> &told) {
    const std::size_t most = std::max(one.findings.acceptedMarks.size(), other.findings.acceptedMarks.size());
    if (both < 2)
        told.emplace_back(Sentence::tr(
            "No pair of touch marks is told apart by both: labels in both media, place and shape must do."));
    else if (both < most)
        told.push_back(Sentence::tr("Of the touch marks that one of them tells apart, {1} of {2} will do for "
                                    "both; only these are used.",
                                    {std::to_string(both), std::to_string(most)}));
}

void tellMarksInUse(const Person &one, const Person &other, std::vector<std::string> &told) {
    for (const Thing &thing : one.record.things) {
        const Marker *marker = markerIn(one.record, thing.markInUse);
        for (const Person *person : {&one, &other})
            if (marker && ruledOut(*marker, person->record))
                told.push_back(Sentence::tr("The mark in use on {1} ({2}) is ruled out for {3}: take it off.",
                                            {thing.name, marker->name, person->name()}));
    }
}

std::string allergenNames(const Diet &diet, const Diet &other) {
    std::string names;
    for (const AllergenName &allergen : allergens())
        if (std::ranges::count(diet.avoids, allergen.key) > 0 &&
            std::ranges::count(other.avoids, allergen.key) == 0)
            names += (names.empty() ? "" : ", ") + Sentence::tr(allergen.words);
    return names;
}

/// Common practice: apart on the shelf is not apart on the knife.
void tellAllergens(const Person &one, const Person &other, std::vector<std::string> &told) {
    const std::string names = allergenNames(one.record.diet, other.record.diet);
    if (names.empty())
        return;
    told.push_back(Sentence::tr(
        "{1} must avoid {2}, {3} need not. Ask both whether any is kept here at all; if so, with a board, "
        "knife and cloth of its own, and hands washed after it. Follow the doctor's or dietitian's advice.",
        {one.name(), names, other.name()}));
    if (other.record.safety.cautious(SafetyQuestion::MemoryDifficulty))
        told.push_back(Sentence::tr("A rule of this kind may be forgotten by {1}: the safer way is to have "
                                    "none in the house, if both agree.",
                                    {other.name()}));
}

void tellMemory(const Person &one, const Person &other, std::vector<std::string> &told) {
    if (other.record.safety.answer(SafetyQuestion::MemoryDifficulty) != Answer::Yes ||
        one.record.safety.answer(SafetyQuestion::MemoryDifficulty) == Answer::Yes)
        return;
    if (const auto most = mostKindsOfMarks(other.record))
        told.push_back(Sentence::tr(
            "{1} learns few kinds of marks: at most {2} for both, so more is told by labels and places.",
            {other.name(), std::to_string(*most)}));
    told.push_back(Sentence::tr(
        "Dangers are locked away from {1}; {2} needs a lock that opens by touch, and a place for the key.",
        {other.name(), one.name()}));
}

void tellSides(const Person &one, const Person &other, std::vector<std::string> &told) {
    constexpr SafetyQuestion question = SafetyQuestion::OneSideNotAttended;
    const bool yes = one.record.safety.answer(question) == Answer::Yes;
    if (yes != (other.record.safety.answer(question) == Answer::Yes))
        told.push_back(Sentence::tr("{1} does not attend to one side: the order on each shelf, and where new "
                                    "stock goes, follow that for both.",
                                    {(yes ? one : other).name()}));
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
