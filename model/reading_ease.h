#pragma once
#include "model/sight.h"

/// How well print is read that is larger or darker than the least that can be made out.
namespace model {

/// A word at a time, sentences, or at full speed.
enum class ReadingEase { None, Spot, Fluent, HighFluent };
/// `times`: print size over the threshold size. 1, 1.3 and 2. Sources: Whittaker & Lovie-Kitchin 1993 (table
/// from memory); 2 to 1: Cheong 2002, Latham & Tabrett 2012.
[[nodiscard]] ReadingEase easeOfSize(double times);
/// `times`: contrast of the print over the threshold contrast. 3 (from memory), 4 and 10: review of four
/// experiments on contrast and reading.
[[nodiscard]] ReadingEase easeOfContrast(double times);
/// "too small to read", "a word at a time", "sentences", "at full speed".
[[nodiscard]] std::string wordsOf(ReadingEase ease);

/// A tube field: 20 degrees across or less (10 round fixation). Source: ICD-10 (2010) H54.
[[nodiscard]] bool isTubeField(double across);
/// Near vision impairment: presenting near acuity worse than N6 or M 0.8 at 40 cm. Source: WHO 2018.
[[nodiscard]] bool nearImpairment(LogMar nearAcuity);

/// Light for older people at home, lux: the room at least 300, the task at least 1000. Source: Figueiro,
/// Lighting Research Center.
inline constexpr double roomLux = 300, taskLux = 1000;

} // namespace model
