#pragma once
#include "model/result.h"
#include "reports/document.h"
#include <map>
#include <string>
#include <variant>
#include <vector>

namespace reports {

/// The fields of a template: text, a switch, a list of groups of fields.
struct Fields;
using Field = std::variant<std::string, bool, std::vector<Fields>>;
struct Fields {
    std::map<std::string, Field> named;
};

/// Fills a template of templates/ (Markdown with Mustache fields) and reads it as a document.
///
/// Headings, paragraphs, lists, tables and links are Markdown's own; a block quote that begins with "Caution:" is a
/// caution; a fenced block of kind "figure" is the place of `figures[its text]`. Values are escaped, so a client's words are
/// never read as Markdown.
/// Fails with Missing for a template or field that is not there.
[[nodiscard]] model::Result<Document> fillTemplate(const std::string &name, const Fields &fields,
                                                   const std::map<std::string, Figure> &figures);

} // namespace reports
