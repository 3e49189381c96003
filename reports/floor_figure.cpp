#include "model/sentence.h"
#include "reports/kitchen_figure.h"
#include "reports/paper_fields.h"
#include "reports/unit_shapes.h"
#include <algorithm>
#include <array>

namespace reports {

using namespace model;

namespace {

constexpr double bandCm = 30;         // each of the three bands along a wall
constexpr double deepCm = 3 * bandCm; // all of them
constexpr double roomCm = 80;         // at least this much floor between two walls
constexpr double doorCm = 25;
constexpr double wallCm = 4;
constexpr double widestMm = 150, highestMm = 170;
constexpr double largestScale = 0.5; // mm on paper for each cm of kitchen

/// A unit on its wall, in cm from where the wall begins.
struct Spot {
    const Unit *unit;
    std::string label; // numbers of it and of what is in one case with it
    std::string words; // "8, fridge; 9, freezer under the fridge"
    double along, width, depth, bands;
};

struct Wall {
    std::vector<Spot> spots;
    std::array<double, 3> ends{}; // of the three bands
    [[nodiscard]] double length() const { return *std::max_element(ends.begin(), ends.end()); }
};

void put(Wall &wall, const Unit &unit, const std::string &label, const std::string &words) {
    const Shape shape = shapeOf(unit.kind);
    const double width = unit.width ? unit.width->value.value : shape.widthCm;
    if (shape.row == FullHeight) {
        const double along = wall.length();
        wall.spots.push_back({&unit, label, words, along, width, 0, deepCm});
        wall.ends.fill(along + width);
    } else {
        double &end = wall.ends.at(shape.row);
        wall.spots.push_back({&unit, label, words, end, width, static_cast<int>(shape.row) * bandCm, bandCm});
        end += width;
    }
}

std::vector<Wall> wallsOf(const Case &record) {
    std::vector<Wall> walls(1);
    const Unit *before = nullptr;
    int number = 0;
    for (const Unit *unit : walk(record)) {
        const std::string label = std::to_string(++number);
        const std::string words = label + ", " + unit->name;
        if (unit->corner && before)
            walls.emplace_back();
        if (before && !unit->corner &&
            (standsUnder(record, *unit, *before) || standsUnder(record, *before, *unit)))
            walls.back().spots.back().label += ", " + label, walls.back().spots.back().words += "; " + words;
        else
            put(walls.back(), *unit, label, words);
        before = unit;
    }
    return walls;
}

enum Direction { Up, Right, Down, Left };

/// Where a wall begins and which way it runs, in cm; the room lies at its right hand.
struct Line {
    double x, y;
    Direction way;
};

std::vector<Line> linesFor(const std::vector<Wall> &walls) {
    if (walls.size() == 1)
        return {{0, 0, Right}};
    const double top = -(walls[0].length() + deepCm);
    std::vector<Line> lines{{0, 0, Up}, {0, top, Right}};
    if (walls.size() > 2) {
        const double right = std::max(walls[1].length(), deepCm + roomCm) + deepCm;
        lines.push_back({right, top, Down});
        if (walls.size() > 3)
            lines.push_back({right, std::max(top + walls[2].length(), doorCm + wallCm) + deepCm, Left});
    }
    return lines;
}

Figure::Box boxAt(const Line &line, double along, double width, double depth, double deep) {
    Figure::Box box;
    const bool upright = line.way == Up || line.way == Down;
    box.width = upright ? deep : width;
    box.height = upright ? width : deep;
    switch (line.way) {
    case Up:
        box.x = line.x + depth, box.y = line.y - along - width;
        break;
    case Right:
        box.x = line.x + along, box.y = line.y + depth;
        break;
    case Down:
        box.x = line.x - depth - deep, box.y = line.y + along;
        break;
    case Left:
        box.x = line.x - along - width, box.y = line.y - depth - deep;
        break;
    }
    return box;
}

/// From cm anywhere to mm from the top left.
void fit(Figure &figure) {
    double left = 0, top = 0, right = 0, bottom = 0;
    for (const auto &box : figure.boxes) {
        left = std::min(left, box.x), right = std::max(right, box.x + box.width);
        top = std::min(top, box.y), bottom = std::max(bottom, box.y + box.height);
    }
    const double scale = std::min({largestScale, widestMm / (right - left), highestMm / (bottom - top)});
    for (auto &box : figure.boxes)
        box = {(box.x - left) * scale,
               (box.y - top) * scale,
               box.width * scale,
               box.height * scale,
               box.label,
               box.thick,
               box.of};
    figure.width = (right - left) * scale;
    figure.height = (bottom - top) * scale;
}

std::string wallWords(const Wall &wall) {
    std::vector<std::string> names;
    for (const Spot &spot : wall.spots)
        names.push_back(spot.words);
    return listed(names);
}

std::string inWords(const std::vector<Wall> &walls, std::size_t drawn) {
    std::string words = Sentence::tr("The kitchen from above, from the door clockwise.");
    for (std::size_t i = 0; i < walls.size(); ++i) {
        const std::string number = std::to_string(i + 1), units = wallWords(walls[i]);
        words += " " + (walls.size() == 1 ? Sentence::tr("Along the wall: {1}.", {units})
                        : i == 0          ? Sentence::tr("Wall {1}: {2}.", {number, units})
                                          : Sentence::tr("Corner. Wall {1}: {2}.", {number, units}));
    }
    if (walls.size() == 1)
        words += " " + Sentence::tr("No corner is recorded, so all units are drawn along one wall.");
    if (drawn < walls.size())
        words += " " + Sentence::tr("The drawing shows the first four walls.");
    return words + " " +
           Sentence::tr("Against the wall is drawn what hangs, in front of it the worktop, then what stands "
                        "below. Depths are not to scale.");
}

} // namespace

Figure floorFigure(const Case &record) {
    Figure figure;
    if (record.units.empty())
        return figure;
    const auto walls = wallsOf(record);
    const auto lines = linesFor(walls);
    for (std::size_t i = 0; i < lines.size(); ++i) {
        figure.boxes.push_back(boxAt(lines[i], 0, walls[i].length(), -wallCm, wallCm));
        figure.boxes.back().thick = true;
        for (const Spot &spot : walls[i].spots) {
            figure.boxes.push_back(boxAt(lines[i], spot.along, spot.width, spot.depth, spot.bands));
            figure.boxes.back().label = spot.label;
            figure.boxes.back().of = spot.unit->id.text;
        }
    }
    figure.boxes.push_back(boxAt(lines[0], -doorCm, doorCm, 0, deepCm));
    figure.boxes.back().label = Sentence::tr("door");
    fit(figure);
    figure.words = inWords(walls, lines.size());
    return figure;
}

} // namespace reports
