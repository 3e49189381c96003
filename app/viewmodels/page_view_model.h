#pragma once
#include "app/session.h"
#include "app/viewmodels/finding_model.h"
#include "app/viewmodels/form_model.h"
#include "app/viewmodels/row_model.h"
#include "app/viewmodels/shell_view_model.h"
#include "model/sentence.h"
#include <QVariantList>
#include <QVariantMap>
#include <map>
#include <set>

namespace app {

/// What every page is made of, in one order: a line above, the heading, fields, buttons, findings, a list.
///
/// A page derives from it and fills the models in refresh(), which runs after every change of the record. It
/// lives as long as its page is shown, so nothing of a client stays behind.
class PageViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("owned by the shell")
    Q_PROPERTY(QString title READ title NOTIFY refreshed)
    Q_PROPERTY(QString kicker READ kicker NOTIFY refreshed)
    Q_PROPERTY(QString rowsLabel READ rowsLabel NOTIFY refreshed)
    Q_PROPERTY(QString rowsEmpty READ rowsEmpty NOTIFY refreshed)
    Q_PROPERTY(QStringList commands READ commands CONSTANT)
    Q_PROPERTY(QString startRow READ startRow CONSTANT)
    Q_PROPERTY(QString fieldAboveList READ fieldAboveList CONSTANT)
    Q_PROPERTY(QVariantMap drawing READ drawing NOTIFY refreshed)
    Q_PROPERTY(QString picture READ picture NOTIFY refreshed)
    Q_PROPERTY(QString pictureWords READ pictureWords NOTIFY refreshed)
    Q_PROPERTY(bool pictureTurns READ pictureTurns NOTIFY refreshed)
    Q_PROPERTY(QStringList reading READ reading NOTIFY refreshed)
    Q_PROPERTY(QVariantList charts READ charts NOTIFY refreshed)
    Q_PROPERTY(QString drawingWords READ drawingWords NOTIFY refreshed)
    Q_PROPERTY(QString trialWords READ trialWords NOTIFY refreshed)
    Q_PROPERTY(QString trialDetail READ trialDetail NOTIFY refreshed)
    Q_PROPERTY(app::FormModel *form READ form CONSTANT)
    Q_PROPERTY(app::ActionModel *actions READ actions CONSTANT)
    Q_PROPERTY(app::FindingModel *findings READ findings CONSTANT)
    Q_PROPERTY(app::RowModel *rows READ rows CONSTANT)

public:
    PageViewModel(Session &session, ShellViewModel &shell);

    [[nodiscard]] QString title() const { return m_title; }
    [[nodiscard]] QString kicker() const { return m_kicker; }
    [[nodiscard]] QString rowsLabel() const { return m_rowsLabel; }
    [[nodiscard]] QString rowsEmpty() const { return m_rowsEmpty; }
    [[nodiscard]] virtual QStringList commands() const { return {}; }
    /// The row that takes the focus when the page opens; empty: the heading does.
    [[nodiscard]] QString startRow() const { return m_startRow; }
    void startAtRow(const QString &key) { m_startRow = key; }
    /// The field above the list from which Down goes into the list; empty: none.
    [[nodiscard]] virtual QString fieldAboveList() const { return {}; }
    /// The kitchen's front view: boxes, width and height in mm; empty: no drawing on this page.
    [[nodiscard]] QVariantMap drawing() const { return m_drawing; }
    /// A page of a paper as a picture, and the paper's words line by line.
    [[nodiscard]] QString picture() const { return m_picture; }
    [[nodiscard]] QString pictureWords() const { return m_pictureWords; }
    /// It is one of several, which act("nextPage") and act("pageBefore") turn.
    [[nodiscard]] bool pictureTurns() const { return m_pictureTurns; }
    [[nodiscard]] QStringList reading() const { return m_reading; }
    /// Levels over time: label, sentence, points of date and level.
    [[nodiscard]] QVariantList charts() const { return m_charts; }
    [[nodiscard]] QString drawingWords() const { return m_drawingWords; }
    /// What to give next in a test by touch, and how far it is; empty: none runs.
    [[nodiscard]] QString trialWords() const { return m_trialWords; }
    [[nodiscard]] QString trialDetail() const { return m_trialDetail; }
    [[nodiscard]] FormModel *form() { return &m_form; }
    [[nodiscard]] ActionModel *actions() { return &m_actions; }
    [[nodiscard]] FindingModel *findings() { return &m_findings; }
    [[nodiscard]] RowModel *rows() { return &m_rows; }

