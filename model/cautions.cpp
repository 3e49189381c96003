#include "model/findings_parts.h"
#include "model/nut_allergy.h"
#include "model/sentence.h"
#include "model/typed.h"
#include <algorithm>

namespace model {

namespace {

/// What to do while the cautious answer of a question stands. Whole sentences that fit "answered" and "not
/// asked".
std::string sentenceOf(SafetyQuestion question) {
    switch (question) {
    case SafetyQuestion::SmokeAlarm:
        return Sentence::tr("Smoke and gas alarms must sound when tested before anything is cooked: have "
                            "them fitted and tested as local codes and the fire service say.");
    case SafetyQuestion::WayOutClear:
        return Sentence::tr("Clear the way out and keep it clear, as local fire codes say.");
    case SafetyQuestion::PhoneReachable:
        return Sentence::tr(
            "Put a phone within reach in the kitchen, and agree whom to call in an emergency.");
    case SafetyQuestion::UrgentEyeSigns:
        return Sentence::tr("Sudden loss of sight, new flashes or floaters, or a painful red eye need an eye "
                            "doctor or an emergency eye service the same day; the plan waits for that.");
    case SafetyQuestion::Implant:
        return Sentence::tr(
            "No magnets in any mark or supply; phones and tag readers stay at least 15 cm from an implant. "
            "Its maker's advice and the clinic that looks after it come first.");
    case SafetyQuestion::HearsSpeech:
        return Sentence::tr(
            "No spoken mark and no sound paper until speech was heard in a trial in this kitchen.");
    case SafetyQuestion::Smells:
        return Sentence::tr(
            "Never judge gas or spoilt food by smell: use a gas alarm as local codes say, and dates.");
    case SafetyQuestion::MedicinesInKitchen:
        return Sentence::tr("Medicines keep one agreed place, locked where others could take them; labels "
                            "and doses are the pharmacist's. Emergency medicine is never moved by a plan.");
    case SafetyQuestion::GasHob:
        return Sentence::tr("With gas: a gas alarm, and no cooking goal until the controls are safe. A "
                            "registered gas engineer checks the cooker.");
    case SafetyQuestion::OneSideNotAttended:
        return Sentence::tr("Put things on the side that is attended to; new stock goes in front and behind, "
                            "not left and right. Assess this apart from field loss.");
    case SafetyQuestion::DizzyLookingUpOrBending:
        return Sentence::tr("Nothing used daily stands high or low: looking up or bending may make dizzy. "
                            "Tell the doctor about new dizziness.");
    case SafetyQuestion::HandsFreeWalking:
        return Sentence::tr("With a stick, frame or dog only one hand carries: keep loads light and near, "
                            "and nothing hot is carried.");
    case SafetyQuestion::LatexAllergy:
        return Sentence::tr("Latex-free bands and gloves only.");
    case SafetyQuestion::AdhesiveReaction:
        return Sentence::tr("No sticky mark on things that are held long: use bands, cord or card.");
    case SafetyQuestion::ReducedProtectiveFeeling:
        return Sentence::tr(
            "Nothing sharp or rough is sorted by touch, and heat is never tested by hand: use a thermometer "
            "or a timer that speaks. A touch mark alone never tells a danger, a medicine or an allergen.");
    case SafetyQuestion::FragileSkin:
        return Sentence::tr(
            "Nothing sharp and no cut notches. Bleeding that does not stop needs medical help.");
    case SafetyQuestion::Falls:
        return Sentence::tr(
            "No step stool and no climbing: things come down to the person. Ask the doctor about falls.");
    case SafetyQuestion::WeakOrShakyHands:
        return Sentence::tr("Only light things above the worktop, and marks that need no fiddly fixing.");
    case SafetyQuestion::MemoryDifficulty:
        return Sentence::tr(
            "Few kinds of marks, one meaning each, learned one after the other and practised at intervals.");
    case SafetyQuestion::Seizures:
        return Sentence::tr("Take care with heat, hot water and knives: follow the doctor's or nurse's "
                            "advice on cooking alone.");
    case SafetyQuestion::SwallowingDifficulty:
        return Sentence::tr(
            "Food texture and thickened drinks only as a named professional has advised, with the date.");
    case SafetyQuestion::OxygenAtHome:
        return Sentence::tr("No flame, gas hob or smoking near oxygen, in use or stored: keep the supplier's "
                            "distance. No cooking goal until the supplier and the fire service agree.");
    }
    return {};
}

bool isUrgent(SafetyQuestion question) {
    return question == SafetyQuestion::SmokeAlarm || question == SafetyQuestion::WayOutClear ||
           question == SafetyQuestion::PhoneReachable || question == SafetyQuestion::UrgentEyeSigns;
}

std::string because(const SafetyAnswer &answer) {
    std::string words = answer.answer == Answer::NotAsked ? Sentence::tr("not asked")
                        : answer.answer == Answer::Yes    ? Sentence::tr("answered yes")
                                                          : Sentence::tr("answered no");
    return answer.note.empty() ? words : words + ": " + answer.note;
}

void fromQuestions(const SafetyFacts &safety, std::vector<Caution> &cautions) {
    for (const SafetyQuestionText &text : safetyQuestions()) {
        if (!safety.cautious(text.question))
            continue;
        const auto found = safety.answers.find(text.question);
        const SafetyAnswer answer = found == safety.answers.end() ? SafetyAnswer{} : found->second;
        cautions.push_back({sentenceOf(text.question), because(answer), isUrgent(text.question)});
    }
}

void fromHousehold(const Household &household, std::vector<Caution> &cautions) {
    const auto note = [&](Answer answer, const std::string &sentence) {
        if (answer != Answer::No)
            cautions.push_back(
                {sentence, answer == Answer::Yes ? Sentence::tr("answered yes") : Sentence::tr("not asked"),
                 false});
    };
    note(household.children,
         Sentence::tr("With children in the home: poisons, medicines, sharp things and small marks are "
                      "locked away; high up is not enough for a child who climbs."));
    note(household.adultWithMemoryLoss, Sentence::tr("With an adult with memory loss in the home: dangers "
                                                     "are locked away, and no cleaner stands near food."));
    note(household.pets,
         Sentence::tr("With pets in the home: poisons and small marks stay out of their reach."));
}

std::string allergenWords(const std::string &key) {
    const auto &all = allergens();
    const auto found =
        std::find_if(all.begin(), all.end(), [&](const AllergenName &a) { return a.key == key; });
    return found == all.end() ? key : Sentence::tr(found->words);
}

void fromDiet(const Diet &diet, std::vector<Caution> &cautions) {
    if (!diet.asked) {
        cautions.push_back({Sentence::tr("Food allergy and diet are not known: no pack counts as safe until "
                                         "someone asks and reads it."),
                            Sentence::tr("not asked"), false});
        return;
    }
    if (!diet.avoids.empty()) {
        std::string names;
        for (const std::string &key : diet.avoids)
            names += (names.empty() ? "" : ", ") + allergenWords(key);
        cautions.push_back(
            {Sentence::tr("Must avoid {1}: read every pack every time, recipes change; a mark or a place "
                          "never clears a food. Follow the doctor's or dietitian's advice.",
                          {names}),
             Sentence::tr("allergy or diet told"), false});
    }
    if (std::string asked = otherNutAsked(diet); !asked.empty())
        cautions.push_back({std::move(asked), Sentence::tr("allergy told"), false});
    if (!diet.other.empty())
        cautions.push_back(
            {Sentence::tr("Diet: {1}. Follow the advice of the doctor or dietitian.", {diet.other}),
             Sentence::tr("diet told"), false});
}

void fromMeasurements(const Case &record, const TouchMeaning &touch, const SightMeaning &sight,
                      std::vector<Caution> &cautions) {
    if (touch.protectionReduced && !record.safety.cautious(SafetyQuestion::ReducedProtectiveFeeling))
        cautions.push_back({sentenceOf(SafetyQuestion::ReducedProtectiveFeeling),
                            Sentence::tr("measured by filament, although the answer was no"), false});
    if (sight.fieldAcross && *sight.fieldAcross <= 20)
        cautions.push_back(
            {Sentence::tr("Doors and edges at head height are not seen in time: close them at once, or have "
                          "them taken off."),
             Sentence::tr("field of {1} degrees across", {typed::words(*sight.fieldAcross, 1)}), false});
}

} // namespace

std::vector<Caution> cautionsOf(const Case &record, const TouchMeaning &touch, const SightMeaning &sight) {
    std::vector<Caution> cautions;
    fromQuestions(record.safety, cautions);
    fromMeasurements(record, touch, sight, cautions);
    fromHousehold(record.household, cautions);
    fromDiet(record.diet, cautions);
    std::stable_partition(cautions.begin(), cautions.end(),
                          [](const Caution &caution) { return caution.urgent; });
    return cautions;
}

} // namespace model
