#pragma once
#include "model/case.h"
#include "model/findings.h"
#include "reports/writers.h"
#include <filesystem>
#include <functional>
#include <string>
#include <vector>

namespace reports {

/// `madeBy` is the therapist's name on the paper; empty: not named.
///
/// The client's handout: what this is and for whom, the kitchen from general to specific, where each thing
/// stands and how it is marked, what the marks mean, upkeep with dates, goals, cautions, whom to ask. Worded
/// by templates/handout.md.
[[nodiscard]] Result<Document> handout(const model::Case &record, const model::Findings &findings,
                                       model::Date on, const std::string &madeBy = {});
/// The household's sheet: no name and no health fact without sharing consent.
[[nodiscard]] Result<Document> householdSheet(const model::Case &record, const model::Findings &findings,
                                              model::Date on, const std::string &madeBy = {});
/// What to buy, in which order to do it.
[[nodiscard]] Result<Document> workSheet(const model::Case &record, const model::Findings &findings,
                                         model::Date on, const std::string &madeBy = {});
/// The labels of things, sections and shelves, printed ones at the size that their place needs.
[[nodiscard]] Result<Document> labelSheet(const model::Case &record, const model::Findings &findings,
                                          model::Date on, const std::string &madeBy = {});
/// Goals then and now.
[[nodiscard]] Result<Document> progressReport(const model::Case &record, const model::Findings &findings,
                                              model::Date on, const std::string &madeBy = {});

/// Every mark of the kit: feel, surfaces, what it bears, price, cautions, and which safety fact rules it out.
[[nodiscard]] Result<Document> kitSheet(const model::Case &record, const model::Findings &findings,
                                        model::Date on, const std::string &madeBy = {});

/// A same-day referral of the eyes: what was seen and told, and to whom to go. It takes the place of every
/// other paper while its signs stand.
[[nodiscard]] Result<Document> eyeReferral(const model::Case &record, const model::Findings &findings,
                                           model::Date on, const std::string &madeBy = {});

/// One file to be written.
struct Paper {
    std::string fileName; // code and date, never the client's name: "K7-2026-11-25-handout.pdf"
    std::string title;
    std::string bytes;
};
/// Every paper that the client's media ask for. `progress` gets 0..1 and the paper's title; returning false
/// stops and fails with Refused ("Stopped."). It may be empty.
[[nodiscard]] Result<std::vector<Paper>>
papers(const model::Case &record, const model::Findings &findings, model::Date on,
       const std::function<bool(double, const std::string &)> &progress, const std::string &madeBy = {});
/// The kit sheet alone, as print of 18 point: it is wanted before there is a plan.
[[nodiscard]] Result<Paper> kitSheetToPrint(const model::Case &record, const model::Findings &findings,
                                            model::Date on, const std::string &madeBy = {});
/// Writes them into `folder` (made if missing, for the owner only), readable by the owner only. Fails with
/// ReadOnly, Full, InputOutput.
[[nodiscard]] Result<void> writePapers(const std::vector<Paper> &papers, const std::filesystem::path &folder);

} // namespace reports
