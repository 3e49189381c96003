#include "model/upkeep_rounds.h"
#include "model/due_dates.h"
#include "model/kit.h"
#include "model/sentence.h"
#include "model/typed.h"
#include <algorithm>

namespace model {
namespace {

constexpr const char *common = Sentence::later("common practice");
constexpr const char *scotland = Sentence::later("Food Standards Scotland; common practice");
constexpr const char *agriculture = Sentence::later("U.S. Department of Agriculture; common practice");

UpkeepWishes wishesOf(const Case &record) {
    return record.upkeep.value_or(UpkeepWishes{});
}

/// The plan's date, or the last visit's, or today: from then the rounds are counted.
Date startOf(const Case &record, Date on) {
    if (record.plan && record.plan->made)
        return *record.plan->made;
    std::optional<Date> last;
    for (const auto &visit : record.visits) {
        if (visit.date && (!last || *visit.date > *last))
            last = visit.date;
    }
    return last.value_or(on);
}

/// In the month `months` after the start, on the day that was chosen, or the start's.
Date monthly(const UpkeepWishes &wishes, Date start, int months) {
    Date date = addMonths(start, months);
    if (wishes.roundDay) {
        const Date chosen =
            date.year() / date.month() / std::chrono::day(static_cast<unsigned>(*wishes.roundDay));
        date = chosen.ok() ? chosen : Date{date.year() / date.month() / std::chrono::last};
    }
    return wishes.roundWeekday ? weekdayOnOrAfter(date, *wishes.roundWeekday) : date;
}

Round roundOf(const UpkeepWishes &wishes, Date start, Date on, int months) {
    Round round;
    int k = months;
    round.next = monthly(wishes, start, k);
    while (round.next <= on) {
        round.before = round.next;
        k += months;
        round.next = monthly(wishes, start, k);
    }
    return round;
}

/// The last date, unless the task was noted as done about then.
std::optional<Date> missed(const Round &round, const std::optional<Date> &done, int slackDays) {
    const bool seen = round.before && done && addDays(*done, slackDays) >= *round.before;
    return seen ? std::nullopt : round.before;
}

bool hasStorage(const Case &record, Storage storage) {
    return std::any_of(record.places.begin(), record.places.end(),
                       [&](const Place &place) { return place.storage == storage; });
}

bool usesMedium(const Case &record, MarkMedium medium) {
    return record.plan &&
           std::any_of(record.plan->lines.begin(), record.plan->lines.end(), [&](const PlanLine &line) {
               const Marker *marker = markerIn(record, line.marker);
               return marker != nullptr && marker->medium == medium;
           });
}

/// Where the limits of regions differ, the stricter while the region was not asked.
std::string fridgeDegrees(DateRegion region) {
    switch (region) {
    case DateRegion::NotAsked:
        return Sentence::tr("0 to 4 degrees Celsius");
    case DateRegion::EuropeOrUk:
        return Sentence::tr("0 to 5 degrees Celsius");
    case DateRegion::UnitedStates:
        return Sentence::tr("4 degrees Celsius (40 F) or below");
    }
    return {};
}

void addWeekly(const Case &record, Date on, std::vector<UpkeepTask> &out) {
    const UpkeepWishes wishes = wishesOf(record);
    const Round round = fridgeRound(record, on);
    const std::string source =
        wishes.region == DateRegion::EuropeOrUk ? Sentence::tr(scotland) : Sentence::tr(agriculture);
    out.push_back(
        {Sentence::tr("Check the fridge: opened packs, spills, raw meat covered on the lowest shelf, {1}.",
                      {fridgeDegrees(wishes.region)}),
         round.next, Sentence::tr("every week"), source, Doer::Client, missed(round, wishes.fridgeDone, 3)});
    out.push_back(
        {Sentence::tr(
             "Read out the dates in the fridge. What is past its use by date goes, once that is agreed."),
         round.next, Sentence::tr("every week"), Sentence::tr(common), Doer::Helper});
}

void addQuarterly(const Case &record, Date on, std::vector<UpkeepTask> &out) {
    constexpr int slack = 30;
    const UpkeepWishes wishes = wishesOf(record);
    const Round round = quarterRound(record, on);
    const std::string when = Sentence::tr("every three months");
    out.push_back(
        {Sentence::tr("Clean, sort and check the cupboards: each thing in its place, each mark on and firm."),
         round.next, when, Sentence::tr(common), Doer::Client, missed(round, wishes.roundDone, slack)});
    out.push_back({Sentence::tr("Read out the dates in the cupboards; look for mould, insects and leaks."),
                   round.next, when, Sentence::tr(common), Doer::Helper});
    if (hasStorage(record, Storage::Freezer))
        out.push_back(
            {Sentence::tr(
                 "List the freezer; put the oldest in front. Keep it at -18 degrees Celsius or below."),
             round.next, when, Sentence::tr(scotland)});
    out.push_back(
        {Sentence::tr("Audit of the plan: all hazards, allergens and controls, and a sample of the rest."),
         round.next, when, Sentence::tr(common)});
}

void addSlower(const Case &record, Date on, std::vector<UpkeepTask> &out) {
    constexpr int fourMonths = 4, halfYear = 6;
    const UpkeepWishes wishes = wishesOf(record);
    const Date start = startOf(record, on);
    if (usesMedium(record, MarkMedium::LargePrint))
        out.push_back({Sentence::tr("Look at each print label; make those anew that are faded or torn."),
                       roundOf(wishes, start, on, fourMonths).next, Sentence::tr("every four months"),
                       Sentence::tr(common), Doer::Helper});
    out.push_back({Sentence::tr("Walk through the whole kitchen with the therapist, or talk it through."),
                   roundOf(wishes, start, on, halfYear).next, Sentence::tr("every six months"),
                   Sentence::tr(common), Doer::Together});
}

} // namespace

Round fridgeRound(const Case &record, Date on) {
    constexpr int week = 7;
    const UpkeepWishes wishes = wishesOf(record);
    const Date start = startOf(record, on);
    Round round;
    round.next = wishes.fridgeWeekday ? weekdayOnOrAfter(addDays(start, 1), *wishes.fridgeWeekday)
                                      : addDays(start, week);
    while (round.next <= on) {
        round.before = round.next;
        round.next = addDays(round.next, week);
    }
    return round;
}

Round quarterRound(const Case &record, Date on) {
    constexpr int quarter = 3;
    return roundOf(wishesOf(record), startOf(record, on), on, quarter);
}

void addRounds(const Case &record, Date on, std::vector<UpkeepTask> &out) {
    if (hasStorage(record, Storage::Fridge))
        addWeekly(record, on, out);
    addQuarterly(record, on, out);
    addSlower(record, on, out);
}

Result<std::optional<int>> readRoundDay(const std::string &typed) {
    const std::string tidied = typed::tidy(typed);
    if (tidied.empty())
        return std::optional<int>{};
    const auto day = typed::number(tidied);
    if (!day || *day < 1 || *day > 31 || *day != static_cast<int>(*day))
        return fail(ErrorCode::OutOfRange,
                    typed::notA(Sentence::tr("a day of the month"), typed, "15, or 31 for the last day"));
    return std::optional<int>{static_cast<int>(*day)};
}

} // namespace model
