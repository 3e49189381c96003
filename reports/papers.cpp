#include "reports/papers.h"
#include "reports/labels.h"
#include <algorithm>
#include <cctype>

namespace reports {

using namespace model;
namespace fs = std::filesystem;

namespace {

/// What one paper is called in its file's name, what it says, and the size of its print.
struct Draft {
    std::string name;
    Document document;
    Points size;
};

struct Medium {
    std::string ending;
    std::function<Result<std::string>(const Draft &)> write;
};

/// An inch, as guidelines for large print of 18 point have it. Very large letters need the room: with an inch
/// a line of 48 points holds some fifteen of them, and a handout takes a fifth more pages. From which size on
/// is a default of this program.
double marginFor(Points size) {
    constexpr double inch = 25.4, narrow = 15, veryLarge = 36;
    return size.value < veryLarge ? inch : narrow;
}

std::vector<Medium> mediaOf(const PaperMedia &media) {
    std::vector<Medium> wanted;
    if (media.largePrint)
        wanted.push_back({"pdf", [](const Draft &draft) {
                              PrintLayout layout;
                              layout.bodyPoints = draft.size.value;
                              layout.marginMm = marginFor(draft.size);
                              return writePdf(draft.document, layout);
                          }});
    if (media.braille != BrailleGrade::None)
        wanted.push_back({"brf", [grade = media.braille](const Draft &draft) {
                              BrailleLayout layout;
                              layout.grade = grade == BrailleGrade::Uncontracted ? 1 : 2;
                              return writeBrf(draft.document, layout);
                          }});
    if (media.web)
        wanted.push_back({"html", [](const Draft &draft) { return writeHtml(draft.document); }});
    if (media.plainText)
        wanted.push_back({"txt", [](const Draft &draft) { return writeText(draft.document); }});
    return wanted;
}

using Writer = Result<Document> (*)(const Case &, const Findings &, Date, const std::string &);

struct Kind {
    std::string name;
    Writer write;
    bool inTheClientsSize;
};

/// Labels there are to make, of things or of places.
bool hasLabelsToMake(const Case &record, const Findings &findings) {
    const auto things = thingLabels(record, findings);
    const auto sections = sectionLabels(record, findings);
    return (things && !things->empty()) || (sections && !sections->empty());
}

std::vector<Kind> kindsFor(const Case &record, const Findings &findings) {
    if (record.safety.answer(SafetyQuestion::UrgentEyeSigns) == Answer::Yes)
        return {{"eye-referral", eyeReferral, true}};
    std::vector<Kind> kinds{
        {"handout", handout, true}, {"household", householdSheet, false}, {"work-sheet", workSheet, false}};
    if (!record.units.empty())
        kinds.push_back({"drawings", drawings, false});
    kinds.push_back({"kit", kitSheet, false});
    if (hasLabelsToMake(record, findings))
        kinds.push_back({"labels", labelSheet, false});
    if (!record.goals.empty())
        kinds.push_back({"progress", progressReport, true});
    return kinds;
}

Result<std::vector<Draft>> draftsOf(const Case &record, const Findings &findings, Date on,
                                    const std::string &madeBy) {
    std::vector<Draft> drafts;
    const Points clients = record.client.media.printSize.value_or(findings.paperSize);
    for (const Kind &kind : kindsFor(record, findings)) {
        auto document = kind.write(record, findings, on, madeBy);
        if (!document)
            return tl::unexpected(document.error());
        drafts.push_back({kind.name, std::move(*document), kind.inTheClientsSize ? clients : Points{18}});
    }
    return drafts;
}

/// Braille labels come as a file for the embosser, whatever the papers are in.
Result<void> addBrailleLabels(const Case &record, const Findings &findings, const std::string &start,
                              std::vector<Paper> &written) {
    if (record.safety.answer(SafetyQuestion::UrgentEyeSigns) == Answer::Yes)
        return {};
    auto labels = thingLabels(record, findings);
    const auto sections = sectionLabels(record, findings);
    if (!labels || !sections)
        return tl::unexpected(labels ? sections.error() : labels.error());
    labels->insert(labels->end(), sections->begin(), sections->end());
    if (std::string file = brailleLabelFile(*labels); !file.empty())
        written.push_back({start + "braille-labels.brf", "Braille labels", std::move(file)});
    return {};
}

/// The code as part of a file's name: letters and digits, anything else a hyphen.
std::string safeInFileNames(std::string code) {
    std::replace_if(
        code.begin(), code.end(), [](unsigned char c) { return !std::isalnum(c) || c >= 0x80; }, '-');
    return code;
}

std::string startOfNames(const Case &record, Date on) {
    return safeInFileNames(record.client.code) + "-" + isoDate(on) + "-";
}

Result<void> checkCode(const Case &record) {
    if (!record.client.code.empty())
        return {};
    return fail(ErrorCode::Missing, "This client has no code. Give one: the names of the files use it.");
}

} // namespace

Result<Paper> kitSheetToPrint(const Case &record, const Findings &findings, Date on,
                              const std::string &madeBy) {
    if (const auto checked = checkCode(record); !checked)
        return tl::unexpected(checked.error());
    const auto sheet = kitSheet(record, findings, on, madeBy);
    if (!sheet)
        return tl::unexpected(sheet.error());
    return writePdf(*sheet, PrintLayout{}).map([&](std::string bytes) {
        return Paper{startOfNames(record, on) + "kit.pdf", sheet->title, std::move(bytes)};
    });
}

Result<std::vector<Paper>> papers(const Case &record, const Findings &findings, Date on,
                                  const std::function<bool(double, const std::string &)> &progress,
                                  const std::string &madeBy) {
    if (const auto checked = checkCode(record); !checked)
        return tl::unexpected(checked.error());
    const auto media = mediaOf(record.client.media);
    if (media.empty())
        return fail(ErrorCode::Missing,
                    "No kind of paper is chosen for this client. Choose print, braille, web or text.");
    const auto drafts = draftsOf(record, findings, on, madeBy);
    if (!drafts)
        return tl::unexpected(drafts.error());
    const std::string start = startOfNames(record, on);
    const double total = static_cast<double>(drafts->size() * media.size());
    const auto report = [&](std::size_t done, const std::string &title) {
        return !progress || progress(static_cast<double>(done) / total, title);
    };
    std::vector<Paper> written;
    for (const Draft &draft : *drafts)
        for (const Medium &medium : media) {
            if (!report(written.size(), draft.document.title))
                return fail(ErrorCode::Refused, "Stopped.");
            auto bytes = medium.write(draft);
            if (!bytes)
                return tl::unexpected(bytes.error());
            written.push_back(
                {start + draft.name + "." + medium.ending, draft.document.title, std::move(*bytes)});
        }
    if (const auto added = addBrailleLabels(record, findings, start, written); !added)
        return tl::unexpected(added.error());
    if (!report(drafts->size() * media.size(), written.back().title))
        return fail(ErrorCode::Refused, "Stopped.");
    return written;
}

Result<void> writePapers(const std::vector<Paper> &papers, const fs::path &folder) {
    std::error_code error;
    if (!fs::exists(folder, error)) {
        fs::create_directories(folder, error);
        if (!error)
            fs::permissions(folder, fs::perms::owner_all, error);
    }
    if (error || !fs::is_directory(folder, error))
        return fail(ErrorCode::ReadOnly, "The folder " + folder.string() +
                                             " cannot be made. Choose a folder that you may write to.");
    for (const Paper &paper : papers)
        if (const auto done = writeFile(folder / paper.fileName, paper.bytes); !done)
            return done;
    return {};
}

} // namespace reports
