#include "model/marks.h"
#include "model/planning.h"
#include "model/work_order.h"
#include "reports/paper_fields.h"
#include "reports/papers.h"
#include <algorithm>
#include <cstdio>

namespace reports {

using namespace model;

namespace {

Fields supplyFields(const Case &record) {
    std::vector<Fields> list;
    double cost = 0;
    for (const Supply &supply : supplies(record)) {
        Fields fields;
        fields.named["supply"] = sentenceCase(supply.name);
        fields.named["count"] = std::to_string(supply.count);
        addText(fields, "supplyCaution", supply.caution);
        cost += supply.cost;
        list.push_back(std::move(fields));
    }
    char money[32];
    std::snprintf(money, sizeof money, "%.2f", cost);
    Fields all;
    addList(all, "supplies", std::move(list));
    all.named["cost"] = std::string(money);
    return all;
}

std::vector<Fields> stepFields(const Case &record, const Findings &findings, const Plan &plan) {
    std::vector<Fields> list;
    for (const WorkStep &step : workOrder(record)) {
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
    add(fields, supplyFields(record));
    add(fields, *labels);
    addList(fields, "steps", stepFields(*shown, findings, *shown->plan));
    fields.named["thingCount"] = std::to_string((*plan)->lines.size());
    fields.named["placeCount"] = std::to_string(record.places.size());
    return fillPaper("work_sheet", fields, record, on, madeBy);
}

} // namespace reports
