#include "app/command_line.h"
#include "app/commands.h"
#include "app/terminal.h"
#include <CLI/CLI.hpp>
#include <ostream>

namespace app {

using namespace model;

namespace {

constexpr int done = 0, couldNot = 1, badInput = 2;

const char *const about =
    "Feltmark helps an occupational therapist to mark and order the kitchen of a client who sees little or "
    "nothing.\n"
    "Without a command it opens its window. The program advises; the therapist decides.";

const char *const examples = R"(Examples:
  feltmark                                           open the window on your records
  feltmark --demo                                    open the window on three invented clients
  feltmark papers --demo nora --out papers           print, braille, web and text of an invented client
  feltmark papers --client K7 --out papers           papers of your client with the code K7
  feltmark reading-sheet --version A --out papers    a sheet of the reading trial
  feltmark braille --grade 1 < note.txt > note.brf   plain text to uncontracted braille

Exit status: 0 done, 1 it could not be done, 2 something was typed wrongly.
Records lie encrypted in the folder that --store names; papers do not: keep them safe.)";

/// What was read from the arguments.
struct Wanted {
    WindowStart window;
    PapersCommand papers;
    BrailleCommand braille;
    ReadingSheetCommand readingSheet;
    std::string date;
    std::string store;
    std::string out, passphraseFile;
    bool unicode = false, pef = false;
};

CLI::App *addPapers(CLI::App &cli, Wanted &wanted) {
    CLI::App *papers =
        cli.add_subcommand("papers", "Write the papers of a client into a folder. Needs no display.");
    auto *demo =
        papers->add_option("--demo", wanted.papers.demo, "Invented client: nora, idris, tilda, or all")
            ->type_name("NAME");
    auto *client = papers->add_option("--client", wanted.papers.client, "Code of a client in your records")
                       ->type_name("CODE");
    demo->excludes(client);
    papers->add_option("--out", wanted.out, "Folder for the papers; made if it is not there")
        ->type_name("DIR")
        ->required();
    papers->add_option("--store", wanted.store, "Folder of your records")->type_name("DIR");
    papers
        ->add_option(
            "--passphrase-file", wanted.passphraseFile,
            "File or descriptor (/dev/fd/3) whose first line is the passphrase; otherwise it is asked for")
        ->type_name("FILE");
    papers
        ->add_option("--author", wanted.papers.author, "Your name, for the papers and the log of the records")
        ->type_name("NAME");
    papers->add_option("--date", wanted.date, "Date on the papers, such as 2026-11-25; otherwise today")
        ->type_name("DATE");
    papers->footer(
        "One of --demo and --client is needed. The names of the files written are listed, one a line.");
    return papers;
}

CLI::App *addBraille(CLI::App &cli, Wanted &wanted) {
    CLI::App *braille = cli.add_subcommand("braille", "Turn plain text into pages of braille.");
    BrailleCommand &command = wanted.braille;
    braille->add_option("--grade", command.layout.grade, "1 uncontracted, 2 contracted")
        ->capture_default_str();
    braille->add_option("--language", command.language, "Language of the text; English only so far")
        ->type_name("TAG")
        ->capture_default_str();
    braille->add_option("--cells", command.layout.cells, "Cells in a line")->capture_default_str();
    braille->add_option("--lines", command.layout.lines, "Lines on a page, the last for its number")
        ->capture_default_str();
    auto *unicode = braille->add_flag("--unicode", wanted.unicode, "Unicode braille patterns instead of BRF");
    braille->add_flag("--pef", wanted.pef, "Portable Embosser Format instead of BRF")->excludes(unicode);
    braille->footer(
        "Text comes from standard input, braille goes to standard output. A blank line ends a paragraph.");
    return braille;
}

CLI::App *addReadingSheet(CLI::App &cli, Wanted &wanted) {
    CLI::App *sheet = cli.add_subcommand("reading-sheet", "Write a sheet of the reading trial as PDF.");
    ReadingSheetCommand &command = wanted.readingSheet;
    sheet->add_option("--version", command.version, "A, B or C: three sheets of different sentences")
        ->capture_default_str();
    sheet->add_option("--distance", command.distance, "Reading distance in cm, 20 to 50")
        ->capture_default_str();
    sheet->add_option("--out", wanted.out, "Folder for the sheet; made if it is not there")
        ->type_name("DIR")
        ->required();
    sheet->add_option("--author", command.author, "Your name, for the sheet")->type_name("NAME");
    sheet->add_option("--date", wanted.date, "Date on the sheet; otherwise today")->type_name("DATE");
    sheet->footer("Print it at full size: the ruler on it must be 100 mm long.");
    return sheet;
}

int report(const Streams &streams, const Error &error) {
    streams.err << "feltmark: " << error.sentence << '\n';
    const bool typed = error.code == ErrorCode::NotUnderstood || error.code == ErrorCode::OutOfRange ||
                       error.code == ErrorCode::Missing;
    return typed ? badInput : couldNot;
}

int finish(const Streams &streams, const Result<void> &result) {
    return result ? done : report(streams, result.error());
}

int runPapers(Wanted &wanted, const Streams &streams) {
    if (wanted.papers.demo.empty() && wanted.papers.client.empty())
        return report(streams, {ErrorCode::Missing, "Say whose papers: --demo NAME or --client CODE."});
    if (!wanted.date.empty()) {
        const auto date = parseDate(wanted.date);
        if (!date)
            return report(streams, date.error());
        wanted.papers.on = *date;
    }
    wanted.papers.out = wanted.out;
    wanted.papers.passphraseFile = wanted.passphraseFile;
    wanted.papers.store = wanted.window.store;
    return finish(streams, makePapers(wanted.papers, streams));
}

int runReadingSheet(Wanted &wanted, const Streams &streams) {
    if (!wanted.date.empty()) {
        const auto date = parseDate(wanted.date);
        if (!date)
            return report(streams, date.error());
        wanted.readingSheet.on = *date;
    }
    wanted.readingSheet.out = wanted.out;
    return finish(streams, makeReadingSheet(wanted.readingSheet, streams));
}

int runBraille(Wanted &wanted, const Streams &streams) {
    wanted.braille.form = wanted.unicode ? BrailleForm::Unicode
                          : wanted.pef   ? BrailleForm::Pef
                                         : BrailleForm::Brf;
    return finish(streams, makeBraille(wanted.braille, streams));
}

int explain(const CLI::App &cli, const CLI::ParseError &error, const Streams &streams) {
    if (error.get_exit_code() == 0)
        return cli.exit(error, streams.out, streams.err);
    streams.err << "feltmark: " << error.what() << " (for help: feltmark --help)\n";
    return badInput;
}

} // namespace

