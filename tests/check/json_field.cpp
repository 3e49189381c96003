#include "tests/check/json_field.h"
#include <algorithm>
#include <cmath>
#include <filesystem>
#include <fstream>
#include <limits>
#include <set>
#include <sstream>

namespace check {
namespace {

std::string shown(double number) {
    std::ostringstream text;
    text << number;
    return text.str();
}

std::string joined(const std::vector<std::string> &words) {
    std::string all;
    for (const std::string &word : words)
        all += (all.empty() ? "" : ", ") + word;
    return all;
}

/// "line 2, sign 7" of the byte, counted from 1, at which reading ended.
std::string positionOf(const std::string &text, std::size_t byte) {
    const std::string read = text.substr(0, byte > 0 ? byte - 1 : 0);
    const auto line = std::count(read.begin(), read.end(), '\n') + 1;
    const auto start = read.rfind('\n');
    const std::size_t sign = read.size() - (start == std::string::npos ? 0 : start + 1) + 1;
    return "line " + std::to_string(line) + ", sign " + std::to_string(sign);
}

std::string oneLine(std::string text) {
    for (char &letter : text)
        if (static_cast<unsigned char>(letter) < ' ')
            letter = ' ';
    return text;
}

} // namespace

Field::Field(const nlohmann::json &value, std::string file, std::string path)
    : m_value(&value), m_file(std::move(file)), m_path(std::move(path)) {}

void Field::refuse(const std::string &reason) const {
    throw BadInput(oneLine(m_file + ": " + (m_path.empty() ? "the file" : m_path) + ": " + reason));
}

bool Field::has(const std::string &name) const {
    return m_value->is_object() && m_value->contains(name);
}

Field Field::at(const std::string &name) const {
    if (!m_value->is_object())
        refuse("must be an object {...}");
    const Field inner(*m_value, m_file, m_path.empty() ? name : m_path + "." + name);
    if (!m_value->contains(name))
        inner.refuse("is missing");
    return {m_value->at(name), m_file, inner.m_path};
}

std::vector<Field> Field::list() const {
    if (!m_value->is_array())
        refuse("must be a list [...]");
    std::vector<Field> fields;
    for (std::size_t k = 0; k < m_value->size(); ++k)
        fields.emplace_back((*m_value)[k], m_file, m_path + "[" + std::to_string(k) + "]");
    return fields;
}

std::vector<std::string> Field::names() const {
    if (!m_value->is_object())
        refuse("must be an object {...}");
    std::vector<std::string> all;
    for (const auto &[name, value] : m_value->items())
        all.push_back(name);
    return all;
}

double Field::number(double least, double most) const {
    if (!m_value->is_number())
        refuse("must be a number");
    const double number = m_value->get<double>();
    if (!std::isfinite(number))
        refuse("must be a finite number");
    if (number < least || number > most)
        refuse("is " + shown(number) + ", must be from " + shown(least) + " to " + shown(most));
    return number;
}

double Field::positive(double most) const {
    const double value = number(-std::numeric_limits<double>::max(), std::numeric_limits<double>::max());
    if (value <= 0)
        refuse("is " + shown(value) + ", must be over 0");
    if (value > most)
        refuse("is " + shown(value) + ", must be over 0 and at most " + shown(most));
    return value;
}

std::int64_t Field::integer(std::int64_t least, std::int64_t most) const {
    if (!m_value->is_number_integer())
        refuse("must be a whole number");
    const bool tooBig = m_value->is_number_unsigned() && m_value->get<std::uint64_t>() > INT64_MAX;
    const std::int64_t number = tooBig ? INT64_MAX : m_value->get<std::int64_t>();
    if (tooBig || number < least || number > most)
        refuse("is " + m_value->dump() + ", must be from " + std::to_string(least) + " to " +
               std::to_string(most));
    return number;
}

bool Field::boolean() const {
    if (!m_value->is_boolean())
        refuse("must be true or false");
    return m_value->get<bool>();
}

std::string Field::text() const {
    if (!m_value->is_string())
        refuse("must be a text in quotes");
    if (m_value->get_ref<const std::string &>().empty())
        refuse("is empty");
    return m_value->get<std::string>();
}

std::string Field::oneOf(const std::vector<std::string> &allowed) const {
    const std::string word = text();
    for (const std::string &one : allowed)
        if (one == word)
            return word;
    refuse("is \"" + word + "\", must be one of: " + joined(allowed));
}

namespace {

/// Of two equal keys in one object the later would win in silence; it is refused instead.
nlohmann::json parsedOnce(const std::string &text, const Field &whole) {
    using Event = nlohmann::json::parse_event_t;
    std::vector<std::set<std::string>> keys;
    const auto watch = [&](int /*depth*/, Event event, nlohmann::json &value) {
        if (event == Event::object_start)
            keys.emplace_back();
        else if (event == Event::object_end)
            keys.pop_back();
        else if (event == Event::key && !keys.back().insert(value.get<std::string>()).second)
            whole.refuse("the key \"" + value.get<std::string>() + "\" is there twice in one object");
        return true;
    };
    return nlohmann::json::parse(text, watch);
}

} // namespace

nlohmann::json readJson(const std::string &file) {
    const nlohmann::json nothing;
    const Field whole(nothing, file, "");
    std::error_code error;
    if (!std::filesystem::exists(file, error))
        whole.refuse("is not there");
    std::ifstream stream(file, std::ios::binary);
    std::ostringstream text;
    if (!std::filesystem::is_regular_file(file, error) && !std::filesystem::is_fifo(file, error))
        whole.refuse("is not a file");
    if (!stream || !(text << stream.rdbuf()))
        whole.refuse("cannot be read, or is empty");
    try {
        nlohmann::json value = parsedOnce(text.str(), whole);
        if (!value.is_object())
            whole.refuse("must hold one JSON object {...}");
        return value;
    } catch (const nlohmann::json::parse_error &wrong) {
        whole.refuse("is not JSON: it cannot be read from " + positionOf(text.str(), wrong.byte) + " on");
    } catch (const nlohmann::json::exception &) {
        whole.refuse("is not JSON: a number in it is too large");
    }
}

} // namespace check
