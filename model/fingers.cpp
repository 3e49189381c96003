#include "model/fingers.h"
#include "model/sentence.h"
#include "model/typed.h"
#include <algorithm>
#include <sstream>

namespace model {

namespace {

bool isFinger(const std::string &word) {
    return std::find(fingerNames.begin(), fingerNames.end(), word) != fingerNames.end();
}

/// Takes one word in; false if it says nothing of a finger, or names a second one.
bool takeWord(const std::string &word, HandFinger &which) {
    if (word == "right" || word == "left") {
        const Side hand = word == "right" ? Side::Right : Side::Left;
        const bool free = which.hand == Side::NotStated || which.hand == hand;
        which.hand = hand;
        return free;
    }
    if (isFinger(word)) {
        const bool free = which.finger.empty() || which.finger == word;
        which.finger = word;
        return free;
    }
    return word == "finger" || word == "hand" || word == "of" || word == "the";
}

} // namespace

std::string fingerNamed(const std::string &typed) {
    const std::string text = typed::tidy(typed);
    const std::string first = text.substr(0, text.find(' '));
    const bool named = isFinger(first) && (text == first || text == first + " finger");
    return named ? first : text;
}

Result<HandFinger> parseReadingFinger(const std::string &typed) {
    std::string text = typed::tidy(typed);
    std::replace(text.begin(), text.end(), ',', ' ');
    std::istringstream words(text);
    HandFinger which;
    bool understood = true;
    for (std::string word; words >> word;)
        understood = takeWord(word, which) && understood;
    if (!understood || which.hand == Side::NotStated || which.finger.empty())
        return fail(ErrorCode::NotUnderstood,
                    typed::notA(Sentence::tr("one finger of one hand"), typed, "right index"));
    return which;
}

std::string wordsOf(const HandFinger &which) {
    const std::string hand = which.hand == Side::Right  ? "right hand"
                             : which.hand == Side::Left ? "left hand"
                             : which.hand == Side::Both ? "both hands"
                                                        : "hand not stated";
    return which.finger.empty() ? hand : hand + ", " + which.finger;
}

HandFinger whichFinger(const Measurement &result) {
    return {result.side, fingerNamed(result.finger)};
}

} // namespace model
