#pragma once
#include "model/case.h"
#include "model/result.h"
#include <string>
#include <vector>

namespace model {

/// One stored part of a case: its id, its kind ("client", "thing", ...) and its fields as JSON text.
struct Record {
    Id id;
    std::string kind;
    std::string body;
    friend bool operator==(const Record &, const Record &) = default;
};

/// The records of a case, the client's first. Order of lists is kept in the bodies.
[[nodiscard]] std::vector<Record> toRecords(const Case &record);
/// The case again. Fails with DamagedDatabase on a body that is not what toRecords writes. Unknown fields are
/// an error, missing ones take their default, so that older records still load.
[[nodiscard]] Result<Case> fromRecords(const std::vector<Record> &records);

/// What changed between two cases of one client, as records: new or different ones, and ids of those gone.
struct RecordChanges {
    std::vector<Record> written;
    std::vector<Record> removed;
};
[[nodiscard]] RecordChanges recordChanges(const Case &before, const Case &after);

} // namespace model
