#include "random_document.h"
#include <random>

using namespace reports;

namespace {

class Maker {
public:
    Maker(unsigned seed, LongWords longWords) : m_random(seed), m_longWords(longWords) {}

    Document document() {
        Document made{.title = "Document", .date = "2026-11-25"};
        made.blocks.emplace_back(Heading{1, text(4)});
        for (unsigned count = upTo(30); count > 0; --count)
            made.blocks.push_back(block());
        return made;
    }

private:
    unsigned upTo(unsigned most) { return 1 + unsigned(m_random() % most); }

    std::string word() {
        static const std::vector<std::string> words{
            "milk",   "coffee",   "500",      "g",         "Shelf", "3",
            "café",   "crème",    "naïve",    "Zoë",       "(top)", "2026-12-01",
            "and/or", "THIS",     "\"rice\"", "it's",      "½",     "21°C",
            "–",      "well-set", "don't",    "€5",        "10%",   "a",
            "enough", "x",        "£24",      "señor",     "über",  "k@example.org",
            "façade", "straight", "knead",    "tomatoes.", "…",     "https://example.org/a"};
        if (m_longWords == LongWords::Some && m_random() % 200 == 0)
            return std::string(20 + m_random() % 200, char('a' + m_random() % 26));
        return words[m_random() % words.size()];
    }

    std::string sentence(unsigned most) {
        std::string all;
        for (unsigned count = upTo(most); count > 0; --count)
            all += (all.empty() ? "" : m_random() % 20 == 0 ? "  " : " ") + word();
        return all;
    }

    Text text(unsigned most) {
        Text all{Run{sentence(most), "", m_random() % 4 == 0, ""}};
        if (m_random() % 3 == 0)
            all.push_back(Run{" " + sentence(3), "fr", false, ""});
        if (m_random() % 5 == 0)
            all.push_back(
                Run{" " + sentence(2), "", false, "https://example.org/" + std::to_string(m_random() % 9)});
        return all;
    }

    Block block() {
        switch (m_random() % 6) {
        case 0: {
            m_level = upTo(std::min(m_level + 1, 6u));
            return Heading{int(m_level), text(8)};
        }
        case 1:
            return steps();
        case 2:
            return table();
        case 3:
            return CautionBlock{text(30)};
        case 4:
            return Figure{
                80, 50, {{0, 0, 40, 25, "1", true}, {40, 0, 40, 50, "long label", false}}, sentence(20)};
        default:
            return Paragraph{text(80)};
        }
    }

    Block steps() {
        Steps made{{}, m_random() % 2 == 0};
        for (unsigned count = upTo(12); count > 0; --count)
            made.items.push_back(text(20));
        return made;
    }

    Block table() {
        Table made{m_random() % 2 == 0 ? sentence(4) : "", {}, {}};
        for (unsigned count = upTo(4); count > 0; --count)
            made.columns.push_back(sentence(2));
        for (unsigned rows = upTo(8); rows > 0; --rows) {
            std::vector<Text> cells;
            for (std::size_t i = 0; i < made.columns.size(); ++i)
                cells.push_back(i > 0 && m_random() % 6 == 0 ? Text{} : text(5));
            made.rows.push_back(std::move(cells));
        }
        return made;
    }

    std::mt19937 m_random;
    LongWords m_longWords;
    unsigned m_level = 1;
};

} // namespace

Document randomDocument(unsigned seed, LongWords longWords) {
    return Maker(seed, longWords).document();
}
