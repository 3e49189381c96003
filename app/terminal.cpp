#include "app/terminal.h"
#include <QStandardPaths>
#include <cstdio>
#include <cstring>
#include <fcntl.h>
#include <termios.h>
#include <unistd.h>

namespace app::terminal {

using model::ErrorCode;
using model::Result;

namespace {

constexpr char interrupt = '\x03'; // Ctrl+C

/// Switches the echo of a terminal off for as long as it lives. Ctrl+C ends the line instead of the program,
/// which would leave the terminal silent.
class SilentTyping {
public:
    explicit SilentTyping(int descriptor) : m_descriptor(descriptor) {
        tcgetattr(m_descriptor, &m_before);
        termios silent = m_before;
        silent.c_lflag &= ~static_cast<tcflag_t>(ECHO | ISIG);
        silent.c_cc[VEOL] = interrupt;
        tcsetattr(m_descriptor, TCSAFLUSH, &silent);
    }
    ~SilentTyping() { tcsetattr(m_descriptor, TCSAFLUSH, &m_before); }
    SilentTyping(const SilentTyping &) = delete;
    SilentTyping &operator=(const SilentTyping &) = delete;

private:
    int m_descriptor;
    termios m_before{};
};

/// Unbuffered, so that no copy of a secret stays behind in a stream.
std::string readLine(int descriptor) {
    std::string line;
    line.reserve(1100);
    for (char c = 0; c != interrupt && read(descriptor, &c, 1) == 1 && c != '\n';)
        line += c;
    if (!line.empty() && line.back() == '\r')
        line.pop_back();
    return line;
}

} // namespace

std::filesystem::path defaultStore() {
    return (QStandardPaths::writableLocation(QStandardPaths::GenericDataLocation) + "/feltmark")
        .toStdString();
}

Result<std::string> askSecret(const std::string &prompt) {
    const int terminal = open("/dev/tty", O_RDWR | O_CLOEXEC);
    if (terminal < 0)
        return model::fail(ErrorCode::Missing,
                           "There is no terminal to ask for the passphrase. Give a file with "
                           "--passphrase-file.");
    std::string secret;
    {
        const SilentTyping silent(terminal);
        dprintf(terminal, "%s", prompt.c_str());
        secret = readLine(terminal);
        dprintf(terminal, "\n");
    }
    close(terminal);
    if (!secret.empty() && secret.back() == interrupt) {
        wipe(secret);
        return model::fail(ErrorCode::Refused, "Stopped.");
    }
    return secret;
}

Result<std::string> readSecret(const std::filesystem::path &path) {
    const int file = open(path.c_str(), O_RDONLY | O_CLOEXEC);
    if (file < 0)
        return model::fail(ErrorCode::Missing, "The passphrase file " + path.string() + " cannot be read.");
    std::string secret = readLine(file);
    close(file);
    return secret;
}

void wipe(std::string &secret) {
    explicit_bzero(secret.data(), secret.size());
    secret.clear();
}

} // namespace app::terminal
