pragma ComponentBehavior: Bound
import QtQuick
import Feltmark
import "joined.js" as Joined
import "told.js" as Told

// One of several. Up to five: rows, one Tab stop, arrows move and choose, Space chooses. More: a button that opens the
// list (Return, Space, Alt+Down, a first letter); there arrows or first letters move, Return takes, Escape leaves it as it was.
// Properties: label, hint, choices (texts), value (one of them or empty), error, note, unavailable,
// inRow (short choices side by side). Signal: chosen(value).
// Use: ChoiceEntry { label: qsTr("Hand"); choices: vm.hands; value: vm.hand; onChosen: c => vm.setHand(c) }
Column {
    id: entry

    required property string label
    property string hint
    property list<string> choices
    property string value
    property string error
    property string note
    property string unavailable
    property bool inRow: false
    readonly property bool few: entry.choices.length <= 5
    readonly property int chosenIndex: entry.choices.indexOf(entry.value)
    readonly property string spokenLabel: Joined.joined([entry.label, entry.unavailable ? qsTr("unavailable. %1").arg(entry.unavailable) : "", entry.error ? qsTr("error: %1").arg(entry.error) : "", entry.heardNote], ",")
    readonly property string heardNote: entry.note.toLowerCase() === entry.value.toLowerCase() ? "" : entry.note
    readonly property string hintToTell: group.hintTold || !Theme.hints ? "" : entry.hint
    signal pointed // at one of them, by mouse or finger; then chosen
    signal chosen(string value)

    function focusField(): void {
        if (entry.few)
            group.focusRow(Math.max(0, entry.chosenIndex));
        else
            (opener.item as Item).forceActiveFocus(Qt.TabFocusReason);
    }
    function tellHint(reached: bool): void {
        group.tellHint(reached);
    }
    function take(index: int): void {
        if (entry.unavailable)
            speaker.say(entry.unavailable);
        else if (index !== entry.chosenIndex) {
            telling.before = entry.heardNote;
            entry.chosen(entry.choices[index]);
            telling.restart();
        }
    }

    onFewChanged: opener.show()
    objectName: "field"
    width: parent ? (parent as Item).width : implicitWidth
    spacing: Theme.gap / 2

    Words {
        text: entry.label
        strong: true
        silent: true
    }
    Words {
        visible: text !== ""
        text: entry.unavailable || entry.hint
        small: true
        soft: true
        silent: true
    }
    Item {
        id: group

        // The row that Tab reaches: the chosen one, or the one last visited.
        property int tabStop: Math.max(0, entry.chosenIndex)

        property bool hintTold: false

        // Once a page, also where several fields have the same; but what an answer counts as belongs to its question.
        function tellHint(reached: bool): void {
            if (reached) {
                group.hintTold = group.hintTold || !entry.inRow && Told.has(entry.hint);
            } else {
                Told.add(entry.hint);
                group.hintTold = true;
            }
        }
        function focusRow(index: int): void {
            const row = rows.itemAt(index);
            if (row)
                row.forceActiveFocus(Qt.TabFocusReason);
        }
        function step(from: int, by: int): void {
            const count = rows.count;
            const to = (from + by + count) % count;
            group.focusRow(to);
            entry.take(to);
        }

        visible: entry.few
        width: entry.width
        implicitHeight: flow.implicitHeight
        Accessible.role: Accessible.Grouping
        Accessible.name: entry.spokenLabel

        Flow {
            id: flow

            width: parent.width
            spacing: Theme.gap

            Repeater {
                id: rows

                model: entry.few ? entry.choices : []

                ChoiceRow {
                    id: row

                    required property string modelData
                    required property int index

                    width: entry.inRow ? Math.min(wanted, group.width) : group.width
                    text: row.modelData
                    chosen: row.index === entry.chosenIndex
                    activeFocusOnTab: row.activeFocus || row.index === group.tabStop
                    Accessible.description: entry.hintToTell
                    onActiveFocusChanged: group.tellHint(row.activeFocus)
                    onPointed: entry.pointed()
                    onPicked: entry.take(row.index)
                    Keys.onDownPressed: group.step(row.index, 1)
                    Keys.onRightPressed: group.step(row.index, 1)
                    Keys.onUpPressed: group.step(row.index, -1)
                    Keys.onLeftPressed: group.step(row.index, -1)
                }
            }
        }
    }
    Loader {
        id: opener

        function show(): void {
            if (entry.few)
                opener.source = "";
            else
                opener.setSource("LongChoice.qml", {
                        "entry": entry
                    });
        }

        width: entry.width
        visible: !entry.few
        Component.onCompleted: opener.show()
    }
    Notice {
        visible: entry.error !== ""
        kind: "error"
        text: entry.error
        silent: true
    }
    Words {
        visible: entry.note !== ""
        text: entry.note
        soft: true
        silent: true
    }
    Timer {
        id: telling

        property string before

        interval: 0
        onTriggered: if (entry.error)
            speaker.say(entry.error)
        else if (entry.heardNote && entry.heardNote !== telling.before)
            speaker.say(entry.heardNote)
    }
    Speaker {
        id: speaker
    }
}
