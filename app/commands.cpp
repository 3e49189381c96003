#include "app/commands.h"
#include "app/terminal.h"
#include "model/demo.h"
#include "model/planning.h"
#include "model/store.h"
#include "reports/papers.h"
#include "reports/reading_sheet.h"
#include <algorithm>
#include <cctype>
#include <istream>
#include <iterator>
#include <ostream>

namespace app {

using namespace model;

namespace {

Result<void> writeAll(const Case &record, const PapersCommand &command, const Streams &streams) {
    const auto made = reports::papers(record, findingsOf(record, command.on), command.on, {}, command.author);
    if (!made)
        return tl::unexpected(made.error());
    if (auto written = reports::writePapers(*made, command.out); !written)
        return written;
    for (const reports::Paper &paper : *made)
        streams.out << (command.out / paper.fileName).string() << '\n';
    return {};
}

/// The demo's papers come in every medium.
Result<void> demoPapers(Case record, const PapersCommand &command, const Streams &streams) {
    PaperMedia &media = record.client.media;
    media.largePrint = media.web = media.plainText = true;
    if (media.braille == BrailleGrade::None)
        media.braille = BrailleGrade::Contracted;
    if (auto folder = reports::writePapers({}, command.out); !folder)
        return folder;
    if (!record.plan) {
        auto plan = makePlan(record, findingsOf(record, command.on), SolveOptions{}, command.on);
        if (!plan)
            return tl::unexpected(plan.error());
        record.plan = std::move(*plan);
    }
    return writeAll(record, command, streams);
}

Result<void> papersOfDemo(const PapersCommand &command, const Streams &streams) {
    if (command.demo == "all") {
        for (const Case &record : demo::all())
            if (auto done = demoPapers(record, command, streams); !done)
                return done;
        return {};
    }
    const auto record = demo::byName(command.demo);
    if (!record)
        return fail(ErrorCode::NotUnderstood, "There is no invented client called \"" + command.demo +
                                                  "\": choose nora, idris, tilda, or all of them with all.");
    return demoPapers(*record, command, streams);
}

Result<Store> unlocked(const PapersCommand &command) {
    if (!Store::existsIn(command.store))
        return fail(ErrorCode::Missing, "There are no records in " + command.store.string() +
                                            ": name their folder with --store.");
    auto secret = command.passphraseFile.empty() ? terminal::askSecret("Passphrase: ")
                                                 : terminal::readSecret(command.passphraseFile);
    if (!secret)
        return tl::unexpected(secret.error());
    // The window brings the key up to a newer cost; the command line leaves the key file as it is.
    auto store = Store::open(command.store, *secret, command.author, KeyCost::cheapest());
    terminal::wipe(*secret);
    return store;
}

std::string lowered(std::string text) {
    std::transform(text.begin(), text.end(), text.begin(), [](unsigned char c) { return std::tolower(c); });
    return text;
}

Result<Id> clientWithCode(const Store &store, const std::string &code) {
    const auto caseload = store.caseload();
    if (!caseload)
        return tl::unexpected(caseload.error());
    const auto found = std::find_if(caseload->begin(), caseload->end(), [&](const ClientSummary &client) {
        return lowered(client.code) == lowered(code);
    });
    if (found == caseload->end())
        return fail(ErrorCode::NotUnderstood, "No client in these records has the code \"" + code + "\".");
    return found->id;
}

Result<void> papersOfClient(const PapersCommand &command, const Streams &streams) {
    auto store = unlocked(command);
    if (!store)
        return tl::unexpected(store.error());
    const auto id = clientWithCode(*store, command.client);
    if (!id)
        return tl::unexpected(id.error());
    const auto record = store->load(*id);
    if (!record)
        return tl::unexpected(record.error());
    if (auto written = writeAll(*record, command, streams); !written)
        return written;
    return store->note({command.author, {}, "paper.exported"}, *id, isoDate(command.on));
}

} // namespace

Result<void> makePapers(const PapersCommand &command, const Streams &streams) {
    return command.demo.empty() ? papersOfClient(command, streams) : papersOfDemo(command, streams);
}

Result<void> makeReadingSheet(const ReadingSheetCommand &command, const Streams &streams) {
    using enum ReadingVersion;
    for (const ReadingVersion version : {A, B, C}) {
        if (lowered(command.version) != lowered(nameOf(version)))
            continue;
        const Centimetres distance{command.distance};
        auto pdf = reports::readingSheetPdf(version, distance, command.on, command.author);
        if (!pdf)
            return tl::unexpected(pdf.error());
        const reports::Paper sheet{reports::readingSheetName(version, distance), {}, std::move(*pdf)};
        if (auto written = reports::writePapers({sheet}, command.out); !written)
            return written;
        streams.out << (command.out / sheet.fileName).string() << '\n';
        return {};
    }
    return fail(ErrorCode::NotUnderstood,
                "There is no reading sheet \"" + command.version + "\": choose A, B or C.");
}

Result<void> makeBraille(const BrailleCommand &command, const Streams &streams) {
    if (command.language != "en" && !command.language.starts_with("en-"))
        return fail(ErrorCode::OutOfRange,
                    "The language \"" + command.language +
                        "\" has no braille table in this program: it writes Unified English "
                        "Braille only, en-GB or another en.");
    const std::string text{std::istreambuf_iterator<char>(streams.in), {}};
    if (text.find_first_not_of(" \t\r\n") == std::string::npos)
        return fail(ErrorCode::Missing,
                    "There is no text on standard input: feltmark braille < text.txt > text.brf");
    const auto document = reports::documentFromText(text, command.language);
    const auto braille = command.form == BrailleForm::Brf ? reports::writeBrf(document, command.layout)
                         : command.form == BrailleForm::Unicode
                             ? reports::writeUnicodeBraille(document, command.layout)
                             : reports::writePef(document, command.layout);
    if (!braille)
        return tl::unexpected(braille.error());
    streams.out << *braille << std::flush;
    if (!streams.out)
        return fail(ErrorCode::Full,
                    "The braille could not be written in full: the disk is full or the reader has gone.");
    return {};
}

} // namespace app
