#pragma once
#include "model/contents.h"
#include "model/contents_words.h"
#include "model/lexicon.h"

namespace model::words {

/// A claim of the pack: "nut free", "no nuts".
struct Claim {
    std::string allergen, claimed, words; // "nuts", "nut-free", "no nuts"
};

/// One thing while it is being read: words are taken one after the other, what is left is the name.
struct Reading {
    std::vector<Word> all;
    std::vector<bool> taken;
    std::string quoted;                    // the name in quotation marks; empty: none
    const CatalogueThing *entry = nullptr; // whose usual facts are taken
    std::size_t nameFrom = 0, nameTo = 0;  // words of the catalogue name
    std::vector<double> counts;
    std::optional<double> uses;
    std::string vague; // "often", "sometimes": how often was said, but not clearly
    std::vector<std::pair<double, std::string>> sizes;
    std::string sizeClass;  // "small", "medium", "large"
    std::string otherClass; // a second one that was said
    std::optional<Shape> pack;
    std::string packBehind;              // the pack word if it ends the catalogue name: "jam jar", "iron pot"
    std::vector<std::string> facts;      // words that say what it is made of or what it is
    std::vector<std::string> mayContain; // allergen keys
    std::vector<Claim> claims;
    std::vector<std::string> notes;
    std::string like;               // the name behind "like"
    bool really = false;            // what looks unlikely is meant
    std::string soundTyped, sounds; // "for" and "4"
    std::string unknown;            // what was said in brackets and not understood, or of a claim in doubt
    bool contested = false;         // a claim that is denied or not sure

    [[nodiscard]] bool is(std::size_t i, const char *word) const { return free(i) && all[i].low == word; }
    [[nodiscard]] bool free(std::size_t i) const { return i < all.size() && !taken[i]; }
    [[nodiscard]] std::string low(std::size_t i) const { return free(i) ? all[i].low : std::string(); }
    [[nodiscard]] std::string single(std::size_t i) const { return free(i) ? all[i].single : std::string(); }
    /// A hyphen, or "non" before it, makes it a part of a longer word: "non-stick", "heavy-duty".
    [[nodiscard]] bool compound(std::size_t i) const {
        const bool behind = i > 0 && free(i - 1) &&
                            ((all[i - 1].glued && !numberFrom(all[i - 1].low)) || all[i - 1].low == "non");
        return behind || (all[i].glued && free(i + 1));
    }
    void take(std::size_t from, std::size_t to) {
        std::fill(taken.begin() + static_cast<long>(from),
                  taken.begin() + static_cast<long>(std::min(to, taken.size())), true);
    }
};

/// Uses a week meant by "rarely": a few times a year.
inline constexpr double rarelyPerWeek = 0.1;

/// True for pans, tableware, tools and appliances: things that are used and stay.
[[nodiscard]] bool isLasting(const CatalogueThing &entry);

/// Takes count, size, pack, frequency, facts and claims out of the text of one thing.
[[nodiscard]] Reading readingOf(const std::string &text, const Lexicon &lexicon);
/// The words that are left for the name.
[[nodiscard]] std::string nameOf(const Reading &reading);

/// Takes how often: "daily", "3 times a week", "every other day", "often".
void takeFrequency(Reading &reading);
/// Takes sizes and packs: "400 g", "half a litre", "tin of", "large".
void takeSizes(Reading &reading);
void takePack(Reading &reading);
/// Takes dates, as notes: "use by 3 dec", "opened in March".
void takeDates(Reading &reading);
/// True if a text is a date of this kind and nothing else.
[[nodiscard]] bool isDateAlone(const std::string &text);
/// Takes how many, in front, behind, or beside the catalogue name.
void takeCount(Reading &reading);
/// Takes where it stands, until when it keeps and how full it is, as notes: "under the sink", "half empty".
void takeNotes(Reading &reading);
/// Takes words that fill a sentence and say nothing: "some", "the", "there are".
void takeFillers(Reading &reading);
/// Takes "glass", "hot", allergens and the like, outside the name.
void takeFacts(Reading &reading);
/// Takes "nut free", "no nuts", "may contain nuts", unless they belong to the catalogue name.
void takeClaims(Reading &reading);
/// From a first word to behind the last one.
struct WordSpan {
    std::size_t from = 0, to = 0;
    bool contested = false; // a claim that is denied or not sure: no name has it in it
};
/// Where claims and warnings about allergens stand.
[[nodiscard]] std::vector<WordSpan> claimsIn(const Reading &reading);
/// True if a name from word to word would cut a claim in two.
[[nodiscard]] bool cuts(const std::vector<WordSpan> &claims, std::size_t from, std::size_t to);

/// Shape of a pack word in the singular ("tin", "carton"), or of any shape's own word ("pan").
[[nodiscard]] std::optional<Shape> packShape(const std::string &single);
[[nodiscard]] std::optional<Shape> anyShape(const std::string &single);
/// True for "pack", "set", "pair": behind a name they tell how many, and no other thing.
[[nodiscard]] bool saysSeveral(const std::string &single);
/// The word of a shape that anyShape() reads.
[[nodiscard]] std::string shapeWord(Shape shape);
/// True for "glass", "hot" and other words that say what a thing is made of or what it is.
[[nodiscard]] bool isFact(const std::string &low);

} // namespace model::words
