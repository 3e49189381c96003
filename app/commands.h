#pragma once
#include "app/command_line.h"
#include "model/date.h"
#include "reports/writers.h"
#include <optional>
#include <string>

namespace app {

/// Papers of an invented client, or of a client in the records.
struct PapersCommand {
    std::string demo;   // "nora", "all" ...; empty: a client of the records
    std::string client; // code
    std::filesystem::path out;
    std::filesystem::path store;
    std::filesystem::path passphraseFile; // empty: asked on the terminal
    std::string author;                   // on the papers and in the records' log
    model::Date on = model::today();
};
[[nodiscard]] model::Result<void> makePapers(const PapersCommand &command, const Streams &streams);

/// A sheet of the reading trial; it is of no client.
struct ReadingSheetCommand {
    std::string version = "A"; // A, B or C
    double distance = 40;      // cm
    std::filesystem::path out;
    std::string author;
    model::Date on = model::today();
};
[[nodiscard]] model::Result<void> makeReadingSheet(const ReadingSheetCommand &command,
                                                   const Streams &streams);

enum class BrailleForm { Brf, Unicode, Pef };
struct BrailleCommand {
    reports::BrailleLayout layout;
    std::string language = "en-GB";
    BrailleForm form = BrailleForm::Brf;
};
[[nodiscard]] model::Result<void> makeBraille(const BrailleCommand &command, const Streams &streams);

} // namespace app
