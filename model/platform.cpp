#include "model/platform.h"
#include "model/sentence.h"
#include <cerrno>
#include <dlfcn.h>
#include <fcntl.h>
#include <openssl/crypto.h>
#include <string>
#include <sys/file.h>
#include <sys/prctl.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <unistd.h>
#include <utility>

namespace model::platform {
namespace {

namespace fs = std::filesystem;

tl::unexpected<Error> failure(int number, const fs::path &path) {
    const std::string name = path.filename().string();
    switch (number) {
    case ENOENT:
    case ENOTDIR:
        return fail(ErrorCode::Missing,
                    Sentence::tr("There is no {1} in this folder. Check the folder's name.", {name}));
    case ENOSPC:
    case EDQUOT:
        return fail(ErrorCode::Full,
                    Sentence::tr("The disk is full: {1} could not be written. Free some space and try again; "
                                 "nothing that was saved before is lost.",
                                 {name}));
    case EROFS:
    case EACCES:
    case EPERM:
        return fail(ErrorCode::ReadOnly,
                    Sentence::tr("You have no right to use {1} in this folder. Choose a folder of your own, "
                                 "or ask for the right to write there.",
                                 {name}));
    default:
        return fail(
            ErrorCode::InputOutput,
            Sentence::tr(
                "The disk did not take or give {1}. Check that it is connected and sound, then try again.",
                {name}));
    }
}

class Descriptor {
public:
    Descriptor(const fs::path &path, int flags) : m_number(::open(path.c_str(), flags | O_CLOEXEC, 0600)) {}
    Descriptor(const Descriptor &) = delete;
    Descriptor &operator=(const Descriptor &) = delete;
    ~Descriptor() {
        if (m_number >= 0)
            ::close(m_number);
    }
    [[nodiscard]] bool isOpen() const { return m_number >= 0; }
    [[nodiscard]] int number() const { return m_number; }

private:
    int m_number;
};

bool writeAll(int descriptor, ByteView bytes) {
    while (!bytes.empty()) {
        const auto written = ::write(descriptor, bytes.data(), bytes.size());
        if (written < 0 && errno == EINTR)
            continue;
        if (written <= 0)
            return false;
        bytes = bytes.subspan(static_cast<std::size_t>(written));
    }
    return true;
}

Result<void> syncFolderOf(const fs::path &path) {
    const auto folder = path.has_parent_path() ? path.parent_path() : fs::path(".");
    const Descriptor file(folder, O_RDONLY | O_DIRECTORY);
    if (!file.isOpen() || ::fsync(file.number()) != 0)
        return failure(errno, path);
    return {};
}

} // namespace

void protectProcess() {
    const rlimit none{0, 0};
    ::setrlimit(RLIMIT_CORE, &none);
    ::prctl(PR_SET_DUMPABLE, 0, 0, 0, 0);
    ::umask(077);
}

Result<LockFile> LockFile::take(const fs::path &path) {
    const int descriptor = ::open(path.c_str(), O_RDWR | O_CREAT | O_CLOEXEC, 0600);
    if (descriptor < 0)
        return failure(errno, path);
    LockFile lock(descriptor);
    if (::flock(descriptor, LOCK_EX | LOCK_NB) == 0)
        return lock;
    if (errno == EWOULDBLOCK)
        return fail(ErrorCode::Busy, Sentence::tr("These records are already open in another window. Use "
                                                  "that window, or close it and try again."));
    return failure(errno, path);
}

LockFile::LockFile(LockFile &&other) noexcept : m_descriptor(std::exchange(other.m_descriptor, -1)) {}

LockFile &LockFile::operator=(LockFile &&other) noexcept {
    std::swap(m_descriptor, other.m_descriptor);
    return *this;
}

LockFile::~LockFile() {
    if (m_descriptor >= 0)
        ::close(m_descriptor);
}

Result<void> makePrivateFolder(const fs::path &folder) {
    std::error_code problem;
    if (fs::is_directory(folder, problem))
        return {};
    if (!fs::create_directories(folder, problem) && problem)
        return failure(problem.value(), folder);
    fs::permissions(folder, fs::perms::owner_all, problem);
    if (problem)
        return failure(problem.value(), folder);
    return {};
}

Result<Bytes> readStart(const fs::path &path, std::size_t limit) {
    const Descriptor file(path, O_RDONLY);
    if (!file.isOpen())
        return failure(errno, path);
    Bytes bytes(limit);
    std::size_t filled = 0;
    while (filled < limit) {
        const auto got = ::read(file.number(), bytes.data() + filled, limit - filled);
        if (got < 0 && errno == EINTR)
            continue;
        if (got < 0)
            return failure(errno, path);
        if (got == 0)
            break;
        filled += static_cast<std::size_t>(got);
    }
    bytes.resize(filled);
    return bytes;
}

Result<void> writeDurably(const fs::path &path, ByteView bytes) {
    const Descriptor file(path, O_WRONLY | O_CREAT | O_TRUNC);
    if (!file.isOpen() || ::fchmod(file.number(), 0600) != 0 || !writeAll(file.number(), bytes) ||
        ::fsync(file.number()) != 0)
        return failure(errno, path);
    return {};
}

Result<void> overwriteAt(const fs::path &path, std::size_t offset, ByteView bytes) {
    const Descriptor file(path, O_WRONLY);
    if (!file.isOpen() || ::pwrite(file.number(), bytes.data(), bytes.size(), static_cast<off_t>(offset)) !=
                              static_cast<ssize_t>(bytes.size()))
        return failure(errno, path);
    return {};
}

Result<void> renameDurably(const fs::path &from, const fs::path &to) {
    if (::rename(from.c_str(), to.c_str()) != 0)
        return failure(errno, to);
    return syncFolderOf(to);
}

Result<std::uintmax_t> freeSpace(const fs::path &folder) {
    std::error_code problem;
    const auto space = fs::space(folder, problem);
    if (problem)
        return failure(problem.value(), folder);
    return space.available;
}

void endThreadWork() {
    OPENSSL_thread_stop();
}

bool inSameBinary(const void *a, const void *b) {
    Dl_info first{};
    Dl_info second{};
    return ::dladdr(a, &first) != 0 && ::dladdr(b, &second) != 0 && first.dli_fbase == second.dli_fbase;
}

} // namespace model::platform
