#include "model/rates.h"
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
        return fail(ErrorCode::OutOfRange, "Not a possible speed of reading braille: " + typed +
                                               ". It goes from 1 to 400 words a minute. Try 80. Kept.");
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
    return typed::words(filament.marking, 2, typed::Zeros::Keep) + ", " +
           typed::words(filament.target.value, 3) + " g";
}

Result<ShapesNamed> parseNamed(const std::string &typed) {
    const auto named = parseShapes(typed);
    if (named)
        return named;
    if (named.error().code == ErrorCode::NotUnderstood)
        return fail(ErrorCode::NotUnderstood, typed::notA("a count of answers", typed, "9/10"));
    return fail(ErrorCode::OutOfRange,
                "Not a possible count: " + typed +
                    ". First how many answers were right, then how many were asked for: "
                    "9/10. Kept.");
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
                        "Not understood: " + typed + ". Try: reads contracted, 80 words a minute. Kept.");
        }
    }
    if (!skillSaid)
        return fail(ErrorCode::NotUnderstood,
                    typed::notA("a word about braille", typed, "reads, learning or no"));
    if (braille.skill == BrailleSkill::No && braille.wordsPerMinute)
        return fail(ErrorCode::OutOfRange,
                    "Contradictory: " + typed +
                        ". A speed, but no reading. Try: reads, 20 words a minute. Kept.");
    return braille;
}

std::string wordsOf(const BrailleReading &braille) {
    if (braille.skill == BrailleSkill::No)
        return "does not read braille";
    std::string words = braille.skill == BrailleSkill::Reads ? "reads" : "is learning";
    if (braille.form == BrailleForm::Jumbo)
        words += " jumbo";
    if (braille.contracted)
        words += *braille.contracted ? " contracted" : " uncontracted";
    words += " braille";
    if (braille.wordsPerMinute)
        words += ", " + std::to_string(*braille.wordsPerMinute) + " words a minute";
    return words;
}

} // namespace model
