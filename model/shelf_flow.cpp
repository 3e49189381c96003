#include "model/shelf_flow.h"
#include <algorithm>
#include <numeric>

namespace model {

ShelfFlow::ShelfFlow(const std::vector<std::int64_t> &items, const std::vector<std::int64_t> &places,
                     const std::function<bool(int, int)> &mayStand)
    : m_allowed(items.size()), m_stands(items.size(), std::vector<std::int64_t>(places.size(), 0)),
      m_rest(items), m_room(places) {
    for (std::size_t i = 0; i < items.size(); ++i)
        for (std::size_t p = 0; p < places.size(); ++p)
            if (mayStand(static_cast<int>(i), static_cast<int>(p)))
                m_allowed[i].push_back(static_cast<int>(p));
    std::vector<char> isShort(places.size(), 0);
    for (std::size_t i = 0; i < items.size(); ++i) {
        std::vector<char> seen(places.size(), 0);
        while (m_rest[i] > 0 && push(static_cast<int>(i), seen))
            std::fill(seen.begin(), seen.end(), 0);
        if (m_rest[i] > 0) // the places searched in vain stay full whatever comes later
            for (std::size_t p = 0; p < places.size(); ++p)
                isShort[p] |= seen[p];
    }
    m_left = std::accumulate(m_rest.begin(), m_rest.end(), std::int64_t{0});
    for (std::size_t p = 0; p < places.size(); ++p)
        if (isShort[p] != 0)
            m_shortPlaces.push_back(static_cast<int>(p));
}

/// Breadth first: item -> a place; if it is full, a thing there -> another place, and so on to a place with
/// room.
bool ShelfFlow::push(int item, std::vector<char> &seen) {
    struct Step {
        int place, mover, before; // `mover` comes here, from the place of step `before`
    };
    std::vector<Step> steps;
    const auto reach = [&](int mover, int before) {
        for (const int p : m_allowed[mover])
            if (seen[p] == 0) {
                seen[p] = 1;
                steps.push_back({p, mover, before});
            }
    };
    reach(item, -1);
    for (std::size_t k = 0; k < steps.size(); ++k) {
        const int p = steps[k].place;
        if (m_room[p] == 0) {
            for (std::size_t j = 0; j < m_stands.size(); ++j)
                if (m_stands[j][p] > 0)
                    reach(static_cast<int>(j), static_cast<int>(k));
            continue;
        }
        std::int64_t amount = std::min(m_rest[item], m_room[p]);
        for (int s = static_cast<int>(k); steps[s].before >= 0; s = steps[s].before)
            amount = std::min(amount, m_stands[steps[s].mover][steps[steps[s].before].place]);
        m_room[p] -= amount;
        m_rest[item] -= amount;
        for (int s = static_cast<int>(k); s >= 0; s = steps[s].before) {
            m_stands[steps[s].mover][steps[s].place] += amount;
            if (steps[s].before >= 0)
                m_stands[steps[s].mover][steps[steps[s].before].place] -= amount;
        }
        return true;
    }
    return false;
}

} // namespace model
