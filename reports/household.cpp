#include "model/planning.h"
#include "reports/paper_fields.h"
#include "reports/papers.h"
#include <algorithm>
#include <cctype>
#include <sstream>

namespace reports {

using namespace model;

namespace {

/// Things with one meaning, and where they stand. Medicines and the client's own are left out unless they may
/// be named.
std::vector<Fields> thingsThatMean(const Case &record, const Plan &plan, const std::string &meaning) {
    std::vector<Fields> list;
    for (const PlanLine *line : linesInWalk(record, plan)) {
        const Thing *thing = means(*line, meaning) ? thingOf(record, line->thing) : nullptr;
        if (!thing || ((thing->medicine || thing->own) && !record.household.sharingConsent))
            continue;
        Fields fields;
        fields.named["thing"] = sentenceCase(thing->name);
        fields.named["where"] = placeWords(record, line->place);
        list.push_back(std::move(fields));
    }
    return list;
}

std::string lowered(std::string text) {
    std::transform(text.begin(), text.end(), text.begin(), [](unsigned char c) { return std::tolower(c); });
    return text;
}

bool isLetter(char c) {
    return std::isalpha(static_cast<unsigned char>(c)) || static_cast<unsigned char>(c) >= 0x80;
}

bool holdsWord(const std::string &text, const std::string &word) {
    const std::string where = lowered(text), what = lowered(word);
    for (auto at = where.find(what); at != std::string::npos; at = where.find(what, at + 1)) {
        const auto end = at + what.size();
        if ((at == 0 || !isLetter(where[at - 1])) && (end == where.size() || !isLetter(where[end])))
            return true;
    }
    return false;
}

/// The words of the therapist's own that this sheet prints, besides names of things: a client's first name
/// may be the name of a food.
std::vector<std::string> ownWords(const Case &record) {
    std::vector<std::string> words{record.client.code};
    for (const Unit &unit : record.units)
        words.push_back(unit.name);
    for (const Place &place : record.places)
        words.push_back(place.name);
    return words;
}

/// Fails with Refused if the client could be told from the sheet by name.
Result<void> namesNobody(const Case &record) {
    const std::string advice = ". Change it, or record the consent to share.";
    std::istringstream parts(record.client.name);
    for (std::string part; parts >> part;)
        if (part.size() >= 3)
            for (const std::string &words : ownWords(record))
                if (holdsWord(words, part))
                    return fail(ErrorCode::Refused,
                                "The household sheet would show the client's name in: " + words + advice);
    if (!record.client.name.empty())
        for (const Thing &thing : record.things)
            if (holdsWord(thing.name, record.client.name))
                return fail(ErrorCode::Refused,
                            "The household sheet would show the client's name in: " + thing.name + advice);
    return {};
}

/// Whom to ask often tells which clinic the client goes to.
void hidePrivateWords(Fields &fields) {
    fields.named["name"] = std::string();
    fields.named["whomToAsk"] = std::string();
    fields.named["hasWhom"] = false;
}

} // namespace

Result<Document> householdSheet(const Case &record, const Findings &findings, Date on,
                                const std::string &madeBy) {
    const auto plan = planOf(record);
    if (!plan)
        return tl::unexpected(plan.error());
    const bool sharing = record.household.sharingConsent;
    if (!sharing)
        if (const auto nobody = namesNobody(record); !nobody)
            return tl::unexpected(nobody.error());
    Fields fields = subjectFields(record, on, madeBy);
    if (!sharing)
        hidePrivateWords(fields);
    add(fields, cautionFields(sharing ? findings : Findings{}));
    add(fields, kitchenFields(record, findings));
    add(fields, markFields(record));
    addList(fields, "apart", thingsThatMean(record, **plan, "allergen"));
    addList(fields, "dangers", thingsThatMean(record, **plan, "hazard"));
    fields.named["sharing"] = sharing;
    return fillPaper("household", fields, record, on, madeBy);
}

} // namespace reports
