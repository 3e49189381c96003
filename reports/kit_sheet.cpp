#include "model/kit.h"
#include "model/typed.h"
#include "reports/paper_fields.h"
#include "reports/papers.h"
#include <algorithm>

namespace reports {

using namespace model;

namespace {

std::string kindWords(MarkMedium medium) {
    switch (medium) {
    case MarkMedium::Touch:
        return "told by touch";
    case MarkMedium::Braille:
        return "braille";
    case MarkMedium::LargePrint:
        return "large print";
    case MarkMedium::SpokenTag:
        return "speaks through a reader";
    }
    return {};
}

std::string surfaceWords(const Marker &marker) {
    std::string words;
    for (const Surface surface : marker.surfaces)
        words += (words.empty() ? "" : ", ") + wordsOf(surface);
    return words;
}

Fields fieldsOf(const Case &record, const Findings &findings, const Marker &marker) {
    Fields fields;
    const auto figure = [&](const char *name, double value) { fields.named[name] = typed::words(value, 1); };
    fields.named["mark"] = sentenceCase(marker.name);
    const auto ban = findings.bannedMarks.find(marker.key);
    fields.named["banned"] = ban != findings.bannedMarks.end();
    fields.named["bannedWhy"] = ban != findings.bannedMarks.end() ? ban->second : std::string();
    addText(fields, "feel", withoutStop(marker.feel));
    fields.named["touch"] = marker.medium == MarkMedium::Touch;
    figure("size", marker.size);
    figure("height", marker.relief);
    figure("texture", marker.texture);
    fields.named["kind"] = kindWords(marker.medium);
    addText(fields, "surfaces", surfaceWords(marker));
    fields.named["wet"] = marker.survivesWet;
    fields.named["cold"] = marker.survivesFreezer;
    addText(fields, "heat", marker.heatLimit ? typed::words(marker.heatLimit->value, 0) : std::string());
    fields.named["price"] = typed::words(marker.cost, 2, typed::Zeros::Keep);
    addText(fields, "fix", withoutStop(marker.howToFix));
    addText(fields, "markCaution", withoutStop(marker.caution));
    addText(fields, "bans", listed(factsThatBan(marker)));
    fields.named["atHand"] = atHand(record, marker.key);
    return fields;
}

/// A magnet, as long as an implant is not ruled out: no paper of this client offers one.
bool namedInCautionOnly(const Case &record, const Marker &marker) {
    return marker.magnetic && record.safety.cautious(SafetyQuestion::Implant);
}

std::string countOf(const std::vector<Marker> &kit, const std::function<bool(const Marker &)> &is) {
    return std::to_string(std::count_if(kit.begin(), kit.end(), is));
}

} // namespace

Result<Document> kitSheet(const Case &record, const Findings &findings, Date on, const std::string &madeBy) {
    const std::vector<Marker> kit = wholeKitOf(record);
    std::vector<Fields> list;
    std::vector<Fields> leftOut;
    for (const Marker &marker : kit)
        (namedInCautionOnly(record, marker) ? leftOut : list).push_back(fieldsOf(record, findings, marker));
    Fields fields = subjectFields(record, on, madeBy);
    addList(fields, "marks", std::move(list));
    addList(fields, "leftOut", std::move(leftOut));
    fields.named["markCount"] = std::to_string(kit.size());
    fields.named["atHandCount"] = countOf(kit, [&](const Marker &m) { return atHand(record, m.key); });
    fields.named["bannedCount"] =
        countOf(kit, [&](const Marker &m) { return findings.bannedMarks.contains(m.key); });
    return fillPaper("kit_sheet", fields, record, on, madeBy);
}

} // namespace reports
