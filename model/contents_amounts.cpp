#include "model/contents_reading.h"
#include "model/packs.h"
#include "model/spoken_numbers.h"
#include <algorithm>
#include <array>
#include <map>

namespace model::words {
namespace {

/// A unit that may stand without a number: "a kilo of rice", "litre bottle".
bool isBareUnit(const std::string &single) {
    static constexpr std::array names{"kilo", "litre", "liter", "pint", "pound", "gallon"};
    return std::find(names.begin(), names.end(), single) != names.end();
}

std::string unitOf(const std::string &low) {
    const std::string size = sizeUnit(low);
    return size.empty() ? lengthUnit(low) : size;
}

bool allFree(const Reading &r, std::size_t from, std::size_t to) {
    bool out = to <= r.all.size();
    for (std::size_t i = from; out && i < to; ++i)
        out = r.free(i);
    return out;
}

bool atEdge(const Reading &r, std::size_t i, std::size_t length) {
    const std::size_t end = i + length;
    return !r.quoted.empty() || r.nameTo > r.nameFrom || r.all[i].bracket || i == 0 || end >= r.all.size() ||
           r.taken[i - 1] || r.taken[end] || r.is(end, "x") || r.is(i - 1, "x");
}

bool takeNumber(Reading &r, std::size_t i) {
    const std::size_t sign = r.is(i, "x") ? 1 : 0;
    const SpokenNumber number = r.free(i + sign) ? numberAt(r.all, i + sign) : SpokenNumber{};
    const std::size_t length = sign + number.length;
    if (number.length == 0 || !allFree(r, i, i + length) || !atEdge(r, i, length))
        return false;
    if (number.value < 1 &&
        (r.is(i + length, "fat") || r.is(i + length, "sugar") || r.is(i + length, "salt")))
        return false; // "half fat"
    if (length == 1 && number.value >= 1990 && number.value < 2100 && r.all[i].low.size() == 4) {
        r.notes.push_back(r.all[i].typed); // "peaches 2018": a year
        r.take(i, i + 1);
        return true;
    }
    const std::size_t last = i + length - 1;
    if (r.all[last].glued && r.free(last + 1)) // "two-tier steamer"
        return false;
    r.counts.push_back(r.all[i].minus ? -number.value : number.value);
    r.take(i, i + length + (r.is(i + length, "x") ? 1 : 0));
    return true;
}

} // namespace

std::optional<Shape> packShape(const std::string &single) {
    static const std::map<std::string, Shape> packs{
        {"tin", Shape::Can},       {"can", Shape::Can},           {"jar", Shape::Jar},
        {"bottle", Shape::Bottle}, {"bag", Shape::Bag},           {"sack", Shape::Bag},
        {"net", Shape::Bag},       {"box", Shape::Box},           {"carton", Shape::Box},
        {"packet", Shape::Packet}, {"pkt", Shape::Packet},        {"sachet", Shape::Packet},
        {"tub", Shape::Tub},       {"pot", Shape::Tub},           {"punnet", Shape::Tub},
        {"tube", Shape::Tube},     {"canister", Shape::Canister}, {"caddy", Shape::Canister}};
    const auto found = packs.find(single);
    return found == packs.end() ? std::nullopt : std::optional(found->second);
}

std::optional<Shape> anyShape(const std::string &single) {
    static const std::map<std::string, Shape> shapes{
        {"mug", Shape::Mug}, {"cup", Shape::Mug},   {"plate", Shape::Plate}, {"bowl", Shape::Bowl},
        {"pan", Shape::Pan}, {"tool", Shape::Tool}, {"odd", Shape::Other}};
    const auto found = shapes.find(single);
    return found == shapes.end() ? packShape(single) : std::optional(found->second);
}

std::string shapeWord(Shape shape) {
    switch (shape) {
    case Shape::Jar:
        return "jar";
    case Shape::Bottle:
        return "bottle";
    case Shape::Can:
        return "tin";
    case Shape::Box:
        return "box";
    case Shape::Bag:
        return "bag";
    case Shape::Packet:
        return "packet";
    case Shape::Tub:
        return "tub";
    case Shape::Canister:
        return "canister";
    case Shape::Tube:
        return "tube";
    case Shape::Mug:
        return "mug";
    case Shape::Plate:
        return "plate";
    case Shape::Bowl:
        return "bowl";
    case Shape::Pan:
        return "pan";
    case Shape::Tool:
        return "tool";
    case Shape::Other:
        return "odd";
    }
    return "odd";
}

namespace {

/// "30 x 20 cm": the lengths of two sides, kept as they were said.
void takeSides(Reading &r) {
    for (std::size_t i = 0; i + 3 < r.all.size(); ++i) {
        const bool sides = allFree(r, i, i + 4) && numberFrom(r.all[i].low) && r.is(i + 1, "x") &&
                           numberFrom(r.all[i + 2].low) && !lengthUnit(r.all[i + 3].low).empty();
        if (!sides || r.all[i].bracket)
            continue;
        r.notes.push_back(joined(r.all, i, i + 4));
        r.take(i, i + 4);
    }
}

/// "paracetamol 500 mg": how strong it is, and no size of a pack.
void takeStrength(Reading &r) {
    for (std::size_t i = 0; i + 1 < r.all.size(); ++i) {
        const std::string unit = r.low(i + 1);
        if (!r.free(i) || !numberFrom(r.all[i].low) ||
            (unit != "mg" && unit != "mcg" && unit != "milligrams"))
            continue;
        r.notes.push_back(joined(r.all, i, i + 2));
        r.take(i, i + 2);
    }
}

} // namespace

void takeSizes(Reading &r) {
    takeSides(r);
    takeStrength(r);
    for (std::size_t i = 0; i < r.all.size(); ++i) {
        const SpokenNumber number = r.free(i) ? numberAt(r.all, i) : SpokenNumber{};
        const std::size_t unitAt = i + std::max<std::size_t>(number.length, 1);
        const bool inches = r.is(unitAt, "in") && unitAt + 1 == r.nameFrom && r.entry != nullptr &&
                            r.entry->usual.shape == Shape::Pan; // "9 in cake tin"
        const std::string unit = inches ? "inch" : r.free(unitAt) ? unitOf(r.all[unitAt].low) : std::string();
        if (number.length > 0 && number.value > 0 && !unit.empty() && allFree(r, i, unitAt + 1)) {
            const bool fluid = unit == "fl oz" && sizeUnit(r.low(unitAt + 1)) == "oz";
            const std::size_t end = unitAt + (fluid ? 2 : 1);
            r.sizes.emplace_back(number.value, unit);
            r.take(i, end + (r.is(end, "of") ? 1 : 0));
        } else if (isBareUnit(r.single(i)) && number.length == 0) {
            const std::size_t half = r.is(i + 1, "and") && r.is(i + 2, "a") && r.is(i + 3, "half") ? 3 : 0;
            const std::size_t end = i + 1 + half; // "a kilo and a half of rice"
            r.sizes.emplace_back(half > 0 ? 1.5 : 1, sizeUnit(r.single(i)));
            r.take(i, end + (r.is(end, "of") ? 1 : 0));
        }
    }
    static const std::map<std::string, std::string> classes{
        {"small", "small"}, {"little", "small"}, {"mini", "small"}, {"medium", "medium"},
        {"large", "large"}, {"big", "large"},    {"huge", "large"}, {"family", "large"}};
    for (std::size_t i = 0; i < r.all.size(); ++i) {
        const auto found = classes.find(r.low(i));
        if (found == classes.end() || r.compound(i) || (found->first == "family" && !r.is(i + 1, "size")))
            continue;
        if (r.sizeClass.empty())
            r.sizeClass = found->second;
        else if (r.sizeClass != found->second)
            r.otherClass = found->second;
        r.take(i, i + (r.is(i + 1, "size") || r.is(i + 1, "sized") ? 2 : 1));
    }
}

namespace {

/// "box of 80" of what is sold many in a pack: the word behind it. Else where it began.
std::size_t piecesEnd(const Reading &r, std::size_t i) {
    if (r.entry == nullptr || piecesInPack(*r.entry) <= 1)
        return i;
    const std::size_t at = r.is(i + 1, "of") ? i + 2 : i + 1;
    const SpokenNumber number = r.free(at) ? numberAt(r.all, at) : SpokenNumber{};
    const std::size_t end = at + number.length;
    return number.length > 0 && number.value > 1 && allFree(r, i, end) ? end : i;
}

} // namespace

bool saysSeveral(const std::string &single) {
    static constexpr std::array words{"pack", "pk",   "multipack", "packet",  "roll", "bunch",
                                      "set",  "pile", "pair",      "portion", "piece"};
    return std::find(words.begin(), words.end(), single) != words.end();
}

void takePack(Reading &r) {
    static constexpr std::array plain{"pack",    "pk",    "multipack", "roll",   "bunch", "loaf",  "set",
                                      "pile",    "pair",  "bulb",      "rasher", "slice", "pouch", "nest",
                                      "portion", "block", "piece",     "head",   "stick", "tray"};
    for (std::size_t i = 0; i < r.all.size(); ++i) {
        const bool bracket = r.free(i) && r.all[i].bracket;
        const auto shape = bracket ? anyShape(r.single(i)) : packShape(r.single(i));
        const bool isPlain = std::find(plain.begin(), plain.end(), r.single(i)) != plain.end();
        // an unknown name keeps the word, unless it begins the thing: "jar of ajvar", "ajvar jar"
        bool first = true;
        for (std::size_t k = 0; k < i; ++k)
            first = first && !(r.free(k) && !r.all[k].bracket && !numberFrom(r.all[k].low));
        const bool named = r.nameTo > r.nameFrom || !r.quoted.empty() || bracket || r.is(i + 1, "of");
        const bool edge = named || (!isPlain && (first ? r.free(i + 1) : !r.free(i + 1)));
        if (!r.free(i) || (!shape && !isPlain) || !edge || r.compound(i))
            continue;
        if (const std::size_t end = piecesEnd(r, i); end > i) {
            r.notes.push_back(joined(r.all, i, end));
            if (shape)
                r.pack = shape;
            r.take(i, end);
            return;
        }
        const bool piece = r.entry != nullptr && r.single(i) == singular(pieceInPack(*r.entry));
        if (shape && !piece) // "80 bags of tea" are no packs
            r.pack = shape;
        const bool behind = r.nameTo > r.nameFrom && i == r.nameTo && !bracket;
        if (behind && !r.is(i + 1, "of"))
            r.packBehind = r.all[i].typed;
        const bool holds =
            r.is(i + 1, "of") || (r.is(i + 1, "with") && r.nameFrom == i + 2); // "jar with rice"
        r.take(i, holds ? i + 2 : i + 1);
        if (r.pack)
            return;
    }
}

void takeCount(Reading &r) {
    for (std::size_t i = 0; i < r.all.size(); ++i) {
        if (r.free(i))
            takeNumber(r, i);
    }
    for (std::size_t i = 0; i < r.all.size(); ++i) {
        const bool article = r.is(i, "a") || r.is(i, "an") || r.is(i, "another");
        const bool begins = i == 0 || r.taken[i - 1];
        if (!article || !begins)
            continue;
        const bool vague =
            r.is(i + 1, "few") || r.is(i + 1, "lot") || r.is(i + 1, "bit") || r.is(i + 1, "little");
        if (r.counts.empty() && !vague)
            r.counts.push_back(1);
        r.take(i, i + (vague ? 2 : 1));
    }
}

namespace {

bool isOneOf(const std::string &low, const std::vector<std::string> &names) {
    return std::find(names.begin(), names.end(), low) != names.end();
}

/// Words that say where it stands or until when it keeps begin here.
bool beginsNote(const Reading &r, std::size_t i) {
    static const std::vector<std::string> places{"under", "behind", "beside", "above", "below",
                                                 "next",  "at",     "on",     "by",    "near"};
    static const std::vector<std::string> rooms{"the",  "drawer", "cupboard", "fridge", "freezer", "pot",
                                                "rack", "basket", "corner",   "larder", "pantry"};
    const bool inside = (r.is(i, "in") || r.is(i, "inside")) && isOneOf(r.low(i + 1), rooms);
    const bool date = (r.is(i, "use") && r.is(i + 1, "by")) || (r.is(i, "best") && r.is(i + 1, "before")) ||
                      r.is(i, "expires") || r.is(i, "bbe");
    return inside || date || (isOneOf(r.low(i), places) && r.free(i + 1));
}

/// "half empty", "nearly full", "unopened": the number of words.
std::size_t stateAt(const Reading &r, std::size_t i) {
    static const std::vector<std::string> parts{"half", "nearly", "almost", "quarter", "mostly", "part"};
    static const std::vector<std::string> states{"empty", "full", "used", "gone"};
    if (isOneOf(r.low(i), parts) && isOneOf(r.low(i + 1), states))
        return 2;
    const bool third = r.single(i + 1) == "third" || r.single(i + 1) == "quarter"; // "two thirds full"
    if (third && isOneOf(r.low(i + 2), states) && numberFrom(r.low(i)))
        return 3;
    return isOneOf(r.low(i), {"unopened", "sealed", "empty"}) ? 1 : 0;
}

} // namespace

void takeNotes(Reading &r) {
    for (std::size_t i = 0; i < r.all.size(); ++i) {
        if (const std::size_t length = r.free(i) ? stateAt(r, i) : 0; length > 0) {
            r.notes.push_back(joined(r.all, i, i + length));
            r.take(i, i + length);
        }
        const bool named = r.nameTo > r.nameFrom;
        if (!named || !beginsNote(r, i))
            continue;
        std::size_t end = i;
        while (r.free(end) && !r.all[end].bracket && !numberFrom(r.all[end].low))
            ++end;
        r.notes.push_back(joined(r.all, i, end));
        r.take(i, end);
    }
}

void takeFillers(Reading &r) {
    static constexpr std::array fillers{
        "some",   "few",  "several", "lots", "lot", "plenty", "loads", "the",     "there",  "theres", "is",
        "are",    "also", "then",    "and",  "um",  "er",     "about", "roughly", "around", "more",   "of",
        "i",      "see",  "have",    "has",  "got", "shes",   "hes",   "his",     "her",    "their",  "plus",
        "please", "next", "an",      "a",    "my",  "hmm",    "okay",  "so"};
    for (std::size_t i = 0; i < r.all.size(); ++i) {
        if (r.nameTo > r.nameFrom && i >= r.nameFrom)
            break;
        if (!r.free(i))
            continue;
        bool left = false;
        for (std::size_t k = i + 1; k < r.all.size(); ++k)
            left = left || (r.free(k) && !r.all[k].bracket);
        const bool named = r.nameTo > r.nameFrom || !r.quoted.empty();
        if (std::find(fillers.begin(), fillers.end(), r.all[i].low) == fillers.end() || (!left && !named))
            break;
        if (isOneOf(r.all[i].low, {"my", "his", "her", "their"}) && r.free(i + 1) && i + 1 != r.nameFrom)
            break; // "my late husband's mug"
        r.take(i, i + 1);
    }
    for (std::size_t i = std::max<std::size_t>(r.nameTo, 1); i < r.all.size(); ++i) {
        const bool article = isOneOf(r.low(i + 1), {"a", "an", "the", "its", "one"});
        std::size_t pack = article ? i + 2 : i + 1;
        while (r.free(pack) && isFact(r.all[pack].low) && pack + 1 < r.all.size())
            ++pack;                               // "in a glass jar"
        if (r.is(i, "in") && r.is(i + 1, "it")) { // "a jar with rice in it"
            r.take(i, i + 2);
            continue;
        }
        if (r.is(i, "in") && (pack < r.all.size() || r.nameTo > r.nameFrom) &&
            !r.free(pack)) { // "flour in a big tin"
            r.take(i, article ? i + 2 : i + 1);
            continue;
        }
        if (r.nameTo > r.nameFrom && isOneOf(r.low(i), {"each", "only", "left", "here", "there", "total",
                                                        "please", "is", "are", "very", "squeezy"}))
            r.take(i, i + 1);
    }
}

} // namespace model::words
