#pragma once
#include "model/bytes.h"
#include "model/result.h"
#include <filesystem>

/// All that the store asks of the operating system. A port to another system writes platform.cpp anew and
/// nothing else of model. Locked memory comes from sodium_malloc, which knows those systems itself.
///
/// Linux here. Windows: LockFileEx, FlushFileBuffers, MoveFileExW with MOVEFILE_WRITE_THROUGH, an access list
/// for the owner alone, SetProcessMitigationPolicy and WerAddExcludedApplication, GetModuleHandleExW for an
/// address. macOS: the same calls as here, but fcntl(F_FULLFSYNC) instead of fsync, and
/// ptrace(PT_DENY_ATTACH).
namespace model::platform {

/// First thing in main: no core dumps, no other process of the same user reads this memory, new files are for
/// their owner alone.
void protectProcess();

/// Last thing in work on another thread that opened or read a store: gives back what the cryptographic
/// library keeps for that thread. Qt calls a thread finished before the thread's own tidying has run, so that
/// else the end of the program could overtake it.
void endThreadWork();

/// A lock that the system frees when the process ends, in whatever way. Move-only.
class LockFile {
public:
    /// Fails with Busy when somebody holds it, ReadOnly when the file cannot be made.
    [[nodiscard]] static Result<LockFile> take(const std::filesystem::path &path);
    LockFile(LockFile &&other) noexcept;
    LockFile &operator=(LockFile &&other) noexcept;
    ~LockFile();

private:
    explicit LockFile(int descriptor) : m_descriptor(descriptor) {}
    int m_descriptor = -1;
};

/// A folder for its owner alone; one that is there already keeps its rights.
[[nodiscard]] Result<void> makePrivateFolder(const std::filesystem::path &folder);

/// At most `limit` bytes from the start. Fails with Missing, ReadOnly (no right to read), InputOutput.
[[nodiscard]] Result<Bytes> readStart(const std::filesystem::path &path, std::size_t limit);

/// Writes a file for its owner alone, replaces what was there, and returns when the disk has it.
[[nodiscard]] Result<void> writeDurably(const std::filesystem::path &path, ByteView bytes);

/// Overwrites bytes of a file in one call, without waiting for the disk.
[[nodiscard]] Result<void> overwriteAt(const std::filesystem::path &path, std::size_t offset, ByteView bytes);

/// Renames over `to`, and returns when the disk has it.
[[nodiscard]] Result<void> renameDurably(const std::filesystem::path &from, const std::filesystem::path &to);

/// Bytes that are free where `folder` lies.
[[nodiscard]] Result<std::uintmax_t> freeSpace(const std::filesystem::path &folder);

/// True if both addresses lie in the same loaded program or library.
[[nodiscard]] bool inSameBinary(const void *a, const void *b);

} // namespace model::platform
