#pragma once
#include <optional>
#include <string>
#include <variant>
#include <vector>

/// A document as a value: what it says, not how it looks. Writers know nothing of clients.
namespace reports {

/// A run of words. `language` (BCP 47) is empty if it is the document's own. `link` is a web or mail address
/// or empty.
struct Run {
    std::string text;
    std::string language;
    bool strong = false;
    std::string link;
    friend bool operator==(const Run &, const Run &) = default;
};
using Text = std::vector<Run>;

struct Heading {
    int level = 1; // 1..6, no level skipped
    Text text;
    friend bool operator==(const Heading &, const Heading &) = default;
};
struct Paragraph {
    Text text;
    std::optional<double> points{}; // a size of its own in print: the size is what the words are there for
    friend bool operator==(const Paragraph &, const Paragraph &) = default;
};
/// A list; numbered if the order matters.
struct Steps {
    std::vector<Text> items;
    bool numbered = false;
    friend bool operator==(const Steps &, const Steps &) = default;
};
/// Records with named fields. At large print they are stacked, not laid out in columns. Every row has as many
/// cells as there are columns; the first cell names the row.
struct Table {
    std::string caption;
    std::vector<std::string> columns;
    std::vector<std::vector<Text>> rows;
    friend bool operator==(const Table &, const Table &) = default;
};
/// A drawing in millimetres from the top left, y downwards, black lines on white, and the words that say the
/// same.
struct Figure {
    struct Box {
        double x = 0, y = 0, width = 0, height = 0;
        std::string label;
        bool thick = false;
        std::string of{};    // id of what it stands for; never written
        bool filled = false; // black, without an outline
        friend bool operator==(const Box &, const Box &) = default;
    };
    double width = 0, height = 0;
    std::vector<Box> boxes;
    std::string words;        // whole sentences
    bool trueToScale = false; // printed at its own size, never fitted to the page
    friend bool operator==(const Figure &, const Figure &) = default;
};
/// Something that can hurt. Printed with the word "Caution".
struct CautionBlock {
    Text text;
    friend bool operator==(const CautionBlock &, const CautionBlock &) = default;
};

using Block = std::variant<Heading, Paragraph, Steps, Table, Figure, CautionBlock>;

struct Document {
    std::string title{};
    std::string language = "en-GB";
    std::string date{}; // ISO, also fixes the creation date of the file
    std::string author{};
    std::vector<Block> blocks{};
    friend bool operator==(const Document &, const Document &) = default;
};

[[nodiscard]] inline Text plain(std::string words) {
    return {Run{std::move(words), "", false, ""}};
}
[[nodiscard]] std::string joined(const Text &text);

/// The words of a caution, with "Caution: " before them.
[[nodiscard]] Text cautionWords(const CautionBlock &block);
/// What stands for the drawing itself: the names in it. The whole sentences (`words`) follow it in every
/// medium.
[[nodiscard]] std::string drawingName(const Figure &figure);
/// The words under a drawing, with "Picture: " before them.
[[nodiscard]] Text pictureWords(const Figure &figure);

} // namespace reports
