#include "model/upkeep.h"
#include "reports/kitchen_figure.h"
#include "reports/paper_fields.h"
#include "reports/papers.h"

namespace reports {

using namespace model;

namespace {

Fields upkeepFields(const Case &record, Date on) {
    std::vector<Fields> list;
    for (const UpkeepTask &task : upkeepTasks(record, on)) {
        Fields fields;
        fields.named["task"] = sentenceCase(withoutStop(task.task));
        fields.named["when"] = withoutStop(task.when);
        addText(fields, "due", task.due ? dateInWords(*task.due) : std::string());
        list.push_back(std::move(fields));
    }
    Fields all;
    addList(all, "upkeep", std::move(list));
    return all;
}

} // namespace

Result<Document> handout(const Case &record, const Findings &findings, Date on, const std::string &madeBy) {
    return planOf(record).and_then([&](const Plan *) {
        Fields fields = subjectFields(record, on, madeBy);
        add(fields, cautionFields(findings));
        add(fields, kitchenFields(record, findings));
        add(fields, markFields(record));
        add(fields, upkeepFields(record, on));
        add(fields, goalFields(record));
        return fillPaper("handout", fields, record, on, madeBy);
    });
}

} // namespace reports
