#include "reports/pdf_paint.h"
#include <algorithm>
#include <cairo-pdf.h>

namespace reports {

using model::ErrorCode;
using model::fail;

namespace {

constexpr double thick = 3.0, thin = 1.0; // points

/// A row and where it stands.
struct Seat {
    std::size_t piece = 0;
    std::size_t row = 0;
    double top = 0;
};
using Page = std::vector<Seat>;

class Paginator {
public:
    Paginator(const std::vector<Piece> &pieces, double room) : m_pieces(pieces), m_room(room) {}

    std::vector<Page> pages() {
        newPage();
        for (std::size_t i = 0; i < m_pieces.size(); ++i) {
            const double space = m_pages.back().empty() ? 0 : m_pieces[i].rows.front().space;
            if (m_used + space + needed(i) > m_room && !m_pages.back().empty())
                newPage();
            place(i);
        }
        return std::move(m_pages);
    }

private:
    void newPage() {
        m_pages.emplace_back();
        m_used = 0;
    }

    void place(std::size_t index) {
        const std::vector<Row> &rows = m_pieces[index].rows;
        for (std::size_t i = 0; i < rows.size(); ++i) {
            const bool orphan =
                i + 2 == rows.size() && i >= 2 && fits(rows[i]) && !fits(rows[i], rows[i + 1]);
            if (!m_pages.back().empty() && (orphan || !fits(rows[i])))
                newPage();
            m_used += m_pages.back().empty() ? 0 : rows[i].space;
            m_pages.back().push_back({index, i, m_used});
            m_used += rows[i].height;
        }
    }

    [[nodiscard]] bool fits(const Row &row) const { return m_used + row.space + row.height <= m_room; }
    [[nodiscard]] bool fits(const Row &row, const Row &next) const {
        return m_used + row.space + row.height + next.space + next.height <= m_room;
    }

    /// Height that must be left on the page for piece `index` to begin there, without the space above it.
    [[nodiscard]] double needed(std::size_t index) const {
        const Piece &piece = m_pieces[index];
        const double all = height(piece, piece.rows.size());
        if (piece.withNext && index + 1 < m_pieces.size()) {
            const double both = all + m_pieces[index + 1].rows.front().space + needed(index + 1);
            return both <= m_room ? both : all;
        }
        const double most = piece.together ? m_room : piece.ifShort ? m_room / 3 : 0;
        return all <= most ? all : height(piece, 2);
    }

    static double height(const Piece &piece, std::size_t count) {
        double sum = -piece.rows.front().space;
        for (std::size_t i = 0; i < std::min(count, piece.rows.size()); ++i)
            sum += piece.rows[i].space + piece.rows[i].height;
        return sum;
    }

    const std::vector<Piece> &m_pieces;
    double m_room;
    std::vector<Page> m_pages;
    double m_used = 0;
};

/// One page after another. Everything painted is inside a mark.
class Painter {
public:
    Painter(cairo_t *cairo, const Sheet &sheet, TagTree &tree)
        : m_cairo(cairo), m_sheet(sheet), m_tree(tree) {}

    void beginPage() {
        m_tree.marks.emplace_back();
        m_page = m_tree.marks.size() - 1;
    }

    void drawLine(const Row::Placed &placed, double baseline) {
        PangoRectangle logical;
        pango_layout_line_get_extents(placed.line, nullptr, &logical);
        double x = m_sheet.left + placed.x;
        if (pango_layout_line_get_resolved_direction(placed.line) == PANGO_DIRECTION_RTL)
            x += placed.text->width - double(logical.width) / PANGO_SCALE;
        const char *words = pango_layout_get_text(placed.text->layout.get());
        for (GSList *run = placed.line->runs; run != nullptr; run = run->next) {
            auto *glyphs = static_cast<PangoGlyphItem *>(run->data);
            const double width = double(pango_glyph_string_get_width(glyphs->glyphs)) / PANGO_SCALE;
            const SetText::Stretch &stretch = placed.text->stretchAt(glyphs->item->offset);
            openContent(stretch.owner);
            cairo_move_to(m_cairo, x, baseline);
            pango_cairo_show_glyph_item(m_cairo, words, glyphs);
            if (!stretch.link.empty())
                addLink(stretch, std::string(words + glyphs->item->offset, std::size_t(glyphs->item->length)),
                        x, baseline, width);
            x += width;
        }
    }

