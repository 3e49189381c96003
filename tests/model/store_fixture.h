#pragma once
#include "model/database.h"
#include "model/store.h"
#include <filesystem>
#include <functional>
#include <gmock/gmock.h>
#include <optional>
#include <string>

/// A store in a folder of its own that goes when the test ends, with an invented client.
class StoreTest : public ::testing::Test {
protected:
    StoreTest();
    ~StoreTest() override;

    /// Makes the store and keeps its recovery code.
    model::Store make();
    [[nodiscard]] model::Result<model::Store> tryOpen(const std::string &secret) const;
    [[nodiscard]] model::Store open() const; // with the passphrase
    /// A store with one client that has been closed again.
    model::Case makeFilled();
    /// The database behind the store's back, with the key.
    [[nodiscard]] model::Database raw() const;

    [[nodiscard]] std::filesystem::path file(const std::string &name) const { return folder / name; }
    [[nodiscard]] std::string bytesOf(const std::string &name) const;
    void overwrite(const std::string &name, std::size_t offset, const std::string &bytes) const;
    void flipBit(const std::string &name, std::size_t byte) const;
    [[nodiscard]] std::vector<std::string> fileNames() const;

    std::filesystem::path parent; // may be entered by everybody
    std::filesystem::path folder;
    std::string recoveryCode;
    const std::string passphrase = "seven grey herons stand on ice";
    const std::string newPassphrase = "a ladder, two lemons and a drum";
    const std::string author = "A. Tester";
    const model::KeyCost cheapest = model::KeyCost::cheapest();
};

/// Invented; one visit, one thing, one goal.
[[nodiscard]] model::Case inventedCase(const std::string &name);

[[nodiscard]] model::Action action(const std::string &what);

/// The code of a failure; none for a success.
template<class T> std::optional<model::ErrorCode> codeOf(const model::Result<T> &result) {
    return result ? std::nullopt : std::optional(result.error().code);
}

/// Runs `work` in a child process in which no file grows beyond what `limit` allows, until `limit(none)` is
/// called.
[[nodiscard]] int
withSmallFiles(const std::function<int(const std::function<void(std::optional<std::size_t>)> &limit)> &work);
/// Runs `work` in a child process without the rights of root, and gives back what it returned (0..99).
[[nodiscard]] int asOrdinaryUser(const std::function<int()> &work);
/// Runs `work` in a child process that can take only so much more memory.
[[nodiscard]] int withLittleMemory(std::size_t moreBytes, const std::function<int()> &work);
