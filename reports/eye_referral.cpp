#include "reports/paper_fields.h"
#include "reports/papers.h"

namespace reports {

using namespace model;

namespace {

std::string sideWords(Side side) {
    switch (side) {
    case Side::NotStated:
        return {};
    case Side::Right:
        return "right eye";
    case Side::Left:
        return "left eye";
    case Side::Both:
        return "both eyes";
    }
    return {};
}

std::vector<Fields> sightResults(const Case &record) {
    std::vector<Fields> list;
    for (const Measurement &measurement : record.measurements) {
        const TestInfo &info = infoOf(measurement.test);
        if (info.domain != Domain::Sight || measurement.typed.empty())
            continue;
        Fields fields;
        fields.named["test"] = info.name;
        fields.named["typed"] = measurement.typed;
        addText(fields, "side", sideWords(measurement.side));
        addText(fields, "distance", measurement.distanceTyped);
        addText(fields, "measuredOn", measurement.date ? dateInWords(*measurement.date) : std::string());
        list.push_back(std::move(fields));
    }
    return list;
}

} // namespace

Result<Document> eyeReferral(const Case &record, const Findings &findings, Date on,
                             const std::string &madeBy) {
    const auto found = record.safety.answers.find(SafetyQuestion::UrgentEyeSigns);
    if (found == record.safety.answers.end() || found->second.answer != Answer::Yes)
        return fail(ErrorCode::Refused,
                    "No urgent eye signs are recorded, so there is nothing to refer for today.");
    Fields fields = subjectFields(record, on, madeBy);
    add(fields, cautionFields(findings));
    addText(fields, "born", record.client.born ? dateInWords(*record.client.born) : std::string());
    addText(fields, "note", withoutStop(found->second.note));
    addText(fields, "askedOn", found->second.asked ? dateInWords(*found->second.asked) : std::string());
    addList(fields, "results", sightResults(record));
    return fillPaper("eye_referral", fields, record, on, madeBy);
}

} // namespace reports
