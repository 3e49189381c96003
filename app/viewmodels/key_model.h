#pragma once
#include "app/viewmodels/keyed_list_model.h"
#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace app {

/// One command and the keys that give it ("F12", "Ctrl+."). No keys: switched off.
struct KeyCommand {
    QString key; // of the command: "whereAmI"
    QString title;
    QStringList sequences;
    friend bool operator==(const KeyCommand &, const KeyCommand &) = default;
};

/// Every key of the program, in the order in which they are listed for the therapist.
class KeyModel : public KeyedListModel<KeyCommand> {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("owned by the shell")
    Q_PROPERTY(QStringList lines READ lines NOTIFY keysChanged)

public:
    explicit KeyModel(QObject *parent = nullptr);
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    /// The first key of a command in words, empty if it is switched off or unknown.
    Q_INVOKABLE [[nodiscard]] QString keyOf(const QString &command) const;
    /// The first key of a command, or what the command does where its key is switched off.
    [[nodiscard]] QString keyOrTitle(const QString &command) const;
    /// "Undo: Ctrl+Z", a line for each command.
    [[nodiscard]] QStringList lines() const;
    Q_INVOKABLE [[nodiscard]] QString titleOf(const QString &command) const;
    [[nodiscard]] QStringList sequencesOf(const QString &command) const;
    /// Sets the keys of a command: "F12, Ctrl+.", or nothing to switch it off. Returns a sentence if that
    /// cannot be (not a key, or taken by another command), else nothing.
    [[nodiscard]] QString setSequences(const QString &command, const QString &typed);

signals:
    void keysChanged();
};

/// The keys as they are shipped.
[[nodiscard]] std::vector<KeyCommand> shippedKeys();

} // namespace app
