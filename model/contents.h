#pragma once
#include "model/kitchen.h"
#include "model/result.h"
#include <string>
#include <vector>

namespace model {

/// A common kitchen thing with its usual facts, so that a name is enough. All facts are "usual", to be
/// confirmed.
struct CatalogueThing {
    std::string id;
    std::string name;                // singular or as bought: "chopped tomatoes"
    std::vector<std::string> others; // other names of the same thing
    std::string pack;                // usual pack: "tin 400 g"
    double least = 0, most = 0;      // pack sizes that are sold, in g or ml; 0: not told
    Thing usual;                     // sizes, weight, use ... with `usual` naming every fact
};
[[nodiscard]] const std::vector<CatalogueThing> &catalogue();
/// By its name or another name, in singular or plural; nullptr if there is none.
[[nodiscard]] const CatalogueThing *findInCatalogue(const std::string &name);

/// An answer to a doubt, and the line that says the same without it.
struct DoubtAnswer {
    std::string words; // "flour", "two things"
    std::string line;  // "4 flour daily"; may hold more than one thing
    friend bool operator==(const DoubtAnswer &, const DoubtAnswer &) = default;
};

/// One thing understood from a contents line.
struct ContentsItem {
    Thing thing;
    std::string matched;              // catalogue id, or empty
    std::string doubt;                // the first question to ask, or empty
    std::vector<DoubtAnswer> answers; // to the doubt, the likeliest first; always at least one
    std::string size;                 // pack size as typed: "400 g", or empty
    std::string claim;                // "nut free": what the pack says, recorded, never a proof of safety
    std::vector<std::string> facts;   // what was said of it beside name, count and use: "glass", "400 g"
    std::string said;                 // the words of the line that it was read from
};

class Lexicon; // model/lexicon.h

/// Reads a contents line: a comma, semicolon or line end ends a thing; a number is how many; "daily",
/// "weekly", "monthly", "rarely", "3/week" say how often; "glass", "heavy", "hot" and allergen names are
/// facts. The grammar:
///
///     line  = item, {sep, item}, [sep | "."] ;
///     sep   = "," | ";" | line end | "comma" | "semicolon" ;
///     item  = {mod}, [count], {mod}, [size], [pack, ["of"]], {mod}, name, ["like", name], {mod}, [["x"],
///     count] ; name  = '"', any words, '"' | longest catalogue match | remaining words ; mod   = freq |
///     claim | fact | "really" | "(", mod, {",", mod}, ")" | "(note", words, ")" ; claim = allergen, "free" |
///     "no", allergen | "may contain", allergen ; freq  = "daily" | "weekly" | "monthly" | "rarely" | number,
///     ("/" | "per" | "times a"), ("day" | "week" | "month") ; count = number, ["x"] | "a" | "an" | ["half"],
///     "a dozen" ; size  = number, unit | "small" | "medium" | "large" ;
///
/// Catalogue names win over facts and numbers; "and" never splits a thing, but may join its packs ("2 small
/// and 1 large tin of tuna" are two things). What is not sure is a doubt with answers, and nothing is swapped
/// in silence. "like" takes the usual facts of another thing; "really" says that an unlikely size is meant. A
/// claim such as "nut free" never clears an allergen: it is kept with the state NotChecked. Fails with
/// NotUnderstood for an empty line.
[[nodiscard]] Result<std::vector<ContentsItem>> parseContents(const std::string &line);
[[nodiscard]] Result<std::vector<ContentsItem>> parseContents(const std::string &line,
                                                              const Lexicon &lexicon);

/// The line that says what the grammar can say of a thing: parseContents() gives it back. While its doubt is
/// open, her own words.
[[nodiscard]] std::string contentsLine(const Thing &thing, const Lexicon &lexicon);
/// The thing as `line` says it, with all that the line before did not say left as it was. Fails with
/// NotUnderstood if the line is empty or holds more than one thing.
[[nodiscard]] Result<Thing> correctedBy(const Thing &thing, const std::string &line, const Lexicon &lexicon);

/// What was understood, read back: "4 chopped tomatoes, usual tin 400 grams. Rice, daily, count not given."
[[nodiscard]] std::string readContentsBack(const std::vector<ContentsItem> &items);

} // namespace model
