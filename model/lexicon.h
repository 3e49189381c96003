#pragma once
#include "model/contents.h"
#include "model/contents_words.h"
#include <deque>
#include <map>
#include <string>
#include <vector>

namespace model {

/// A name of a known thing, as it is written, that another one is like.
struct NearName {
    const CatalogueThing *thing = nullptr;
    std::string name;
};

/// The names by which things are known: those of the catalogue, and her own.
class Lexicon {
public:
    /// `own`: things that were described once; where a name is in both, hers wins.
    explicit Lexicon(const std::vector<CatalogueThing> &own = {});
    /// The catalogue alone.
    [[nodiscard]] static const Lexicon &standard();

    /// By a name in singular or plural, with or without hyphens; nullptr if there is none.
    [[nodiscard]] const CatalogueThing *find(const std::string &name) const;
    /// The same words in another order, or parted otherwise: "tomatoes chopped", "corn flour". Not if each
    /// word is a name of its own, as in "milk rice": that may be two things.
    [[nodiscard]] const CatalogueThing *findTurned(const std::string &name) const;
    /// The same words in another order, whatever they are.
    [[nodiscard]] const CatalogueThing *findInAnyOrder(const std::string &name) const;
    /// Things of which a name begins with these letters, word for word; what is used most comes first.
    [[nodiscard]] std::vector<NearName> beginningWith(const std::string &name) const;
    /// Things of which a name ends with these words and has more: "beans".
    [[nodiscard]] std::vector<NearName> endingWith(const std::string &name) const;
    /// The thing whose name is spoken as these words are: "flour" for "flower"; at most one.
    [[nodiscard]] std::vector<NearName> spokenAs(const std::string &name) const;
    /// Things whose name is spelt nearly so, or sounds so; nearest first.
    [[nodiscard]] std::vector<NearName> alike(const std::string &name) const;
    /// True if this is a whole word of some name.
    [[nodiscard]] bool isWord(const std::string &single) const { return m_words.contains(single); }
    /// Words of the longest name.
    [[nodiscard]] std::size_t longest() const { return m_longest; }

private:
    struct Name {
        std::string written;
        std::string text;                        // comparable
        std::vector<std::string> words, singles; // as written, and in the singular
        std::string letters;                     // without spaces
        std::string sound;
        const CatalogueThing *thing = nullptr;
    };
    void add(const CatalogueThing &thing);
    void addName(const std::string &name, const CatalogueThing &thing);

    std::deque<CatalogueThing> m_own;
    std::vector<Name> m_names;
    std::map<std::string, const CatalogueThing *> m_byName, m_byLetters, m_bySorted;
    std::map<std::string, int> m_words;
    std::size_t m_longest = 1;
};

namespace words {

/// How a word sounds in English, roughly: words of equal sound often have equal keys ("flour", "flower").
[[nodiscard]] std::string soundOf(const std::string &comparableName);
/// Number of letters to add, drop, change or swap with their neighbour, but no more than `most` + 1.
[[nodiscard]] std::size_t misspellings(const std::string &a, const std::string &b, std::size_t most);

} // namespace words
} // namespace model
