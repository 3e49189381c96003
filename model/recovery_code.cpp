#include "model/recovery_code.h"
#include "model/sentence.h"
#include "model/store.h"
#include <algorithm>
#include <optional>

namespace model {
namespace {

constexpr std::string_view alphabet = "0123456789ABCDEFGHJKMNPQRSTVWXYZ"; // Crockford, Base 32
constexpr int groups = 8;
constexpr std::size_t dataPerGroup = 4;
constexpr std::size_t groupSize = dataPerGroup + 1;

/// Twice `value` in the field of 32 elements, x^5 = x^2 + 1.
unsigned doubled(unsigned value) {
    const unsigned twice = value << 1U;
    return (twice & 32U) != 0 ? twice ^ 37U : twice;
}

/// One Reed-Solomon check symbol over a group, with the group's number (0..7) mixed in.
unsigned checkSymbol(std::string_view symbols, unsigned group) {
    unsigned sum = group;
    for (const char symbol : symbols)
        sum = doubled(sum ^ static_cast<unsigned>(symbol));
    return sum;
}

std::optional<char> symbolOf(char typed) {
    const char upper = static_cast<char>(std::toupper(static_cast<unsigned char>(typed)));
    const char plain = upper == 'O' ? '0' : upper == 'I' || upper == 'L' ? '1' : upper;
    const auto place = alphabet.find(plain);
    if (place == std::string_view::npos)
        return std::nullopt;
    return static_cast<char>(place);
}

/// The symbols (0..31) of what was typed, without spaces and hyphens; none if another character is in it.
std::optional<std::string> symbolsOf(std::string_view typed) {
    std::string symbols;
    symbols.reserve(typed.size());
    for (const char c : typed) {
        if (c == ' ' || c == '-' || c == '\t' || c == '\n' || c == '\r')
            continue;
        const auto symbol = symbolOf(c);
        if (!symbol)
            return std::nullopt;
        symbols += *symbol;
    }
    return symbols;
}

void wipeText(std::string &text) {
    wipe(text.data(), text.size());
}

} // namespace

std::string writeRecoveryCode(const SecretBytes &random) {
    return random.read([](ByteView bytes) {
        std::string code;
        code.reserve(groups * (groupSize + 1));
        std::string symbols(dataPerGroup, '\0');
        for (unsigned group = 0; group < groups; ++group) {
            for (std::size_t i = 0; i < dataPerGroup; ++i) {
                unsigned value = 0;
                for (std::size_t bit = 0; bit < 5; ++bit) {
                    const std::size_t at = (group * dataPerGroup + i) * 5 + bit;
                    value = value << 1U | (static_cast<unsigned>(bytes[at / 8]) >> (7 - at % 8) & 1U);
                }
                symbols[i] = static_cast<char>(value);
                code += alphabet[value];
            }
            code += alphabet[checkSymbol(symbols, group)];
            if (group + 1 < groups)
                code += '-';
        }
        wipeText(symbols);
        return code;
    });
}

Result<SecretBytes> readRecoveryCode(std::string_view typed) {
    auto symbols = symbolsOf(typed);
    if (!symbols || symbols->size() != groups * groupSize)
        return fail(
            ErrorCode::NotUnderstood,
            Sentence::tr(
                "A recovery code has 8 groups of 5 letters and digits. Read it again, group by group."));
    SecretBytes secret(recoveryBytes);
    int wrong = 0;
    secret.write([&](std::span<unsigned char> bytes) {
        std::size_t at = 0;
        for (unsigned group = 0; group < groups && wrong == 0; ++group) {
            const auto five = std::string_view(*symbols).substr(group * groupSize, groupSize);
            if (checkSymbol(five.substr(0, dataPerGroup), group) != static_cast<unsigned>(five.back()))
                wrong = static_cast<int>(group) + 1;
            for (std::size_t i = 0; i < dataPerGroup; ++i) {
                for (unsigned bit = 5; bit-- > 0; ++at) {
                    const unsigned one = static_cast<unsigned>(five[i]) >> bit & 1U;
                    bytes[at / 8] = static_cast<unsigned char>(bytes[at / 8] | one << (7 - at % 8));
                }
            }
        }
    });
    wipeText(*symbols);
    if (wrong != 0)
        return fail(
            ErrorCode::WrongSecret,
            Sentence::tr("Group {1} of the recovery code holds a wrong character. Read that group again.",
                         {std::to_string(wrong)}));
    return secret;
}

bool recoveryGroupMatches(const std::string &code, int number, std::string_view typed) {
    const auto all = symbolsOf(code);
    const auto group = symbolsOf(typed);
    if (!all || !group || number < 1 || number > groups || all->size() != groups * groupSize)
        return false;
    return all->substr(static_cast<std::size_t>(number - 1) * groupSize, groupSize) == *group;
}

} // namespace model
