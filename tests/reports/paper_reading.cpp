#include "paper_reading.h"
#include <algorithm>
#include <cctype>

namespace reading {

using namespace reports;

namespace {

struct Words {
    std::string operator()(const Heading &block) const { return joined(block.text); }
    std::string operator()(const Paragraph &block) const { return joined(block.text); }
    std::string operator()(const Steps &block) const {
        std::string all;
        for (const Text &item : block.items)
            all += joined(item) + '\n';
        return all;
    }
    std::string operator()(const Table &block) const {
        std::string all = block.caption + '\n';
        for (const std::string &column : block.columns)
            all += column + '\n';
        for (const auto &row : block.rows)
            for (const Text &cell : row)
                all += joined(cell) + '\n';
        return all;
    }
    std::string operator()(const Figure &block) const {
        std::string all = block.words + '\n';
        for (const Figure::Box &box : block.boxes)
            all += box.label + '\n';
        return all;
    }
    std::string operator()(const CautionBlock &block) const { return joined(block.text); }
};

} // namespace

std::string words(const Block &block) {
    return std::visit(Words{}, block);
}

std::string words(const Document &document) {
    std::string all = document.title + '\n' + document.author + '\n';
    for (const Block &block : document.blocks)
        all += words(block) + '\n';
    return all;
}

std::string wordsOutsideCautions(const Document &document) {
    Document rest = document;
    std::erase_if(rest.blocks,
                  [](const Block &block) { return std::holds_alternative<CautionBlock>(block); });
    return words(rest);
}

std::vector<std::string> cautions(const Document &document) {
    std::vector<std::string> list;
    for (const Block &block : document.blocks)
        if (const auto *caution = std::get_if<CautionBlock>(&block))
            list.push_back(joined(caution->text));
    return list;
}

std::vector<Block> section(const Document &document, const std::string &heading) {
    std::vector<Block> blocks;
    int level = 0;
    for (const Block &block : document.blocks) {
        const auto *here = std::get_if<Heading>(&block);
        if (here && level > 0 && here->level <= level)
            break;
        if (level > 0)
            blocks.push_back(block);
        else if (here && joined(here->text) == heading)
            level = here->level;
    }
    return blocks;
}

std::vector<std::string> headings(const std::vector<Block> &blocks, int level) {
    std::vector<std::string> list;
    for (const Block &block : blocks)
        if (const auto *heading = std::get_if<Heading>(&block); heading && heading->level == level)
            list.push_back(joined(heading->text));
    return list;
}

std::vector<std::string> numberedItems(const std::vector<Block> &blocks) {
    std::vector<std::string> list;
    for (const Block &block : blocks)
        if (const auto *steps = std::get_if<Steps>(&block); steps && steps->numbered)
            for (const Text &item : steps->items)
                list.push_back(joined(item));
    return list;
}

std::string lowered(std::string text) {
    std::transform(text.begin(), text.end(), text.begin(), [](unsigned char c) { return std::tolower(c); });
    return text;
}

} // namespace reading
