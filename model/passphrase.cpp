#include "model/passphrase.h"
#include "model/sentence.h"
#include "model/store.h"
#include <algorithm>
#include <array>
#include <cstring>
#include <memory>
#include <utf8proc.h>

namespace model {
namespace {

constexpr std::size_t fewestCharacters = 15; // NIST SP 800-63B-4, passwords used alone
constexpr std::size_t mostBytes = 1024;

constexpr auto nfkc = static_cast<utf8proc_option_t>(UTF8PROC_STABLE | UTF8PROC_COMPOSE | UTF8PROC_COMPAT);
constexpr auto forSearch = static_cast<utf8proc_option_t>(
    UTF8PROC_STABLE | UTF8PROC_DECOMPOSE | UTF8PROC_COMPAT | UTF8PROC_STRIPMARK | UTF8PROC_CASEFOLD);

/// Phrases that are tried first, letters and digits only, compared whole. Common practice: a list of one's
/// own.
constexpr std::array commonPhrases{
    "correcthorsebatterystaple",
    "passwordpassword",
    "passwordpasswordpassword",
    "password12345678",
    "password123456789",
    "password1234567890",
    "mypasswordissecret",
    "mysecretpassword",
    "mysecretpassphrase",
    "thisismypassword",
    "thisismypassphrase",
    "thisisapassphrase",
    "thisisapassword",
    "thisisasecretpassphrase",
    "donotforgetthispassword",
    "iforgotmypassword",
    "iforgotmypassphrase",
    "idontknowmypassword",
    "pleaseletmeinnow",
    "letmeinletmeinletmein",
    "openthedoorplease",
    "changethispassword",
    "changemechangeme",
    "administratoradministrator",
    "occupationaltherapist",
    "occupationaltherapy",
    "thequickbrownfox",
    "thequickbrownfoxjumpsoverthelazydog",
    "tobeornottobethatisthequestion",
    "maytheforcebewithyou",
    "ialwayslovedyou",
    "iloveyousomuchmore",
    "iloveyouiloveyou",
    "iloveyouforever",
    "onceuponatimethere",
    "onceuponatimeinthewest",
    "twinkletwinklelittlestar",
    "maryhadalittlelamb",
    "humptydumptysatonawall",
    "wewishyouamerrychristmas",
    "happybirthdaytoyou",
    "anappleadaykeepsthedoctoraway",
    "practicemakesperfect",
    "homesweethomehomesweethome",
    "alliwantforchristmasisyou",
    "nevergonnagiveyouup",
    "qwertyuiopasdfgh",
    "qwertyuiopasdfghjkl",
    "qwertyuiopasdfghjklzxcvbnm",
    "1qaz2wsx3edc4rfv",
    "1qaz2wsx3edc4rfv5tgb",
    "asdfghjklqwertyuiop",
};

/// Letters and digits of the search form; everything else goes.
std::string lettersAndDigits(std::string_view text) {
    std::string kept = searchForm(text);
    std::erase_if(kept, [](unsigned char c) { return c < 0x80 && std::isalnum(c) == 0; });
    return kept;
}

bool repeatsItself(const std::string &text) {
    for (std::size_t unit = 1; unit <= 4 && unit * 2 <= text.size(); ++unit) {
        if (std::equal(text.begin() + static_cast<std::ptrdiff_t>(unit), text.end(), text.begin()))
            return true;
    }
    return false;
}

/// "abcdefghijklmno", "123456789012345", and backwards.
bool countsOn(const std::string &text) {
    const auto follows = [](char a, char b) {
        return b == a + 1 || (a == '9' && b == '0') || (a == 'z' && b == 'a');
    };
    const auto breaksUp = [&](char a, char b) { return !follows(a, b); };
    const auto breaksDown = [&](char a, char b) { return !follows(b, a); };
    return std::ranges::adjacent_find(text, breaksUp) == text.end() ||
           std::ranges::adjacent_find(text, breaksDown) == text.end();
}

bool isCommon(std::string_view passphrase) {
    std::string bare = lettersAndDigits(passphrase);
    const bool common = std::ranges::find(commonPhrases, bare) != commonPhrases.end() ||
                        repeatsItself(bare) || countsOn(bare);
    wipe(bare.data(), bare.size());
    return common;
}

/// Code points of UTF-8 text.
std::size_t characters(const SecretBytes &utf8) {
    return utf8.read([](ByteView bytes) {
        return static_cast<std::size_t>(
            std::ranges::count_if(bytes, [](unsigned char c) { return (c & 0xC0U) != 0x80U; }));
    });
}

} // namespace

Result<SecretBytes> normalisedPassphrase(std::string_view typed) {
    const auto notText = [] {
        return fail(ErrorCode::NotUnderstood,
                    Sentence::tr("The passphrase is empty or holds bytes that are no text. Type it again."));
    };
    const auto *source = reinterpret_cast<const utf8proc_uint8_t *>(typed.data());
    const auto length = static_cast<utf8proc_ssize_t>(typed.size());
    const auto points = utf8proc_decompose(source, length, nullptr, 0, nfkc);
    if (typed.empty() || points <= 0)
        return notText();

    SecretBytes work(static_cast<std::size_t>(points + 1) * sizeof(utf8proc_int32_t));
    return work.write([&](std::span<unsigned char> bytes) -> Result<SecretBytes> {
        auto *buffer = reinterpret_cast<utf8proc_int32_t *>(bytes.data());
        const auto filled = utf8proc_decompose(source, length, buffer, points, nfkc);
        const auto size = filled < 0 ? filled : utf8proc_reencode(buffer, filled, nfkc);
        if (size <= 0)
            return notText();
        return SecretBytes::copyOf(bytes.first(static_cast<std::size_t>(size)));
    });
}

Result<void> checkPassphrase(std::string_view passphrase) {
    if (passphrase.size() > mostBytes)
        return fail(ErrorCode::WeakSecret,
                    Sentence::tr("The passphrase is longer than 1024 bytes. Choose a shorter one."));
    const auto normal = normalisedPassphrase(passphrase);
    const auto length = normal ? characters(*normal) : 0;
    if (!normal && !passphrase.empty())
        return fail(ErrorCode::WeakSecret, normal.error().sentence);
    if (length < fewestCharacters)
        return fail(ErrorCode::WeakSecret,
                    Sentence::tr("The passphrase has {1} characters and needs at least 15. Four or five "
                                 "words that do not belong together are easy to keep in mind.",
                                 {std::to_string(length)}));
    if (isCommon(passphrase))
        return fail(ErrorCode::WeakSecret,
                    Sentence::tr("This passphrase is among the first that others would try. Choose words "
                                 "that do not belong together."));
    return {};
}

Result<void> checkPassphraseOf(std::string_view passphrase, const std::string &author) {
    const auto checked = checkPassphrase(passphrase);
    if (checked && lettersAndDigits(passphrase) == lettersAndDigits(author))
        return fail(
            ErrorCode::WeakSecret,
            Sentence::tr("This passphrase is your own name. Choose words that nobody connects with you."));
    return checked;
}

std::string searchForm(std::string_view text) {
    utf8proc_uint8_t *folded = nullptr;
    const auto size = utf8proc_map(reinterpret_cast<const utf8proc_uint8_t *>(text.data()),
                                   static_cast<utf8proc_ssize_t>(text.size()), &folded, forSearch);
    if (size < 0)
        return std::string(text);
    std::string result(reinterpret_cast<const char *>(folded), static_cast<std::size_t>(size));
    wipe(folded, static_cast<std::size_t>(size));
    std::free(folded); // utf8proc allocates with malloc
    return result;
}

} // namespace model
