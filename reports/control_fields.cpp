#include "model/appliance_marks.h"
#include "model/kit.h"
#include "reports/paper_fields.h"
#include <algorithm>

namespace reports {

using namespace model;

namespace {

std::vector<Fields> sentences(const std::vector<std::string> &words) {
    std::vector<Fields> list;
    for (const std::string &sentence : words) {
        Fields fields;
        fields.named["sentence"] = sentence;
        list.push_back(std::move(fields));
    }
    return list;
}

std::vector<Fields> settingFields(const Case &record, const ApplianceMarks &marks) {
    std::vector<Fields> list;
    for (const SettingMark &mark : marks.marks) {
        const Marker *marker = markerIn(record, mark.marker);
        Fields fields;
        addText(fields, "control", mark.control);
        fields.named["setting"] = mark.setting;
        fields.named["settingMark"] = marker->name;
        list.push_back(std::move(fields));
    }
    return list;
}

/// The kinds of marks on controls, with what the finger finds.
std::vector<Fields> kindFields(const Case &record, const std::vector<ApplianceMarks> &all) {
    std::vector<std::string> keys;
    for (const ApplianceMarks &marks : all)
        for (const SettingMark &mark : marks.marks)
            if (std::ranges::count(keys, mark.marker) == 0)
                keys.push_back(mark.marker);
    std::vector<Fields> list;
    for (const std::string &key : keys) {
        const Marker *marker = markerIn(record, key);
        Fields fields;
        fields.named["kind"] = sentenceCase(marker->name);
        fields.named["kindFeel"] = withoutStop(marker->feel);
        list.push_back(std::move(fields));
    }
    return list;
}

} // namespace

Fields controlFields(const Case &record, const Findings &findings) {
    const auto all = applianceMarks(record, findings);
    std::vector<Fields> list;
    for (std::size_t k = 0; k < all.size(); ++k) {
        Fields fields;
        fields.named["appliance"] = sentenceCase(record.appliances[k].name);
        addList(fields, "settings", settingFields(record, all[k]));
        addText(fields, "unmarked", listed(all[k].unmarked));
        addList(fields, "told", sentences(all[k].told));
        list.push_back(std::move(fields));
    }
    Fields fields;
    addList(fields, "appliances", std::move(list));
    addList(fields, "controlKinds", kindFields(record, all));
    addList(fields, "controlCautions", sentences(applianceCautions(record)));
    return fields;
}

} // namespace reports
