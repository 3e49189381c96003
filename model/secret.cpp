#include "model/secret.h"
#include <algorithm>
#include <new>
#include <sodium.h>
#include <stdexcept>
#include <utility>

namespace model {

void readyCrypto() {
    if (sodium_init() < 0)
        throw std::runtime_error("no random numbers");
}

SecretBytes::SecretBytes(std::size_t size) {
    readyCrypto();
    m_data = static_cast<unsigned char *>(sodium_malloc(size));
    if (m_data == nullptr)
        throw std::bad_alloc();
    m_size = size;
    sodium_memzero(m_data, size);
    sodium_mprotect_noaccess(m_data);
}

SecretBytes SecretBytes::random(std::size_t size) {
    SecretBytes secret(size);
    secret.write([](std::span<unsigned char> bytes) { randombytes_buf(bytes.data(), bytes.size()); });
    return secret;
}

SecretBytes SecretBytes::copyOf(ByteView source) {
    SecretBytes secret(source.size());
    secret.write([&](std::span<unsigned char> bytes) { std::ranges::copy(source, bytes.begin()); });
    return secret;
}

SecretBytes::SecretBytes(SecretBytes &&other) noexcept
    : m_data(std::exchange(other.m_data, nullptr)), m_size(std::exchange(other.m_size, 0)) {}

SecretBytes &SecretBytes::operator=(SecretBytes &&other) noexcept {
    std::swap(m_data, other.m_data);
    std::swap(m_size, other.m_size);
    return *this;
}

SecretBytes::~SecretBytes() {
    sodium_free(m_data); // wipes, and takes a null pointer
}

SecretBytes::Opened::Opened(unsigned char *data, Access access) : m_data(data) {
    if (access == Access::Write)
        sodium_mprotect_readwrite(m_data);
    else
        sodium_mprotect_readonly(m_data);
}

SecretBytes::Opened::~Opened() {
    sodium_mprotect_noaccess(m_data);
}

void wipe(void *data, std::size_t size) {
    sodium_memzero(data, size);
}

} // namespace model
