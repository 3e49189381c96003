#include "model/contents_facts.h"
#include "model/contents_line.h"
#include "model/contents_print.h"
#include "model/sentence.h"
#include <algorithm>
#include <array>
#include <cmath>

namespace model::words {
namespace {

LineParts withCount(const Reading &r, const std::vector<double> &counts) {
    LineParts parts = partsOf(r);
    parts.counts = counts;
    return parts;
}

LineParts withSize(const Reading &r, const std::string &size, bool really) {
    LineParts parts = partsOf(r);
    parts.size = size;
    parts.really = really;
    return parts;
}

/// "2400 g tins": 2 tins of 400 g, or one of 2400 g?
std::optional<Doubt> gluedCount(const Reading &r, double usual) {
    const auto &[value, unit] = r.sizes.front();
    const std::string digits = shortNumber(value);
    const std::string pack = shortNumber(usual / inBaseUnits(1, unit));
    if (!r.counts.empty() || digits.size() != pack.size() + 1 || digits.substr(1) != pack)
        return std::nullopt;
    const std::string few = Sentence::tr("{1} of {2} {3}", {digits.substr(0, 1), pack, unit});
    const std::string one = Sentence::tr("one of {1} {2}", {digits, unit});
    LineParts several = withSize(r, pack + " " + unit, false);
    several.counts = {digits[0] - '0' + 0.0};
    LineParts single = withSize(r, digits + " " + unit, true);
    single.counts = {1};
    return Doubt{Sentence::tr("{1} {2}: {3}, or {4}?", {digits, unit, few, one}),
                 {{few, lineFrom(several)}, {one, lineFrom(single)}}};
}

std::string sizeWords(const std::pair<double, std::string> &size) {
    return shortNumber(size.first) + " " + size.second;
}

LineParts withClass(const Reading &r, const std::string &size) {
    LineParts parts = partsOf(r);
    std::erase(parts.facts, r.sizeClass);
    parts.facts.push_back(size);
    return parts;
}

std::optional<Doubt> twoSizesDoubt(const Reading &r) {
    if (!r.otherClass.empty() && !r.really)
        return Doubt{Sentence::tr("Two sizes: {1} or {2}?", {r.sizeClass, r.otherClass}),
                     {{r.sizeClass, lineFrom(withClass(r, r.sizeClass))},
                      {r.otherClass, lineFrom(withClass(r, r.otherClass))}}};
    if (r.sizes.size() < 2 || r.really)
        return std::nullopt;
    const std::string first = sizeWords(r.sizes[0]);
    const std::string second = sizeWords(r.sizes[1]);
    return Doubt{
        Sentence::tr("Two sizes: {1} or {2}?", {first, second}),
        {{first, lineFrom(withSize(r, first, false))}, {second, lineFrom(withSize(r, second, false))}}};
}

std::optional<Doubt> countDoubt(const Reading &r) {
    if (r.counts.size() > 1) {
        const double first = r.counts[0];
        const double second = r.counts[1];
        return Doubt{Sentence::tr("Two counts: {1} or {2}?", {shortNumber(first), shortNumber(second)}),
                     {{shortNumber(first), lineFrom(withCount(r, {first}))},
                      {shortNumber(second), lineFrom(withCount(r, {second}))},
                      {Sentence::tr("count not given"), lineFrom(withCount(r, {}))}}};
    }
    if (r.counts.empty())
        return std::nullopt;
    const double count = r.counts.front();
    const bool part = count > 0 && count < 1;
    if (part || (count >= 1 && count <= 999 && count == std::floor(count)))
        return std::nullopt;
    Doubt doubt{Sentence::tr("{1} of them?", {shortNumber(count)}),
                {{Sentence::tr("count not given"), lineFrom(withCount(r, {}))}}};
    if (count <= -1 && count > -999) {
        const double plus = std::ceil(-count);
        doubt.answers.insert(doubt.answers.begin(), {shortNumber(plus), lineFrom(withCount(r, {plus}))});
    }
    if (count > 1 && count < 999)
        doubt.answers.push_back({shortNumber(std::ceil(count)), lineFrom(withCount(r, {std::ceil(count)}))});
    return doubt;
}

} // namespace

std::optional<Doubt> sizeDoubt(const Reading &r, const CatalogueThing *entry) {
    if (r.sizes.size() != 1 || r.really || !lengthUnit(r.sizes.front().second).empty())
        return std::nullopt;
    const auto usual = entry != nullptr ? amountOf(entry->pack) : std::nullopt;
    if (!usual)
        return std::nullopt;
    if (auto glued = gluedCount(r, *usual))
        return glued;
    const double amount = inBaseUnits(r.sizes.front().first, r.sizes.front().second);
    const double least = entry->least > 0 ? entry->least * 0.8 : *usual / 6;
    const double most = entry->most > 0 ? entry->most * 1.25 : *usual * 6;
    if (amount >= least && amount <= most)
        return std::nullopt;
    const std::string size = sizeWords(r.sizes.front());
    return Doubt{Sentence::tr("{1}: usual is {2}. Right?", {size, entry->pack}),
                 {{Sentence::tr("yes, {1}", {size}), lineFrom(withSize(r, size, true))},
                  {Sentence::tr("no, the usual {1}", {entry->pack}), lineFrom(withSize(r, "", false))}}};
}

std::optional<Doubt> amountDoubt(const Reading &r) {
    if (!r.soundTyped.empty()) {
        const double number = *numberFrom(r.sounds);
        return Doubt{Sentence::tr("{1}: {2} of them?", {r.soundTyped, r.sounds}),
                     {{Sentence::tr("{1} of them", {r.sounds}), lineFrom(withCount(r, {number}))},
                      {Sentence::tr("count not given"), lineFrom(withCount(r, {}))}}};
    }
    if (auto counts = countDoubt(r))
        return counts;
    if (auto sizes = twoSizesDoubt(r))
        return sizes;
    if (r.vague.empty())
        return std::nullopt;
    Doubt doubt{Sentence::tr("{1}: how often?", {r.vague}), {}};
    for (const auto &[words, uses] :
         {std::pair{Sentence::tr("3 times a week"), 3.0}, std::pair{Sentence::tr("daily"), 7.0},
          std::pair{Sentence::tr("weekly"), 1.0}, std::pair{Sentence::tr("monthly"), 12.0 / 52}}) {
        LineParts parts = partsOf(r);
        parts.uses = uses;
        doubt.answers.push_back({words, lineFrom(parts)});
    }
    return doubt;
}

std::optional<Doubt> shapeDoubt(const Reading &r, const std::string &name) {
    static constexpr std::array shapes{Shape::Jar,  Shape::Can,   Shape::Bottle, Shape::Packet,
                                       Shape::Box,  Shape::Bag,   Shape::Tub,    Shape::Bowl,
                                       Shape::Pan,  Shape::Tool,  Shape::Mug,    Shape::Canister,
                                       Shape::Tube, Shape::Plate, Shape::Other};
    LineParts parts = partsOf(r);
    parts.name = name;
    parts.quoted = true;
    const bool sized = !r.sizes.empty() || !r.sizeClass.empty();
    Doubt doubt;
    if (!r.pack) {
        doubt.question = sized ? Sentence::tr("shape?") : Sentence::tr("shape and size?");
        for (const Shape shape : shapes) {
            LineParts more = parts;
            more.facts.insert(more.facts.begin(), shapeWord(shape));
            doubt.answers.push_back({Sentence::tr(shapeWord(shape)), lineFrom(more)});
        }
        return doubt;
    }
    if (sized)
        return std::nullopt;
    doubt.question = Sentence::tr("size?");
    for (const char *size : {Sentence::later("medium"), Sentence::later("small"), Sentence::later("large")}) {
        LineParts more = parts;
        more.facts.emplace_back(size);
        doubt.answers.push_back({Sentence::tr(size), lineFrom(more)});
    }
    return doubt;
}

std::optional<Doubt> factDoubt(const Reading &r) {
    if (r.unknown.empty())
        return std::nullopt;
    LineParts without = partsOf(r);
    without.unknown.clear();
    LineParts noted = without;
    noted.notes.push_back(r.unknown);
    LineParts named = without;
    named.name += " " + r.unknown;
    Doubt doubt{Sentence::tr("{1}: not understood. What is it?", {r.unknown}),
                {{Sentence::tr("a note"), lineFrom(noted)},
                 {Sentence::tr("part of the name"), lineFrom(named)},
                 {Sentence::tr("leave it out"), lineFrom(without)}}};
    if (r.contested) {
        doubt.question = Sentence::tr("{1}: not taken as a claim. Keep it?", {r.unknown});
        doubt.answers.erase(doubt.answers.begin() + 1); // a name with these words would claim it
    }
    return doubt;
}

} // namespace model::words
