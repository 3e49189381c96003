#include "reports/pdf_write.h"
#include "reports/pdf_paint.h"
#include "reports/pdf_tags.h"
#include "reports/utf8.h"
#include <algorithm>
#include <cmath>

namespace reports {

using model::ErrorCode;
using model::fail;

namespace {

constexpr double pointsPerMm = 72.0 / 25.4;

bool within(double value, double least, double most) {
    return value >= least && value <= most; // false for what is no number
}

std::string rounded(double value) {
    return std::to_string(std::lround(value));
}

Result<void> possible(const PrintLayout &layout) {
    if (!within(layout.bodyPoints, 12, 72))
        return fail(ErrorCode::OutOfRange, "This letter size cannot be printed. Choose 12 to 72 points.");
    if (!within(layout.pageWidthMm, 50, 1200) || !within(layout.pageHeightMm, 50, 1200))
        return fail(ErrorCode::OutOfRange,
                    "This paper size cannot be printed. Width and height are 50 to 1200 mm.");
    if (!within(layout.marginMm, 0, 600))
        return fail(ErrorCode::OutOfRange,
                    "This margin cannot be printed. Choose 0 to 600 mm; 25.4 mm is usual.");
    return {};
}

Result<Sheet> sheetOf(const PrintLayout &layout, const Typesetter &type) {
    Sheet sheet;
    sheet.bodySize = layout.bodyPoints;
    sheet.pageWidth = layout.pageWidthMm * pointsPerMm;
    sheet.pageHeight = layout.pageHeightMm * pointsPerMm;
    sheet.left = sheet.top = layout.marginMm * pointsPerMm;
    sheet.line = type.lineHeight(layout.bodyPoints);
    sheet.width = sheet.pageWidth - 2 * sheet.left;
    // The page number stands in the bottom margin, as low as printers reach; large letters need some of the
    // page as well.
    constexpr double edge = 20; // points
    sheet.footerTop = sheet.pageHeight - std::min(edge, sheet.top) - sheet.line;
    const double bottom = std::min(sheet.pageHeight - sheet.top, sheet.footerTop - sheet.line / 4);
    sheet.height = bottom - sheet.top;
    constexpr double fewestLetters = 5; // of full size on a line
    constexpr double fewestLines = 4;
    if (sheet.width < fewestLetters * sheet.bodySize || sheet.height < fewestLines * sheet.line)
        return fail(ErrorCode::OutOfRange,
                    "Letters of " + rounded(layout.bodyPoints) + " points do not fit on paper of " +
                        rounded(layout.pageWidthMm) + " by " + rounded(layout.pageHeightMm) +
                        " mm with margins of " + rounded(layout.marginMm) +
                        " mm. Choose smaller margins, smaller letters or larger paper.");
    return sheet;
}

} // namespace

Result<std::string> composePdf(const Document &ready, const PrintLayout &layout) {
    if (auto good = possible(layout); !good)
        return tl::unexpected(good.error());
    Typesetter type(layout.bodyPoints, ready.language);
    const auto sheet = sheetOf(layout, type);
    if (!sheet)
        return tl::unexpected(sheet.error());
    TagTree tree;
    Composer composer(*sheet, type, tree);
    for (const Block &block : ready.blocks)
        std::visit(composer, block);
    if (!type.missing().empty())
        return fail(ErrorCode::NotUnderstood,
                    "No font on this computer has " + named(type.missing()) +
                        ". Write these words in other characters, or install a font that has "
                        "them.");
    return paintPages(composer.pieces, *sheet, type, ready, tree).and_then([&](const std::string &drawn) {
        return tagPdf(drawn, tree, ready);
    });
}

} // namespace reports
