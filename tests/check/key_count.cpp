#include "model/contents.h"
#include "model/contents_words.h"
#include "model/lexicon.h"
#include <cctype>
#include <iomanip>
#include <iostream>

/// Counts the keys of an entry log, one contents line a place on standard input, and those of the same facts
/// typed into a spreadsheet. A capital letter or a bracket is two keys. Exit 1 if a thing takes more than 20
/// keys.
namespace {

using model::Thing;

constexpr int perLine = 1;  // Return
constexpr int perPlace = 2; // Tab, Return on "Next place"
constexpr int perDoubt = 2; // F3, Return on the first answer
constexpr double wanted = 20;

int keysOf(const std::string &text) {
    int keys = 0;
    for (const char c : text) {
        const bool shifted =
            std::isupper(static_cast<unsigned char>(c)) != 0 || c == '(' || c == ')' || c == '"' || c == ':';
        const bool continues = (static_cast<unsigned char>(c) & 0xC0U) == 0x80U;
        keys += continues ? 0 : shifted ? 2 : 1;
    }
    return keys;
}

/// A row of cells: the text of each, and one key to the next cell or row.
int rowKeys(const std::vector<std::string> &cells) {
    int keys = 0;
    for (const auto &cell : cells)
        keys += keysOf(cell) + 1;
    return keys;
}

std::string number(const std::optional<double> &value) {
    return value ? model::words::shortNumber(*value) : "";
}
std::string length(const std::optional<model::Length> &value) {
    return value ? model::words::shortNumber(value->value.value) : "";
}

/// Place, thing, count, use a week and what else was said. The place is filled down with two keys.
std::vector<std::string> saidCells(const model::ContentsItem &item) {
    const Thing &thing = item.thing;
    std::string facts;
    for (const auto &fact : item.facts)
        facts += (facts.empty() ? "" : ", ") + fact;
    const bool said = thing.usesPerWeek && !thing.usual.contains("uses");
    return {"xx", thing.name, thing.count ? std::to_string(*thing.count) : "",
            said ? number(thing.usesPerWeek) : "", facts};
}

/// What is recorded as well, from the catalogue: group, kind, three sizes, weight, use, refills, allergens.
std::vector<std::string> usualCells(const Thing &thing) {
    std::string allergens;
    for (const auto &fact : thing.allergens)
        allergens += (allergens.empty() ? "" : ", ") + fact.allergen;
    const std::optional<double> kg = thing.weight ? std::optional(thing.weight->value) : std::nullopt;
    return {thing.group,
            thing.sub,
            length(thing.width),
            length(thing.depth),
            length(thing.height),
            number(kg),
            number(thing.usesPerWeek),
            number(thing.refillsPerWeek),
            allergens};
}

struct Count {
    int places = 0, things = 0, doubts = 0, line = 0, said = 0, all = 0;
};

void add(Count &count, const std::string &line) {
    const auto items = model::parseContents(line);
    if (!items)
        return;
    ++count.places;
    count.line += keysOf(line) + perLine + perPlace;
    for (const auto &item : *items) {
        ++count.things;
        if (!item.doubt.empty()) {
            ++count.doubts;
            count.line += perDoubt;
        }
        count.said += rowKeys(saidCells(item));
        count.all += rowKeys(saidCells(item)) + rowKeys(usualCells(item.thing));
    }
}

void row(const std::string &what, int keys, int things) {
    std::cout << std::left << std::setw(52) << what << std::right << std::setw(7) << keys << std::setw(9)
              << std::fixed << std::setprecision(1) << static_cast<double>(keys) / things << "\n";
}

} // namespace

int main() {
    Count count;
    std::string line;
    while (std::getline(std::cin, line))
        add(count, line);
    if (count.things == 0) {
        std::cerr << "key_count: no contents lines on standard input\n";
        return 2;
    }
    std::cout << count.things << " things on " << count.places << " places, " << count.doubts << " doubts\n";
    std::cout << std::left << std::setw(52) << "" << std::right << std::setw(7) << "keys" << std::setw(9)
              << "a thing"
              << "\n";
    row("contents lines, with the way from place to place", count.line, count.things);
    row("spreadsheet: place, thing, count, use, facts said", count.said, count.things);
    row("spreadsheet: with the facts of the catalogue as well", count.all, count.things);
    const double each = static_cast<double>(count.line) / count.things;
    return each <= wanted && count.line < count.said ? 0 : 1;
}
