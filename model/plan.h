#pragma once
#include "model/date.h"
#include "model/id.h"
#include "model/plan_weights.h"
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace model {

/// Minutes of the client's time a week, in whole thousandths. Never a sum of doubles.
using MilliMinutes = std::int64_t;

/// The terms of the objective, in mmin a week.
struct Terms {
    MilliMinutes unary = 0; // reach, walk, dark, move
    MilliMinutes bay = 0;   // group spread
    MilliMinutes place = 0; // sub-category spread
    MilliMinutes type = 0;  // learning
    MilliMinutes mark = 0;  // marking
    MilliMinutes risk = 0;  // wrong picks
    [[nodiscard]] MilliMinutes total() const { return unary + bay + place + type + mark + risk; }
    friend bool operator==(const Terms &, const Terms &) = default;
};

/// Where one thing stands and how it is marked.
struct PlanLine {
    Id thing;
    Id place;
    int order = 0;                     // left to right on the shelf, from 0
    std::string marker;                // key of the marker kit; empty: no mark
    std::vector<std::string> meanings; // keys of meanings.h: what the meaning marks put on besides say
    std::string labelText;             // text in the client's medium, for braille, print and tags
    friend bool operator==(const PlanLine &, const PlanLine &) = default;
};

/// The therapist's own decision about one line; it outlives every new plan until she takes it back. Each of
/// place, mark and wording is decided only where it is set.
struct Overrule {
    Id id;
    Id thing;
    Id place;
    bool forbid = false; // not there, instead of there
    std::string reason;
    std::optional<Date> date;
    std::optional<std::string> marker = std::nullopt; // key of the marker kit; empty: no mark
    std::string wording = {};                         // of the label; empty: as worked out
    friend bool operator==(const Overrule &, const Overrule &) = default;
};

/// What this client's plan weighs, and how many kinds of marks it may have.
struct PlanWishes {
    Id id;
    PlanWeights weights;
    std::optional<int> mostKinds; // to learn, meaning marks among them; none: by the answer on memory
    friend bool operator==(const PlanWishes &, const PlanWishes &) = default;
};

struct MeaningMark {
    std::string meaning; // key of meanings.h: "hazard"
    std::string marker;  // key of the marker kit
    friend bool operator==(const MeaningMark &, const MeaningMark &) = default;
};

/// What is short when no plan exists.
struct Shortage {
    std::string rule;
    std::optional<double> needCm, haveCm;
    std::vector<Id> things;
    std::vector<Id> places;
    std::string sentence;
    friend bool operator==(const Shortage &, const Shortage &) = default;
};

struct Plan {
    Id id;
    std::optional<Date> made;
    std::vector<PlanLine> lines;
    std::vector<MeaningMark> meaningMarks;
    std::vector<Shortage> shortages; // not empty: no legal plan; lines is empty then
    Terms terms;
    friend bool operator==(const Plan &, const Plan &) = default;
};

} // namespace model
