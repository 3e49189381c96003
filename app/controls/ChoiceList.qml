pragma ComponentBehavior: Bound
import QtQuick
import Feltmark

// The list that a long ChoiceEntry opens. Arrows, Home, End or first letters move; Return takes; Escape changes nothing.
// Properties: title, choices, chosenIndex. Signal: taken(index).
ModalPane {
    id: pane

    property list<string> choices
    property int chosenIndex: -1
    property int current: 0
    property string firstLetter // typed before it was open
    signal taken(int index)

    function focusRow(index: int): void {
        if (index < 0 || index >= rows.count)
            return;
        letters.missed = false;
        pane.current = index;
        rows.itemAt(index).forceActiveFocus(Qt.TabFocusReason);
    }
    function seek(letter: string): void {
        const found = letters.seek(letter, pane.current);
        if (found >= 0)
            pane.focusRow(found);
    }
    function openAt(letter: string): void {
        pane.firstLetter = letter;
        pane.open();
    }
    function isLetter(event: var): bool {
        return letters.isLetter(event);
    }
    function take(index: int): void {
        pane.close();
        pane.taken(index);
    }

    closer: true
    onOpened: {
        letters.begin();
        pane.focusRow(Math.max(0, pane.chosenIndex));
        if (pane.firstLetter)
            pane.seek(pane.firstLetter);
        pane.firstLetter = "";
    }

    Column {
        width: parent ? (parent as Item).width : 0
        spacing: Theme.gap
        Accessible.role: Accessible.List
        Accessible.name: qsTr("Choices") // the title is the dialog's

        Repeater {
            id: rows

            model: pane.visible ? pane.choices : [] // none while shut: a screen reader follows every row

            ChoiceRow {
                id: row

                required property string modelData
                required property int index

                width: parent ? (parent as Item).width : 0
                radio: false
                text: row.modelData
                chosen: row.index === pane.chosenIndex
                spokenName: qsTr("%1, %2 of %3").arg(row.text).arg(row.index + 1).arg(rows.count)
                activeFocusOnTab: row.activeFocus || row.index === pane.current
                onPicked: if (row.index !== pane.current || letters.takes(row.index))
                    pane.take(row.index)
                Keys.onDownPressed: pane.focusRow(row.index + 1)
                Keys.onUpPressed: pane.focusRow(row.index - 1)
                Keys.onPressed: event => {
                    if (event.key === Qt.Key_Home)
                        pane.focusRow(0);
                    else if (event.key === Qt.Key_End)
                        pane.focusRow(rows.count - 1);
                    else if (letters.isLetter(event))
                        pane.seek(event.text);
                    else
                        return;
                    event.accepted = true;
                }
            }
        }
        LetterSeek {
            id: letters

            count: pane.choices.length
            titles: pane.choices
        }
    }
}
