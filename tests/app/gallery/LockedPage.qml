import QtQuick
import Feltmark
import Gallery

// What stands there while the program is locked.
PageView {
    id: page

    readonly property GalleryShell gallery: page.shell as GalleryShell

    startsAt: secret.field

    SecretEntry {
        id: secret

        label: qsTr("Passphrase")
        onAccepted: page.gallery.unlock()
    }
}
