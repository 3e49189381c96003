import QtQuick
import Feltmark

// A FormField for the path of a file or of a folder: typed, or chosen from a list.
Column {
    id: entry

    required property FormField field
    readonly property bool folders: entry.field.kind === "folder"

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

        text: entry.folders ? qsTr("Choose a folder") : qsTr("Choose a file")
        spokenName: entry.folders ? qsTr("Choose a folder, opens a list") : qsTr("Choose a file, opens a list")
        unavailable: entry.field.unavailable
        onActed: dialog.start(path.text)
    }
    FileDialog {
        id: dialog

        folders: entry.folders
        kinds: entry.field.choices
        onTaken: taken => {
            path.show(taken);
            entry.field.edited(taken);
            entry.focusField();
        }
    }
}
