#include "tests/model/visit_clients.h"
#include "model/demo_parts.h"
#include "tests/model/fixtures.h"

namespace model::fixtures {

namespace {

using demo::addKitchen;
using demo::UnitRow;
using enum demo::Form;

const std::vector<UnitRow> units{
    {"wall cupboard left of the cooker", UnitKind::WallCupboard, WorkArea::Prep, 80, "white"},
    {"worktop", UnitKind::Worktop, WorkArea::Prep, 120, "grey"},
    {"drawers right of the cooker", UnitKind::DrawerStack, WorkArea::Hob, 60, "white"},
    {"larder", UnitKind::Larder, WorkArea::None, 60, "white"},
    {"base cupboard under the sink", UnitKind::BaseCupboard, WorkArea::Sink, 80, "white", Answer::Yes},
    {"fridge", UnitKind::Fridge, WorkArea::Fridge, 60, "white"},
};

/// What stands in the ten places of the kitchen, in the order of the rows below.
struct Contents {
    const char *wallTop, *wallBottom, *worktop, *drawer, *larderTop, *larderMiddle, *larderBottom, *sink,
        *fridgeUpper, *fridgeLower;
};

void furnish(Case &record, const Contents &of) {
    addKitchen(record, units,
               {{0, "top shelf", Shelf, 74, 30, 28, 178, Light::Fair, Storage::Dry, of.wallTop},
                {0, "bottom shelf", Shelf, 74, 30, 28, 138, Light::Bright, Storage::Dry, of.wallBottom},
                {1, "worktop", Counter, 110, 58, 0, 91, Light::Bright, Storage::Dry, of.worktop},
                {2, "top drawer", Drawer, 52, 45, 14, 78, Light::Fair, Storage::Dry, of.drawer},
                {3, "top shelf", Shelf, 54, 35, 30, 150, Light::Dim, Storage::Dry, of.larderTop},
                {3, "middle shelf", Shelf, 54, 35, 30, 110, Light::Dim, Storage::Dry, of.larderMiddle},
                {3, "bottom shelf", Shelf, 54, 35, 34, 60, Light::Dim, Storage::Dry, of.larderBottom},
                {4, "shelf", Shelf, 74, 50, 45, 35, Light::Dim, Storage::Dry, of.sink},
                {5, "upper shelf", Shelf, 50, 35, 30, 125, Light::Bright, Storage::Fridge, of.fridgeUpper},
                {5, "lower shelf", Shelf, 50, 35, 30, 90, Light::Bright, Storage::Fridge, of.fridgeLower}});
}

const Contents usual{
    .wallTop = "vinegar, soy sauce, ketchup",
    .wallBottom = "tea daily, coffee daily, sugar daily, salt daily, pepper daily",
    .worktop = "kettle daily, toaster daily, bread daily",
    .drawer = "cutlery daily, tin opener 3/week, peeler weekly",
    .larderTop = "2 chopped tomatoes, kidney beans, chickpeas, 2 coconut milk",
    .larderMiddle = "rice 2/week, pasta 2/week, flour weekly, porridge oats daily",
    .larderBottom = "olive oil daily, potatoes 3/week, onions 3/week",
    .sink = "washing-up liquid daily, bleach weekly, kitchen spray 3/week",
    .fridgeUpper = "milk daily, butter daily",
    .fridgeLower = "eggs 3/week, cheddar 3/week",
};

Case inKitchen(Case record, const Contents &contents) {
    record.household.people = "Invented";
    record.client.whomToAsk = "your occupational therapist";
    furnish(record, contents);
    return record;
}

Case withMedicines() {
    Contents contents = usual;
    contents.worktop = "kettle daily, toaster daily, bread daily, painkillers 2/week";
    contents.fridgeUpper = "insulin daily, milk daily";
    contents.fridgeLower = "butter daily, eggs 3/week, cheddar 3/week";
    return inKitchen(variesByDay(), contents);
}

Contents withNuts() {
    Contents contents = usual;
    contents.wallBottom = "tea daily, coffee daily, sugar daily, jam daily, peanut butter 2/week";
    contents.larderMiddle = "rice 2/week, pasta 2/week, muesli daily, almonds weekly, corn flakes daily";
    return contents;
}

} // namespace

std::vector<Case> visitClients() {
    return {inKitchen(tubeField(), usual),
            inKitchen(deafblindReader(), usual),
            withMedicines(),
            inKitchen(leftNotAttended(), usual),
            inKitchen(coupleBraille(), withNuts()),
            inKitchen(coupleLargePrint(), withNuts())};
}

} // namespace model::fixtures
