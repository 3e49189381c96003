#include "tests/model/fixtures.h"

namespace model::fixtures {

namespace {

void answer(Case &record, SafetyQuestion question, Answer given, const std::string &note = {}) {
    record.safety.answers[question] = {given, note, std::nullopt};
}

Measurement onDay(Measurement measurement, int day) {
    measurement.date = Date{std::chrono::year{2026}, std::chrono::month{3}, std::chrono::day(day)};
    return measurement;
}

Measurement withGlasses(Measurement measurement) {
    measurement.withGlasses = true;
    return measurement;
}

} // namespace

Measurement result(Test test, const std::string &typed, Side side) {
    Measurement measurement;
    measurement.id = newId();
    measurement.test = test;
    measurement.typed = typed;
    measurement.side = side;
    return measurement;
}

Case unworried(const std::string &name, const std::string &code) {
    Case record = newCase(name, code);
    record.client.invented = true;
    for (const SafetyQuestionText &text : safetyQuestions())
        answer(record, text.question, text.cautious == Answer::Yes ? Answer::No : Answer::Yes);
    record.household.children = Answer::No;
    record.household.adultWithMemoryLoss = Answer::No;
    record.household.pets = Answer::No;
    record.diet.asked = true;
    return record;
}

Case tubeField() {
    Case record = unworried("Invented Tube", "I1");
    record.measurements = {withGlasses(result(Test::DistanceAcuity, "6/9", Side::Right)),
                           withGlasses(result(Test::DistanceAcuity, "6/12", Side::Left)),
                           result(Test::FieldExtent, "8 degrees"), result(Test::UsableVision, "yes")};
    return record;
}

Case deafblindReader() {
    Case record = unworried("Invented Reader", "I2");
    record.client.readsBraille = true;
    record.client.media.braille = BrailleGrade::Contracted;
    record.client.contact = "By tactile interpreter; consent given by hand signing, read back.";
    answer(record, SafetyQuestion::Implant, Answer::Yes, "cochlear, right");
    answer(record, SafetyQuestion::HearsSpeech, Answer::No);
    record.measurements = {result(Test::DistanceAcuity, "NLP", Side::Right),
                           result(Test::DistanceAcuity, "NLP", Side::Left),
                           result(Test::TwoPointStatic, "2.5", Side::Right)};
    return record;
}

Case variesByDay() {
    Case record = unworried("Invented Varying", "I3");
    answer(record, SafetyQuestion::MedicinesInKitchen, Answer::Yes,
           "low-sugar treatment, drawer by the door");
    record.diet.other = "diabetes";
    record.measurements = {onDay(result(Test::DistanceAcuity, "6/18", Side::Both), 3),
                           onDay(result(Test::DistanceAcuity, "6/48", Side::Both), 9),
                           onDay(result(Test::DistanceAcuity, "6/24", Side::Both), 16),
                           result(Test::Monofilament, "4.31", Side::Right),
                           result(Test::AcceptedMarks, "none")};
    return record;
}

Case leftNotAttended() {
    Case record = unworried("Invented Stroke", "I4");
    answer(record, SafetyQuestion::OneSideNotAttended, Answer::Yes, "left; turns to a cue");
    answer(record, SafetyQuestion::WeakOrShakyHands, Answer::Yes, "left arm");
    record.measurements = {result(Test::DistanceAcuity, "6/9", Side::Both), result(Test::Stature, "165 cm")};
    return record;
}

Case coupleBraille() {
    Case record = unworried("Invented Partner One", "I5");
    record.client.readsBraille = true;
    record.client.media.braille = BrailleGrade::Uncontracted;
    record.diet.avoids = {"nuts"};
    record.household.adultWithMemoryLoss = Answer::Yes;
    record.measurements = {result(Test::DistanceAcuity, "LP", Side::Both)};
    return record;
}

Case coupleLargePrint() {
    Case record = unworried("Invented Partner Two", "I6");
    answer(record, SafetyQuestion::MemoryDifficulty, Answer::Yes, "dementia");
    Measurement trial = result(Test::PreferredPrint, "28 point");
    trial.distanceTyped = "35 cm";
    record.measurements = {result(Test::DistanceAcuity, "6/36", Side::Both), trial};
    return record;
}

} // namespace model::fixtures
