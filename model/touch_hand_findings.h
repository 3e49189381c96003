#pragma once
#include "model/findings_parts.h"
#include "model/fingers.h"
#include <string>
#include <vector>

/// Findings of one result each, for the tests of the hand that are not graded further.
namespace model {

/// "right hand, index".
[[nodiscard]] std::string handWords(const Measurement &result);

void movingTwoPointFindings(const Case &record, std::vector<Finding> &all);
void shapeFindings(const Case &record, std::vector<Finding> &all);
/// Warm or cold, sharp or dull. Sharp from dull told no better than by guessing counts as reduced protection.
void namedFindings(const Case &record, TouchMeaning &meaning);
/// What the client can do with braille, against what the fingers measured. `wideAt`: the finger at which two
/// points are told apart only above 5 mm, in words; empty if they are told apart closer.
void brailleFindings(const Case &record, const std::string &wideAt, TouchMeaning &meaning);
/// The finger that reads marks, if it was entered; adds its finding.
[[nodiscard]] std::optional<HandFinger> readingFinger(const Case &record, std::vector<Finding> &all);
/// "Usual at 70 years: about 5.0 mm." or nothing, if birth date or day of the test is not known.
[[nodiscard]] std::string usualForAge(const Case &record, const Measurement &result);

} // namespace model
