#pragma once
#include "model/id.h"
#include <cstddef>
#include <string>

namespace model {

/// A photograph of a place, a unit or a thing of one client's kitchen. Its picture lies in the store,
/// encrypted with everything else, and is read only when it is looked at.
struct Photo {
    Id id;
    Id client;
    Id of;                   // place, unit or thing
    std::string description; // what it shows, in words; never empty
    std::string at;          // when it was taken in, UTC
    friend bool operator==(const Photo &, const Photo &) = default;
};

/// The largest picture that is kept, in bytes: one of 1600 points a side is smaller.
inline constexpr std::size_t largestPhoto = 2'000'000;

} // namespace model
