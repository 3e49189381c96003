import QtQuick
import Feltmark

// One row of a ChoiceEntry: dot, thick edge and soft ground when chosen. The keys are its owner's.
Rectangle {
    id: row

    required property string text
    property bool chosen: false
    property bool radio: true // false: a row of the list that opens
    property string spokenName: row.text
    readonly property real wanted: dot.width + 5 * Theme.gap + measured.advanceWidth + 2
    signal pointed // by mouse or finger; then picked
    signal picked

    implicitHeight: Math.max(Theme.target, words.implicitHeight + 2 * Theme.gap)
    radius: Theme.radius
    color: row.chosen ? Theme.accentSoft : Theme.surface
    border.width: row.chosen ? Theme.controlEdge + 2 : Theme.controlEdge
    border.color: row.chosen ? Theme.accent : Theme.edge
    Accessible.role: row.radio ? Accessible.RadioButton : Accessible.ListItem
    Accessible.name: row.spokenName
    Accessible.focusable: true
    Accessible.checkable: row.radio
    Accessible.checked: row.radio && row.chosen
    Accessible.selectable: !row.radio
    Accessible.selected: !row.radio && row.chosen
    Accessible.onPressAction: row.picked()
    Keys.onSpacePressed: row.picked()
    Keys.onReturnPressed: row.picked()
    Keys.onEnterPressed: row.picked()

    Rectangle {
        id: dot

        x: Theme.gap + 2
        anchors.verticalCenter: parent.verticalCenter
        width: Math.round(Theme.body * 1.1)
        height: width
        radius: width / 2
        color: Theme.surface
        border.width: Theme.controlEdge
        border.color: row.chosen ? Theme.accent : Theme.edge

        Rectangle {
            anchors.centerIn: parent
            visible: row.chosen
            width: Math.round(parent.width * 0.55)
            height: width
            radius: width / 2
            color: Theme.accent
        }
    }
    Words {
        id: words

        x: dot.x + dot.width + Theme.gap
        anchors.verticalCenter: parent.verticalCenter
        width: row.width - x - Theme.gap
        text: row.text
        silent: true
    }
    TextMetrics {
        id: measured

        text: row.text
        font.family: Theme.family
        font.pixelSize: Theme.body
    }
    MouseArea {
        anchors.fill: parent
        onClicked: {
            row.forceActiveFocus(Qt.MouseFocusReason);
            row.pointed();
            row.picked();
        }
    }
    FocusRing {
        of: row
    }
}
