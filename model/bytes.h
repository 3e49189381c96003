#pragma once
#include <array>
#include <cstddef>
#include <cstdint>
#include <span>
#include <vector>

namespace model {

using Bytes = std::vector<unsigned char>;
using ByteView = std::span<const unsigned char>;
template<std::size_t N> using ByteArray = std::array<unsigned char, N>;

} // namespace model
