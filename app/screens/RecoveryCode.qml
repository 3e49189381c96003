import QtQuick
import Feltmark

// The recovery code of new records, group by group, and one group typed back. Property: entry.
Column {
    id: stage

    required property EntryViewModel entry
    readonly property var groups: stage.entry.groups

    width: parent ? (parent as Item).width : 0
    spacing: 2 * Theme.gap
    Component.onCompleted: show.restart()

    Timer {
        id: show

        interval: 0
        onTriggered: codeLines.focusRow(0)
    }
    Words {
        text: qsTr("Write these groups down and keep them away from this computer. They open the records when the passphrase is lost. They are shown only now.")
    }
    ReadingList {
        id: codeLines

        label: qsTr("Recovery code")
        lines: stage.groups.map((group, i) => qsTr("Group %1: %2").arg(i + 1).arg(group.split("").join(" ")))
    }
    TextEntry {
        id: typedBack

        label: qsTr("Type group %1 back").arg(stage.entry.askedGroup)
        error: stage.entry.stage === "code" ? stage.entry.error : ""
        onReturned: stage.entry.confirm(typedBack.text)
    }
    ActionButton {
        text: qsTr("The code is written down")
        primary: true
        onActed: stage.entry.confirm(typedBack.text)
    }
}
