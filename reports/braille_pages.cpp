#include "reports/braille_pages.h"
#include "reports/prepare.h"
#include <algorithm>

namespace reports {

using model::ErrorCode;
using model::fail;

namespace {

constexpr char32_t hyphen = U'\u2824';

/// Lines that are placed together: a heading, a paragraph, an item.
struct Piece {
    enum class Kind { Centred, Heading, Paragraph, Apart, Item };
    Kind kind{};
    std::vector<Cells> lines;
    bool firstItem = false;
    bool lastItem = false;

    [[nodiscard]] bool isHeading() const { return kind == Kind::Centred || kind == Kind::Heading; }
    [[nodiscard]] bool wantsSpaceBefore() const {
        return isHeading() || kind == Kind::Apart || (kind == Kind::Item && firstItem);
    }
    [[nodiscard]] bool wantsSpaceAfter() const {
        return kind == Kind::Centred || kind == Kind::Apart || (kind == Kind::Item && lastItem);
    }
};

std::size_t gap(const Piece &before, const Piece &after) {
    if (after.isHeading() || before.kind == Piece::Kind::Centred)
        return 1;
    if (before.isHeading())
        return 0;
    return before.wantsSpaceAfter() || after.wantsSpaceBefore() ? 1 : 0;
}

/// Where a word that is longer than a line is cut: after a hyphen, else at the end of the line.
std::size_t cut(const Cells &word, std::size_t room) {
    const auto place = word.rfind(hyphen, room - 1);
    return place == Cells::npos || place == 0 ? room : place + 1;
}

class Composer {
public:
    explicit Composer(const BrailleLayout &layout) : m_layout(layout), m_cells(std::size_t(layout.cells)) {}

    std::vector<Piece> pieces;

    Result<void> operator()(const Heading &block) {
        if (block.level > 1) {
            const std::size_t indent = block.level == 2 ? 4 : 6;
            return add(Piece::Kind::Heading, joined(block.text), indent, indent);
        }
        constexpr std::size_t clear = 3; // blank cells at either side
        auto cells = brailleOf(joined(block.text), m_layout.grade);
        if (!cells)
            return tl::unexpected(cells.error());
        Piece piece{Piece::Kind::Centred, brailleLines(*cells, 0, 0, m_cells - 2 * clear)};
        for (Cells &line : piece.lines)
            line.insert(0, (m_cells - line.size()) / 2, blankCell);
        pieces.push_back(std::move(piece));
        return {};
    }
    Result<void> operator()(const Paragraph &block) {
        return add(Piece::Kind::Paragraph, joined(block.text), 2, 0);
    }
    Result<void> operator()(const CautionBlock &block) {
        return add(Piece::Kind::Apart, joined(cautionWords(block)), 2, 0);
    }
    Result<void> operator()(const Figure &block) {
        return add(Piece::Kind::Apart, joined(pictureWords(block)), 2, 0);
    }
    Result<void> operator()(const Steps &block) {
        for (std::size_t i = 0; i < block.items.size(); ++i) {
            const std::string number = block.numbered ? std::to_string(i + 1) + ". " : "";
            if (auto added = add(Piece::Kind::Item, number + joined(block.items[i]), 0, 2); !added)
                return added;
            markItem(i, block.items.size());
        }
        return {};
    }
    Result<void> operator()(const Table &block) {
        if (!block.caption.empty())
            if (auto added = add(Piece::Kind::Heading, block.caption, 6, 6); !added)
                return added;
        for (std::size_t i = 0; i < block.rows.size(); ++i) {
            auto cells = record(block, block.rows[i]);
            if (!cells)
                return tl::unexpected(cells.error());
            pieces.push_back({Piece::Kind::Item, brailleLines(*cells, 0, 2, m_cells)});
            markItem(i, block.rows.size());
        }
        return {};
    }

private:
    Result<void> add(Piece::Kind kind, const std::string &words, std::size_t first, std::size_t runover) {
        return brailleOf(words, m_layout.grade).map([&](const Cells &cells) {
            if (!cells.empty())
                pieces.push_back({kind, brailleLines(cells, first, runover, m_cells)});
        });
    }

    void markItem(std::size_t index, std::size_t count) {
        pieces.back().firstItem = index == 0;
        pieces.back().lastItem = index + 1 == count;
    }

    /// "Name: column value; column value", each field translated on its own so that numbers stay apart.
    Result<Cells> record(const Table &table, const std::vector<Text> &row) const {
        std::vector<std::string> fields;
        for (std::size_t i = 0; i < row.size(); ++i) {
            if (row[i].empty())
                continue;
            const std::string column = i == 0 || table.columns[i].empty() ? "" : table.columns[i] + " ";
            fields.push_back(column + joined(row[i]));
        }
        const bool hasName = !row.empty() && !row.front().empty();
        Cells line;
        for (std::size_t i = 0; i < fields.size(); ++i) {
            const bool last = i + 1 == fields.size();
            auto cells = brailleOf(fields[i] + (last ? "" : i == 0 && hasName ? ":" : ";"), m_layout.grade);
            if (!cells)
                return cells;
            line += (line.empty() ? U"" : U"\u2800") + *cells;
        }
        return line;
    }

