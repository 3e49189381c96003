#pragma once

namespace model {

/// How a store is opened by tests that show what the usual way is good for.
struct StoreOptions {
    bool journalOff = false; // a crash may then lose or break records
};

} // namespace model
