#include "model/demo.h"
#include "model/demo_parts.h"

/// All in this file is invented: the person, the home, every figure.
namespace model::demo {
namespace {

using enum Form;

const std::vector<UnitRow> units{
    {"larder by the door", UnitKind::Larder, WorkArea::Entry, 50, "white"},
    {"worktop left of the cooker", UnitKind::Worktop, WorkArea::Prep, 90, "grey"},
    {"wall cupboard left of the cooker", UnitKind::WallCupboard, WorkArea::Hob, 60, "white"},
    {"drawers left of the cooker", UnitKind::DrawerStack, WorkArea::Hob, 60, "white"},
    {"base cupboard under the sink", UnitKind::BaseCupboard, WorkArea::Sink, 60, "white", Answer::Yes},
    {"fridge", UnitKind::Fridge, WorkArea::Fridge, 55, "white"},
};

const std::vector<PlaceRow> places{
    {0, "top shelf", Shelf, 44, 35, 30, 150, Light::Dim, Storage::Dry,
     "2 chopped tomatoes, 2 kidney beans, soup, tuna weekly"},
    {0, "second shelf", Shelf, 44, 35, 33, 115, Light::Fair, Storage::Dry,
     "corn flakes daily, jam 4/week, peanut butter"},
    {0, "third shelf", Shelf, 44, 35, 33, 80, Light::Fair, Storage::Dry, "rice 2/week"},
    {1, "worktop", Counter, 80, 55, 0, 91, Light::Bright, Storage::Dry, "kettle daily"},
    {2, "top shelf", Shelf, 54, 30, 27, 172, Light::Dim, Storage::Dry, "flour (gluten), rice flour weekly"},
    {2, "bottom shelf", Shelf, 54, 30, 30, 128, Light::Fair, Storage::Dry,
     "tea daily, coffee daily, sugar daily, salt daily, olive oil glass daily"},
    {3, "top drawer", Drawer, 52, 45, 12, 76, Light::Fair, Storage::Dry, "cutlery daily, tin opener 3/week"},
    {4, "shelf", Shelf, 54, 50, 42, 40, Light::Dim, Storage::Dry,
     "washing-up liquid daily, bleach, kitchen spray 3/week, dishwasher tablets 4/week"},
    {5, "upper shelf", Shelf, 48, 35, 28, 105, Light::Bright, Storage::Fridge, "milk daily, butter daily"},
    {5, "lower shelf", Shelf, 48, 35, 28, 72, Light::Bright, Storage::Fridge, "eggs 4/week"},
};

void addWhoAndWhy(Case &record) {
    record.client.contact = "By telephone, mornings";
    record.client.referredBy = "Low vision clinic";
    record.client.question =
        "Finds things by opening packs; mixes up the two flours. How can she cook alone again?";
    record.client.whomToAsk = "your occupational therapist at the low vision clinic";
    record.client.media.printSize = Points{26};
    record.household = {.id = record.household.id,
                        .people = "Lives with her husband; a grandchild visits on Sundays",
                        .children = Answer::Yes,
                        .childReach = Length{{110}, "110 cm", Basis::Estimated},
                        .adultWithMemoryLoss = Answer::No,
                        .pets = Answer::No,
                        .whoShops = "Husband",
                        .whoCooks = "Nora",
                        .whoPutsAway = "Nora",
                        .whoReadsPrint = "Husband"};
    record.diet.asked = true;
    record.diet.avoids = {"gluten"};
    record.diet.other = "Type 2 diabetes";
}

void addSafety(Case &record, Date date) {
    using enum SafetyQuestion;
    addAnswers(record,
               {{SmokeAlarm, Answer::Yes, "Tested during the visit"},
                {WayOutClear, Answer::Yes},
                {PhoneReachable, Answer::Yes},
                {UrgentEyeSigns, Answer::No},
                {Implant, Answer::No, "Says none; nobody else in the home"},
                {ReducedProtectiveFeeling, Answer::Yes, "Both hands, since three years"},
                {FragileSkin, Answer::No},
                {Falls, Answer::No},
                {DizzyLookingUpOrBending, Answer::No},
                {WeakOrShakyHands, Answer::No},
                {HandsFreeWalking, Answer::Yes},
                {OneSideNotAttended, Answer::No},
                {HearsSpeech, Answer::Yes},
                {Smells, Answer::Yes},
                {GasHob, Answer::No, "Electric"},
                {OxygenAtHome, Answer::No},
                {MedicinesInKitchen, Answer::No},
                {MemoryDifficulty, Answer::No}},
               date);
}

void addTests(Case &record, Date date) {
    using enum Test;
    addMeasurements(
        record,
        {{DistanceAcuity, Side::Right, "6/60", "6 m", "Own glasses", "", "", "letters in rows"},
         {DistanceAcuity, Side::Left, "6/36", "6 m", "Own glasses", "", "", "letters in rows"},
         {NearAcuity, Side::Both, "N18", "25 cm", "Own glasses, lamp", "", "", "words on a reading card"},
         {ContrastSensitivity, Side::Both, "1.05", "", "Letter chart"},
         {PreferredPrint, Side::Both, "26 point", "30 cm", "At her table, with her lamp"},
         {UsableVision, Side::Both, "yes"},
         {Glare, Side::Both, "Window behind the sink dazzles in the morning"},
         {Monofilament, Side::Right, "3.84", "", "", "", "index"},
         {Monofilament, Side::Left, "3.84", "", "", "", "index"},
         {TwoPointStatic, Side::Right, "8 mm", "", "", "", "index"},
         {ShapeNaming, Side::Right, "4/5"},
         {AcceptedMarks, Side::NotStated, "", "", "", "Left for the second visit, out of time"},
         {Stature, Side::NotStated, "158 cm"},
         {KnuckleHeight, Side::NotStated, "70 cm"},
         {ShoulderHeight, Side::NotStated, "129 cm"},
         {ReachLow, Side::NotStated, "35 cm"},
         {ReachHigh, Side::NotStated, "175 cm"},
         {SafeLift, Side::NotStated, "2.5 kg"}},
        date);
}

} // namespace

Case nora() {
    const Date first = day(2026, 11, 10);
    Case record = startCase("nora", "Nora Winterbee", day(1958, 3, 14));
    addWhoAndWhy(record);
    addSafety(record, first);
    addTests(record, first);
    addKitchen(record, units, places);
    addAppliance(record, "cooker: left front ring: off, 3, 6; oven: off, 180, 200, 220");
    thingNamed(record, "rice flour").allergens = {
        {"gluten", AllergenState::ReadNoneListed, "Husband read the pack, 10 November 2026"}};
    thingNamed(record, "milk").bestBefore = day(2026, 11, 30);
    addVisit(record, first, "Safety, sight, feeling, reach and the kitchen done.",
             "Marker test; practice with the hob.");
    addGoal(
        record,
        "By 8 December Nora takes the right flour from its shelf, unaided, 5 times of 6, in her own light.",
        {"0 or 1 of 6", "2 to 4 of 6", "5 of 6", "6 of 6", "6 of 6, also after new packs came"}, first,
        day(2026, 12, 8));
    addGoal(record, "By 8 December Nora makes a hot drink alone, nothing spilt, on 4 days of 5.",
            {"no day", "1 to 3 days", "4 of 5 days", "5 of 5 days", "5 of 5 days, for two people"}, first,
            day(2026, 12, 8));
    addRatings(record,
               {{0, 0, -2, "1 of 6; opened packs to smell them"}, {1, 0, -1, "2 of 5 by her own count"}});
    return record;
}

} // namespace model::demo
