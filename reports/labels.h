#pragma once
#include "model/case.h"
#include "model/findings.h"
#include "model/result.h"
#include <optional>
#include <string>
#include <vector>

/// The labels of a plan: what each says in its medium, and whether it fits.
namespace reports {

using model::Result;

enum class LabelMedium { LargePrint, Braille, SpokenTag, SquareCode };

struct Label {
    LabelMedium medium{};
    model::Id thing, place; // one of them: of a thing, or of a place; both empty: of a unit or a group
    std::string name;       // what it is for, in full
    std::string words;      // what it says
    std::string where;      // how it is fixed: "on a card on the clip"
    bool fits = true;
    std::optional<model::Points> size; // of large print
    std::vector<std::string> cells;    // lines of Unicode braille
    std::vector<std::string> told; // sentences: shortened, does not fit and what would, which tag it takes
    friend bool operator==(const Label &, const Label &) = default;
};

/// In the order of the walk: for each thing whose mark holds words a label in that medium and, if a reader of
/// square codes is there, one with the text of the tag. A name that does not fit is shortened by the rule of
/// model::shorterNames, never to the name of another thing, and never for what warns or spoils a meal; her
/// own wording is never shortened. Fails as brailleLabel, or with Missing without a plan.
[[nodiscard]] Result<std::vector<Label>> thingLabels(const model::Case &record,
                                                     const model::Findings &findings);
/// From general to specific: one for each unit, and for each of its places the groups that stand there, named
/// in the client's words; in the medium that she reads: braille, else print, else none.
[[nodiscard]] Result<std::vector<Label>> sectionLabels(const model::Case &record,
                                                       const model::Findings &findings);
/// The label of one thing, or none.
[[nodiscard]] Result<std::optional<Label>> labelOf(const model::Case &record, const model::Findings &findings,
                                                   const model::Id &thing);

/// 1 uncontracted, 2 contracted; uncontracted unless she reads contracted braille.
[[nodiscard]] int labelGrade(const model::Client &client);

/// All braille labels that fit, for an embosser: North American ASCII, one label after the other with a free
/// line between, 25 lines a page. Empty if there are none.
[[nodiscard]] std::string brailleLabelFile(const std::vector<Label> &labels);

} // namespace reports
