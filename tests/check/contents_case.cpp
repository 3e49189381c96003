#include "model/contents.h"
#include <iostream>
#include <nlohmann/json.hpp>

/// Reads contents lines as the program does: one JSON object a line, answered in order.
namespace {

using nlohmann::json;

json errorOf(const std::string &sentence) {
    return {{"error", sentence}};
}

json thingOf(const model::ContentsItem &item) {
    const model::Thing &thing = item.thing;
    const bool said = thing.usesPerWeek && !thing.usual.contains("uses");
    return {{"name", thing.name},
            {"count", thing.count ? json(*thing.count) : json()},
            {"uses_per_week", said ? json(*thing.usesPerWeek) : json()},
            {"facts", item.facts},
            {"match", item.matched.empty() ? json() : json(item.matched)},
            {"doubt", item.doubt}};
}

json answerTo(const std::string &text) {
    const json asked = json::parse(text, nullptr, false);
    if (!asked.is_object())
        return errorOf("Not a JSON object. For example {\"line\": \"4 chopped tomatoes, rice daily\"}.");
    if (!asked.contains("line") || !asked["line"].is_string())
        return errorOf("The field \"line\" is missing or no text.");
    const auto items = model::parseContents(asked["line"].get<std::string>());
    if (!items)
        return errorOf(items.error().sentence);
    json things = json::array();
    for (const auto &item : *items)
        things.push_back(thingOf(item));
    return {{"things", things}};
}

} // namespace

int main(int argc, char ** /*argv*/) {
    if (argc > 1) {
        std::cerr << "contents_case: no arguments; one JSON object a line on standard input\n";
        return 2;
    }
    std::string text;
    while (std::getline(std::cin, text)) {
        if (!text.empty())
            std::cout << answerTo(text).dump(-1, ' ', false, json::error_handler_t::replace) << std::endl;
    }
    return 0;
}
