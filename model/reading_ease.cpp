#include "model/reading_ease.h"
#include "model/sentence.h"
#include <cmath>

namespace model {

ReadingEase easeOfSize(double times) {
    constexpr double hair = 1e-9;
    if (times + hair >= 2)
        return ReadingEase::HighFluent;
    if (times + hair >= 1.3)
        return ReadingEase::Fluent;
    return times + hair >= 1 ? ReadingEase::Spot : ReadingEase::None;
}

ReadingEase easeOfContrast(double times) {
    if (times >= 10)
        return ReadingEase::HighFluent;
    if (times >= 4)
        return ReadingEase::Fluent;
    return times >= 3 ? ReadingEase::Spot : ReadingEase::None;
}

std::string wordsOf(ReadingEase ease) {
    switch (ease) {
    case ReadingEase::None:
        return Sentence::tr("nothing");
    case ReadingEase::Spot:
        return Sentence::tr("a word at a time");
    case ReadingEase::Fluent:
        return Sentence::tr("sentences");
    case ReadingEase::HighFluent:
        return Sentence::tr("at full speed");
    }
    return {};
}

bool isTubeField(double across) {
    return across <= 20.0;
}

bool nearImpairment(LogMar nearAcuity) {
    constexpr double limit = 0.8; // M at 40 cm
    return nearAcuity.value > std::log10(limit / 0.4) + 1e-9;
}

} // namespace model
