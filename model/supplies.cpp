#include "model/kit.h"
#include "model/planning.h"
#include "model/usable_marks.h"
#include <algorithm>
#include <map>

namespace model {
namespace {

/// Packs alike that each carry the mark; a pile or a set carries one.
int marksOn(const Thing &thing) {
    const bool pile = thing.shape == Shape::Mug || thing.shape == Shape::Plate ||
                      thing.shape == Shape::Bowl || thing.shape == Shape::Pan || thing.shape == Shape::Tool ||
                      thing.shape == Shape::Other;
    return pile ? 1 : std::max(1, thing.count.value_or(1));
}

std::string markOfMeaning(const Plan &plan, const std::string &meaning) {
    for (const auto &mark : plan.meaningMarks) {
        if (mark.meaning == meaning)
            return mark.marker;
    }
    return "";
}

std::map<std::string, int> counted(const Case &record) {
    std::map<std::string, int> out;
    for (const auto &line : record.plan->lines) {
        const auto thing = std::find_if(record.things.begin(), record.things.end(),
                                        [&](const Thing &t) { return t.id == line.thing; });
        if (thing == record.things.end())
            continue;
        out[line.marker] += marksOn(*thing);
        for (const auto &meaning : line.meanings)
            out[markOfMeaning(*record.plan, meaning)] += marksOn(*thing);
    }
    out.erase("");
    return out;
}

int withSpare(int count) {
    return count + (count + 9) / 10; // 10 %, rounded up
}

} // namespace

std::vector<Supply> supplies(const Case &record) {
    std::vector<Supply> out;
    if (!record.plan)
        return out;
    const auto counts = counted(record);
    for (const auto &marker : wholeKitOf(record)) { // in the order of the kit
        const auto found = counts.find(marker.key);
        if (found == counts.end() || ruledOut(marker, record))
            continue; // an answer of today stands above a plan of yesterday
        const int count = withSpare(found->second);
        out.push_back({marker.name, count, count * marker.cost, marker.caution});
    }
    return out;
}

} // namespace model
