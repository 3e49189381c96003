#include "model/meanings.h"
#include "model/typed.h"
#include "reports/labels.h"
#include "reports/paper_fields.h"
#include "reports/papers.h"
#include "reports/square_code.h"
#include <algorithm>

namespace reports {

using namespace model;

namespace {

std::size_t cellCount(const Label &label) {
    std::size_t count = 0;
    for (const std::string &line : label.cells)
        count += line.size() / 3; // Unicode braille has three bytes a cell
    return count;
}

std::string codeName(const Label &label) {
    return "code-" + label.thing.text;
}

Fields fieldsOf(const Label &label) {
    Fields fields;
    fields.named["name"] = sentenceCase(label.name);
    fields.named["words"] = label.words;
    fields.named["where"] = label.where;
    fields.named["fits"] = label.fits;
    fields.named["points"] = label.size ? typed::words(label.size->value, 0) : std::string("none");
    fields.named["cells"] = std::to_string(cellCount(label));
    fields.named["lines"] = std::to_string(label.cells.size());
    std::string told;
    for (const std::string &sentence : label.told)
        told += (told.empty() ? "" : " ") + sentence;
    if (label.medium == LabelMedium::SquareCode && label.fits)
        fields.named["figure"] = codeName(label);
    fields.named["hasFigure"] = label.medium == LabelMedium::SquareCode && label.fits;
    fields.named["told"] = told.empty() ? std::string("Fits.") : told;
    return fields;
}

std::vector<Fields> ofMedium(const std::vector<Label> &labels, LabelMedium medium, bool fittingOnly) {
    std::vector<Fields> list;
    for (const Label &label : labels)
        if (label.medium == medium && (label.fits || !fittingOnly))
            list.push_back(fieldsOf(label));
    return list;
}

std::vector<Fields> unfitting(const std::vector<Label> &labels) {
    std::vector<Fields> list;
    for (const Label &label : labels)
        if (!label.fits)
            list.push_back(fieldsOf(label));
    return list;
}

std::vector<Fields> meaningFields(const Case &record) {
    std::vector<Fields> list;
    for (const std::string &sentence : meaningsTold(record, record.plan->meaningMarks)) {
        Fields fields;
        fields.named["sentence"] = sentence;
        list.push_back(std::move(fields));
    }
    return list;
}

/// Names in plain print for those who see, where the label itself is not print.
std::vector<Fields> plainNames(const std::vector<Label> &labels) {
    std::vector<Fields> list;
    for (const Label &label : labels)
        if (label.medium == LabelMedium::Braille || label.medium == LabelMedium::SpokenTag)
            list.push_back(fieldsOf(label));
    return list;
}

/// What goes into the square codes that fit, by the name that the template knows.
std::map<std::string, Figure> codeFigures(const std::vector<Label> &labels) {
    std::map<std::string, Figure> figures;
    for (const Label &label : labels)
        if (label.medium == LabelMedium::SquareCode && label.fits)
            if (auto code = squareCode(label.name, label.words))
                figures.emplace(codeName(label), std::move(*code));
    return figures;
}

/// Gives each printed label its own size, in the order in which they stand in the document.
void setSizes(Document &document, const std::vector<Label> &labels) {
    auto next = labels.begin();
    for (Block &block : document.blocks) {
        auto *paragraph = std::get_if<Paragraph>(&block);
        next = std::find_if(next, labels.end(), [](const Label &label) { return label.fits && label.size; });
        if (paragraph && next != labels.end() && joined(paragraph->text) == next->words)
            paragraph->points = (next++)->size->value;
    }
}

} // namespace

Result<Fields> labelFields(const Case &record, const Findings &findings) {
    return thingLabels(record, findings).and_then([&](const std::vector<Label> &things) {
        return sectionLabels(record, findings).map([&](const std::vector<Label> &sections) {
            Fields all;
            addList(all, "printLabels", ofMedium(things, LabelMedium::LargePrint, false));
            addList(all, "brailleLabels", ofMedium(things, LabelMedium::Braille, false));
            addList(all, "tagLabels", ofMedium(things, LabelMedium::SpokenTag, false));
            addList(all, "codeLabels", ofMedium(things, LabelMedium::SquareCode, false));
            addList(all, "fittingPrint", ofMedium(things, LabelMedium::LargePrint, true));
            addList(all, "fittingSections", ofMedium(sections, LabelMedium::LargePrint, true));
            addList(all, "printSections", ofMedium(sections, LabelMedium::LargePrint, false));
            addList(all, "brailleSections", ofMedium(sections, LabelMedium::Braille, false));
            addList(all, "unfitting", unfitting(things));
            addList(all, "unfittingSections", unfitting(sections));
            addList(all, "plainNames", plainNames(things));
            addList(all, "meaningsTold", meaningFields(record));
            all.named["hasLabels"] = !things.empty();
            all.named["hasSectionLabels"] = !sections.empty();
            addText(all, "whoReadsPrint", withoutStop(record.household.whoReadsPrint));
            return all;
        });
    });
}

Result<Case> withLabels(const Case &record, const Findings &findings) {
    return thingLabels(record, findings).map([&](const std::vector<Label> &labels) {
        Case shown = record;
        for (PlanLine &line : shown.plan->lines)
            for (const Label &label : labels)
                if (label.thing == line.thing && label.medium != LabelMedium::SquareCode)
                    line.labelText =
                        label.medium == LabelMedium::SpokenTag ? sentenceCase(label.name) : label.words;
        return shown;
    });
}

Result<Document> labelSheet(const Case &record, const Findings &findings, Date on,
                            const std::string &madeBy) {
    const auto labels = labelFields(record, findings);
    if (!labels)
        return tl::unexpected(labels.error());
    std::vector<Label> inOrder = thingLabels(record, findings).value();
    const std::vector<Label> sections = sectionLabels(record, findings).value();
    inOrder.insert(inOrder.end(), sections.begin(), sections.end());
    Fields fields = subjectFields(record, on, madeBy);
    add(fields, *labels);
    add(fields, markFields(record));
    return fillPaper("label_sheet", fields, record, on, madeBy, codeFigures(inOrder))
        .map([&](Document document) {
            setSizes(document, inOrder);
            return document;
        });
}

} // namespace reports
