#include "model/passphrase.h"
#include "model/recovery_code.h"
#include "store_fixture.h"

using namespace model;
using ::testing::HasSubstr;

namespace {

std::string normalised(std::string_view typed) {
    const auto secret = normalisedPassphrase(typed);
    return secret ? secret->read([](ByteView bytes) { return std::string(bytes.begin(), bytes.end()); })
                  : "refused";
}

SecretBytes twentyBytes(std::string_view text) {
    const Bytes bytes(text.begin(), text.end());
    return SecretBytes::copyOf(bytes);
}

struct Accepted {
    const char *name;
    std::string phrase;
    bool accepted;
};
class PassphraseRule : public ::testing::TestWithParam<Accepted> {};

} // namespace

// Unicode Standard Annex 15, figures 3 and 6: canonical and compatibility composites.
TEST(Passphrase, isTheSameHoweverTheKeyboardComposesIt) {
    EXPECT_EQ(normalised("e\xcc\x81"), "\xc3\xa9");                // e, combining acute: e acute
    EXPECT_EQ(normalised("\xe2\x84\xab"), "\xc3\x85");             // angstrom sign: A with ring
    EXPECT_EQ(normalised("\xef\xac\x81"), "fi");                   // ligature fi
    EXPECT_EQ(normalised("2\xe2\x81\xb5"), "25");                  // superscript five
    EXPECT_EQ(normalised("\xe1\xba\x9b\xcc\xa3"), "\xe1\xb9\xa9"); // long s with dots: s with both dots
}

TEST(Passphrase, isRefusedWhenItIsNoText) {
    EXPECT_EQ(codeOf(normalisedPassphrase("\xff\xfe bytes that are no text")), ErrorCode::NotUnderstood);
    EXPECT_EQ(codeOf(normalisedPassphrase("")), ErrorCode::NotUnderstood);
    EXPECT_EQ(codeOf(checkPassphrase("\xff\xfe bytes that are no text")), ErrorCode::WeakSecret);
}

// At least 15 characters when used alone, no rules of composition, a list of common ones: NIST SP 800-63B-4.
TEST_P(PassphraseRule, decides) {
    const auto checked = checkPassphrase(GetParam().phrase);
    EXPECT_EQ(checked.has_value(), GetParam().accepted);
    EXPECT_EQ(codeOf(checked).value_or(ErrorCode::WeakSecret), ErrorCode::WeakSecret);
}

INSTANTIATE_TEST_SUITE_P(
    Phrases, PassphraseRule,
    ::testing::Values(
        Accepted{"fourteen", "fourteen chars", false}, Accepted{"fifteen", "fifteen letters", true},
        Accepted{"fourteenWideLetters", "\xc3\xa9\xc3\xa9rtyuiopqsdfg", false}, Accepted{"empty", "", false},
        Accepted{"longest", "ab" + std::string(1022, 'x') + "", true},
        Accepted{"tooLong", "ab" + std::string(1023, 'x'), false},
        Accepted{"commonWithSpaces", "Correct Horse Battery Staple", false},
        Accepted{"commonPhraseAndOneWord", "correct horse battery staple eight", true},
        Accepted{"oneLetter", std::string(20, 'a'), false},
        Accepted{"repeated", "lolo lolo lolo lolo", false}, Accepted{"counting", "1234567890123456", false},
        Accepted{"countingDown", "zyxwvutsrqponmlkj", false}),
    [](const auto &tested) { return std::string(tested.param.name); });

TEST(Passphrase, isRefusedWhenItIsTheTherapistsName) {
    EXPECT_EQ(codeOf(checkPassphraseOf("ottilie musterfrau", "Ottilie Musterfrau")), ErrorCode::WeakSecret);
    EXPECT_TRUE(checkPassphraseOf("ottilie musterfrau", "A. Tester"));
}

TEST(SearchForm, leavesOutAccentsAndCase) {
    EXPECT_EQ(searchForm("\xc3\x89lo\xc3\xafse"), "eloise");
    EXPECT_EQ(searchForm("STRASSE"),
              searchForm("stra\xc3\x9f\x65")); // Unicode CaseFolding.txt: sharp s folds to ss
}

