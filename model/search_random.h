#pragma once
#include <array>
#include <cmath>
#include <cstdint>

namespace model {

/// Integers that are the same on every machine (SplitMix64: Steele, Lea, Flood, "Fast splittable pseudorandom
/// number generators", OOPSLA 2014).
class SearchRandom {
public:
    explicit SearchRandom(std::uint64_t seed) : m_state(seed) {}
    std::uint32_t next() {
        std::uint64_t z = (m_state += 0x9e3779b97f4a7c15U);
        z = (z ^ (z >> 30U)) * 0xbf58476d1ce4e5b9U;
        z = (z ^ (z >> 27U)) * 0x94d049bb133111ebU;
        return static_cast<std::uint32_t>((z ^ (z >> 31U)) >> 32U);
    }
    /// 0 to count - 1; count over 0.
    int below(int count) {
        return static_cast<int>((static_cast<std::uint64_t>(next()) * static_cast<std::uint64_t>(count)) >>
                                32U);
    }
    template<class List> const auto &oneOf(const List &list) {
        return list[below(static_cast<int>(list.size()))];
    }

private:
    std::uint64_t m_state;
};

/// How much worse a step may be at a temperature: temperature * -ln(u), from a table of whole numbers.
class Tolerance {
public:
    Tolerance() {
        for (int k = 0; k < size; ++k)
            m_table[k] = std::llround(-std::log((k + 0.5) / size) * scale);
    }
    /// In mmin.
    void setTemperature(double temperature) { m_temperature = std::llround(temperature * scale); }
    std::int64_t draw(SearchRandom &random) const {
        return m_temperature * m_table[random.next() >> (32 - bits)] / (scale * scale);
    }

private:
    static constexpr int bits = 12;
    static constexpr int size = 1 << bits;
    static constexpr std::int64_t scale = 1 << 12;
    std::array<std::int64_t, size> m_table{};
    std::int64_t m_temperature = 0;
};

} // namespace model
