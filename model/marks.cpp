#include "model/marks.h"
#include <algorithm>
#include <cmath>

namespace model {

namespace {

double normalBelow(double z) {
    return 0.5 * std::erfc(-z / std::sqrt(2.0));
}

double steps(double size, double relief, double texture) {
    return std::sqrt(size * size + relief * relief + texture * texture);
}

/// A mark with its own text is found by hand or eye and then read; these are defaults of this program.
constexpr double textMissed = 0.02, textTakenForMark = 0.02;

double misread(MarkMedium medium) {
    switch (medium) {
    case MarkMedium::Touch:
        return 1.0;
    case MarkMedium::Braille:
        return 0.03;
    case MarkMedium::LargePrint:
        return 0.05;
    case MarkMedium::SpokenTag:
        return 0.01;
    }
    return 1.0;
}

} // namespace

const Marker *markerOf(const std::string &key) {
    const auto &kit = markerKit();
    const auto found =
        std::find_if(kit.begin(), kit.end(), [&](const Marker &marker) { return marker.key == key; });
    return found == kit.end() ? nullptr : &*found;
}

double confusion(const Marker &shown, const Marker &other, double sensitivity) {
    if (shown.key == other.key)
        return misread(shown.medium);
    if (shown.medium != MarkMedium::Touch || other.medium != MarkMedium::Touch)
        return textTakenForMark;
    const double distance = sensitivity * steps(shown.size - other.size, shown.relief - other.relief,
                                                shown.texture - other.texture);
    return normalBelow(-distance / 2.0);
}

double missed(const Marker &marker, double sensitivity) {
    if (marker.medium != MarkMedium::Touch)
        return textMissed;
    return normalBelow(-sensitivity * steps(marker.size, marker.relief, marker.texture) / 2.0);
}

} // namespace model
