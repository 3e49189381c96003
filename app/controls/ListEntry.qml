pragma ComponentBehavior: Bound
import QtQuick
import Feltmark

// A list of rows: one Tab stop, arrows (on within a row that is higher than the window), Home, End and first letters move, Return or a click activates. The reader hears the row and "2 of 9".
// Of a long list only the part round the row in hand is on screen; the arrows go on into the next.
// Properties: label (heading and name of the list), model (RowModel), currentKey (the row in hand), emptyText, showLabel.
// Signals: moved(key) when another row is in hand; activated(key) on Return or click.
// Functions: focusCurrent(), focusKey(key). Other keys of a row: Keys.onPressed in the list, with currentKey.
// Use: ListEntry { label: qsTr("Things"); model: vm.things; onMoved: key => vm.select(key); onActivated: key => vm.correct(key) }
Column {
    id: list

    required property string label
    required property RowModel model
    property string emptyText: qsTr("Nothing here yet.")
    property bool showLabel: true
    property int currentIndex: 0
    property bool turning: false
    readonly property int count: part.total
    readonly property Item currentRow: list.count > 0 ? rows.itemAt(Math.min(list.currentIndex, list.count - 1) - part.first) : null
    readonly property string currentKey: list.currentRow ? (list.currentRow as ListEntryRow).key : ""
    signal moved(string key)
    signal activated(string key)

    // The row's item, with its part of the list on screen.
    function itemAt(index: int): Item {
        list.turning = true;
        part.turnTo(index);
        list.turning = false;
        return rows.itemAt(index - part.first);
    }
    function focusRow(index: int): void {
        if (part.total === 0)
            return;
        const to = Math.max(0, Math.min(part.total - 1, index));
        list.itemAt(to).forceActiveFocus(Qt.TabFocusReason);
        list.currentIndex = to;
    }
    // An arrow: first on within a row that is higher than the window, which the reader has told as a whole, then to the next row.
    function step(from: ListEntryRow, by: int): void {
        let scroll = list.parent;
        while (scroll && !(scroll instanceof PageScroll))
            scroll = scroll.parent;
        if (scroll && (scroll as PageScroll).readOn(from, by))
            speaker.announce(qsTr("Still on this row."));
        else
            list.focusRow(part.first + from.index + by);
    }
    function tellMoved(): void {
        if (list.currentKey)
            list.moved(list.currentKey);
    }
    function focusCurrent(): void {
        list.focusRow(list.currentIndex);
    }
    function firstKey(): string {
        return list.model.keyAt(0);
    }
    function firstTitle(): string {
        return list.model.titleAt(0);
    }
    function rowOf(key: string): Item {
        const index = list.model.indexOf(key);
        return index < 0 ? null : list.itemAt(index);
    }
    function focusKey(key: string): bool {
        const index = list.model.indexOf(key);
        if (index >= 0)
            list.focusRow(index);
        return index >= 0;
    }

    function seek(letter: string): void {
        const found = letters.seek(letter, list.currentIndex);
        if (found >= 0)
            list.focusRow(found);
    }

    width: parent ? (parent as Item).width : implicitWidth
    onCurrentIndexChanged: letters.missed = false
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
        visible: list.count === 0
        text: list.emptyText
        soft: true
    }
    Speaker {
        id: speaker
    }
    LetterSeek {
        id: letters

        count: part.total
        model: list.model
    }
    RowWindow {
        id: part

        list: list.model
    }
    ActionButton {
        visible: part.first > 0
        text: qsTr("Rows before these")
        onActed: list.focusRow(part.first - 1)
    }
    Repeater {
        id: rows

        model: part.rows
        // The row in hand went: its neighbour takes its place, and the focus if the list had it.
        onItemRemoved: (index, item) => {
            if (list.turning)
                return;
            const hadFocus = item.activeFocus;
            if (part.first + index < list.currentIndex || list.currentIndex >= part.total)
                list.currentIndex = Math.max(0, list.currentIndex - 1);
            if (hadFocus)
                Qt.callLater(list.focusCurrent);
        }
        onItemAdded: index => {
            if (!list.turning && part.first + index <= list.currentIndex && rows.count > 1 && list.currentRow && list.currentRow.activeFocus)
                list.currentIndex += 1;
        }

        ListEntryRow {
            id: row

            readonly property int place: part.first + index

            position: list.count > 1 ? qsTr("%1 of %2").arg(place + 1).arg(list.count) : ""
            current: place === list.currentIndex
            onReached: {
                letters.missed = false;
                list.focusRow(place);
            }
            onActivated: if (letters.takes(place))
                list.activated(key)
            Keys.onDownPressed: list.step(row, 1)
            Keys.onUpPressed: list.step(row, -1)
            Keys.onPressed: event => {
                if (event.modifiers & (Qt.ControlModifier | Qt.AltModifier))
                    return;
                if (event.key === Qt.Key_Home)
                    list.focusRow(0);
                else if (event.key === Qt.Key_End)
                    list.focusRow(list.count - 1);
                else if (event.key === Qt.Key_PageDown)
                    list.focusRow(place + 10);
                else if (event.key === Qt.Key_PageUp)
                    list.focusRow(place - 10);
                else if (letters.isLetter(event))
                    list.seek(event.text);
                else
                    return;
                event.accepted = true;
            }
        }
    }
    ActionButton {
        visible: part.first + part.size < list.count
        text: qsTr("Rows after these")
        onActed: list.focusRow(part.first + part.size)
    }
}
