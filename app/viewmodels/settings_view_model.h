#pragma once
#include "app/viewmodels/form_model.h"
#include "app/viewmodels/shell_view_model.h"
#include <functional>
#include <map>

namespace app {

/// How the program looks and speaks, and which keys it takes. Names of settings: "theme" and "textScale"
/// (both "desktop" as long as nothing else was chosen), "ownInk", "ownPaper", "speech" ("full" or "short"),
/// "lockMinutes", "language" ("en_GB"), "key.COMMAND" (whose value is "off" for no key).
class SettingsViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("owned by main.cpp")
    Q_PROPERTY(app::FormModel *form READ form CONSTANT)

public:
    /// The shell outlives the settings.
    explicit SettingsViewModel(ShellViewModel *shell);
    [[nodiscard]] FormModel *form() { return &m_form; }
    /// Takes what the therapist chose or typed. What cannot be stays in its field with a sentence.
    Q_INVOKABLE void edit(const QString &key, const QString &value);
    /// How the desktop looks; taken up wherever the choice is "as the desktop is".
    void setDesktop(const QString &theme, double textScale);
    /// Takes up the settings as they were kept; `keptOf` gives an empty string for those that were not. What
    /// is no longer valid is passed over.
    void restore(const std::function<QString(const QString &)> &keptOf);

    /// The language in which the program started; another one holds from the next start on.
    void showLanguage(const QString &language);

signals:
    /// To be kept for the next start: this alone was changed.
    void kept(const QString &key, const QString &value);

private:
    using Looks = std::map<QString, QString>;
    void fill();
    [[nodiscard]] Looks looksNow() const;
    void keepWhatChanged();
    void takeTheme(const QString &value);
    void takeTextScale(const QString &value);
    /// The sentence if it cannot be.
    [[nodiscard]] QString apply(const QString &key, const QString &value);
    [[nodiscard]] FormField keyField(const KeyCommand &command) const;

    ShellViewModel *m_shell;
    FormModel m_form;
    QString m_language;
    QString m_desktopTheme = QStringLiteral("light");
    double m_desktopScale = 1;
    bool m_themeOfDesktop = true, m_scaleOfDesktop = true;
    Looks m_looks;        // as they are known to be kept
    bool m_quiet = false; // what changes now is not the user's choice, or is told by itself
    QString m_refusedKey, m_refusedValue, m_refusedWhy;
};

} // namespace app
