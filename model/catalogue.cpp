#include "model/catalogue_table.h"
#include "model/contents.h"
#include "model/contents_facts.h"
#include "model/contents_words.h"
#include "model/lexicon.h"
#include <algorithm>
#include <cassert>
#include <map>
#include <sstream>

namespace model {
namespace {

std::vector<std::string> parted(const std::string &text, char by) {
    std::vector<std::string> out;
    std::istringstream in(text);
    std::string part;
    while (std::getline(in, part, by))
        out.push_back(words::trimmed(part));
    return out;
}

template<class T> T named(const std::map<std::string, T> &names, const std::string &word) {
    const auto found = names.find(word);
    assert(found != names.end());
    return found->second;
}

Shape shapeFrom(const std::string &word) {
    using enum Shape;
    static const std::map<std::string, Shape> names{
        {"jar", Jar},     {"bottle", Bottle}, {"can", Can}, {"box", Box},   {"bag", Bag},
        {"tub", Tub},     {"packet", Packet}, {"mug", Mug}, {"tube", Tube}, {"canister", Canister},
        {"plate", Plate}, {"bowl", Bowl},     {"pan", Pan}, {"tool", Tool}, {"other", Other}};
    return named(names, word);
}

Surface surfaceFrom(const std::string &word) {
    using enum Surface;
    static const std::map<std::string, Surface> names{
        {"glass", Glass}, {"metal", Metal}, {"plastic", Plastic}, {"card", Card}, {"foil", Foil},
        {"paper", Paper}, {"cloth", Cloth}, {"ceramic", Ceramic}, {"wood", Wood}};
    return named(names, word);
}

WorkArea areaFrom(const std::string &word) {
    using enum WorkArea;
    static const std::map<std::string, WorkArea> names{
        {"hob", Hob}, {"prep", Prep}, {"sink", Sink}, {"fridge", Fridge}, {"table", Table}, {"entry", Entry}};
    return named(names, word);
}

void readAllergens(Thing &thing, const std::string &column) {
    std::istringstream in(column);
    std::string word;
    while (in >> word && word != "-") {
        const bool may = word[0] == '?';
        thing.allergens.push_back(
            {may ? word.substr(1) : word, may ? AllergenState::MayContain : AllergenState::Contains, ""});
    }
}

void readFlags(Thing &thing, const std::string &column) {
    const auto has = [&](char letter) { return column.find(letter) != std::string::npos; };
    thing.glass = has('g') || thing.surface == Surface::Glass;
    thing.hazard = has('h');
    thing.sharp = has('s');
    thing.hotUse = has('t');
    thing.spoilsMeal = has('m');
    thing.medicine = has('p');
}

void readDate(Thing &thing, const std::string &column) {
    std::istringstream in(column);
    std::string kind;
    int row = 0;
    in >> kind;
    assert(kind == "bb" || kind == "ub" || kind == "-");
    thing.dateKind = kind == "bb" ? DateKind::BestBefore : kind == "ub" ? DateKind::UseBy : DateKind::None;
    if (in >> row)
        thing.keepingRow = row;
}

void readSizes(Thing &thing, const std::string &column) {
    std::istringstream in(column);
    double w = 0;
    double d = 0;
    double h = 0;
    double kg = 0;
    in >> w >> d >> h >> kg;
    assert(!in.fail());
    const auto usual = [](double cm) { return Length{{cm}, "", Basis::Usual}; };
    thing.width = usual(w);
    thing.depth = usual(d);
    thing.height = usual(h);
    thing.weight = Kilograms{kg};
}

void readUse(Thing &thing, const std::string &use, const std::string &where) {
    std::istringstream in(use);
    double uses = 0;
    double refills = 0;
    in >> uses >> refills >> thing.sound;
    assert(!in.fail());
    thing.usesPerWeek = uses;
    thing.refillsPerWeek = refills;
    std::istringstream place(where);
    std::string storage;
    std::string klass;
    std::string area;
    place >> storage >> klass >> area;
    thing.storage = storage == "fridge"    ? Storage::Fridge
                    : storage == "freezer" ? Storage::Freezer
                                           : Storage::Dry;
    thing.klass = klass == "F" ? Klass::Food : klass == "C" ? Klass::Chemical : Klass::Neither;
    thing.area = areaFrom(area);
}

/// "tin 400 g, 200-800": the usual pack, and the sizes between which such packs are sold.
void readPack(CatalogueThing &out, const std::string &column) {
    const auto parts = parted(column, ',');
    out.pack = parts.at(0);
    if (parts.size() < 2)
        return;
    const auto amount = words::amountOf(out.pack);
    const auto dash = parts[1].find('-');
    const double unit = out.pack.ends_with(" kg") || out.pack.ends_with(" l") ? 1000 : 1;
    out.least = std::stod(parts[1].substr(0, dash)) * unit;
    out.most = std::stod(parts[1].substr(dash + 1)) * unit;
    assert(amount && out.least <= *amount && *amount <= out.most);
}

CatalogueThing readRow(const std::string &line) {
    const auto columns = parted(line, '|');
    assert(columns.size() == 10);
    CatalogueThing out;
    auto names = parted(columns[0], ';');
    out.name = names.front();
    out.others.assign(names.begin() + 1, names.end());
    out.id = out.name;
    std::replace(out.id.begin(), out.id.end(), ' ', '-');
    readPack(out, columns[2]);
    Thing &thing = out.usual;
    thing.name = out.name;
    const auto kinds = parted(columns[1], '/');
    thing.group = kinds.at(0);
    thing.sub = kinds.at(1);
    const auto form = parted(columns[3], ' ');
    thing.shape = shapeFrom(form.at(0));
    thing.surface = surfaceFrom(form.at(1));
    readSizes(thing, columns[4]);
    readUse(thing, columns[5], columns[6]);
    readAllergens(thing, columns[7]);
    readFlags(thing, columns[8]);
    readDate(thing, columns[9]);
    thing.usual = {"group", "sub",     "shape", "surface", "width", "depth",   "height",   "weight",
                   "uses",  "refills", "sound", "storage", "class", "hazards", "dateKind", "area"};
    for (const auto &fact : thing.allergens)
        thing.usual.insert("allergen:" + fact.allergen);
    return out;
}

std::vector<CatalogueThing> readAll() {
    std::vector<CatalogueThing> out;
    for (const auto table : {tables::dryFood(), tables::morePantry(), tables::coldFood(), tables::moreCold(),
                             tables::household(), tables::moreHousehold(), tables::kitchenware()}) {
        for (const auto &line : parted(std::string(table), '\n')) {
            if (!line.empty())
                out.push_back(readRow(line));
        }
    }
    return out;
}

} // namespace

const std::vector<CatalogueThing> &catalogue() {
    static const std::vector<CatalogueThing> all = readAll();
    return all;
}

const CatalogueThing *findInCatalogue(const std::string &name) {
    return Lexicon::standard().find(name);
}

} // namespace model
