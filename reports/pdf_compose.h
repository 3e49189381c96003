#pragma once
#include "reports/pdf_type.h"
#include "reports/writers.h"
#include <memory>
#include <optional>
#include <vector>

namespace reports {

/// Sizes of a page in PDF points.
struct Sheet {
    double bodySize = 18;
    double pageWidth = 0, pageHeight = 0;
    double left = 0, top = 0;
    double width = 0, height = 0; // room for the text
    double line = 0;              // height of a body line
    double footerTop = 0;
};

/// One line across the page: a set line, with or without a label to its left, or a drawing.
struct Row {
    struct Placed {
        std::shared_ptr<SetText> text;
        PangoLayoutLine *line = nullptr;
        double x = 0; // from the left margin
    };
    double height = 0;
    double ascent = 0;
    double space = 0; // above the row, unless it is the first of a page
    std::vector<Placed> placed{};
};

/// A drawing, fitted to the text width.
struct Drawing {
    Figure figure;
    double scale = 1; // points for a millimetre
    TagTree::Id element = 0;
};

/// What stands together: a heading, a paragraph, an item, a record, a caution, a drawing.
struct Piece {
    std::vector<Row> rows{};
    bool together = false;  // not split, if a page holds it
    bool ifShort = false;   // not split, if a third of a page holds it: no page is left half empty
    bool withNext = false;  // on one page with the beginning of the next piece
    bool ruledLeft = false; // a thick rule along its left side
    std::optional<TagTree::Bookmark> bookmark{};
    std::optional<Drawing> drawing{};
};

/// Turns blocks into pieces and gives every word its place in the tree.
class Composer {
public:
    Composer(const Sheet &sheet, Typesetter &type, TagTree &tree)
        : m_sheet(sheet), m_type(type), m_tree(tree) {}

    void operator()(const Heading &block);
    void operator()(const Paragraph &block);
    void operator()(const Steps &block);
    void operator()(const Table &block);
    void operator()(const Figure &block);
    void operator()(const CautionBlock &block);

    std::vector<Piece> pieces;

private:
    struct Style {
        double size = 0;
        double indent = 0;
        Typesetter::Weight weight = Typesetter::Weight::Regular;
    };
    [[nodiscard]] std::vector<OwnedRun> owned(const Text &text, TagTree::Id owner);
    void setRows(Piece &piece, const Text &text, TagTree::Id owner, const Style &style, double space);
    void addLabel(Piece &piece, const std::string &label, TagTree::Id owner);

    Sheet m_sheet;
    Typesetter &m_type;
    TagTree &m_tree;
};

} // namespace reports
