#pragma once
#include "app/viewmodels/page_view_model.h"

namespace app {

/// A page in words for other eyes: its heading, what is filled in, what was found, and its list. Nothing that
/// tells whose it is, nor with whom the kitchen is shared; of a page that is about the person or holds
/// answers of a test, only the heading.
[[nodiscard]] QStringList partnerLines(const QString &page, const QString &title, PageViewModel &model,
                                       const model::Client &client, const model::Client *other = nullptr);

} // namespace app
