import QtQuick
import Feltmark
import "joined.js" as Joined

// One row of a ListEntry: name bold, amount right, her facts in ink, the catalogue's in soft ink after "usual".
// Its properties are the roles of RowModel.
Item {
    id: row

    required property string key
    required property string title
    required property string amount
    required property string facts
    required property string usual
    required property string flag
    required property string spoken
    required property string section
    required property int index
    property string position
    property bool current: false
    readonly property alias under: under // for what is shown of the row in hand
    signal reached
    signal activated

    width: parent ? (parent as Item).width : implicitWidth
    implicitHeight: ground.y + ground.height + under.room
    z: row.activeFocus ? 1 : 0
    activeFocusOnTab: row.activeFocus || row.current
    Accessible.role: Accessible.ListItem
    Accessible.name: (row.section ? row.section + ": " : "") + Joined.joined([row.spoken, row.position], ",")
    Accessible.focusable: true
    Accessible.selectable: true
    Accessible.selected: row.current
    Accessible.onPressAction: row.activated()
    Keys.onReturnPressed: row.activated()
    Keys.onEnterPressed: row.activated()

    Words {
        id: sectionWords

        visible: row.section !== ""
        topPadding: Theme.gap
        bottomPadding: Theme.gap / 2
        text: row.section
        soft: true
        strong: true
        silent: true
    }
    Rectangle {
        id: ground

        y: row.section !== "" ? sectionWords.height : 0
        width: row.width
        height: Math.max(Theme.target, column.implicitHeight + 2 * Theme.gap)
        color: row.activeFocus ? Theme.accentSoft : "transparent"

        Rectangle {
            width: parent.width
            height: Theme.cardEdge
            color: Theme.line
        }
        Rectangle {
            y: Theme.gap / 2
            visible: row.activeFocus
            width: Math.max(4, Theme.controlEdge + 2)
            height: parent.height - Theme.gap
            color: Theme.accent
        }
        Column {
            id: column

            x: Theme.gap + 4
            y: Theme.gap
            width: row.width - x - Theme.gap
            spacing: Theme.gap / 2

            Item {
                width: parent.width
                height: Math.max(title.implicitHeight, amount.implicitHeight)

                Words {
                    id: title

                    width: parent.width - (amount.visible ? amount.width + Theme.gap : 0)
                    text: row.title
                    strong: true
                    silent: true
                }
                FittedWords {
                    id: amount

                    visible: row.amount !== ""
                    anchors.right: parent.right
                    room: parent.width / 2
                    horizontalAlignment: Text.AlignRight
                    text: row.amount
                    strong: true
                    silent: true
                }
            }
            FramedWord {
                visible: row.flag !== ""
                caution: true
                text: row.flag
            }
            Words {
                visible: row.facts !== ""
                text: row.facts
                silent: true
            }
            Item {
                id: usual

                readonly property bool beside: Theme.em(width) >= 18

                visible: row.usual !== ""
                width: parent.width
                height: usual.beside ? Math.max(word.height, usualWords.height) : word.height + usualWords.height

                FramedWord {
                    id: word

                    text: qsTr("usual")
                }
                Words {
                    id: usualWords

                    x: usual.beside ? word.width + Theme.gap : 0
                    y: usual.beside ? 0 : word.height
                    width: usual.width - x
                    text: row.usual
                    soft: true
                    silent: true
                }
            }
        }
    }
    Item {
        id: under

        readonly property real room: under.childrenRect.height > 0 ? under.childrenRect.height + 2 * Theme.ringRoom : 0

        y: ground.y + ground.height + Theme.ringRoom
        width: row.width
    }
    MouseArea {
        anchors.fill: ground
        onClicked: {
            row.reached();
            row.activated();
        }
    }
    FocusRing {
        of: ground
        shown: row.activeFocus
        parent: ground
    }
}
