#pragma once
#include <initializer_list>
#include <string>
#include <string_view>

namespace model {

/// What the program says, in the language of the window.
///
/// Only what is shown goes through here: no key of a record, no word that is read back. With the attribute
/// lupdate does not see the class, and its name is the context everywhere.
struct [[maybe_unused]] Sentence {
    /// The sentence with `values` in place of {1}, {2} ... A translation may put them anywhere.
    [[nodiscard]] static std::string tr(std::string_view sentence,
                                        std::initializer_list<std::string_view> values = {});
    /// Names a sentence of a table for the translator; tr() is asked when it is said.
    [[nodiscard]] static consteval const char *later(const char *sentence) { return sentence; }

    /// A sentence in another language; as it came in if there is none. Called from every thread.
    using Translation = std::string (*)(std::string_view sentence);
    /// From now on sentences are said by it; nullptr: as they are written.
    static void sayBy(Translation translation);
};

/// While it lives, this thread says sentences as they are written: for papers, whose language is English.
class AsWritten {
public:
    AsWritten();
    ~AsWritten();
    AsWritten(const AsWritten &) = delete;
    AsWritten &operator=(const AsWritten &) = delete;

private:
    bool m_before;
};

} // namespace model
