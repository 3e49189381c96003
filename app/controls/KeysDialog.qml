import QtQuick
import Feltmark

// Every key of the program, to read with the arrows. Property: keys (KeyModel).
ModalPane {
    id: dialog

    required property KeyModel keys

    title: qsTr("All keys")
    onOpened: list.focusRow(0)

    ReadingList {
        id: list

        label: qsTr("Lines")
        lines: dialog.keys.lines
    }
    ActionButton {
        text: qsTr("Close")
        onActed: dialog.close()
    }
}
