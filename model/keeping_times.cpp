#include "model/keeping_times.h"
#include "model/contents_words.h"
#include "model/sentence.h"
#include <algorithm>
#include <cassert>
#include <sstream>

namespace model {
namespace {

KeepingSpan::Unit unitFrom(const std::string &word) {
    if (word == "weeks")
        return KeepingSpan::Unit::Weeks;
    if (word == "months")
        return KeepingSpan::Unit::Months;
    return word == "years" ? KeepingSpan::Unit::Years : KeepingSpan::Unit::Days;
}

KeepingSpan spanFrom(const std::string &column) {
    KeepingSpan span;
    std::istringstream in(column);
    std::string unit;
    if (in >> span.least >> span.most >> unit)
        span.unit = unitFrom(unit);
    else
        span = {0, 0, KeepingSpan::Unit::Days, column == "-" ? "" : column};
    return span;
}

FromPurchase boughtFrom(std::string column) {
    const bool stated = !column.ends_with("*");
    if (!stated)
        column.pop_back();
    const KeepingSpan span = spanFrom(column);
    return {span, stated && span.known()};
}

KeepingTime timeFrom(const std::string &line) {
    std::vector<std::string> columns;
    std::istringstream in(line);
    std::string column;
    while (std::getline(in, column, '|'))
        columns.push_back(words::trimmed(column));
    assert(columns.size() == 8);
    return {.row = std::stoi(columns[0]),
            .name = columns[1],
            .subtitle = columns[2] == "-" ? "" : columns[2],
            .pantry = boughtFrom(columns[3]),
            .fridge = boughtFrom(columns[4]),
            .freezer = boughtFrom(columns[5]),
            .pantryOpened = spanFrom(columns[6]),
            .fridgeOpened = spanFrom(columns[7])};
}

std::vector<KeepingTime> readAll() {
    std::vector<KeepingTime> out;
    std::istringstream in{std::string(keepingTimesTable())};
    std::string line;
    while (std::getline(in, line)) {
        if (!words::trimmed(line).empty())
            out.push_back(timeFrom(line));
    }
    return out;
}

Date later(Date from, int amount, KeepingSpan::Unit unit) {
    switch (unit) {
    case KeepingSpan::Unit::Days:
        return addDays(from, amount);
    case KeepingSpan::Unit::Weeks:
        return addDays(from, 7 * amount);
    case KeepingSpan::Unit::Months:
        return addMonths(from, amount);
    case KeepingSpan::Unit::Years:
        return addMonths(from, 12 * amount);
    }
    return from;
}

std::string amountOf(KeepingSpan::Unit unit, int amount) {
    const std::string number = std::to_string(amount);
    const bool one = amount == 1;
    switch (unit) {
    case KeepingSpan::Unit::Days:
        return one ? Sentence::tr("{1} day", {number}) : Sentence::tr("{1} days", {number});
    case KeepingSpan::Unit::Weeks:
        return one ? Sentence::tr("{1} week", {number}) : Sentence::tr("{1} weeks", {number});
    case KeepingSpan::Unit::Months:
        return one ? Sentence::tr("{1} month", {number}) : Sentence::tr("{1} months", {number});
    case KeepingSpan::Unit::Years:
        return one ? Sentence::tr("{1} year", {number}) : Sentence::tr("{1} years", {number});
    }
    return number;
}

} // namespace

const std::vector<KeepingTime> &keepingTimes() {
    static const std::vector<KeepingTime> all = readAll();
    return all;
}

const KeepingTime *keepingTime(int row) {
    const auto &all = keepingTimes();
    const auto found =
        std::find_if(all.begin(), all.end(), [&](const KeepingTime &time) { return time.row == row; });
    return found == all.end() ? nullptr : &*found;
}

std::string spanInWords(const KeepingSpan &span) {
    if (!span.known())
        return span.word;
    const std::string most = amountOf(span.unit, span.most);
    return span.least == span.most ? most : Sentence::tr("{1} to {2}", {std::to_string(span.least), most});
}

std::optional<KeepingDates> keepUntil(const KeepingSpan &span, Date from) {
    if (!span.known())
        return std::nullopt;
    return KeepingDates{later(from, span.least, span.unit), later(from, span.most, span.unit)};
}

} // namespace model
