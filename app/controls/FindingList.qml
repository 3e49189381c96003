pragma ComponentBehavior: Bound
import QtQuick
import Feltmark

// What the program worked out: one Tab stop, the arrows go from one to the next. Property: model.
// Use: FindingList { model: page.vm.findings }
Column {
    id: list

    required property FindingModel model
    property int currentIndex: 0

    function focusRow(index: int): void {
        if (rows.count === 0)
            return;
        list.currentIndex = Math.max(0, Math.min(rows.count - 1, index));
        rows.itemAt(list.currentIndex).forceActiveFocus(Qt.TabFocusReason);
    }

    width: parent ? (parent as Item).width : implicitWidth
    visible: rows.count > 0
    spacing: 2 * Theme.gap

    Repeater {
        id: rows

        model: list.model
        onCountChanged: list.currentIndex = Math.max(0, Math.min(rows.count - 1, list.currentIndex))

        FindingLine {
            id: line

            required property int index

            position: rows.count > 1 ? qsTr("%1 of %2").arg(line.index + 1).arg(rows.count) : ""
            activeFocusOnTab: line.activeFocus || line.index === list.currentIndex
            onActiveFocusChanged: if (line.activeFocus)
                list.currentIndex = line.index
            Keys.onDownPressed: list.focusRow(line.index + 1)
            Keys.onUpPressed: list.focusRow(line.index - 1)
            Keys.onPressed: event => {
                if (event.key !== Qt.Key_Home && event.key !== Qt.Key_End)
                    return;
                list.focusRow(event.key === Qt.Key_Home ? 0 : rows.count - 1);
                event.accepted = true;
            }
        }
    }
}
