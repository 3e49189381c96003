import QtQuick
import Feltmark

// What was said, newest first. Property: messages (RowModel).
ModalPane {
    id: dialog

    required property RowModel messages

    title: qsTr("Messages")
    onOpened: {
        if (list.count > 0)
            list.focusRow(0);
        else
            close.forceActiveFocus(Qt.TabFocusReason);
    }

    ListEntry {
        id: list

        label: qsTr("Newest first")
        showLabel: false
        model: dialog.messages
        emptyText: qsTr("No message yet.")
    }
    ActionButton {
        id: close

        text: qsTr("Close")
        onActed: dialog.close()
    }
}
