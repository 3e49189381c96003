pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Templates as T
import Feltmark

// A passphrase: shown as dots, never told to the reader; a box shows it for sighted eyes.
// Properties: label, hint, offersShow (with the box), showName (of the box), shown (also by the box of another entry), error (spoken with the name; whoever sets it says it too). Signal: accepted(text) on Return. `text` is read by the page, clear() wipes the field.
// Use: SecretEntry { label: qsTr("Passphrase"); error: vm.error; onAccepted: t => vm.unlock(t) }
Column {
    id: entry

    required property string label
    property string hint
    property string error
    property bool offersShow: true
    property string showName: qsTr("Show what is typed, %1").arg(entry.label)
    property bool shown: false
    readonly property alias showing: show.checked
    readonly property alias field: field
    readonly property alias text: field.text
    signal accepted(string text)

    function focusField(): void {
        field.forceActiveFocus(Qt.TabFocusReason);
    }
    function clear(): void {
        field.clear();
    }

    objectName: "field"
    width: parent ? (parent as Item).width : implicitWidth
    spacing: Theme.gap / 2

    Words {
        text: entry.label
        strong: true
        silent: true
    }
    Words {
        visible: entry.hint !== ""
        text: entry.hint
        small: true
        soft: true
        silent: true
    }
    T.TextField {
        id: field

        readonly property bool unsaved: true // undo stays inside: a passphrase is no part of the record
        readonly property string spokenName: entry.error ? qsTr("%1, error: %2").arg(entry.label).arg(entry.error) : entry.label
        readonly property string spokenHint: Theme.hints ? entry.hint : ""

        width: entry.width
        height: Math.max(Theme.target, contentHeight + topPadding + bottomPadding)
        padding: Theme.gap
        leftPadding: Theme.gap + 4
        rightPadding: Theme.gap + 4
        verticalAlignment: TextInput.AlignVCenter
        echoMode: show.checked || entry.shown ? TextInput.Normal : TextInput.Password
        inputMethodHints: Qt.ImhSensitiveData | Qt.ImhNoPredictiveText | Qt.ImhNoAutoUppercase
        activeFocusOnTab: true
        selectByMouse: true
        color: Theme.ink
        selectionColor: Theme.accent
        selectedTextColor: Theme.accentInk
        font.family: Theme.family
        font.pixelSize: Theme.body
        onAccepted: entry.accepted(field.text)

        background: Rectangle {
            radius: Theme.radius
            color: Theme.surface
            border.width: entry.error ? Math.max(3, Theme.controlEdge + 1) : Theme.controlEdge
            border.color: entry.error ? Theme.error : Theme.edge
        }
        cursorDelegate: Rectangle {
            visible: field.activeFocus
            width: Theme.controlEdge
            color: Theme.ink
        }

        FocusRing {
            of: field
        }
    }
    CheckEntry {
        id: show

        visible: entry.offersShow
        text: qsTr("Show what is typed")
        spokenName: entry.showName
    }
    Notice {
        visible: entry.error !== ""
        kind: "error"
        text: entry.error
        silent: true
    }
}
