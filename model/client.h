#pragma once
#include "model/date.h"
#include "model/id.h"
#include "model/units.h"
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace model {

enum class BrailleGrade { None, Uncontracted, Contracted };

/// Which papers the client leaves with. More than one may be wanted.
struct PaperMedia {
    bool largePrint = true;
    std::optional<Points> printSize; // none: from the findings, else 18 point
    BrailleGrade braille = BrailleGrade::None;
    bool web = true;
    bool plainText = true;
    friend bool operator==(const PaperMedia &, const PaperMedia &) = default;
};

struct Client {
    Id id;
    std::string name;
    std::string code; // own short code; file names use it, never the name
    std::optional<Date> born;
    std::string contact;
    std::string referredBy;
    std::string question;           // what the referral asks
    std::string language = "en-GB"; // BCP 47
    PaperMedia media;
    std::string whomToAsk; // shown on every paper: whom to ask and how
    bool readsBraille = false;
    bool hasTagReader = false;  // owns a reader for spoken tags
    bool hasCodeReader = false; // somebody here reads square codes with a phone and asked for them
    bool invented = false;      // of the practice caseload
    bool archived = false;
    friend bool operator==(const Client &, const Client &) = default;
};

enum class Answer { NotAsked, Yes, No };

/// A question whose answer changes the plan. Not asked counts as the more cautious answer.
enum class SafetyQuestion {
    Implant,
    HearsSpeech,
    Smells,
    MedicinesInKitchen,
    SmokeAlarm,
    WayOutClear,
    PhoneReachable,
    GasHob,
    OneSideNotAttended,
    DizzyLookingUpOrBending,
    HandsFreeWalking,
    LatexAllergy,
    AdhesiveReaction,
    ReducedProtectiveFeeling,
    FragileSkin,
    Falls,
    WeakOrShakyHands,
    MemoryDifficulty,
    Seizures,
    SwallowingDifficulty,
    OxygenAtHome,
    UrgentEyeSigns,
};

/// The words of one safety question, and which answer is the cautious one.
struct SafetyQuestionText {
    SafetyQuestion question{};
    std::string key;     // stable name in the store
    std::string asked;   // "Any implant: heart, brain, nerve, ear, shunt or pump?"
    std::string follows; // what the cautious answer changes, one sentence
    Answer cautious = Answer::Yes;
};

/// All questions in the order in which they are asked.
[[nodiscard]] const std::vector<SafetyQuestionText> &safetyQuestions();
[[nodiscard]] const SafetyQuestionText &textOf(SafetyQuestion question);

struct SafetyAnswer {
    Answer answer = Answer::NotAsked;
    std::string note; // type, side, who said so
    std::optional<Date> asked;
    friend bool operator==(const SafetyAnswer &, const SafetyAnswer &) = default;
};

struct SafetyFacts {
    Id id;
    std::map<SafetyQuestion, SafetyAnswer> answers;
    [[nodiscard]] Answer answer(SafetyQuestion question) const;
    /// True if the plan must take the cautious side: so answered, or not asked.
    [[nodiscard]] bool cautious(SafetyQuestion question) const;
    friend bool operator==(const SafetyFacts &, const SafetyFacts &) = default;
};

struct Household {
    Id id;
    std::string people;                 // who lives here, in words
    Answer children = Answer::NotAsked; // not asked counts as yes
    std::optional<Length> childReach;
    Answer adultWithMemoryLoss = Answer::NotAsked;
    Answer pets = Answer::NotAsked;
    std::string whoShops;
    std::string whoCooks;
    std::string whoPutsAway;
    std::string whoReadsPrint;
    bool sharingConsent = false; // the household sheet may name the client and health facts
    friend bool operator==(const Household &, const Household &) = default;
};

struct Diet {
    Id id;
    bool asked = false;              // false: "not asked", never "none"
    std::vector<std::string> avoids; // keys of allergens(), e.g. "gluten"
    std::string other;               // other diet in words: diabetes, low salt, thickened ...
    std::vector<std::string> facts;  // that the client wants to have marked: "low salt"
    friend bool operator==(const Diet &, const Diet &) = default;
};

struct AllergenName {
    std::string key;
    std::string words;
};
/// The 14 allergens of Regulation (EU) No 1169/2011, Annex II.
[[nodiscard]] const std::vector<AllergenName> &allergens();

} // namespace model
