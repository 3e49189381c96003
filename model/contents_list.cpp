#include "model/contents_change.h"
#include "model/contents_text.h"
#include "model/contents_words.h"
#include "model/sentence.h"
#include <algorithm>
#include <map>

namespace model {
namespace {

std::vector<std::string> linesOf(const std::string &text) {
    std::vector<std::string> lines(1);
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (text[i] == '\n' || text[i] == '\r') {
            i += text[i] == '\r' && i + 1 < text.size() && text[i + 1] == '\n' ? 1 : 0;
            lines.emplace_back();
        } else {
            lines.back() += text[i];
        }
    }
    return lines;
}

/// Cells of a table's row; a cell in quotation marks may hold the separator.
std::vector<std::string> cellsOf(const std::string &line, char separator) {
    std::vector<std::string> cells(1);
    bool quoted = false;
    for (const char c : line) {
        if (c == '"')
            quoted = !quoted;
        else if (c == separator && !quoted)
            cells.emplace_back();
        else
            cells.back() += c;
    }
    for (auto &cell : cells)
        cell = words::trimmed(cell);
    return cells;
}

enum class Column { Name, Count, Size, Use, Place, Note, Other };

Column columnFrom(const std::string &cell) {
    static const std::map<std::string, Column> names{
        {"name", Column::Name},      {"thing", Column::Name},     {"item", Column::Name},
        {"product", Column::Name},   {"what", Column::Name},      {"count", Column::Count},
        {"number", Column::Count},   {"how many", Column::Count}, {"quantity", Column::Count},
        {"qty", Column::Count},      {"size", Column::Size},      {"pack", Column::Size},
        {"pack size", Column::Size}, {"use", Column::Use},        {"how often", Column::Use},
        {"used", Column::Use},       {"frequency", Column::Use},  {"place", Column::Place},
        {"where", Column::Place},    {"shelf", Column::Place},    {"location", Column::Place},
        {"note", Column::Note},      {"comment", Column::Note},   {"facts", Column::Other}};
    const auto found = names.find(words::comparable(cell));
    return found == names.end() ? Column::Other : found->second;
}

struct Table {
    char separator = ',';
    std::vector<Column> columns; // empty: no table
};

Table tableOf(const std::string &first) {
    for (const char separator : {'\t', ';', ','}) {
        Table table{separator, {}};
        for (const auto &cell : cellsOf(first, separator))
            table.columns.push_back(columnFrom(cell));
        const bool named = std::count(table.columns.begin(), table.columns.end(), Column::Name) == 1;
        const auto known = std::count_if(table.columns.begin(), table.columns.end(),
                                         [](Column column) { return column != Column::Other; });
        if (named && known >= 2 && table.columns.size() >= 2)
            return table;
    }
    return {',', {}};
}

std::string quotedIfNeeded(const std::string &name) {
    return name.find_first_of(",;()") == std::string::npos ? name : "\"" + name + "\"";
}

/// A row of the table as a line of contents; sets its place.
std::string lineOfRow(const Table &table, const std::string &text, ListedLine &listed) {
    const auto cells = cellsOf(text, table.separator);
    std::map<Column, std::string> said;
    for (std::size_t i = 0; i < std::min(cells.size(), table.columns.size()); ++i)
        said[table.columns[i]] = cells[i];
    listed.place = said[Column::Place];
    if (said[Column::Name].empty()) {
        listed.problem = Sentence::tr("no name in it");
        return {};
    }
    if (cells.size() > table.columns.size())
        listed.problem = Sentence::tr("it has {1} cells, the table has {2} columns",
                                      {std::to_string(cells.size()), std::to_string(table.columns.size())});
    const std::string count = said[Column::Count];
    if (!count.empty() && !words::numberFrom(words::lower(count)))
        listed.problem = Sentence::tr("not a count: {1}", {count});
    std::string line = listed.problem.empty() ? count : "";
    for (const Column column : {Column::Size, Column::Name, Column::Use}) {
        const std::string &cell = column == Column::Name ? quotedIfNeeded(said[column]) : said[column];
        const bool bareUse = column == Column::Use && words::numberFrom(words::lower(cell));
        if (!cell.empty())
            line += (line.empty() ? "" : " ") + cell + (bareUse ? "/week" : "");
    }
    return said[Column::Note].empty() ? line : line + " (note " + said[Column::Note] + ")";
}

/// Without a bullet or a number of the list: "- rice", "3. rice", "3) rice".
std::string withoutBullet(const std::string &text) {
    std::string line = words::trimmed(text);
    const auto digits = line.find_first_not_of("0123456789");
    const bool numbered = digits != std::string::npos && digits > 0 && digits + 1 < line.size() &&
                          (line[digits] == '.' || line[digits] == ')') && line[digits + 1] == ' ';
    if (numbered)
        line.erase(0, digits + 1);
    else if (line.starts_with("- ") || line.starts_with("* ") || line.starts_with("+ "))
        line.erase(0, 2);
    return words::trimmed(line);
}

void read(ListedLine &listed, const std::string &line, const Lexicon &lexicon) {
    if (line.empty())
        return;
    auto items = parseContents(line, lexicon);
    if (items)
        listed.items = std::move(*items);
    else
        listed.problem = Sentence::tr("nothing in it that could stand on a shelf");
}

} // namespace

std::vector<ListedLine> readList(const std::string &text, const Lexicon &lexicon) {
    std::vector<ListedLine> out;
    std::string place;
    Table table;
    int number = 0;
    for (const auto &raw : linesOf(words::cleaned(text))) {
        ++number;
        const std::string line = withoutBullet(raw);
        if (line.empty())
            continue;
        if (out.empty() && place.empty() && table.columns.empty()) {
            table = tableOf(words::trimmed(raw));
            if (!table.columns.empty())
                continue;
        }
        if (table.columns.empty() && line.back() == ':') {
            place = words::trimmed(line.substr(0, line.size() - 1));
            continue;
        }
        ListedLine listed{.number = number, .text = line, .place = place, .items = {}, .problem = {}};
        if (table.columns.empty())
            read(listed, line, lexicon);
        else
            read(listed, lineOfRow(table, words::trimmed(raw), listed), lexicon);
        if (!listed.problem.empty())
            listed.problem = "Line " + std::to_string(number) + ": " + listed.problem + ".";
        out.push_back(std::move(listed));
    }
    return out;
}

} // namespace model
