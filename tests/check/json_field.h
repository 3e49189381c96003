#pragma once
#include <cstdint>
#include <nlohmann/json.hpp>
#include <stdexcept>
#include <string>
#include <vector>

/// Reading the files of the check programs. Exceptions here, not Result: a reader of fifty fields that all
/// end in the same place, one line on stderr and exit 2.
namespace check {

/// "file: field: reason", one line.
class BadInput : public std::runtime_error {
public:
    using std::runtime_error::runtime_error;
};

/// A value in a JSON file that knows where it stands, so that a complaint can name it.
class Field {
public:
    Field(const nlohmann::json &value, std::string file, std::string path);

    [[nodiscard]] Field at(const std::string &name) const; // of an object; missing is bad input
    [[nodiscard]] bool has(const std::string &name) const;
    [[nodiscard]] std::vector<Field> list() const;
    [[nodiscard]] std::vector<std::string> names() const; // of an object

    [[nodiscard]] double number(double least, double most) const;
    [[nodiscard]] double positive(double most) const; // over 0
    [[nodiscard]] std::int64_t integer(std::int64_t least, std::int64_t most) const;
    [[nodiscard]] bool boolean() const;
    [[nodiscard]] std::string text() const; // not empty
    [[nodiscard]] std::string oneOf(const std::vector<std::string> &allowed) const;

    [[noreturn]] void refuse(const std::string &reason) const;

private:
    const nlohmann::json *m_value;
    std::string m_file, m_path;
};

/// The whole file as JSON; bad input if it cannot be read or is no JSON object.
[[nodiscard]] nlohmann::json readJson(const std::string &file);

} // namespace check