    BrailleLayout m_layout;
    std::size_t m_cells;
};

class Paginator {
public:
    Paginator(const std::vector<Piece> &pieces, std::size_t room) : m_pieces(pieces), m_room(room) {}

    std::vector<BraillePage> pages() {
        m_pages.emplace_back();
        for (std::size_t i = 0; i < m_pieces.size(); ++i) {
            const std::size_t space = i == 0 || page().empty() ? 0 : gap(m_pieces[i - 1], m_pieces[i]);
            if (!page().empty() && page().size() + space + needed(i) > m_room)
                m_pages.emplace_back();
            else
                page().insert(page().end(), space, {});
            place(m_pieces[i].lines);
        }
        return std::move(m_pages);
    }

private:
    BraillePage &page() { return m_pages.back(); }

    void place(const std::vector<Cells> &lines) {
        for (const Cells &line : lines) {
            if (page().size() == m_room)
                m_pages.emplace_back();
            page().push_back(line);
        }
    }

    /// Lines that must stand on one page with the first line of piece `index`, as far as a page holds them.
    [[nodiscard]] std::size_t needed(std::size_t index) const {
        const Piece &piece = m_pieces[index];
        std::size_t lines = piece.lines.size();
        if (piece.isHeading() && index + 1 < m_pieces.size())
            lines += gap(piece, m_pieces[index + 1]) + needed(index + 1);
        else if (piece.kind == Piece::Kind::Paragraph || lines > m_room)
            lines = std::min<std::size_t>(lines, 2);
        return std::min(lines, m_room);
    }

    const std::vector<Piece> &m_pieces;
    std::size_t m_room;
    std::vector<BraillePage> m_pages;
};

Result<void> possible(const BrailleLayout &layout) {
    if (layout.cells < 12 || layout.cells > 100)
        return fail(ErrorCode::OutOfRange, "A braille line of " + std::to_string(layout.cells) +
                                               " cells cannot be set. Choose 12 to 100 cells; 40 is usual.");
    if (layout.lines < 5 || layout.lines > 100)
        return fail(ErrorCode::OutOfRange, "A braille page of " + std::to_string(layout.lines) +
                                               " lines cannot be set. Choose 5 to 100 lines; 25 is usual.");
    return {};
}

} // namespace

std::vector<Cells> brailleLines(const Cells &words, std::size_t first, std::size_t runover,
                                std::size_t width) {
    std::vector<Cells> lines;
    Cells line(first, blankCell);
    bool empty = true;
    const auto close = [&] {
        lines.push_back(line);
        line.assign(runover, blankCell);
        empty = true;
    };
    for (std::size_t begin = 0; begin < words.size();) {
        const std::size_t end = std::min(words.find(blankCell, begin), words.size());
        Cells word = words.substr(begin, end - begin);
        begin = end + 1;
        if (word.empty())
            continue;
        if (!empty && line.size() + 1 + word.size() > width)
            close();
        while (line.size() + (empty ? 0 : 1) + word.size() > width) {
            const std::size_t length = cut(word, width - line.size());
            line += word.substr(0, length);
            word.erase(0, length);
            close();
        }
        line += (empty ? Cells() : Cells(1, blankCell)) + word;
        empty = false;
    }
    if (!empty)
        lines.push_back(line);
    return lines;
}

Result<std::vector<BraillePage>> braillePages(const Document &document, const BrailleLayout &layout) {
    if (auto good = possible(layout); !good)
        return tl::unexpected(good.error());
    auto words = writeText(document);
    if (!words)
        return tl::unexpected(words.error());
    if (auto writable = allWritable(*words, layout.grade); !writable)
        return tl::unexpected(writable.error());
    const auto ready = prepared(document, Links::Spelled);
    Composer composer(layout);
    for (const Block &block : ready->blocks)
        if (auto added = std::visit(composer, block); !added)
            return tl::unexpected(added.error());
    const std::size_t room = std::size_t(layout.lines) - 1;
    std::vector<BraillePage> pages = Paginator(composer.pieces, room).pages();
    for (std::size_t i = 0; i < pages.size(); ++i) {
        const auto number = brailleOf(std::to_string(i + 1), layout.grade);
        if (!number)
            return tl::unexpected(number.error());
        pages[i].resize(room);
        pages[i].push_back(Cells(std::size_t(layout.cells) - number->size(), blankCell) + *number);
    }
    return pages;
}

} // namespace reports
