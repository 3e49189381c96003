#pragma once
#include "model/kitchen.h"
#include "model/result.h"
#include <string>
#include <vector>

namespace model {

/// A common kitchen thing with its usual facts, so that a name is enough. All facts are "usual", to be confirmed.
struct CatalogueThing {
    std::string id;
    std::string name; // singular or as bought: "chopped tomatoes"
    Thing usual;      // sizes, weight, use ... with `usual` naming every fact
};
[[nodiscard]] const std::vector<CatalogueThing> &catalogue();
[[nodiscard]] const CatalogueThing *findInCatalogue(const std::string &name);

/// One thing understood from a contents line.
struct ContentsItem {
    Thing thing;
    std::string matched; // catalogue id, or empty
    std::string doubt;   // a question to ask, or empty
};

/// Reads a contents line: a comma, semicolon or line end ends a thing; a number is how many; "daily", "weekly",
/// "monthly", "rarely", "3/week" say how often; "glass", "heavy", "hot" and allergen names are facts.
/// An unknown name is kept with the doubt "shape and size?". Fails with NotUnderstood for an empty line.
[[nodiscard]] Result<std::vector<ContentsItem>> parseContents(const std::string &line);

/// What was understood, read back: "4 chopped tomatoes, usual tin 400 grams. Rice, daily, count not given."
[[nodiscard]] std::string readContentsBack(const std::vector<ContentsItem> &items);

} // namespace model
