#include "model/own_things.h"
#include "model/codec_archive.h"
#include "model/contents_words.h"
#include "model/sentence.h"

namespace model {

bool isNewWord(const Thing &thing, const Lexicon &lexicon) {
    if (!thing.doubt.empty() || !thing.width || thing.name.empty())
        return false;
    const auto items = parseContents(thing.name, lexicon);
    return items && (items->size() != 1 || !items->front().doubt.empty());
}

CatalogueThing ownThing(const Thing &thing) {
    CatalogueThing out;
    out.name = thing.name;
    out.id = "own-" + words::comparable(thing.name);
    out.pack = thing.packSize;
    out.usual = thing;
    Thing &usual = out.usual;
    usual.id = {};
    usual.place.reset();
    usual.count.reset();
    for (std::optional<Date> Thing::*date :
         {&Thing::bestBefore, &Thing::bought, &Thing::opened, &Thing::recorded})
        (usual.*date).reset();
    usual.keep = 0;
    usual.markInUse.clear();
    usual.said.clear();
    usual.note.clear();
    usual.packSize.clear();
    usual.like.clear();
    usual.usual.insert({"group", "sub", "shape", "surface", "width", "depth", "height", "weight", "uses",
                        "refills", "sound", "storage", "class", "hazards", "dateKind", "area"});
    std::erase_if(usual.allergens, [](const AllergenFact &fact) {
        return fact.state != AllergenState::Contains && fact.state != AllergenState::MayContain;
    });
    for (auto &fact : usual.allergens) {
        fact.readBy.clear();
        usual.usual.insert("allergen:" + fact.allergen);
    }
    return out;
}

void addOwnThing(std::vector<CatalogueThing> &own, CatalogueThing thing) {
    std::erase_if(own, [&](const CatalogueThing &other) { return other.id == thing.id; });
    own.push_back(std::move(thing));
}

std::string ownThingsText(const std::vector<CatalogueThing> &own) {
    codec::Json list = codec::Json::array();
    for (const auto &entry : own)
        list.push_back({{"pack", entry.pack}, {"usual", codec::toJson(entry.usual)}});
    return list.dump(-1, ' ', false, codec::Json::error_handler_t::replace);
}

Result<std::vector<CatalogueThing>> ownThingsFrom(const std::string &text) {
    std::vector<CatalogueThing> own;
    if (text.empty())
        return own;
    try {
        const codec::Json list = codec::Json::parse(text);
        for (const auto &entry : list.get_ref<const codec::Json::array_t &>()) {
            Thing usual;
            codec::fromJson(entry.at("usual"), usual);
            CatalogueThing thing = ownThing(usual);
            thing.pack = entry.at("pack").get<std::string>();
            addOwnThing(own, std::move(thing));
        }
        return own;
    } catch (const std::exception &) {
        return fail(ErrorCode::DamagedDatabase, Sentence::tr("Your own words for things cannot be read. They "
                                                             "are left as they are; new ones are not kept."));
    }
}

} // namespace model
