#include "model/upkeep.h"
#include "reports/paper_fields.h"
#include "reports/papers.h"
#include <algorithm>

namespace reports {

using namespace model;

namespace {

/// Publications behind the tasks, each once.
std::string sourcesOf(const std::vector<UpkeepTask> &tasks) {
    const std::vector<std::string> none{"common practice", "printed on the pack"};
    std::vector<std::string> names;
    for (const UpkeepTask &task : tasks) {
        const auto end = task.source.find("; ");
        const std::string name = task.source.substr(0, end);
        if (std::find(none.begin(), none.end(), name) == none.end() &&
            std::find(names.begin(), names.end(), name) == names.end())
            names.push_back(name);
    }
    return listed(names);
}

/// Where the sentence starts that every keeping time ends with: on paper it stands once.
constexpr const char *guidance = "General guidance: ";

Fields taskFields(const UpkeepTask &task) {
    Fields fields;
    fields.named["task"] = withoutStop(task.task.substr(0, task.task.find(guidance))) + ".";
    addText(fields, "due", task.due ? dateInWords(*task.due) : std::string());
    return fields;
}

/// Tasks of one occasion together, occasions in the order in which they first come.
Fields upkeepFields(const Case &record, Date on) {
    const auto tasks = upkeepTasks(record, on);
    std::vector<Fields> occasions;
    std::vector<std::string> seen;
    for (const UpkeepTask &first : tasks) {
        if (std::find(seen.begin(), seen.end(), first.when) != seen.end())
            continue;
        seen.push_back(first.when);
        std::vector<Fields> list;
        std::string general;
        for (const UpkeepTask &task : tasks)
            if (task.when == first.when) {
                list.push_back(taskFields(task));
                if (const auto at = task.task.find(guidance); at != std::string::npos)
                    general = task.task.substr(at);
            }
        Fields fields;
        addText(fields, "guidance", general);
        fields.named["when"] = sentenceCase(withoutStop(first.when));
        fields.named["once"] = first.when == "once";
        fields.named["tasks"] = std::move(list);
        occasions.push_back(std::move(fields));
    }
    Fields all;
    addList(all, "occasions", std::move(occasions));
    addText(all, "sources", sourcesOf(tasks));
    return all;
}

} // namespace

Result<Document> handout(const Case &record, const Findings &findings, Date on, const std::string &madeBy) {
    return planOf(record)
        .and_then([&](const Plan *) { return withLabels(record, findings); })
        .and_then([&](const Case &shown) {
            Fields fields = subjectFields(record, on, madeBy);
            add(fields, cautionFields(findings));
            add(fields, kitchenFields(shown, findings));
            add(fields, controlFields(record, findings));
            add(fields, markFields(record));
            add(fields, upkeepFields(record, on));
            add(fields, goalFields(record));
            return fillPaper("handout", fields, record, on, madeBy);
        });
}

} // namespace reports
