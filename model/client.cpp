#include "model/client.h"
#include <algorithm>
#include <cassert>

namespace model {

const std::vector<SafetyQuestionText> &safetyQuestions() {
    using enum SafetyQuestion;
    static const std::vector<SafetyQuestionText> questions{
        {SmokeAlarm, "smoke-alarm", "Do the smoke and gas alarms sound when tested?",
         "Urgent: an alarm that sounds, with an owner and a date.", Answer::No},
        {WayOutClear, "way-out", "Is the way out clear?", "Urgent: clear the way out.", Answer::No},
        {PhoneReachable, "phone", "Is a phone within reach in the kitchen?", "Urgent: a phone within reach.",
         Answer::No},
        {UrgentEyeSigns, "urgent-eye", "Sudden loss of sight, new flashes or floaters, or a painful red eye?",
         "The plan waits: same-day eye referral.", Answer::Yes},
        {Implant, "implant",
         "Any implant: heart, brain, nerve, ear, shunt or pump? Client, household or therapist.",
         "No magnet marks, and none in any supply list; phone at least 15 cm away.", Answer::Yes},
        {LatexAllergy, "latex", "Allergy to latex?", "Latex-free bands only.", Answer::Yes},
        {AdhesiveReaction, "adhesive", "Skin reaction to sticky labels or plasters?",
         "No adhesive on things that are held long.", Answer::Yes},
        {ReducedProtectiveFeeling, "feeling", "Reduced protective feeling in the hands?",
         "Nothing sharp or rough, no test of heat by touch; a touch mark alone never tells a danger.",
         Answer::Yes},
        {FragileSkin, "skin", "Blood thinners, or skin that tears easily?", "Nothing sharp, no notches.",
         Answer::Yes},
        {Falls, "falls", "Falls, poor balance or dizziness?",
         "No step stool; daily things within easy reach.", Answer::Yes},
        {DizzyLookingUpOrBending, "dizzy", "Dizzy when looking up or bending down?",
         "No high or low daily things.", Answer::Yes},
        {WeakOrShakyHands, "hands", "Weak grip, tremor, or one weak side?",
         "Lower limit for heavy things; fewer fiddly fixings.", Answer::Yes},
        {HandsFreeWalking, "hands-free", "Are both hands free when walking?",
         "With a stick, frame or dog: one-hand limit for what is carried.", Answer::No},
        {OneSideNotAttended, "one-side", "Does one side go unnoticed? Kept apart from field loss.",
         "Things on the attended side; front and behind instead of left and right.", Answer::Yes},
        {MemoryDifficulty, "memory", "Trouble remembering or learning new things?",
         "Fewer kinds of marks, one meaning each, practised at intervals.", Answer::Yes},
        {HearsSpeech, "hearing", "Does the client hear speech in the kitchen's noise?",
         "No sound mark or sound paper until heard in a trial.", Answer::No},
        {Smells, "smell", "Can the client smell gas and spoilt food?",
         "Gas and spoilage are never judged by nose.", Answer::No},
        {GasHob, "gas", "Is there a gas hob or gas oven?",
         "Gas alarm, and no cooking goal until the controls are safe.", Answer::Yes},
        {OxygenAtHome, "oxygen", "Oxygen at home, in use or stored?",
         "No flame or smoking near it; the supplier's distance; no cooking goal until agreed.", Answer::Yes},
        {MedicinesInKitchen, "medicines", "Are medicines kept in the kitchen or its fridge?",
         "Own agreed place; doses and labels go to the pharmacist.", Answer::Yes},
        {Seizures, "seizures", "Seizures?", "Caution lines on every paper about heat and water.",
         Answer::Yes},
        {SwallowingDifficulty, "swallowing", "Trouble with swallowing?",
         "Food texture only from a named professional's dated advice.", Answer::Yes},
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
        {"gluten", "cereals containing gluten"},
        {"crustaceans", "crustaceans"},
        {"eggs", "eggs"},
        {"fish", "fish"},
        {"peanuts", "peanuts"},
        {"soya", "soya"},
        {"milk", "milk"},
        {"nuts", "tree nuts"},
        {"celery", "celery"},
        {"mustard", "mustard"},
        {"sesame", "sesame"},
        {"sulphites", "sulphites"},
        {"lupin", "lupin"},
        {"molluscs", "molluscs"},
    };
    return names;
}

} // namespace model
