#include "model/legible.h"
#include "model/print_size.h"
#include "model/reading_ease.h"
#include "model/sentence.h"
#include "model/sight.h"
#include "model/typed.h"
#include "model/usual_sizes.h"
#include <algorithm>
#include <cmath>
#include <iterator>
#include <numbers>
#include <sstream>

namespace model {

namespace {

constexpr double letterWidth = 0.6, lineHeight = 1.25; // em
constexpr double millimetresPerPoint = 25.4 / 72;
constexpr int mostLines = 3;
constexpr double usualReserve = 2, hardReserve = 3;
constexpr Centimetres labelAbove{5};    // centre of a label above its shelf
constexpr Millimetres edgeHeight{18};   // strip on the edge of a shelf
constexpr Millimetres tallestLabel{40}; // print on packs leaves no more
constexpr double shareOfWidth = 0.8, shareOfHeight = 0.4;
constexpr Centimetres inHand{25};

std::vector<std::string> wordsIn(const std::string &text) {
    std::istringstream stream(text);
    return {std::istream_iterator<std::string>(stream), {}};
}

/// Letters of the longest line if the words are broken into at most `lines`; none if it takes more.
std::optional<std::size_t> longestLine(const std::vector<std::string> &words, int lines, std::size_t room) {
    std::size_t used = 0, longest = 0;
    int line = 1;
    for (const std::string &word : words) {
        const std::size_t with = used == 0 ? word.size() : used + 1 + word.size();
        if (with > room && used > 0) {
            ++line;
            used = word.size();
        } else {
            used = with;
        }
        longest = std::max(longest, used);
    }
    return line <= lines ? std::optional(longest) : std::nullopt;
}

/// Shortest possible longest line with this many lines.
std::size_t widthInLetters(const std::vector<std::string> &words, int lines) {
    std::size_t room = 1;
    for (const std::string &word : words)
        room = std::max(room, word.size());
    for (;; ++room)
        if (const auto longest = longestLine(words, lines, room))
            return *longest;
}

struct Face {
    Millimetres width, height;
};

/// Room for a label: on the front, on the lid, or on the edge of the shelf.
Face faceOf(const Thing *thing, Centimetres shelfWidth, bool onTop) {
    if (!thing)
        return {{std::min(100.0, shelfWidth.value * 10)}, edgeHeight};
    const double width = (thing->width ? thing->width->value.value : 7.0) * 10 * shareOfWidth;
    const double up = onTop ? (thing->depth ? thing->depth->value.value : 7.0) * 10 * shareOfWidth
                            : (thing->height ? thing->height->value.value : 12.0) * 10 * shareOfHeight;
    return {{width}, {std::min(up, tallestLabel.value)}};
}

/// Type that is needed on a label which is seen at a slant.
std::optional<Points> neededAt(LogMar acuity, const Sightline &line, double reserve) {
    const auto straight = printFor(acuity, line.distance, reserve);
    if (!straight)
        return std::nullopt;
    const Points slanted{std::ceil(straight->value / line.seen)};
    return slanted > largestPrint ? std::nullopt : std::optional(slanted);
}

std::string pointWords(const std::optional<Points> &size) {
    return size ? Sentence::tr("{1} point", {typed::words(size->value, 0)})
                : Sentence::tr("more than {1} point", {typed::words(largestPrint.value, 0)});
}

std::string lightWords(Light light) {
    switch (light) {
    case Light::NotAsked:
        return Sentence::tr("light not asked, taken as dim");
    case Light::Bright:
        return Sentence::tr("bright light");
    case Light::Fair:
        return Sentence::tr("fair light");
    case Light::Dim:
        return Sentence::tr("dim light");
    }
    return {};
}

bool isDim(Light light) {
    return light == Light::Dim || light == Light::NotAsked;
}

std::string lineWords(const Sightline &line) {
    std::string words = Sentence::tr("Seen from {1} cm", {typed::words(line.distance.value, 0)});
    const double degrees = std::abs(line.degrees);
    if (degrees >= 10)
        words += Sentence::tr(
            ", {1} degrees {2}",
            {typed::words(degrees, 0), (line.degrees > 0 ? Sentence::tr("down") : Sentence::tr("up"))});
    return words + (line.onTop ? Sentence::tr(", best on the lid") : "");
}

/// What else helps: the thing in the hand, or no print at all.
std::string otherWay(const LabelRow &row, const Findings &findings) {
    const auto close = printFor(*findings.printAcuity, inHand, usualReserve);
    if (!row.thing.text.empty() && close && *close <= row.fits)
        return Sentence::tr(" Taken in the hand to 25 cm in good light it works: {1}.", {pointWords(close)});
    return Sentence::tr(" Mark by touch, sound or braille instead.");
}

struct Contrast {
    ReadingEase ease = ReadingEase::HighFluent;
    bool known = false, severe = false;
    double times = 0;
};

Contrast contrastOf(const Findings &findings, const LabelColours &colours) {
    if (!findings.contrastSensitivity)
        return {};
    const double weber = printedContrast(colours.print, colours.ground);
    const double times = contrastReserve(weber, *findings.contrastSensitivity);
    return {easeOfContrast(times), true, contrastBand(*findings.contrastSensitivity) >= ContrastBand::Severe,
            times};
}

std::string contrastWords(const Contrast &contrast) {
    if (!contrast.known)
        return Sentence::tr(" Contrast sensitivity was not measured.");
    if (contrast.ease >= ReadingEase::Fluent)
        return {};
    return Sentence::tr(" The colours have only {1} times the contrast that is just seen.",
                        {typed::words(contrast.times, 1)});
}

Legible verdictOf(const LabelRow &row, const Contrast &contrast) {
    if (contrast.known && contrast.ease == ReadingEase::None)
        return Legible::No;
    const bool onlyWithLamp = contrast.known && contrast.ease == ReadingEase::Spot;
    if (row.needed && *row.needed <= row.fits && !onlyWithLamp)
        return Legible::Works;
    return row.withLamp && *row.withLamp <= row.fits ? Legible::WithLamp : Legible::No;
}

struct Spot {
    const Place *place;
    const Thing *thing; // or nullptr: the edge of the shelf
    std::string words;
};

LabelRow rowOf(const Spot &spot, const UsualSize &size, const Findings &findings,
               const LabelColours &colours) {
    LabelRow row;
    row.place = spot.place->id;
    row.thing = spot.thing ? spot.thing->id : Id{};
    row.words = spot.words;
    row.line = sightline(findings.eye.value, size.height + labelAbove);
    const Face face = faceOf(spot.thing, size.width, row.line.onTop);
    row.width = face.width;
    row.height = face.height;
    row.fits = largestFitting(row.words, face.width, face.height);
    if (!findings.printAcuity) {
        row.verdict = findings.belowChart ? Legible::No : Legible::NotKnown;
        row.because =
            findings.belowChart
                ? Sentence::tr(
                      "Acuity is below every chart: print will not do. Mark by touch, sound or braille.")
                : Sentence::tr("No acuity was entered, so no size follows.");
        return row;
    }
    const Contrast contrast = contrastOf(findings, colours);
    const bool dim = isDim(spot.place->light);
    row.taken = printFor(*findings.printAcuity, inHand, contrast.severe ? hardReserve : usualReserve);
    row.needed =
        neededAt(*findings.printAcuity, row.line, dim || contrast.severe ? hardReserve : usualReserve);
    row.withLamp = neededAt(*findings.printAcuity, row.line, contrast.severe ? hardReserve : usualReserve);
    row.verdict = verdictOf(row, contrast);
    row.because = Sentence::tr("{1}: needs {2} in {3}, {4} point fits.{5}",
                               {lineWords(row.line), pointWords(row.needed), lightWords(spot.place->light),
                                typed::words(std::floor(row.fits.value), 0), contrastWords(contrast)});
    if (row.verdict == Legible::WithLamp)
        row.because += Sentence::tr(" With a lamp on it {1} is enough.", {pointWords(row.withLamp)});
    if (row.verdict == Legible::No)
        row.because += otherWay(row, findings);
    return row;
}

/// What stands on a place by the plan, or now if there is no plan.
std::vector<Spot> spotsOn(const Case &record, const Place &place) {
    std::vector<Spot> spots;
    const bool planned = record.plan && !record.plan->lines.empty();
    if (planned) {
        for (const PlanLine &line : record.plan->lines) {
            if (line.place != place.id)
                continue;
            const auto thing = std::ranges::find(record.things, line.thing, &Thing::id);
            if (thing != record.things.end())
                spots.push_back({&place, &*thing, line.labelText.empty() ? thing->name : line.labelText});
        }
    } else {
        for (const Thing &thing : record.things)
            if (thing.place == place.id)
                spots.push_back({&place, &thing, thing.name});
    }
    if (spots.empty())
        spots.push_back({&place, nullptr, place.name});
    return spots;
}

/// Where the thing stands by the plan, or now if there is no plan.
Id placeOf(const Case &record, const Id &thing) {
    if (record.plan && !record.plan->lines.empty()) {
        const auto line = std::ranges::find(record.plan->lines, thing, &PlanLine::thing);
        return line == record.plan->lines.end() ? Id{} : line->place;
    }
    const auto found = std::ranges::find(record.things, thing, &Thing::id);
    return found == record.things.end() ? Id{} : found->place.value_or(Id{});
}

/// Of one place, or of every place if `only` is empty.
std::vector<LabelRow> rowsOn(const Case &record, const Findings &findings, const LabelColours &colours,
                             const Id &only) {
    std::vector<LabelRow> rows;
    for (const Unit &unit : record.units) {
        const auto count = static_cast<int>(std::ranges::count(record.places, unit.id, &Place::unit));
        for (const Place &place : record.places) {
            if (place.unit != unit.id || (!only.empty() && place.id != only))
                continue;
            const UsualSize size = sizeOf(place, unit, count);
            for (const Spot &spot : spotsOn(record, place))
                rows.push_back(rowOf(spot, size, findings, colours));
        }
    }
    return rows;
}

} // namespace

std::string wordsOf(Legible verdict) {
    switch (verdict) {
    case Legible::Works:
        return Sentence::tr("works");
    case Legible::WithLamp:
        return Sentence::tr("works with a lamp");
    case Legible::No:
        return Sentence::tr("will not do");
    case Legible::NotKnown:
        return Sentence::tr("not known");
    }
    return {};
}

Sightline sightline(Centimetres eye, Centimetres label, Centimetres ahead) {
    const double down = eye.value - label.value;
    Sightline line;
    line.distance = {std::hypot(down, ahead.value)};
    line.degrees = std::atan2(down, ahead.value) * 180 / std::numbers::pi;
    const double front = ahead / line.distance;
    const double top = down / line.distance.value; // negative above the eye: no lid is seen
    line.onTop = top > front;
    line.seen = std::max(front, top);
    return line;
}

Points largestFitting(const std::string &words, Millimetres width, Millimetres height) {
    const auto parts = wordsIn(words);
    if (parts.empty() || !(width.value > 0 && height.value > 0))
        return {0};
    double best = 0;
    for (int lines = 1; lines <= std::min<int>(mostLines, static_cast<int>(parts.size())); ++lines) {
        const double across = width.value / (static_cast<double>(widthInLetters(parts, lines)) * letterWidth);
        const double down = height.value / (lines * lineHeight);
        best = std::max(best, std::min(across, down) / millimetresPerPoint);
    }
    return {best};
}

std::vector<LabelRow> legibleHere(const Case &record, const Findings &findings, const LabelColours &colours) {
    return rowsOn(record, findings, colours, {});
}

bool printFitsOn(const Thing &thing, const std::string &words, const Findings &findings) {
    if (!findings.printAcuity)
        return true;
    const double reserve = contrastOf(findings, {}).severe ? hardReserve : usualReserve;
    const auto least = printFor(*findings.printAcuity, inHand, reserve);
    const auto fits = [&](bool onTop) {
        const Face face = faceOf(&thing, {}, onTop);
        return *least <= largestFitting(words, face.width, face.height);
    };
    return least && (fits(false) || fits(true));
}

std::optional<LabelRow> legibleThing(const Case &record, const Findings &findings, const Id &thing) {
    const Id place = placeOf(record, thing);
    if (place.empty())
        return std::nullopt;
    const std::vector<LabelRow> rows = rowsOn(record, findings, {}, place);
    const auto found = std::ranges::find(rows, thing, &LabelRow::thing);
    return found == rows.end() ? std::nullopt : std::optional(*found);
}

} // namespace model
