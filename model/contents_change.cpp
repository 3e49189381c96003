#include "model/contents_change.h"
#include "model/contents_text.h"
#include "model/contents_words.h"
#include <algorithm>

namespace model {
namespace {

/// "remove rice", "take away the rice", "delete rice": what is to go, or empty.
std::string removal(const std::string &item) {
    for (const char *verb : {"remove ", "delete ", "take away ", "take out ", "no more ", "scratch "}) {
        if (words::lower(item).starts_with(verb))
            return words::trimmed(item.substr(std::string(verb).size()));
    }
    return {};
}

std::string nameIn(const std::string &item) {
    std::string name = item;
    if (words::lower(name).starts_with("the "))
        name.erase(0, 4);
    name.erase(std::remove(name.begin(), name.end(), '"'), name.end());
    return words::comparable(name);
}

/// The thing here of that name; of several, the one with that pack size.
const Thing *standing(const std::vector<Thing> &here, const std::string &name, const std::string &packSize,
                      bool anySize) {
    const auto found = std::find_if(here.begin(), here.end(), [&](const Thing &thing) {
        return words::comparable(thing.name) == name && (anySize || thing.packSize == packSize);
    });
    return found == here.end() ? nullptr : &*found;
}

void removeFrom(ContentsChange &change, const std::vector<Thing> &here, const std::string &item) {
    const std::string gone = removal(item);
    if (const Thing *thing = standing(here, nameIn(gone), "", true); thing != nullptr)
        change.removed.push_back(*thing);
    else
        change.notFound.push_back(gone);
}

/// What the item says beside its name, written into the thing that stands here.
Thing amended(const Thing &thing, const Thing &said) {
    Thing out = thing;
    if (said.count)
        out.count = said.count;
    if (said.usesPerWeek && !said.usual.contains("uses")) {
        out.usesPerWeek = said.usesPerWeek;
        out.usual.erase("uses");
    }
    for (const auto &fact : said.allergens) {
        const bool usual = said.usual.contains("allergen:" + fact.allergen);
        const auto known =
            std::find_if(out.allergens.begin(), out.allergens.end(),
                         [&](const AllergenFact &other) { return other.allergen == fact.allergen; });
        if (usual)
            continue;
        out.usual.erase("allergen:" + fact.allergen);
        if (known == out.allergens.end())
            out.allergens.push_back(fact);
        else if (fact.state == AllergenState::Contains)
            *known = fact;
        else if (!fact.readBy.empty())
            known->readBy = fact.readBy;
    }
    if (!said.note.empty())
        out.note = said.note;
    return out;
}

} // namespace

Result<ContentsChange> changeBy(const std::string &line, const std::vector<Thing> &here,
                                const Lexicon &lexicon) {
    ContentsChange change;
    std::string rest;
    for (const auto &item : words::itemsOf(words::cleaned(line))) {
        if (removal(item).empty())
            rest += (rest.empty() ? "" : "; ") + item;
        else
            removeFrom(change, here, item);
    }
    const bool removes = !change.removed.empty() || !change.notFound.empty();
    if (rest.empty() && removes)
        return change;
    auto items = parseContents(rest, lexicon);
    if (!items)
        return tl::unexpected(items.error());
    for (auto &item : *items) {
        const std::string name = words::comparable(item.thing.name);
        const Thing *thing = item.doubt.empty() ? standing(here, name, item.thing.packSize, false) : nullptr;
        if (thing == nullptr)
            change.added.push_back(std::move(item));
        else
            change.changed.push_back(amended(*thing, item.thing));
    }
    return change;
}

} // namespace model
