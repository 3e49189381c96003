#include "reports/prepare.h"
#include "model/date.h"
#include "reports/utf8.h"
#include <algorithm>
#include <cctype>

namespace reports {

using model::ErrorCode;
using model::fail;
using model::Result;

namespace {

bool isBlank(char c) {
    return c == ' ' || c == '\t' || c == '\n' || c == '\r';
}

bool isControl(char c) {
    return (static_cast<unsigned char>(c) < 0x20 && !isBlank(c)) || c == 0x7f;
}

void replaceAll(std::string &text, std::string_view from, std::string_view to) {
    for (std::size_t place = 0; (place = text.find(from, place)) != std::string::npos; place += to.size())
        text.replace(place, from.size(), to);
}

/// Line and paragraph separators are white space too; soft hyphens and byte order marks are nothing.
std::string withoutSpecials(std::string text) {
    for (const std::string_view separator : {"\u0085", "\u2028", "\u2029"})
        replaceAll(text, separator, " ");
    for (const std::string_view nothing : {"\u00ad", "\ufeff"})
        replaceAll(text, nothing, "");
    return text;
}

/// Makes every run of white space one blank, across runs, and takes it off both ends.
Text collapsed(const Text &text) {
    Text tidy;
    bool blankBefore = true;
    for (const Run &run : text) {
        Run kept = run;
        kept.text.clear();
        for (const char c : withoutSpecials(run.text)) {
            const bool blank = isBlank(c);
            if (!blank)
                kept.text += c;
            else if (!blankBefore)
                kept.text += ' ';
            blankBefore = blank;
        }
        if (!kept.text.empty())
            tidy.push_back(std::move(kept));
    }
    while (!tidy.empty() && tidy.back().text.back() == ' ') {
        tidy.back().text.pop_back();
        if (tidy.back().text.empty())
            tidy.pop_back();
    }
    return tidy;
}

std::string collapsed(const std::string &words) {
    return joined(collapsed(plain(words)));
}

Text withAddresses(const Text &text) {
    Text spelled;
    for (const Run &run : text) {
        spelled.push_back(run);
        const std::string address = spelledAddress(run.link);
        if (!address.empty() && run.text != address && run.text != run.link)
            spelled.push_back({" (" + address + ")", "", false, ""});
    }
    return spelled;
}

class Preparing {
public:
    explicit Preparing(Links links) : m_links(links) {}

    Result<void> add(const Block &block) {
        return std::visit([this](const auto &one) { return take(one); }, block);
    }
    std::vector<Block> blocks;

private:
    Text words(const Text &text) const {
        return collapsed(m_links == Links::Spelled ? withAddresses(text) : text);
    }

    Result<void> take(const Heading &heading) {
        if (heading.level < 1 || heading.level > std::min(m_level + 1, 6))
            return fail(ErrorCode::OutOfRange, "The heading \"" + joined(heading.text) + "\" has level " +
                                                   std::to_string(heading.level) +
                                                   " below a heading of level " + std::to_string(m_level) +
                                                   ". Levels may not be skipped.");
        const Text text = words(heading.text);
        if (text.empty())
            return {};
        m_level = heading.level;
        blocks.emplace_back(Heading{heading.level, text});
        return {};
    }
    Result<void> take(const Paragraph &paragraph) {
        if (const Text text = words(paragraph.text); !text.empty())
            blocks.emplace_back(Paragraph{text, paragraph.points});
        return {};
    }
    Result<void> take(const Steps &steps) {
        Steps kept{{}, steps.numbered};
        for (const Text &item : steps.items)
            if (const Text text = words(item); !text.empty())
                kept.items.push_back(text);
        if (!kept.items.empty())
            blocks.emplace_back(kept);
        return {};
    }
    Result<void> take(const Table &table) {
        Table kept{collapsed(table.caption), {}, {}};
        for (const std::string &column : table.columns)
            kept.columns.push_back(collapsed(column));
        for (const std::vector<Text> &row : table.rows) {
            if (row.size() != table.columns.size())
                return fail(ErrorCode::OutOfRange, "A table has " + std::to_string(table.columns.size()) +
                                                       " columns and a row of " + std::to_string(row.size()) +
                                                       " cells. Every row needs a cell for every column.");
            std::vector<Text> cells;
            for (const Text &cell : row)
                cells.push_back(words(cell));
            if (std::any_of(cells.begin(), cells.end(), [](const Text &cell) { return !cell.empty(); }))
                kept.rows.push_back(std::move(cells));
        }
        if (!kept.rows.empty() || !kept.caption.empty())
            blocks.emplace_back(kept);
        return {};
    }
    Result<void> take(const Figure &figure) {
        Figure kept = figure;
        kept.words = collapsed(figure.words);
        for (Figure::Box &box : kept.boxes)
            box.label = collapsed(box.label);
        if (!kept.words.empty() || !kept.boxes.empty())
            blocks.emplace_back(kept);
        return {};
    }
    Result<void> take(const CautionBlock &caution) {
        if (const Text text = words(caution.text); !text.empty())
            blocks.emplace_back(CautionBlock{text});
        return {};
    }

