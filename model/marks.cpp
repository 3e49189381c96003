#include "model/marks.h"
#include "model/same_different.h"
#include <algorithm>
#include <cmath>

namespace model {

namespace {

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
    return confusionAt(distance);
}

double missed(const Marker &marker, double sensitivity) {
    if (marker.medium != MarkMedium::Touch)
        return textMissed;
    return confusionAt(sensitivity * steps(marker.size, marker.relief, marker.texture));
}

double confusion(const Marker &shown, const Marker &other, double sensitivity,
                 const MeasuredConfusion &measured) {
    const auto found = measured.taken.find({shown.key, other.key});
    return found != measured.taken.end() ? found->second : confusion(shown, other, sensitivity);
}

double missed(const Marker &marker, double sensitivity, const MeasuredConfusion &measured) {
    const auto found = measured.missed.find(marker.key);
    return found != measured.missed.end() ? found->second : missed(marker, sensitivity);
}

} // namespace model
