import QtQuick
import Feltmark

// One step of StepList: number in a ring (a tick when done), name, state in words: beside the name where it fits, so that all
// steps are in sight at once. Its properties are StepModel's roles.
Rectangle {
    id: row

    required property string key
    required property int number
    required property string title
    required property string progress
    required property bool done
    required property bool here
    required property int index
    property string position
    signal opened

    width: parent ? (parent as Item).width : implicitWidth
    implicitHeight: Math.max(Theme.target, words.implicitHeight + Theme.gap / 2)
    radius: Theme.radius
    color: row.here ? Theme.surface : "transparent"
    border.width: row.here ? Theme.controlEdge : 0
    border.color: row.here ? Theme.accent : Theme.line
    Accessible.role: Accessible.ListItem
    Accessible.name: row.title + (row.progress ? ", " + row.progress : row.done ? qsTr(", done") : "") + (row.here ? qsTr(", here") : "") + (row.position ? ", " + row.position : "")
    Accessible.focusable: true
    Accessible.selectable: true
    Accessible.selected: row.here
    Accessible.onPressAction: row.opened()
    Keys.onReturnPressed: row.opened()
    Keys.onEnterPressed: row.opened()
    Keys.onSpacePressed: row.opened()

    Rectangle {
        id: badge

        x: Theme.gap
        anchors.verticalCenter: parent.verticalCenter
        width: Math.round(Theme.body * 1.7)
        height: width
        radius: width / 2
        color: row.here ? Theme.accent : row.done ? Theme.accentSoft : Theme.surface
        border.width: Theme.controlEdge
        border.color: row.here || row.done ? Theme.accent : Theme.edge

        Text {
            anchors.centerIn: parent
            text: row.done && !row.here ? "\u2713" : row.number > 0 ? row.number : "\u2022"
            color: row.here ? Theme.accentInk : row.done ? Theme.accent : Theme.ink
            font.family: Theme.family
            font.pixelSize: Theme.small
            font.bold: true
        }
    }
    Item {
        id: words

        readonly property bool beside: title.implicitWidth + told.implicitWidth + Theme.gap <= width

        x: badge.x + badge.width + Theme.gap
        anchors.verticalCenter: parent.verticalCenter
        width: row.width - x - Theme.gap
        implicitHeight: title.height + (told.visible && !words.beside ? told.height : 0)

        Words {
            id: title

            text: row.title
            strong: row.here
            silent: true
        }
        Words {
            id: told

            y: words.beside ? (title.height - height) / 2 : title.height
            visible: text !== ""
            text: row.progress
            horizontalAlignment: words.beside ? Text.AlignRight : Text.AlignLeft
            small: true
            soft: true
            silent: true
        }
    }
    MouseArea {
        anchors.fill: parent
        onClicked: row.opened()
    }
    FocusRing {
        of: row
    }
}
