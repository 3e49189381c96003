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
    Thing usual;                     // sizes, weight, use ... with `usual` naming every fact
};
[[nodiscard]] const std::vector<CatalogueThing> &catalogue();
/// By its name or another name, in singular or plural; nullptr if there is none.
[[nodiscard]] const CatalogueThing *findInCatalogue(const std::string &name);

/// One thing understood from a contents line.
struct ContentsItem {
    Thing thing;
    std::string matched; // catalogue id, or empty
    std::string doubt;   // a question to ask, or empty
    std::string size;    // pack size as typed: "400 g", or empty
    std::string claim;   // "nut free": what the pack says, recorded, never a proof of safety
};

/// Reads a contents line: a comma, semicolon or line end ends a thing; a number is how many; "daily",
/// "weekly", "monthly", "rarely", "3/week" say how often; "glass", "heavy", "hot" and allergen names are
/// facts. An unknown name is kept with the doubt "shape and size?". A claim such as "nut free" never clears
/// an allergen: it is kept with the state NotChecked. Fails with NotUnderstood for an empty line.
[[nodiscard]] Result<std::vector<ContentsItem>> parseContents(const std::string &line);

/// What was understood, read back: "4 chopped tomatoes, usual tin 400 grams. Rice, daily, count not given."
[[nodiscard]] std::string readContentsBack(const std::vector<ContentsItem> &items);

} // namespace model
