#pragma once
#include <string>
#include <tl/expected.hpp>

namespace model {

/// What the caller can act on. The sentence says the same to a person.
enum class ErrorCode {
    NotUnderstood, // text that is no value of the wanted kind
    OutOfRange,    // a value that cannot be true, or is not allowed
    Missing,       // something that is needed is not there
    Refused,       // a rule forbids it
    Infeasible,    // no plan exists
    WrongSecret,   // passphrase or recovery code does not open the store
    WeakSecret,    // passphrase that is not accepted
    DamagedKeyFile,
    DamagedDatabase,
    NewerVersion, // written by a newer version of the program
    NotEncrypted, // this build, or this file, cannot keep a secret
    Busy,         // another instance holds the store
    ReadOnly,
    Full, // no space left
    InputOutput,
    Changed, // the record was changed elsewhere
};

/// Why something did not work. `sentence` is whole, says what to do, and holds no client's data except
/// what was just typed into the field that it stands beside.
struct Error {
    ErrorCode code{};
    std::string sentence;
    friend bool operator==(const Error &, const Error &) = default;
};

/// A value or an Error. The only place that names the library; std::expected has the same verbs.
template<class T> using Result = tl::expected<T, Error>;

[[nodiscard]] inline tl::unexpected<Error> fail(ErrorCode code, std::string sentence) {
    return tl::unexpected<Error>(Error{code, std::move(sentence)});
}

} // namespace model
