#include "model/findings_parts.h"
#include "model/kit.h"
#include "model/sentence.h"

namespace model {

namespace {

/// A property of a mark that a safety fact rules out.
struct Ban {
    SafetyQuestion question;
    bool (*concerns)(const Marker &);
    const char *what; // is wrong with the mark
    const char *fact; // that the question asks about
    const char *ruledOutBy;
};

const std::vector<Ban> &bans() {
    static const std::vector<Ban> all{
        {SafetyQuestion::Implant, [](const Marker &m) { return m.magnetic; }, Sentence::later("magnetic"),
         Sentence::later("implant"), Sentence::later("an implant")},
        {SafetyQuestion::LatexAllergy, [](const Marker &m) { return m.latex; },
         Sentence::later("natural rubber"), Sentence::later("latex allergy"),
         Sentence::later("a latex allergy")},
        {SafetyQuestion::AdhesiveReaction, [](const Marker &m) { return m.adhesive; },
         Sentence::later("sticky"), Sentence::later("skin reaction to adhesive"),
         Sentence::later("a skin reaction to adhesive, on things held long")},
        {SafetyQuestion::ReducedProtectiveFeeling, [](const Marker &m) { return m.sharp; },
         Sentence::later("sharp or rough"), Sentence::later("reduced feeling in the hands"),
         Sentence::later("reduced feeling in the hands")},
        {SafetyQuestion::FragileSkin, [](const Marker &m) { return m.sharp; },
         Sentence::later("sharp or rough"), Sentence::later("skin that tears easily"),
         Sentence::later("skin that tears easily")},
        {SafetyQuestion::HearsSpeech, [](const Marker &m) { return m.medium == MarkMedium::SpokenTag; },
         Sentence::later("speaks"), Sentence::later("hears speech in the kitchen"),
         Sentence::later("speech not heard in the kitchen's noise")},
    };
    return all;
}

std::string answerWords(Answer answer) {
    switch (answer) {
    case Answer::NotAsked:
        return Sentence::tr("not asked");
    case Answer::Yes:
        return Sentence::tr("answered yes");
    case Answer::No:
        return Sentence::tr("answered no");
    }
    return {};
}

/// "magnetic (implant: not asked), small enough to swallow (children: answered yes)"
void add(std::map<std::string, std::string> &banned, const std::string &key, const std::string &what,
         const std::string &fact) {
    std::string &words = banned[key];
    words += (words.empty() ? "" : ", ") + what + " (" + fact + ")";
}

/// Those at home who may swallow a small mark; empty if each was asked about and none is there.
std::string whoMaySwallow(const Household &household) {
    std::string words;
    const auto note = [&](const std::string &who, Answer answer) {
        if (answer != Answer::No)
            words += (words.empty() ? "" : ", ") + who + ": " + answerWords(answer);
    };
    note(Sentence::tr("children"), household.children);
    note(Sentence::tr("adult with memory loss"), household.adultWithMemoryLoss);
    note(Sentence::tr("pets"), household.pets);
    return words;
}

} // namespace

std::vector<std::string> factsThatBan(const Marker &marker) {
    std::vector<std::string> facts;
    for (const Ban &ban : bans())
        if (ban.concerns(marker))
            facts.push_back(Sentence::tr(ban.ruledOutBy) + " (" + Sentence::tr(ban.what) + ")");
    if (marker.chokingSize)
        facts.emplace_back(Sentence::tr("a child, an adult with memory loss or a pet at home") + " (" +
                           Sentence::tr("small enough to swallow") + ")");
    return facts;
}

std::map<std::string, std::string> bannedMarksOf(const Case &record, bool protectionReduced) {
    std::map<std::string, std::string> banned;
    const std::string swallow = whoMaySwallow(record.household);
    const bool bannedByAnswer = record.safety.cautious(SafetyQuestion::ReducedProtectiveFeeling);
    for (const Marker &marker : wholeKitOf(record)) {
        for (const Ban &ban : bans())
            if (ban.concerns(marker) && record.safety.cautious(ban.question))
                add(banned, marker.key, Sentence::tr(ban.what),
                    Sentence::tr(ban.fact) + ": " + answerWords(record.safety.answer(ban.question)));
        if (marker.sharp && protectionReduced && !bannedByAnswer)
            add(banned, marker.key, Sentence::tr("sharp or rough"),
                Sentence::tr("reduced feeling in the hands: measured by filament"));
        if (marker.chokingSize && !swallow.empty())
            add(banned, marker.key, Sentence::tr("small enough to swallow"), swallow);
    }
    return banned;
}

} // namespace model
