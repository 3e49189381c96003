#pragma once
#include <array>
#include <cstddef>
#include <optional>
#include <string>
#include <variant>
#include <vector>

/// What a tagged page says beside its ink: which element owns which marks, links, bookmarks. Filled while
/// pages are drawn, written into the file afterwards.
namespace reports {

/// What a marked stretch of a page is.
enum class Mark { Content, Layout, Footer };

/// PDF points from the bottom left: left, bottom, right, top.
using Rectangle = std::array<double, 4>;

struct TagTree {
    using Id = std::size_t;
    struct Owned {
        std::size_t page = 0;
        std::size_t mark = 0; // counted over the page
    };
    struct Element {
        std::string type{}; // H1, P, L, LI, Lbl, LBody, Figure, Link, Span ...
        Id parent = 0;
        std::string language{};         // empty if as around it
        std::string alternative{};      // what stands for a figure
        std::string actual{};           // the words in their logical order, for right-to-left text
        std::string numbering{};        // of a list: Decimal or Disc or None
        std::optional<Rectangle> box{}; // of a figure
        std::vector<std::variant<Id, Owned>> kids{};
        bool attached = false;
    };
    struct Link {
        Id element = 0;
        std::size_t page = 0;
        std::string address;
        std::string words;
        std::vector<Rectangle> lines;
    };
    struct Bookmark {
        int level = 1;
        std::string words;
        std::size_t page = 0;
        double top = 0;
    };

    std::vector<Element> elements{Element{.type = "Document", .attached = true}}; // the first is the root
    std::vector<std::vector<Mark>> marks;                                         // by page, in drawing order
    std::vector<Link> links;
    std::vector<Bookmark> bookmarks;

    /// An element that takes its place under `parent` when its first mark is drawn.
    [[nodiscard]] Id add(Id parent, std::string type);
    /// The next mark on `page` belongs to `owner`.
    void own(Id owner, std::size_t page);

private:
    void attach(Id element);
};

} // namespace reports
