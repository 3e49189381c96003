#include "model/touch_test_result.h"
#include "model/kit.h"
#include "model/sentence.h"
#include "model/touch_hand_findings.h"
#include "model/typed.h"
#include <algorithm>
#include <cmath>

namespace model {

namespace {

MarkFeatures featuresOf(const Marker &marker) {
    return {marker.size, marker.relief, marker.texture};
}

std::string listed(const std::vector<std::string> &names) {
    std::string words;
    for (std::size_t i = 0; i < names.size(); ++i)
        words += (i == 0 ? "" : i + 1 == names.size() ? Sentence::tr(" and ") : ", ") + names[i];
    return words;
}

/// Two decimals, never rounded up.
std::string probabilityWords(double value) {
    constexpr double hundred = 100;
    return typed::words(std::floor(value * hundred) / hundred, 2, typed::Zeros::Keep);
}

std::string firstCapital(std::string words) {
    if (!words.empty() && words[0] >= 'a' && words[0] <= 'z')
        words[0] = static_cast<char>(words[0] - 'a' + 'A');
    return words;
}

std::string certaintyWords(const MarkerTestState &state) {
    return state.raised ? Sentence::tr(" Certainty asked for: {1}, because the test found low sensitivity.",
                                       {typed::words(state.credible, 2)})
                        : "";
}

std::string varyWords(const MarkerTestState &state) {
    if (state.tellNothing)
        return Sentence::tr(
            " The same mark given twice was called different nearly every time: the answers tell nothing.");
    return state.answersVary
               ? Sentence::tr(" Answers vary: the same mark given twice was often called different.")
               : "";
}

bool isBlank(const TestedMark &mark) {
    return mark.key == blankMark;
}

} // namespace

TouchTestRecord newTouchTest(const Case &record, const std::vector<std::string> &keys, bool withBlank,
                             std::int64_t seed) {
    TouchTestRecord test;
    test.id = newId();
    test.seed = seed;
    for (const std::string &key : keys)
        if (const Marker *marker = markerIn(record, key))
            test.marks.push_back({key, featuresOf(*marker)});
    if (withBlank)
        test.marks.push_back({blankMark, {}});
    std::vector<Finding> unread;
    if (const auto reading = readingFinger(record, unread)) {
        test.hand = reading->hand;
        test.finger = reading->finger;
    }
    const bool reduced = touchMeaning(record).protectionReduced ||
                         record.safety.cautious(SafetyQuestion::ReducedProtectiveFeeling);
    test.credible = reduced ? raisedCredible : 0.90;
    return test;
}

MarkerTestSetup setupOf(const TouchTestRecord &test) {
    MarkerTestSetup setup{.marks = {},
                          .seed = static_cast<std::uint64_t>(test.seed),
                          .limit = test.limit,
                          .credible = test.credible};
    for (const TestedMark &mark : test.marks)
        setup.marks.push_back(mark.features);
    return setup;
}

Result<MarkerTestState> stateOf(const TouchTestRecord &test) {
    std::vector<MarkerAnswer> log;
    for (const TouchTrial &trial : test.trials)
        log.push_back({trial.given, trial.answer});
    return replay(setupOf(test), log, test.stopped);
}

const TouchTestRecord *endedTouchTest(const Case &record) {
    for (auto test = record.touchTests.rbegin(); test != record.touchTests.rend(); ++test)
        if (const auto state = stateOf(*test); state && state->end)
            return &*test;
    return nullptr;
}

const TouchTestRecord *openTouchTest(const Case &record) {
    if (record.touchTests.empty())
        return nullptr;
    const auto state = stateOf(record.touchTests.back());
    return state && !state->end ? &record.touchTests.back() : nullptr;
}

MeasuredConfusion confusionOf(const TouchTestRecord &test, const MarkerTestState &state) {
    MeasuredConfusion measured;
    for (const PairResult &pair : state.pairs) {
        const TestedMark &first = test.marks[pair.first];
        const TestedMark &second = test.marks[pair.second];
        if (isBlank(first) || isBlank(second)) {
            measured.missed[isBlank(first) ? second.key : first.key] = pair.confusion;
            continue;
        }
        measured.taken[{first.key, second.key}] = pair.confusion;
        measured.taken[{second.key, first.key}] = pair.confusion;
    }
    return measured;
}

std::string wordsOf(MarkerTestEnd end) {
    switch (end) {
    case MarkerTestEnd::Limit:
        return Sentence::tr("The agreed number of trials was reached.");
    case MarkerTestEnd::AllIn:
        return Sentence::tr("Every pair was told apart.");
    case MarkerTestEnd::NoLargerSet:
        return Sentence::tr("A larger set is not likely.");
    case MarkerTestEnd::Stopped:
        return Sentence::tr("It was stopped.");
    }
    return {};
}

std::vector<std::string> acceptedKeys(const TouchTestRecord &test, const MarkerTestState &state) {
    std::vector<std::string> keys;
    if (!state.weakest)
        return keys;
    for (const std::size_t mark : state.accepted)
        if (!isBlank(test.marks[mark]))
            keys.push_back(test.marks[mark].key);
    return keys;
}

std::string markName(const Case &record, const TestedMark &mark) {
    if (isBlank(mark))
        return Sentence::tr("bare surface");
    const Marker *marker = markerIn(record, mark.key);
    return marker ? marker->name : mark.key;
}

std::string resultInWords(const Case &record, const TouchTestRecord &test, const MarkerTestState &state) {
    const auto name = [&](std::size_t mark) { return markName(record, test.marks[mark]); };
    std::vector<std::string> names;
    for (const std::size_t mark : state.accepted)
        names.push_back(name(mark));
    std::string words;
    if (state.weakest)
        words = Sentence::tr("{1} can be told apart. Weakest pair: {2} and {3}, {4} sure that they are "
                             "confused in less than 5 of 100.",
                             {firstCapital(listed(names)), name(state.weakest->first),
                              name(state.weakest->second), probabilityWords(state.weakest->good)});
    else
        words = state.end ? Sentence::tr("No two marks are safe to tell apart: position, container shape or "
                                         "a spoken tag carry the plan.")
                          : Sentence::tr("No two marks are accepted yet.");
    words += certaintyWords(state) + varyWords(state);
    if (state.end)
        words += " " + wordsOf(*state.end);
    return Sentence::tr("{1} {2} trials.", {words, std::to_string(state.trials)});
}

std::string pairInWords(const Case &record, const TouchTestRecord &test, const PairResult &pair) {
    constexpr double hundred = 100;
    const std::string trials = pair.trials == 1 ? Sentence::tr("1 trial")
                                                : Sentence::tr("{1} trials", {std::to_string(pair.trials)});
    const std::string said =
        Sentence::tr("{1} and {2}: confused in {3} of 100; {4} sure of less than 5; {5}",
                     {markName(record, test.marks[pair.first]), markName(record, test.marks[pair.second]),
                      typed::words(hundred * pair.confusion, 1), probabilityWords(pair.good), trials});
    return pair.accepted ? Sentence::tr("{1}, accepted", {said}) : said;
}

std::string recheckInWords(const TouchTestRecord &test) {
    int counted = 0;
    int right = 0;
    for (const TouchTrial &trial : test.recheck) {
        counted += trial.answer == TouchAnswer::Repeat ? 0 : 1;
        right += trial.answer == (trial.given.isCatch() ? TouchAnswer::Same : TouchAnswer::Different) ? 1 : 0;
    }
    if (counted == 0)
        return Sentence::tr("Not rechecked on real containers yet.");
    std::string words = Sentence::tr("{1} of {2} right on real containers.",
                                     {std::to_string(right), std::to_string(counted)});
    if (counted < recheckTrials)
        return Sentence::tr("{1} {2} more to do.", {words, std::to_string(recheckTrials - counted)});
    return words + (right >= recheckTrials - 1
                        ? Sentence::tr(" The set holds on containers.")
                        : Sentence::tr(" Feeling on the blank is not feeling on a container: leave out the "
                                       "mark that failed, or test again on containers."));
}

} // namespace model
