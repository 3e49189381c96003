pragma ComponentBehavior: Bound
import QtQuick
import Feltmark

// What the program worked out: one Tab stop, the arrows go from one to the next. Properties: model; part ("all", "page", or
// "row": those about the row in hand). Functions: firstOfRow().
// Use: FindingList { model: page.vm.findings }
Column {
    id: list

    required property FindingModel model
    property string part: "all"
    property int currentIndex: 0
    property int shown: 0 // lines of this part

    function isShown(index: int): bool {
        const line = rows.itemAt(index) as FindingLine; // none while the rows are being made
        return line !== null && line.taken;
    }
    function count(): void {
        let shown = 0;
        for (let i = 0; i < rows.count; ++i)
            if (list.isShown(i))
                (rows.itemAt(i) as FindingLine).place = ++shown;
        list.shown = shown;
        if (!list.isShown(list.currentIndex))
            list.currentIndex = Math.max(0, list.next(-1, 1));
    }
    // From there on, in that direction; -1: none.
    function next(index: int, by: int): int {
        for (let to = index + by; to >= 0 && to < rows.count; to += by)
            if (list.isShown(to))
                return to;
        return -1;
    }
    // The first of those about the row in hand.
    function firstOfRow(): Item {
        for (let i = 0; i < rows.count; ++i)
            if (list.isShown(i) && (rows.itemAt(i) as FindingLine).ofRow)
                return rows.itemAt(i);
        return null;
    }

    function focusRow(index: int): void {
        if (!list.isShown(index))
            return;
        list.currentIndex = index;
        rows.itemAt(list.currentIndex).forceActiveFocus(Qt.TabFocusReason);
    }

    width: parent ? (parent as Item).width : implicitWidth
    visible: list.shown > 0
    onPartChanged: list.count()
    spacing: 2 * Theme.gap

    Repeater {
        id: rows

        model: list.model
        onCountChanged: list.count()

        FindingLine {
            id: line

            required property int index

            taken: list.part === "all" || list.part === (line.ofRow ? "row" : "page")
            visible: line.taken
            position: list.shown > 1 ? qsTr("%1 of %2").arg(line.place).arg(list.shown) : ""
            onOfRowChanged: list.count()
            onIndexChanged: list.count()
            Component.onCompleted: list.count()
            activeFocusOnTab: line.activeFocus || line.index === list.currentIndex
            onActiveFocusChanged: if (line.activeFocus)
                list.currentIndex = line.index
            Keys.onDownPressed: list.focusRow(list.next(line.index, 1))
            Keys.onUpPressed: list.focusRow(list.next(line.index, -1))
            Keys.onPressed: event => {
                if (event.key !== Qt.Key_Home && event.key !== Qt.Key_End)
                    return;
                list.focusRow(event.key === Qt.Key_Home ? list.next(-1, 1) : list.next(rows.count, -1));
                event.accepted = true;
            }
        }
    }
}