    Links m_links;
    int m_level = 0;
};

/// Every piece of text in the document, joined; only to look for what cannot be written.
struct AllText {
    std::string text;
    std::vector<std::string> languages;
    void add(const std::string &words) { text += words + '\n'; }
    void add(const Text &words) {
        for (const Run &run : words) {
            add(run.text + run.link);
            if (!run.language.empty())
                languages.push_back(run.language);
        }
    }
    void operator()(const Heading &block) { add(block.text); }
    void operator()(const Paragraph &block) { add(block.text); }
    void operator()(const Steps &block) {
        for (const Text &item : block.items)
            add(item);
    }
    void operator()(const Table &block) {
        add(block.caption);
        for (const std::string &column : block.columns)
            add(column);
        for (const std::vector<Text> &row : block.rows)
            for (const Text &cell : row)
                add(cell);
    }
    void operator()(const Figure &block) {
        add(block.words);
        for (const Figure::Box &box : block.boxes)
            add(box.label);
    }
    void operator()(const CautionBlock &block) { add(block.text); }
};

/// Letters and digits in groups of one to eight, as BCP 47 (RFC 5646, section 2.1) asks; not whether it is
/// registered.
bool isLanguage(const std::string &tag) {
    std::size_t length = 0;
    for (const char c : tag + '-') {
        if (c == '-' ? length == 0 || length > 8 : std::isalnum(static_cast<unsigned char>(c)) == 0)
            return false;
        length = c == '-' ? 0 : length + 1;
    }
    return std::isalpha(static_cast<unsigned char>(tag.front())) != 0;
}

Result<void> wellDescribed(const Document &document, const std::vector<std::string> &languages) {
    for (const std::string &language : languages)
        if (!isLanguage(language))
            return fail(ErrorCode::NotUnderstood,
                        "\"" + language + "\" is no language. Write it as en-GB or cy.");
    const auto date = model::parseDate(document.date);
    if (!document.date.empty() && !(date && model::isoDate(*date) == document.date))
        return fail(ErrorCode::NotUnderstood,
                    "\"" + document.date + "\" is no date. Write it as 2026-11-25.");
    return {};
}

Result<void> readable(const Document &document) {
    AllText all;
    all.add(document.title + document.date + document.author);
    all.languages.push_back(document.language);
    for (const Block &block : document.blocks)
        std::visit(all, block);
    if (!isUtf8(all.text))
        return fail(ErrorCode::NotUnderstood, "The text is not in UTF-8. Save it as UTF-8 and try again.");
    std::u32string controls;
    std::copy_if(all.text.begin(), all.text.end(), std::back_inserter(controls), isControl);
    if (!controls.empty())
        return fail(ErrorCode::NotUnderstood, "The text holds control characters that no paper can show: " +
                                                  named(controls) + ". Take them out and try again.");
    return wellDescribed(document, all.languages);
}

std::string firstWords(const Document &document) {
    for (const Block &block : document.blocks)
        if (const auto *heading = std::get_if<Heading>(&block))
            return joined(heading->text);
    AllText all;
    std::visit(all, document.blocks.front());
    const std::u32string words = codePoints(collapsed(all.text));
    return toUtf8(std::u32string_view(words).substr(0, 60));
}

} // namespace

Result<Document> prepared(const Document &document, Links links) {
    if (auto good = readable(document); !good)
        return tl::unexpected(good.error());
    Preparing preparing(links);
    for (const Block &block : document.blocks)
        if (auto added = preparing.add(block); !added)
            return tl::unexpected(added.error());
    if (preparing.blocks.empty())
        return fail(ErrorCode::Missing, "There are no words in this document, so nothing was written.");
    Document ready = document;
    ready.blocks = std::move(preparing.blocks);
    ready.title = collapsed(document.title);
    if (ready.title.empty())
        ready.title = firstWords(ready);
    return ready;
}

std::string spelledAddress(const std::string &link) {
    constexpr std::string_view mail = "mailto:";
    return link.starts_with(mail) ? link.substr(mail.size()) : link;
}

} // namespace reports
