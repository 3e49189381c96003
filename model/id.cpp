#include "model/id.h"
#include <random>

namespace model {

Id newId() {
    static constexpr char digits[] = "0123456789abcdef";
    std::random_device device; // the system's generator, not a seeded sequence
    std::string text;
    text.reserve(32);
    while (text.size() < 32) {
        auto bits = device();
        for (int i = 0; i < 8; ++i, bits >>= 4)
            text += digits[bits & 15U];
    }
    return {text};
}

} // namespace model
