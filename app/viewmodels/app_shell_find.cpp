#include "app/viewmodels/app_shell.h"
#include "app/viewmodels/sentences.h"
#include "model/planning.h"
#include <algorithm>

/// What can be gone to and done by its name.
namespace app {

bool AppShell::pressOnPage(const QString &action) {
    if (!m_pageModel)
        return false;
    const auto &rows = m_pageModel->actions()->rows();
    const auto row = std::ranges::find(rows, action, &ActionRow::key);
    if (row == rows.end())
        return false;
    if (row->unavailable.isEmpty())
        m_pageModel->act(action);
    else
        say(row->unavailable);
    return true;
}

bool AppShell::openThing(const QString &id) {
    if (!m_session.hasClient())
        return false;
    const auto &things = m_session.record().things;
    const auto thing = std::ranges::find(things, model::Id{id.toStdString()}, &model::Thing::id);
    if (thing == things.end() || !thing->place)
        return false;
    m_place = *thing->place;
    m_startRow = id;
    return openPage(QStringLiteral("contents"));
}

std::vector<ListRow> AppShell::pageActions() const {
    std::vector<ListRow> rows;
    if (m_pageModel)
        for (const ActionRow &action : m_pageModel->actions()->rows())
            rows.push_back({.key = QStringLiteral("act:") + action.key,
                            .title = action.title,
                            .facts = action.unavailable.isEmpty() ? tr("on this page") : action.unavailable});
    else if (page() == QLatin1String("entry") && m_entry->stage() != QLatin1String("code"))
        rows.push_back({.key = QStringLiteral("practice"),
                        .title = tr("Practice caseload"),
                        .facts = tr("three invented clients")});
    return rows;
}

void AppShell::findDestinations(const QString &filter) {
    std::vector<ListRow> found;
    const QString wanted = filter.trimmed();
    const auto add = [&](const QString &key, const QString &title, const QString &facts) {
        if (isFoundBy(title, wanted))
            found.push_back({.key = key, .title = title, .facts = facts});
    };
    if (m_session.isOpen()) {
        for (const auto &step : steps()->rows())
            add(step.key, step.title, step.state);
        if (m_session.hasClient()) {
            add(QStringLiteral("reading"), tr("Reading trial"), tr("sight"));
            add(QStringLiteral("legible"), tr("Legible here?"), tr("sight"));
        }
        add(QStringLiteral("caseload"), tr("Caseload"), {});
        add(QStringLiteral("settings"), tr("Settings"), tr("text size, colours, keys"));
        add(QStringLiteral("command:lock"), tr("Lock"), {});
    } else {
        add(QStringLiteral("entry"), entryTitle(), {});
        add(QStringLiteral("settings"), tr("Settings"), tr("text size, colours, keys"));
    }
    if (m_session.hasClient()) {
        add(QStringLiteral("markertest"), tr("Marker test"), tr("which marks are told apart"));
        add(QStringLiteral("appliances"), tr("Appliances"), tr("controls and their marks"));
        add(QStringLiteral("photos"), tr("Photographs"), tr("of the kitchen, each with words"));
        add(QStringLiteral("markerkit"), tr("Marker kit"), tr("marks at hand"));
        add(QStringLiteral("upkeep"), tr("Upkeep"), tr("what is due, dates of food, supplies"));
        for (const auto &place : m_session.record().places)
            add(QStringLiteral("place:") + text(place.id.text),
                text(model::placeWords(m_session.record(), place.id)), tr("shelf"));
        if (!wanted.isEmpty())
            for (const auto &thing : m_session.record().things)
                if (thing.place)
                    add(QStringLiteral("thing:") + text(thing.id.text), text(thing.name),
                        text(model::placeWords(m_session.record(), *thing.place)));
    }
    if (!wanted.isEmpty())
        for (const ListRow &action : pageActions())
            add(action.key, action.title, action.facts);
    const QString pressed = QStringLiteral("act:") + visitCommand();
    if (m_session.hasClient() && !wanted.isEmpty() && std::ranges::count(found, pressed, &ListRow::key) == 0)
        add(QStringLiteral("command:") + visitCommand(), visitWords(), keys()->keyOf(visitCommand()));
    if (m_session.isOpen() && !wanted.isEmpty())
        if (const auto clients = m_session.caseload())
            for (const auto &client : *clients)
                add(QStringLiteral("open:") + text(client.id.text), text(client.name), tr("client"));
    std::vector<ListRow> unique;
    for (auto &row : found)
        if (std::ranges::count(unique, row.key, &ListRow::key) == 0)
            unique.push_back(std::move(row));
    showFound(std::move(unique), wanted);
}

std::vector<ListRow> AppShell::menuPages() const {
    if (page() == QLatin1String("settings"))
        return {};
    return {{.key = QStringLiteral("settings"),
             .title = tr("Settings"),
             .facts = tr("text size, colours, keys")}};
}

} // namespace app
