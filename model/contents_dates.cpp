#include "model/contents_reading.h"
#include <algorithm>
#include <array>

namespace model::words {
namespace {

template<std::size_t Size> bool isOneOf(const std::string &low, const std::array<const char *, Size> &names) {
    return std::find(names.begin(), names.end(), low) != names.end();
}

bool isMonth(const std::string &low) {
    static constexpr std::array names{"january", "february", "march",     "april",   "may",      "june",
                                      "july",    "august",   "september", "october", "november", "december",
                                      "jan",     "feb",      "mar",       "apr",     "jun",      "jul",
                                      "aug",     "sep",      "sept",      "oct",     "nov",      "dec"};
    return isOneOf(low, names);
}

bool isDayWord(const std::string &low) {
    static constexpr std::array names{
        "monday", "tuesday",  "wednesday", "thursday", "friday", "saturday", "sunday", "mon",
        "tue",    "tues",     "wed",       "thu",      "thurs",  "fri",      "sat",    "sun",
        "today",  "tomorrow", "yesterday", "spring",   "summer", "autumn",   "winter", "christmas",
        "easter", "ago",      "week",      "weeks",    "month",  "months",   "year",   "days"};
    return isOneOf(low, names);
}

/// "the end of next": words that may stand before a date's own.
bool isLink(const std::string &low) {
    static constexpr std::array names{"in",   "on",    "by",    "of",  "the",   "end",  "next", "last",
                                      "this", "start", "early", "mid", "since", "late", "a"};
    return isOneOf(low, names);
}

bool isDigits(const std::string &low) {
    return !low.empty() && low.find_first_not_of("0123456789") == std::string::npos;
}

/// "3rd", "21st".
bool isOrdinal(const std::string &low) {
    const auto end = low.find_first_not_of("0123456789");
    const std::string rest = end == std::string::npos || end == 0 ? "" : low.substr(end);
    return rest == "st" || rest == "nd" || rest == "rd" || rest == "th";
}

/// "12/3/26", "3.12.2026".
bool isFigures(const std::string &low) {
    const auto signs = std::count_if(low.begin(), low.end(), [](char c) { return c == '/' || c == '.'; });
    return signs > 0 && low.find_first_not_of("0123456789/.") == std::string::npos;
}

/// A number that belongs to a date because of the word beside it: "3 dec", "dec 2026", "2 weeks ago".
bool isDateNumber(const Reading &r, std::size_t i) {
    const std::string low = r.low(i);
    const bool dashed = (r.all[i].glued && isDigits(r.low(i + 1))) || // "12-10-25"
                        (i > 0 && r.all[i - 1].glued && isDigits(r.low(i - 1)));
    if (isFigures(low) || isOrdinal(low) || (isDigits(low) && dashed))
        return true;
    if (!isDigits(low))
        return numberFrom(low) && (r.single(i + 1) == "week" || r.single(i + 1) == "month") &&
               r.is(i + 2, "ago");
    const bool before = isMonth(r.low(i + 1)) || (r.is(i + 1, "of") && isMonth(r.low(i + 2))) ||
                        (isDayWord(r.low(i + 1)) && r.is(i + 2, "ago"));
    const bool behind = i > 0 && (isMonth(r.low(i - 1)) || isOrdinal(r.low(i - 1)));
    const bool year = low.size() == 4 && low.starts_with("20");
    return before || (behind && low.size() <= 2) || year;
}

/// "use by", "best before", "opened": the number of words before the date.
std::size_t triggerAt(const Reading &r, std::size_t i) {
    if ((r.is(i, "use") || r.is(i, "sell") || r.is(i, "eat")) && r.is(i + 1, "by"))
        return 2;
    if (r.is(i, "best") && (r.is(i + 1, "before") || r.is(i + 1, "by")))
        return 2;
    static constexpr std::array single{"bbe",  "bb",     "expires", "expired", "exp",    "expiry", "opened",
                                       "open", "bought", "dated",   "ub",      "frozen", "date"};
    return isOneOf(r.low(i), single) ? 1 : 0;
}

/// Behind the last word of the date; where it began if there is none.
std::size_t dateEnd(const Reading &r, std::size_t from) {
    std::size_t end = from;
    std::size_t at = from;
    while (r.free(at) && r.all[at].bracket == r.all[from].bracket) {
        const std::string low = r.low(at);
        const bool warning = low == "may" && r.single(at + 1) == "contain";
        const bool word = !warning && (isMonth(low) || isDayWord(low) || isDateNumber(r, at));
        if (!word && !isLink(low))
            break;
        ++at;
        if (word)
            end = at;
    }
    return end;
}

} // namespace

void takeDates(Reading &r) {
    for (std::size_t i = 0; i < r.all.size(); ++i) {
        const std::size_t trigger = r.free(i) ? triggerAt(r, i) : 0;
        const std::size_t end = r.free(i + trigger) ? dateEnd(r, i + trigger) : i + trigger;
        if (trigger == 0 || end == i + trigger)
            continue;
        if (r.is(i, "frozen"))
            r.facts.emplace_back("frozen");
        r.notes.push_back(joined(r.all, i, end));
        r.take(i, end);
    }
}

bool isDateAlone(const std::string &text) {
    if (text.size() > 60)
        return false;
    Reading r;
    r.all = wordsOf(text);
    r.taken.assign(r.all.size(), false);
    takeDates(r);
    return !r.all.empty() && std::find(r.taken.begin(), r.taken.end(), false) == r.taken.end();
}

} // namespace model::words
