#pragma once
#include "app/viewmodels/key_model.h"
#include "app/viewmodels/row_model.h"
#include "app/viewmodels/step_model.h"
#include <QElapsedTimer>
#include <QObject>
#include <QStringList>
#include <QUrl>
#include <QVariantMap>
#include <QtQml/qqmlregistration.h>

namespace app {

/// A page that the window can show. `file` is its QML file, whose required properties are filled from
/// `properties` (the shell itself is always among them, as "shell").
struct Page {
    QString key;
    QString title;
    QUrl file;
    QVariantMap properties;
    QString help; // for F1: what is done here, and its keys
};

/// What the window shows around the pages: the steps, the one message line, keys, text size, theme, lock.
///
/// Derive from it and override the virtual functions; it works as it stands for pages given to addPage().
class ShellViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("owned by main.cpp")
    Q_PROPERTY(QString page READ page NOTIFY changed)
    Q_PROPERTY(QString pageTitle READ pageTitle NOTIFY changed)
    Q_PROPERTY(QUrl pageFile READ pageFile NOTIFY changed)
    Q_PROPERTY(QVariantMap pageProperties READ pageProperties NOTIFY changed)
    Q_PROPERTY(QString helpText READ helpText NOTIFY changed)
    Q_PROPERTY(QString clientName READ clientName NOTIFY changed)
    Q_PROPERTY(QString clientLine READ clientLine NOTIFY changed)
    Q_PROPERTY(QString stepLine READ stepLine NOTIFY changed)
    Q_PROPERTY(bool hasSteps READ hasSteps NOTIFY changed)
    Q_PROPERTY(QString visitAction READ visitAction NOTIFY changed)
    Q_PROPERTY(QString visitCommand READ visitCommand NOTIFY changed)
    Q_PROPERTY(bool locked READ isLocked NOTIFY changed)
    Q_PROPERTY(QString busyWith READ busyWith NOTIFY changed)
    Q_PROPERTY(double progress READ progress NOTIFY changed)
    Q_PROPERTY(double textScale READ textScale WRITE setTextScale NOTIFY looksChanged)
    Q_PROPERTY(QString themeMode READ themeMode WRITE setThemeMode NOTIFY looksChanged)
    Q_PROPERTY(QString ownInk READ ownInk NOTIFY looksChanged)
    Q_PROPERTY(QString ownPaper READ ownPaper NOTIFY looksChanged)
    Q_PROPERTY(bool shortSpeech READ isShortSpeech NOTIFY looksChanged)
    Q_PROPERTY(bool partnerShown READ isPartnerShown NOTIFY partnerChanged)
    Q_PROPERTY(QStringList partnerLines READ partnerLines NOTIFY partnerChanged)
    Q_PROPERTY(bool blank READ isBlank NOTIFY blankChanged)
    Q_PROPERTY(QString message READ message NOTIFY messageChanged)
    Q_PROPERTY(app::StepModel *steps READ steps CONSTANT)
    Q_PROPERTY(int lastStep READ lastStep NOTIFY changed)
    Q_PROPERTY(app::KeyModel *keys READ keys CONSTANT)
    Q_PROPERTY(app::RowModel *destinations READ destinations CONSTANT)
    Q_PROPERTY(int foundInAll READ foundInAll NOTIFY foundChanged)
    Q_PROPERTY(app::RowModel *messages READ messages CONSTANT)

public:
    /// So long a reader is busy with a new page: what else is said meanwhile it may drop.
    static constexpr int pageIsReadMs = 600;
    explicit ShellViewModel(QObject *parent = nullptr);

