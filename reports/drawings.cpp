#include "reports/kitchen_figure.h"
#include "reports/paper_fields.h"
#include "reports/papers.h"

namespace reports {

using namespace model;

Result<Document> drawings(const Case &record, const Findings &, Date on, const std::string &madeBy) {
    if (record.units.empty())
        return fail(ErrorCode::Missing, "There is no unit to draw yet. Enter the kitchen first.");
    std::map<std::string, Figure> figures{{"above", floorFigure(record)}, {"front", kitchenFigure(record)}};
    std::vector<Fields> units;
    for (const Unit *unit : walk(record)) {
        const std::string number = std::to_string(units.size() + 1);
        figures["unit" + number] = unitFigure(record, unit->id);
        Fields fields;
        fields.named["number"] = number;
        fields.named["unit"] = sentenceCase(unit->name);
        fields.named["figure"] = "unit" + number;
        units.push_back(std::move(fields));
    }
    Fields fields = subjectFields(record, on, madeBy);
    addList(fields, "units", std::move(units));
    return fillTemplate("drawings", fields, figures).transform([&](Document document) {
        document.date = isoDate(on);
        document.author = madeBy;
        return document;
    });
}

} // namespace reports
