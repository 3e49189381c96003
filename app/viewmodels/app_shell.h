#pragma once
#include "app/page_image_provider.h"
#include "app/session.h"
#include "app/viewmodels/entry_view_model.h"
#include "app/viewmodels/page_view_model.h"
#include "app/viewmodels/settings_view_model.h"
#include "app/viewmodels/shell_view_model.h"
#include <QTimer>
#include <functional>
#include <map>
#include <memory>

namespace app {

/// The program's shell: which pages there are, steps of the visit, undo, lock. It makes the view model of a
/// page when the page is opened and lets it go with the next, so that nothing of a client outlives its page.
class AppShell : public ShellViewModel {
    Q_OBJECT

public:
    AppShell(std::filesystem::path store, model::KeyCost cost, PageImageProvider &pictures);
    ~AppShell() override;

    [[nodiscard]] Session &session() { return m_session; }
    [[nodiscard]] SettingsViewModel &settings() { return m_settings; }
    void openPracticeAtStart();

    [[nodiscard]] QString pageTitle() const override;
    [[nodiscard]] QString helpText() const override;
    void undo() override;
    void redo() override;
    [[nodiscard]] QString whereAmI(const QString &field) const override;
    [[nodiscard]] QStringList partnerLines() const override;
    void findDestinations(const QString &filter) override;
    [[nodiscard]] std::vector<ListRow> pageActions() const override;
    [[nodiscard]] QString visitAction() const override;
    [[nodiscard]] QString visitCommand() const override;
    [[nodiscard]] QString whyNotNow(const QString &command, const QStringList &ofPage) const override;
    void startVisit() override;
    void closeVisit() override;
    void stopWork() override;

    bool eventFilter(QObject *watched, QEvent *event) override;

protected:
    bool openPage(const QString &key) override;
    void closeRecord() override;
    [[nodiscard]] std::vector<ListRow> menuPages() const override;

private:
    using Make = std::function<std::unique_ptr<PageViewModel>()>;
    struct PageKind {
        QString title;
        bool needsClient = true;
        Make make;
    };
    void definePages(PageImageProvider &pictures);
    bool openThing(const QString &id);
    bool pressOnPage(const QString &action);
    void showEntry();
    void showEntryPage();
    [[nodiscard]] QString entryTitle() const;
    void showSettings();
    void refreshRail();
    [[nodiscard]] QString visitWords() const;
    bool editVisit(const QString &words, const std::string &what, const Session::Change &change);
    void warnOrLock();
    void waitForIdle();
    bool openWhereItWasLocked();

    const KeyModel &m_keyNames = *keys();
    Session m_session;
    std::filesystem::path m_folder;
    model::KeyCost m_cost;
    SettingsViewModel m_settings;
    std::map<QString, PageKind> m_kinds;
    std::vector<std::unique_ptr<QObject>> m_shownPages; // the page on screen, and those that are just going
    PageViewModel *m_pageModel = nullptr;
    EntryViewModel *m_entry = nullptr;
    model::Id m_place;  // shelf in hand on the contents page
    QString m_startRow; // row that the next page starts at
    struct Left {
        model::Id client;
        QString page;
    };
    QString m_beforeSettings;
    std::optional<Left> m_left; // where the records were locked
    QTimer m_idle;
    bool m_warned = false;
};

} // namespace app
