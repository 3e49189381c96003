#include "model/appliance_marks.h"
#include "model/fixing.h"
#include "model/sentence.h"
#include "model/typed.h"
#include "model/usable_marks.h"
#include <algorithm>
#include <array>

namespace model {
namespace {

/// A plastic knob may warm by 60 K in use, in a room at 25 C: from memory, EN 30-1-1 and EN 60335-1, table 3.
constexpr Celsius warmestKnob{85};

/// Below this, heat is no matter: about what a hand bears for long (from memory, ISO 13732-1).
constexpr Celsius handWarm{43};

struct Pair {
    const Marker *off = nullptr, *other = nullptr;
};

bool isOff(const std::string &setting) {
    static constexpr std::array words{"off", "0", "zero", "stop"};
    return std::ranges::find(words, typed::tidy(setting)) != words.end();
}

bool stands(const Marker &marker, std::optional<Celsius> heat) {
    if (!heat || *heat <= handWarm)
        return true;
    return marker.heatLimit && *heat < *marker.heatLimit;
}

bool standsAll(const Marker &marker, const Case &record) {
    return std::ranges::all_of(record.appliances,
                               [&](const Appliance &one) { return stands(marker, one.heat); });
}

bool isReserved(const Case &record, const std::vector<MeaningMark> &reserved, const std::string &key) {
    const auto is = [&](const MeaningMark &mark) { return mark.marker == key; };
    return std::ranges::any_of(reserved, is) ||
           (record.plan && std::ranges::any_of(record.plan->meaningMarks, is));
}

/// What sticks to a hard panel and means nothing else.
std::vector<Marker> controlMarks(const Case &record, const Findings &findings) {
    std::vector<Marker> usable = usableMarks(record, findings);
    const auto reserved = reservedMarks(record, usable, findings);
    std::erase_if(usable, [&](const Marker &marker) {
        const Hold hold = holdOf(marker);
        return (hold != Hold::Stuck && hold != Hold::Drawn) || !marker.surfaces.contains(Surface::Plastic) ||
               !marker.survivesWet || isReserved(record, reserved, marker.key);
    });
    return usable;
}

double mixedUp(const Marker &a, const Marker &b, const Findings &findings) {
    return confusion(a, b, findings.touchSensitivity, findings.measuredConfusion) +
           confusion(b, a, findings.touchSensitivity, findings.measuredConfusion);
}

double overlooked(const Marker &marker, const Findings &findings) {
    return missed(marker, findings.touchSensitivity, findings.measuredConfusion);
}

/// The two that are mixed up least; of these the one that is found more surely says off.
Pair bestPair(const std::vector<Marker> &marks, const Findings &findings) {
    Pair best;
    double least = 0;
    for (const Marker &a : marks)
        for (const Marker &b : marks) {
            const double sum = mixedUp(a, b, findings);
            if (&a >= &b || (best.other && sum >= least))
                continue;
            const bool first = overlooked(a, findings) <= overlooked(b, findings);
            best = first ? Pair{&a, &b} : Pair{&b, &a};
            least = sum;
        }
    if (!best.off && !marks.empty())
        best.off = &marks.front();
    return best;
}

std::string nameOf(const Control &control, const std::string &setting) {
    return control.name.empty() ? setting : control.name + ": " + setting;
}

std::string degrees(Celsius heat) {
    return Sentence::tr("{1} C", {typed::words(heat.value, 0)});
}

void tellOnce(std::vector<std::string> &told, std::string sentence) {
    if (std::ranges::count(told, sentence) == 0)
        told.push_back(std::move(sentence));
}

std::string tooHot(const Marker &marker, Celsius heat) {
    return Sentence::tr(
        "{1}{2} was measured: nothing is stuck on there. Ask its maker for a control that can be felt.",
        {(marker.heatLimit
              ? Sentence::tr("The {1} stands up to {2}, and ", {marker.name, degrees(*marker.heatLimit)})
              : Sentence::tr("How much heat the {1} stands is not known, and ", {marker.name})),
         degrees(heat)});
}

std::string nothingSticks(const Case &record) {
    const std::string instead = Sentence::tr("Use a control that speaks or clicks, or ask for help.");
    return record.safety.cautious(SafetyQuestion::AdhesiveReaction)
               ? Sentence::tr("Sticky marks are left out: a skin reaction to adhesive is known, or was not "
                              "asked about. {1}",
                              {instead})
               : Sentence::tr("No mark that sticks to a panel is left: each is ruled out, not told apart, or "
                              "means something else. {1}",
                              {instead});
}

std::string measureFirst(const Marker &marker) {
    return Sentence::tr("The {1} only where a thermometer shows less than {2} after an hour's use: a plastic "
                        "knob may reach {3}. Not by hand.",
                        {marker.name, (marker.heatLimit ? degrees(*marker.heatLimit) : degrees(handWarm)),
                         degrees(warmestKnob)});
}

/// The key of the mark of one setting, or empty, with the reason.
std::string markFor(const Case &record, const Appliance &appliance, const std::string &setting,
                    const Pair &pair, std::vector<std::string> &told) {
    const Marker *marker = isOff(setting) ? pair.off : pair.other;
    if (!marker) {
        tellOnce(told, pair.off ? Sentence::tr("No second mark is told apart: count the clicks from off.")
                                : nothingSticks(record));
        return {};
    }
    if (!stands(*marker, appliance.heat)) {
        tellOnce(told, tooHot(*marker, *appliance.heat));
        return {};
    }
    if (!appliance.heat && mayGetHot(appliance.name))
        tellOnce(told, measureFirst(*marker));
    return marker->key;
}

/// Off first, then the first ones named; the rest stays bare.
std::vector<std::string> settingsToMark(const Control &control) {
    std::vector<std::string> chosen;
    std::ranges::copy_if(control.settings, std::back_inserter(chosen), isOff);
    for (const std::string &setting : control.settings)
        if (!isOff(setting) && chosen.size() < mostMarkedSettings)
            chosen.push_back(setting);
    return chosen;
}

ApplianceMarks marksOf(const Case &record, const Appliance &appliance, const Pair &pair) {
    ApplianceMarks out{appliance.id, {}, {}, {}};
    bool tooMany = false;
    for (const Control &control : appliance.controls) {
        const auto chosen = settingsToMark(control);
        tooMany = tooMany || chosen.size() < control.settings.size();
        for (const std::string &setting : chosen)
            if (std::string key = markFor(record, appliance, setting, pair, out.told); !key.empty())
                out.marks.push_back({control.name, setting, std::move(key)});
        for (const std::string &setting : control.settings)
            if (std::ranges::none_of(out.marks, [&](const SettingMark &mark) {
                    return mark.control == control.name && mark.setting == setting;
                }))
                out.unmarked.push_back(nameOf(control, setting));
    }
    if (tooMany)
        out.told.emplace_back(Sentence::tr(
            "At most three marks on one control (judgement): off, and the first two others that are named."));
    return out;
}

} // namespace

bool mayGetHot(const std::string &name) {
    static constexpr std::array cool{"washing machine", "dishwasher", "fridge", "freezer",
                                     "microwave",       "radio",      "scales", "mixer"};
    const std::string tidied = typed::tidy(name);
    return std::ranges::none_of(cool,
                                [&](const char *word) { return tidied.find(word) != std::string::npos; });
}

std::vector<ApplianceMarks> applianceMarks(const Case &record, const Findings &findings) {
    const std::vector<Marker> marks = controlMarks(record, findings);
    std::vector<Marker> everywhere;
    std::ranges::copy_if(marks, std::back_inserter(everywhere),
                         [&](const Marker &marker) { return standsAll(marker, record); });
    const Pair pair = bestPair(everywhere.size() >= 2 ? everywhere : marks, findings);
    std::vector<ApplianceMarks> out;
    for (const Appliance &appliance : record.appliances)
        out.push_back(marksOf(record, appliance, pair));
    return out;
}

std::vector<std::string> applianceCautions(const Case &record) {
    std::vector<std::string> out{
        Sentence::tr("Mark controls with the appliance switched off and cold, on a clean dry surface."),
        Sentence::tr("Never on a hob, a door, a plate or anything that gets hot; never over vents, sensors "
                     "or warnings."),
        Sentence::tr("The maker's instructions and local rules come first. Wiring is for an electrician.")};
    if (record.safety.cautious(SafetyQuestion::GasHob))
        out.emplace_back(Sentence::tr("Gas: nobody but a licensed gas fitter works on it. No mark may stop a "
                                      "knob from turning fully off."));
    return out;
}

} // namespace model
