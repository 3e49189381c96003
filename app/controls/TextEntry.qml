pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Templates as T
import Feltmark
import "joined.js" as Joined
import "told.js" as Told

// A label, a hint, an entry that wraps and grows, a unit, and below it the error and the result.
// Properties: label, hint (spoken on the first visit), unit, value (what the record holds), error, note, unavailable,
// multiline (Return makes a line; Ctrl+Return accepts), noteRoom (a line is kept for the note).
// Signals: accepted(text) on Return and when the field is left, if the text was changed; typed(text) at each letter;
// returned() at every Return.
// A hint is spoken once a page, also where several fields have the same; a result that only says what was typed is not spoken.
// What is typed stays until `value` changes to something else; with an error it stays, and the error is spoken, with
// the label if the field was left. So is a new result (`note`).
// Use: TextEntry { label: qsTr("Width"); unit: qsTr("cm"); value: vm.width; error: vm.widthError; onAccepted: t => vm.setWidth(t) }
Column {
    id: entry

    required property string label
    property string hint
    property string unit
    property string value
    property string error
    property string note
    property string unavailable
    property bool multiline: false
    property bool noteRoom: false // below it stays where it is when a note comes
    property bool downLeaves: false // Down gives leftDown() instead of moving the caret
    readonly property alias field: area
    readonly property alias text: area.text
    signal accepted(string text)
    signal typed(string text)
    signal returned
    signal leftDown

    function focusField(): void {
        area.forceActiveFocus(Qt.TabFocusReason);
    }
    function clear(): void {
        entry.show("");
    }
    // Not typed, but put there by the program.
    function show(text: string): void {
        area.handedOver = text;
        area.text = text;
    }

    objectName: "field"
    width: parent ? (parent as Item).width : implicitWidth
    spacing: Theme.gap / 2
    onValueChanged: area.take(entry.value)
    onErrorChanged: if (area.activeFocus)
        telling.restart()

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
        width: entry.width
        height: Math.max(area.height, unit.visible ? unit.height : 0)

        T.TextArea {
            id: area

            property string handedOver: entry.value
            property bool hintTold: false
            readonly property bool unsaved: area.isUnsaved()
            readonly property string spokenName: Joined.joined([entry.label, entry.unit, entry.unavailable ? qsTr("unavailable") : "", entry.error ? qsTr("error: %1").arg(entry.error) : "", area.says(entry.note) ? "" : entry.note], ",")
            readonly property string spokenHint: entry.unavailable || (area.hintTold || !Theme.hints ? "" : entry.hint)

            function says(note: string): bool {
                return area.text.trim().toLowerCase() === note.toLowerCase();
            }
            function isUnsaved(): bool {
                return area.text !== area.handedOver && !area.readOnly;
            }
            function take(text: string): void {
                if (area.isUnsaved() && area.activeFocus)
                    return;
                area.handedOver = text;
                if (area.text !== text)
                    area.text = text;
            }
            function handOver(): void {
                if (area.isUnsaved())
                    area.give();
            }
            function give(): void {
                const before = entry.note;
                area.handedOver = area.text;
                entry.accepted(area.text);
                area.tell(before);
            }
            // What came of it. Left with the page, this entry is gone a moment later.
            function tell(before: string): void {
                if (entry.error && area.activeFocus)
                    telling.restart();
                else if (entry.error)
                    speaker.say(qsTr("%1: %2").arg(entry.label).arg(entry.error));
                else if (entry.note && entry.note !== before && !area.says(entry.note))
                    speaker.say(area.activeFocus ? entry.note : qsTr("%1: %2").arg(entry.label).arg(entry.note));
            }

            anchors.verticalCenter: parent.verticalCenter
            width: entry.width - (unit.visible ? unit.width + Theme.gap : 0)
            height: Math.max(Theme.target, contentHeight + topPadding + bottomPadding)
            padding: Theme.gap
            leftPadding: Theme.gap + 4
            rightPadding: Theme.gap + 4
            wrapMode: TextEdit.Wrap
            textFormat: TextEdit.PlainText
            readOnly: entry.unavailable !== ""
            selectByMouse: true
            activeFocusOnTab: true
            color: entry.unavailable ? Theme.inkSoft : Theme.ink
            selectionColor: Theme.accent
            selectedTextColor: Theme.accentInk
            font.family: Theme.family
            font.pixelSize: Theme.body
            Keys.priority: Keys.BeforeItem
            Keys.onTabPressed: area.nextItemInFocusChain(true).forceActiveFocus(Qt.TabFocusReason)
            Keys.onBacktabPressed: area.nextItemInFocusChain(false).forceActiveFocus(Qt.BacktabFocusReason)
            // Ctrl+Return is also a command of the window.
            Keys.onShortcutOverride: event => event.accepted = entry.multiline && event.key === Qt.Key_Return && event.modifiers === Qt.ControlModifier
            Keys.onReturnPressed: event => area.returnPressed(event)
            Keys.onEnterPressed: event => area.returnPressed(event)
            Keys.onDownPressed: event => {
                event.accepted = entry.downLeaves;
                if (entry.downLeaves)
                    entry.leftDown();
            }
            Component.onCompleted: area.text = entry.value
            onTextChanged: if (area.isUnsaved())
                entry.typed(area.text)
            onActiveFocusChanged: {
                if (!area.activeFocus) {
                    Told.add(entry.hint);
                    area.hintTold = true;
                    area.handOver();
                    area.deselect();
                    return;
                }
                area.hintTold = Told.has(entry.hint);
                if (area.replacesAll())
                    area.selectAll();
            }

            // Reached by Tab: typing replaces what stands there. What is not handed over yet keeps its caret.
            function replacesAll(): bool {
                return !entry.multiline && !area.isUnsaved() && (area.focusReason === Qt.TabFocusReason || area.focusReason === Qt.BacktabFocusReason);
            }

            function returnPressed(event: var): void {
                event.accepted = !entry.multiline || (event.modifiers & Qt.ControlModifier) !== 0;
                if (!event.accepted)
                    return;
                // What is not taken yet is given again, as it stands.
                if (area.isUnsaved() || entry.error)
                    area.give();
                entry.returned();
            }

            background: Rectangle {
                radius: Theme.radius
                color: entry.unavailable ? Theme.sunken : Theme.surface
                border.width: entry.error ? Math.max(3, Theme.controlEdge + 1) : Theme.controlEdge
                border.color: entry.error ? Theme.error : Theme.edge
            }
            cursorDelegate: Rectangle {
                visible: area.activeFocus && !area.readOnly
                width: Theme.controlEdge
                color: Theme.ink
            }

            FocusRing {
                of: area
            }
        }
        FittedWords {
            id: unit

            visible: entry.unit !== ""
            anchors.right: parent.right
            anchors.verticalCenter: parent.verticalCenter
            room: entry.width / 3
            text: entry.unit
            silent: true
        }
    }
    Notice {
        visible: entry.error !== ""
        kind: "error"
        text: entry.error
        silent: true
    }
    Words {
        visible: entry.note !== "" || entry.noteRoom
        text: entry.note
        soft: true
        silent: true
    }
    Timer {
        id: telling

        interval: 0
        onTriggered: if (entry.error)
            speaker.say(entry.error)
    }
    Speaker {
        id: speaker
    }
}