// RFC 4648 section 10: BASE32("fooba") is MZXW6YTB; in Crockford's alphabet the same values are CSQPYRK1.
TEST(RecoveryCode, isBase32InGroups) {
    const auto code = writeRecoveryCode(twentyBytes("foobafoobafoobafooba"));
    ASSERT_EQ(code.size(), 8 * 5 + 7U);
    for (std::size_t pair = 0; pair < 4; ++pair) {
        EXPECT_EQ(code.substr(pair * 12, 4), "CSQP");
        EXPECT_EQ(code.substr(pair * 12 + 6, 4), "YRK1");
    }
}

TEST(RecoveryCode, isReadBackHoweverItIsTyped) {
    const auto random = SecretBytes::random(recoveryBytes);
    std::string code = writeRecoveryCode(random);
    std::ranges::replace(code, '-', ' ');
    std::ranges::replace(code, '0', 'o');
    std::ranges::replace(code, '1', 'l');
    std::ranges::transform(code, code.begin(), [](char c) { return static_cast<char>(std::tolower(c)); });
    const auto read = readRecoveryCode(code);
    ASSERT_TRUE(read);
    EXPECT_EQ(writeRecoveryCode(*read), writeRecoveryCode(random));
}

TEST(RecoveryCode, namesTheGroupWithAnyOneWrongCharacter) {
    constexpr std::string_view alphabet = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
    const std::string code = writeRecoveryCode(twentyBytes("foobafoobafoobafooba"));
    for (std::size_t at = 0; at < code.size(); ++at) {
        if (code[at] == '-')
            continue;
        for (const char other : alphabet) {
            auto wrong = code;
            wrong[at] = other;
            const auto read = readRecoveryCode(wrong);
            ASSERT_EQ(read.has_value(), wrong == code) << wrong;
            if (!read) {
                ASSERT_THAT(read.error().sentence, HasSubstr("Group " + std::to_string(at / 6 + 1) + " "));
            }
        }
    }
}

TEST(RecoveryCode, noticesNeighboursAndGroupsExchanged) {
    const std::string code = writeRecoveryCode(SecretBytes::random(recoveryBytes));
    for (std::size_t at = 0; at + 1 < code.size(); ++at) {
        auto wrong = code;
        std::swap(wrong[at], wrong[at + 1]);
        if (code[at] != '-' && code[at + 1] != '-') {
            EXPECT_EQ(readRecoveryCode(wrong).has_value(), wrong == code);
        }
    }
    const auto exchanged = code.substr(6, 6) + code.substr(0, 6) + code.substr(12);
    EXPECT_FALSE(readRecoveryCode(exchanged));
}

TEST(RecoveryCode, isCheckedGroupByGroup) {
    const std::string code = writeRecoveryCode(SecretBytes::random(recoveryBytes));
    EXPECT_TRUE(recoveryGroupMatches(code, 3, " " + code.substr(12, 2) + " " + code.substr(14, 3)));
    EXPECT_TRUE(recoveryGroupMatches(code, 8, code.substr(42)));
    EXPECT_FALSE(recoveryGroupMatches(code, 3, code.substr(12, 4)));
    EXPECT_FALSE(recoveryGroupMatches(code, 0, code.substr(0, 5)));
    EXPECT_FALSE(recoveryGroupMatches(code, 9, code.substr(0, 5)));
    EXPECT_FALSE(recoveryGroupMatches(code, 1, "!!!!!"));
}

TEST(SecretBytesDeathTest, cannotBeReadBetweenUses) {
    ::testing::GTEST_FLAG(death_test_style) = "threadsafe";
    const auto secret = SecretBytes::random(32);
    const unsigned char *place = secret.read([](ByteView bytes) { return bytes.data(); });
    EXPECT_DEATH(
        {
            volatile unsigned char c = *place;
            (void)c;
        },
        "");
}
