#pragma once
#include "model/secret.h"
#include <concepts>
#include <cstdint>
#include <filesystem>
#include <stdexcept>
#include <string>
#include <string_view>

struct sqlite3;
struct sqlite3_stmt;

/// The C interface of SQLCipher, owned. The one place that throws on purpose, so that leaving a scope rolls
/// back. Only the store's own sources and tests include it.
namespace model {

/// What the database library answered; never holds SQL or what is stored.
class DatabaseError : public std::runtime_error {
public:
    explicit DatabaseError(int extendedCode);
    [[nodiscard]] int code() const { return m_code; } // extended result code of SQLite
private:
    int m_code;
};

/// The library, or the file, cannot keep a secret.
class NotEncryptedError : public std::runtime_error {
public:
    NotEncryptedError() : std::runtime_error("not encrypted") {}
};

/// As an Error with a sentence of advice.
[[nodiscard]] Error errorFrom(const DatabaseError &problem);

enum class Journal {
    Delete,
    Off // loses records in a crash: only to show that the crash tests can fail
};

/// One connection to an encrypted file, locked for this connection alone.
class Database {
public:
    /// Opens an existing file, empty for a new store; never makes one. Throws NotEncryptedError before
    /// anything is written, DatabaseError for a wrong key, a damaged first page, and all else.
    Database(const std::filesystem::path &path, const SecretBytes &key, const ByteArray<16> &salt,
             Journal journal);
    Database(Database &&other) noexcept;
    Database &operator=(Database &&other) noexcept;
    ~Database();

    void run(const char *sql); // one or several statements without values
    [[nodiscard]] std::int64_t number(const char *sql);
    [[nodiscard]] std::string text(const char *sql);
    [[nodiscard]] std::int64_t changes() const; // rows of the last statement
    [[nodiscard]] bool inTransaction() const;
    /// Copies everything into `path`, an empty file, under the same key.
    void backUpTo(const std::filesystem::path &path, const SecretBytes &key, const ByteArray<16> &salt);

private:
    friend class Statement;
    void unlock(const SecretBytes &key, const ByteArray<16> &salt);
    void configure(Journal journal);
    void check(int code) const;
    sqlite3 *m_connection = nullptr;
};

/// A prepared statement with its values bound from the left.
class Statement {
public:
    template<class... Values>
    Statement(Database &database, std::string_view sql, const Values &...values)
        : Statement(database, sql, Bare{}) {
        int place = 0;
        (bind(++place, values), ...);
    }
    Statement(const Statement &) = delete;
    Statement &operator=(const Statement &) = delete;
    ~Statement();

    [[nodiscard]] bool step(); // true: a row
    void run();                // to the end
    [[nodiscard]] std::int64_t number(int column) const;
    [[nodiscard]] std::string text(int column) const;
    [[nodiscard]] ByteView blob(int column) const; // until the next step
    [[nodiscard]] bool isNull(int column) const;

private:
    struct Bare {};
    Statement(Database &database, std::string_view sql, Bare);
    void bind(int place, std::string_view value);
    void bind(int place, ByteView value);
    void bindNumber(int place, std::int64_t value);
    template<std::integral Number> void bind(int place, Number value) {
        bindNumber(place, static_cast<std::int64_t>(value));
    }
    Database &m_database;
    sqlite3_stmt *m_statement = nullptr;
};

/// Begun at once; rolled back unless committed.
class Transaction {
public:
    explicit Transaction(Database &database);
    Transaction(const Transaction &) = delete;
    Transaction &operator=(const Transaction &) = delete;
    ~Transaction();
    void commit();

private:
    Database &m_database;
};

} // namespace model
