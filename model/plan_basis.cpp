#include "model/plan_basis.h"
#include "model/codec_archive.h"
#include "model/sentence.h"
#include <algorithm>
#include <set>

namespace model {
namespace {

using codec::Json;

/// Fowler, Noll and Vo, FNV-1a, 64 bits.
std::uint64_t markOf(const std::string &text) {
    std::uint64_t mark = 14695981039346656037ULL;
    for (const char letter : text)
        mark = (mark ^ static_cast<unsigned char>(letter)) * 1099511628211ULL;
    return mark;
}

template<class Part> void add(PlanBasis &basis, const std::string &kind, const Part &part) {
    const Json json = codec::toJson(part);
    basis.marks[kind + '/' + part.id.text] =
        markOf(json.dump(-1, ' ', false, Json::error_handler_t::replace));
}

template<class Part> void addAll(PlanBasis &basis, const std::string &kind, const std::vector<Part> &parts) {
    for (const Part &part : parts)
        add(basis, kind, part);
}

/// Without what is said of it for upkeep and papers alone.
Thing planned(Thing thing) {
    thing.bestBefore = thing.bought = thing.opened = thing.recorded = std::nullopt;
    thing.keepingRow.reset();
    thing.note.clear(), thing.directions.clear(), thing.said.clear(), thing.doubt.clear();
    thing.usual.clear();
    return thing;
}

/// How she reads; not who she is.
Client planned(const Client &client) {
    Client out;
    out.id = client.id;
    out.readsBraille = client.readsBraille;
    out.hasTagReader = client.hasTagReader;
    out.hasCodeReader = client.hasCodeReader;
    return out;
}

Household planned(Household household) {
    household.people.clear(), household.whoShops.clear(), household.whoCooks.clear();
    household.whoPutsAway.clear(), household.whoReadsPrint.clear();
    household.sharingConsent = false;
    return household;
}

Diet planned(Diet diet) {
    diet.other.clear();
    return diet;
}

/// What is of one client of a shared kitchen alone.
std::string ownKind(const char *kind, const Case &record) {
    return std::string(kind) + '/' + record.client.id.text;
}

void addAnswers(PlanBasis &basis, const Case &record) {
    add(basis, ownKind("client", record), planned(record.client));
    add(basis, ownKind("safety", record), record.safety);
    add(basis, ownKind("household", record), planned(record.household));
    add(basis, ownKind("diet", record), planned(record.diet));
    addAll(basis, ownKind("measurement", record), record.measurements);
    addAll(basis, ownKind("touch-test", record), record.touchTests);
}

/// How many of a kind came, went and are otherwise.
struct Count {
    int added = 0, removed = 0, changed = 0;
    [[nodiscard]] bool any() const { return added + removed + changed > 0; }
};

bool isOf(const std::string &key, const std::string &kind) {
    return key.size() > kind.size() && key.starts_with(kind) && key[kind.size()] == '/';
}

Count countOf(const PlanBasis &then, const PlanBasis &now, const std::string &kind) {
    Count count;
    for (const auto &[key, mark] : now.marks) {
        if (!isOf(key, kind))
            continue;
        const auto before = then.marks.find(key);
        count.added += before == then.marks.end() ? 1 : 0;
        count.changed += before != then.marks.end() && before->second != mark ? 1 : 0;
    }
    for (const auto &[key, mark] : then.marks)
        count.removed += isOf(key, kind) && !now.marks.contains(key) ? 1 : 0;
    return count;
}

struct Words {
    const char *kind;
    const char *added, *addedMany;
    const char *removed, *removedMany;
    const char *changed, *changedMany;
};
// clang-format off
constexpr Words counts[] = {
    {"unit", Sentence::later("1 unit added"), Sentence::later("{1} units added"),
     Sentence::later("1 unit removed"), Sentence::later("{1} units removed"),
     Sentence::later("1 unit changed"), Sentence::later("{1} units changed")},
    {"place", Sentence::later("1 place added"), Sentence::later("{1} places added"),
     Sentence::later("1 place removed"), Sentence::later("{1} places removed"),
     Sentence::later("1 place changed"), Sentence::later("{1} places changed")},
    {"thing", Sentence::later("1 thing added"), Sentence::later("{1} things added"),
     Sentence::later("1 thing removed"), Sentence::later("{1} things removed"),
     Sentence::later("1 thing changed"), Sentence::later("{1} things changed")},
};
// clang-format on

void tell(std::vector<std::string> &out, int number, const char *one, const char *many) {
    if (number == 1)
        out.push_back(Sentence::tr(one));
    else if (number > 1)
        out.push_back(Sentence::tr(many, {std::to_string(number)}));
}

void tell(std::vector<std::string> &out, const Words &words, const Count &count) {
    tell(out, count.added, words.added, words.addedMany);
    tell(out, count.removed, words.removed, words.removedMany);
    tell(out, count.changed, words.changed, words.changedMany);
}

const char *answersChanged(const std::string &kind) {
    if (kind == "safety")
        return Sentence::later("safety answers changed");
    if (kind == "household")
        return Sentence::later("household changed");
    if (kind == "diet")
        return Sentence::later("diet changed");
    if (kind == "measurement")
        return Sentence::later("test results changed");
    if (kind == "touch-test")
        return Sentence::later("marker test changed");
    return Sentence::later("how the client reads changed");
}

/// Answers of a client whose own were not known to the plan tell nothing.
void tellAnswers(std::vector<std::string> &out, const PlanBasis &then, const Case &record) {
    if (!then.marks.contains(ownKind("client", record) + '/' + record.client.id.text))
        return;
    PlanBasis now;
    addAnswers(now, record);
    for (const char *kind : {"client", "safety", "household", "diet"})
        if (countOf(then, now, ownKind(kind, record)).changed > 0)
            out.push_back(Sentence::tr(answersChanged(kind)));
    for (const char *kind : {"measurement", "touch-test"})
        if (countOf(then, now, ownKind(kind, record)).any())
            out.push_back(Sentence::tr(answersChanged(kind)));
}

} // namespace

PlanBasis planBasis(const Case &record, const Case *other) {
    PlanBasis basis;
    if (record.plan)
        basis.plan = record.plan->id;
    addAll(basis, "unit", record.units);
    addAll(basis, "place", record.places);
    for (const Thing &thing : record.things)
        add(basis, "thing", planned(thing));
    addAll(basis, "kit-mark", record.kit);
    addAll(basis, "overrule", record.overrules);
    if (record.wishes)
        add(basis, "plan-wishes", *record.wishes);
    addAnswers(basis, record);
    if (other)
        addAnswers(basis, *other);
    return basis;
}

std::vector<std::string> changedSince(const PlanBasis &then, const Case &record) {
    const PlanBasis now = planBasis(record);
    std::vector<std::string> out;
    for (const Words &words : counts)
        tell(out, words, countOf(then, now, words.kind));
    tellAnswers(out, then, record);
    if (countOf(then, now, "kit-mark").any())
        out.push_back(Sentence::tr("marker kit changed"));
    if (countOf(then, now, "overrule").any())
        out.push_back(Sentence::tr("your decisions changed"));
    if (countOf(then, now, "plan-wishes").any())
        out.push_back(Sentence::tr("weights changed"));
    return out;
}

std::vector<std::string> changedSince(const Plan &then, const Case &now) {
    std::set<std::string> placed, things, places;
    for (const PlanLine &line : then.lines)
        placed.insert(line.thing.text);
    for (const Thing &thing : now.things)
        things.insert(thing.id.text);
    for (const Place &place : now.places)
        places.insert(place.id.text);
    Count count;
    int placesGone = 0;
    for (const PlanLine &line : then.lines) {
        count.removed += things.contains(line.thing.text) ? 0 : 1;
        placesGone += places.contains(line.place.text) ? 0 : 1;
    }
    for (const std::string &thing : things)
        count.added += then.lines.empty() || placed.contains(thing) ? 0 : 1;
    std::vector<std::string> out;
    tell(out, counts[2], count);
    tell(out, placesGone, Sentence::later("the place of 1 thing removed"),
         Sentence::later("the places of {1} things removed"));
    return out;
}

std::string planBasesText(const std::vector<PlanBasis> &bases) {
    Json list = Json::array();
    for (const PlanBasis &basis : bases)
        list.push_back({{"plan", basis.plan.text}, {"marks", basis.marks}});
    return list.dump();
}

std::vector<PlanBasis> planBasesFrom(const std::string &text) {
    const Json list = Json::parse(text, nullptr, false);
    std::vector<PlanBasis> bases;
    if (!list.is_array())
        return bases;
    try {
        for (const Json &entry : list)
            bases.push_back({{entry.at("plan").get<std::string>()},
                             entry.at("marks").get<std::map<std::string, std::uint64_t>>()});
    } catch (const Json::exception &) {
        bases.clear(); // then only what the plan itself tells is said
    }
    return bases;
}

} // namespace model
