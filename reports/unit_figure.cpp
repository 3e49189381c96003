#include "model/sentence.h"
#include "model/usual_sizes.h"
#include "reports/kitchen_figure.h"
#include "reports/paper_fields.h"
#include "reports/unit_shapes.h"
#include <algorithm>
#include <cmath>

namespace reports {

using namespace model;

namespace {

constexpr double widestMm = 120, highestMm = 150;
constexpr double largestScale = 1; // mm on paper for each cm
constexpr double openCm = 30;      // drawn above a worktop, which has no upper limit
constexpr double touchMm = 0.1;    // nearer than that they only touch
constexpr double boardCm = 2;      // of the unit below its lowest and above its highest place

std::string whole(Centimetres length) {
    return std::to_string(std::lround(length.value));
}

/// "1, top shelf: 56 wide, 26 high, 168 above the floor"
std::string inWords(const Place &place, const UsualSize &size, std::size_t number) {
    const std::string which = std::to_string(number) + ", " + place.name;
    return place.counter ? Sentence::tr("{1}: {2} wide, {3} deep, {4} above the floor",
                                        {which, whole(size.width), whole(size.depth), whole(size.height)})
                         : Sentence::tr("{1}: {2} wide, {3} high, {4} deep, {5} above the floor",
                                        {which, whole(size.width), whole(size.clear), whole(size.depth),
                                         whole(size.height)});
}

bool isMeasured(const Place &place) {
    const auto measured = [](const std::optional<Length> &length) {
        return length && length->basis == Basis::Measured;
    };
    return measured(place.width) && measured(place.depth) && measured(place.height) &&
           (place.counter || measured(place.clear));
}

/// Places that reach into one another by their sizes: "2 and 3"; heights or clear heights are wrong then.
std::vector<std::string> overlaps(const std::vector<Figure::Box> &places) {
    std::vector<std::string> pairs;
    for (std::size_t i = 0; i < places.size(); ++i)
        for (std::size_t j = i + 1; j < places.size(); ++j)
            if (places[i].y + touchMm < places[j].y + places[j].height &&
                places[j].y + touchMm < places[i].y + places[i].height)
                pairs.push_back(Sentence::tr("{1} and {2}", {places[i].label, places[j].label}));
    return pairs;
}

} // namespace

Figure unitFigure(const Case &record, const Id &id) {
    const auto unit =
        std::find_if(record.units.begin(), record.units.end(), [&](const Unit &u) { return u.id == id; });
    Figure figure;
    if (unit == record.units.end())
        return figure;
    const auto places = placesOf(record, id);
    const double outer = (unit->width ? unit->width->value : usualUnitWidth(unit->kind)).value;
    double top = 0, bottom = places.empty() ? 0 : 1e9;
    std::vector<std::string> words;
    bool measured = true;
    for (const Place *place : places) {
        const UsualSize size = sizeOf(*place, *unit, static_cast<int>(places.size()));
        const double high = place->counter ? openCm : size.clear.value;
        // In cm, and from the floor up: turned round below.
        figure.boxes.push_back({(outer - size.width.value) / 2, size.height.value + high, size.width.value,
                                high, std::to_string(figure.boxes.size() + 1), false, place->id.text});
        top = std::max(top, size.height.value + high + boardCm);
        bottom = std::min(bottom, size.height.value - boardCm);
        words.push_back(inWords(*place, size, figure.boxes.size()));
        measured = measured && isMeasured(*place);
    }
    if (places.empty())
        top = shapeOf(unit->kind).topCm, bottom = shapeOf(unit->kind).bottomCm;
    double widest = outer;
    for (const auto &box : figure.boxes)
        widest = std::max(widest, box.width);
    const double scale = std::min({largestScale, widestMm / widest, highestMm / (top - bottom)});
    const double shift = (widest - outer) / 2;
    for (auto &box : figure.boxes)
        box = {(box.x + shift) * scale,
               (top - box.y) * scale,
               box.width * scale,
               box.height * scale,
               box.label,
               false,
               box.of};
    const auto wrong = overlaps(figure.boxes);
    figure.boxes.insert(figure.boxes.begin(),
                        {shift * scale, 0, outer * scale, (top - bottom) * scale, "", true, id.text});
    figure.width = widest * scale;
    figure.height = (top - bottom) * scale;
    figure.words =
        Sentence::tr("{1} from the front, in centimetres, from the top.", {sentenceCase(unit->name)}) + " " +
        (words.empty() ? Sentence::tr("It has no places yet.") : listed(words) + ".");
    if (!measured)
        figure.words += " " + Sentence::tr("What was not measured is drawn with its usual size.");
    if (!wrong.empty())
        figure.words +=
            " " + Sentence::tr("By these sizes {1} overlap: check their heights.", {listed(wrong)});
    return figure;
}

} // namespace reports
