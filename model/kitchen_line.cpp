#include "model/kitchen_line.h"
#include "model/contents_text.h"
#include "model/contents_words.h"
#include "model/sentence.h"
#include "model/spoken_numbers.h"
#include "model/usual_sizes.h"
#include <algorithm>
#include <array>
#include <utility>

namespace model {
namespace {

using words::Word;

struct KindWords {
    const char *first, *second; // second empty: the first is enough
    UnitKind kind;
};
constexpr std::array kinds{
    KindWords{"wall", "cupboard", UnitKind::WallCupboard},
    KindWords{"wall", "unit", UnitKind::WallCupboard},
    KindWords{"top", "cupboard", UnitKind::WallCupboard},
    KindWords{"high", "cupboard", UnitKind::WallCupboard},
    KindWords{"base", "cupboard", UnitKind::BaseCupboard},
    KindWords{"base", "unit", UnitKind::BaseCupboard},
    KindWords{"low", "cupboard", UnitKind::BaseCupboard},
    KindWords{"floor", "cupboard", UnitKind::BaseCupboard},
    KindWords{"wall", "cabinet", UnitKind::WallCupboard},
    KindWords{"base", "cabinet", UnitKind::BaseCupboard},
    KindWords{"tall", "cabinet", UnitKind::Larder},
    KindWords{"tall", "cupboard", UnitKind::Larder},
    KindWords{"tall", "unit", UnitKind::Larder},
    KindWords{"larder", "", UnitKind::Larder},
    KindWords{"pantry", "", UnitKind::Larder},
    KindWords{"worktop", "", UnitKind::Worktop},
    KindWords{"counter", "", UnitKind::Worktop},
    KindWords{"worksurface", "", UnitKind::Worktop},
    KindWords{"drawer", "", UnitKind::DrawerStack},
    KindWords{"freezer", "", UnitKind::Freezer},
    KindWords{"fridge", "", UnitKind::Fridge},
    KindWords{"refrigerator", "", UnitKind::Fridge},
    KindWords{"rack", "", UnitKind::Rack},
    KindWords{"shelf", "", UnitKind::Rack},
    KindWords{"trolley", "", UnitKind::Rack},
    KindWords{"cabinet", "under", UnitKind::BaseCupboard},
    KindWords{"cabinet", "below", UnitKind::BaseCupboard},
    KindWords{"cabinet", "over", UnitKind::WallCupboard},
    KindWords{"cabinet", "above", UnitKind::WallCupboard},
    KindWords{"cupboard", "under", UnitKind::BaseCupboard},
    KindWords{"cupboard", "below", UnitKind::BaseCupboard},
    KindWords{"cupboard", "over", UnitKind::WallCupboard},
    KindWords{"cupboard", "above", UnitKind::WallCupboard},
};

bool isNear(const Word &word) {
    static constexpr std::array words{"left",  "right", "by",   "beside",   "next", "under",   "over",
                                      "above", "below", "near", "opposite", "at",   "between", "of"};
    return std::find(words.begin(), words.end(), word.low) != words.end();
}

/// The kind that the words before "left of", "by" ... name; those behind say where it stands.
std::optional<UnitKind> kindOf(const std::vector<Word> &all) {
    const auto end = std::find_if(all.begin() + (all.empty() ? 0 : 1), all.end(), isNear);
    for (const auto &entry : kinds) {
        for (auto word = all.begin(); word != end; ++word) {
            const auto next = std::next(word);
            const bool second =
                entry.second[0] == '\0' || (next != all.end() && next->single == entry.second);
            if (word->single == entry.first && second)
                return entry.kind;
        }
    }
    return std::nullopt;
}

WorkArea areaOf(const std::vector<Word> &all, UnitKind kind) {
    static constexpr std::array areas{
        std::pair{"sink", WorkArea::Sink},   std::pair{"cooker", WorkArea::Hob},
        std::pair{"hob", WorkArea::Hob},     std::pair{"oven", WorkArea::Hob},
        std::pair{"stove", WorkArea::Hob},   std::pair{"fridge", WorkArea::Fridge},
        std::pair{"table", WorkArea::Table}, std::pair{"door", WorkArea::Entry}};
    for (const auto &area : areas)
        if (std::ranges::find(all, area.first, &Word::single) != all.end())
            return area.second;
    return kind == UnitKind::Worktop ? WorkArea::Prep : WorkArea::None;
}

/// "Corner", "then the corner", "round the corner": a turn of the walk, no unit.
bool isCorner(const std::vector<Word> &all) {
    static constexpr std::array around{"then", "the", "a", "round", "around", "turn", "next", "and", "at"};
    const auto turn = std::ranges::find(all, "corner", &Word::single);
    return turn != all.end() && std::ranges::all_of(all, [](const Word &word) {
               return word.single == "corner" || std::ranges::find(around, word.low) != around.end();
           });
}

/// "From the door, clockwise: larder": where the walk begins, no part of a unit.
void dropBeginning(std::vector<Word> &all) {
    static constexpr std::array beginning{"from", "the", "door"};
    if (all.size() >= beginning.size() &&
        std::equal(beginning.begin(), beginning.end(), all.begin(),
                   [](const char *wanted, const Word &word) { return word.low == wanted; }))
        all.erase(all.begin(), all.begin() + beginning.size());
    if (!all.empty() && all.front().low == "clockwise")
        all.erase(all.begin());
}

/// Takes "4 shelves", "two drawers" and "60 cm" out of the words.
void takeNumbers(std::vector<Word> &all, UnitSaid &said) {
    for (std::size_t i = 0; i < all.size(); ++i) {
        const auto number = words::numberAt(all, i);
        const std::size_t next = i + number.length;
        if (number.length == 0 || next >= all.size())
            continue;
        const std::string unit = all[next].single;
        const bool places = unit == "shelf" || unit == "drawer" || unit == "place" || unit == "level";
        const double cm = unit == "cm"                     ? 1
                          : unit == "mm"                   ? 0.1
                          : unit == "m"                    ? 100
                          : unit == "metre"                ? 100
                          : unit == "meter"                ? 100
                          : unit == "inch" || unit == "in" ? 2.54
                                                           : 0;
        if (!places && cm == 0)
            continue;
        if (places && number.value >= 1 && number.value <= 12)
            said.places = static_cast<int>(number.value);
        else if (places)
            said.doubt = Sentence::tr("{1} {2}? Possible: 1 to 12.",
                                      {words::shortNumber(number.value), all[next].typed});
        if (cm > 0)
            said.unit.width = Length{{number.value * cm}, words::joined(all, i, next + 1), Basis::Measured};
        const bool wide = next + 1 < all.size() && all[next + 1].low == "wide";
        all.erase(all.begin() + static_cast<long>(i), all.begin() + static_cast<long>(next + (wide ? 2 : 1)));
        --i;
    }
}

int usualPlaces(UnitKind kind) {
    switch (kind) {
    case UnitKind::WallCupboard:
    case UnitKind::BaseCupboard:
        return 2;
    case UnitKind::DrawerStack:
    case UnitKind::Freezer:
    case UnitKind::Fridge:
        return 3;
    case UnitKind::Larder:
        return 5;
    case UnitKind::Worktop:
    case UnitKind::Rack:
        return 1;
    }
    return 1;
}

/// One unit; fails with the sentence that says why it is none.
Result<UnitSaid> unitFrom(const std::string &text, std::vector<Word> all) {
    UnitSaid said;
    said.places = 0;
    // Without "3 drawers", which say what is in it: a freezer with drawers is no drawer unit.
    const auto withNumbers = all;
    takeNumbers(all, said);
    const auto named = kindOf(all), kind = named ? named : kindOf(withNumbers);
    while (!all.empty() && (all.back().low == "with" || all.back().low == "and" || all.back().low == "has"))
        all.pop_back();
    if (!kind)
        return fail(ErrorCode::NotUnderstood,
                    Sentence::tr("No unit in it: {1}. Say its kind, for example wall cupboard left of the "
                                 "cooker 60 cm 2 shelves. Kept.",
                                 {text}));
    said.unit.kind = *kind;
    said.unit.name = words::joined(all, 0, all.size());
    if (said.unit.name.empty())
        said.unit.name = text;
    said.unit.area = areaOf(all, *kind);
    if (said.places == 0)
        said.places = usualPlaces(*kind);
    if (!said.doubt.empty())
        return fail(ErrorCode::OutOfRange, Sentence::tr("{1}: {2} Kept.", {said.unit.name, said.doubt}));
    if (said.unit.width && (said.unit.width->value.value < 5 || said.unit.width->value.value > 500))
        return fail(ErrorCode::OutOfRange,
                    Sentence::tr("{1}: a width of {2} cannot be. It goes from 5 to 500 cm. Kept.",
                                 {said.unit.name, said.unit.width->typed}));
    return said;
}

/// Keeps what was not understood, with the reason of the first and the names of the others.
void leave(UnitsRead &read, const std::string &text, const std::string &why) {
    if (read.left.empty()) {
        read.before = read.units.size();
        read.why = why;
    } else {
        read.why += Sentence::tr(" Nor this: {1}.", {text});
    }
    read.left += (read.left.empty() ? "" : ", ") + text;
}

} // namespace

Result<UnitsRead> parseUnits(const std::string &line) {
    UnitsRead read;
    ErrorCode code = ErrorCode::NotUnderstood;
    std::string corner; // as it was said; empty: the walk goes straight on
    for (const auto &text : words::itemsOf(words::cleaned(line))) {
        auto all = words::wordsOf(text);
        dropBeginning(all);
        if (all.empty())
            continue;
        if (isCorner(all)) {
            corner = text;
            continue;
        }
        const std::string turn = std::exchange(corner, {});
        auto said = unitFrom(text, std::move(all));
        if (said) {
            said->unit.corner = !turn.empty();
            read.units.push_back(std::move(*said));
        } else {
            code = read.left.empty() ? said.error().code : code;
            leave(read, turn.empty() ? text : turn + ", " + text, said.error().sentence);
        }
    }
    if (!corner.empty())
        leave(read, corner,
              Sentence::tr("Behind the corner comes no unit. Say the first one of the new wall on the same "
                           "line. Kept."));
    if (read.units.empty() && read.left.empty())
        return fail(ErrorCode::NotUnderstood,
                    Sentence::tr("Nothing on the line. Say the units from the door clockwise, for example "
                                 "larder 4 shelves, worktop."));
    if (read.units.empty())
        return fail(code, read.why);
    return read;
}

} // namespace model
