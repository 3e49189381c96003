pragma ComponentBehavior: Bound
import QtQuick
import Feltmark

// Lines to read one by one with the arrow keys; one Tab stop. Properties: label, lines. Function: focusRow(index).
Column {
    id: list

    required property string label
    required property var lines // texts
    property int currentIndex: 0
    readonly property string whole: list.lines.join("\n")

    function focusRow(index: int): void {
        if (rows.count === 0)
            return;
        list.currentIndex = Math.max(0, Math.min(rows.count - 1, index));
        rows.itemAt(list.currentIndex).forceActiveFocus(Qt.TabFocusReason);
    }

    onWholeChanged: list.currentIndex = 0 // other lines: the place before may lie beyond their end
    width: parent ? (parent as Item).width : implicitWidth
    Accessible.role: Accessible.List
    Accessible.name: list.label

    Repeater {
        id: rows

        model: list.lines

        Item {
            id: row

            required property string modelData
            required property int index

            width: list.width
            implicitHeight: Math.max(Theme.target, words.implicitHeight + 2 * Theme.gap)
            activeFocusOnTab: row.activeFocus || row.index === list.currentIndex
            Accessible.role: Accessible.ListItem
            Accessible.name: row.modelData
            Accessible.focusable: true
            Keys.onDownPressed: list.focusRow(row.index + 1)
            Keys.onUpPressed: list.focusRow(row.index - 1)
            Keys.onPressed: event => {
                if (event.key !== Qt.Key_Home && event.key !== Qt.Key_End)
                    return;
                list.focusRow(event.key === Qt.Key_Home ? 0 : rows.count - 1);
                event.accepted = true;
            }

            Words {
                id: words

                x: Theme.gap
                width: row.width - 2 * Theme.gap
                anchors.verticalCenter: parent.verticalCenter
                text: row.modelData
                silent: true
            }
            FocusRing {
                of: row
            }
        }
    }
}
