#pragma once
#include "app/session.h"
#include "app/viewmodels/shell_view_model.h"
#include <filesystem>
#include <optional>

namespace app {

/// The first page: unlocking the records, making new ones, or opening the practice caseload.
///
/// `stage`: "unlock"; "setup" (no records in the folder yet); "code" (the recovery code is shown and one
/// group has to be typed back). Secrets are wiped as far as the toolkit allows.
class EntryViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("owned by the shell")
    Q_PROPERTY(QString stage READ stage NOTIFY changed)
    Q_PROPERTY(QString error READ error NOTIFY changed)
    Q_PROPERTY(QString errorAt READ errorAt NOTIFY changed)
    Q_PROPERTY(QString folder READ folder CONSTANT)
    Q_PROPERTY(bool busy READ busy NOTIFY changed)
    Q_PROPERTY(QStringList groups READ groups NOTIFY changed)
    Q_PROPERTY(int askedGroup READ askedGroup NOTIFY changed)
    Q_PROPERTY(bool keyFileDamaged READ keyFileDamaged NOTIFY changed)

public:
    EntryViewModel(Session &session, ShellViewModel &shell, std::filesystem::path folder,
                   model::KeyCost cost);

    [[nodiscard]] QString stage() const { return m_stage; }
    [[nodiscard]] QString error() const { return m_error; }
    /// The field of the set-up that the error is about: author, first or second.
    [[nodiscard]] QString errorAt() const { return m_errorAt; }
    [[nodiscard]] QString folder() const { return QString::fromStdString(m_folder.string()); }
    [[nodiscard]] bool busy() const { return m_busy; }
    [[nodiscard]] QStringList groups() const;
    [[nodiscard]] int askedGroup() const { return m_askedGroup; }
    [[nodiscard]] bool keyFileDamaged() const { return m_keyFileDamaged; }

    /// Opens the records with the passphrase or the recovery code.
    Q_INVOKABLE void unlock(const QString &secret);
    Q_INVOKABLE void practice();
    /// Makes new records; shows the recovery code next.
    Q_INVOKABLE void create(const QString &author, const QString &passphrase, const QString &again);
    /// Ends the set-up if it is the asked group of the code.
    Q_INVOKABLE void confirm(const QString &typedGroup);
    /// Puts the copy of the key file in the place of a damaged one.
    Q_INVOKABLE void restoreKeyFile();

signals:
    void changed();
    /// Fields with secrets are emptied.
    void wipe();
    /// A field of the set-up, by its name as in errorAt: the window goes there, which speaks the error.
    void refused(const QString &at);

private:
    void fail(const QString &sentence, const QString &at = {});
    void entered(model::Store store, const QString &author);

    Session &m_session;
    ShellViewModel &m_shell;
    std::filesystem::path m_folder;
    model::KeyCost m_cost;
    QString m_stage, m_error, m_errorAt, m_author;
    bool m_busy = false;
    bool m_keyFileDamaged = false;
    std::optional<model::Store> m_made;
    std::string m_code;
    int m_askedGroup = 1;
};

} // namespace app
