#include "model/reading_trial.h"
#include "model/sentence.h"
#include "model/typed.h"
#include <algorithm>
#include <cmath>

namespace model {

namespace {

constexpr double step = 0.1;
constexpr double mostSeconds = 600;

struct Fit {
    double critical = 0, maximum = 0, error = 0;
};

/// The best maximum for one critical size, and how far the curve is off.
Fit fitWith(const std::vector<ReadSentence> &read, double threshold, double critical) {
    double shapeSpeed = 0, shapeShape = 0, speedSpeed = 0;
    for (const ReadSentence &sentence : read) {
        const double shape = speedAt(std::pow(10.0, sentence.size.value), threshold, critical, 1);
        const double speed = wordsPerMinute(sentence.wrongWords, sentence.seconds);
        shapeSpeed += shape * speed;
        shapeShape += shape * shape;
        speedSpeed += speed * speed;
    }
    const double maximum = shapeShape > 0 ? shapeSpeed / shapeShape : 0;
    return {critical, maximum, speedSpeed - maximum * shapeSpeed};
}

/// The best critical size for one threshold, up to twice the largest print, in steps of 0.005 logMAR.
Fit bestWith(const std::vector<ReadSentence> &read, LogMar threshold) {
    constexpr double fine = 0.005;
    const double beyond = read.front().size.value + 0.3;
    const double zero = std::pow(10.0, threshold.value);
    Fit best;
    for (double critical = threshold.value + fine; critical <= beyond; critical += fine) {
        const Fit fit = fitWith(read, zero, std::pow(10.0, critical));
        if (best.critical == 0 || fit.error < best.error)
            best = fit;
    }
    return best;
}

/// Lines are a step apart, so the threshold lies within a step below the smallest print that was read.
Fit bestFit(const std::vector<ReadSentence> &read, LogMar smallest) {
    constexpr int parts = 10;
    Fit best = bestWith(read, smallest - LogMar{step});
    for (int part = 1; part < parts; ++part) {
        const Fit fit = bestWith(read, smallest - LogMar{step * part / parts});
        if (fit.error < best.error)
            best = fit;
    }
    return best;
}

Result<void> checkSentences(const std::vector<ReadSentence> &sentences) {
    for (std::size_t i = 0; i < sentences.size(); ++i) {
        const ReadSentence &sentence = sentences[i];
        if (sentence.wrongWords < 0 || sentence.wrongWords > wordsPerSentence)
            return fail(ErrorCode::OutOfRange,
                        Sentence::tr("A sentence has 10 words: wrong words go from 0 to 10. Kept."));
        if (sentence.wrongWords < wordsPerSentence &&
            !(sentence.seconds > 0 && sentence.seconds <= mostSeconds))
            return fail(ErrorCode::OutOfRange,
                        Sentence::tr("Seconds of a sentence are above 0 and at most 600. Try 4.2. Kept."));
        if (i > 0 && std::abs(sentences[i - 1].size.value - sentence.size.value - step) > step / 10)
            return fail(
                ErrorCode::NotUnderstood,
                Sentence::tr("Sizes of a trial go down line by line, 0.1 each, with none left out. Kept."));
    }
    return {};
}

/// "4.2 s" and "1 wrong", in this order; the second may be missing.
std::vector<std::string> partsOf(const std::string &typed) {
    std::string text = typed::tidy(typed);
    const auto comma = text.find(", ");
    if (comma != std::string::npos)
        return {typed::tidy(text.substr(0, comma)), typed::tidy(text.substr(comma + 1))};
    const auto value = typed::numberAndUnit(text);
    if (!value || value->unit.empty())
        return {text};
    const auto digit = value->unit.find_first_of("0123456789");
    if (digit == std::string::npos)
        return {text};
    const std::string second = value->unit.substr(digit);
    return {typed::tidy(text.substr(0, text.size() - second.size())), second};
}

bool isUnit(const std::string &unit, std::initializer_list<const char *> units) {
    return std::any_of(units.begin(), units.end(), [&](const char *known) { return unit == known; });
}

} // namespace

double wordsPerMinute(int wrongWords, double seconds) {
    return 60.0 * (wordsPerSentence - wrongWords) / seconds;
}

LogMar readingAcuity(int sentences, int wrongWords, LogMar largest) {
    return {largest.value + step - step * sentences + step / wordsPerSentence * wrongWords};
}

double speedAt(double size, double threshold, double critical, double maximum) {
    if (size <= threshold)
        return 0;
    return maximum * (1 - std::exp(-2.3 * (size - threshold) / (critical - threshold)));
}

Result<ReadingResult> readingResult(std::vector<ReadSentence> sentences) {
    if (sentences.empty())
        return fail(ErrorCode::Missing, Sentence::tr("No sentence was entered yet."));
    std::sort(sentences.begin(), sentences.end(),
              [](const ReadSentence &a, const ReadSentence &b) { return a.size > b.size; });
    if (const auto checked = checkSentences(sentences); !checked)
        return tl::unexpected(checked.error());
    int wrong = 0;
    for (const ReadSentence &sentence : sentences)
        wrong += sentence.wrongWords;
    ReadingResult result;
    result.acuity = readingAcuity(static_cast<int>(sentences.size()), wrong, sentences.front().size);
    std::erase_if(sentences, [](const auto &s) { return s.wrongWords == wordsPerSentence; });
    if (sentences.size() < 3) {
        result.why = Sentence::tr(
            "Fewer than three sentences were read: too few for a speed. Begin with larger print.");
        return result;
    }
    const Fit fit = bestFit(sentences, std::min(result.acuity, sentences.back().size));
    result.maximum = fit.maximum;
    result.critical = LogMar{std::log10(fit.critical)};
    result.stillRising = *result.critical > sentences.front().size;
    return result;
}

Result<ReadSentence> parseReadLine(LogMar size, const std::string &typed) {
    const std::string text = typed::tidy(typed);
    if (text == "not read" || text == "none")
        return ReadSentence{size, 0, wordsPerSentence};
    const auto parts = partsOf(text);
    const auto seconds = typed::numberAndUnit(parts.front());
    const auto wrong = parts.size() > 1 ? typed::numberAndUnit(parts[1]) : typed::NumberAndUnit{0, ""};
    if (!seconds || !isUnit(seconds->unit, {"", "s", "sec", "seconds", "second"}) || !wrong ||
        !isUnit(wrong->unit, {"", "wrong", "wrong words", "wrong word", "errors"}))
        return fail(ErrorCode::NotUnderstood, typed::notA(Sentence::tr("a time and wrong words"), typed,
                                                          "4.2 s, 1 wrong, or not read"));
    if (!(seconds->value > 0 && seconds->value <= mostSeconds))
        return fail(
            ErrorCode::OutOfRange,
            Sentence::tr(
                "Not a time for one sentence: {1}. It is above 0 and at most 600 seconds. Try 4.2 s. Kept.",
                {typed}));
    if (wrong->value < 0 || wrong->value > wordsPerSentence || wrong->value != std::floor(wrong->value))
        return fail(ErrorCode::OutOfRange,
                    Sentence::tr(
                        "Not a count of wrong words: {1}. A sentence has 10 words. Try 4.2 s, 1 wrong. Kept.",
                        {typed}));
    return ReadSentence{size, seconds->value, static_cast<int>(wrong->value)};
}

Result<std::vector<ReadSentence>> parseTrial(const std::string &typed) {
    std::vector<ReadSentence> sentences;
    std::string rest = typed + ";";
    for (auto end = rest.find(';'); end != std::string::npos; end = rest.find(';')) {
        const std::string line = typed::tidy(rest.substr(0, end));
        rest.erase(0, end + 1);
        if (line.empty())
            continue;
        const auto colon = line.find(':');
        const auto size = typed::number(line.substr(0, colon));
        if (colon == std::string::npos || !size)
            return fail(ErrorCode::NotUnderstood,
                        typed::notA(Sentence::tr("a line of a reading trial"), line, "1.3: 4.2 s, 0 wrong"));
        const auto sentence = parseReadLine({*size}, line.substr(colon + 1));
        if (!sentence)
            return tl::unexpected(sentence.error());
        sentences.push_back(*sentence);
    }
    return sentences;
}

std::string trialText(const std::vector<ReadSentence> &sentences) {
    std::string text;
    for (const ReadSentence &sentence : sentences) {
        text += (text.empty() ? "" : "; ") + typed::words(sentence.size.value, 1, typed::Zeros::Keep) + ": ";
        text += sentence.wrongWords == wordsPerSentence ? "not read" // stored, so never in another language
                                                        : typed::words(sentence.seconds, 2) + " s, " +
                                                              std::to_string(sentence.wrongWords) + " wrong";
    }
    return text;
}

} // namespace model
