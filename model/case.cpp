#include "model/case.h"

namespace model {

Case newCase(std::string name, std::string code) {
    Case record;
    record.client.id = newId();
    record.client.name = std::move(name);
    record.client.code = std::move(code);
    record.safety.id = newId();
    record.household.id = newId();
    record.diet.id = newId();
    return record;
}

} // namespace model
