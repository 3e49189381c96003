#include "reports/markdown.h"
#include <cctype>
#include <md4c.h>
#include <optional>

namespace reports {

using model::ErrorCode;
using model::fail;
using model::Result;

namespace {

constexpr std::string_view cautionMark = "Caution:";
constexpr std::string_view captionMark = "Table:";

std::string trimmed(std::string_view words) {
    const auto first = words.find_first_not_of(" \t\r\n");
    if (first == std::string_view::npos)
        return {};
    return std::string(words.substr(first, words.find_last_not_of(" \t\r\n") - first + 1));
}

/// Takes `mark` off the front; false if it is not there.
bool takeMark(Text &text, std::string_view mark) {
    if (text.empty() || !text.front().text.starts_with(mark))
        return false;
    text.front().text = text.front().text.substr(mark.size());
    if (text.front().text.starts_with(' '))
        text.front().text.erase(0, 1);
    return true;
}

std::string attribute(const MD_ATTRIBUTE &value) {
    return value.text == nullptr ? std::string() : std::string(value.text, value.size);
}

/// Turns the events of the parser into blocks. A problem ends the parse.
class Reader {
public:
    explicit Reader(const std::map<std::string, Figure> &figures) : m_figures(figures) {}

    Document document;
    std::optional<model::Error> problem;

    int enter(MD_BLOCKTYPE type, void *detail) {
        switch (type) {
        case MD_BLOCK_QUOTE:
            if (m_quoted)
                return stop("a quote within a quote");
            m_quoted = true;
            break;
        case MD_BLOCK_UL:
        case MD_BLOCK_OL:
            if (m_list)
                return stop("a list within a list");
            m_list = Steps{{}, type == MD_BLOCK_OL};
            break;
        case MD_BLOCK_TABLE:
            openTable();
            break;
        case MD_BLOCK_TR:
            m_row.clear();
            break;
        case MD_BLOCK_CODE:
            m_isFigure = attribute(static_cast<MD_BLOCK_CODE_DETAIL *>(detail)->lang) == "figure";
            break;
        case MD_BLOCK_P:
            if (m_list && !m_text.empty())
                m_text.push_back({" ", "", false, ""});
            return 0;
        case MD_BLOCK_HR:
            return stop("a rule across the page");
        case MD_BLOCK_HTML:
            return stop("raw HTML");
        case MD_BLOCK_DOC:
        case MD_BLOCK_LI:
        case MD_BLOCK_H:
        case MD_BLOCK_THEAD:
        case MD_BLOCK_TBODY:
        case MD_BLOCK_TH:
        case MD_BLOCK_TD:
            break;
        }
        m_text.clear();
        return 0;
    }

    int leave(MD_BLOCKTYPE type, void *detail) {
        switch (type) {
        case MD_BLOCK_H:
            document.blocks.emplace_back(
                Heading{int(static_cast<MD_BLOCK_H_DETAIL *>(detail)->level), taken()});
            if (document.title.empty())
                document.title = joined(std::get<Heading>(document.blocks.back()).text);
            break;
        case MD_BLOCK_P:
            return closeParagraph();
        case MD_BLOCK_QUOTE:
            m_quoted = false;
            break;
        case MD_BLOCK_LI:
            m_list->items.push_back(taken());
            break;
        case MD_BLOCK_UL:
        case MD_BLOCK_OL:
            document.blocks.emplace_back(*m_list);
            m_list.reset();
            break;
        case MD_BLOCK_TH:
            m_table.columns.push_back(joined(taken()));
            break;
        case MD_BLOCK_TD:
            m_row.push_back(taken());
            break;
        case MD_BLOCK_TR:
            if (!m_row.empty())
                m_table.rows.push_back(std::exchange(m_row, {}));
            break;
        case MD_BLOCK_TABLE:
            document.blocks.emplace_back(std::exchange(m_table, {}));
            break;
        case MD_BLOCK_CODE:
            return closeFigure();
        case MD_BLOCK_DOC:
        case MD_BLOCK_HR:
        case MD_BLOCK_HTML:
        case MD_BLOCK_THEAD:
        case MD_BLOCK_TBODY:
            break;
        }
        return 0;
    }

    int enter(MD_SPANTYPE type, void *detail) {
        if (type == MD_SPAN_STRONG)
            m_strong = true;
        else if (type == MD_SPAN_A)
            m_link = attribute(static_cast<MD_SPAN_A_DETAIL *>(detail)->href);
        else
            return stop("a picture, italics or code within a line");
        return 0;
    }

