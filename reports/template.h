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

/// Fills a template of templates/ (Markdown with Mustache fields) and reads it as a document. Its title is
/// the first heading; language, date and author are for the caller to set.
///
/// How a template is written:
///   {{field}}                       text; {{#field}} ... {{/field}} a list or a switch, {{^field}} ...
///   {{/field}} if empty # Heading, paragraphs, **strong**, [words](address), - item, 1. item, | tables | are
///   Markdown's own Table: words                    a paragraph just before a table is its caption > Caution:
///   words                a caution
///   ```figure                       the place of figures["kitchen"]
///   kitchen
///   ```
/// Values are escaped, so a client's words are never read as Markdown; {{{field}}} and {{&field}}, which
/// would not be, are refused, as are lists in lists, pictures, raw HTML and italics (hard to read in large
/// print). Fails with Missing for a template, field or figure that is not there, NotUnderstood for a template
/// that is not well formed.
[[nodiscard]] model::Result<Document> fillTemplate(const std::string &name, const Fields &fields,
                                                   const std::map<std::string, Figure> &figures);
/// The same for a template given as text; `name` is for messages.
[[nodiscard]] model::Result<Document> fillText(const std::string &text, const std::string &name,
                                               const Fields &fields,
                                               const std::map<std::string, Figure> &figures);

} // namespace reports
