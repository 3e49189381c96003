#pragma once
#include "model/case.h"
#include "model/findings.h"
#include "model/rule_words.h"
#include "reports/template.h"
#include "reports/writers.h"
#include <string>
#include <vector>

/// Fields that more than one paper needs, made from a case. Values and switches only: the wording stands in
/// templates/.
namespace reports {

/// Without the full stop at its end, for words that the template goes on from.
[[nodiscard]] std::string withoutStop(std::string words);
/// "tins; baking": words that may hold commas themselves.
[[nodiscard]] std::string listed(const std::vector<std::string> &words);

void add(Fields &fields, const Fields &more);
/// `name` as a list, and "hasName" telling if it has any.
void addList(Fields &fields, const std::string &name, std::vector<Fields> list);
/// `name` as text, and "hasName" telling if there is any.
void addText(Fields &fields, const std::string &name, const std::string &text);

/// The plan of a paper that needs one. Fails with Missing, or with Infeasible and the first thing that is
/// short.
[[nodiscard]] Result<const model::Plan *> planOf(const model::Case &record);

/// Fills the template and dates the document. Beside `figures` the figure "kitchen" is drawn if the kitchen
/// has units.
[[nodiscard]] Result<Document> fillPaper(const std::string &name, const Fields &fields,
                                         const model::Case &record, model::Date on, const std::string &madeBy,
                                         std::map<std::string, Figure> figures = {});

/// Whose paper it is, when and by whom it was made, whom to ask: the same on every paper.
[[nodiscard]] Fields subjectFields(const model::Case &record, model::Date on, const std::string &madeBy);
/// The cautions, urgent ones first.
[[nodiscard]] Fields cautionFields(const model::Findings &findings);
/// The kitchen from general to specific: sections, their places, the things on them from left to right; and
/// the things that have no place yet.
[[nodiscard]] Fields kitchenFields(const model::Case &record, const model::Findings &findings);
/// One place with its things, as in the list above.
[[nodiscard]] Fields placeFields(const model::Case &record, const model::Findings &findings,
                                 const model::Plan &plan, const model::Place &place);
/// The record with the words of its labels as they are made, see labels.h; of a tag only the name.
[[nodiscard]] Result<model::Case> withLabels(const model::Case &record, const model::Findings &findings);
/// What becomes of each mark when its pack is empty: "comeOff", "goOut" and "stayOn", lists of things.
[[nodiscard]] Fields emptyPackFields(const model::Case &record);
/// The appliances with the settings that are marked, and the cautions.
[[nodiscard]] Fields controlFields(const model::Case &record, const model::Findings &findings);
/// The labels to be made, a list for each medium, and sentences on meanings that have no mark.
[[nodiscard]] Result<Fields> labelFields(const model::Case &record, const model::Findings &findings);
/// The switches of one meaning, and its words.
void addMeaning(Fields &fields, const std::string &meaning);
/// Every kind of mark that the plan uses, in the order in which it is met in the kitchen.
[[nodiscard]] Fields markFields(const model::Case &record);
/// The goals with their five levels, best first, and the level found last.
[[nodiscard]] Fields goalFields(const model::Case &record);
/// The day of a rating: its own, or its visit's.
[[nodiscard]] std::optional<model::Date> dayOf(const model::Case &record, const model::Rating &rating);
/// What the goal says at a level, without its full stop; empty if nothing is written there.
[[nodiscard]] std::string levelWords(const model::Goal &goal, int level);
/// The switches plusTwo .. minusTwo, one of them true.
void addLevel(Fields &fields, int level);

/// Keys of `meanings` that the line carries.
[[nodiscard]] bool means(const model::PlanLine &line, const std::string &meaning);
/// The kit's mark of this line, or nullptr.
[[nodiscard]] const model::Marker *markOf(const model::Case &record, const model::PlanLine &line);
/// Words to be read stand on it, so the line's label is worth printing.
[[nodiscard]] bool hasWords(const model::Marker &marker);
[[nodiscard]] const model::Thing *thingOf(const model::Case &record, const model::Id &id);
/// The lines that stand on a place, from left to right.
[[nodiscard]] std::vector<const model::PlanLine *> linesOn(const model::Plan &plan, const model::Id &place);
/// All lines, section by section along the walk.
[[nodiscard]] std::vector<const model::PlanLine *> linesInWalk(const model::Case &record,
                                                               const model::Plan &plan);
/// The places of a unit from the top.
[[nodiscard]] std::vector<const model::Place *> placesOf(const model::Case &record, const model::Id &unit);
/// The units in the order of the walk.
[[nodiscard]] std::vector<const model::Unit *> walk(const model::Case &record);
/// New stock may only go behind the old one, as the right side may go unnoticed.
[[nodiscard]] bool onlyBehind(const model::Case &record);

} // namespace reports
