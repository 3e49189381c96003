#include "reports/prepare.h"
#include "reports/writers.h"
#include <algorithm>
#include <cstdio>

namespace reports {

namespace {

std::string escaped(const std::string &text) {
    std::string safe;
    for (const char c : text) {
        switch (c) {
        case '&':
            safe += "&amp;";
            break;
        case '<':
            safe += "&lt;";
            break;
        case '>':
            safe += "&gt;";
            break;
        case '"':
            safe += "&quot;";
            break;
        case '\'':
            safe += "&#39;";
            break;
        default:
            safe += c;
        }
    }
    return safe;
}

/// Only addresses that open a page or a mail; anything else (javascript:, data:) stays words.
bool mayBeFollowed(const std::string &link) {
    return link.starts_with("https://") || link.starts_with("http://") || link.starts_with("mailto:") ||
           link.starts_with("tel:");
}

std::string inlineHtml(const Text &text) {
    std::string html;
    for (const Run &run : text) {
        std::string words = escaped(run.text);
        if (run.strong)
            words = "<strong>" + words + "</strong>";
        if (mayBeFollowed(run.link))
            words = "<a href=\"" + escaped(run.link) + "\">" + words + "</a>";
        if (!run.language.empty())
            words = "<span lang=\"" + escaped(run.language) + "\" dir=\"auto\">" + words + "</span>";
        html += words;
    }
    return html;
}

std::string number(double value) {
    char buffer[32];
    std::snprintf(buffer, sizeof buffer, "%.2f", value);
    return buffer;
}

std::string drawing(const Figure &figure) {
    constexpr double letterMm = 6; // size of the labels on the drawing
    std::string svg = "<svg role=\"img\" aria-label=\"" + escaped(drawingName(figure)) +
                      "\" viewBox=\"-1 -1 " + number(figure.width + 2) + ' ' + number(figure.height + 2) +
                      "\">\n";
    const bool filled = std::ranges::any_of(figure.boxes, &Figure::Box::filled);
    if (filled) // white behind it, whatever the colours of the page
        svg += "<rect class=\"paper\" x=\"0\" y=\"0\" width=\"" + number(figure.width) + "\" height=\"" +
               number(figure.height) + "\"/>\n";
    for (const Figure::Box &box : figure.boxes) {
        svg += std::string("<rect ") + (box.filled ? "class=\"filled\" " : "") + "x=\"" + number(box.x) +
               "\" y=\"" + number(box.y) + "\" width=\"" + number(box.width) + "\" height=\"" +
               number(box.height) + "\" stroke-width=\"" + (box.thick ? "1.2" : "0.4") + "\"/>\n";
        if (!box.label.empty())
            svg += "<text x=\"" + number(box.x + box.width / 2) + "\" y=\"" +
                   number(box.y + box.height / 2 + letterMm / 3) + "\">" + escaped(box.label) + "</text>\n";
    }
    return svg + "</svg>\n";
}

struct BlockHtml {
    std::string operator()(const Heading &block) const {
        const std::string level = std::to_string(block.level);
        return "<h" + level + ">" + inlineHtml(block.text) + "</h" + level + ">\n";
    }
    std::string operator()(const Paragraph &block) const { return "<p>" + inlineHtml(block.text) + "</p>\n"; }
    std::string operator()(const CautionBlock &block) const {
        return "<p class=\"caution\">" + inlineHtml(cautionWords(block)) + "</p>\n";
    }
    std::string operator()(const Steps &block) const {
        const std::string tag = block.numbered ? "ol" : "ul";
        std::string html = "<" + tag + ">\n";
        for (const Text &item : block.items)
            html += "<li>" + inlineHtml(item) + "</li>\n";
        return html + "</" + tag + ">\n";
    }
    std::string operator()(const Figure &block) const {
        std::string html = "<figure>\n";
        if (!block.boxes.empty() && block.width > 0 && block.height > 0)
            html += drawing(block);
        if (const Text words = pictureWords(block); !words.empty())
            html += "<figcaption>" + inlineHtml(words) + "</figcaption>\n";
        return html + "</figure>\n";
    }
    std::string operator()(const Table &block) const {
        std::string html = "<table>\n";
        if (!block.caption.empty())
            html += "<caption>" + escaped(block.caption) + "</caption>\n";
        html += "<thead>\n<tr>";
        for (const std::string &column : block.columns)
            html += "<th scope=\"col\">" + escaped(column) + "</th>";
        html += "</tr>\n</thead>\n<tbody>\n";
        for (const std::vector<Text> &row : block.rows) {
            html += "<tr>";
            for (std::size_t i = 0; i < row.size(); ++i)
                html += (i == 0 ? "<th scope=\"row\">" : "<td>") + inlineHtml(row[i]) +
                        (i == 0 ? "</th>" : "</td>");
            html += "</tr>\n";
        }
        return html + "</tbody>\n</table>\n";
    }
};

constexpr const char *style = R"(<style>
body { font-family: "Noto Sans", Verdana, Arial, sans-serif; font-size: 1.5rem; line-height: 1.5; color: #000;
  background: #fff; margin: 1.5rem auto; padding: 0 1rem; max-width: 40rem; text-align: left; }
h1 { font-size: 2rem; } h2 { font-size: 1.75rem; } h3, h4, h5, h6 { font-size: 1.5rem; }
.caution { border: 0.3rem solid #000; padding: 0.75rem; }
table { border-collapse: collapse; } caption { text-align: left; font-weight: bold; }
th, td { border: 0.1rem solid #000; padding: 0.5rem; text-align: left; vertical-align: top; }
figure { margin: 1rem 0; } svg { width: 100%; height: auto; }
rect { fill: none; stroke: #000; } rect.filled { fill: #000; stroke: none; shape-rendering: crispEdges; }
rect.paper { fill: #fff; stroke: none; } svg text { font-size: 6px; text-anchor: middle; }
@media (prefers-color-scheme: dark) { body { color: #fff; background: #000; } .caution, th, td { border-color: #fff; }
  a { color: #9cf; } rect { stroke: #fff; } rect.filled, rect.paper { stroke: none; } svg text { fill: #fff; } }
</style>
)";

} // namespace

Result<std::string> writeHtml(const Document &document) {
    return prepared(document, Links::Kept).map([](const Document &ready) {
        std::string html =
            "<!DOCTYPE html>\n<html lang=\"" + escaped(ready.language) +
            "\">\n<head>\n<meta charset=\"utf-8\">\n" +
            "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<title>" +
            escaped(ready.title) + "</title>\n";
        if (!ready.author.empty())
            html += "<meta name=\"author\" content=\"" + escaped(ready.author) + "\">\n";
        html += std::string(style) + "</head>\n<body>\n<main>\n";
        for (const Block &block : ready.blocks)
            html += std::visit(BlockHtml{}, block);
        return html + "</main>\n</body>\n</html>\n";
    });
}

} // namespace reports
