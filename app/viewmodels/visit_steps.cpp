#include "app/viewmodels/visit_steps.h"
#include "model/progress.h"
#include <QCoreApplication>
#include <algorithm>

namespace app {
namespace {

struct Steps {
    Q_DECLARE_TR_FUNCTIONS(Steps)
};

Step measured(const model::Case &record, model::Domain domain, const char *key, int number,
              const QString &title) {
    int all = 0;
    int done = 0;
    for (const auto &info : model::testInfos()) {
        if (info.domain != domain)
            continue;
        ++all;
        done += std::ranges::count(record.measurements, info.test, &model::Measurement::test) > 0 ? 1 : 0;
    }
    const QString state = done == 0     ? Steps::tr("not begun")
                          : done == all ? Steps::tr("done")
                                        : Steps::tr("%1 not tested").arg(all - done);
    return {QLatin1String(key), number, title, state, done == all, false};
}

/// Done while it rests on what is recorded now.
Step planStep(const Session &session) {
    const auto &plan = session.record().plan;
    const bool planned = plan && !plan->lines.empty();
    const bool holds = session.planChangedSince().empty();
    const QString state = !plan     ? Steps::tr("not begun")
                          : !holds  ? Steps::tr("out of date")
                          : planned ? Steps::tr("worked out")
                                    : Steps::tr("none possible");
    return {QStringLiteral("plan"), 7, Steps::tr("Plan"), state, planned && holds, false};
}

Step safetyStep(const model::Case &record) {
    const auto asked = std::ranges::count_if(model::safetyQuestions(), [&](const auto &question) {
        return record.safety.answer(question.question) != model::Answer::NotAsked;
    });
    const auto all = static_cast<long>(model::safetyQuestions().size());
    return {QStringLiteral("safety"),
            1,
            Steps::tr("Safety"),
            asked == all ? Steps::tr("done") : Steps::tr("%1 not asked").arg(all - asked),
            asked == all,
            false};
}

} // namespace

std::vector<Step> visitSteps(const Session &session) {
    const model::Case &r = session.record();
    const auto placesWith = std::ranges::count_if(r.places, [&](const model::Place &place) {
        return std::ranges::any_of(r.things,
                                   [&](const model::Thing &thing) { return thing.place == place.id; });
    });
    const auto open = model::openItems(r, session.today()).size();
    return {
        {QStringLiteral("client"), 0, Steps::tr("Client"), {}, false, false},
        safetyStep(r),
        measured(r, model::Domain::Sight, "sight", 2, Steps::tr("Sight")),
        measured(r, model::Domain::Touch, "touch", 3, Steps::tr("Touch")),
        measured(r, model::Domain::Reach, "reach", 4, Steps::tr("Reach")),
        {QStringLiteral("kitchen"), 5, Steps::tr("Kitchen"),
         r.places.empty() ? Steps::tr("not begun") : Steps::tr("%1 places").arg(r.places.size()),
         !r.places.empty(), false},
        {QStringLiteral("contents"), 6, Steps::tr("Contents"),
         r.things.empty() ? Steps::tr("not begun")
                          : Steps::tr("%1 of %2 places").arg(placesWith).arg(r.places.size()),
         !r.places.empty() && placesWith == static_cast<long>(r.places.size()), false},
        planStep(session),
        {QStringLiteral("goals"), 8, Steps::tr("Goals"),
         r.goals.empty() ? Steps::tr("not begun") : Steps::tr("%1 agreed").arg(r.goals.size()),
         !r.goals.empty(), false},
        {QStringLiteral("papers"), 9, Steps::tr("Papers"), {}, false, false},
        {QStringLiteral("followup"), 0, Steps::tr("Follow-up"),
         open ? Steps::tr("%1 open").arg(open) : Steps::tr("nothing open"), open == 0, false},
        {QStringLiteral("progress"), 0, Steps::tr("Progress"), {}, false, false},
    };
}

} // namespace app
