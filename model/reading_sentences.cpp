#include "model/reading_sentences.h"
#include <array>

namespace model {

namespace {

using Version = std::array<const char *, readingLines>;
// clang-format off: one sentence a line
constexpr std::array<Version, 3> versions{{
    {"My grandmother caught three silver fish under the old bridge",
     "His neighbour fixed one squeaky door during the winter storm",
     "Our neighbour folded six clean towels under the kitchen lamp",
     "My uncle tasted every fresh cheese behind the village school",
     "The carpenter chopped many dry logs around the apple orchard",
     "Her neighbour bought four blue candles after the school play",
     "The gardener heard one loud whistle across the market square",
     "The blacksmith sold many ripe apples before the morning rain",
     "The singer opened both green shutters near the kitchen stove",
     "The tailor painted three wooden chairs within the stone yard",
     "My brother counted eight black sheep against the white fence",
     "The caretaker watered some dry roses between the tall hedges"},
    {"The postman read several old letters through the narrow lane",
     "The gardener picked many wild berries beside the garden gate",
     "Our builder knitted two thick scarves after the evening meal",
     "My grandfather parked two red vans behind the village school",
     "His friend carried seven warm loaves outside the corner shop",
     "The shepherd stacked some empty boxes behind the bus shelter",
     "Her neighbour mended some broken toys before the guests came",
     "The carpenter saw three grey horses across the market square",
     "Our neighbour hid nine chocolate eggs inside the wooden shed",
     "Her daughter moved another long table near the kitchen stove",
     "The plumber brushed three young ponies for the village feast",
     "Our gardener dropped two heavy bags near the railway station"},
    {"My grandmother filled four glass jars under the kitchen lamp",
     "The doctor swept several dusty rooms during the winter storm",
     "My father polished every brass handle before the guests came",
     "His neighbour lit seven small lamps near the railway station",
     "Our gardener built another stone wall before the first frost",
     "The caretaker washed five dirty plates upstairs in the attic",
     "Her daughter found one silver spoon around the apple orchard",
     "The painter planted nine young trees through the narrow lane",
     "Our teacher wrote several short notes after the evening meal",
     "My grandfather baked four plum cakes before the morning rain",
     "The shepherd cut nine yellow flowers between the tall hedges",
     "The blacksmith packed five warm jumpers in the spare bedroom"},
}};
// clang-format on

} // namespace

std::vector<std::string> readingSentences(ReadingVersion version) {
    const Version &sentences = versions.at(static_cast<std::size_t>(version));
    return {sentences.begin(), sentences.end()};
}

LogMar readingSize(int line) {
    constexpr double step = 0.1;
    return {largestReading.value - step * (line - 1)};
}

std::string nameOf(ReadingVersion version) {
    switch (version) {
    case ReadingVersion::A:
        return "A";
    case ReadingVersion::B:
        return "B";
    case ReadingVersion::C:
        return "C";
    }
    return {};
}

} // namespace model