int runCommand(int argc, const char *const *argv, const Streams &streams,
               const std::function<int(const WindowStart &)> &openWindow) {
    Wanted wanted;
    CLI::App cli(about, "feltmark");
    cli.set_version_flag("--version", "feltmark " FELTMARK_VERSION);
    cli.add_option("--store", wanted.store, "Folder of your records")
        ->type_name("DIR")
        ->default_str(terminal::defaultStore().string());
    cli.add_flag("--demo", wanted.window.demo, "Open three invented clients instead of your records");
    cli.add_flag("--time-start", wanted.window.timed,
                 "Open the window, write \"ready\" when its first field has the focus, and end");
    cli.require_subcommand(0, 1);
    cli.footer(examples);
    const CLI::App *papers = addPapers(cli, wanted);
    const CLI::App *braille = addBraille(cli, wanted);
    const CLI::App *sheet = addReadingSheet(cli, wanted);
    try {
        cli.parse(argc, argv);
    } catch (const CLI::ParseError &error) {
        return explain(cli, error, streams);
    }
    wanted.window.store =
        wanted.store.empty() ? terminal::defaultStore() : std::filesystem::path(wanted.store);
    if (papers->parsed())
        return runPapers(wanted, streams);
    if (braille->parsed())
        return runBraille(wanted, streams);
    if (sheet->parsed())
        return runReadingSheet(wanted, streams);
    return openWindow(wanted.window);
}

} // namespace app
