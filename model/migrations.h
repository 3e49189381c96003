#pragma once
#include "model/database.h"
#include <functional>
#include <span>

namespace model {

/// Takes the tables from one version to the next. Throws DatabaseError.
using Migration = void (*)(Database &);

/// All steps in order; the number of a version is the number of steps done. A step that has been released
/// never changes.
[[nodiscard]] std::span<const Migration> migrations();

/// Tells a store's file from another one that happens to open.
inline constexpr std::int64_t applicationId = 0x464d4b31;

/// Brings the file to the newest version, all steps in one transaction: it ends up as before or wholly new.
/// `backUp` is called first, unless the file is empty. Fails with NewerVersion, DamagedDatabase; throws
/// DatabaseError.
[[nodiscard]] Result<void> migrate(Database &database, std::span<const Migration> steps,
                                   const std::function<Result<void>(std::int64_t version)> &backUp);

} // namespace model
