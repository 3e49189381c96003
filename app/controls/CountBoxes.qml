pragma ComponentBehavior: Bound
import QtQuick
import Feltmark

// A count as boxes, full with a tick or empty, and the words beside or below. The reader hears label and words.
// Properties: label ("3 Sep, before"), done, total, words ("3 of 6 found"), earlier (the other colour).
Column {
    id: count

    required property string label
    required property int done
    required property int total
    required property string words
    property bool earlier: false

    width: parent ? (parent as Item).width : implicitWidth
    spacing: Theme.gap / 2

    Words {
        text: count.label + ": " + count.words
    }
    Item {
        width: count.width
        height: flow.implicitHeight

        Flow {
            id: flow

            width: parent.width
            spacing: 4

            Repeater {
                model: count.total

                Rectangle {
                    id: box

                    required property int index
                    readonly property bool full: box.index < count.done
                    readonly property color tone: count.earlier ? Theme.before : Theme.now

                    width: Math.round(Theme.body * 1.5)
                    height: width
                    radius: 4
                    color: box.full ? box.tone : Theme.surface
                    border.width: Theme.controlEdge
                    border.color: box.tone

                    Text {
                        anchors.centerIn: parent
                        visible: box.full
                        text: box.full ? "\u2713" : "" // of another font, which takes its time
                        color: Theme.surface
                        font.family: Theme.family
                        font.pixelSize: Theme.body
                        font.bold: true
                    }
                }
            }
        }
    }
}
