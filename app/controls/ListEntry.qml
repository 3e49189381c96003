pragma ComponentBehavior: Bound
import QtQuick
import Feltmark

// A list of rows: one Tab stop, arrows, Home and End move, Return or a click activates. The reader hears the row and "2 of 9".
// Properties: label (heading and name of the list), model (RowModel), currentKey (the row in hand), emptyText, showLabel.
// Signals: moved(key) when another row is in hand; activated(key) on Return or click.
// Functions: focusCurrent(), focusKey(key). Other keys of a row: Keys.onPressed in the list, with currentKey.
// Use: ListEntry { label: qsTr("Things"); model: vm.things; onMoved: key => vm.select(key); onActivated: key => vm.correct(key) }
Column {
    id: list

    required property string label
    required property var model
    property string emptyText: qsTr("Nothing here yet.")
    property bool showLabel: true
    property int currentIndex: 0
    readonly property int count: rows.count
    readonly property Item currentRow: rows.count > 0 ? rows.itemAt(Math.min(list.currentIndex, rows.count - 1)) : null
    readonly property string currentKey: list.currentRow ? (list.currentRow as ListEntryRow).key : ""
    signal moved(string key)
    signal activated(string key)

    function focusRow(index: int): void {
        if (rows.count === 0)
            return;
        const to = Math.max(0, Math.min(rows.count - 1, index));
        rows.itemAt(to).forceActiveFocus(Qt.TabFocusReason);
        list.currentIndex = to;
    }
    function tellMoved(): void {
        if (list.currentKey)
            list.moved(list.currentKey);
    }
    function focusCurrent(): void {
        list.focusRow(list.currentIndex);
    }
    function firstKey(): string {
        return rows.count > 0 ? (rows.itemAt(0) as ListEntryRow).key : "";
    }
    function firstTitle(): string {
        return rows.count > 0 ? (rows.itemAt(0) as ListEntryRow).title : "";
    }
    function indexOf(key: string): int {
        for (let i = 0; i < rows.count; ++i)
            if ((rows.itemAt(i) as ListEntryRow).key === key)
                return i;
        return -1;
    }
    function rowOf(key: string): Item {
        return rows.itemAt(list.indexOf(key));
    }
    function focusKey(key: string): bool {
        const index = list.indexOf(key);
        if (index >= 0)
            list.focusRow(index);
        return index >= 0;
    }

    width: parent ? (parent as Item).width : implicitWidth
    // Later: what follows a move may change the rows.
    onCurrentKeyChanged: moving.restart()
    Accessible.role: Accessible.List
    Accessible.name: list.label

    Timer {
        id: moving

        interval: 0
        onTriggered: list.tellMoved()
    }
    Heading {
        visible: list.showLabel
        bottomPadding: Theme.gap
        text: list.label
    }
    Words {
        visible: rows.count === 0
        text: list.emptyText
        soft: true
    }
    Repeater {
        id: rows

        model: list.model
        // The row in hand went: its neighbour takes its place, and the focus if the list had it.
        onItemRemoved: (index, item) => {
            const hadFocus = item.activeFocus;
            if (index < list.currentIndex || list.currentIndex >= rows.count)
                list.currentIndex = Math.max(0, list.currentIndex - 1);
            if (hadFocus)
                Qt.callLater(list.focusCurrent);
        }
        onItemAdded: index => {
            if (index <= list.currentIndex && rows.count > 1 && list.currentRow && list.currentRow.activeFocus)
                list.currentIndex += 1;
        }

        ListEntryRow {
            position: rows.count > 1 ? qsTr("%1 of %2").arg(index + 1).arg(rows.count) : ""
            current: index === list.currentIndex
            onReached: list.focusRow(index)
            onActivated: list.activated(key)
            Keys.onDownPressed: list.focusRow(index + 1)
            Keys.onUpPressed: list.focusRow(index - 1)
            Keys.onPressed: event => {
                if (event.modifiers & (Qt.ControlModifier | Qt.AltModifier))
                    return;
                if (event.key === Qt.Key_Home)
                    list.focusRow(0);
                else if (event.key === Qt.Key_End)
                    list.focusRow(rows.count - 1);
                else
                    return;
                event.accepted = true;
            }
        }
    }
}