    void drawFigure(const Drawing &drawing, double top, Typesetter &type) {
        openContent(drawing.element);
        const double left = m_sheet.left;
        for (const Figure::Box &box : drawing.figure.boxes) {
            const double s = drawing.scale;
            cairo_set_line_width(m_cairo, box.thick ? thick : thin);
            cairo_rectangle(m_cairo, left + box.x * s, top + box.y * s, box.width * s, box.height * s);
            box.filled ? cairo_fill(m_cairo) : cairo_stroke(m_cairo);
            drawLabel(box, left + box.x * s, top + box.y * s, s, type);
        }
        m_tree.elements[drawing.element].box =
            flipped(left, top, drawing.figure.width * drawing.scale, drawing.figure.height * drawing.scale);
    }

    void ruleLater(double x, double top, double width, double height) {
        m_rules.push_back({x, top, width, height});
    }

    /// Rules and page number, which are no part of the words.
    void endPage(const std::string &footer, Typesetter &type) {
        closeMark();
        if (!m_rules.empty()) {
            openArtifact(Mark::Layout);
            for (const auto &[x, y, width, height] : m_rules)
                cairo_rectangle(m_cairo, x, y, width, height);
            cairo_fill(m_cairo);
            closeMark();
        }
        m_rules.clear();
        openArtifact(Mark::Footer);
        const auto set = type.set({{Run{footer, "", false, ""}, 0}}, m_sheet.bodySize, m_sheet.width,
                                  Typesetter::Weight::Regular);
        const double width = type.widthOf(footer, m_sheet.bodySize, Typesetter::Weight::Regular);
        cairo_move_to(m_cairo, m_sheet.left + m_sheet.width - width, m_sheet.footerTop);
        pango_cairo_show_layout(m_cairo, set->layout.get());
        closeMark();
        cairo_show_page(m_cairo);
    }

    [[nodiscard]] std::size_t page() const { return m_page; }
    [[nodiscard]] double fromBottom(double y) const { return m_sheet.pageHeight - y; }

private:
    void openContent(TagTree::Id owner) {
        if (m_open == owner)
            return;
        closeMark();
        cairo_tag_begin(m_cairo, "Span", nullptr);
        m_tree.own(owner, m_page);
        m_open = owner;
    }
    void openArtifact(Mark kind) {
        closeMark();
        cairo_tag_begin(m_cairo, "Private", nullptr);
        m_tree.marks[m_page].push_back(kind);
        m_artifact = true;
    }
    void closeMark() {
        if (m_open)
            cairo_tag_end(m_cairo, "Span");
        if (m_artifact)
            cairo_tag_end(m_cairo, "Private");
        m_open.reset();
        m_artifact = false;
    }

    [[nodiscard]] Rectangle flipped(double x, double y, double width, double height) const {
        return {x, fromBottom(y + height), x + width, fromBottom(y)};
    }

    /// The letters of a label are drawn as lines: they belong to the picture, and its words follow it.
    void drawLabel(const Figure::Box &box, double x, double y, double scale, Typesetter &type) {
        if (box.label.empty())
            return;
        const auto bold = Typesetter::Weight::Bold;
        const double width = type.widthOf(box.label, m_sheet.bodySize, bold);
        if (width > box.width * scale - thick || m_sheet.line > box.height * scale)
            return;
        const auto set = type.set({{Run{box.label, "", false, ""}, 0}}, m_sheet.bodySize, width + 1, bold);
        cairo_move_to(m_cairo, x + (box.width * scale - width) / 2,
                      y + (box.height * scale - m_sheet.line) / 2);
        pango_cairo_layout_path(m_cairo, set->layout.get());
        cairo_fill(m_cairo);
    }

