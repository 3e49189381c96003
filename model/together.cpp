#include "model/together.h"
#include "model/findings_parts.h"
#include "model/kit.h"
#include "model/meanings.h"
#include "model/planning.h"
#include "model/sentence.h"
#include "model/shared_kitchen.h"
#include <algorithm>
#include <set>

namespace model {
namespace {

Answer moreCautious(Answer one, Answer other, Answer cautious) {
    if (one == cautious || other == cautious)
        return cautious;
    return one == Answer::NotAsked || other == Answer::NotAsked ? Answer::NotAsked : one;
}

/// Whether speech is heard concerns only the one who uses what speaks.
SafetyFacts cautiousOfBoth(const SafetyFacts &one, const SafetyFacts &other) {
    SafetyFacts both;
    both.id = one.id;
    for (const SafetyQuestionText &text : safetyQuestions()) {
        const bool either = text.question == SafetyQuestion::HearsSpeech;
        const Answer stricter = either ? Answer::Yes : text.cautious;
        const Answer answer = moreCautious(one.answer(text.question), other.answer(text.question), stricter);
        const auto &source = one.answer(text.question) == answer ? one : other;
        const auto found = source.answers.find(text.question);
        both.answers[text.question] = {answer, found == source.answers.end() ? "" : found->second.note,
                                       std::nullopt};
    }
    return both;
}

Household householdOfBoth(const Case &one, const Case &other) {
    Household both = one.household;
    both.children = moreCautious(one.household.children, other.household.children, Answer::Yes);
    both.pets = moreCautious(one.household.pets, other.household.pets, Answer::Yes);
    const bool forgets = one.safety.answer(SafetyQuestion::MemoryDifficulty) == Answer::Yes ||
                         other.safety.answer(SafetyQuestion::MemoryDifficulty) == Answer::Yes;
    both.adultWithMemoryLoss = forgets ? Answer::Yes
                                       : moreCautious(one.household.adultWithMemoryLoss,
                                                      other.household.adultWithMemoryLoss, Answer::Yes);
    both.sharingConsent = one.household.sharingConsent && other.household.sharingConsent;
    return both;
}

template<class Value> void addNew(std::vector<Value> &list, const std::vector<Value> &more) {
    for (const Value &value : more)
        if (std::ranges::count(list, value) == 0)
            list.push_back(value);
}

Diet dietOfBoth(const Diet &one, const Diet &other) {
    Diet both = one;
    both.asked = one.asked && other.asked;
    addNew(both.avoids, other.avoids);
    addNew(both.facts, other.facts);
    if (!other.other.empty())
        both.other += (both.other.empty() ? "" : "; ") + other.other;
    return both;
}

bool wasTested(const Case &record, const Findings &findings) {
    return !findings.measuredConfusion.taken.empty() || newestResult(record, Test::AcceptedMarks) != nullptr;
}

/// Marks that both tell apart. Where neither was tested the set is expected from the lesser touch of the two.
std::vector<std::string> acceptedByBoth(const Case &keeper, const Findings &one, const Case &partner,
                                        const Findings &other,
                                        const std::map<std::string, std::string> &banned) {
    const bool tested = wasTested(keeper, one), otherTested = wasTested(partner, other);
    std::vector<std::string> accepted;
    if (!tested && !otherTested)
        return marksMeaning(keeper, std::min(one.touchSensitivity, other.touchSensitivity), banned).accepted;
    accepted = tested ? one.acceptedMarks : other.acceptedMarks;
    std::erase_if(accepted, [&](const std::string &key) {
        const bool both = tested && otherTested;
        return banned.contains(key) || (both && std::ranges::count(other.acceptedMarks, key) == 0);
    });
    return accepted;
}

MeasuredConfusion worseOf(MeasuredConfusion one, const MeasuredConfusion &other) {
    for (const auto &[pair, chance] : other.taken)
        one.taken[pair] = std::max(one.taken[pair], chance);
    for (const auto &[key, chance] : other.missed)
        one.missed[key] = std::max(one.missed[key], chance);
    return one;
}

std::map<std::string, std::string> bannedForEither(const Findings &one, const Findings &other,
                                                   const Case &record) {
    std::map<std::string, std::string> banned = one.bannedMarks;
    banned.insert(other.bannedMarks.begin(), other.bannedMarks.end());
    std::erase_if(banned, [&](const auto &ban) {
        const Marker *marker = markerIn(record, ban.first);
        const bool speaks = marker != nullptr && marker->medium == MarkMedium::SpokenTag;
        return speaks && (!one.bannedMarks.contains(ban.first) || !other.bannedMarks.contains(ban.first));
    });
    return banned;
}

Findings narrowerOf(const Case &keeper, const Findings &one, const Case &partner, const Findings &other) {
    Findings both = one;
    addNew(both.cautions, other.cautions);
    std::stable_partition(both.cautions.begin(), both.cautions.end(),
                          [](const Caution &caution) { return caution.urgent; });
    both.usableVision = one.usableVision || other.usableVision;
    both.knuckle = std::max(one.knuckle, other.knuckle, [](auto &a, auto &b) { return a.value < b.value; });
    both.shoulder =
        std::min(one.shoulder, other.shoulder, [](auto &a, auto &b) { return a.value < b.value; });
    both.reachLow =
        std::max(one.reachLow, other.reachLow, [](auto &a, auto &b) { return a.value < b.value; });
    both.reachHigh =
        std::min(one.reachHigh, other.reachHigh, [](auto &a, auto &b) { return a.value < b.value; });
    if (other.heavyLimit < one.heavyLimit)
        both.heavyLimit = other.heavyLimit, both.heavyLimitBasis = other.heavyLimitBasis;
    both.children = one.children || other.children;
    both.childReach = std::max(one.childReach, other.childReach);
    both.touchSensitivity = std::min(one.touchSensitivity, other.touchSensitivity);
    both.bannedMarks = bannedForEither(one, other, keeper);
    both.acceptedMarks = acceptedByBoth(keeper, one, partner, other, both.bannedMarks);
    both.measuredConfusion = worseOf(one.measuredConfusion, other.measuredConfusion);
    return both;
}

const Marker *labelOf(const Case &record, MarkMedium medium) {
    for (const Marker &marker : markerKit())
        if (marker.medium == medium && atHand(record, marker.key))
            return markerIn(record, marker.key);
    return nullptr;
}

/// One mark of the kit that stands for a label in each of the two media.
Marker inBothMedia(const Marker &one, const Marker &other) {
    Marker both = one;
    both.name = Sentence::tr("{1} and {2}", {one.name, other.name});
    both.howToFix = one.howToFix + " " + other.howToFix;
    std::erase_if(both.surfaces, [&](Surface surface) { return !other.surfaces.contains(surface); });
    both.survivesFreezer = one.survivesFreezer && other.survivesFreezer;
    both.survivesWet = one.survivesWet && other.survivesWet;
    both.fixMinutes = one.fixMinutes + other.fixMinutes;
    both.readSeconds = std::max(one.readSeconds, other.readSeconds);
    both.learnMinutes = one.learnMinutes + other.learnMinutes;
    both.cost = one.cost + other.cost;
    if (other.heatLimit && (!both.heatLimit || *other.heatLimit < *both.heatLimit))
        both.heatLimit = other.heatLimit;
    if (!other.caution.empty() && other.caution != one.caution)
        both.caution += (both.caution.empty() ? "" : " ") + other.caution;
    return both;
}

void setKit(Case &record, Marker marker, bool inKit) {
    std::erase_if(record.kit, [&](const KitMark &mark) { return mark.marker.key == marker.key; });
    record.kit.push_back({newId(), std::move(marker), inKit});
}

/// Labels that only one of them could read leave the kit; instead of them one in two media.
void setLabels(Case &record, Findings &findings, const std::vector<MarkMedium> &one,
               const std::vector<MarkMedium> &other) {
    std::set<MarkMedium> used;
    for (const MarkMedium medium : one)
        if (std::ranges::count(other, medium) > 0)
            used.insert(medium);
    if (used.empty() && !one.empty() && !other.empty()) {
        const Marker *first = labelOf(record, one.front()), *second = labelOf(record, other.front());
        if (first && second) {
            setKit(record, inBothMedia(*first, *second), true);
            used.insert(one.front());
        }
    }
    if (one.empty() || other.empty()) // better that one reads them than nobody
        used.insert(one.begin(), one.end()), used.insert(other.begin(), other.end());
    record.client.readsBraille = findings.readsBraille = used.contains(MarkMedium::Braille);
    findings.readsLargePrint = used.contains(MarkMedium::LargePrint);
    record.client.hasTagReader = used.contains(MarkMedium::SpokenTag);
}

void setKinds(Case &record, const Case &partner) {
    if (!partner.wishes || !partner.wishes->mostKinds)
        return;
    if (!record.wishes)
        record.wishes = PlanWishes{newId(), {}, std::nullopt};
    const int most = *partner.wishes->mostKinds;
    record.wishes->mostKinds = std::min(record.wishes->mostKinds.value_or(most), most);
}

} // namespace

std::vector<MarkMedium> labelMedia(const Case &record, const Findings &findings) {
    std::vector<MarkMedium> media;
    if (findings.readsBraille)
        media.push_back(MarkMedium::Braille);
    if (findings.readsLargePrint)
        media.push_back(MarkMedium::LargePrint);
    if (record.client.hasTagReader && !record.safety.cautious(SafetyQuestion::HearsSpeech))
        media.push_back(MarkMedium::SpokenTag);
    return media;
}

Together together(const Case &keeper, const Case &partner, Date on) {
    const Findings one = findingsOf(keeper, on), other = findingsOf(partner, on);
    Together both{keeper, narrowerOf(keeper, one, partner, other), clashesOf(keeper, one, partner, other)};
    both.record.safety = cautiousOfBoth(keeper.safety, partner.safety);
    both.record.household = householdOfBoth(keeper, partner);
    both.record.diet = dietOfBoth(keeper.diet, partner.diet);
    setKinds(both.record, partner);
    setLabels(both.record, both.findings, labelMedia(keeper, one), labelMedia(partner, other));
    return both;
}

Case ownShare(const Case &own, const Findings &reader, const Case &shared) {
    Case share = own;
    takeKitchen(share, shared);
    const std::vector<MarkMedium> media = labelMedia(own, reader);
    if (!share.plan)
        return share;
    for (PlanLine &line : share.plan->lines) {
        const Marker *marker = markerIn(shared, line.marker);
        if (!marker || marker->medium == MarkMedium::Touch || std::ranges::count(media, marker->medium) > 0)
            continue;
        const Marker *label = media.empty() ? nullptr : labelOf(own, media.front());
        line.marker = label ? label->key : "";
        const auto thing = std::ranges::find(share.things, line.thing, &Thing::id);
        const bool hers = std::ranges::any_of(share.overrules, [&](const Overrule &wish) {
            return wish.thing == line.thing && !wish.wording.empty();
        });
        if (!label || thing == share.things.end() || hers)
            continue;
        Thing named = *thing;
        if (const std::string word = warningWord(*thing, shared.diet, share.plan->meaningMarks);
            !word.empty())
            named.name += ", " + word;
        line.labelText = labelText(named, label->medium);
    }
    return share;
}

} // namespace model
