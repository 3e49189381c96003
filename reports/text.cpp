#include "reports/prepare.h"
#include "reports/writers.h"

namespace reports {

namespace {

struct Lines {
    std::string operator()(const Heading &block) const { return joined(block.text) + '\n'; }
    std::string operator()(const Paragraph &block) const { return joined(block.text) + '\n'; }
    std::string operator()(const CautionBlock &block) const { return joined(cautionWords(block)) + '\n'; }
    std::string operator()(const Figure &block) const { return joined(pictureWords(block)) + '\n'; }
    std::string operator()(const Steps &block) const {
        std::string lines;
        int number = 0;
        for (const Text &item : block.items)
            lines += (block.numbered ? std::to_string(++number) + ". " : "• ") + joined(item) + '\n';
        return lines;
    }
    std::string operator()(const Table &block) const {
        std::string lines = block.caption.empty() ? "" : block.caption + "\n\n";
        for (const std::vector<Text> &row : block.rows) {
            for (std::size_t i = 0; i < row.size(); ++i) {
                if (row[i].empty())
                    continue;
                const bool isName = i == 0;
                const std::string column = isName || block.columns[i].empty() ? "" : block.columns[i] + ": ";
                lines += (isName ? "" : "  ") + column + joined(row[i]) + '\n';
            }
        }
        return lines;
    }
};

} // namespace

Result<std::string> writeText(const Document &document) {
    return prepared(document, Links::Spelled).map([](const Document &ready) {
        std::string text;
        for (const Block &block : ready.blocks)
            text += (text.empty() ? "" : "\n") + std::visit(Lines{}, block);
        return text;
    });
}

} // namespace reports
