import QtQuick
import Feltmark

// Opens records that are there. Property: entry.
Column {
    id: stage

    required property EntryViewModel entry
    readonly property Item field: secret.field

    function clear(): void {
        secret.clear();
    }

    width: parent ? (parent as Item).width : 0
    spacing: 2 * Theme.gap

    SecretEntry {
        id: secret

        label: qsTr("Passphrase or recovery code")
        error: stage.entry.stage === "unlock" ? stage.entry.error : ""
        onAccepted: typed => stage.entry.unlock(typed)
    }
    ActionButton {
        text: stage.entry.busy ? qsTr("Unlocking") : qsTr("Unlock")
        primary: true
        onActed: stage.entry.unlock(secret.text)
    }
    ActionButton {
        visible: stage.entry.keyFileDamaged
        text: qsTr("Use the copy of the key file")
        onActed: stage.entry.restoreKeyFile()
    }
}