    [[nodiscard]] QString page() const { return m_page.key; }
    [[nodiscard]] virtual QString pageTitle() const { return m_page.title; }
    [[nodiscard]] QUrl pageFile() const { return m_page.file; }
    [[nodiscard]] QVariantMap pageProperties() const;
    [[nodiscard]] virtual QString helpText() const { return m_page.help; }
    [[nodiscard]] QString clientName() const { return m_clientName; }
    [[nodiscard]] QString clientLine() const { return m_clientLine; }
    /// The step in hand, for the one button of a narrow window: "Step 4 of 9: Kitchen", else the page's
    /// title.
    [[nodiscard]] QString stepLine() const;
    /// Row of the step that is open, or was the last.
    [[nodiscard]] int lastStep() const { return m_lastStep; }
    [[nodiscard]] bool hasSteps() const { return !m_steps.rows().empty(); }
    /// What can be done about the visit now, "Start a visit" or "Close visit 2", and the command that does
    /// it; empty: nothing.
    [[nodiscard]] virtual QString visitAction() const { return {}; }
    [[nodiscard]] virtual QString visitCommand() const { return {}; }
    /// Why a command of the keys cannot be given now, a sentence; empty: it can. `ofPage` are those that the
    /// page answers.
    [[nodiscard]] virtual QString whyNotNow(const QString &command, const QStringList &ofPage) const;
    [[nodiscard]] bool isLocked() const { return m_locked; }
    [[nodiscard]] QString busyWith() const { return m_busyWith; }
    [[nodiscard]] double progress() const { return m_progress; }
    /// The text sizes on offer, 1 to 4.
    [[nodiscard]] static std::vector<double> scales();
    /// 1 to 4; other values are refused.
    [[nodiscard]] double textScale() const { return m_textScale; }
    /// "light", "dark", "contrast" (light on black), "paper" (black on white) or "own"; other words are
    /// refused.
    [[nodiscard]] QString themeMode() const { return m_themeMode; }
    /// The colours of the mode "own": names or "#RRGGBB", as they were typed.
    [[nodiscard]] QString ownInk() const { return m_ownInk; }
    [[nodiscard]] QString ownPaper() const { return m_ownPaper; }
    /// No hints are spoken.
    [[nodiscard]] bool isShortSpeech() const { return m_shortSpeech; }
    /// Nothing is to be seen, for instance by a client during a marker test.
    [[nodiscard]] bool isBlank() const { return m_blank; }
    /// A second window shows the page in plain large words, for a client or a helper to look at.
    [[nodiscard]] bool isPartnerShown() const { return m_partnerShown; }
    /// What it shows: the heading first, and nothing that tells whose page it is.
    [[nodiscard]] virtual QStringList partnerLines() const { return {pageTitle()}; }
    /// The last sentence said on this page.
    [[nodiscard]] QString message() const { return m_message; }
    [[nodiscard]] StepModel *steps() { return &m_steps; }
    [[nodiscard]] KeyModel *keys() { return &m_keys; }
    [[nodiscard]] RowModel *destinations() { return &m_destinations; }
    /// How many there are in all; `destinations` holds the first of them.
    [[nodiscard]] int foundInAll() const { return m_foundInAll; }
    [[nodiscard]] RowModel *messages() { return &m_messages; }

    /// Shows and speaks a sentence and keeps it in the list of messages. The same sentence again is spoken
    /// again. What is said while one page gives way to another is spoken once the focus has moved: a reader
    /// lets a new focus cut off what was said before it.
    Q_INVOKABLE void say(const QString &text);
    /// Only speaks it: what can be seen anyway and need not be said again.
    Q_INVOKABLE void announce(const QString &text) { emit said(text); }
    Q_INVOKABLE void sayAgain();
    /// Spoken and kept in the list; on the message line only if nothing stands there.
    void sayBeside(const QString &text);
    /// After the heading of the page that was just opened.
    void sayAfterPage(const QString &text);
    /// Opens a page: typing in hand is kept first. A key that no page has is said, and the old page stays.
    Q_INVOKABLE void goTo(const QString &key);
    /// Opens the step with that number in the rail, or says that there is none.
    Q_INVOKABLE void goToStep(int number);
    /// Keeps typing in hand, then closes the record.
    Q_INVOKABLE void lock();
    /// Opens the second window, or closes it.
    Q_INVOKABLE void togglePartner();
    /// Covers the window, or shows it again; keys and speech go on as before.
    Q_INVOKABLE void toggleBlank();
    Q_INVOKABLE void larger();
    Q_INVOKABLE void smaller();
    Q_INVOKABLE void plainSize();
    void setTextScale(double scale);
    void setThemeMode(const QString &mode);
    /// A sentence if one is no colour, or if they differ by less than 7 : 1; else empty.
    [[nodiscard]] QString setOwnColours(const QString &ink, const QString &paper);
    void setShortSpeech(bool isShort);
    /// Minutes without a key until the records lock, on offer: 2 to 30.
    [[nodiscard]] static std::vector<int> lockChoices();
    [[nodiscard]] int lockMinutes() const { return m_lockMinutes; }
    /// Other values are refused.
    void setLockMinutes(int minutes);

