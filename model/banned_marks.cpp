#include "model/findings_parts.h"
#include "model/kit.h"

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
        {SafetyQuestion::Implant, [](const Marker &m) { return m.magnetic; }, "magnetic", "implant",
         "an implant"},
        {SafetyQuestion::LatexAllergy, [](const Marker &m) { return m.latex; }, "natural rubber",
         "latex allergy", "a latex allergy"},
        {SafetyQuestion::AdhesiveReaction, [](const Marker &m) { return m.adhesive; }, "sticky",
         "skin reaction to adhesive", "a skin reaction to adhesive, on things held long"},
        {SafetyQuestion::ReducedProtectiveFeeling, [](const Marker &m) { return m.sharp; }, "sharp or rough",
         "reduced feeling in the hands", "reduced feeling in the hands"},
        {SafetyQuestion::FragileSkin, [](const Marker &m) { return m.sharp; }, "sharp or rough",
         "skin that tears easily", "skin that tears easily"},
        {SafetyQuestion::HearsSpeech, [](const Marker &m) { return m.medium == MarkMedium::SpokenTag; },
         "speaks", "hears speech in the kitchen", "speech not heard in the kitchen's noise"},
    };
    return all;
}

std::string answerWords(Answer answer) {
    switch (answer) {
    case Answer::NotAsked:
        return "not asked";
    case Answer::Yes:
        return "answered yes";
    case Answer::No:
        return "answered no";
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
    note("children", household.children);
    note("adult with memory loss", household.adultWithMemoryLoss);
    note("pets", household.pets);
    return words;
}

} // namespace

std::vector<std::string> factsThatBan(const Marker &marker) {
    std::vector<std::string> facts;
    for (const Ban &ban : bans())
        if (ban.concerns(marker))
            facts.push_back(std::string(ban.ruledOutBy) + " (" + ban.what + ")");
    if (marker.chokingSize)
        facts.emplace_back("a child, an adult with memory loss or a pet at home (small enough to swallow)");
    return facts;
}

std::map<std::string, std::string> bannedMarksOf(const Case &record, bool protectionReduced) {
    std::map<std::string, std::string> banned;
    const std::string swallow = whoMaySwallow(record.household);
    const bool bannedByAnswer = record.safety.cautious(SafetyQuestion::ReducedProtectiveFeeling);
    for (const Marker &marker : wholeKitOf(record)) {
        for (const Ban &ban : bans())
            if (ban.concerns(marker) && record.safety.cautious(ban.question))
                add(banned, marker.key, ban.what,
                    ban.fact + (": " + answerWords(record.safety.answer(ban.question))));
        if (marker.sharp && protectionReduced && !bannedByAnswer)
            add(banned, marker.key, "sharp or rough", "reduced feeling in the hands: measured by filament");
        if (marker.chokingSize && !swallow.empty())
            add(banned, marker.key, "small enough to swallow", swallow);
    }
    return banned;
}

} // namespace model
