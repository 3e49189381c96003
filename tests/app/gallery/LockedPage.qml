import QtQuick
import Feltmark

// What stands there while the program is locked.
PageView {
    id: page

    readonly property var gallery: page.shell

    startsAt: secret.field

    SecretEntry {
        id: secret

        label: qsTr("Passphrase")
        onAccepted: page.gallery.unlock()
    }
}
