#include "model/codec_archive.h"
#include "model/contents.h"
#include "model/lexicon.h"
#include <algorithm>
#include <chrono>
#include <gmock/gmock.h>
#include <random>

namespace {

using namespace model;

/// Lines made by the grammar of the entry, from a seed.
class Maker {
public:
    explicit Maker(unsigned seed) : m_random(seed) {}

    std::string line() {
        std::string out = item();
        for (std::size_t more = pick(4); more > 0; --more)
            out += one({", ", "; ", "\n", " comma ", " semicolon "}) + item();
        return out + one({"", "", ".", ";"});
    }

private:
    std::size_t pick(std::size_t many) {
        return std::uniform_int_distribution<std::size_t>(0, many - 1)(m_random);
    }
    std::string one(const std::vector<std::string> &from) { return from[pick(from.size())]; }
    std::string perhaps(const std::string &text) { return pick(2) == 0 ? "" : text + " "; }

    std::string name() {
        if (pick(6) == 0)
            return one({"ajvar", "\"flower\"", "Grandma's relish", "\"salt and pepper\"", "blorp",
                        "\"Mum's 5 o'clock tea\""});
        const auto &entry = catalogue()[pick(catalogue().size())];
        std::string out = entry.others.empty() || pick(2) == 0 ? entry.name : one(entry.others);
        return pick(5) == 0 ? "organic " + out : out;
    }
    std::string count() {
        return one({"2", "3 x", "4x", "a", "an", "half a dozen", "a dozen", "twelve", "twenty one", "6", "1",
                    "a couple of"});
    }
    std::string size() {
        return one({"400 g", "1,5 l", "2.5 kg", "500ml", "small", "large", "half a litre",
                    "two hundred and fifty gram"});
    }
    std::string pack() { return one({"tin of", "jars", "bag of", "bottle", "packets of", "tub"}); }
    std::string mod() {
        return one({"daily",
                    "weekly",
                    "monthly",
                    "rarely",
                    "3/week",
                    "2 per day",
                    "three times a month",
                    "nut free",
                    "no milk",
                    "may contain sesame",
                    "glass",
                    "heavy",
                    "hot",
                    "(gluten, milk)",
                    "(fridge)",
                    "really",
                    "(note by the door)",
                    "metal",
                    "twice a day",
                    "every other day"});
    }
    std::string item() {
        std::string out =
            perhaps(count()) + (pick(3) == 0 ? size() + " " : "") + (pick(3) == 0 ? pack() + " " : "");
        out += name();
        for (std::size_t mods = pick(3); mods > 0; --mods)
            out += " " + mod();
        return out;
    }