    int leave(MD_SPANTYPE type) {
        if (type == MD_SPAN_STRONG)
            m_strong = false;
        else
            m_link.clear();
        return 0;
    }

    int take(MD_TEXTTYPE type, std::string_view words) {
        if (type == MD_TEXT_ENTITY)
            return stop("the entity \"" + std::string(words) + "\"");
        if (type == MD_TEXT_BR || type == MD_TEXT_SOFTBR)
            words = " ";
        Run run{std::string(words), "", m_strong, m_link};
        if (!m_text.empty() && m_text.back().strong == m_strong && m_text.back().link == m_link)
            m_text.back().text += run.text;
        else
            m_text.push_back(std::move(run));
        return 0;
    }

private:
    int stop(const std::string &what) {
        problem = model::Error{ErrorCode::NotUnderstood, "It holds " + what + ", which no paper can show."};
        return 1;
    }

    Text taken() { return std::exchange(m_text, {}); }

    int closeParagraph() {
        if (m_list)
            return 0;
        Text text = taken();
        if (!m_quoted)
            document.blocks.emplace_back(Paragraph{std::move(text)});
        else if (takeMark(text, cautionMark))
            document.blocks.emplace_back(CautionBlock{std::move(text)});
        else
            return stop("a quote that does not begin with \"Caution:\"");
        return 0;
    }

    void openTable() {
        m_table = {};
        if (document.blocks.empty())
            return;
        auto *before = std::get_if<Paragraph>(&document.blocks.back());
        if (before == nullptr || !takeMark(before->text, captionMark))
            return;
        m_table.caption = joined(before->text);
        document.blocks.pop_back();
    }

    int closeFigure() {
        std::string name;
        for (const char c : trimmed(joined(taken())))
            if (c != '\\') // code is not unescaped by the parser
                name += c;
        if (!m_isFigure)
            return stop("a block of code");
        const auto figure = m_figures.find(name);
        if (figure == m_figures.end()) {
            problem = model::Error{ErrorCode::Missing,
                                   "It asks for the figure \"" + name + "\", which is not there."};
            return 1;
        }
        document.blocks.emplace_back(figure->second);
        return 0;
    }

    const std::map<std::string, Figure> &m_figures;
    Text m_text;
    std::string m_link;
    bool m_strong = false;
    bool m_quoted = false;
    bool m_isFigure = false;
    std::optional<Steps> m_list;
    Table m_table;
    std::vector<Text> m_row;
};

Reader &reader(void *user) {
    return *static_cast<Reader *>(user);
}

} // namespace

Result<Document> readMarkdown(const std::string &markdown, const std::map<std::string, Figure> &figures) {
    Reader reading(figures);
    MD_PARSER parser{};
    parser.flags =
        MD_FLAG_TABLES | MD_FLAG_NOHTML | MD_FLAG_NOINDENTEDCODEBLOCKS | MD_FLAG_COLLAPSEWHITESPACE;
    parser.enter_block = [](MD_BLOCKTYPE type, void *detail, void *user) {
        return reader(user).enter(type, detail);
    };
    parser.leave_block = [](MD_BLOCKTYPE type, void *detail, void *user) {
        return reader(user).leave(type, detail);
    };
    parser.enter_span = [](MD_SPANTYPE type, void *detail, void *user) {
        return reader(user).enter(type, detail);
    };
    parser.leave_span = [](MD_SPANTYPE type, void *, void *user) { return reader(user).leave(type); };
    parser.text = [](MD_TEXTTYPE type, const MD_CHAR *words, MD_SIZE size, void *user) {
        return reader(user).take(type, {words, size});
    };
    const int answer = md_parse(markdown.data(), MD_SIZE(markdown.size()), &parser, &reading);
    if (reading.problem)
        return tl::unexpected(*reading.problem);
    if (answer != 0)
        return fail(ErrorCode::NotUnderstood, "It could not be read as Markdown.");
    return std::move(reading.document);
}

std::string escapedForMarkdown(const std::string &value) {
    std::string safe;
    for (const char c : trimmed(value)) {
        if (std::isspace(static_cast<unsigned char>(c)) != 0)
            safe += ' ';
        else if (std::ispunct(static_cast<unsigned char>(c)) != 0)
            safe += {'\\', c};
        else
            safe += c;
    }
    return safe;
}

} // namespace reports
