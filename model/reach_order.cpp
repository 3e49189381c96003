#include "model/reach_order.h"
#include "model/findings_parts.h"
#include "model/read_measurement.h"
#include "model/sentence.h"
#include "model/typed.h"
#include <array>
#include <optional>

namespace model {

namespace {

struct Order {
    Test below, above;
};

/// Anatomy, common practice.
constexpr std::array orders{Order{Test::ReachLow, Test::ShoulderHeight},
                            Order{Test::ReachLow, Test::ReachHigh},
                            Order{Test::KnuckleHeight, Test::ShoulderHeight}};

std::optional<Centimetres> heightNow(const Case &record, Test test) {
    const Measurement *newest = newestResult(record, test);
    if (newest == nullptr)
        return {};
    const auto height = readHeight(*newest);
    return height ? std::optional(*height) : std::nullopt;
}

} // namespace

Result<void> goesWithOtherHeights(const Case &record, const Measurement &typed) {
    for (const auto &[below, above] : orders) {
        if (typed.test != below && typed.test != above)
            continue;
        const auto height = readHeight(typed);
        const auto other = heightNow(record, typed.test == below ? above : below);
        if (!height || !other || (typed.test == below ? *height < *other : *other < *height))
            continue;
        const std::string name = Sentence::tr(infoOf(typed.test == below ? above : below).name);
        const std::string value = typed::words(other->value, 1);
        return fail(ErrorCode::OutOfRange,
                    typed.test == below
                        ? Sentence::tr("It has to lie below this: {1}, {2} cm. Measure both again. Kept.",
                                       {name, value})
                        : Sentence::tr("It has to lie above this: {1}, {2} cm. Measure both again. Kept.",
                                       {name, value}));
    }
    return {};
}

} // namespace model
