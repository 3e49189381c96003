#include "model/findings_parts.h"
#include "model/marks.h"

namespace model {

namespace {

/// A property of a mark that a safety fact rules out.
struct Ban {
    SafetyQuestion question;
    bool (*concerns)(const Marker &);
    const char *subject;
};

const std::vector<Ban> &bans() {
    static const std::vector<Ban> all{
        {SafetyQuestion::Implant, [](const Marker &m) { return m.magnetic; }, "magnetic; an implant"},
        {SafetyQuestion::LatexAllergy, [](const Marker &m) { return m.latex; },
         "natural rubber; latex allergy"},
        {SafetyQuestion::AdhesiveReaction, [](const Marker &m) { return m.adhesive; },
         "sticky; skin reaction to adhesive"},
        {SafetyQuestion::ReducedProtectiveFeeling, [](const Marker &m) { return m.sharp; },
         "sharp or rough; reduced feeling in the hands"},
        {SafetyQuestion::FragileSkin, [](const Marker &m) { return m.sharp; },
         "sharp or rough; skin that tears easily"},
        {SafetyQuestion::HearsSpeech, [](const Marker &m) { return m.medium == MarkMedium::SpokenTag; },
         "speaks; hearing speech in the kitchen"},
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

void add(std::map<std::string, std::string> &banned, const std::string &key, const std::string &reason) {
    std::string &words = banned[key];
    words += (words.empty() ? "" : "; ") + reason;
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

std::map<std::string, std::string> bannedMarksOf(const Case &record, bool protectionReduced) {
    std::map<std::string, std::string> banned;
    const std::string swallow = whoMaySwallow(record.household);
    for (const Marker &marker : markerKit()) {
        for (const Ban &ban : bans())
            if (ban.concerns(marker) && record.safety.cautious(ban.question))
                add(banned, marker.key,
                    ban.subject + (": " + answerWords(record.safety.answer(ban.question))));
        if (marker.sharp && protectionReduced)
            add(banned, marker.key, "sharp or rough; reduced feeling in the hands: measured by filament");
        if (marker.chokingSize && !swallow.empty())
            add(banned, marker.key, "small enough to swallow; " + swallow);
    }
    return banned;
}

} // namespace model
