#include "model/client.h"
#include "model/contents.h"
#include "model/contents_facts.h"
#include "model/keeping_times.h"
#include <algorithm>
#include <gmock/gmock.h>
#include <map>
#include <set>

namespace {

using namespace model;

/// Reasons why a row is not plausible; empty: it is.
using Reasons = std::vector<std::string>;

bool says(const FromPurchase &bought, const KeepingSpan &opened) {
    return bought.span.known() || !bought.span.word.empty() || opened.known() || !opened.word.empty();
}

void checkSizes(const CatalogueThing &entry, Reasons &out) {
    const Thing &thing = entry.usual;
    for (const auto *length : {&thing.width, &thing.depth, &thing.height}) {
        const double cm = *length ? (*length)->value.value : 0;
        if (cm < 0.5 || cm > 60)
            out.emplace_back("a side of less than 5 mm or more than 60 cm");
        else if ((*length)->basis != Basis::Usual)
            out.emplace_back("a size that is not marked usual");
    }
    const double kg = thing.weight ? thing.weight->value : 0;
    if (kg < 0.005 || kg > 15)
        out.emplace_back("lighter than 5 g or heavier than 15 kg");
    const double litres =
        thing.width->value.value * thing.depth->value.value * thing.height->value.value / 1000;
    // Common kitchen packs weigh between 15 g and 4 kg a litre of the box around them; metal tools are
    // denser.
    const double most = thing.shape == Shape::Tool || thing.surface == Surface::Metal ? 8 : 4;
    if (kg / litres < 0.015 || kg / litres > most)
        out.emplace_back("weight and size do not go together: " + std::to_string(kg / litres) +
                         " kg a litre");
    const auto amount = words::amountOf(entry.pack);
    // The thing weighs what is in it and its pack, a tub of ice cream or whipped cream less.
    if (amount && (kg < *amount / 1000 * 0.45 || kg > *amount / 1000 * 3.5 + 0.1))
        out.emplace_back("the weight is not that of its pack");
    if (amount && (entry.least <= 0 || entry.least > *amount || entry.most < *amount))
        out.emplace_back("the usual pack is not among the sizes on sale");
}

void checkUse(const CatalogueThing &entry, Reasons &out) {
    const Thing &thing = entry.usual;
    if (!thing.usesPerWeek || *thing.usesPerWeek <= 0 || *thing.usesPerWeek > 50)
        out.emplace_back("no use a week between 0 and 50");
    if (!thing.refillsPerWeek || *thing.refillsPerWeek < 0 || *thing.refillsPerWeek > *thing.usesPerWeek)
        out.emplace_back("refilled oftener than used");
    if (thing.sound < 0 || thing.sound > 1)
        out.emplace_back("sound outside 0 to 1");
    if (thing.group.empty() || thing.sub.empty() || thing.area == WorkArea::None)
        out.emplace_back("no group, sub-category or place of use");
    for (const char *fact : {"group", "sub", "shape", "surface", "width", "depth", "height", "weight", "uses",
                             "refills", "sound", "storage", "class", "hazards", "dateKind", "area"}) {
        if (!thing.usual.contains(fact))
            out.push_back(std::string("not marked usual: ") + fact);
    }
}

void checkFood(const CatalogueThing &entry, Reasons &out) {
    const Thing &thing = entry.usual;
    const bool food = thing.klass == Klass::Food;
    if (!food && (thing.keepingRow || thing.dateKind == DateKind::UseBy) && thing.group != "medicines")
        out.emplace_back("no food, and keeps like one");
    if (thing.klass == Klass::Chemical && (thing.group != "cleaning" || thing.storage != Storage::Dry))
        out.emplace_back("a chemical in another group or in the cold");
    if (thing.klass == Klass::Chemical && !thing.hazard && thing.sub != "hand washing" &&
        thing.sub != "dish washing")
        out.emplace_back("a chemical that is no hazard");
    if (thing.klass != Klass::Food && thing.group == "medicines" && !(thing.medicine || thing.hazard))
        out.emplace_back("a medicine not marked so");
    if (thing.medicine && thing.group != "medicines")
        out.emplace_back("a medicine in another group");
    if (thing.hotUse && food)
        out.emplace_back("food that is held hot");
    if (!thing.keepingRow)
        return;
    const auto *time = keepingTime(*thing.keepingRow);
    if (time == nullptr) {
        out.emplace_back("the row of keeping times is not there");
        return;
    }
    const bool agrees = thing.storage == Storage::Dry      ? says(time->pantry, time->pantryOpened)
                        : thing.storage == Storage::Fridge ? says(time->fridge, time->fridgeOpened)
                                                           : says(time->freezer, {});
    if (!agrees)
        out.push_back("keeping times of " + time->name + " " + time->subtitle + " have none for its storage");
}

void checkAllergens(const CatalogueThing &entry, Reasons &out) {
    std::set<std::string> keys;
    for (const auto &name : allergens())
        keys.insert(name.key);
    std::set<std::string> seen;
    for (const auto &fact : entry.usual.allergens) {
        if (!keys.contains(fact.allergen))
            out.push_back("not one of the 14: " + fact.allergen);
        if (!seen.insert(fact.allergen).second)
            out.push_back("told twice: " + fact.allergen);
        if (fact.state != AllergenState::Contains && fact.state != AllergenState::MayContain)
            out.push_back("cleared, which only a reader of the pack can: " + fact.allergen);
        if (!entry.usual.usual.contains("allergen:" + fact.allergen))
            out.push_back("not marked usual: " + fact.allergen);
    }
    // An allergen in the name is in the thing (Regulation (EU) No 1169/2011, Annex II, names them).
    static const std::vector<std::pair<std::string, std::string>> named{
        {"milk chocolate", "milk"}, {"peanut", "peanuts"},    {"almond", "nuts"},   {"walnut", "nuts"},
        {"soya", "soya"},           {"prawn", "crustaceans"}, {"celery", "celery"}, {"mussel", "molluscs"},
        {"wheat", "gluten"},        {"egg noodle", "eggs"},   {"cheddar", "milk"},  {"butter dish", ""}};
    for (const auto &[word, key] : named) {
        const bool food = entry.usual.klass == Klass::Food;
        if (food && !key.empty() && entry.name.find(word) != std::string::npos && !seen.contains(key))
            out.push_back("its name says " + key + ", its allergens do not");
    }
}

TEST(CatalogueRows, areCompleteAndPlausible) {
    for (const auto &entry : catalogue()) {
        Reasons reasons;
        checkSizes(entry, reasons);
        checkUse(entry, reasons);
        checkFood(entry, reasons);
        checkAllergens(entry, reasons);
        for (const auto &reason : reasons)
            ADD_FAILURE() << entry.name << ": " << reason;
    }
}

TEST(CatalogueRows, areFourHundredOfEveryKind) {
    EXPECT_GE(catalogue().size(), 400U);
    std::map<std::string, int> groups;
    for (const auto &entry : catalogue())
        ++groups[entry.usual.group];
    for (const char *group :
         {"tins",      "baking", "grains",     "fresh",       "frozen",     "dairy",     "meat and fish",
          "seasoning", "sauces", "hot drinks", "cold drinks", "snacks",     "breakfast", "cleaning",
          "household", "pans",   "tableware",  "tools",       "appliances", "medicines"})
        EXPECT_GE(groups[group], 5) << group;
    const auto parts = std::count_if(catalogue().begin(), catalogue().end(), [](const CatalogueThing &entry) {
        return entry.usual.sub == "appliance parts";
    });
    EXPECT_GE(parts, 5);
}

TEST(CatalogueRows, haveNamesOfTheirOwn) {
    std::map<std::string, std::string> owners;
    for (const auto &entry : catalogue()) {
        std::vector<std::string> names = entry.others;
        names.push_back(entry.name);
        for (const auto &name : names) {
            const auto *found = findInCatalogue(name);
            ASSERT_NE(found, nullptr) << name;
            EXPECT_EQ(found->id, entry.id) << name;
        }
    }
}

TEST(CatalogueRows, foodThatGoesOffHasADateAndMostHasAKeepingTime) {
    int food = 0;
    int linked = 0;
    for (const auto &entry : catalogue()) {
        if (entry.usual.klass != Klass::Food)
            continue;
        ++food;
        linked += entry.usual.keepingRow ? 1 : 0;
        const bool raw = entry.usual.sub == "raw meat" || entry.usual.sub == "raw fish";
        EXPECT_TRUE(!raw || entry.usual.dateKind == DateKind::UseBy) << entry.name;
        EXPECT_TRUE(!raw || entry.usual.storage == Storage::Fridge) << entry.name;
    }
    EXPECT_GE(linked * 100, food * 85) << linked << " of " << food;
}

} // namespace
