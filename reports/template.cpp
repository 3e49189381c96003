#include "reports/template.h"
#include "reports/markdown.h"
#include <QFile>
#include <kainjow/mustache.hpp>
#include <set>

namespace reports {

using model::ErrorCode;
using model::fail;
using model::Result;
namespace mustache = kainjow::mustache;

namespace {

mustache::data dataOf(const Fields &fields);

mustache::data dataOf(const Field &field) {
    if (const auto *text = std::get_if<std::string>(&field))
        return mustache::data{*text};
    if (const auto *on = std::get_if<bool>(&field))
        return mustache::data{*on};
    mustache::data list{mustache::data::type::list};
    for (const Fields &group : std::get<std::vector<Fields>>(field))
        list.push_back(dataOf(group));
    return list;
}

mustache::data dataOf(const Fields &fields) {
    mustache::data object{mustache::data::type::object};
    for (const auto &[name, field] : fields.named)
        object.set(name, dataOf(field));
    return object;
}

/// Remembers the fields that a template asked for and did not get; the library itself writes nothing for
/// them.
class Asked : public mustache::context<std::string> {
public:
    using context::context;
    const mustache::data *get(const std::string &name) const override {
        const mustache::data *found = context::get(name);
        if (found == nullptr)
            missing.insert(name);
        return found;
    }
    mutable std::set<std::string> missing;
};

std::string listOf(const std::set<std::string> &names) {
    std::string list;
    for (const std::string &name : names)
        list += (list.empty() ? "\"" : ", \"") + name + "\"";
    return list;
}

} // namespace

Result<Document> fillText(const std::string &text, const std::string &name, const Fields &fields,
                          const std::map<std::string, Figure> &figures) {
    const std::string about = "The template \"" + name + "\" cannot be used. ";
    if (text.find("{{{") != std::string::npos || text.find("{{&") != std::string::npos)
        return fail(ErrorCode::NotUnderstood, about + "It takes over a field without escaping it.");
    mustache::mustache reading(text);
    if (!reading.is_valid())
        return fail(ErrorCode::NotUnderstood, about + reading.error_message());
    reading.set_custom_escape(escapedForMarkdown);
    const mustache::data data = dataOf(fields);
    Asked asked(&data);
    const std::string markdown = reading.render(asked);
    if (!asked.missing.empty())
        return fail(ErrorCode::Missing,
                    about + "It asks for fields that are not there: " + listOf(asked.missing) + ".");
    return readMarkdown(markdown, figures).map_error([&](model::Error error) {
        error.sentence = about + error.sentence;
        return error;
    });
}

Result<Document> fillTemplate(const std::string &name, const Fields &fields,
                              const std::map<std::string, Figure> &figures) {
    QFile file(QStringLiteral(":/templates/") + QString::fromStdString(name) + QStringLiteral(".md"));
    if (!file.open(QIODevice::ReadOnly))
        return fail(ErrorCode::Missing, "The template \"" + name + "\" is not in this program.");
    return fillText(file.readAll().toStdString(), name, fields, figures);
}

} // namespace reports
