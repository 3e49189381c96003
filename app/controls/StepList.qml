pragma ComponentBehavior: Bound
import QtQuick
import Feltmark

// The steps of the visit: one Tab stop, arrows move, Return opens. Each says number, name, state, and "here".
// Property: model (StepModel). Signal: opened(key). focusHere() goes to the step in hand.
Column {
    id: list

    required property var model
    property int currentIndex: 0
    signal opened(string key)

    function focusStep(index: int): void {
        if (rows.count === 0)
            return;
        list.currentIndex = Math.max(0, Math.min(rows.count - 1, index));
        rows.itemAt(list.currentIndex).forceActiveFocus(Qt.TabFocusReason);
    }
    function hereRow(): Item {
        for (let i = 0; i < rows.count; ++i)
            if ((rows.itemAt(i) as StepRow).here)
                return rows.itemAt(i);
        return null;
    }
    function focusHere(): void {
        const here = list.hereRow() as StepRow;
        list.focusStep(here ? here.index : list.currentIndex);
    }

    width: parent ? (parent as Item).width : implicitWidth
    spacing: Theme.gap / 4
    Accessible.role: Accessible.List
    Accessible.name: qsTr("Steps")

    Repeater {
        id: rows

        model: list.model

        StepRow {
            id: row

            // Tab comes to the step that is open.
            onHereChanged: if (row.here)
                list.currentIndex = row.index
            Component.onCompleted: if (row.here)
                list.currentIndex = row.index
            position: qsTr("%1 of %2").arg(row.index + 1).arg(rows.count)
            activeFocusOnTab: row.activeFocus || row.index === Math.min(list.currentIndex, rows.count - 1)
            onOpened: {
                list.currentIndex = row.index;
                list.opened(row.key);
            }
            // In a circle: from the step that is open all are reached by one arrow.
            Keys.onDownPressed: list.focusStep((row.index + 1) % rows.count)
            Keys.onUpPressed: list.focusStep((row.index + rows.count - 1) % rows.count)
        }
    }
}
