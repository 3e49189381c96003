#include "model/demo.h"
#include "model/demo_parts.h"
#include "model/touch_test_result.h"

/// All in this file is invented: the person, the home, every figure.
namespace model::demo {
namespace {

using enum Form;

const std::vector<UnitRow> units{
    {"locked cabinet by the door", UnitKind::WallCupboard, WorkArea::Entry, 40, "white", Answer::Yes},
    {"larder", UnitKind::Larder, WorkArea::None, 60, "cream"},
    {"worktop by the cooker", UnitKind::Worktop, WorkArea::Prep, 100, "dark green", Answer::No, true},
    {"wall cupboard over the worktop", UnitKind::WallCupboard, WorkArea::None, 80, "cream"},
    {"drawers by the cooker", UnitKind::DrawerStack, WorkArea::Hob, 60, "cream"},
    {"base cupboard under the sink", UnitKind::BaseCupboard, WorkArea::Sink, 80, "cream", Answer::Yes},
    {"fridge", UnitKind::Fridge, WorkArea::Fridge, 60, "white"},
};

const std::vector<PlaceRow> places{
    {0, "shelf", Shelf, 36, 22, 28, 112, Light::Fair, Storage::Dry, "tablets daily, sharp knives weekly"},
    {1, "top shelf", Shelf, 54, 35, 28, 148, Light::Dim, Storage::Dry,
     "2 chopped tomatoes, 3 soup, baked beans, rice pudding, peach slices"},
    {1, "second shelf", Shelf, 54, 35, 28, 117, Light::Fair, Storage::Dry,
     "tea daily, coffee daily, sweetener daily, marmalade daily, jam"},
    {1, "third shelf", Shelf, 54, 35, 30, 86, Light::Fair, Storage::Dry,
     "porridge oats daily, corn flakes, biscuits daily"},
    {1, "bottom shelf", Shelf, 54, 35, 30, 56, Light::Dim, Storage::Dry, "flour, sugar weekly, rice, pasta"},
    {2, "worktop", Counter, 94, 55, 0, 90, Light::Bright, Storage::Dry,
     "kettle daily, toaster daily, bread daily, liquid level indicator daily, talking timer daily"},
    {3, "top shelf", Shelf, 74, 30, 29, 166, Light::Dim, Storage::Dry, "olive oil weekly, vinegar"},
    {3, "bottom shelf", Shelf, 74, 30, 26, 138, Light::Fair, Storage::Dry,
     "mugs daily, cereal bowls daily, side plates daily"},
    {4, "top drawer", Drawer, 54, 45, 12, 76, Light::Fair, Storage::Dry,
     "cutlery daily, tin opener 2/week, scissors"},
    {4, "deep drawer", Drawer, 54, 45, 24, 50, Light::Dim, Storage::Dry,
     "small saucepan 3/week, tea towels 3/week"},
    {5, "shelf", Shelf, 74, 50, 45, 42, Light::Dim, Storage::Dry,
     "washing-up liquid daily, bleach, kitchen spray weekly"},
    {6, "upper shelf", Shelf, 50, 35, 27, 108, Light::Bright, Storage::Fridge, "milk daily, butter daily"},
    {6, "lower shelf", Shelf, 50, 35, 27, 76, Light::Bright, Storage::Fridge, "plain yoghurt"},
};

void addWhoAndWhy(Case &record) {
    record.client.contact = "Through her daughter";
    record.client.referredBy = "Family doctor";
    record.client.question = "Wants to make her own breakfast and tea while the family is at work.";
    record.client.whomToAsk = "your occupational therapist, or your daughter";
    record.client.media.printSize = Points{28};
    record.household = {.id = record.household.id,
                        .people = "Lives with her daughter, son-in-law and grandson, 4",
                        .children = Answer::Yes,
                        .childReach = Length{{105}, "105 cm", Basis::Measured},
                        .adultWithMemoryLoss = Answer::No,
                        .pets = Answer::No,
                        .whoShops = "Daughter",
                        .whoCooks = "Daughter; Tilda breakfast and tea",
                        .whoPutsAway = "Daughter, told by Tilda",
                        .whoReadsPrint = "Daughter and son-in-law",
                        .sharingConsent = true};
    record.diet.asked = true;
    record.diet.avoids = {"celery"};
    record.diet.other = "Low sugar";
    record.diet.facts = {"no sugar"};
}

void addSafety(Case &record, Date date) {
    using enum SafetyQuestion;
    addAnswers(record,
               {{SmokeAlarm, Answer::Yes, "Tested by the daughter"},
                {WayOutClear, Answer::Yes},
                {PhoneReachable, Answer::Yes, "Worn round the neck"},
                {UrgentEyeSigns, Answer::No},
                {Implant, Answer::No, "Therapist and household too"},
                {LatexAllergy, Answer::Yes, "Rash from gloves, told by the doctor"},
                {AdhesiveReaction, Answer::No},
                {ReducedProtectiveFeeling, Answer::No},
                {FragileSkin, Answer::Yes, "Takes a blood thinner"},
                {Falls, Answer::Yes, "One fall in spring"},
                {DizzyLookingUpOrBending, Answer::Yes, "Looking up"},
                {WeakOrShakyHands, Answer::Yes, "Tremor of both hands"},
                {HandsFreeWalking, Answer::No, "Wheeled walker"},
                {OneSideNotAttended, Answer::No},
                {HearsSpeech, Answer::Yes, "With two hearing aids"},
                {Smells, Answer::No},
                {GasHob, Answer::No, "Electric"},
                {OxygenAtHome, Answer::No},
                {MedicinesInKitchen, Answer::Yes, "Own tablets, locked cabinet; the daughter has the key"},
                {MemoryDifficulty, Answer::No},
                {Seizures, Answer::No},
                {SwallowingDifficulty, Answer::No}},
               date);
}

void addTests(Case &record, Date date) {
    using enum Test;
    addMeasurements(
        record,
        {{DistanceAcuity, Side::Right, "6/95", "3 m", "Own glasses", "", "", "letters in rows"},
         {DistanceAcuity, Side::Left, "6/60", "3 m", "Own glasses", "", "", "letters in rows"},
         {NearAcuity, Side::Both, "N20", "25 cm", "Own glasses, lamp", "", "", "words on a reading card"},
         {ContrastSensitivity, Side::Both, "0.9", "", "Letter chart"},
         {FieldLoss, Side::NotStated, "centre", "", "As the eye clinic wrote"},
         {PreferredPrint, Side::Both, "28 point", "30 cm", "At her table, with her lamp"},
         {ReadingTrial, Side::Both,
          "1.3: 7 s, 0 wrong; 1.2: 6.8 s, 0 wrong; 1.1: 7.1 s, 0 wrong; 1.0: 8 s, 0 wrong; 0.9: 15 s, 2 "
          "wrong; 0.8: not read",
          "30 cm", "sheet A"},
         {Adaptation, Side::NotStated, "About a minute from the bright hall to the kitchen"},
         {UsableVision, Side::Both, "yes"},
         {Monofilament, Side::Right, "3.22", "", "", "", "index"},
         {TwoPointStatic, Side::Right, "5 mm", "", "", "", "index"},
         {AcceptedMarks, Side::NotStated, "large-bump, ribbed-band, cord, bump-row, ridge, large-print", "",
          "Marker test at the table, second visit"},
         {Stature, Side::NotStated, "", "", "", "Does not stand without her walker"},
         {KnuckleHeight, Side::NotStated, "66 cm"},
         {ShoulderHeight, Side::NotStated, "121 cm"},
         {ReachLow, Side::NotStated, "40 cm"},
         {ReachHigh, Side::NotStated, "150 cm"},
         {SafeLift, Side::NotStated, "1.7 kg"}},
        date);
}

/// A first try with four marks, which she told apart; the whole test of the next visit stands before it.
void addMarkerTest(Case &record, Date date) {
    TouchTestRecord test =
        newTouchTest(record, {"large-bump", "ribbed-band", "cord", "bump-row"}, false, 1808);
    test.id = {"demo-tilda-touch-test-1"};
    test.begun = date;
    test.hand = Side::Right;
    test.finger = "index";
    test.condition = "dry, warm";
    MarkerTest running(setupOf(test));
    while (const auto next = running.state().next) {
        const TouchAnswer answer = next->isCatch() ? TouchAnswer::Same : TouchAnswer::Different;
        running.add({*next, answer});
        test.trials.push_back({*next, answer, isoDate(date) + "T10:30:00", test.hand, test.finger});
    }
    record.touchTests.push_back(std::move(test));
}

void addHistory(Case &record) {
    addVisit(record, day(2026, 8, 18), "Assessment; goals written with Tilda and her daughter.",
             "Marker test.");
    addVisit(record, day(2026, 9, 8), "Marker test; larder and drawers laid out and marked.",
             "Fridge; label print.");
    addVisit(record, day(2026, 10, 6), "Fridge laid out; practice with the level indicator.",
             "Print on the tins.");
    addVisit(record, day(2026, 11, 10), "Audit: nothing drifted. Labels in 28 point on the tins.",
             "The grandson moves the scissors: agree a place with the family.");
    const Date agreed = day(2026, 8, 18);
    const Date review = day(2026, 12, 1);
    addGoal(record, "By 1 December Tilda takes the right tin out of 6 within 30 seconds each, unaided.",
            {"0 to 2 of 6", "3 or 4 of 6", "5 of 6", "6 of 6", "6 of 6, after the tins were mixed"}, agreed,
            review);
    addGoal(record, "By 1 December Tilda makes her morning tea alone, nothing spilt, on 5 days of 7.",
            {"no day", "1 to 4 days", "5 days", "6 or 7 days", "7 days, and for her daughter too"}, agreed,
            review);
    addGoal(record, "By 1 December Tilda reads the label of each tin on the larder shelf with her lamp.",
            {"none", "up to half", "all but one", "all", "all, without the lamp"}, agreed, review);
    addRatings(record, {{0, 0, -2, "1 of 6; guessed by the shelf"},
                        {1, 0, -1, "1 day of 7, told by her daughter"},
                        {2, 0, -2, "none at 12 point"},
                        {0, 1, -1, "3 of 6 with the bands on"},
                        {1, 1, -1, "3 days of 7"},
                        {2, 1, -2, "none; labels not yet made"},
                        {0, 2, 0, "5 of 6, mean 21 seconds"},
                        {1, 2, 0, "5 days of 7, level indicator used"},
                        {2, 2, -1, "2 of 5 at 24 point"},
                        {0, 3, 1, "6 of 6, mean 16 seconds"},
                        {1, 3, 0, "5 days of 7"},
                        {2, 3, 0, "4 of 5 at 28 point with her lamp"}});
}

} // namespace

Case tilda() {
    Case record = startCase("tilda", "Tilda Fernbrook", day(1941, 6, 21));
    addWhoAndWhy(record);
    addSafety(record, day(2026, 11, 10));
    addTests(record, day(2026, 9, 8));
    addMarkerTest(record, day(2026, 8, 18));
    addKitchen(record, units, places);
    thingNamed(record, "tablets").keep = 3;
    addAppliance(record, "microwave: stop, 30 seconds, 1 minute");
    thingNamed(record, "sweetener").dietFacts = {"no sugar"};
    thingNamed(record, "soup").allergens = {{"celery", AllergenState::MayContain, ""}};
    thingNamed(record, "milk").bestBefore = day(2026, 11, 28);
    thingNamed(record, "rice pudding").bestBefore = day(2027, 4, 30);
    addHistory(record);
    return record;
}

} // namespace model::demo
