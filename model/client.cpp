#include "model/client.h"
#include "model/sentence.h"
#include <algorithm>
#include <cassert>

namespace model {

const std::vector<SafetyQuestionText> &safetyQuestions() {
    using enum SafetyQuestion;
    static const std::vector<SafetyQuestionText> questions{
        {SmokeAlarm, "smoke-alarm", Sentence::later("Do the smoke and gas alarms sound when tested?"),
         Sentence::later("Urgent: an alarm that sounds, with an owner and a date."), Answer::No},
        {WayOutClear, "way-out", Sentence::later("Is the way out clear?"),
         Sentence::later("Urgent: clear the way out."), Answer::No},
        {PhoneReachable, "phone", Sentence::later("Is a phone within reach in the kitchen?"),
         Sentence::later("Urgent: a phone within reach."), Answer::No},
        {UrgentEyeSigns, "urgent-eye",
         Sentence::later("Sudden loss of sight, new flashes or floaters, or a painful red eye?"),
         Sentence::later("The plan waits: same-day eye referral."), Answer::Yes},
        {Implant, "implant",
         Sentence::later(
             "Any implant: heart, brain, nerve, ear, shunt or pump? Client, household or therapist."),
         Sentence::later("No magnet marks, and none in any supply list; phone at least 15 cm away."),
         Answer::Yes},
        {LatexAllergy, "latex", Sentence::later("Allergy to latex?"),
         Sentence::later("Latex-free bands only."), Answer::Yes},
        {AdhesiveReaction, "adhesive", Sentence::later("Skin reaction to sticky labels or plasters?"),
         Sentence::later("No adhesive on things that are held long."), Answer::Yes},
        {ReducedProtectiveFeeling, "feeling", Sentence::later("Reduced protective feeling in the hands?"),
         Sentence::later(
             "Nothing sharp or rough, no test of heat by touch; a touch mark alone never tells a danger."),
         Answer::Yes},
        {FragileSkin, "skin", Sentence::later("Blood thinners, or skin that tears easily?"),
         Sentence::later("Nothing sharp, no notches."), Answer::Yes},
        {Falls, "falls", Sentence::later("Falls, poor balance or dizziness?"),
         Sentence::later("No step stool; daily things within easy reach."), Answer::Yes},
        {DizzyLookingUpOrBending, "dizzy", Sentence::later("Dizzy when looking up or bending down?"),
         Sentence::later("No high or low daily things."), Answer::Yes},
        {WeakOrShakyHands, "hands", Sentence::later("Weak grip, tremor, or one weak side?"),
         Sentence::later("Lower limit for heavy things; fewer fiddly fixings."), Answer::Yes},
        {HandsFreeWalking, "hands-free", Sentence::later("Are both hands free when walking?"),
         Sentence::later("With a stick, frame or dog: one-hand limit for what is carried."), Answer::No},
        {OneSideNotAttended, "one-side",
         Sentence::later("Does one side go unnoticed? Kept apart from field loss."),
         Sentence::later("Things on the attended side; front and behind instead of left and right."),
         Answer::Yes},
        {MemoryDifficulty, "memory", Sentence::later("Trouble remembering or learning new things?"),
         Sentence::later("Fewer kinds of marks, one meaning each, practised at intervals."), Answer::Yes},
        {HearsSpeech, "hearing", Sentence::later("Does the client hear speech in the kitchen's noise?"),
         Sentence::later("No sound mark or sound paper until heard in a trial."), Answer::No},
        {Smells, "smell", Sentence::later("Can the client smell gas and spoilt food?"),
         Sentence::later("Gas and spoilage are never judged by nose."), Answer::No},
        {GasHob, "gas", Sentence::later("Is there a gas hob or gas oven?"),
         Sentence::later("Gas alarm, and no cooking goal until the controls are safe."), Answer::Yes},
        {OxygenAtHome, "oxygen", Sentence::later("Oxygen at home, in use or stored?"),
         Sentence::later(
             "No flame or smoking near it; the supplier's distance; no cooking goal until agreed."),
         Answer::Yes},
        {MedicinesInKitchen, "medicines", Sentence::later("Are medicines kept in the kitchen or its fridge?"),
         Sentence::later("Own agreed place; doses and labels go to the pharmacist."), Answer::Yes},
        {Seizures, "seizures", Sentence::later("Seizures?"),
         Sentence::later("Caution lines on every paper about heat and water."), Answer::Yes},
        {SwallowingDifficulty, "swallowing", Sentence::later("Trouble with swallowing?"),
         Sentence::later("Food texture only from a named professional's dated advice."), Answer::Yes},
    };
    return questions;
}

const SafetyQuestionText &textOf(SafetyQuestion question) {
    const auto &all = safetyQuestions();
    const auto found =
        std::find_if(all.begin(), all.end(), [&](const auto &q) { return q.question == question; });
    assert(found != all.end());
    return *found;
}

Answer SafetyFacts::answer(SafetyQuestion question) const {
    const auto found = answers.find(question);
    return found == answers.end() ? Answer::NotAsked : found->second.answer;
}

bool SafetyFacts::cautious(SafetyQuestion question) const {
    const Answer given = answer(question);
    return given == Answer::NotAsked || given == textOf(question).cautious;
}

const std::vector<AllergenName> &allergens() {
    static const std::vector<AllergenName> names{
        {"gluten", Sentence::later("cereals containing gluten")},
        {"crustaceans", Sentence::later("crustaceans")},
        {"eggs", Sentence::later("eggs")},
        {"fish", Sentence::later("fish")},
        {"peanuts", Sentence::later("peanuts")},
        {"soya", Sentence::later("soya")},
        {"milk", Sentence::later("milk")},
        {"nuts", Sentence::later("tree nuts")},
        {"celery", Sentence::later("celery")},
        {"mustard", Sentence::later("mustard")},
        {"sesame", Sentence::later("sesame")},
        {"sulphites", Sentence::later("sulphites")},
        {"lupin", Sentence::later("lupin")},
        {"molluscs", Sentence::later("molluscs")},
    };
    return names;
}

} // namespace model
