#include "app/pages/client_page.h"
#include "app/pages/entries.h"

namespace app {

using model::Case;
using model::Result;

void SafetyPage::refresh() {
    const auto &facts = record().safety;
    std::vector<FieldSpec> fields;
    int asked = 0;
    for (const auto &info : model::safetyQuestions()) {
        const model::SafetyQuestion question = info.question;
        const auto found = facts.answers.find(question);
        const bool known = found != facts.answers.end() && found->second.answer != model::Answer::NotAsked;
        asked += known ? 1 : 0;
        fields.push_back(
            {{.key = text(info.key),
              .kind = FieldKind::YesNo,
              .label = said(info.asked),
              .hint = known ? QString()
                            : tr("Not asked counts as %1: %2")
                                  .arg(info.cautious == model::Answer::Yes ? tr("yes") : tr("no"),
                                       said(info.follows)),
              .note = facts.cautious(question) && known ? said(info.follows) : QString()},
             [question, &facts] { return answerValue(facts.answer(question)); },
             [question, this](Case &r, const QString &chosen) -> Result<void> {
                 auto &answer = r.safety.answers[question];
                 answer.answer = answerOf(chosen);
                 answer.asked = m_session.today();
                 return {};
             }});
        // Once answered the note stays, so that no field goes from under her hands.
        if (found == facts.answers.end())
            continue;
        fields.push_back({{.key = text(info.key) + QStringLiteral("-note"),
                           .label = tr("Note: %1").arg(said(info.asked)),
                           .hint = tr("Type, side, who said so")},
                          [question, &facts] { return text(facts.answers.at(question).note); },
                          [question](Case &r, const QString &typed) -> Result<void> {
                              r.safety.answers[question].note = typed.trimmed().toStdString();
                              return {};
                          }});
    }
    m_kicker = tr("%1 of %2 asked").arg(asked).arg(model::safetyQuestions().size());
    setFields(std::move(fields));
    m_actions.setRows({{.key = "confirm",
                        .title = tr("All answers still hold today"),
                        .unavailable = asked == 0 ? tr("Nothing was asked yet.") : QString()}});
    std::vector<FindingRow> cautions;
    for (const auto &caution : m_session.findings().cautions)
        cautions.push_back({.key = text(caution.sentence),
                            .kind = caution.urgent ? QStringLiteral("urgent") : QStringLiteral("caution"),
                            .answer = text(caution.sentence)});
    m_findings.setRows(std::move(cautions));
    emit refreshed();
}

void SafetyPage::act(const QString &key) {
    if (key != QLatin1String("confirm"))
        return;
    const bool saved = change(tr("Safety answers confirmed"), "safety.confirmed", [this](Case &r) {
        for (auto &[question, answer] : r.safety.answers)
            if (answer.answer != model::Answer::NotAsked)
                answer.asked = m_session.today();
    });
    if (saved)
        say(tr("Confirmed today."));
}

} // namespace app