    std::mt19937 m_random;
};

/// All that is known of a thing, as it would be stored; without the words that it was read from.
codec::Json allOf(Thing thing) {
    thing.said.clear();
    return codec::toJson(thing);
}

TEST(ContentsGrammar, whatIsPrintedIsReadAgain) {
    const Lexicon &lexicon = Lexicon::standard();
    Maker maker(20251125);
    int sure = 0;
    for (int round = 0; round < 700; ++round) {
        const std::string line = maker.line();
        const auto items = parseContents(line, lexicon);
        ASSERT_TRUE(items) << line;
        for (const auto &item : *items) {
            const std::string printed = contentsLine(item.thing, lexicon);
            const auto again = parseContents(printed, lexicon);
            ASSERT_TRUE(again && again->size() == 1) << line << "\n" << printed;
            EXPECT_EQ(codec::Json::diff(allOf(item.thing), allOf(again->front().thing)).dump(), "[]")
                << line << "\n"
                << printed;
            EXPECT_EQ(contentsLine(again->front().thing, lexicon), printed) << line;
            sure += item.doubt.empty() ? 1 : 0;
        }
        if (HasFailure())
            break;
    }
    EXPECT_GT(sure, 500); // else hardly anything was printed anew
}

TEST(ContentsGrammar, everyAnswerIsALineThatSettlesItsDoubt) {
    const Lexicon &lexicon = Lexicon::standard();
    Maker maker(7);
    std::vector<std::string> lines{
        "flower, for tuna, salt and pepper, 2400 g tins chickpeas, 2 rice 3, rice (blorp)",
        "ajvar, milk frother, chicken soup, beans, tea often, 9 kg rice, 1000 rice, 1 2 kg 3 kg flour"};
    for (int round = 0; round < 100; ++round)
        lines.push_back(maker.line());
    for (const auto &line : lines) {
        const auto items = parseContents(line, lexicon);
        for (const auto &item : *items) {
            EXPECT_EQ(item.doubt.empty(), item.answers.empty()) << line;
            for (const auto &answer : item.answers) {
                const auto settled = parseContents(answer.line, lexicon);
                ASSERT_TRUE(settled) << answer.line;
                for (const auto &part : *settled)
                    EXPECT_NE(part.doubt, item.doubt) << line << "\n" << answer.line;
            }
        }
    }
}

TEST(ContentsGrammar, firstAnswersEndEveryDoubtInAFewKeys) {
    const Lexicon &lexicon = Lexicon::standard();
    Maker maker(99);
    for (int round = 0; round < 100; ++round) {
        const std::string line = maker.line();
        const auto items = parseContents(line, lexicon);
        for (auto item : *items) {
            int keys = 0;
            while (!item.doubt.empty() && keys < 7) {
                ++keys;
                item = parseContents(item.answers.front().line, lexicon)->front();
            }
            EXPECT_LT(keys, 7) << line << "\n" << item.doubt;
        }
    }
}

TEST(ContentsCorrection, changesWhatItSaysAndLeavesTheRest) {
    const Lexicon &lexicon = Lexicon::standard();
    Thing thing = parseContents("4 chopped tomatoes daily")->front().thing;
    thing.keep = 3;
    thing.place = Id{"shelf"};
    thing.width = Length{{8.2}, "8.2", Basis::Measured};
    EXPECT_EQ(contentsLine(thing, lexicon), "4 chopped tomatoes daily");
    const auto changed = correctedBy(thing, "3 chopped tomatoes weekly (milk)", lexicon);
    ASSERT_TRUE(changed);
    EXPECT_EQ(changed->count, 3);
    EXPECT_EQ(changed->usesPerWeek, 1);
    EXPECT_EQ(changed->allergens.size(), 1U);
    EXPECT_EQ(changed->keep, 3);
    EXPECT_EQ(changed->place, Id{"shelf"});
    EXPECT_EQ(changed->width, thing.width);
    const auto two = correctedBy(thing, "rice, pasta", lexicon);
    ASSERT_FALSE(two);
    EXPECT_EQ(two.error().code, ErrorCode::NotUnderstood);
    EXPECT_FALSE(correctedBy(thing, " ", lexicon));
}

struct Strange {
    const char *what;
    std::string line;
    std::size_t things;
};

/// Unusual input, each understood or asked about; nothing typed is lost from the names.
TEST(ContentsStrange, isUnderstoodOrAskedAbout) {
    const std::vector<Strange> rows{
        {"emoji", "\U0001F345 2, rice", 2},
        {"right to left", "\u0645\u0631\u0628\u0649 3, rice", 2},
        {"marks that turn the text", "\u202eeciR\u202c 2; \u2067tea\u2069", 2},
        {"control characters", std::string("rice\x01\x02 2,\x7f tea", 13), 2},
        {"a pasted table", "rice\t2\tdaily\r\npasta\t3\r\ntea\t1\tweekly\r\n", 3},
        {"commas of another script", "rice 2\u060c tea\u3001 milk\uff1b salt", 4},
        {"a list with bullets", "\u2022 rice 2\n- tea\n* milk", 3},
        {"curly quotation marks", "\u201cMum\u2019s tea\u201d 2", 1},
        {"fractions", "\u00bd bag of rice, 2 \u00bd l milk", 2},
        {"an open bracket", "rice (gluten, tea", 2},
        {"an open quotation mark", "\"rice, tea", 2},
        {"only signs", "?! rice .. ,,, ...", 1},
    };
    for (const auto &row : rows) {
        const auto items = parseContents(row.line);
        ASSERT_TRUE(items) << row.what;
        EXPECT_EQ(items->size(), row.things) << row.what;
        for (const auto &item : *items)
            EXPECT_FALSE(item.thing.name.empty()) << row.what;
    }
    EXPECT_EQ(parseContents(rows[4].line)->at(0).thing.count, 2);
    EXPECT_EQ(parseContents(rows[4].line)->at(2).thing.usesPerWeek, 1);
    EXPECT_EQ(parseContents(rows[6].line)->at(0).matched, "rice");
    EXPECT_EQ(parseContents(rows[8].line)->at(1).size, "2.5 l");
}

TEST(ContentsStrange, tenThousandCharactersTakeNoTime) {
    const std::vector<std::string> lines{std::string(10'000, 'x'),
                                         [] {
                                             std::string words;
                                             while (words.size() < 10'000)
                                                 words += "blorp ";
                                             return words;
                                         }(),
                                         [] {
                                             std::string names;
                                             while (names.size() < 10'000)
                                                 names += "chikpeas, 2 riec, flowr; ";
                                             return names;
                                         }(),
                                         std::string(10'000, '('),
                                         std::string(10'000, '"'),
                                         std::string(10'000, '7'),
                                         std::string(9'999, ',') + "a"};
    for (const auto &line : lines) {
        const auto begin = std::chrono::steady_clock::now();
        const auto items = parseContents(line);
        const std::chrono::duration<double> took = std::chrono::steady_clock::now() - begin;
        EXPECT_LT(took.count(), 5) << line.substr(0, 30); // far from the common time, for a busy machine
        if (items) {
            for (const auto &item : *items)
                EXPECT_FALSE(item.thing.name.empty());
        }
    }
}

} // namespace
