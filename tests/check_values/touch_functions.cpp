#include "model/case.h"
#include "model/detection.h"
#include "model/findings.h"
#include "model/rates.h"
#include "model/same_different.h"
#include "model/touch.h"
#include "tests/check_values/check_functions.h"
#include <algorithm>
#include <cmath>
#include <sstream>

namespace check {

using namespace model;

namespace {

std::string bandName(FeelingBand band) {
    switch (band) {
    case FeelingBand::Normal:
        return "normal";
    case FeelingBand::DiminishedLightTouch:
        return "light touch";
    case FeelingBand::DiminishedProtective:
        return "protective";
    case FeelingBand::LossOfProtective:
        return "loss";
    case FeelingBand::DeepPressureOnly:
        return "deep pressure";
    case FeelingBand::NotFelt:
        return "not felt";
    }
    return {};
}

std::string gradeName(const Input &input) {
    switch (parseTwoPoint(input.at(0))->grade) {
    case TwoPointGrade::Normal:
        return "normal";
    case TwoPointGrade::Fair:
        return "fair";
    case TwoPointGrade::Poor:
        return "poor";
    case TwoPointGrade::Protective:
        return "protective";
    case TwoPointGrade::Anaesthetic:
        return "anaesthetic";
    }
    return {};
}

double gramsOf(const Input &input) {
    const double marking = number(input, 0);
    for (const Filament &filament : filaments())
        if (std::abs(filament.marking - marking) < 1e-9)
            return filament.target.value;
    return -1;
}

/// Whether the findings warn that braille may be hard to read.
double brailleDoubt(const Input &input) {
    Case record = newCase("made up", "X");
    record.client.readsBraille = true;
    Measurement spacing;
    spacing.id = newId();
    spacing.test = Test::TwoPointStatic;
    spacing.side = Side::Right;
    spacing.typed = input.at(0);
    record.measurements.push_back(spacing);
    const auto all = findingsOf(record, Date{}).all;
    return std::any_of(all.begin(), all.end(), [](const Finding &finding) {
        return finding.because.find("Above 5 mm braille may be hard") != std::string::npos;
    });
}

/// "9,1/1,9": rows with strokes between, given by row.
Confusions counts(const std::string &text) {
    Confusions all;
    std::istringstream rows(text);
    for (std::string row; std::getline(rows, row, '/');) {
        all.emplace_back();
        std::istringstream cells(row);
        for (std::string cell; std::getline(cells, cell, ',');)
            all.back().push_back(std::stod(cell));
    }
    return all;
}

std::string orRefused(const Result<double> &value) {
    return value ? shown(*value) : "refused";
}

RateBelief belief(const Input &i) {
    return beliefAfter(whole(i, 0), whole(i, 1), number(i, 2));
}

void addDetection(Functions &all) {
    all["yes-no-d"] = [](const Input &i) { return shown(yesNo(number(i, 0), number(i, 1))->distance); };
    all["yes-no-c"] = [](const Input &i) { return shown(yesNo(number(i, 0), number(i, 1))->criterion); };
    all["yes-no-beta"] = [](const Input &i) { return shown(yesNo(number(i, 0), number(i, 1))->beta); };
    all["log-linear"] = [](const Input &i) { return shown(logLinearRate(whole(i, 0), whole(i, 1))); };
    const auto logLinear = [](const Input &i) {
        return *yesNo(logLinearRate(whole(i, 0), whole(i, 1)), logLinearRate(whole(i, 2), whole(i, 3)));
    };
    all["log-linear-d"] = [logLinear](const Input &i) { return shown(logLinear(i).distance); };
    all["log-linear-c"] = [logLinear](const Input &i) { return shown(logLinear(i).criterion); };
    all["choice-d"] = [](const Input &i) { return orRefused(distanceOfChoice(number(i, 0), whole(i, 1))); };
    all["choice-share"] = [](const Input &i) { return shown(shareRight(number(i, 0), whole(i, 1))); };
    all["independent-d"] = [](const Input &i) { return orRefused(distanceIndependent(number(i, 0))); };
    all["differencing-d"] = [](const Input &i) {
        return orRefused(distanceDifferencing(number(i, 0), number(i, 1)));
    };
    all["bits"] = [](const Input &i) { return shown(bitsTransmitted(counts(i.at(0)))); };
    all["two-to-bits"] = [](const Input &i) { return shown(std::exp2(bitsTransmitted(counts(i.at(0))))); };
    all["bits-unbiased"] = [](const Input &i) { return shown(bitsWithoutBias(counts(i.at(0)))); };
    all["similarity"] = [](const Input &i) {
        return shown(similarity(counts(i.at(0)), static_cast<std::size_t>(whole(i, 1)),
                                static_cast<std::size_t>(whole(i, 2))));
    };
}

void addRates(Functions &all) {
    all["belief-quantile"] = [](const Input &i) { return shown(quantileOf(belief(i), number(i, 3))); };
    all["belief-mean"] = [](const Input &i) { return shown(meanOf(belief(i))); };
    all["belief-above"] = [](const Input &i) { return shown(beliefAbove(belief(i), number(i, 3))); };
    all["beta-binomial"] = [](const Input &i) {
        return shown(chanceOf({number(i, 0), number(i, 1)}, whole(i, 2), whole(i, 3)));
    };
    all["belief-greater"] = [](const Input &i) {
        return shown(beliefGreater({number(i, 0), number(i, 1)}, {number(i, 2), number(i, 3)}));
    };
    all["by-guessing"] = [](const Input &i) {
        return shown(byGuessing(whole(i, 0), whole(i, 1), number(i, 2)));
    };
    all["wilson-low"] = [](const Input &i) { return shown(wilson(whole(i, 0), whole(i, 1)).low); };
    all["wilson-high"] = [](const Input &i) { return shown(wilson(whole(i, 0), whole(i, 1)).high); };
    all["all-right-needed"] = [](const Input &i) {
        return shown(allRightNeeded(number(i, 0), number(i, 1)));
    };
    all["same-answer"] = [](const Input &i) {
        return shown(sameAnswer(number(i, 0), number(i, 1), number(i, 2)));
    };
    all["confusion"] = [](const Input &i) { return shown(confusionAt(number(i, 0))); };
    all["fewest-alone"] = [](const Input &i) {
        return shown(fewestAlone(number(i, 0), number(i, 1), whole(i, 2), number(i, 3)));
    };
    all["beta-below"] = [](const Input &i) {
        return shown(betaBelow(number(i, 0), number(i, 1), number(i, 2)));
    };
}

} // namespace

Functions touchFunctions() {
    Functions all;
    all["filament-band"] = [](const Input &i) { return bandName(*parseFilament(i.at(0))); };
    all["filament-grams"] = [](const Input &i) { return shown(gramsOf(i)); };
    all["marking-of-grams"] = [](const Input &i) { return shown(markingByFormula({number(i, 0)})); };
    all["grams-of-marking"] = [](const Input &i) { return shown(forceByFormula(number(i, 0)).value); };
    all["two-point-grade"] = gradeName;
    all["two-point-norm"] = [](const Input &i) { return shown(usualTwoPoint(whole(i, 0)).value); };
    all["smallest-gap"] = [](const Input &i) { return shown(smallestGap({number(i, 0)}).value); };
    all["braille-doubt"] = [](const Input &i) { return shown(brailleDoubt(i)); };
    addDetection(all);
    addRates(all);
    return all;
}

} // namespace check
