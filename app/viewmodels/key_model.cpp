#include "app/viewmodels/key_model.h"
#include <QKeySequence>
#include <optional>

namespace app {
namespace {

enum Role { Key = Qt::UserRole + 1, Title, Sequences };

/// A letter alone would be lost to typing.
bool isTyping(QKeyCombination key) {
    return key.key() < Qt::Key_Escape &&
           !(key.keyboardModifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier));
}

std::optional<QStringList> readSequences(const QString &typed) {
    QStringList read;
    for (const QString &part : typed.split(QLatin1Char(','), Qt::SkipEmptyParts)) {
        const QKeySequence sequence = QKeySequence::fromString(part.trimmed(), QKeySequence::PortableText);
        if (sequence.count() != 1 || sequence[0].key() == Qt::Key_unknown || isTyping(sequence[0]))
            return std::nullopt;
        read << sequence.toString(QKeySequence::PortableText);
    }
    return read;
}

} // namespace

KeyModel::KeyModel(QObject *parent) : KeyedListModel(parent) {
    setRows(shippedKeys());
}

QVariant KeyModel::data(const QModelIndex &index, int role) const {
    const KeyCommand *command = rowAt(index);
    if (!command)
        return {};
    switch (role) {
    case Key:
        return command->key;
    case Title:
        return command->title;
    case Sequences:
        return command->sequences;
    }
    return {};
}

QHash<int, QByteArray> KeyModel::roleNames() const {
    return {{Key, "key"}, {Title, "title"}, {Sequences, "keySequences"}};
}

QStringList KeyModel::sequencesOf(const QString &command) const {
    for (const KeyCommand &row : rows())
        if (row.key == command)
            return row.sequences;
    return {};
}

QStringList KeyModel::lines() const {
    QStringList lines;
    for (const KeyCommand &row : rows()) {
        const QString keys = row.sequences.isEmpty() ? tr("off") : row.sequences.join(tr(" or "));
        lines << tr("%1: %2").arg(row.title, keys);
    }
    return lines;
}

QString KeyModel::titleOf(const QString &command) const {
    for (const KeyCommand &row : rows())
        if (row.key == command)
            return row.title;
    return {};
}

QString KeyModel::keyOrTitle(const QString &command) const {
    const QString key = keyOf(command);
    return key.isEmpty() ? titleOf(command) : key;
}

QString KeyModel::keyOf(const QString &command) const {
    return sequencesOf(command).value(0);
}

QString KeyModel::setSequences(const QString &command, const QString &typed) {
    const std::optional<QStringList> wanted = readSequences(typed);
    if (!wanted)
        return tr("Not a key: %1. Try F12 or Ctrl+G, or leave it empty to switch it off.").arg(typed);
    std::vector<KeyCommand> changed = rows();
    for (const KeyCommand &other : changed)
        for (const QString &sequence : *wanted)
            if (other.key != command && other.sequences.contains(sequence))
                return tr("%1 is taken: %2. Choose another key, or change that one first.")
                    .arg(sequence, other.title);
    for (KeyCommand &row : changed)
        if (row.key == command)
            row.sequences = *wanted;
    setRows(std::move(changed));
    emit keysChanged();
    return {};
}

std::vector<KeyCommand> shippedKeys() {
    std::vector<KeyCommand> keys{
        {"help", KeyModel::tr("Help for this page"), {"F1"}},
        {"allKeys", KeyModel::tr("All keys"), {"Shift+F1"}},
        {"correct", KeyModel::tr("Correct this row"), {"F2"}},
        {"nextGap", KeyModel::tr("Next gap or doubt"), {"F3"}},
        {"previousGap", KeyModel::tr("Previous gap or doubt"), {"Shift+F3"}},
        {"sayAgain", KeyModel::tr("Say the last message again"), {"F5"}},
        {"messages", KeyModel::tr("List of messages"), {"Shift+F5"}},
        {"nextRegion", KeyModel::tr("Next part of the window"), {"F6"}},
        {"previousRegion", KeyModel::tr("Previous part of the window"), {"Shift+F6"}},
        {"why", KeyModel::tr("Why this line"), {"F7"}},
        {"overrule", KeyModel::tr("Overrule this line"), {"F8"}},
        {"readBack", KeyModel::tr("Read the row back"), {"F9"}},
        {"menu", KeyModel::tr("What can be done here"), {"F10", "Shift+F10", "Menu"}},
        {"stop", KeyModel::tr("Stop the long work in hand"), {"Escape"}},
        {"whereAmI", KeyModel::tr("Where am I"), {"F12", "Ctrl+."}},
        {"goTo", KeyModel::tr("Go to a step, client, shelf, thing or command"), {"Ctrl+G", "Ctrl+F"}},
        {"undo", KeyModel::tr("Undo"), {"Ctrl+Z"}},
        {"redo", KeyModel::tr("Redo"), {"Ctrl+Shift+Z", "Ctrl+Y"}},
        {"startVisit", KeyModel::tr("Start a visit"), {"Ctrl+Return"}},
        {"closeVisit", KeyModel::tr("Close the visit"), {"Ctrl+Shift+Return"}},
        {"lock", KeyModel::tr("Lock"), {"Ctrl+Shift+L"}},
        {"larger", KeyModel::tr("Larger text"), {"Ctrl++", "Ctrl+="}},
        {"smaller", KeyModel::tr("Smaller text"), {"Ctrl+-"}},
        {"plainSize", KeyModel::tr("Text at 100 percent"), {"Ctrl+0"}},
        {"caseload", KeyModel::tr("Caseload"), {"Alt+0"}},
        {"blank", KeyModel::tr("Blank the screen, or show it again"), {"Ctrl+Shift+B"}},
        {"partner", KeyModel::tr("Partner view, in a second window"), {"Ctrl+Shift+P"}},
        {"partnerDown", KeyModel::tr("Partner's page down"), {"Ctrl+PgDown"}},
        {"partnerUp", KeyModel::tr("Partner's page up"), {"Ctrl+PgUp"}},
    };
    for (int number = 1; number <= 9; ++number)
        keys.push_back({QStringLiteral("step%1").arg(number),
                        KeyModel::tr("Step %1 of the visit").arg(number),
                        {QStringLiteral("Alt+%1").arg(number)}});
    return keys;
}

} // namespace app
