#include "model/field_loss.h"
#include "model/sentence.h"
#include "model/typed.h"
#include <array>
#include <vector>

namespace model {

namespace {

struct Part {
    bool FieldLoss::*lost;
    std::vector<std::string> words; // any of them, as a word of its own
    const char *name;
    const char *advice;
};

const std::array<Part, 6> &parts() {
    static const std::array<Part, 6> all{
        {{&FieldLoss::left,
          {"left"},
          Sentence::later("left side"),
          Sentence::later(
              "Daily things and words go to the right, the seeing side. Stand a step left of the shelf, so "
              "that it lies to the right. A bold strip marks the left end of shelf and label.")},
         {&FieldLoss::right,
          {"right"},
          Sentence::later("right side"),
          Sentence::later(
              "Daily things go to the left, the seeing side. Stand a step right of the shelf, so that it "
              "lies to the left. Short words, one a line, with a mark at the right end.")},
         {&FieldLoss::upper,
          {"upper", "top", "superior"},
          Sentence::later("upper part"),
          Sentence::later(
              "Daily things stand below eye height; doors at head height are kept shut or taken off.")},
         {&FieldLoss::lower,
          {"lower", "bottom", "inferior"},
          Sentence::later("lower part"),
          Sentence::later("Daily things stand from chest to eye height. Stand a step back from low shelves; "
                          "edges of worktop and step in contrast.")},
         {&FieldLoss::centre,
          {"centre", "center", "central", "middle"},
          Sentence::later("centre"),
          Sentence::later("Larger print, wide spacing, one word a line, a strong outline of the thing. Let "
                          "the client look a little beside it.")},
         {&FieldLoss::around,
          {"all round", "round", "around", "edge", "edges", "tube", "tunnel", "outer"},
          Sentence::later("all round the centre"),
          Sentence::later("Moderate size and high contrast close to the grip, few columns, fixed places. "
                          "Stand further back to see more of the shelf at once.")}}};
    return all;
}

bool hasWord(const std::string &text, const std::string &word) {
    return (" " + text + " ").find(" " + word + " ") != std::string::npos;
}

std::string onlyWords(std::string text) {
    for (char &c : text)
        if (!(c >= 'a' && c <= 'z'))
            c = ' ';
    return typed::tidy(text);
}

bool saysNothingMissing(const std::string &text) {
    for (const char *word : {"none", "nothing", "full", "whole", "no loss"})
        if (text == word || text == std::string(word) + " missing")
            return true;
    return false;
}

} // namespace

Result<FieldLoss> parseFieldLoss(const std::string &typed) {
    const std::string text = onlyWords(typed::tidy(typed));
    FieldLoss loss;
    if (saysNothingMissing(text))
        return loss;
    for (const Part &part : parts())
        for (const std::string &word : part.words)
            loss.*part.lost = loss.*part.lost || hasWord(text, word);
    if (loss == FieldLoss{})
        return fail(ErrorCode::NotUnderstood, typed::notA(Sentence::tr("a part of the field"), typed,
                                                          "left, lower, centre, all round or none"));
    return loss;
}

std::string wordsOf(const FieldLoss &loss) {
    std::vector<std::string> names;
    for (const Part &part : parts())
        if (loss.*part.lost)
            names.push_back(Sentence::tr(part.name));
    if (names.empty())
        return Sentence::tr("nothing missing");
    std::string words = names.front();
    for (std::size_t i = 1; i < names.size(); ++i)
        words += (i + 1 < names.size() ? ", " : Sentence::tr(" and ")) + names[i];
    return Sentence::tr("{1} missing", {words});
}

std::string adviceFor(const FieldLoss &loss) {
    std::string advice;
    for (const Part &part : parts())
        if (loss.*part.lost)
            advice += (advice.empty() ? "" : " ") + Sentence::tr(part.advice);
    return advice;
}

} // namespace model
