#include "model/marks.h"
#include "model/planning.h"
#include "model/supplies.h"
#include "model/work_order.h"
#include "reports/paper_fields.h"
#include "reports/papers.h"
#include <algorithm>

namespace reports {

using namespace model;

namespace {

Fields supplyFields(const Case &record, const Findings &findings) {
    const std::vector<Supply> needed = supplies(record, findings);
    std::vector<Fields> list;
    for (const Supply &supply : needed) {
        Fields fields;
        fields.named["supply"] = sentenceCase(supply.name);
        fields.named["count"] = std::to_string(supply.count);
        fields.named["price"] = priceInWords(supply.cost, record);
        addText(fields, "supplyCaution", supply.caution);
        list.push_back(std::move(fields));
    }
    std::vector<Fields> banned;
    for (const BannedMaterial &material : bannedMaterials(record, findings)) {
        Fields fields;
        fields.named["material"] = material.material;
        fields.named["because"] = material.because;
        fields.named["instead"] = material.instead;
        banned.push_back(std::move(fields));
    }
    Fields all;
    addList(all, "supplies", std::move(list));
    addList(all, "banned", std::move(banned));
    all.named["cost"] = priceInWords(totalCost(needed), record);
    return all;
}

std::vector<Fields> sentences(const std::vector<std::string> &all) {
    std::vector<Fields> list;
    for (const std::string &one : all) {
        Fields fields;
        fields.named["sentence"] = one;
        list.push_back(std::move(fields));
    }
    return list;
}

std::vector<Fields> stepFields(const Case &record, const Findings &findings, const Plan &plan, Date on) {
    std::vector<Fields> list;
    for (const WorkStep &step : workOrder(record, findings, on)) {
        Fields fields;
        const auto place = std::find_if(record.places.begin(), record.places.end(),
                                        [&](const Place &p) { return step.place && p.id == *step.place; });
        if (place != record.places.end()) {
            fields = placeFields(record, findings, plan, *place);
            fields.named["where"] = sentenceCase(placeWords(record, place->id));
        }
        fields.named["number"] = std::to_string(list.size() + 1);
        fields.named["atPlace"] = place != record.places.end();
        fields.named["step"] = step.step;
        fields.named["minutes"] = std::to_string(step.minutes);
        fields.named["who"] = doerInWords(step.who);
        fields.named["first"] = sentences(step.first);
        addText(fields, "help", step.help);
        addText(fields, "pause", step.pause);
        list.push_back(std::move(fields));
    }
    return list;
}

} // namespace

Result<Document> workSheet(const Case &record, const Findings &findings, Date on, const std::string &madeBy) {
    const auto plan = planOf(record);
    if (!plan)
        return tl::unexpected(plan.error());
    const auto labels = labelFields(record, findings);
    const auto shown = withLabels(record, findings);
    if (!labels || !shown)
        return tl::unexpected(labels ? shown.error() : labels.error());
    Fields fields = subjectFields(record, on, madeBy);
    add(fields, cautionFields(findings));
    add(fields, kitchenFields(*shown, findings));
    add(fields, controlFields(record, findings));
    add(fields, markFields(record));
    add(fields, supplyFields(record, findings));
    add(fields, *labels);
    addList(fields, "steps", stepFields(*shown, findings, *shown->plan, on));
    fields.named["thingCount"] = std::to_string((*plan)->lines.size());
    fields.named["placeCount"] = std::to_string(record.places.size());
    return fillPaper("work_sheet", fields, record, on, madeBy);
}

} // namespace reports
