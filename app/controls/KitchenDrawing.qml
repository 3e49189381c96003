pragma ComponentBehavior: Bound
import QtQuick
import Feltmark

// The kitchen from the front, to scale. The sentence under it says what matters; the reader hears that sentence.
// Properties: label; words (whole sentences); boxes: [{ x, y, width, height, label, unit, here }] in mm from the left and
// from the top of the wall (unit: the outline of a unit, else one of its places; here: the place in hand);
// wallWidth, wallHeight (mm); reachTop, reachBottom (mm from the top; 0 and 0: not known); reachWords.
// Use: KitchenDrawing { label: qsTr("Kitchen from the front"); words: vm.words; boxes: vm.boxes; wallWidth: 3000; wallHeight: 2100 }
Column {
    id: drawing

    required property string label
    required property string words
    required property var boxes
    required property real wallWidth
    required property real wallHeight
    property real reachTop: 0
    property real reachBottom: 0
    property string reachWords
    readonly property bool reachKnown: drawing.reachBottom > drawing.reachTop

    width: parent ? (parent as Item).width : implicitWidth
    spacing: Theme.gap

    Rectangle {
        id: wall

        readonly property real bar: Theme.gap
        readonly property real room: width - 4 * Theme.gap - wall.bar
        readonly property real mm: Math.max(0.01, Math.min(wall.room / Math.max(1, drawing.wallWidth), 0.6 * Window.height / Math.max(1, drawing.wallHeight)))

        width: drawing.width
        height: Math.round(drawing.wallHeight * wall.mm) + 4 * Theme.gap
        radius: Theme.radius
        color: Theme.sunken
        border.width: Theme.cardEdge
        border.color: Theme.line
        activeFocusOnTab: true
        Accessible.role: Accessible.Graphic
        Accessible.name: drawing.label
        Accessible.description: drawing.words + (drawing.reachWords ? " " + drawing.reachWords : "")
        Accessible.focusable: true

        Item {
            id: plane

            x: 2 * Theme.gap + wall.bar
            y: 2 * Theme.gap
            width: drawing.wallWidth * wall.mm
            height: drawing.wallHeight * wall.mm

            // Easy reach: a bar at the left and dashes behind the units.
            Rectangle {
                x: -wall.bar
                y: drawing.reachTop * wall.mm
                visible: drawing.reachKnown
                width: Math.max(4, Theme.gap / 2)
                height: (drawing.reachBottom - drawing.reachTop) * wall.mm
                color: Theme.before
            }
            Repeater {
                model: [drawing.reachTop, drawing.reachBottom]

                Row {
                    id: dashes

                    required property real modelData

                    x: -wall.bar
                    y: dashes.modelData * wall.mm - 1
                    width: plane.width + wall.bar
                    visible: drawing.reachKnown
                    spacing: 6
                    clip: true

                    Repeater {
                        model: 120

                        Rectangle {
                            width: 10
                            height: 3
                            color: Theme.before
                        }
                    }
                }
            }
            Repeater {
                model: drawing.boxes

                Rectangle {
                    id: box

                    required property var modelData
                    readonly property bool here: box.modelData.here === true
                    readonly property bool isUnit: box.modelData.unit === true

                    x: Math.round(box.modelData.x * wall.mm)
                    y: Math.round(box.modelData.y * wall.mm)
                    z: box.here ? 1 : 0
                    width: Math.round(box.modelData.width * wall.mm)
                    height: Math.round(box.modelData.height * wall.mm)
                    radius: box.isUnit ? 3 : 0
                    color: box.here ? Theme.accentSoft : Theme.surface
                    border.width: box.here ? 4 : box.isUnit ? 2 : 1
                    border.color: box.here ? Theme.accent : Theme.edge

                    Text {
                        id: number

                        anchors.centerIn: parent
                        visible: implicitWidth + 6 <= box.width && implicitHeight <= box.height
                        text: box.modelData.label ?? ""
                        color: box.here ? Theme.accent : Theme.ink
                        font.family: Theme.family
                        font.pixelSize: Theme.small
                        font.bold: box.here
                    }
                }
            }
        }
        Rectangle {
            x: Theme.gap
            y: plane.y + plane.height
            width: parent.width - 2 * Theme.gap
            height: 3
            color: Theme.edge
        }
        FocusRing {
            of: wall
        }
    }
    Words {
        text: drawing.words
        silent: true
    }
    Row {
        visible: drawing.reachKnown && drawing.reachWords !== ""
        spacing: Theme.gap

        Rectangle {
            width: Math.max(4, Theme.gap / 2)
            height: reachWords.height
            color: Theme.before
        }
        Words {
            id: reachWords

            width: drawing.width - 2 * Theme.gap
            text: drawing.reachWords
            soft: true
            silent: true
        }
    }
}
