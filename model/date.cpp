#include "model/date.h"
#include "model/sentence.h"
#include <array>
#include <cctype>
#include <charconv>
#include <cstdio>
#include <vector>

namespace model {
namespace {

using namespace std::chrono;

constexpr std::array<const char *, 12> monthNames{"January",   "February", "March",    "April",
                                                  "May",       "June",     "July",     "August",
                                                  "September", "October",  "November", "December"};

/// Runs of digits and runs of letters, everything else parts them.
std::vector<std::string> parts(const std::string &text) {
    std::vector<std::string> found;
    bool inside = false;
    bool digits = false;
    for (const char c : text) {
        const auto u = static_cast<unsigned char>(c);
        const bool wanted = std::isalnum(u) != 0;
        const bool isDigit = std::isdigit(u) != 0;
        if (wanted && (!inside || isDigit != digits))
            found.emplace_back();
        if (wanted)
            found.back() += static_cast<char>(std::tolower(u));
        inside = wanted;
        digits = isDigit;
    }
    return found;
}

int number(const std::string &text) {
    int value = -1;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    return error == std::errc{} && end == text.data() + text.size() ? value : -1;
}

/// 1..12 for a month's name or its first three letters or more, else 0.
int monthFromName(const std::string &word) {
    for (std::size_t m = 0; m < monthNames.size() && word.size() >= 3; ++m) {
        std::string name = monthNames[m];
        name[0] = static_cast<char>(std::tolower(static_cast<unsigned char>(name[0])));
        if (name.starts_with(word))
            return static_cast<int>(m) + 1;
    }
    return 0;
}

Result<Date> checked(int y, int m, int d, const std::string &text) {
    const Date date{year{y}, month{static_cast<unsigned>(m)}, day{static_cast<unsigned>(d)}};
    if (m < 1 || d < 1 || !date.ok())
        return fail(ErrorCode::OutOfRange,
                    Sentence::tr("There is no such day: {1}. For example 25 November 2026.", {text}));
    return date;
}

} // namespace

std::string isoDate(Date date) {
    std::array<char, 24> out{};
    std::snprintf(out.data(), out.size(), "%04d-%02u-%02u", static_cast<int>(date.year()),
                  static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()));
    return out.data();
}

std::string dateInWords(Date date) {
    return std::to_string(static_cast<unsigned>(date.day())) + " " +
           monthNames.at(static_cast<unsigned>(date.month()) - 1) + " " +
           std::to_string(static_cast<int>(date.year()));
}

std::string isoTime(Time time) {
    const auto midnight = floor<days>(time);
    const hh_mm_ss clock{time - midnight};
    std::array<char, 48> out{};
    std::snprintf(out.data(), out.size(), "T%02d:%02d:%02dZ", static_cast<int>(clock.hours().count()),
                  static_cast<int>(clock.minutes().count()), static_cast<int>(clock.seconds().count()));
    return isoDate(Date{midnight}) + out.data();
}

Result<Date> parseDate(const std::string &text) {
    const auto found = parts(text);
    if (found.size() == 3) {
        const int a = number(found[0]);
        const int c = number(found[2]);
        const int named = monthFromName(found[1]);
        const int b = named > 0 ? named : number(found[1]);
        if (a >= 0 && b >= 0 && c >= 0) {
            if (found[0].size() == 4 && named == 0)
                return checked(a, b, c, text);
            if (found[2].size() == 4)
                return checked(c, b, a, text);
        }
    }
    return fail(
        ErrorCode::NotUnderstood,
        Sentence::tr("Not a date: {1}. Write day, month and year, for example 25 November 2026.", {text}));
}

Result<Time> parseTime(const std::string &text) {
    const auto found = parts(text);
    // 2026 11 25 t 10 30 00 z
    if (found.size() == 8 && found[3] == "t" && found[7] == "z") {
        const auto date = parseDate(found[0] + "-" + found[1] + "-" + found[2]);
        const int h = number(found[4]);
        const int m = number(found[5]);
        const int s = number(found[6]);
        if (date && h >= 0 && h < 24 && m >= 0 && m < 60 && s >= 0 && s < 60)
            return Time{sys_days{*date}} + hours{h} + minutes{m} + seconds{s};
    }
    return fail(ErrorCode::NotUnderstood, Sentence::tr("Not a time: {1}.", {text}));
}

Date today() {
    return Date{floor<days>(system_clock::now())};
}

Date addDays(Date date, int count) {
    return Date{sys_days{date} + days{count}};
}

int ageInYears(Date born, Date on) {
    const int age = static_cast<int>(on.year()) - static_cast<int>(born.year());
    const bool birthdayToCome =
        on.month() < born.month() || (on.month() == born.month() && on.day() < born.day());
    return birthdayToCome ? age - 1 : age;
}

} // namespace model
