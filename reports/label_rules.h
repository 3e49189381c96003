#pragma once
#include "model/fixing.h"
#include "reports/labels.h"
#include <functional>

/// How one label is fitted to its medium.
namespace reports {

/// Whether a shorter name may stand for this one.
using MayShorten = std::function<bool(const std::string &shorter)>;

/// The words over the lines of the face; shortened if they do not fit and `may` allows.
[[nodiscard]] Result<Label> brailleFitted(Label label, const model::BrailleFace &face, int grade,
                                          const MayShorten &may);

struct PrintFace {
    model::Millimetres width{}, height{};
    /// A size that will do, and on which condition: none, a lamp, or close to the eye.
    struct Size {
        model::Points points{};
        std::string only; // a sentence, or empty
        friend bool operator==(const Size &, const Size &) = default;
    };
    std::vector<Size> sizes;
    bool willNotDo = false; // no print will do here; else, without sizes: not measured
};
[[nodiscard]] Label printFitted(Label label, const PrintFace &face, const MayShorten &may);

/// Which tag holds the text; what is too long for the largest is told, and nothing is cut.
/// Source: NDEF text record with language "en-GB" on tags with 144, 504 and 888 bytes, planned against 144,
/// 496 and 872 bytes: 131, 478 and 854 bytes of text.
[[nodiscard]] Label tagFitted(Label label);

/// Which square code holds the text, at level Q with modules of 1 mm and a quiet zone of 4 modules.
/// Source: ISO/IEC 18004, capacity in bytes of versions 1 to 10 at level Q.
[[nodiscard]] Label codeFitted(Label label);

} // namespace reports
