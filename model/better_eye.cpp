#include "model/better_eye.h"
#include "model/read_measurement.h"
#include <algorithm>
#include <map>

namespace model {

namespace {

struct Read {
    const Measurement *result;
    Acuity acuity;
};

std::vector<Read> readable(const std::vector<const Measurement *> &results) {
    std::vector<Read> read;
    for (const Measurement *result : results)
        if (const auto acuity = readAcuity(*result))
            read.push_back({result, *acuity});
    const bool glasses =
        std::any_of(read.begin(), read.end(), [](const Read &r) { return r.result->withGlasses; });
    std::erase_if(read, [&](const Read &r) { return r.result->withGlasses != glasses; });
    return read;
}

} // namespace

std::optional<BetterEye> betterEye(const std::vector<const Measurement *> &results) {
    const std::vector<Read> read = readable(results);
    if (read.empty())
        return std::nullopt;
    std::map<std::optional<Date>, const Read *> bestOfDay;
    for (const Read &one : read) {
        const Read *&best = bestOfDay[one.result->date];
        if (!best || worse(best->acuity, one.acuity))
            best = &one;
    }
    const Read *chosen = nullptr;
    for (const auto &[day, best] : bestOfDay)
        if (!chosen || worse(best->acuity, chosen->acuity))
            chosen = best;
    BetterEye eye{chosen->acuity,
                  chosen->result->typed,
                  chosen->result->distanceTyped,
                  chosen->result->chart,
                  chosen->result->side,
                  chosen->result->withGlasses,
                  static_cast<int>(bestOfDay.size()),
                  {},
                  {}};
    for (const auto &[day, best] : bestOfDay)
        eye.ofDays.push_back(best->acuity);
    for (const Read &one : read)
        eye.from.push_back(one.result->id);
    return eye;
}

} // namespace model
