#pragma once
#include <cstdint>
#include <functional>
#include <vector>

namespace model {

/// The most width that fits if things could be cut up: a flow from things to the places where they may stand.
/// If even that leaves something over, no arrangement exists.
class ShelfFlow {
public:
    /// Widths of things and of places; `mayStand(item, place)`.
    ShelfFlow(const std::vector<std::int64_t> &items, const std::vector<std::int64_t> &places,
              const std::function<bool(int, int)> &mayStand);

    /// Width that finds no place; 0 if everything fits.
    [[nodiscard]] std::int64_t left() const { return m_left; }
    /// The places that all things left over compete for: full, and not to be relieved by moving things
    /// elsewhere.
    [[nodiscard]] const std::vector<int> &shortPlaces() const { return m_shortPlaces; }

private:
    bool push(int item, std::vector<char> &seen); // moves some of what is left of an item along one path

    std::vector<std::vector<int>> m_allowed;         // places per item
    std::vector<std::vector<std::int64_t>> m_stands; // [item][place], width placed
    std::vector<std::int64_t> m_rest, m_room;        // of items not placed, of places not filled
    std::int64_t m_left = 0;
    std::vector<int> m_shortPlaces;
};

} // namespace model
