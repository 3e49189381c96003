#include "reports/kitchen_figure.h"
#include "model/sentence.h"
#include "reports/paper_fields.h"
#include "reports/unit_shapes.h"
#include <algorithm>
#include <array>

namespace reports {

using namespace model;

namespace {

constexpr double stripWidthCm = 420;
constexpr double stripHeightCm = 210;
constexpr double stripGapCm = 25;
constexpr double widestMm = 150;
constexpr double largestScale = 0.5; // mm on paper for each cm of kitchen

struct Drawn {
    const Unit *unit;
    Shape shape;
    double xCm, widthCm;
    int strip;
};

/// Puts `unit` into the case of the unit before it, if it stands under or over that. True if it did.
bool stacked(const Case &record, const Unit &unit, std::vector<Drawn> &drawn) {
    if (drawn.empty())
        return false;
    Drawn &before = drawn.back();
    const bool under = standsUnder(record, unit, *before.unit);
    if (!under && !standsUnder(record, *before.unit, unit))
        return false;
    Drawn other = before;
    other.unit = &unit;
    const double middle = (before.shape.bottomCm + before.shape.topCm) / 2;
    (under ? other : before).shape.topCm = middle;
    (under ? before : other).shape.bottomCm = middle;
    drawn.push_back(other);
    return true;
}

/// Goes along the walk: each row fills from the left, a full-height unit ends all of them, a full strip
/// begins anew.
std::vector<Drawn> layOut(const Case &record) {
    std::vector<Drawn> drawn;
    std::array<double, 3> cursor{};
    int strip = 0;
    for (const Unit *unit : walk(record)) {
        if (stacked(record, *unit, drawn))
            continue;
        const Shape shape = shapeOf(unit->kind);
        const double width = std::min(stripWidthCm, unit->width ? unit->width->value.value : shape.widthCm);
        double x =
            shape.row == FullHeight ? *std::max_element(cursor.begin(), cursor.end()) : cursor[shape.row];
        if (x + width > stripWidthCm) {
            cursor.fill(0);
            ++strip;
            x = 0;
        }
        drawn.push_back({unit, shape, x, width, strip});
        if (shape.row == FullHeight)
            cursor.fill(x + width);
        else
            cursor[shape.row] = x + width;
    }
    return drawn;
}

void addBoxes(Figure &figure, const Drawn &drawn, const std::vector<const Place *> &places, double scale,
              const std::string &number) {
    const double floorCm = drawn.strip * (stripHeightCm + stripGapCm) + stripHeightCm;
    const double x = drawn.xCm * scale, width = drawn.widthCm * scale;
    const double top = (floorCm - drawn.shape.topCm) * scale;
    const double height = (drawn.shape.topCm - drawn.shape.bottomCm) * scale;
    figure.boxes.push_back({x, top, width, height, places.size() > 1 ? "" : number, true,
                            places.size() == 1 ? places.front()->id.text : drawn.unit->id.text});
    if (places.size() > 1)
        for (std::size_t i = 0; i < places.size(); ++i) {
            const double each = height / static_cast<double>(places.size());
            figure.boxes.push_back({x, top + static_cast<double>(i) * each, width, each, i == 0 ? number : "",
                                    false, places[i]->id.text});
        }
}

std::string inWords(const std::vector<Drawn> &drawn) {
    static constexpr std::array leads{
        Sentence::later("Above the worktop: {1}."), Sentence::later("On the worktop: {1}."),
        Sentence::later("Below the worktop: {1}."), Sentence::later("From the floor up: {1}.")};
    std::array<std::vector<std::string>, leads.size()> rows;
    bool allMeasured = true;
    for (std::size_t i = 0; i < drawn.size(); ++i) {
        rows[drawn[i].shape.row].push_back(std::to_string(i + 1) + ", " + drawn[i].unit->name);
        allMeasured = allMeasured && drawn[i].unit->width;
    }
    std::string words = Sentence::tr(
        "The kitchen from the front, from left to right. The numbers are those of the sections.");
    for (std::size_t row = 0; row < rows.size(); ++row)
        if (!rows[row].empty())
            words += " " + Sentence::tr(leads[row], {listed(rows[row])});
    return words + " " +
           (allMeasured
                ? Sentence::tr("Widths are drawn to scale; heights are usual ones.")
                : Sentence::tr("Widths that were not measured, and all heights, are drawn as usual ones."));
}

} // namespace

Figure kitchenFigure(const Case &record) {
    const auto drawn = layOut(record);
    Figure figure;
    if (drawn.empty())
        return figure;
    double widthCm = 0;
    for (const Drawn &one : drawn)
        widthCm = std::max(widthCm, one.xCm + one.widthCm);
    const double scale = std::min(largestScale, widestMm / widthCm);
    figure.width = widthCm * scale;
    figure.height = ((drawn.back().strip + 1) * (stripHeightCm + stripGapCm) - stripGapCm) * scale;
    for (std::size_t i = 0; i < drawn.size(); ++i)
        addBoxes(figure, drawn[i], placesOf(record, drawn[i].unit->id), scale, std::to_string(i + 1));
    figure.words = inWords(drawn);
    return figure;
}

} // namespace reports
