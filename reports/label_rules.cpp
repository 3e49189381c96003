#include "reports/label_rules.h"
#include "model/legible.h"
#include "model/sentence.h"
#include "model/short_name.h"
#include "model/typed.h"
#include "reports/braille_cells.h"
#include "reports/braille_label.h"
#include "reports/square_code.h"
#include "reports/utf8.h"
#include "reports/writers.h"
#include <algorithm>
#include <array>
#include <cmath>

namespace reports {

using namespace model;

namespace {

constexpr double sideMargin = 3, topMargin = 1; // mm, clear of edges [common practice]

/// Cells over lines, broken at blanks only; none if they do not fit.
std::optional<std::vector<Cells>> overLines(const Cells &cells, std::size_t across, std::size_t most) {
    std::vector<Cells> lines;
    for (std::size_t from = 0; from <= cells.size();) {
        const std::size_t to = std::min(cells.find(blankCell, from), cells.size());
        const Cells word = cells.substr(from, to - from);
        if (word.size() > across)
            return std::nullopt;
        if (lines.empty() || lines.back().size() + 1 + word.size() > across)
            lines.push_back(word);
        else
            lines.back() += blankCell + word;
        from = to + 1;
    }
    return lines.size() <= most ? std::optional(lines) : std::nullopt;
}

std::string room(int across, int lines) {
    const std::string cells = std::to_string(across);
    return lines == 1 ? Sentence::tr("{1} cells in one line", {cells})
                      : Sentence::tr("{1} cells in {2} lines", {cells, std::to_string(lines)});
}

std::vector<std::string> tried(const std::string &words, const MayShorten &may) {
    std::vector<std::string> all{words};
    for (const std::string &shorter : shorterNames(words))
        if (may(shorter))
            all.push_back(shorter);
    return all;
}

void shortened(Label &label, const std::string &words) {
    if (words != label.words)
        label.told.push_back(Sentence::tr(
            "Shortened from \"{1}\": whole words are left out from the front, the last one says what it is.",
            {label.words}));
    label.words = words;
}

Cells cellsOf(const std::string &words, int grade, std::optional<Error> &error) {
    const auto cells = brailleOf(words, grade);
    if (!cells)
        error = cells.error();
    return cells.value_or(Cells());
}

} // namespace

Result<Label> brailleFitted(Label label, const BrailleFace &face, int grade, const MayShorten &may) {
    const BrailleGeometry geometry;
    const int across = cellsAcross(face.width.value, sideMargin, geometry);
    const int lines = face.oneLine ? 1 : std::max(1, linesDown(face.height.value, topMargin, geometry));
    std::optional<Error> error;
    std::size_t whole = 0;
    for (const std::string &words : tried(label.words, may)) {
        const Cells cells = cellsOf(words, grade, error);
        if (error)
            return tl::unexpected(*error);
        whole = whole == 0 ? cells.size() : whole;
        const auto fitted =
            overLines(cells, static_cast<std::size_t>(across), static_cast<std::size_t>(lines));
        if (!fitted)
            continue;
        shortened(label, words);
        for (const Cells &line : *fitted)
            label.cells.push_back(toUtf8(line));
        return label;
    }
    label.fits = false;
    label.cells = {toUtf8(cellsOf(label.words, grade, error))};
    label.told.push_back(Sentence::tr(
        "Does not fit: {1} cells, {2} mm in one line; there is room for {3}. Put it on the edge of the "
        "shelf, or choose other words.",
        {std::to_string(whole),
         typed::words(std::ceil(widthOfCells(static_cast<int>(whole), geometry) + 2 * sideMargin), 0),
         room(across, lines)}));
    return label;
}

Label printFitted(Label label, const PrintFace &face, const MayShorten &may) {
    if (face.willNotDo || face.sizes.empty()) {
        label.fits = false;
        label.told.emplace_back(face.willNotDo
                                    ? Sentence::tr("Print will not do here: mark by touch, sound or braille.")
                                    : Sentence::tr("The size is not known: no acuity was entered."));
        return label;
    }
    for (const std::string &words : tried(label.words, may))
        for (const PrintFace::Size &size : face.sizes) {
            if (largestFitting(words, face.width, face.height) < size.points)
                continue;
            shortened(label, words);
            label.size = size.points;
            if (!size.only.empty())
                label.told.push_back(size.only);
            return label;
        }
    label.fits = false;
    label.size = face.sizes.back().points;
    const Points fits = largestFitting(label.words, face.width, face.height);
    label.told.push_back(
        Sentence::tr("Does not fit: {1} point is needed, {2} point fits. Put it on a larger card or the edge "
                     "of the shelf, or choose other words.",
                     {typed::words(label.size->value, 0), typed::words(std::floor(fits.value), 0)}));
    if (!face.sizes.back().only.empty())
        label.told.push_back(face.sizes.back().only);
    return label;
}

Label tagFitted(Label label) {
    struct Tag {
        int bytes;
        std::size_t text;
    };
    static constexpr std::array tags{Tag{144, 131}, Tag{504, 478}, Tag{888, 854}};
    const auto tag = std::ranges::find_if(tags, [&](const Tag &t) { return label.words.size() <= t.text; });
    label.fits = tag != tags.end();
    label.told.push_back(
        label.fits ? Sentence::tr("Takes a tag of {1} bytes.", {std::to_string(tag->bytes)})
                   : Sentence::tr("Too long for a tag: {1} bytes, 854 fit. Shorten how to prepare it.",
                                  {std::to_string(label.words.size())}));
    return label;
}

Label codeFitted(Label label) {
    const auto code = squareCode(label.name, label.words);
    label.fits = code.has_value();
    if (!code) {
        label.told.push_back(Sentence::tr("Too long for a code on a pack: {1} bytes, 151 fit, a few less "
                                          "with accents. Shorten how to prepare it.",
                                          {std::to_string(label.words.size())}));
        return label;
    }
    const int side = static_cast<int>(code->width);
    label.told.push_back(
        Sentence::tr("Version {1} at level Q: {2} mm square with its white edge, modules of 1 mm.",
                     {std::to_string((side - 8 - 17) / 4), std::to_string(side)}));
    return label;
}

} // namespace reports
