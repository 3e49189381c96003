#include "reports/pdf_compose.h"
#include <algorithm>
#include <cmath>

namespace reports {

namespace {

// Headings of 22 and 20 points over a body of 18, in proportion for other sizes: ACB Best Practices and
// Guidelines for Large Print Documents, 2022.
double headingSize(int level, double body) {
    return body * (level == 1 ? 22.0 : level == 2 ? 20.0 : 18.0) / 18.0;
}

bool isRightToLeft(const std::string &language) {
    const std::string primary = language.substr(0, language.find('-'));
    return primary == "ar" || primary == "he" || primary == "fa" || primary == "ur";
}

// Space above, in body lines.
constexpr double paragraphSpace = 0.7;
constexpr double headingSpace = 1.1;
constexpr double itemSpace = 0.35;

} // namespace

std::vector<OwnedRun> Composer::owned(const Text &text, TagTree::Id owner) {
    std::vector<OwnedRun> runs;
    for (const Run &run : text) {
        TagTree::Id element = owner;
        if (!run.link.empty() || !run.language.empty()) {
            element = m_tree.add(owner, run.link.empty() ? "Span" : "Link");
            m_tree.elements[element].language = run.language;
            if (isRightToLeft(run.language))
                m_tree.elements[element].actual = run.text;
        }
        runs.push_back({run, element});
    }
    return runs;
}

void Composer::setRows(Piece &piece, const Text &text, TagTree::Id owner, const Style &style, double space) {
    const auto set = m_type.set(owned(text, owner), style.size, m_sheet.width - style.indent, style.weight);
    const double usual = m_type.lineHeight(style.size);
    bool first = true;
    for (PangoLayoutLine *line : set->lines()) {
        PangoRectangle logical;
        pango_layout_line_get_extents(line, nullptr, &logical);
        Row row;
        row.height = std::max(usual, double(logical.height) / PANGO_SCALE);
        row.ascent = double(-logical.y) / PANGO_SCALE;
        row.space = first ? space * m_sheet.line : 0;
        row.placed.push_back({set, line, style.indent});
        piece.rows.push_back(std::move(row));
        first = false;
    }
}

void Composer::addLabel(Piece &piece, const std::string &label, TagTree::Id owner) {
    const auto set = m_type.set({{Run{label, "", true, ""}, owner}}, m_sheet.bodySize, m_sheet.width,
                                Typesetter::Weight::Bold);
    auto &placed = piece.rows.front().placed;
    placed.insert(placed.begin(), {set, set->lines().front(), 0});
}

void Composer::operator()(const Heading &block) {
    const std::string words = joined(block.text);
    const auto bold = Typesetter::Weight::Bold;
    double size = headingSize(block.level, m_sheet.bodySize);
    if (!m_type.wordsFit(words, size, m_sheet.width, bold))
        size = m_sheet.bodySize;
    Piece piece{.together = true, .withNext = true};
    piece.bookmark = TagTree::Bookmark{block.level, words, 0, 0};
    setRows(piece, block.text, m_tree.add(0, "H" + std::to_string(block.level)), {size, 0, bold},
            headingSpace);
    pieces.push_back(std::move(piece));
}

void Composer::operator()(const Paragraph &block) {
    Piece piece{.together = block.points.has_value()};
    setRows(piece, block.text, m_tree.add(0, "P"), {block.points.value_or(m_sheet.bodySize), 0},
            paragraphSpace);
    pieces.push_back(std::move(piece));
}

void Composer::operator()(const CautionBlock &block) {
    Piece piece{.together = true, .ruledLeft = true};
    setRows(piece, cautionWords(block), m_tree.add(0, "P"), {m_sheet.bodySize, m_sheet.bodySize},
            paragraphSpace);
    pieces.push_back(std::move(piece));
}

void Composer::operator()(const Steps &block) {
    const auto list = m_tree.add(0, "L");
    m_tree.elements[list].numbering = block.numbered ? "Decimal" : "Disc";
    const auto label = [&](std::size_t i) {
        return block.numbered ? std::to_string(i + 1) + "." : std::string("•");
    };
    const double widest =
        m_type.widthOf(label(block.items.size() - 1), m_sheet.bodySize, Typesetter::Weight::Bold);
    const double indent = widest + m_sheet.bodySize * 0.6;
    for (std::size_t i = 0; i < block.items.size(); ++i) {
        const auto item = m_tree.add(list, "LI");
        const auto labelled = m_tree.add(item, "Lbl");
        Piece piece{.ifShort = true};
        setRows(piece, block.items[i], m_tree.add(item, "LBody"), {m_sheet.bodySize, indent},
                i == 0 ? paragraphSpace : itemSpace);
        addLabel(piece, label(i), labelled);
        pieces.push_back(std::move(piece));
    }
}

void Composer::operator()(const Table &block) {
    const Style bold{m_sheet.bodySize, 0, Typesetter::Weight::Bold};
    if (!block.caption.empty()) {
        Piece caption{.together = true, .withNext = !block.rows.empty()};
        setRows(caption, plain(block.caption), m_tree.add(0, "P"), bold, paragraphSpace);
        pieces.push_back(std::move(caption));
    }
    if (block.rows.empty())
        return;
    const auto list = m_tree.add(0, "L");
    m_tree.elements[list].numbering = "None";
    for (const std::vector<Text> &cells : block.rows) {
        const auto record = m_tree.add(m_tree.add(list, "LI"), "LBody");
        Piece piece{.ifShort = true};
        for (std::size_t i = 0; i < cells.size(); ++i) {
            if (cells[i].empty())
                continue;
            Text words = cells[i];
            if (i > 0 && !block.columns[i].empty())
                words.insert(words.begin(), Run{block.columns[i] + ": ", "", false, ""});
            const Style field{m_sheet.bodySize, m_sheet.bodySize};
            setRows(piece, words, m_tree.add(record, "P"), i == 0 ? bold : field,
                    piece.rows.empty() ? paragraphSpace : 0);
        }
        pieces.push_back(std::move(piece));
    }
}

void Composer::operator()(const Figure &block) {
    if (!block.boxes.empty() && block.width > 0 && block.height > 0) {
        constexpr double most = 0.7; // of the page, so that the words stand beside it
        constexpr double pointsPerMillimetre = 72 / 25.4;
        const double fitted = std::min(m_sheet.width / block.width, m_sheet.height * most / block.height);
        const double scale = block.trueToScale ? pointsPerMillimetre : fitted;
        Piece piece{.together = true, .withNext = true};
        piece.drawing = Drawing{block, scale, m_tree.add(0, "Figure")};
        m_tree.elements[piece.drawing->element].alternative = drawingName(block);
        piece.rows.push_back({.height = block.height * scale, .space = paragraphSpace * m_sheet.line});
        pieces.push_back(std::move(piece));
    }
    if (const Text words = pictureWords(block); !words.empty())
        (*this)(Paragraph{words});
}

} // namespace reports
