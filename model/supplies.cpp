#include "model/supplies.h"
#include "model/appliance_marks.h"
#include "model/kit.h"
#include "model/packs.h"
#include "model/sentence.h"
#include "model/typed.h"
#include "model/usable_marks.h"
#include <algorithm>
#include <map>

namespace model {
namespace {

/// Packs alike that each carry the mark; a pile or a set carries one.
int marksOn(const Thing &thing) {
    const bool pile = thing.shape == Shape::Mug || thing.shape == Shape::Plate ||
                      thing.shape == Shape::Bowl || thing.shape == Shape::Pan || thing.shape == Shape::Tool ||
                      thing.shape == Shape::Other;
    return pile ? 1 : packsOf(thing);
}

std::string markOfMeaning(const Plan &plan, const std::string &meaning) {
    for (const auto &mark : plan.meaningMarks) {
        if (mark.meaning == meaning)
            return mark.marker;
    }
    return "";
}

struct Counts {
    std::map<std::string, int> marks; // by key of the kit
    int clips = 0;
};

Counts counted(const Case &record, const Findings &findings) {
    Counts out;
    for (const auto &line : record.plan->lines) {
        const auto thing = std::find_if(record.things.begin(), record.things.end(),
                                        [&](const Thing &t) { return t.id == line.thing; });
        if (thing == record.things.end())
            continue;
        out.marks[line.marker] += marksOn(*thing);
        for (const auto &meaning : line.meanings)
            out.marks[markOfMeaning(*record.plan, meaning)] += marksOn(*thing);
        const bool marked = !line.marker.empty() || !line.meanings.empty();
        out.clips += marked && thing->shape == Shape::Bag ? marksOn(*thing) : 0;
    }
    for (const ApplianceMarks &appliance : applianceMarks(record, findings))
        for (const SettingMark &setting : appliance.marks)
            ++out.marks[setting.marker];
    out.marks.erase("");
    return out;
}

/// One for each place, and one for each unit of more than one place.
int sectionCards(const Case &record) {
    int cards = static_cast<int>(record.places.size());
    for (const Unit &unit : record.units)
        cards += std::ranges::count(record.places, unit.id, &Place::unit) > 1 ? 1 : 0;
    return cards;
}

int withSpare(int count) {
    return count + (count + 9) / 10; // 10 %, rounded up
}

void addSections(const Case &record, const Findings &findings, std::vector<Supply> &out) {
    if (!findings.readsBraille && !findings.readsLargePrint)
        return;
    const MarkMedium medium = findings.readsBraille ? MarkMedium::Braille : MarkMedium::LargePrint;
    for (const Marker &label : kitOf(record)) {
        if (label.medium != medium)
            continue;
        const int count = withSpare(sectionCards(record));
        out.push_back({Sentence::tr("{1} for a section or shelf", {label.name}), count, count * label.cost,
                       label.caution});
        return;
    }
}

void addHolders(const Case &record, const Counts &counts, std::vector<Supply> &out) {
    const UpkeepWishes prices = record.upkeep.value_or(UpkeepWishes{});
    if (counts.clips > 0) {
        const int count = withSpare(counts.clips);
        out.push_back(
            {Sentence::tr("clip for a bag, that carries its mark"), count, count * prices.clipPrice, ""});
    }
    if (!counts.marks.empty())
        out.push_back({Sentence::tr("pot for marks taken off empty packs"), 1, prices.potPrice, ""});
}

constexpr double binPrice = 3; // a default of this program

/// Private things without a place of the client's own for what is kept so: a bin for each kind of storage.
int binsNeeded(const Case &record) {
    int bins = 0;
    for (const Storage storage : {Storage::Dry, Storage::Fridge, Storage::Freezer}) {
        const bool wanted = std::ranges::any_of(
            record.things, [&](const Thing &thing) { return thing.own && thing.storage == storage; });
        const bool there = std::ranges::any_of(
            record.places, [&](const Place &place) { return place.own && place.storage == storage; });
        bins += wanted && !there ? 1 : 0;
    }
    return bins;
}

void addBins(const Case &record, std::vector<Supply> &out) {
    if (const int bins = binsNeeded(record); bins > 0)
        out.push_back(
            {Sentence::tr("bin for the client's own things, with its mark"), bins, bins * binPrice,
             Sentence::tr("Record it as a place of the client's own when it is there, then plan again.")});
}

using Concerns = bool (*)(const Marker &);

struct Material {
    Concerns concerns;
    const char *ban; // as the findings word it
    const char *words;
};

const std::vector<Material> &materials() {
    static const std::vector<Material> all{
        {[](const Marker &m) { return m.latex; }, Sentence::later("natural rubber"),
         Sentence::later("Natural rubber (latex), also in gloves")},
        {[](const Marker &m) { return m.magnetic; }, "magnetic", Sentence::later("Magnets")},
        {[](const Marker &m) { return m.adhesive; }, "sticky",
         Sentence::later("Sticky marks, on things that are held long")},
        {[](const Marker &m) { return m.sharp; }, Sentence::later("sharp or rough"),
         Sentence::later("Sharp or rough marks, pins and notches")},
        {[](const Marker &m) { return m.chokingSize; }, Sentence::later("small enough to swallow"),
         Sentence::later("Marks small enough to swallow")},
        {[](const Marker &m) { return m.medium == MarkMedium::SpokenTag; }, "speaks",
         Sentence::later("Marks that speak")}};
    return all;
}

/// Of "magnetic (implant: not asked), sticky (...)" the words in brackets after `ban`; empty if that is no
/// reason.
std::string reasonFor(const std::string &reasons, const std::string &ban) {
    const auto at = reasons.find(ban + " (");
    if (at == std::string::npos)
        return {};
    const auto open = at + ban.size() + 2;
    return reasons.substr(open, reasons.find(')', open) - open);
}

bool sharesSurface(const Marker &a, const Marker &b) {
    return std::any_of(a.surfaces.begin(), a.surfaces.end(),
                       [&](Surface surface) { return b.surfaces.contains(surface); });
}

/// Up to two marks at hand that may be used and hold on what the banned ones hold on; for words, words first.
std::string instead(const Case &record, const Findings &findings, const std::vector<Marker> &banned) {
    std::vector<Marker> fit = usableMarks(record, findings);
    std::erase_if(fit, [&](const Marker &marker) {
        return std::none_of(banned.begin(), banned.end(),
                            [&](const Marker &other) { return sharesSurface(marker, other); });
    });
    const bool ofText = std::all_of(banned.begin(), banned.end(),
                                    [](const Marker &marker) { return marker.medium != MarkMedium::Touch; });
    std::stable_partition(fit.begin(), fit.end(), [&](const Marker &marker) {
        return (marker.medium != MarkMedium::Touch) == ofText;
    });
    std::string names;
    for (std::size_t k = 0; k < fit.size() && k < 2; ++k)
        names += (k == 0 ? "" : "; ") + fit[k].name;
    return names.empty() ? Sentence::tr("no mark of the kit: place, shape and help, or a mark of your own")
                         : names;
}

} // namespace

std::vector<Supply> supplies(const Case &record, const Findings &findings) {
    std::vector<Supply> out;
    if (!record.plan)
        return out;
    const Counts counts = counted(record, findings);
    for (const auto &marker : wholeKitOf(record)) { // in the order of the kit
        const auto found = counts.marks.find(marker.key);
        if (found == counts.marks.end() || ruledOut(marker, record))
            continue; // an answer of today stands above a plan of yesterday
        const int count = withSpare(found->second);
        out.push_back({marker.name, count, count * marker.cost, marker.caution});
    }
    addSections(record, findings, out);
    addHolders(record, counts, out);
    addBins(record, out);
    return out;
}

double totalCost(const std::vector<Supply> &supplies) {
    double cost = 0;
    for (const Supply &supply : supplies)
        cost += supply.cost;
    return cost;
}

std::string priceInWords(double cost, const Case &record) {
    const std::string figure = typed::words(cost, 2, typed::Zeros::Keep);
    const std::string word = record.upkeep ? record.upkeep->currency : "";
    return word.empty() ? figure : figure + " " + word;
}

std::vector<BannedMaterial> bannedMaterials(const Case &record, const Findings &findings) {
    std::vector<BannedMaterial> out;
    for (const Material &material : materials()) {
        std::vector<Marker> banned;
        std::string because;
        for (const Marker &marker : wholeKitOf(record)) {
            const auto found = findings.bannedMarks.find(marker.key);
            const std::string reason = found == findings.bannedMarks.end()
                                           ? ""
                                           : reasonFor(found->second, Sentence::tr(material.ban));
            if (!material.concerns(marker) || reason.empty())
                continue;
            banned.push_back(marker);
            because = reason;
        }
        if (!banned.empty())
            out.push_back({Sentence::tr(material.words), because, instead(record, findings, banned)});
    }
    return out;
}

} // namespace model
