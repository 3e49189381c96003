#pragma once
#include "model/case.h"

/// Until when a thing is good, by which rule that is known, and what is past it.
namespace model {

/// The rules, the first that applies: a date of safety printed on the pack; the day of opening; a date of
/// quality printed on the pack; the day it was bought; the day it was first written down; a word in place of
/// a time.
enum class KeepRule { PrintedSafety, Opened, PrintedQuality, Bought, Recorded, Word, NotKnown };

struct KeepBy {
    KeepRule rule{};
    bool safety = false;                 // after `last` nobody eats it
    bool unread = false;                 // a date of safety stands on the pack and nobody has read it
    std::optional<Date> first{}, last{}; // look at it from `first` on; at the latest by `last`
    std::string words{};                 // "use by 28 November 2026, printed on the pack"
    friend bool operator==(const KeepBy &, const KeepBy &) = default;
};

/// None: not food, or nothing is said about it. "Use by" is a date of safety but in the United States, where
/// it is one for baby formula alone; a printed date whose words nobody read counts as one; so does "best
/// before" on eggs, but in the United States. A date of safety that nobody read is not known, whenever the
/// pack was bought. Sources: Regulation (EU) No 1169/2011; UK Food Standards Agency; U.S. Department of
/// Agriculture; times: keeping_times.h.
[[nodiscard]] std::optional<KeepBy> keepBy(const Thing &thing, DateRegion region);

/// How it stands with a thing on a day.
enum class DateState { PastSafety, PastOpened, PastQuality, PastGuidance, AskReader, Soon, Later, NoDate };

struct DatedThing {
    Id thing;
    DateState state{};
    std::optional<Date> date; // that counts
    std::string sentence;     // what holds, and what to do
    friend bool operator==(const DatedThing &, const DatedThing &) = default;
};

/// All food, what is past its date first, then by date, things without a date last. Medicines are the
/// pharmacist's.
[[nodiscard]] std::vector<DatedThing> datedThings(const Case &record, Date on);
/// Those to look at before anything is put back: what is past, and dates of safety that nobody read.
[[nodiscard]] std::vector<DatedThing> toSortOut(const Case &record, Date on);

/// Reads "use by 28 Nov 2026", "best before 30/04/2027", or a bare date, which leaves the words as they were;
/// nothing takes the date away. Fails as parseDate() does.
[[nodiscard]] Result<void> readPrintedDate(Thing &thing, const std::string &typed);
/// "use by 28 November 2026"; empty without a date.
[[nodiscard]] std::string printedDateInWords(const Thing &thing);

/// Several packs have one date of each kind, that of the oldest: nobody knows which of them is used up.
[[nodiscard]] bool oldestCounts(const Thing &thing);
/// A pack was opened. Of several packs the first one opened counts.
void markOpened(Thing &thing, Date on);
/// A new pack, bought on that day: the dates of the old one are gone. Of several packs those of the oldest
/// stay, until somebody takes them out.
void markNewPack(Thing &thing, Date on);

} // namespace model
