#include "model/nut_allergy.h"
#include "model/sentence.h"
#include "model/typed.h"
#include <algorithm>
#include <array>

namespace model {

bool eitherNut(const std::string &typed) {
    static constexpr std::array words{"nut", "nut allergy", "nuts allergy", "nut allergies", "all nuts"};
    return std::ranges::find(words, typed::tidy(typed)) != words.end();
}

std::string eitherNutAsked() {
    return Sentence::tr(
        "A nut allergy may be one to peanuts, to tree nuts, or to both: ask about each by name, then write "
        "peanuts, nuts (which stands for tree nuts), or both with a comma between. Kept.");
}

std::string otherNutAsked(const Diet &diet) {
    const bool peanuts = std::ranges::count(diet.avoids, "peanuts") > 0;
    const bool treeNuts = std::ranges::count(diet.avoids, "nuts") > 0;
    if (peanuts == treeNuts)
        return {};
    return treeNuts ? Sentence::tr("Tree nuts are to be avoided, and peanuts are not written down: they are "
                                   "an allergen of their own. Ask about peanuts by name.")
                    : Sentence::tr("Peanuts are to be avoided, and tree nuts are not written down: they are "
                                   "an allergen of their own. Ask about tree nuts by name.");
}

} // namespace model
