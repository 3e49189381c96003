#include "model/rates.h"
#include "model/sentence.h"
#include "model/touch.h"
#include "model/typed.h"
#include <algorithm>
#include <cmath>
#include <sstream>

namespace model {

namespace {

bool isOneOf(const std::string &text, std::initializer_list<const char *> choices) {
    return std::any_of(choices.begin(), choices.end(), [&](const char *choice) { return text == choice; });
}

/// Words and numbers, without commas.
std::vector<std::string> wordsIn(std::string text) {
    std::replace(text.begin(), text.end(), ',', ' ');
    std::istringstream stream(text);
    std::vector<std::string> words;
    for (std::string word; stream >> word;)
        words.push_back(word);
    return words;
}

/// Takes one word into the reading; false if it says nothing of braille.
bool takeWord(const std::string &word, BrailleReading &braille, bool &skillSaid) {
    const auto skill = [&](BrailleSkill value) {
        braille.skill = value;
        skillSaid = true;
        return true;
    };
    if (isOneOf(word, {"reads", "read", "reader", "yes"}))
        return skill(BrailleSkill::Reads);
    if (isOneOf(word, {"learning", "learns", "begins", "beginner"}))
        return skill(BrailleSkill::Learning);
    if (isOneOf(word, {"no", "not", "none"}))
        return skill(BrailleSkill::No);
    if (isOneOf(word, {"contracted", "uncontracted"})) {
        braille.contracted = word == "contracted";
        return true;
    }
    if (isOneOf(word, {"jumbo", "plain"})) {
        braille.form = word == "jumbo" ? BrailleForm::Jumbo : BrailleForm::Plain;
        return true;
    }
    return isOneOf(word, {"braille", "words", "word", "a", "per", "minute", "wpm", "at", "and"});
}

Result<void> takeSpeed(double speed, BrailleReading &braille, const std::string &typed) {
    constexpr double fastest = 400;
    if (!(speed >= 1 && speed <= fastest) || speed != std::floor(speed))
        return fail(ErrorCode::OutOfRange, Sentence::tr("Not a possible speed of reading braille: {1}. It "
                                                        "goes from 1 to 400 words a minute. Try 80. Kept.",
                                                        {typed}));
    braille.wordsPerMinute = static_cast<int>(speed);
    return {};
}

} // namespace

std::optional<Filament> filamentOf(const std::string &typed) {
    const auto value = typed::numberAndUnit(typed::tidy(typed));
    if (!value)
        return std::nullopt;
    for (const Filament &filament : filaments()) {
        const double own = value->unit.empty() ? filament.marking : filament.target.value;
        if (std::abs(own - value->value) < 1e-6)
            return filament;
    }
    return std::nullopt;
}

std::string wordsOf(const Filament &filament) {
    return Sentence::tr("{1}, {2} g", {typed::words(filament.marking, 2, typed::Zeros::Keep),
                                       typed::words(filament.target.value, 3)});
}

Result<ShapesNamed> parseNamed(const std::string &typed) {
    const auto named = parseShapes(typed);
    if (named)
        return named;
    if (named.error().code == ErrorCode::NotUnderstood)
        return fail(ErrorCode::NotUnderstood, typed::notA(Sentence::tr("a count of answers"), typed, "9/10"));
    return fail(ErrorCode::OutOfRange, Sentence::tr("Not a possible count: {1}. First how many answers were "
                                                    "right, then how many were asked for: 9/10. Kept.",
                                                    {typed}));
}

bool couldBeGuessing(const ShapesNamed &named) {
    return byGuessing(named.right, named.tried, 0.5) > 0.05;
}

Result<BrailleReading> parseBrailleReading(const std::string &typed) {
    BrailleReading braille;
    bool skillSaid = false;
    for (const std::string &word : wordsIn(typed::tidy(typed))) {
        if (const auto speed = typed::number(word)) {
            if (const auto taken = takeSpeed(*speed, braille, typed); !taken)
                return tl::unexpected(taken.error());
        } else if (!takeWord(word, braille, skillSaid)) {
            return fail(ErrorCode::NotUnderstood,
                        Sentence::tr("Not understood: {1}. Try: reads contracted, 80 words a minute. Kept.",
                                     {typed}));
        }
    }
    if (!skillSaid)
        return fail(ErrorCode::NotUnderstood,
                    typed::notA(Sentence::tr("a word about braille"), typed, "reads, learning or no"));
    if (braille.skill == BrailleSkill::No && braille.wordsPerMinute)
        return fail(
            ErrorCode::OutOfRange,
            Sentence::tr("Contradictory: {1}. A speed, but no reading. Try: reads, 20 words a minute. Kept.",
                         {typed}));
    return braille;
}

std::string wordsOf(const BrailleReading &braille) {
    if (braille.skill == BrailleSkill::No)
        return Sentence::tr("does not read braille");
    const bool reads = braille.skill == BrailleSkill::Reads, jumbo = braille.form == BrailleForm::Jumbo;
    std::string words;
    if (!braille.contracted)
        words = reads   ? jumbo ? Sentence::tr("reads jumbo braille") : Sentence::tr("reads braille")
                  : jumbo ? Sentence::tr("is learning jumbo braille")
                        : Sentence::tr("is learning braille");
    else if (*braille.contracted)
        words = reads   ? jumbo ? Sentence::tr("reads jumbo contracted braille")
                                : Sentence::tr("reads contracted braille")
                  : jumbo ? Sentence::tr("is learning jumbo contracted braille")
                        : Sentence::tr("is learning contracted braille");
    else
        words = reads   ? jumbo ? Sentence::tr("reads jumbo uncontracted braille")
                                : Sentence::tr("reads uncontracted braille")
                  : jumbo ? Sentence::tr("is learning jumbo uncontracted braille")
                        : Sentence::tr("is learning uncontracted braille");
    if (braille.wordsPerMinute)
        words = Sentence::tr("{1}, {2} words a minute", {words, std::to_string(*braille.wordsPerMinute)});
    return words;
}

} // namespace model
