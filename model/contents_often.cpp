#include "model/contents_reading.h"
#include "model/spoken_numbers.h"
#include <map>

namespace model::words {
namespace {

std::optional<double> timesAWeek(double times, const std::string &unit) {
    static const std::map<std::string, double> weeks{{"day", 7},    {"morning", 7}, {"evening", 7},
                                                     {"night", 7},  {"daily", 7},   {"week", 1},
                                                     {"weekly", 1}, {"wk", 1},      {"fortnight", 0.5}};
    if (const auto found = weeks.find(unit); found != weeks.end())
        return times * found->second;
    if (unit == "month" || unit == "monthly")
        return times * 12 / 52;
    if (unit == "year" || unit == "yearly")
        return times / 52;
    return std::nullopt;
}

std::optional<double> oftenWord(const std::string &word) {
    static const std::map<std::string, double> words{{"daily", 7},
                                                     {"nightly", 7},
                                                     {"weekly", 1},
                                                     {"fortnightly", 0.5},
                                                     {"monthly", 12.0 / 52},
                                                     {"yearly", 1.0 / 52},
                                                     {"rarely", rarelyPerWeek},
                                                     {"seldom", rarelyPerWeek},
                                                     {"occasionally", rarelyPerWeek},
                                                     {"never", 0}};
    const auto found = words.find(word);
    return found == words.end() ? std::nullopt : std::optional(found->second);
}

/// Words that say how often, and a number of words that they take; 0: none here.
struct Often {
    std::optional<double> uses;
    std::size_t length = 0;
};

/// "every day", "every other day", "each week", "every 2 weeks", "most days", "hardly ever".
Often everyPhrase(const Reading &r, std::size_t i) {
    const std::string first = r.low(i);
    if (first == "most" && r.single(i + 1) == "day")
        return {5, 2};
    if (first == "hardly" && r.is(i + 1, "ever"))
        return {rarelyPerWeek, 2};
    if ((first == "at" && r.single(i + 1) == "weekend") || first == "weekends")
        return {2, first == "at" ? 2U : 1U};
    const std::size_t at = first == "once" && r.is(i + 1, "every") ? i + 1 : i;
    if (!r.is(at, "every") && !r.is(at, "each"))
        return {};
    if (r.is(at + 1, "other") || r.is(at + 1, "second"))
        return {timesAWeek(0.5, r.single(at + 2)), at + 3 - i};
    if (const auto number = numberAt(r.all, at + 1); number.length > 0 && number.value > 0)
        return {timesAWeek(1 / number.value, r.single(at + 1 + number.length)), at + 2 + number.length - i};
    return {timesAWeek(1, r.single(at + 1)), at + 2 - i};
}

/// "3 per week", "3/week", "three times a week", "3 x a week", "twice daily", "once a month", "2 a day".
Often countedPhrase(const Reading &r, std::size_t i) {
    SpokenNumber times = r.free(i) ? numberAt(r.all, i) : SpokenNumber{};
    const bool adverb = r.is(i, "once") || r.is(i, "twice");
    if (adverb)
        times = {r.is(i, "once") ? 1.0 : 2.0, 1};
    if (times.length == 0)
        return {};
    std::size_t next = i + times.length;
    const bool said = r.is(next, "times") || r.is(next, "time") || r.is(next, "x");
    next += said ? 1 : 0;
    if ((adverb || said) && oftenWord(r.low(next)))
        return {timesAWeek(times.value, r.low(next)), next + 1 - i};
    if (!r.is(next, "a") && !r.is(next, "per") && !r.is(next, "/") && !r.is(next, "each") &&
        !r.is(next, "every"))
        return {};
    return {timesAWeek(times.value, r.single(next + 1)), next + 2 - i};
}

} // namespace

void takeFrequency(Reading &r) {
    for (std::size_t i = 0; i < r.all.size(); ++i) {
        if (!r.free(i))
            continue;
        Often found = everyPhrase(r, i);
        if (!found.uses)
            found = countedPhrase(r, i);
        if (!found.uses && oftenWord(r.low(i)))
            found = {oftenWord(r.low(i)), 1};
        if (found.uses) {
            r.uses = found.uses;
            r.take(i, i + found.length);
        } else if (r.is(i, "often") || r.is(i, "sometimes") || r.is(i, "regularly")) {
            r.vague = r.all[i].low;
            r.take(i, i + 1);
        }
    }
}

} // namespace model::words
