#include "model/keep_by.h"
#include "model/contents_words.h"
#include "model/keeping_times.h"
#include "model/packs.h"
#include "model/rule_words.h"
#include "model/sentence.h"
#include "model/typed.h"
#include <algorithm>
#include <tuple>

namespace model {
namespace {

constexpr int soonDays = 7;

bool named(const Thing &thing, const std::string &word) {
    return words::lower(thing.name).find(word) != std::string::npos ||
           words::lower(thing.like).find(word) != std::string::npos;
}

/// True if the words beside the printed date are about safety where the food is sold, or may be.
bool dateOfSafety(const Thing &thing, DateRegion region) {
    if (region == DateRegion::UnitedStates)
        return thing.dateKind == DateKind::UseBy && (named(thing, "formula") || named(thing, "infant"));
    const bool wordsNotRead = thing.dateKind == DateKind::None && thing.bestBefore;
    const bool eggs = thing.dateKind == DateKind::BestBefore && thing.keepingRow == 21;
    return thing.dateKind == DateKind::UseBy || wordsNotRead || eggs;
}

const KeepingTime *timeOf(const Thing &thing) {
    return thing.keepingRow ? keepingTime(*thing.keepingRow) : nullptr;
}

const FromPurchase &unopened(const KeepingTime &time, Storage storage) {
    switch (storage) {
    case Storage::Dry:
        return time.pantry;
    case Storage::Fridge:
        return time.fridge;
    case Storage::Freezer:
        return time.freezer;
    }
    return time.pantry;
}

/// After opening: where the thing stands, or in the fridge if the data give a time only there.
KeepingSpan opened(const KeepingTime &time, Storage storage) {
    if (storage == Storage::Freezer)
        return {};
    return storage == Storage::Dry && time.pantryOpened.known() ? time.pantryOpened : time.fridgeOpened;
}

std::optional<KeepBy> printed(const Thing &thing, DateRegion region) {
    if (!thing.bestBefore)
        return std::nullopt;
    const bool safety = dateOfSafety(thing, region);
    const bool wordsRead = thing.dateKind != DateKind::None;
    return KeepBy{
        .rule = safety ? KeepRule::PrintedSafety : KeepRule::PrintedQuality,
        .safety = safety,
        .first = thing.bestBefore,
        .last = thing.bestBefore,
        .words = printedDateInWords(thing) +
                 (wordsRead ? Sentence::tr(", printed on the pack")
                            : Sentence::tr(
                                  ", printed on the pack, the words beside it not read: counted as use by"))};
}

KeepBy fromSpan(KeepRule rule, const std::string &since, Date from, const FromPurchase &kept) {
    const auto dates = keepUntil(kept.span, from);
    const std::string how = kept.statedFromPurchase ? Sentence::tr(", by general guidance")
                                                    : Sentence::tr(", counted from then as a guide");
    return {.rule = rule,
            .first = dates->least,
            .last = dates->most,
            .words = Sentence::tr("{1} {2}, keeps {3}{4}",
                                  {since, dateInWords(from), spanInWords(kept.span), how})};
}

std::optional<KeepBy> bought(const Thing &thing, DateRegion region) {
    const bool unread = dateOfSafety(thing, region);
    const KeepingTime *time = timeOf(thing);
    const KeepingSpan none;
    const KeepingSpan &span = time == nullptr ? none : unopened(*time, thing.storage).span;
    if (unread || span.word == "Package use-by date")
        return KeepBy{.rule = KeepRule::NotKnown,
                      .unread = true,
                      .words = Sentence::tr("its date is about safety and nobody has read it")};
    if (!span.word.empty())
        return KeepBy{.rule = KeepRule::Word,
                      .words = Sentence::tr("keeping time: {1}", {words::lower(span.word)})};
    if (!span.known())
        return std::nullopt;
    if (thing.bought)
        return fromSpan(KeepRule::Bought, Sentence::tr("bought on"), *thing.bought,
                        unopened(*time, thing.storage));
    if (thing.recorded)
        return fromSpan(KeepRule::Recorded, Sentence::tr("recorded on"), *thing.recorded,
                        unopened(*time, thing.storage));
    return std::nullopt;
}

/// The day of opening never carries a pack beyond the date it has anyway.
std::optional<KeepBy> withOpening(const Thing &thing, std::optional<KeepBy> before) {
    const KeepingTime *time = timeOf(thing);
    const auto dates =
        thing.opened && time ? keepUntil(opened(*time, thing.storage), *thing.opened) : std::nullopt;
    if (!dates || (before && before->last && *before->last <= dates->most))
        return before;
    const bool unread = before && before->unread;
    return KeepBy{
        .rule = KeepRule::Opened,
        .safety = before && before->safety,
        .unread = unread,
        .first = dates->least,
        .last = dates->most,
        .words = Sentence::tr(
            "opened on {1}{2}, keeps {3} once opened, by general guidance{4}",
            {dateInWords(*thing.opened),
             (oldestCounts(thing) ? Sentence::tr(", the first of {1} packs", {std::to_string(packsOf(thing))})
                                  : ""),
             spanInWords(opened(*time, thing.storage)),
             (unread ? Sentence::tr(", and nobody has read its printed date") : "")})};
}

DateState stateOf(const std::optional<KeepBy> &by, Date on) {
    if (!by)
        return DateState::NoDate;
    if (!by->last)
        return by->rule == KeepRule::NotKnown ? DateState::AskReader : DateState::NoDate;
    if (*by->last >= on && by->unread)
        return DateState::AskReader;
    if (*by->last >= on)
        return *by->first <= addDays(on, soonDays) ? DateState::Soon : DateState::Later;
    switch (by->rule) {
    case KeepRule::PrintedSafety:
        return DateState::PastSafety;
    case KeepRule::Opened:
        return DateState::PastOpened;
    case KeepRule::PrintedQuality:
        return DateState::PastQuality;
    case KeepRule::Bought:
    case KeepRule::Recorded:
    case KeepRule::Word:
    case KeepRule::NotKnown:
        break;
    }
    return DateState::PastGuidance;
}

std::string whatToDo(DateState state) {
    switch (state) {
    case DateState::PastSafety:
        return Sentence::tr("Past that day: do not eat it, even if it looks and smells fine. Throw it out, "
                            "if the client agrees.");
    case DateState::PastOpened:
        return Sentence::tr("Open for longer than that: when in doubt, throw it out, if the client agrees. "
                            "Never taste to find out.");
    case DateState::PastQuality:
        return Sentence::tr("A date of quality, and past: usually safe if it was stored as told, perhaps "
                            "stale. The client decides.");
    case DateState::PastGuidance:
        return Sentence::tr("Longer than that: look for spoilage, never taste. The client decides; when in "
                            "doubt, throw it out.");
    case DateState::AskReader:
        return Sentence::tr("Not known: ask a reader before it is eaten.");
    case DateState::Soon:
        return Sentence::tr("Use it first.");
    case DateState::Later:
    case DateState::NoDate:
        return {};
    }
    return {};
}

DatedThing dated(const Thing &thing, DateRegion region, Date on) {
    const auto by = keepBy(thing, region);
    const DateState state = stateOf(by, on);
    std::string sentence =
        sentenceCase(thing.name) + ": " + (by ? by->words : Sentence::tr("no date recorded")) + ".";
    if (by && by->last && by->last != thing.bestBefore)
        sentence.insert(sentence.size() - 1, Sentence::tr(", until {1}", {dateInWords(*by->last)}));
    if (const std::string advice = whatToDo(state); !advice.empty())
        sentence += " " + advice;
    return {thing.id, state, by ? by->last : std::nullopt, sentence};
}

} // namespace

std::optional<KeepBy> keepBy(const Thing &thing, DateRegion region) {
    if (thing.klass != Klass::Food || thing.medicine)
        return std::nullopt;
    const auto onPack = printed(thing, region);
    return withOpening(thing, onPack ? onPack : bought(thing, region));
}

std::vector<DatedThing> datedThings(const Case &record, Date on) {
    const DateRegion region = record.upkeep ? record.upkeep->region : DateRegion::NotAsked;
    std::vector<DatedThing> out;
    for (const Thing &thing : record.things)
        if (thing.klass == Klass::Food && !thing.medicine)
            out.push_back(dated(thing, region, on));
    constexpr Date never{std::chrono::year{9999}, std::chrono::month{1}, std::chrono::day{1}};
    std::stable_sort(out.begin(), out.end(), [&](const DatedThing &a, const DatedThing &b) {
        return std::pair(a.state, a.date.value_or(never)) < std::pair(b.state, b.date.value_or(never));
    });
    return out;
}

std::vector<DatedThing> toSortOut(const Case &record, Date on) {
    std::vector<DatedThing> all = datedThings(record, on);
    std::erase_if(all, [](const DatedThing &one) { return one.state > DateState::AskReader; });
    return all;
}

Result<void> readPrintedDate(Thing &thing, const std::string &typed) {
    std::string rest = typed::tidy(typed);
    if (rest.empty()) {
        thing.bestBefore.reset();
        return {};
    }
    std::optional<DateKind> kind;
    const std::vector<std::pair<std::string, DateKind>> beginnings{
        {"best before end", DateKind::BestBefore},
        {"best before", DateKind::BestBefore},
        {"best if used by", DateKind::BestBefore},
        {"best if used before", DateKind::BestBefore},
        {"bbe", DateKind::BestBefore},
        {"use by", DateKind::UseBy},
        {"use-by", DateKind::UseBy}};
    for (const auto &[words, meant] : beginnings)
        if (!kind && rest.starts_with(words)) {
            kind = meant;
            rest.erase(0, words.size());
        }
    const auto date = parseDate(rest);
    if (!date)
        return tl::unexpected(date.error());
    thing.bestBefore = *date;
    if (kind) {
        thing.dateKind = *kind;
        thing.usual.erase("dateKind");
    }
    return {};
}

std::string printedDateInWords(const Thing &thing) {
    if (!thing.bestBefore)
        return {};
    const std::string day = dateInWords(*thing.bestBefore);
    switch (thing.dateKind) {
    case DateKind::UseBy:
        return Sentence::tr("use by {1}", {day});
    case DateKind::BestBefore:
        return Sentence::tr("best before {1}", {day});
    case DateKind::None:
        break;
    }
    return day;
}

bool oldestCounts(const Thing &thing) {
    return packsOf(thing) > 1;
}

void markOpened(Thing &thing, Date on) {
    if (!oldestCounts(thing) || !thing.opened || on < *thing.opened)
        thing.opened = on;
}

void markNewPack(Thing &thing, Date on) {
    if (oldestCounts(thing)) {
        thing.bought = std::min(thing.bought.value_or(on), on);
        return;
    }
    thing.bought = on;
    thing.opened.reset();
    thing.bestBefore.reset();
}

} // namespace model
