#include "model/contents_harm.h"
#include "model/contents_line.h"
#include "model/contents_print.h"
#include "model/sentence.h"
#include <algorithm>
#include <array>

namespace model::words {
namespace {

constexpr std::size_t mostCandidates = 5;

bool isJoint(const std::string &low) {
    return low == "and" || low == "&" || low == "plus" || low == "n" || low == "/" || low == "+";
}

bool inName(const Reading &r, std::size_t i) {
    return i >= r.nameFrom && i < r.nameTo;
}

/// Words that tell one make from another and change none of the usual facts.
bool isDescription(const std::string &low) {
    static constexpr std::array names{
        "organic",       "low",       "fat",         "reduced",  "light",     "lite",      "decaf",
        "decaffeinated", "sliced",    "grated",      "whole",    "salted",    "unsalted",  "smoked",
        "unsmoked",      "sweetened", "unsweetened", "skimmed",  "semi",      "free",      "range",
        "extra",         "strong",    "mild",        "mature",   "virgin",    "value",     "own",
        "brand",         "best",      "good",        "cheap",    "spare",     "new",       "old",
        "thick",         "thin",      "fine",        "coarse",   "cut",       "in",        "with",
        "added",         "no",        "full",        "half",     "easy",      "quick",     "instant",
        "loose",         "tall",      "short",       "square",   "round",     "homemade",  "home",
        "made",          "decanted",  "leftover",    "everyday", "crusty",    "farmhouse", "lean",
        "vintage",       "electric",  "irish",       "scottish", "plain",     "our",       "your",
        "late",          "deep",      "shallow",     "wide",     "narrow",    "biggest",   "smallest",
        "used",          "always",    "other",       "second",   "favourite", "favorite"};
    return std::find(names.begin(), names.end(), low) != names.end();
}

/// "no salt", "with oil" tell of a make; "peanut oil" is another thing than peanuts.
bool isOfMake(const Reading &r, std::size_t i) {
    static constexpr std::array stuffs{"water", "brine", "oil", "juice", "salt", "sugar"};
    static constexpr std::array before{"in", "no", "with", "added", "less", "low", "reduced", "without"};
    const auto among = [](const auto &names, const std::string &low) {
        return std::find(names.begin(), names.end(), low) != names.end();
    };
    return among(stuffs, r.all[i].low) && i > 0 && among(before, r.all[i - 1].low);
}

/// Beside a thing that lasts a colour or a stuff changes nothing: "blue mug", "steel pan".
bool isLook(const std::string &low) {
    static constexpr std::array looks{
        "white", "black",     "red",      "blue",   "green", "yellow",    "brown",  "grey",   "gray",
        "pink",  "orange",    "purple",   "cream",  "steel", "stainless", "enamel", "iron",   "copper",
        "cast",  "aluminium", "aluminum", "silver", "clear", "non",       "stick",  "lidded", "pretty"};
    return isFact(low) || std::find(looks.begin(), looks.end(), low) != looks.end();
}

struct Rest {
    std::vector<std::size_t> before, after; // words beside the catalogue name that say what it is
};

Rest restOf(const Reading &r) {
    Rest rest;
    for (std::size_t i = 0; i < r.all.size(); ++i) {
        const bool fitted = r.is(i, "with") && r.entry != nullptr && isLasting(*r.entry); // "pan with lid"
        if (i >= r.nameTo && (r.is(i, "in") || fitted) && !r.all[i].bracket)
            break; // "in spring water", "in tomato sauce": how it is packed
        const bool without = i + 1 < r.all.size() && r.all[i + 1].low == "free"; // "sugar free squash"
        if (r.taken[i] || without || r.all[i].bracket || inName(r, i) || isDescription(r.all[i].low) ||
            isOfMake(r, i))
            continue;
        (i < r.nameFrom ? rest.before : rest.after).push_back(i);
    }
    return rest;
}

/// "tinned ham" is another thing than ham; "tinned tomatoes" are what they are anyway.
bool agrees(const std::string &low, const Thing &thing) {
    if (low == "tinned" || low == "canned")
        return thing.shape == Shape::Can;
    if (low == "dried" || low == "dry")
        return thing.storage == Storage::Dry && thing.shape != Shape::Can && thing.group != "fresh";
    if (low == "fresh")
        return thing.storage == Storage::Fridge || thing.group == "fresh" || thing.group == "bakery";
    if (low == "bottled")
        return thing.shape == Shape::Bottle;
    return false;
}

bool saysStorage(const std::string &low) {
    return low == "tinned" || low == "canned" || low == "dried" || low == "dry" || low == "fresh" ||
           low == "bottled" || low == "pickled" || low == "cooked" || low == "raw" || low == "dog" ||
           low == "cat" || low == "pet" || low == "baby" || low == "bird";
}

DoubtAnswer named(const Reading &r, const std::string &name) {
    LineParts parts = partsOf(r);
    parts.name = name;
    parts.quoted = false;
    return {name, lineFrom(parts)};
}

DoubtAnswer kept(const Reading &r, const std::string &words, const std::string &name,
                 const std::string &like) {
    LineParts parts = partsOf(r);
    parts.name = name;
    parts.quoted = true;
    parts.like = like;
    return {words, lineFrom(parts)};
}

Doubt candidates(Reading &r, const std::string &name, const std::vector<NearName> &found) {
    Doubt doubt{name + ": " + found.front().name + "?", {}};
    for (std::size_t i = 0; i < std::min(found.size(), mostCandidates); ++i)
        doubt.answers.push_back(named(r, found[i].name));
    doubt.answers.push_back(kept(r, Sentence::tr("something else: {1}", {name}), name, ""));
    r.entry = found.front().thing;
    return doubt;
}

/// Every word of the name is a whole word of some known name: then it is no abbreviation.
bool isWhole(const std::string &name, const Lexicon &lexicon) {
    const auto all = wordsOf(name);
    return std::all_of(all.begin(), all.end(), [&](const Word &word) { return lexicon.isWord(word.single); });
}

/// "tom pur", "marmal": cut words of one name only, and enough of it to be sure.
bool isAbbreviation(const std::string &typed, const std::string &name, const Lexicon &lexicon) {
    if (comparable(typed) == "stuff")
        return false;
    const bool words = wordsOf(typed).size() > 1 && typed.size() >= 6;
    const bool letters = typed.size() >= 5 && typed.size() * 10 > name.size() * 6;
    return (words || letters) && !isWhole(typed, lexicon);
}

std::string knownWords(const Reading &r, const std::vector<std::size_t> &at, const Lexicon &lexicon) {
    std::string out;
    for (const std::size_t i : at) {
        const auto *known = lexicon.find(r.all[i].typed);
        const bool another = (known != nullptr && known != r.entry) || saysStorage(r.all[i].low);
        if (isLasting(*r.entry) && isLook(r.all[i].low))
            continue; // "iron frying pan"
        if (another && !(saysStorage(r.all[i].low) && agrees(r.all[i].low, r.entry->usual)))
            out += (out.empty() ? "" : " ") + r.all[i].typed;
    }
    return out;
}

/// "frozen", "instant": what tells a special form of a thing from the plain one.
bool saysState(const std::string &low) {
    static constexpr std::array states{"frozen", "instant", "chilled", "packet", "ready", "long"};
    return saysStorage(low) || std::find(states.begin(), states.end(), low) != states.end();
}

/// Of words that are known as they are, no misspelling is looked for: "crab paste" has no pasta in it.
std::vector<NearName> tailAlike(const std::string &tail, const Lexicon &lexicon) {
    return isWhole(tail, lexicon) ? std::vector<NearName>() : lexicon.alike(tail);
}

/// Names that this one may stand for, the likeliest first, each thing once.
std::vector<NearName> nearNames(const Reading &r, const std::string &name, const Lexicon &lexicon) {
    const bool whole = isWhole(name, lexicon);
    std::vector<NearName> found = lexicon.spokenAs(name);
    const auto add = [&](const std::vector<NearName> &more) {
        found.insert(found.end(), more.begin(), more.end());
    };
    const auto alike = lexicon.alike(name);
    auto ending = whole ? lexicon.endingWith(name) : alike;
    const auto plain = std::stable_partition(ending.begin(), ending.end(), [&](const NearName &near) {
        return !whole || !saysState(wordsOf(near.name).front().low);
    });
    add({ending.begin(), plain}); // "baked beans" before "bean salad"
    add(lexicon.beginningWith(name));
    add({plain, ending.end()}); // "pitta bread" before "frozen pitta"
    add(alike);
    const auto all = wordsOf(name);
    for (std::size_t from = 1;
         r.nameTo == r.nameFrom && from < std::min<std::size_t>(all.size(), 6) && found.empty(); ++from)
        add(tailAlike(joined(all, from, all.size()), lexicon));
    const std::string matched = comparable(joined(r.all, r.nameFrom, r.nameTo));
    std::vector<NearName> once;
    for (const auto &near : found) {
        const bool again =
            std::any_of(once.begin(), once.end(), [&](const NearName &o) { return o.thing == near.thing; });
        if (!again && comparable(near.name) != matched)
            once.push_back(near);
    }
    return once;
}

std::optional<Doubt> unmatched(Reading &r, std::string &name, const Lexicon &lexicon) {
    if (const auto *turned = lexicon.findTurned(name)) {
        r.entry = turned;
        return std::nullopt;
    }
    const auto beginning = lexicon.beginningWith(name);
    if (beginning.size() == 1 && isAbbreviation(name, beginning.front().name, lexicon)) {
        r.entry = beginning.front().thing;
        name = beginning.front().name;
        return std::nullopt;
    }
    const auto near = nearNames(r, name, lexicon);
    return near.empty() ? std::nullopt : std::optional(candidates(r, name, near));
}

/// "tomatoes tinned chopped": the name without what agrees with the thing anyway.
const CatalogueThing *findBared(const Reading &r, const Lexicon &lexicon) {
    std::string bare;
    std::vector<std::string> said;
    for (std::size_t i = 0; i < r.all.size(); ++i) {
        if ((r.taken[i] && !inName(r, i)) || r.all[i].bracket || isDescription(r.all[i].low) ||
            isOfMake(r, i))
            continue;
        if (saysStorage(r.all[i].low))
            said.push_back(r.all[i].low);
        else
            bare += (bare.empty() ? "" : " ") + r.all[i].typed;
    }
    const auto *found = lexicon.findTurned(bare);
    const bool agreed =
        found != nullptr && std::all_of(said.begin(), said.end(),
                                        [&](const std::string &low) { return agrees(low, found->usual); });
    return agreed ? found : nullptr;
}

/// "frother", "jug": what a thing is for a food is another thing, what else follows a name is a kind of it.
bool namesTool(const std::string &single) {
    static constexpr std::array tools{"jug",     "pan",  "dish",  "bin",   "box",    "spoon",
                                      "machine", "rack", "tray",  "bowl",  "basket", "brush",
                                      "board",   "pot",  "stand", "press", "knife",  "mill"};
    return single.ends_with("er") || single.ends_with("or") ||
           std::find(tools.begin(), tools.end(), single) != tools.end();
}

/// "Yorkshire pudding mix": two names in one, of which the other reaches into the matched one.
bool overlapsAnother(const Reading &r, const Lexicon &lexicon) {
    for (std::size_t to = r.nameFrom + 1; to < r.nameTo; ++to) {
        for (std::size_t from = r.nameFrom; from-- > 0 && r.free(from) && !r.all[from].bracket;) {
            const auto *other = lexicon.find(joined(r.all, from, to));
            if (other != nullptr && other != r.entry)
                return true;
        }
    }
    return false;
}

/// "hand cream", "bath salts": before a word with which names of several things end, a word that is not known
/// may make it another thing.
bool isLoose(const Reading &r, const Rest &rest, const Lexicon &lexicon) {
    const bool amount = r.is(r.nameFrom - 1, "of"); // "a knob of butter", "stack of plates"
    if (amount || r.nameTo - r.nameFrom != 1 ||
        lexicon.endingWith(joined(r.all, r.nameFrom, r.nameTo)).empty())
        return false;
    return std::any_of(rest.before.begin(), rest.before.end(), [&](std::size_t i) {
        const auto first = static_cast<unsigned char>(r.all[i].typed[0]);
        const bool sign = first == 0xF0 || first == 0xE2;  // an emoji
        const bool whose = r.all[i].typed.ends_with("'s"); // "husband's mug"
        return !sign && !whose && lexicon.find(r.all[i].typed) != r.entry && !isFact(r.all[i].low) &&
               !(isLasting(*r.entry) && isLook(r.all[i].low));
    });
}

/// A name of which only the end is known: "chicken soup", when there is soup in the catalogue.
std::optional<Doubt> kindDoubt(Reading &r, const std::string &name, const Rest &rest,
                               const Lexicon &lexicon) {
    const CatalogueThing &entry = *r.entry;
    if (!rest.after.empty()) {
        Doubt doubt{Sentence::tr("{1}: a kind of {2}?", {name, entry.name}),
                    {kept(r, Sentence::tr("a kind of {1}", {entry.name}), name, entry.name),
                     kept(r, Sentence::tr("something else"), name, "")}};
        if (namesTool(r.all[rest.after.back()].single)) {
            std::swap(doubt.answers[0], doubt.answers[1]);
            r.entry = nullptr;
        }
        return doubt;
    }
    const std::string others = knownWords(r, rest.before, lexicon);
    if (others.empty() && !isLoose(r, rest, lexicon) && !overlapsAnother(r, lexicon))
        return std::nullopt;
    const auto *turned = lexicon.findInAnyOrder(name);
    if (turned != nullptr)
        r.entry = turned;
    Doubt doubt{Sentence::tr("{1}: the same as {2}?", {name, entry.name}),
                {kept(r, Sentence::tr("a kind of {1}", {entry.name}), name, entry.name),
                 kept(r, Sentence::tr("something else"), name, "")}};
    if (turned != nullptr) {
        doubt.question = name + ": " + turned->name + "?";
        doubt.answers.insert(doubt.answers.begin(), named(r, turned->name));
    }
    const bool things = lexicon.find(others) != nullptr;
    if (things)
        doubt.answers.push_back({Sentence::tr("two things: {1}, {2}", {others, entry.name}),
                                 others + "; " + named(r, entry.name).line});
    return doubt;
}

/// "iron pot", "knife tub": behind the name of what lasts, a pack is another thing more often than a pack.
std::optional<Doubt> packDoubt(Reading &r, std::string &name) {
    const bool set = r.packBehind == "set" && r.entry->usual.klass == Klass::Food; // "tea set"
    if (!set && (r.packBehind.empty() || !isLasting(*r.entry) || saysSeveral(singular(lower(r.packBehind))) ||
                 r.pack == r.entry->usual.shape))
        return std::nullopt;
    const std::string entry = name;
    name += " " + r.packBehind;
    DoubtAnswer same = named(r, entry);
    r.entry = nullptr;
    r.pack.reset();
    return Doubt{Sentence::tr("{1}: another thing than {2}?", {name, entry}),
                 {kept(r, Sentence::tr("another thing: {1}", {name}), name, ""),
                  {Sentence::tr("{1}, in a {2}", {entry, r.packBehind}), same.line}}};
}

/// "2 tins of carrots": what a tin or a jar holds keeps in a cupboard, and is no fresh or frozen food.
std::optional<Doubt> tinnedDoubt(Reading &r, const std::string &name, const Lexicon &lexicon) {
    const Thing &usual = r.entry->usual;
    const bool fresh = usual.group == "fresh" || (r.pack == Shape::Can && usual.storage != Storage::Dry);
    if (r.really || usual.klass != Klass::Food || !fresh || (r.pack != Shape::Can && r.pack != Shape::Jar))
        return std::nullopt;
    const CatalogueThing *tinned = nullptr;
    for (const std::string &bare : {name, joined(r.all, r.nameFrom, r.nameTo), r.entry->name})
        if (tinned == nullptr && r.pack == Shape::Can)
            tinned = lexicon.find("tinned " + bare);
    if (tinned != nullptr) {
        r.entry = tinned;
        return std::nullopt;
    }
    DoubtAnswer cupboard = kept(r, Sentence::tr("yes, from a cupboard"), name, r.entry->name);
    cupboard.line += " (cupboard)";
    LineParts same = partsOf(r);
    same.really = true;
    return Doubt{Sentence::tr("{1} in a {2}: kept in a cupboard?", {name, shapeWord(*r.pack)}),
                 {cupboard,
                  {Sentence::tr("no, as {1}", {r.entry->name}), lineFrom(same)},
                  kept(r, Sentence::tr("something else"), name, "")}};
}

} // namespace

std::optional<Doubt> splitDoubt(const Reading &r, const Lexicon &lexicon) {
    if (!r.quoted.empty())
        return std::nullopt;
    std::vector<std::size_t> joints;
    for (std::size_t i = 1; i + 1 < r.all.size(); ++i) {
        if (r.free(i) && !r.all[i].bracket && isJoint(r.all[i].low))
            joints.push_back(i);
    }
    if (joints.empty())
        return std::nullopt;
    std::string several;
    bool known = true;
    std::size_t from = 0;
    joints.push_back(r.all.size());
    for (const std::size_t to : joints) {
        std::string piece;
        for (std::size_t i = from; i < to; ++i)
            piece +=
                (i == from ? "" : " ") + (r.all[i].bracket ? "(" + r.all[i].typed + ")" : r.all[i].typed);
        known = known && !wordsOf(piece).empty() && readingOf(piece, lexicon).entry != nullptr;
        several += (several.empty() ? "" : "; ") + piece;
        from = to + 1;
    }
    const std::string number = joints.size() == 2 ? "two" : std::to_string(joints.size());
    Doubt doubt{Sentence::tr("{1}: one thing, or {2}?", {nameOf(r), number}),
                {{Sentence::tr("{1} things", {number}), several}}};
    doubt.answers.insert(known ? doubt.answers.end() : doubt.answers.begin(),
                         kept(r, Sentence::tr("one thing"), nameOf(r), ""));
    return doubt;
}

std::optional<Doubt> nameDoubt(Reading &r, std::string &name, const Lexicon &lexicon) {
    if (!r.quoted.empty() || !r.like.empty())
        return std::nullopt;
    if (name.size() > 60)
        return std::nullopt;
    const bool known = r.entry == nullptr && lexicon.findTurned(name) != nullptr;
    if (auto harm = known ? std::nullopt : harmDoubt(r, name)) {
        r.entry = nullptr;
        return harm;
    }
    if (r.entry == nullptr)
        return unmatched(r, name, lexicon);
    if (auto another = packDoubt(r, name))
        return another;
    if (auto tinned = tinnedDoubt(r, name, lexicon))
        return tinned;
    const Rest rest = restOf(r);
    if (rest.before.empty() && rest.after.empty())
        return std::nullopt;
    const CatalogueThing *part = r.entry;
    if (const auto *turned = findBared(r, lexicon)) {
        r.entry = turned;
        return std::nullopt;
    }
    const bool strange = std::any_of(rest.before.begin(), rest.before.end(),
                                     [&](std::size_t i) { return !lexicon.isWord(r.all[i].single); });
    if (strange || !rest.after.empty()) {
        r.entry = nullptr;
        auto doubt = unmatched(r, name, lexicon);
        if (doubt || r.entry != nullptr)
            return doubt;
        r.entry = part;
    }
    return kindDoubt(r, name, rest, lexicon);
}

} // namespace model::words
