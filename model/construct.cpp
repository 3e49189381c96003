#include "model/construct.h"
#include <algorithm>
#include <limits>
#include <numeric>
#include <tuple>

namespace model {
namespace {

constexpr int fewPlaces = 3;
constexpr std::int64_t secondChemicalPlace = 2; // mmin per 0.001 cm of its width

std::vector<int> hardestFirst(const SearchTables &tables) {
    std::vector<int> order(tables.items);
    std::iota(order.begin(), order.end(), 0);
    const auto key = [&](int i) {
        return std::tuple(tables.allowedPlaces[i].size() > fewPlaces, tables.klass[i] != 'C',
                          tables.groupOf[i], tables.subOf[i], -tables.width[i], i);
    };
    std::sort(order.begin(), order.end(), [&](int a, int b) { return key(a) < key(b); });
    return order;
}

bool holdsChemical(const SearchState &state, int p) {
    const std::vector<int> &items = state.itemsIn(p);
    return std::any_of(items.begin(), items.end(), [&](int i) { return state.tables().klass[i] == 'C'; });
}

int cheapestPlace(const SearchState &state, int i, bool chemicalsHaveAPlace) {
    const SearchTables &tables = state.tables();
    int best = tables.allowedPlaces[i].front();
    std::int64_t least = std::numeric_limits<std::int64_t>::max();
    for (const int p : tables.allowedPlaces[i]) {
        std::int64_t score = state.standing(i, p).score();
        if (tables.klass[i] == 'C' && chemicalsHaveAPlace && !holdsChemical(state, p))
            score += secondChemicalPlace * tables.runWidth[p];
        if (score < least) {
            least = score;
            best = p;
        }
    }
    return best;
}

} // namespace

void construct(SearchState &state) {
    const SearchTables &tables = state.tables();
    bool chemicalsHaveAPlace = false;
    for (int p = 0; p < tables.places; ++p)
        chemicalsHaveAPlace = chemicalsHaveAPlace || holdsChemical(state, p);
    for (const int i : hardestFirst(tables)) {
        if (state.place(i) >= 0)
            continue;
        state.put(i, cheapestPlace(state, i, chemicalsHaveAPlace));
        chemicalsHaveAPlace = chemicalsHaveAPlace || tables.klass[i] == 'C';
    }
    for (int i = 0; i < tables.items; ++i) // a mark that is not free to choose
        if (tables.allowedCodes[i].size() == 1)
            state.setCode(i, tables.allowedCodes[i].front());
}

} // namespace model
