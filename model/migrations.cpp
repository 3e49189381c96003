#include "model/migrations.h"
#include <array>

namespace model {
namespace {

/// Every record carries who, when, which revision and which visit, and a removed one leaves its row without a
/// body, so that the records of two laptops can be merged.
void firstTables(Database &database) {
    database.run(R"(
CREATE TABLE client(
    id TEXT PRIMARY KEY NOT NULL,
    name TEXT NOT NULL,
    code TEXT NOT NULL,
    search TEXT NOT NULL,
    archived INTEGER NOT NULL CHECK(archived IN (0, 1)),
    last_visit TEXT NOT NULL,
    next_review TEXT NOT NULL
);
CREATE TABLE record(
    id TEXT PRIMARY KEY NOT NULL CHECK(length(id) > 0),
    kind TEXT NOT NULL,
    client TEXT NOT NULL REFERENCES client(id),
    author TEXT NOT NULL,
    at TEXT NOT NULL,
    revision INTEGER NOT NULL CHECK(typeof(revision) = 'integer' AND revision > 0),
    visit TEXT NOT NULL,
    removed INTEGER NOT NULL CHECK(removed IN (0, 1)),
    body TEXT NOT NULL,
    CHECK(removed = 0 OR body = '')
);
CREATE INDEX record_of_client ON record(client);
CREATE TABLE draft(
    form TEXT NOT NULL,
    client TEXT NOT NULL,
    text TEXT NOT NULL,
    at TEXT NOT NULL,
    PRIMARY KEY(form, client)
);
CREATE TABLE setting(key TEXT PRIMARY KEY NOT NULL, value TEXT NOT NULL);
CREATE TABLE key_file(only INTEGER PRIMARY KEY CHECK(only = 1), generation INTEGER NOT NULL);
INSERT INTO key_file VALUES(1, 1);
CREATE TABLE audit(
    seq INTEGER PRIMARY KEY,
    at TEXT NOT NULL,
    author TEXT NOT NULL,
    what TEXT NOT NULL,
    object TEXT NOT NULL,
    detail TEXT NOT NULL,
    mac BLOB NOT NULL CHECK(length(mac) = 32)
);
CREATE TRIGGER audit_is_never_changed BEFORE UPDATE ON audit
BEGIN SELECT RAISE(ABORT, 'the audit is never changed'); END;
CREATE TRIGGER audit_is_never_shortened BEFORE DELETE ON audit
BEGIN SELECT RAISE(ABORT, 'the audit is never shortened'); END;
)");
}

/// Photographs lie in a table of their own: they are read one at a time, when they are looked at.
void photographs(Database &database) {
    database.run(R"(
CREATE TABLE photo(
    id TEXT PRIMARY KEY NOT NULL CHECK(length(id) > 0),
    client TEXT NOT NULL REFERENCES client(id),
    of TEXT NOT NULL,
    description TEXT NOT NULL CHECK(length(description) > 0),
    at TEXT NOT NULL,
    picture BLOB NOT NULL CHECK(length(picture) > 0)
);
CREATE INDEX photo_of_client ON photo(client);
)");
}

constexpr std::array<Migration, 2> allSteps{firstTables, photographs};

Result<void> checkKnown(Database &database, std::int64_t version, std::size_t newest) {
    const auto application = database.number("PRAGMA application_id");
    const bool empty = version == 0 && database.number("SELECT count(*) FROM sqlite_master") == 0;
    if (!empty && application != applicationId)
        return fail(ErrorCode::DamagedDatabase,
                    "The file records.db opens but does not hold Feltmark's records. Restore "
                    "the last backup.");
    if (version < 0 || static_cast<std::size_t>(version) > newest)
        return fail(ErrorCode::NewerVersion,
                    "These records were written by a newer version of Feltmark. Update the "
                    "program on this computer; nothing was changed.");
    return {};
}

} // namespace

std::span<const Migration> migrations() {
    return allSteps;
}

Result<void> migrate(Database &database, std::span<const Migration> steps,
                     const std::function<Result<void>(std::int64_t version)> &backUp) {
    const auto version = database.number("PRAGMA user_version");
    if (auto known = checkKnown(database, version, steps.size()); !known)
        return known;
    if (static_cast<std::size_t>(version) == steps.size())
        return {};
    if (version > 0) {
        if (auto copied = backUp(version); !copied)
            return copied;
    }
    Transaction transaction(database);
    for (const auto step : steps.subspan(static_cast<std::size_t>(version)))
        step(database);
    if (Statement(database, "PRAGMA foreign_key_check").step())
        return fail(ErrorCode::DamagedDatabase,
                    "The records could not be brought to this version: parts of them do not "
                    "belong to any client. Nothing was changed. Restore the last backup.");
    database.run(("PRAGMA application_id = " + std::to_string(applicationId)).c_str());
    database.run(("PRAGMA user_version = " + std::to_string(steps.size())).c_str());
    transaction.commit();
    return {};
}

} // namespace model
