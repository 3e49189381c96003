#pragma once
#include "reports/document.h"
#include "reports/pdf_tree.h"
#include <memory>
#include <pango/pangocairo.h>
#include <string>
#include <vector>

/// Words set in type by pango.
namespace reports {

struct Unref {
    void operator()(void *object) const { g_object_unref(object); }
};
template<class T> using Held = std::unique_ptr<T, Unref>;

/// A run of words and the element that owns it.
struct OwnedRun {
    Run run;
    TagTree::Id owner = 0;
};

/// Words broken into lines. Sizes are PDF points.
struct SetText {
    struct Stretch {
        int end = 0; // byte past its last
        TagTree::Id owner = 0;
        std::string link;
    };
    Held<PangoLayout> layout;
    std::vector<Stretch> stretches;
    double width = 0; // room for a line

    [[nodiscard]] const Stretch &stretchAt(int byte) const;
    [[nodiscard]] std::vector<PangoLayoutLine *> lines() const;
};

/// Sets type for one file. Belongs to one thread.
class Typesetter {
public:
    /// `points` is the size of the body; `language` that of the document.
    Typesetter(double points, const std::string &language);

    enum class Weight { Regular, Bold };
    /// Breaks at blanks only; inside a word only if the word alone is longer than `width`.
    [[nodiscard]] std::shared_ptr<SetText> set(const std::vector<OwnedRun> &runs, double points, double width,
                                               Weight weight);
    /// Whether every word fits on a line of `width` whole.
    [[nodiscard]] bool wordsFit(const std::string &words, double points, double width, Weight weight) const;
    /// Width of words on one line.
    [[nodiscard]] double widthOf(const std::string &words, double points, Weight weight) const;
    /// Height of one line at `points`.
    [[nodiscard]] double lineHeight(double points) const;
    /// Characters met so far that no installed font holds.
    [[nodiscard]] const std::u32string &missing() const { return m_missing; }

private:
    [[nodiscard]] Held<PangoLayout> layout(const std::string &words, double points, Weight weight) const;
    void noteMissing(PangoLayout *layout, double points);

    Held<PangoFontMap> m_fonts;
    Held<PangoContext> m_context;
    std::u32string m_missing;
};

} // namespace reports
