#pragma once
#include "model/codec_fields.h"
#include "model/codec_words.h"
#include <nlohmann/json.hpp>
#include <stdexcept>
#include <type_traits>

/// JSON from values and values from JSON, field by field. Throws std::runtime_error on what it does not know;
/// codec.cpp catches it.
namespace model::codec {

using Json = nlohmann::json;

[[noreturn]] inline void bad(const std::string &what) {
    throw std::runtime_error(what);
}

template<class E>
concept Enumeration = std::is_enum_v<E>;

template<Enumeration E> Json toJson(E value) {
    return words(E{}).at(static_cast<std::size_t>(value));
}

template<Enumeration E> void fromJson(const Json &json, E &value) {
    const auto list = words(E{});
    for (std::size_t i = 0; i < list.size(); ++i) {
        if (json == list[i]) {
            value = static_cast<E>(i);
            return;
        }
    }
    bad("unknown word");
}

inline Json toJson(Test value) {
    return infoOf(value).key;
}
inline void fromJson(const Json &json, Test &value) {
    for (const auto &info : testInfos()) {
        if (json == info.key) {
            value = info.test;
            return;
        }
    }
    bad("unknown test");
}

template<class T>
concept Plain = std::is_arithmetic_v<T> || std::is_same_v<T, std::string>;

template<Plain T> Json toJson(const T &value) {
    return value;
}
inline void fromJson(const Json &json, std::string &value) {
    value = json.get_ref<const std::string &>();
}
template<Plain T>
requires std::is_arithmetic_v<T>
void fromJson(const Json &json, T &value) {
    const bool fits = std::is_same_v<T, bool>       ? json.is_boolean()
                      : std::is_floating_point_v<T> ? json.is_number()
                                                    : json.is_number_integer();
    if (!fits)
        bad("wrong type");
    value = json.get<T>();
}

inline Json toJson(const Id &value) {
    return value.text;
}
inline void fromJson(const Json &json, Id &value) {
    fromJson(json, value.text);
}

inline Json toJson(const Date &value) {
    return isoDate(value);
}
inline void fromJson(const Json &json, Date &value) {
    const auto date = parseDate(json.get_ref<const std::string &>());
    if (!date)
        bad("not a date");
    value = *date;
}

template<class Tag> Json toJson(const Quantity<Tag> &value) {
    return value.value;
}
template<class Tag> void fromJson(const Json &json, Quantity<Tag> &value) {
    fromJson(json, value.value);
}

class Writer;
class Reader;

template<class T>
concept Part = std::is_class_v<T> && requires(Writer &writer, T &value) {
    fields(writer, value);
};

template<Part T> Json toJson(const T &value);
template<Part T> void fromJson(const Json &json, T &value);

template<class T> Json toJson(const std::optional<T> &value) {
    return value ? toJson(*value) : Json();
}
template<class T> void fromJson(const Json &json, std::optional<T> &value) {
    value.reset();
    if (!json.is_null())
        fromJson(json, value.emplace());
}

template<class List> Json listToJson(const List &list) {
    Json json = Json::array();
    for (const auto &item : list)
        json.push_back(toJson(item));
    return json;
}

template<class T> Json toJson(const std::vector<T> &list) {
    return listToJson(list);
}
template<class T> void fromJson(const Json &json, std::vector<T> &list) {
    list.clear();
    for (const auto &item : json.get_ref<const Json::array_t &>())
        fromJson(item, list.emplace_back());
}

inline Json toJson(const std::set<std::string> &list) {
    return listToJson(list);
}
inline void fromJson(const Json &json, std::set<std::string> &list) {
    list.clear();
    for (const auto &item : json.get_ref<const Json::array_t &>())
        list.insert(item.get_ref<const std::string &>());
}

template<Enumeration E> Json toJson(const std::set<E> &list) {
    return listToJson(list);
}
template<Enumeration E> void fromJson(const Json &json, std::set<E> &list) {
    list.clear();
    for (const auto &item : json.get_ref<const Json::array_t &>()) {
        E value{};
        fromJson(item, value);
        list.insert(value);
    }
}

inline Json toJson(const std::array<std::string, 5> &list) {
    return listToJson(list);
}
inline void fromJson(const Json &json, std::array<std::string, 5> &list) {
    const auto &items = json.get_ref<const Json::array_t &>();
    if (items.size() != list.size())
        bad("wrong number of levels");
    for (std::size_t i = 0; i < list.size(); ++i)
        fromJson(items[i], list[i]);
}

inline Json toJson(const std::map<SafetyQuestion, SafetyAnswer> &answers);
inline void fromJson(const Json &json, std::map<SafetyQuestion, SafetyAnswer> &answers);

class Writer {
public:
    template<class T> void operator()(const char *key, T &value) { m_json[key] = toJson(value); }
    Json json() && { return std::move(m_json); }

private:
    Json m_json = Json::object();
};

class Reader {
public:
    explicit Reader(const Json &json) : m_left(json.get_ref<const Json::object_t &>()) {}
    template<class T> void operator()(const char *key, T &value) {
        if (const auto found = m_left.find(key); found != m_left.end()) {
            fromJson(found->second, value);
            m_left.erase(found);
        }
    }
    void finish() const {
        if (!m_left.empty())
            bad("unknown field " + m_left.begin()->first);
    }

private:
    Json::object_t m_left;
};

template<Part T> Json toJson(const T &value) {
    Writer writer;
    T copy = value; // fields() takes both directions, so it wants a changeable value
    fields(writer, copy);
    return std::move(writer).json();
}

template<Part T> void fromJson(const Json &json, T &value) {
    Reader reader(json);
    fields(reader, value);
    reader.finish();
}

inline Json toJson(const std::map<SafetyQuestion, SafetyAnswer> &answers) {
    Json json = Json::object();
    for (const auto &[question, answer] : answers)
        json[textOf(question).key] = toJson(answer);
    return json;
}

inline void fromJson(const Json &json, std::map<SafetyQuestion, SafetyAnswer> &answers) {
    answers.clear();
    Json::object_t left = json.get_ref<const Json::object_t &>();
    for (const auto &question : safetyQuestions()) {
        if (const auto found = left.find(question.key); found != left.end()) {
            fromJson(found->second, answers[question.question]);
            left.erase(found);
        }
    }
    if (!left.empty())
        bad("unknown question");
}

} // namespace model::codec
