#pragma once
#include "model/result.h"
#include "reports/document.h"

/// What all writers do to a document before they write it, so that every medium says the same words.
namespace reports {

enum class Links {
    Spelled, // the address stands behind the words: on paper nobody can follow a link
    Kept,
};

/// The document in the form that writers use: every run of white space is one blank, blocks without words are
/// gone, a title is there.
///
/// Fails with Missing if no words are left, NotUnderstood if the text is not UTF-8 or holds control
/// characters, or if a language or the date is none, OutOfRange if a heading level is skipped or a row has
/// more or fewer cells than there are columns.
[[nodiscard]] model::Result<Document> prepared(const Document &document, Links links);

/// An address as it is spelled: without "mailto:".
[[nodiscard]] std::string spelledAddress(const std::string &link);

} // namespace reports
