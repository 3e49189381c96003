#pragma once
#include "model/result.h"
#include "reports/document.h"
#include <map>
#include <string>

namespace reports {

/// Reads Markdown as a document, in the way template.h describes.
/// Fails with NotUnderstood for what a document cannot hold, Missing for a figure that is not there.
[[nodiscard]] model::Result<Document> readMarkdown(const std::string &markdown,
                                                   const std::map<std::string, Figure> &figures);
/// A value as Markdown that says exactly its words, on one line.
[[nodiscard]] std::string escapedForMarkdown(const std::string &value);

} // namespace reports
