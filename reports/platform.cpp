#include "reports/platform.h"
#include "reports/writers.h"
#include <cerrno>
#include <cstdlib>
#include <dlfcn.h>
#include <fcntl.h>
#include <sys/stat.h>
#include <system_error>
#include <unistd.h>

namespace reports {

using model::ErrorCode;
using model::fail;
namespace fs = std::filesystem;

namespace {

/// A new file beside the target, gone again unless it was renamed.
class Beside {
public:
    explicit Beside(const fs::path &target)
        : m_path((target.parent_path() / ".feltmark-").string() + std::string(6, 'X')) {
        m_file = ::mkostemp(m_path.data(), O_CLOEXEC);
        m_error = m_file < 0 ? errno : 0;
        m_left = m_file >= 0;
    }
    Beside(const Beside &) = delete;
    Beside &operator=(const Beside &) = delete;
    ~Beside() {
        close();
        if (m_left)
            ::unlink(m_path.c_str());
    }

    void write(std::string_view bytes) {
        while (m_error == 0 && !bytes.empty()) {
            const ssize_t count = ::write(m_file, bytes.data(), bytes.size());
            if (count >= 0)
                bytes.remove_prefix(std::size_t(count));
            else if (errno != EINTR)
                m_error = errno;
        }
        check(m_error != 0 ? 0 : ::fsync(m_file));
        close();
    }
    void renameTo(const fs::path &target) {
        if (m_error == 0)
            check(::rename(m_path.c_str(), target.c_str()));
        m_left = m_left && m_error != 0;
    }
    [[nodiscard]] int error() const { return m_error; }

private:
    void check(int answer) {
        if (answer != 0 && m_error == 0)
            m_error = errno;
    }
    void close() {
        if (m_file >= 0)
            check(::close(m_file));
        m_file = -1;
    }

    std::string m_path; // mkostemp makes it readable by the owner only
    int m_file = -1;
    int m_error = 0;
    bool m_left = false;
};

void flushFolder(const fs::path &folder) {
    const int file = ::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    if (file < 0)
        return;
    ::fsync(file);
    ::close(file);
}

} // namespace

void *fromLibrary(const char *library, const char *function) {
    std::error_code none;
    const fs::path programs = fs::read_symlink("/proc/self/exe", none).parent_path();
    for (const fs::path &folder : {programs.parent_path(), programs.parent_path().parent_path()})
        if (const fs::path file = folder / "lib/feltmark" / library; fs::exists(file, none)) {
            void *loaded = ::dlopen(file.c_str(), RTLD_NOW | RTLD_LOCAL | RTLD_NODELETE);
            return loaded ? ::dlsym(loaded, function) : nullptr;
        }
    return nullptr;
}

model::Error fileError(int error, const fs::path &path) {
    const std::string what = "\"" + path.string() + "\" was not written: ";
    switch (error) {
    case EACCES:
    case EPERM:
    case EROFS:
        return {ErrorCode::ReadOnly, what + "this folder is read-only for you. Choose another folder."};
    case ENOSPC:
    case EDQUOT:
    case EFBIG:
        return {ErrorCode::Full, what + "the disk is full. Make room or choose another folder."};
    case ENOENT:
    case ENOTDIR:
        return {ErrorCode::InputOutput, what + "the folder is not there. Make it or choose another folder."};
    case ENAMETOOLONG:
        return {ErrorCode::InputOutput, what + "the name is too long. Choose a shorter one."};
    default:
        return {ErrorCode::InputOutput,
                what + std::generic_category().message(error) + ". Choose another folder and try again."};
    }
}

Result<void> writeFile(const fs::path &path, const std::string &bytes) {
    const fs::path target = path.has_parent_path() ? path : fs::path(".") / path;
    std::error_code ignored;
    if (fs::is_directory(target, ignored))
        return fail(ErrorCode::InputOutput,
                    "\"" + path.string() + "\" is a folder. Give the name of a file in it.");
    Beside beside(target);
    beside.write(bytes);
    beside.renameTo(target);
    if (beside.error() != 0)
        return tl::unexpected(fileError(beside.error(), path));
    flushFolder(target.parent_path());
    return {};
}

} // namespace reports
