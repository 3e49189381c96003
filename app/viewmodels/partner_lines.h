#pragma once
#include "app/viewmodels/page_view_model.h"
#include "model/case.h"

namespace app {

/// A page in words for other eyes: its heading, what is filled in, and its list. Shown are only the pages of
/// kitchen, things, plan and work, and of these neither what was found out about the person nor, without
/// consent, the client's medicines and own things. Client, household and who helps are not named, nor the
/// `other` client of a shared kitchen. Of every other page comes only the heading, and that it is not shown.
[[nodiscard]] QStringList partnerLines(const QString &page, const QString &title, PageViewModel &model,
                                       const model::Case &record, const model::Case *other = nullptr);

} // namespace app
