#include "model/shelf_side.h"
#include "model/typed.h"

namespace model {

bool countsFromRight(const Case &record) {
    const auto found = record.safety.answers.find(SafetyQuestion::OneSideNotAttended);
    if (found == record.safety.answers.end() || found->second.answer != Answer::Yes)
        return false;
    const std::string note = typed::tidy(found->second.note);
    const auto left = note.find("left"), right = note.find("right");
    return left != std::string::npos && left < right; // the side that is named first
}

} // namespace model
