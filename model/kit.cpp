#include "model/kit.h"
#include "model/sentence.h"
#include "model/typed.h"
#include <algorithm>
#include <cmath>

namespace model {

namespace {

const KitMark *changeOf(const Case &record, const std::string &key) {
    const auto found =
        std::ranges::find_if(record.kit, [&](const KitMark &mark) { return mark.marker.key == key; });
    return found == record.kit.end() ? nullptr : &*found;
}

/// "Cork disc!" -> "own-cork-disc", with a number if that is taken.
std::string keyFor(const Case &record, const std::string &name) {
    std::string stem = "own";
    bool gap = true;
    for (const char letter : typed::tidy(name)) {
        const bool plain = (letter >= 'a' && letter <= 'z') || (letter >= '0' && letter <= '9');
        if (plain && gap)
            stem += '-';
        if (plain)
            stem += letter;
        gap = !plain;
    }
    std::string key = stem;
    for (int number = 2; markerIn(record, key) != nullptr; ++number)
        key = stem + "-" + std::to_string(number);
    return key;
}

Result<void> checkFigure(double value, double least, double most, const std::string &what) {
    if (value >= least && value <= most)
        return {};
    return fail(ErrorCode::OutOfRange, Sentence::tr("{1} goes from {2} to {3}. Kept.",
                                                    {what, typed::words(least, 1), typed::words(most, 1)}));
}

Result<void> check(const Case &record, const Marker &marker) {
    if (typed::tidy(marker.name).empty())
        return fail(ErrorCode::Missing, Sentence::tr("Give the mark a name, for example: cork disc. Kept."));
    for (const Marker &other : wholeKitOf(record))
        if (other.key != marker.key && typed::tidy(other.name) == typed::tidy(marker.name))
            return fail(ErrorCode::Refused,
                        Sentence::tr("Another mark of the kit is called {1}. Choose another name. Kept.",
                                     {other.name}));
    constexpr double mostSteps = 50;
    return checkFigure(marker.size, 0, mostSteps, Sentence::tr("The size in steps"))
        .and_then(
            [&] { return checkFigure(marker.relief, 0, mostSteps, Sentence::tr("The height in steps")); })
        .and_then(
            [&] { return checkFigure(marker.texture, 0, mostSteps, Sentence::tr("The texture in steps")); })
        .and_then([&] { return checkFigure(marker.cost, 0, 1000, Sentence::tr("The price")); })
        .and_then([&] {
            return checkFigure(marker.fixMinutes, 0, 60, Sentence::tr("The time to fix it in minutes"));
        });
}

} // namespace

std::string wordsOf(Surface surface) {
    switch (surface) {
    case Surface::Glass:
        return Sentence::tr("glass");
    case Surface::Metal:
        return Sentence::tr("metal");
    case Surface::Plastic:
        return Sentence::tr("plastic");
    case Surface::Card:
        return Sentence::tr("card");
    case Surface::Foil:
        return Sentence::tr("foil");
    case Surface::Paper:
        return Sentence::tr("paper");
    case Surface::Cloth:
        return Sentence::tr("cloth");
    case Surface::Ceramic:
        return Sentence::tr("ceramic");
    case Surface::Wood:
        return Sentence::tr("wood");
    }
    return {};
}

const Marker *markerIn(const Case &record, const std::string &key) {
    if (const KitMark *change = changeOf(record, key))
        return &change->marker;
    return markerOf(key);
}

bool atHand(const Case &record, const std::string &key) {
    const KitMark *change = changeOf(record, key);
    return change ? change->inKit : markerOf(key) != nullptr;
}

std::vector<Marker> wholeKitOf(const Case &record) {
    std::vector<Marker> kit;
    for (const Marker &marker : markerKit())
        kit.push_back(*markerIn(record, marker.key));
    for (const KitMark &mark : record.kit)
        if (markerOf(mark.marker.key) == nullptr)
            kit.push_back(mark.marker);
    return kit;
}

std::vector<Marker> kitOf(const Case &record) {
    std::vector<Marker> kit = wholeKitOf(record);
    std::erase_if(kit, [&](const Marker &marker) { return !atHand(record, marker.key); });
    return kit;
}

Result<void> keepMark(Case &record, Marker marker, bool inKit) {
    if (const auto checked = check(record, marker); !checked)
        return checked;
    if (marker.key.empty())
        marker.key = keyFor(record, marker.name);
    const auto same = [&](const KitMark &mark) { return mark.marker.key == marker.key; };
    const auto found = std::ranges::find_if(record.kit, same);
    if (found == record.kit.end()) {
        record.kit.push_back({newId(), std::move(marker), inKit});
    } else {
        found->marker = std::move(marker);
        found->inKit = inKit;
    }
    return {};
}

void forgetMark(Case &record, const std::string &key) {
    std::erase_if(record.kit, [&](const KitMark &mark) { return mark.marker.key == key; });
}

} // namespace model
