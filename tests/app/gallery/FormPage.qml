import QtQuick
import Feltmark
import Gallery

// A form from a model, and a list.
PageView {
    id: page

    readonly property GalleryShell gallery: page.shell as GalleryShell

    FormView {
        model: page.gallery.form
        onEdited: (key, value) => page.gallery.edit(key, value)
    }
    below: [
        ActionButton {
            text: qsTr("Plan")
            primary: true
            onActed: page.gallery.work()
        },
        ListEntry {
            id: things

            label: qsTr("Things understood")
            model: page.gallery.things
            onActivated: key => page.shell.say(qsTr("Correct %1.").arg(key))
            Keys.onDeletePressed: page.gallery.removeThing(things.currentKey)
        }
    ]
}
