#include "model/spoken_numbers.h"

namespace model::words {
namespace {

/// Reads words from a place on, without going over the end.
struct Reader {
    const std::vector<Word> &all;
    std::size_t at;
    [[nodiscard]] std::string low(std::size_t ahead = 0) const {
        return at + ahead < all.size() ? all[at + ahead].low : std::string();
    }
    [[nodiscard]] bool article(std::size_t ahead = 0) const {
        return low(ahead) == "a" || low(ahead) == "an";
    }
    [[nodiscard]] bool digits() const { return !low().empty() && low()[0] >= '0' && low()[0] <= '9'; }
};

/// Below a hundred: "four", "twenty one", "12".
std::optional<double> small(Reader &r) {
    const bool digits = r.digits();
    const auto value = numberFrom(r.low());
    if (!value)
        return std::nullopt;
    ++r.at;
    const auto unit = numberFrom(r.low());
    const bool tens = !digits && *value >= 20 && *value < 100;
    if (tens && !r.digits() && unit && *unit >= 1 && *unit < 10) {
        ++r.at;
        return *value + *unit;
    }
    return value;
}

/// "and a half", "and a quarter", "and three quarters", "1/2": what may follow a whole number.
double fractionAfter(Reader &r) {
    const auto take = [&](std::size_t words, double value) {
        r.at += words;
        return value;
    };
    if (r.low() == "½" || r.low() == "1/2")
        return take(1, 0.5);
    if (r.low() != "and")
        return 0;
    const std::size_t skip = r.article(1) ? 2 : 1;
    if (r.low(skip) == "half" || r.low(skip) == "½")
        return take(skip + 1, 0.5);
    if (r.low(skip) == "quarter")
        return take(skip + 1, 0.25);
    if (r.low(1) == "three" && r.low(2) == "quarters")
        return take(3, 0.75);
    return 0;
}

/// "two hundred and fifty"; "point five".
double whole(Reader &r, double value) {
    if (r.low() == "dozen" && value < 20) {
        ++r.at;
        return value * 12;
    }
    for (const auto &[word, factor] : {std::pair{"hundred", 100.0}, std::pair{"thousand", 1000.0}}) {
        if (r.low() != word)
            continue;
        ++r.at;
        value *= factor;
        Reader rest = r;
        rest.at += rest.low() == "and" ? 1 : 0;
        const bool digits = rest.digits();
        const auto more = small(rest);
        if (more && !digits && *more < factor) {
            r.at = rest.at;
            value += *more;
        }
    }
    if (r.low() == "point") {
        Reader rest = r;
        ++rest.at;
        if (const auto tenth = numberFrom(rest.low()); tenth && *tenth < 10) {
            r.at += 2;
            return value + *tenth / 10;
        }
    }
    return value + fractionAfter(r);
}

/// "half a dozen", "half a", "a dozen", "a couple of", "a hundred", "a quarter".
std::optional<double> special(Reader &r) {
    const auto take = [&](std::size_t words, double value) {
        r.at += words;
        return value;
    };
    const std::size_t half = r.article() && r.low(1) == "half" ? 2 : r.low() == "half" ? 1 : 0;
    if (half > 0) {
        const std::size_t article = r.article(half) ? 1 : 0;
        if (r.low(half + article) == "dozen")
            return take(half + article + 1, 6);
        return take(half + article, 0.5);
    }
    if (r.low() == "three" && r.low(1) == "quarters")
        return take(r.low(2) == "of" ? (r.low(3) == "a" ? 4 : 3) : 2, 0.75);
    const std::size_t skip = r.article() ? 1 : 0;
    const std::string word = r.low(skip);
    if (word == "quarter")
        return take(skip + 1, 0.25);
    if (word == "couple" || word == "pair")
        return r.low(skip + 1) == "of" && word == "couple" ? take(skip + 2, 2)
               : word == "couple"                          ? take(skip + 1, 2)
                                                           : std::optional<double>();
    if (skip == 1 && word == "dozen")
        return take(2, 12);
    if (skip == 1 && word == "hundred") {
        ++r.at;
        return whole(r, 1);
    }
    return std::nullopt;
}

} // namespace

SpokenNumber numberAt(const std::vector<Word> &all, std::size_t at) {
    Reader r{all, at};
    if (const auto value = special(r))
        return {*value, r.at - at};
    const auto value = small(r);
    if (!value)
        return {};
    const double number = whole(r, *value);
    return {number, r.at - at};
}

} // namespace model::words
