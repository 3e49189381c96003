#include "model/demo.h"
#include "model/demo_parts.h"

/// All in this file is invented: the person, the home, every figure.
namespace model::demo {
namespace {

using enum Form;

const std::vector<UnitRow> units{
    {"base cupboard by the door", UnitKind::BaseCupboard, WorkArea::Entry, 60, "oak"},
    {"larder", UnitKind::Larder, WorkArea::None, 60, "oak"},
    {"worktop left of the cooker", UnitKind::Worktop, WorkArea::Prep, 140, "black", Answer::No, true},
    {"wall cupboard left of the cooker", UnitKind::WallCupboard, WorkArea::None, 80, "oak"},
    {"wall cupboard right of the cooker", UnitKind::WallCupboard, WorkArea::None, 60, "oak"},
    {"drawers right of the cooker", UnitKind::DrawerStack, WorkArea::Hob, 80, "oak"},
    {"base cupboard under the sink", UnitKind::BaseCupboard, WorkArea::Sink, 80, "oak", Answer::No, true},
    {"fridge", UnitKind::Fridge, WorkArea::Fridge, 60, "steel"},
    {"freezer under the fridge", UnitKind::Freezer, WorkArea::None, 60, "steel"},
};

const std::vector<PlaceRow> places{
    {0, "shelf", Shelf, 54, 50, 40, 42, Light::Dim, Storage::Dry,
     "hot chocolate 2/week, cereal bowls daily, mugs daily"},
    {1, "top shelf", Shelf, 54, 35, 30, 175, Light::Dim, Storage::Dry,
     "custard powder, cornflour, baking powder, icing sugar, cocoa"},
    {1, "second shelf", Shelf, 54, 35, 30, 145, Light::Dim, Storage::Dry,
     "4 chopped tomatoes, 2 kidney beans, chickpeas, 2 coconut milk, baked beans, sweetcorn"},
    {1, "third shelf", Shelf, 54, 35, 30, 112, Light::Dim, Storage::Dry,
     "3 tuna, sardines, 3 tomato soup, tinned peas, peach slices, tomato puree"},
    {1, "fourth shelf", Shelf, 54, 35, 30, 80, Light::Dim, Storage::Dry, "potatoes, onions"},
    {1, "bottom shelf", Shelf, 54, 35, 30, 45, Light::Dim, Storage::Dry,
     "rice 2/week, brown rice, pasta 2/week, red lentils"},
    {2, "worktop", Counter, 130, 58, 0, 91, Light::Dim, Storage::Dry,
     "kettle daily, toaster daily, bread daily, liquid level indicator daily, talking timer daily, chopping "
     "board daily, dinner plates daily"},
    {3, "top shelf", Shelf, 74, 30, 28, 178, Light::Dim, Storage::Dry,
     "vinegar, wine vinegar, soy sauce, ketchup, mustard, pasta sauce, curry paste, pickle, yeast extract"},
    {3, "bottom shelf", Shelf, 74, 30, 28, 140, Light::Dim, Storage::Dry,
     "tea daily, coffee daily, sugar daily, honey, jam 4/week, marmalade 3/week, peanut butter"},
    {4, "bottom shelf", Shelf, 54, 30, 28, 140, Light::Dim, Storage::Dry,
     "salt daily, pepper daily, cinnamon, curry powder, chilli powder, paprika, cumin, turmeric, mixed "
     "herbs"},
    {5, "top drawer", Drawer, 60, 45, 12, 78, Light::Dim, Storage::Dry,
     "cutlery daily, tin opener 4/week, peeler, scissors"},
    {5, "middle drawer", Drawer, 60, 45, 22, 55, Light::Dim, Storage::Dry,
     "wooden spoons daily, tea towels, measuring spoons"},
    {5, "bottom drawer", Drawer, 74, 50, 24, 30, Light::Dim, Storage::Dry,
     "small saucepan 5/week, large saucepan 3/week, frying pan 4/week"},
    {6, "shelf", Shelf, 74, 50, 50, 35, Light::Dim, Storage::Dry,
     "washing-up liquid daily, dishwasher tablets 4/week, bleach, kitchen spray 3/week, laundry liquid, "
     "fabric softener"},
    {7, "middle shelf", Shelf, 54, 35, 30, 115, Light::Bright, Storage::Fridge,
     "2 milk daily, butter daily, cheddar 3/week, eggs 4/week"},
    {8, "top drawer", Drawer, 50, 42, 28, 60, Light::Dim, Storage::Freezer, "frozen peas, chips weekly"},
};

void addWhoAndWhy(Case &record) {
    record.client.contact = "By electronic mail; reads it in braille";
    record.client.referredBy = "Self";
    record.client.question = "New home, nothing found at the first try. Wants one order that he can learn.";
    record.client.whomToAsk = "your occupational therapist";
    record.client.media = {
        .largePrint = false, .printSize = std::nullopt, .braille = BrailleGrade::Contracted};
    record.client.readsBraille = true;
    record.client.hasTagReader = true;
    record.household = {.id = record.household.id,
                        .people = "Lives with his sister, who works shifts",
                        .children = Answer::No,
                        .childReach = std::nullopt,
                        .adultWithMemoryLoss = Answer::No,
                        .pets = Answer::No,
                        .whoShops = "Sister",
                        .whoCooks = "Idris",
                        .whoPutsAway = "Idris",
                        .whoReadsPrint = "Sister"};
    record.diet.asked = true;
    record.diet.avoids = {"peanuts"};
}

void addSafety(Case &record, Date date) {
    using enum SafetyQuestion;
    addAnswers(record,
               {{SmokeAlarm, Answer::Yes, "Tested during the visit"},
                {WayOutClear, Answer::Yes},
                {PhoneReachable, Answer::Yes},
                {UrgentEyeSigns, Answer::No},
                {Implant, Answer::Yes, "Pacemaker, left side; card seen"},
                {ReducedProtectiveFeeling, Answer::No},
                {FragileSkin, Answer::No},
                {Falls, Answer::No},
                {DizzyLookingUpOrBending, Answer::No},
                {WeakOrShakyHands, Answer::No},
                {HandsFreeWalking, Answer::No, "Long cane"},
                {OneSideNotAttended, Answer::No},
                {HearsSpeech, Answer::Yes, "Both ears, heard with the tap running"},
                {Smells, Answer::Yes},
                {GasHob, Answer::No, "Induction"},
                {MedicinesInKitchen, Answer::No},
                {MemoryDifficulty, Answer::No},
                {AdhesiveReaction, Answer::No}},
               date); // latex, oxygen, seizures and swallowing were not asked
}

void addTests(Case &record, Date date) {
    using enum Test;
    addMeasurements(record,
                    {{DistanceAcuity, Side::Both, "NLP", "", "By his eye clinic's letter"},
                     {UsableVision, Side::Both, "no"},
                     {Monofilament, Side::Right, "2.83", "", "", "", "index"},
                     {TwoPointStatic, Side::Right, "2.4 mm", "", "", "", "index"},
                     {TwoPointMoving, Side::Right, "2 mm", "", "", "", "index"},
                     {ShapeNaming, Side::Right, "5/5"},
                     {AcceptedMarks, Side::NotStated,
                      "large-bump, ribbed-band, grit, disc-tag, cord, bump-row, braille, spoken-tag", "",
                      "Marker test at the table"},
                     {Stature, Side::NotStated, "176 cm"},
                     {KnuckleHeight, Side::NotStated, "77 cm"},
                     {ShoulderHeight, Side::NotStated, "144 cm"},
                     {ReachLow, Side::NotStated, "20 cm"},
                     {ReachHigh, Side::NotStated, "195 cm"},
                     {SafeLift, Side::NotStated, "8 kg"}},
                    date);
}

} // namespace

Case idris() {
    const Date first = day(2026, 11, 17);
    Case record = startCase("idris", "Idris Okalend", day(1981, 9, 2));
    addWhoAndWhy(record);
    addSafety(record, first);
    addTests(record, first);
    addKitchen(record, units, places);
    addAppliance(record, "induction hob: left front: off, 4, 7; right front: off, 4", 38);
    addAppliance(record, "washing machine: off, 30 short, 40");
    thingNamed(record, "coconut milk").directions = "Shake, stir into the pan, do not boil";
    thingNamed(record, "kettle").keep = 2;
    thingNamed(record, "salt").markInUse = "ribbed-band";
    addVisit(record, first, "Whole assessment and 80 things in one visit; he told the shelves from memory.",
             "Latex, oxygen, seizures and swallowing still to ask.");
    addGoal(record, "By 15 December Idris finds 6 named tins within 30 seconds each, unaided.",
            {"0 to 2 of 6", "3 or 4 of 6", "5 of 6", "6 of 6", "6 of 6, after shopping was put away"}, first,
            day(2026, 12, 15));
    addRatings(record, {{0, 0, -1, "3 of 6; two found by shaking"}});
    return record;
}

} // namespace model::demo
