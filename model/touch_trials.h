#pragma once
#include "model/date.h"
#include "model/id.h"
#include "model/measurement.h"
#include <cstddef>
#include <cstdint>
#include <string>
#include <vector>

/// What is written down of a marker test: enough to work out its result again.
namespace model {

/// What a mark feels like, in just-noticeable steps of a good finger.
struct MarkFeatures {
    double size = 0, height = 0, texture = 0;
    friend bool operator==(const MarkFeatures &, const MarkFeatures &) = default;
};

/// Which mark is given first, and which next. The same one twice is a catch trial.
struct GivenPair {
    std::size_t first = 0, second = 0;
    [[nodiscard]] bool isCatch() const { return first == second; }
    friend bool operator==(const GivenPair &, const GivenPair &) = default;
};

enum class TouchAnswer { Same, Different, Unsure, Repeat };

/// One trial as it was given and answered.
struct TouchTrial {
    GivenPair given;
    TouchAnswer answer{};
    std::string at; // local time, "2026-11-25T14:58:36"
    Side hand = Side::NotStated;
    std::string finger;
    friend bool operator==(const TouchTrial &, const TouchTrial &) = default;
};

/// A mark of the test with the features that it had then.
struct TestedMark {
    std::string key; // of the kit; blankMark for the bare surface
    MarkFeatures features;
    friend bool operator==(const TestedMark &, const TestedMark &) = default;
};
inline constexpr const char *blankMark = "blank";

/// One marker test, from its first trial to its last, over several visits if need be. Its result is worked
/// out from it and never stored.
struct TouchTestRecord {
    Id id;
    std::optional<Date> begun;
    std::vector<TestedMark> marks;
    std::int64_t seed = 1;
    int limit = 160;
    double credible = 0.90;
    Side hand = Side::NotStated;
    std::string finger;
    std::string condition;           // of the fingers: "dry, warm, not tired"
    std::vector<TouchTrial> trials;  // in order; the evidence
    bool stopped = false;            // by client or therapist
    std::vector<TouchTrial> recheck; // of accepted pairs on real containers
    friend bool operator==(const TouchTestRecord &, const TouchTestRecord &) = default;
};

} // namespace model
