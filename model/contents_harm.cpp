#include "model/contents_harm.h"
#include "model/contents_print.h"
#include "model/sentence.h"
#include <algorithm>
#include <array>
#include <string_view>

namespace model::words {
namespace {

template<std::size_t Size>
bool isOneOf(const std::string &word, const std::array<const char *, Size> &names) {
    return std::find(names.begin(), names.end(), word) != names.end();
}

/// Kinds of medicine and generic substances, in the singular; names that trade gives are not listed.
bool isMedicineWord(const std::string &single) {
    static constexpr std::array names{
        "medicine",      "medication",   "medicament",    "prescription", "tablet",         "pill",
        "capsule",       "lozenge",      "inhaler",       "nebuliser",    "nebulizer",      "injection",
        "injector",      "syringe",      "suppository",   "pessary",      "ointment",       "linctus",
        "painkiller",    "antibiotic",   "antihistamine", "steroid",      "antidepressant", "sedative",
        "laxative",      "antacid",      "insulin",       "adrenaline",   "epinephrine",    "glucagon",
        "warfarin",      "heparin",      "aspirin",       "paracetamol",  "acetaminophen",  "codeine",
        "morphine",      "tramadol",     "digoxin",       "lithium",      "thyroxine",      "levothyroxine",
        "nitroglycerin", "methotrexate", "anticoagulant", "diuretic",     "statin",         "thinner",
        "antifungal",    "antiseptic",   "decongestant",  "chemotherapy", "hormone",        "eyedrop",
        "antiviral",     "antiemetic",   "phenytoin",     "valproate",    "levodopa",       "naloxone",
        "nicotine",      "salbutamol",   "amitriptyline", "clopidogrel",  "donepezil",      "memantine",
        "zopiclone"};
    return isOneOf(single, names) && single != "thinner"; // "blood thinner" only
}

/// Ends of generic names, as the World Health Organization's list of stems for them gives (from memory), and
/// "pen" for those that inject.
bool endsAsMedicine(const std::string &single) {
    static constexpr std::array<std::string_view, 40> ends{
        "sartan",  "statin", "prazole", "conazole",   "nidazole",  "cillin",   "mycin",   "micin",
        "oxetine", "profen", "dipine",  "gliptin",    "gliflozin", "formin",   "xaban",   "triptan",
        "zepam",   "zolam",  "gabalin", "gabapentin", "thiazide",  "semide",   "cycline", "floxacin",
        "setron",  "tidine", "caine",   "solone",     "methasone", "metasone", "lukast",  "buterol",
        "codeine", "farin",  "olol",    "terol",      "coxib",     "ciclovir", "parin",   "pril"};
    static constexpr std::array others{"april", "cholesterol", "sharpen", "happen", "saffarin"};
    const bool pen = single.size() >= 6 && single.ends_with("pen");
    return !isOneOf(single, others) &&
           (pen || (single.size() >= 7 && std::any_of(ends.begin(), ends.end(), [&](std::string_view end) {
                        return single.ends_with(end);
                    })));
}

bool isPoisonWord(const std::string &single) {
    static constexpr std::array names{
        "poison",     "antifreeze", "pesticide", "insecticide", "herbicide",  "fungicide",    "weedkiller",
        "killer",     "bait",       "acid",      "solvent",     "thinner",    "stripper",     "turpentine",
        "turp",       "petrol",     "gasoline",  "diesel",      "kerosene",   "paraffin",     "fuel",
        "acetone",    "ammonia",    "caustic",   "lye",         "bleach",     "disinfectant", "detergent",
        "descaler",   "unblocker",  "remover",   "repellent",   "butane",     "propane",      "lubricant",
        "creosote",   "varnish",    "adhesive",  "peroxide",    "deicer",     "screenwash",   "firelighter",
        "bleaching",  "cleaner",    "polish",    "degreaser",   "steriliser", "sterilizer",   "fertiliser",
        "fertilizer", "turps",      "meths",     "naphtha",     "methanol"};
    return isOneOf(single, names);
}

bool inName(const Reading &r, std::size_t i) {
    return i >= r.nameFrom && i < r.nameTo;
}

template<class Says> bool anyOtherWord(const Reading &r, Says says) {
    for (std::size_t i = 0; i < r.all.size(); ++i) {
        if (!r.taken[i] && !r.all[i].bracket && !inName(r, i) && says(i))
            return true;
    }
    return false;
}

/// One answer for each form that such things have, then the two that name no form.
Doubt harmQuestion(const Reading &r, const std::string &name, const std::string &question,
                   const std::vector<std::pair<std::string, std::string>> &forms, const std::string &fact,
                   const std::string &denied) {
    LineParts parts = partsOf(r);
    parts.name = name;
    parts.quoted = true;
    Doubt doubt{name + ": " + question, {}};
    for (const auto &[words, like] : forms) {
        LineParts more = parts;
        more.like = like;
        doubt.answers.push_back({Sentence::tr("yes, {1}", {words}), lineFrom(more)});
    }
    LineParts other = parts;
    other.facts.push_back(fact);
    doubt.answers.push_back({Sentence::tr("yes, in another form"), lineFrom(other)});
    doubt.answers.push_back({denied, lineFrom(parts)});
    return doubt;
}

} // namespace

std::optional<Doubt> harmDoubt(const Reading &r, const std::string &name) {
    const bool known = r.entry != nullptr;
    const bool medicine = anyOtherWord(r, [&](std::size_t i) {
        const std::string &single = r.all[i].single;
        const bool drop =
            single == "drop" && i > 0 && (r.all[i - 1].low == "eye" || r.all[i - 1].low == "ear");
        const bool blood = single == "thinner" && i > 0 && r.all[i - 1].low == "blood";
        return isMedicineWord(single) || endsAsMedicine(single) || drop || blood;
    });
    if (medicine && !(known && (r.entry->usual.medicine || r.entry->usual.klass == Klass::Chemical)))
        return harmQuestion(r, name, Sentence::tr("is it a medicine?"),
                            {{Sentence::tr("tablets"), "tablets"},
                             {Sentence::tr("a liquid"), "cough medicine"},
                             {Sentence::tr("a cream"), "antiseptic cream"},
                             {Sentence::tr("a pen or an injection"), "adrenaline pen"}},
                            "medicine", Sentence::tr("no, not a medicine"));
    const bool poison = anyOtherWord(r, [&](std::size_t i) { return isPoisonWord(r.all[i].single); });
    if (poison && !(known && r.entry->usual.hazard))
        return harmQuestion(r, name, Sentence::tr("a poison, fuel or cleaner?"),
                            {{Sentence::tr("a bottle"), "bleach"},
                             {Sentence::tr("a spray"), "kitchen spray"},
                             {Sentence::tr("a box"), "slug pellets"}},
                            "hazard", Sentence::tr("no, harmless"));
    return std::nullopt;
}

namespace {

/// A catalogue name within a name that was typed.
struct Span {
    std::size_t from = 0, to = 0;
    const CatalogueThing *thing = nullptr;
};

/// Those that are no part of a longer one.
std::vector<Span> knownNames(const std::vector<Word> &all, const Lexicon &lexicon) {
    std::vector<Span> out;
    std::size_t reached = 0;
    for (std::size_t from = 0; from < all.size(); ++from) {
        std::size_t to = std::min(all.size(), from + lexicon.longest());
        const CatalogueThing *found = nullptr;
        for (; to > from && found == nullptr; --to)
            found = lexicon.find(joined(all, from, to));
        if (found != nullptr && to + 1 > reached) {
            out.push_back({from, to + 1, found});
            reached = to + 1;
        }
    }
    return out;
}

bool isFood(const Thing &thing) {
    return thing.klass == Klass::Food && !thing.medicine;
}

/// "egg whisk", "oyster knife": for a food, and none itself. By words alone: "butter" ends as "opener" does.
bool servesFood(const std::string &single) {
    static constexpr std::array tools{"jug",   "pan",   "dish",  "bin",    "spoon", "rack",
                                      "tray",  "bowl",  "brush", "board",  "stand", "mill",
                                      "knife", "whisk", "cup",   "cutter", "timer", "opener"};
    return isOneOf(single, tools);
}

void addUsual(Thing &thing, const std::string &key, AllergenState state) {
    const auto same = std::find_if(thing.allergens.begin(), thing.allergens.end(),
                                   [&](const AllergenFact &fact) { return fact.allergen == key; });
    if (same == thing.allergens.end()) {
        thing.allergens.push_back({key, state, ""});
        thing.usual.insert("allergen:" + key);
    } else if (same->state == AllergenState::MayContain && state == AllergenState::Contains) {
        same->state = state;
    }
}

bool tells(const Thing &thing, const std::string &key) {
    return std::any_of(thing.allergens.begin(), thing.allergens.end(),
                       [&](const AllergenFact &fact) { return fact.allergen == key; });
}

} // namespace

void addNamedAllergens(Thing &thing, const std::string &name, const CatalogueThing *entry,
                       const Lexicon &lexicon) {
    Reading r;
    r.all = wordsOf(name);
    r.taken.assign(r.all.size(), false);
    constexpr std::size_t mostWords = 12; // a longer text is no name of a food
    if (r.all.empty() || r.all.size() > mostWords || (entry != nullptr && !isFood(entry->usual)) ||
        (entry == nullptr && servesFood(r.all.back().single)))
        return;
    const auto names = knownNames(r.all, lexicon);
    const auto claims = claimsIn(r);
    for (const Span &known : names) {
        if (known.thing == entry || !isFood(known.thing->usual) || cuts(claims, known.from, known.to))
            continue;
        const bool whole = known.from == 0 && known.to == r.all.size();
        for (const auto &fact : known.thing->usual.allergens)
            addUsual(thing, fact.allergen, whole ? fact.state : AllergenState::MayContain);
    }
    for (std::size_t i = 0; i < r.all.size(); ++i) {
        const std::string key = allergenFrom(r.all[i].single);
        const auto within = [&](const auto &span) { return i >= span.from && i < span.to; };
        if (key.empty() || std::any_of(claims.begin(), claims.end(), within))
            continue;
        const bool told = std::all_of(names.begin(), names.end(), [&](const Span &known) {
            return !within(known) || tells(known.thing->usual, key);
        });
        if (told)
            addUsual(thing, key, AllergenState::Contains); // "coconut milk" tells no milk
    }
}

} // namespace model::words