    void addLink(const SetText::Stretch &stretch, const std::string &words, double x, double baseline,
                 double width) {
        const double size = m_sheet.bodySize;
        ruleLater(x, baseline + size * 0.12, width, size * 0.06);
        const bool goesOn = !m_tree.links.empty() && m_tree.links.back().element == stretch.owner &&
                            m_tree.links.back().page == m_page;
        if (!goesOn)
            m_tree.links.push_back({stretch.owner, m_page, stretch.link, "", {}});
        m_tree.links.back().words += words;
        m_tree.links.back().lines.push_back(flipped(x, baseline - size, width, size * 1.25));
    }

    cairo_t *m_cairo;
    const Sheet &m_sheet;
    TagTree &m_tree;
    std::size_t m_page = 0;
    std::optional<TagTree::Id> m_open;
    bool m_artifact = false;
    std::vector<std::array<double, 4>> m_rules;
};

void paintPage(Painter &painter, const Page &page, const std::vector<Piece> &pieces, const Sheet &sheet,
               Typesetter &type, TagTree &tree) {
    for (const Seat &seat : page) {
        const Piece &piece = pieces[seat.piece];
        const Row &row = piece.rows[seat.row];
        const double top = sheet.top + seat.top;
        if (piece.bookmark && seat.row == 0) {
            tree.bookmarks.push_back(*piece.bookmark);
            tree.bookmarks.back().page = painter.page();
            tree.bookmarks.back().top = painter.fromBottom(top);
        }
        if (piece.drawing)
            painter.drawFigure(*piece.drawing, top, type);
        for (const Row::Placed &placed : row.placed)
            painter.drawLine(placed, top + row.ascent);
        if (piece.ruledLeft)
            painter.ruleLater(sheet.left, top, sheet.bodySize * 0.3, row.height);
    }
}

void describe(cairo_surface_t *surface, const Document &document) {
    const auto set = [&](cairo_pdf_metadata_t field, const std::string &value) {
        if (!value.empty())
            cairo_pdf_surface_set_metadata(surface, field, value.c_str());
    };
    set(CAIRO_PDF_METADATA_TITLE, document.title);
    set(CAIRO_PDF_METADATA_AUTHOR, document.author);
    set(CAIRO_PDF_METADATA_CREATE_DATE, document.date.empty() ? "" : document.date + "T00:00:00Z");
}

} // namespace

Result<std::string> paintPages(const std::vector<Piece> &pieces, const Sheet &sheet, Typesetter &type,
                               const Document &document, TagTree &tree) {
    std::string bytes;
    const auto append = [](void *to, const unsigned char *data, unsigned int size) {
        static_cast<std::string *>(to)->append(reinterpret_cast<const char *>(data), size);
        return CAIRO_STATUS_SUCCESS;
    };
    const std::unique_ptr<cairo_surface_t, decltype(&cairo_surface_destroy)> surface(
        cairo_pdf_surface_create_for_stream(append, &bytes, sheet.pageWidth, sheet.pageHeight),
        cairo_surface_destroy);
    describe(surface.get(), document);
    const std::unique_ptr<cairo_t, decltype(&cairo_destroy)> cairo(cairo_create(surface.get()),
                                                                   cairo_destroy);
    Painter painter(cairo.get(), sheet, tree);
    const std::vector<Page> pages = Paginator(pieces, sheet.height).pages();
    for (std::size_t i = 0; i < pages.size(); ++i) {
        painter.beginPage();
        paintPage(painter, pages[i], pieces, sheet, type, tree);
        painter.endPage("Page " + std::to_string(i + 1) + " of " + std::to_string(pages.size()), type);
    }
    const cairo_status_t drawn = cairo_status(cairo.get());
    cairo_surface_finish(surface.get());
    for (const cairo_status_t status : {drawn, cairo_surface_status(surface.get())})
        if (status != CAIRO_STATUS_SUCCESS)
            return fail(ErrorCode::InputOutput, "The print paper could not be drawn: " +
                                                    std::string(cairo_status_to_string(status)) + ".");
    return bytes;
}

} // namespace reports
