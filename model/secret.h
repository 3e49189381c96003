#pragma once
#include "model/bytes.h"
#include "model/result.h"
#include <string_view>

namespace model {

/// Readies the cryptographic library; every function here may be called from any thread after it. Throws
/// std::runtime_error if the system has no random numbers.
void readyCrypto();

/// Bytes in memory that is never swapped out, lies between guard pages, cannot even be read between uses, and
/// is wiped at the end. Move-only. A read or write must not be nested in another one of the same object.
class SecretBytes {
public:
    explicit SecretBytes(std::size_t size); // throws std::bad_alloc
    [[nodiscard]] static SecretBytes random(std::size_t size);
    [[nodiscard]] static SecretBytes copyOf(ByteView bytes);
    SecretBytes(SecretBytes &&other) noexcept;
    SecretBytes &operator=(SecretBytes &&other) noexcept;
    ~SecretBytes();

    [[nodiscard]] std::size_t size() const { return m_size; }

    template<class F> auto read(F use) const {
        const Opened opened(m_data, Access::Read);
        return use(ByteView(m_data, m_size));
    }
    template<class F> auto write(F use) {
        const Opened opened(m_data, Access::Write);
        return use(std::span<unsigned char>(m_data, m_size));
    }

private:
    enum class Access { Read, Write };
    class Opened {
    public:
        Opened(unsigned char *data, Access access);
        Opened(const Opened &) = delete;
        Opened &operator=(const Opened &) = delete;
        ~Opened();

    private:
        unsigned char *m_data;
    };
    unsigned char *m_data = nullptr;
    std::size_t m_size = 0;
};

/// Wipes memory in a way that the compiler does not leave out.
void wipe(void *data, std::size_t size);

} // namespace model
