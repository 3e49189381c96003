#include "model/shared_kitchen.h"
#include <sstream>

namespace model {
namespace {

std::size_t fullness(const Case &record) {
    return record.places.size() + record.things.size();
}

} // namespace

std::vector<SharedKitchen> sharedKitchensFrom(const std::string &text) {
    std::vector<SharedKitchen> all;
    std::istringstream lines(text);
    for (std::string line; std::getline(lines, line);) {
        std::istringstream words(line);
        SharedKitchen one;
        std::string more;
        if (words >> one.keeper.text >> one.partner.text && !(words >> more) && one.keeper != one.partner)
            all.push_back(std::move(one));
    }
    return all;
}

std::string sharedKitchensText(const std::vector<SharedKitchen> &all) {
    std::string text;
    for (const SharedKitchen &one : all)
        text += one.keeper.text + ' ' + one.partner.text + '\n';
    return text;
}

void takeKitchen(Case &into, const Case &from) {
    into.units = from.units;
    into.places = from.places;
    into.things = from.things;
    into.appliances = from.appliances;
    into.overrules = from.overrules;
    into.wishes = from.wishes;
    into.upkeep = from.upkeep;
    into.plan = from.plan;
}

SharedKitchen keptByTheFuller(const Case &one, const Case &other) {
    return fullness(one) >= fullness(other) ? SharedKitchen{one.client.id, other.client.id}
                                            : SharedKitchen{other.client.id, one.client.id};
}

} // namespace model
