#include "reports/labels.h"
#include "model/kit.h"
#include "model/legible.h"
#include "model/sentence.h"
#include "model/short_name.h"
#include "reports/braille_cells.h"
#include "reports/label_rules.h"
#include "reports/paper_fields.h"
#include "reports/utf8.h"
#include <algorithm>
#include <map>

namespace reports {

using namespace model;

namespace {

/// Cards of the program's own size, for a shelf and for the door or front of a section.
const BrailleFace shelfEdge{"on the edge of the shelf", {150}, {18}, true};
const BrailleFace doorCard{"on the door or front", {200}, {80}};
constexpr auto largeCard = "on a large card at the side of the place";
constexpr std::size_t mostGroups = 2; // named on the label of a shelf: judgement

std::optional<LabelMedium> mediumOf(MarkMedium medium) {
    switch (medium) {
    case MarkMedium::LargePrint:
        return LabelMedium::LargePrint;
    case MarkMedium::Braille:
        return LabelMedium::Braille;
    case MarkMedium::SpokenTag:
        return LabelMedium::SpokenTag;
    case MarkMedium::Touch:
        break;
    }
    return std::nullopt;
}

MayShorten shorteningOf(const Case &record, const PlanLine &line, const Thing &thing, const ShortName &name) {
    const bool keep = name.hers || name.warns || !line.meanings.empty() || thing.spoilsMeal;
    return [&record, &thing, keep](const std::string &shorter) {
        return !keep && isNobodysName(record, thing.id, shorter);
    };
}

/// Sizes from afar to near; poor contrast is not mended by size.
PrintFace printFace(const LabelRow &row) {
    PrintFace face{row.width, row.height, {}, false};
    const auto add = [&](const std::optional<Points> &size, const std::string &only) {
        if (size && (face.sizes.empty() || *size < face.sizes.back().points))
            face.sizes.push_back({*size, only});
    };
    add(row.needed, "");
    add(row.withLamp, Sentence::tr("Only with a lamp on it."));
    const bool fitsFromAfar = !face.sizes.empty() && face.sizes.back().points <= row.fits;
    add(row.taken, Sentence::tr("Only from 25 cm, in good light: take it in the hand or lean close."));
    face.willNotDo = row.verdict == Legible::No && (fitsFromAfar || face.sizes.empty());
    return face;
}

/// What all labels need, worked out once.
struct Makings {
    const Case &record;
    const Findings &findings;
    std::map<Id, ShortName> names; // of things
    std::map<Id, LabelRow> rows;   // of things
    std::map<Id, LabelRow> places; // the first row of each place
};

const LabelRow *rowOf(const std::map<Id, LabelRow> &rows, const Id &of) {
    const auto found = rows.find(of);
    return found == rows.end() ? nullptr : &found->second;
}

Label withTold(Label label, const std::string &told) {
    if (!told.empty())
        label.told.insert(label.told.begin(), told);
    return label;
}

Result<Label> fitted(const Makings &makings, const PlanLine &line, const Thing &thing, Label label) {
    const ShortName &name = makings.names.at(thing.id);
    const MayShorten may = shorteningOf(makings.record, line, thing, name);
    switch (label.medium) {
    case LabelMedium::Braille:
        return brailleFitted(std::move(label), brailleFace(thing), labelGrade(makings.record.client), may);
    case LabelMedium::LargePrint: {
        label.words = sentenceCase(label.words);
        const LabelRow *row = rowOf(makings.rows, thing.id);
        return printFitted(std::move(label), row ? printFace(*row) : PrintFace{}, may);
    }
    case LabelMedium::SpokenTag:
        label.words = tagText(thing, label.words);
        return tagFitted(std::move(label));
    case LabelMedium::SquareCode:
        label.words = tagText(thing, label.words);
        return codeFitted(std::move(label));
    }
    return label;
}

Result<Label> oneLabel(const Makings &makings, const PlanLine &line, const Thing &thing, LabelMedium medium,
                       const std::string &where) {
    const ShortName &name = makings.names.at(line.thing);
    Label label;
    label.medium = medium;
    label.thing = thing.id;
    label.name = thing.name;
    label.words = name.name;
    label.where = where;
    return fitted(makings, line, thing, std::move(label)).map([&](Label made) {
        return withTold(std::move(made), name.told);
    });
}

Makings makingsOf(const Case &record, const Findings &findings) {
    Makings makings{record, findings, {}, {}, {}};
    for (auto &name : shortNames(record))
        makings.names.try_emplace(name.thing, name);
    for (auto &row : legibleHere(record, findings)) {
        makings.places.try_emplace(row.place, row);
        if (!row.thing.text.empty())
            makings.rows.try_emplace(row.thing, row);
    }
    return makings;
}

Result<void> addLabels(const Makings &makings, const PlanLine &line, std::vector<Label> &labels) {
    const Thing *thing = thingOf(makings.record, line.thing);
    const Marker *marker = markOf(makings.record, line);
    if (!thing)
        return {};
    std::vector<std::pair<LabelMedium, std::string>> wanted;
    if (const auto medium = marker ? mediumOf(marker->medium) : std::nullopt)
        wanted.emplace_back(*medium, fixingOf(*thing, *marker).where);
    if (makings.record.client.hasCodeReader)
        wanted.emplace_back(LabelMedium::SquareCode, "beside a raised edge, never over braille");
    for (const auto &[medium, where] : wanted) {
        auto label = oneLabel(makings, line, *thing, medium, where);
        if (!label)
            return tl::unexpected(label.error());
        labels.push_back(std::move(*label));
    }
    return {};
}

/// The groups or sub-categories that most things of a place belong to, in the client's words.
std::string kindsIn(const Case &record, const Id &place, std::string Thing::*kind) {
    std::vector<std::pair<int, std::string>> counts; // negative, so that the most come first
    for (const PlanLine *line : linesOn(*record.plan, place)) {
        const Thing *thing = thingOf(record, line->thing);
        if (!thing || thing->medicine || thing->own || (thing->*kind).empty())
            continue;
        const auto found = std::ranges::find(counts, thing->*kind, &std::pair<int, std::string>::second);
        if (found == counts.end())
            counts.emplace_back(-1, thing->*kind);
        else
            --found->first;
    }
    std::ranges::stable_sort(counts, {}, &std::pair<int, std::string>::first);
    std::string words;
    for (std::size_t k = 0; k < std::min(counts.size(), mostGroups); ++k)
        words += (words.empty() ? "" : ", ") + counts[k].second;
    return words;
}

Result<Label> edgeLabel(const Makings &makings, Label label) {
    const auto never = [](const std::string &) { return false; };
    const bool onDoor = label.where == doorCard.where;
    const BrailleFace &edge = onDoor ? doorCard : shelfEdge;
    label.where = edge.where;
    if (label.medium == LabelMedium::Braille)
        return brailleFitted(std::move(label), edge, labelGrade(makings.record.client), never);
    label.words = sentenceCase(label.words);
    const LabelRow *row = rowOf(makings.places, label.place);
    PrintFace face = row ? printFace(*row) : PrintFace{};
    face.width = edge.width;
    face.height = onDoor ? edge.height : Millimetres{40};
    Label made = printFitted(label, face, never);
    if (made.fits || onDoor)
        return made;
    label.where = largeCard;
    face.width = doorCard.width;
    face.height = doorCard.height;
    Label larger = printFitted(std::move(label), face, never);
    return larger.fits ? larger : made;
}

/// What each place of the walk is called on its label: its groups; where two places have the same, what is
/// more specific; where that is the same too, the name of the place with it.
std::map<Id, std::string> placeNames(const Case &record) {
    std::map<Id, std::string> names;
    for (const Place &place : record.places) {
        const std::string groups = kindsIn(record, place.id, &Thing::group);
        names[place.id] = place.own ? std::string("own") : groups.empty() ? place.name : groups;
    }
    const auto changeTwice = [&](const auto &better) {
        const std::map<Id, std::string> before = names;
        for (const Place &place : record.places) {
            const std::string &name = before.at(place.id);
            const auto same = [&](const auto &other) { return sameName(other.second, name); };
            if (std::ranges::count_if(before, same) > 1 && name != place.name)
                names[place.id] = better(place, name);
        }
    };
    changeTwice([&](const Place &place, const std::string &name) {
        const std::string kinds = kindsIn(record, place.id, &Thing::sub);
        return kinds.empty() ? name : kinds;
    });
    changeTwice([](const Place &place, const std::string &name) { return name + ", " + place.name; });
    return names;
}

/// The section first if it has more than one place, then its places from the top.
std::vector<Label> labelsOfUnit(const Case &record, const Findings &findings, const Unit &unit,
                                const std::map<Id, std::string> &names) {
    const auto places = placesOf(record, unit.id);
    const LabelMedium medium = findings.readsBraille ? LabelMedium::Braille : LabelMedium::LargePrint;
    std::vector<Label> labels;
    const auto add = [&](const Place &place, const std::string &name, const std::string &words) {
        Label label;
        label.medium = medium;
        label.place = place.id;
        label.name = name;
        label.words = words;
        labels.push_back(std::move(label));
    };
    if (places.size() > 1)
        add(*places.front(), unit.name, unit.name), labels.back().where = doorCard.where;
    for (const Place *place : places)
        add(*place, placeWords(record, place->id), names.at(place->id));
    return labels;
}

} // namespace

int labelGrade(const Client &client) {
    return client.media.braille == BrailleGrade::Contracted ? 2 : 1;
}

Result<std::vector<Label>> thingLabels(const Case &record, const Findings &findings) {
    const auto plan = planOf(record);
    if (!plan)
        return tl::unexpected(plan.error());
    const Makings makings = makingsOf(record, findings);
    std::vector<Label> labels;
    for (const PlanLine *line : linesInWalk(record, **plan))
        if (const auto added = addLabels(makings, *line, labels); !added)
            return tl::unexpected(added.error());
    return labels;
}

Result<std::vector<Label>> sectionLabels(const Case &record, const Findings &findings) {
    const auto plan = planOf(record);
    if (!plan)
        return tl::unexpected(plan.error());
    std::vector<Label> labels;
    if (!findings.readsBraille && !findings.readsLargePrint)
        return labels;
    const Makings makings = makingsOf(record, findings);
    const std::map<Id, std::string> names = placeNames(record);
    for (const Unit *unit : walk(record))
        for (Label &label : labelsOfUnit(record, findings, *unit, names)) {
            auto made = edgeLabel(makings, std::move(label));
            if (!made)
                return tl::unexpected(made.error());
            labels.push_back(std::move(*made));
        }
    return labels;
}

std::string brailleLabelFile(const std::vector<Label> &labels) {
    constexpr std::size_t linesOfPage = 25;
    std::vector<std::vector<std::string>> pages;
    for (const Label &label : labels) {
        if (label.medium != LabelMedium::Braille || !label.fits)
            continue;
        if (pages.empty() || pages.back().size() + label.cells.size() > linesOfPage)
            pages.emplace_back();
        for (const std::string &line : label.cells)
            pages.back().push_back(asciiBraille(codePoints(line)));
        if (pages.back().size() < linesOfPage)
            pages.back().emplace_back(); // room to cut
    }
    std::string file;
    for (auto &page : pages) {
        page.resize(linesOfPage);
        for (const std::string &line : page)
            file += line + "\r\n";
        file += '\f';
    }
    return file;
}

Result<std::optional<Label>> labelOf(const Case &record, const Findings &findings, const Id &thing) {
    return thingLabels(record, findings).map([&](const std::vector<Label> &labels) {
        const auto found = std::ranges::find(labels, thing, &Label::thing);
        return found == labels.end() ? std::optional<Label>() : std::optional(*found);
    });
}

} // namespace reports
