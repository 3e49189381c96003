import QtQuick
import Feltmark

// A FormField for the path of a file: typed, or chosen from a list of files.
Column {
    id: entry

    required property FormField field

    function focusField(): void {
        path.focusField();
    }

    width: parent ? (parent as Item).width : implicitWidth
    spacing: Theme.gap

    FormText {
        id: path

        field: entry.field
    }
    ActionButton {
        id: opener

        text: qsTr("Choose a file")
        spokenName: qsTr("Choose a file, opens a list")
        unavailable: entry.field.unavailable
        onActed: dialog.start(path.text)
    }
    FileDialog {
        id: dialog

        kinds: entry.field.choices
        onTaken: taken => {
            path.show(taken);
            entry.field.edited(taken);
            entry.focusField();
        }
    }
}
