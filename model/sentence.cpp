#include "model/sentence.h"
#include <atomic>
#include <utility>

namespace model {
namespace {

std::atomic<Sentence::Translation> translation = nullptr;
thread_local bool asWritten = false;

std::string withValues(std::string_view sentence, std::initializer_list<std::string_view> values) {
    std::string out;
    out.reserve(sentence.size() + 32 * values.size());
    std::size_t done = 0;
    if (values.size() > 0)
        for (auto at = sentence.find('{'); at != std::string_view::npos; at = sentence.find('{', at + 1)) {
            if (at + 2 >= sentence.size() || sentence[at + 2] != '}')
                continue;
            const auto number = static_cast<std::size_t>(sentence[at + 1] - '1');
            if (number >= values.size())
                continue;
            out += sentence.substr(done, at - done);
            out += *(values.begin() + number);
            done = at + 3;
        }
    out += sentence.substr(done);
    return out;
}

} // namespace

std::string Sentence::tr(std::string_view sentence, std::initializer_list<std::string_view> values) {
    if (const Translation into = translation.load(std::memory_order_acquire); into && !asWritten)
        return withValues(into(sentence), values);
    return withValues(sentence, values);
}

void Sentence::sayBy(Translation into) {
    translation.store(into, std::memory_order_release);
}

AsWritten::AsWritten() : m_before(std::exchange(asWritten, true)) {}

AsWritten::~AsWritten() {
    asWritten = m_before;
}

} // namespace model
