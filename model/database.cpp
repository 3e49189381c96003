#include "model/database.h"
#include "model/platform.h"
#include "model/sentence.h"
#include <array>
#include <sodium.h>
#include <sqlcipher/sqlite3.h>
#include <utility>

namespace model {
namespace {

void refuseUnlessExpected(const std::string &found, std::string_view expected) {
    if (found != expected)
        throw DatabaseError(SQLITE_ERROR);
}

/// The raw key and the salt as SQLCipher reads them: x'<64 digits><32 digits>'.
SecretBytes keyText(const SecretBytes &key, const ByteArray<16> &salt) {
    constexpr std::size_t keyDigits = 64;
    constexpr std::size_t saltDigits = 32;
    SecretBytes text(2 + keyDigits + saltDigits + 2); // with the quote and a closing zero
    text.write([&](std::span<unsigned char> out) {
        auto *place = reinterpret_cast<char *>(out.data());
        place[0] = 'x';
        place[1] = '\'';
        key.read(
            [&](ByteView bytes) { sodium_bin2hex(place + 2, keyDigits + 1, bytes.data(), bytes.size()); });
        sodium_bin2hex(place + 2 + keyDigits, saltDigits + 1, salt.data(), salt.size());
        place[2 + keyDigits + saltDigits] = '\'';
    });
    return text;
}

int asInt(std::size_t size) {
    if (size > 1'000'000'000)
        throw DatabaseError(SQLITE_TOOBIG);
    return static_cast<int>(size);
}

} // namespace

DatabaseError::DatabaseError(int extendedCode)
    : std::runtime_error("database answered " + std::to_string(extendedCode)), m_code(extendedCode) {}

Error errorFrom(const DatabaseError &problem) {
    switch (problem.code() & 0xff) {
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
        return {ErrorCode::Busy,
                Sentence::tr("These records are open in another window or program. Close it and try again.")};
    case SQLITE_READONLY:
    case SQLITE_PERM:
    case SQLITE_CANTOPEN:
        return {ErrorCode::ReadOnly,
                Sentence::tr("The records cannot be written: the folder or the file is read-only, or belongs "
                             "to somebody else. Nothing was saved. Copy the folder to a place of your own.")};
    case SQLITE_FULL:
        return {ErrorCode::Full, Sentence::tr("The disk is full. The last change was not saved; everything "
                                              "before it is safe. Free some space and try again.")};
    case SQLITE_CORRUPT:
    case SQLITE_NOTADB:
        return {ErrorCode::DamagedDatabase,
                Sentence::tr("The file records.db is damaged. Your passphrase is right. Restore the last "
                             "backup, and keep the damaged folder as it is.")};
    case SQLITE_CONSTRAINT:
        return {ErrorCode::Refused,
                Sentence::tr("The change does not fit the rest of the records, so it was not saved. This is "
                             "a fault of the program. Open the client again.")};
    case SQLITE_NOMEM:
        return {ErrorCode::InputOutput,
                Sentence::tr("There is not enough free memory. Close other programs and try again.")};
    default:
        return {ErrorCode::InputOutput,
                Sentence::tr("The disk did not take the last change (code {1}). It was not saved; everything "
                             "before it is safe. Check the disk and try again.",
                             {std::to_string(problem.code())})};
    }
}

Database::Database(const std::filesystem::path &path, const SecretBytes &key, const ByteArray<16> &salt,
                   Journal journal) {
    // A plain SQLite that got in between would keep the records readable by anyone.
    if (!platform::inSameBinary(reinterpret_cast<const void *>(&sqlite3_open_v2),
                                reinterpret_cast<const void *>(&errorFrom)))
        throw NotEncryptedError();
    const int opened = sqlite3_open_v2(path.c_str(), &m_connection, SQLITE_OPEN_READWRITE, nullptr);
    try {
        if (opened != SQLITE_OK)
            throw DatabaseError(m_connection == nullptr ? opened : sqlite3_extended_errcode(m_connection));
        sqlite3_extended_result_codes(m_connection, 1);
        unlock(key, salt);
        configure(journal);
    } catch (...) {
        sqlite3_close(m_connection);
        throw;
    }
}

Database::Database(Database &&other) noexcept : m_connection(std::exchange(other.m_connection, nullptr)) {}

Database &Database::operator=(Database &&other) noexcept {
    std::swap(m_connection, other.m_connection);
    return *this;
}

Database::~Database() {
    sqlite3_close(m_connection); // takes a null pointer
}

/// The order matters: the key before all else, and nothing is read before the page size is known.
void Database::unlock(const SecretBytes &key, const ByteArray<16> &salt) {
    // The function behind PRAGMA key; called directly, no copy of the key stays in the text of a statement.
    keyText(key, salt).read([&](ByteView text) {
        check(sqlite3_key_v2(m_connection, "main", text.data(), static_cast<int>(text.size()) - 1));
    });
    run("PRAGMA cipher_compatibility = 3"); // unknown to 3.x, needed by 4.x
    run("PRAGMA cipher_page_size = 4096");  // after the line above, which resets it
    Statement version(*this, "PRAGMA cipher_version");
    if (!version.step() || version.text(0).empty())
        throw NotEncryptedError();
}

void Database::configure(Journal journal) {
    (void)number("SELECT count(*) FROM sqlite_master"); // the first real read: only now a wrong key shows
    refuseUnlessExpected(text("PRAGMA locking_mode = EXCLUSIVE"), "exclusive");
    if (journal == Journal::Delete)
        refuseUnlessExpected(text("PRAGMA journal_mode = DELETE"), "delete");
    else
        refuseUnlessExpected(text("PRAGMA journal_mode = OFF"), "off");
    run("PRAGMA synchronous = EXTRA");
    refuseUnlessExpected(text("PRAGMA synchronous"), "3");
    run("PRAGMA foreign_keys = ON; PRAGMA temp_store = MEMORY; PRAGMA secure_delete = ON; PRAGMA "
        "cell_size_check = ON");
    refuseUnlessExpected(text("PRAGMA foreign_keys"), "1");
}

void Database::check(int code) const {
    if (code != SQLITE_OK && code != SQLITE_ROW && code != SQLITE_DONE)
        throw DatabaseError(sqlite3_extended_errcode(m_connection));
}

void Database::run(const char *sql) {
    check(sqlite3_exec(m_connection, sql, nullptr, nullptr, nullptr));
}

std::int64_t Database::number(const char *sql) {
    Statement statement(*this, sql);
    if (!statement.step())
        throw DatabaseError(SQLITE_ERROR);
    return statement.number(0);
}

std::string Database::text(const char *sql) {
    Statement statement(*this, sql);
    if (!statement.step())
        throw DatabaseError(SQLITE_ERROR);
    return statement.text(0);
}

std::int64_t Database::changes() const {
    return sqlite3_changes(m_connection);
}

bool Database::inTransaction() const {
    return sqlite3_get_autocommit(m_connection) == 0;
}

void Database::backUpTo(const std::filesystem::path &path, const SecretBytes &key,
                        const ByteArray<16> &salt) {
    Database copy(path, key, salt, Journal::Delete);
    auto *backup = sqlite3_backup_init(copy.m_connection, "main", m_connection, "main");
    if (backup == nullptr)
        throw DatabaseError(sqlite3_extended_errcode(copy.m_connection));
    sqlite3_backup_step(backup, -1);
    if (const int ended = sqlite3_backup_finish(backup); ended != SQLITE_OK)
        throw DatabaseError(ended);
    if (copy.text("PRAGMA integrity_check") != "ok")
        throw DatabaseError(SQLITE_CORRUPT);
}

Statement::Statement(Database &database, std::string_view sql, Bare) : m_database(database) {
    database.check(
        sqlite3_prepare_v2(database.m_connection, sql.data(), asInt(sql.size()), &m_statement, nullptr));
}

Statement::~Statement() {
    sqlite3_finalize(m_statement);
}

void Statement::bind(int place, std::string_view value) {
    const char *start = value.data() == nullptr ? "" : value.data();
    m_database.check(sqlite3_bind_text(m_statement, place, start, asInt(value.size()), SQLITE_TRANSIENT));
}

void Statement::bind(int place, ByteView value) {
    m_database.check(
        sqlite3_bind_blob(m_statement, place, value.data(), asInt(value.size()), SQLITE_TRANSIENT));
}

void Statement::bindNumber(int place, std::int64_t value) {
    m_database.check(sqlite3_bind_int64(m_statement, place, value));
}

bool Statement::step() {
    const int code = sqlite3_step(m_statement);
    m_database.check(code);
    return code == SQLITE_ROW;
}

void Statement::run() {
    while (step()) {
    }
}

std::int64_t Statement::number(int column) const {
    return sqlite3_column_int64(m_statement, column);
}

std::string Statement::text(int column) const {
    const auto *start = reinterpret_cast<const char *>(sqlite3_column_text(m_statement, column));
    const auto size = static_cast<std::size_t>(sqlite3_column_bytes(m_statement, column));
    return start == nullptr ? std::string() : std::string(start, size);
}

ByteView Statement::blob(int column) const {
    const auto *start = static_cast<const unsigned char *>(sqlite3_column_blob(m_statement, column));
    return {start, static_cast<std::size_t>(sqlite3_column_bytes(m_statement, column))};
}

bool Statement::isNull(int column) const {
    return sqlite3_column_type(m_statement, column) == SQLITE_NULL;
}

Transaction::Transaction(Database &database) : m_database(database) {
    database.run("BEGIN IMMEDIATE");
}

Transaction::~Transaction() {
    if (!m_database.inTransaction())
        return;
    try {
        m_database.run("ROLLBACK");
    } catch (const DatabaseError &) {
        // Nothing more can be done here: the next start rolls back from the journal.
    }
}

void Transaction::commit() {
    m_database.run("COMMIT");
}

} // namespace model
