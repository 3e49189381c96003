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
    property string typed
    signal taken(int index)

    function focusRow(index: int): void {
        if (index < 0 || index >= rows.count)
            return;
        pane.current = index;
        rows.itemAt(index).forceActiveFocus(Qt.TabFocusReason);
    }
    function seek(letter: string): void {
        pane.typed += letter.toLowerCase();
        forget.restart();
        // The same letter again goes on to the next row that begins with it.
        const again = pane.typed.length > 1 && pane.typed === letter.toLowerCase().repeat(pane.typed.length);
        const wanted = again ? letter.toLowerCase() : pane.typed;
        const from = pane.current + (pane.typed.length === 1 || again ? 1 : 0);
        for (let i = 0; i < pane.choices.length; ++i) {
            const at = (from + i) % pane.choices.length;
            if (pane.choices[at].toLowerCase().startsWith(wanted)) {
                pane.focusRow(at);
                return;
            }
        }
        speaker.say(qsTr("None begins with %1.").arg(pane.typed));
    }
    function take(index: int): void {
        pane.close();
        pane.taken(index);
    }

    onOpened: pane.focusRow(Math.max(0, pane.chosenIndex))

    Column {
        width: parent ? (parent as Item).width : 0
        spacing: Theme.gap
        Accessible.role: Accessible.List
        Accessible.name: pane.title

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
                onPicked: pane.take(row.index)
                Keys.onDownPressed: pane.focusRow(row.index + 1)
                Keys.onUpPressed: pane.focusRow(row.index - 1)
                Keys.onPressed: event => {
                    if (event.key === Qt.Key_Home)
                        pane.focusRow(0);
                    else if (event.key === Qt.Key_End)
                        pane.focusRow(rows.count - 1);
                    else if (event.text > " " && event.text !== "\u007f" && !(event.modifiers & (Qt.ControlModifier | Qt.AltModifier)))
                        pane.seek(event.text);
                    else
                        return;
                    event.accepted = true;
                }
            }
        }
        Speaker {
            id: speaker
        }
    }
    Timer {
        id: forget

        interval: 1000
        onTriggered: pane.typed = ""
    }
}