    /// Undoes one action of the record and says which. The base has no record.
    Q_INVOKABLE virtual void undo();
    Q_INVOKABLE virtual void redo();
    /// Client, page, field in hand, whether all is saved.
    Q_INVOKABLE [[nodiscard]] virtual QString whereAmI(const QString &field) const;
    /// Fills `destinations` with what has `filter` in its name; the base knows pages and steps.
    Q_INVOKABLE virtual void findDestinations(const QString &filter);
    /// Begins a visit, or goes on with the one under way; ends it. They say why not where that cannot be.
    Q_INVOKABLE virtual void startVisit() {}
    Q_INVOKABLE virtual void closeVisit() {}
    /// Fills `destinations` with the commands that can be given now and have `filter` in their name, those of
    /// the page first, as "command:NAME".
    Q_INVOKABLE void findCommands(const QString &filter, const QStringList &ofPage);
    /// Stops the long work in hand.
    Q_INVOKABLE virtual void stopWork() {}

    /// Long work: says `title` at once, the share done every ten seconds, and `sentence` at its end.
    void beginWork(const QString &title);
    void showProgress(double share);
    void endWork(const QString &sentence);

    void addPage(Page page);
    void setClient(const QString &name, const QString &line);
    void setSteps(std::vector<Step> steps);

signals:
    void changed();
    void looksChanged();
    void messageChanged();
    void partnerChanged();
    void blankChanged();
    void foundChanged();
    /// Speak this, also if it is the same again.
    void said(const QString &text);
    /// Before the page goes: controls hand over what is typed.
    void leaving();
    /// The window loads the page afresh.
    void pageOpened();

protected:
    /// Shows the page with that key; false if there is none. Override to make pages on demand.
    virtual bool openPage(const QString &key);
    /// Called by lock() after typing was kept: close the record, then setLocked(true) and show() the unlock
    /// page.
    virtual void closeRecord();
    /// Fills `destinations`: what begins with `wanted` first, and the first fifteen once something is typed.
    /// A list that is long at each letter keeps a screen reader busy.
    void showFound(std::vector<ListRow> found, const QString &wanted);
    /// The buttons of the page in hand, as rows for the two menus; goTo() of their keys presses them.
    [[nodiscard]] virtual std::vector<ListRow> pageActions() const { return {}; }
    /// Pages for the menu besides, which are not gone to by a key.
    [[nodiscard]] virtual std::vector<ListRow> menuPages() const { return {}; }
    void show(Page page);
    /// Off the message line, if it stands there: it is no longer so. The list of messages keeps it.
    void takeBack(const QString &sentence);
    /// Makes it the page in hand, whose fields and rows may be filled then; pageOpened() shows it.
    void prepare(Page page);
    void setLocked(bool locked);
    [[nodiscard]] const std::vector<Page> &pages() const { return m_pages; }

private:
    void showAt(double scale);
    /// Shows these steps, that of the page in hand as such.
    void markHere(std::vector<Step> steps);
    void speak(const QString &text);

    StepModel m_steps;
    KeyModel m_keys;
    RowModel m_destinations;
    RowModel m_messages;
    std::vector<Page> m_pages;
    Page m_page;
    QString m_clientName, m_clientLine;
    QString m_message, m_lastSaid;
    QString m_busyWith;
    QString m_themeMode = QStringLiteral("light");
    QString m_ownInk = QStringLiteral("#10203A"), m_ownPaper = QStringLiteral("#FFF6D8");
    bool m_shortSpeech = false;
    bool m_partnerShown = false;
    bool m_blank = false;
    bool m_turning = false;
    int m_lockMinutes = 5;
    QElapsedTimer m_sinceProgressSaid;
    double m_progress = 0;
    double m_textScale = 1;
    int m_messageCount = 0, m_lastStep = 0;
    int m_foundInAll = 0;
    bool m_locked = false;
};

} // namespace app