    Q_INVOKABLE virtual void edit(const QString &key, const QString &value);
    Q_INVOKABLE virtual void act(const QString & /*key*/) {}
    /// Return in a field, after what was typed was taken or refused.
    Q_INVOKABLE virtual void returned(const QString & /*key*/) {}
    Q_INVOKABLE virtual void moved(const QString & /*row*/) {}
    Q_INVOKABLE virtual void activated(const QString & /*row*/) {}
    Q_INVOKABLE virtual void command(const QString & /*name*/) {}
    /// Why a command that the page answers cannot be given now, a sentence; empty: it can.
    [[nodiscard]] virtual QString whyNotNow(const QString & /*command*/) const { return {}; }
    /// Puts the focus on the next field that is open, from the one named; by: 1 or -1. Says so if none is.
    Q_INVOKABLE void nextGap(const QString &from, int by);
    /// Leaves a part of the page, such as one thing of a list, as its button does. Nothing to leave: nothing.
    Q_INVOKABLE void goBack();
    /// Typing in a field that is not accepted yet; kept over a crash.
    Q_INVOKABLE void typing(const QString &key, const QString &text);

    virtual void refresh() = 0;
    /// Takes the text refused last out of its field again, if nothing was changed since: which it was, or
    /// empty.
    [[nodiscard]] QString takeBackRefused();
    /// Takes what is not accepted yet out of the field in hand and says so; false: all in it is accepted.
    Q_INVOKABLE bool takeBack(const QString &key);
    /// Stops the long work of this page.
    virtual void stopWork() {}

signals:
    void refreshed();
    /// The page shall put the focus on a field, or on the list's row.
    void focusField(const QString &key);
    void focusRow(const QString &key);
    /// The page is another one now, such as the next shelf: focus on the heading.
    void focusHeading();
    /// Focus on the trial, whose keys answer it.
    void focusTrial();

protected:
    /// What the fields are about, if the page shows one of several, such as a thing: a draft is kept for it
    /// alone.
    [[nodiscard]] virtual QString subject() const { return {}; }
    /// A field that waits for something: refused, or yes or no not asked.
    [[nodiscard]] virtual bool isGap(const FormField &field) const;
    /// One field: how it looks, how it reads the record, how it changes it. `write` fails with the sentence
    /// that stands beside the field then, with what was typed.
    struct FieldSpec {
        FormField field;
        std::function<QString()> read;
        std::function<model::Result<void>(model::Case &, const QString &)> write;
    };
    /// Shows these fields, with what was typed wrongly still in its place.
    void setFields(std::vector<FieldSpec> fields);
    /// An edit of the record; failure is said. True if it was saved.
    bool change(const QString &words, const std::string &what, const Session::Change &change);
    void say(const QString &text) { m_shell.say(text); }
    void say(const model::Error &error) { m_shell.say(QString::fromStdString(error.sentence)); }
    /// Says it when the focus has moved: a reader lets a new focus cut off what was said before it.
    void sayAfterFocus(const QString &text, int afterMs = 80);
    [[nodiscard]] const model::Case &record() const { return m_session.record(); }
    void setPicture(const QString &source, const QString &words, bool turns = false) {
        m_pictureTurns = turns;
        m_picture = source;
        m_pictureWords = words;
    }
    void setReading(const QStringList &lines) { m_reading = lines; }
    void setTrial(const QString &words, const QString &detail) {
        m_trialWords = words;
        m_trialDetail = detail;
    }
    void setCharts(const QVariantList &charts) { m_charts = charts; }
    /// Empties a field although the record's value is the same, and forgets its draft: its text was taken.
    void clearField(const QString &key);
    /// Puts a sentence beside the field and keeps the text in it; the field speaks it.
    void refuse(const QString &key, const QString &typed, const QString &sentence);

    Session &m_session;
    ShellViewModel &m_shell;
    QString m_title, m_kicker, m_rowsLabel, m_rowsEmpty, m_drawingWords;
    QVariantMap m_drawing;
    FormModel m_form;
    ActionModel m_actions;
    FindingModel m_findings;
    RowModel m_rows;

private:
    struct Pending {
        QString typed, sentence;
    };
    [[nodiscard]] QString forgetTyped(const QString &key);
    [[nodiscard]] QString cleaned(const FormField &field, const QString &typed);
    void showAgain(const QString &key);
    [[nodiscard]] QString fieldName(const QString &key) const;
    [[nodiscard]] QString draftName(const QString &key) const;
    [[nodiscard]] QString nextStepWords() const;
    void showFields();

    bool m_pictureTurns = false;
    QString m_startRow, m_picture, m_pictureWords, m_trialWords, m_trialDetail;
    QStringList m_reading;
    QVariantList m_charts;
    std::vector<FieldSpec> m_fields;
    std::map<QString, Pending> m_pending; // by fieldName(), as the following
    std::map<QString, QString> m_told;    // by fieldName(): what was changed in the text as it was taken
    QString m_refusedLast;
    std::set<QString> m_typedHere; // while the page is open: no draft of before
};

[[nodiscard]] inline QString text(const std::string &utf8) {
    return QString::fromStdString(utf8);
}
/// A sentence of a table of `model`, in the language of the window.
[[nodiscard]] inline QString said(const std::string &sentence) {
    return text(model::Sentence::tr(sentence));
}

} // namespace app
