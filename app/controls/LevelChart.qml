pragma ComponentBehavior: Bound
import QtQuick
import Feltmark

// Levels from -2 to +2 at each visit, "as expected" dashed. The sentence comes first; the reader hears it and every point.
// Properties: label (what it is), sentence (what it means), points: [{ date: "3 Sep", level: -2 }, ...], oldest first.
// Use: LevelChart { label: qsTr("Level at each visit"); sentence: vm.sentence; points: vm.points }
Column {
    id: chart

    required property string label
    required property string sentence
    required property var points
    readonly property bool roomy: Theme.em(chart.width) >= 28
    readonly property list<string> levelNames: [qsTr("Much less than expected"), qsTr("Less than expected"), qsTr("As expected"), qsTr("More than expected"), qsTr("Much more than expected")]
    readonly property string spokenPoints: chart.points.map(point => qsTr("%1: level %2, %3").arg(point.date).arg(chart.signed(point.level)).arg(chart.nameOf(point.level).toLowerCase())).join(". ")

    function nameOf(level: int): string {
        return chart.levelNames[level + 2];
    }
    function signed(level: int): string {
        return level > 0 ? "+" + level : level < 0 ? "\u2212" + (-level) : "0";
    }

    width: parent ? (parent as Item).width : implicitWidth
    spacing: Theme.gap

    Words {
        text: chart.label
        strong: true
        silent: true
    }
    Words {
        text: chart.sentence
        silent: true
    }
    Item {
        id: plot

        readonly property real rowHeight: Math.round(Theme.body * 2.1)
        readonly property real axisWidth: chart.roomy ? Math.ceil(longest.advanceWidth) + 3 * Theme.small : 2.5 * Theme.small
        readonly property real step: (width - axisWidth - Theme.body) / Math.max(1, chart.points.length)
        readonly property real pointSize: Math.min(Math.round(Theme.body * 1.9), Math.max(8, plot.step - 4))
        readonly property bool datesFit: chart.roomy && longestDate.advanceWidth + 2 * Theme.gap <= plot.step

        function pointX(index: int): real {
            return plot.axisWidth + plot.step * (index + 0.5) + Theme.body / 2;
        }
        function levelY(level: int): real {
            return plot.rowHeight * (2 - level + 0.5);
        }

        width: chart.width
        height: 5 * plot.rowHeight + Math.round(Theme.small * 1.8)
        activeFocusOnTab: true
        Accessible.role: Accessible.Graphic
        Accessible.name: chart.label
        Accessible.description: chart.sentence + " " + chart.spokenPoints + "."
        Accessible.focusable: true

        TextMetrics {
            id: longest

            text: chart.levelNames[4]
            font.family: Theme.family
            font.pixelSize: Theme.small
            font.bold: true
        }
        Repeater {
            model: 5

            Item {
                id: row

                required property int index
                readonly property int level: 2 - row.index

                y: row.index * plot.rowHeight
                width: plot.width
                height: plot.rowHeight

                Words {
                    anchors.verticalCenter: parent.verticalCenter
                    width: plot.axisWidth - Theme.gap
                    wrapMode: Text.NoWrap
                    text: chart.roomy ? chart.signed(row.level) + "  " + chart.nameOf(row.level) : chart.signed(row.level)
                    small: true
                    strong: row.level === 0
                    silent: true
                }
                Rectangle {
                    x: plot.axisWidth
                    y: Math.round(plot.rowHeight / 2)
                    visible: row.level !== 0
                    width: plot.width - plot.axisWidth
                    height: 1
                    color: Theme.edge
                }
                Row {
                    x: plot.axisWidth
                    y: Math.round(plot.rowHeight / 2) - 1
                    visible: row.level === 0
                    spacing: 6
                    clip: true
                    width: plot.width - plot.axisWidth

                    Repeater {
                        model: 120

                        Rectangle {
                            width: 10
                            height: 2
                            color: Theme.aim
                        }
                    }
                }
            }
        }
        // From each visit to the next.
        Repeater {
            model: Math.max(0, chart.points.length - 1)

            Rectangle {
                id: leg

                required property int index
                readonly property real fromX: plot.pointX(leg.index)
                readonly property real fromY: plot.levelY(chart.points[leg.index].level)
                readonly property real toX: plot.pointX(leg.index + 1)
                readonly property real toY: plot.levelY(chart.points[leg.index + 1].level)

                x: leg.fromX
                y: leg.fromY - height / 2
                width: Math.hypot(leg.toX - leg.fromX, leg.toY - leg.fromY)
                height: Theme.controlEdge + 1
                color: Theme.now
                antialiasing: true
                transformOrigin: Item.Left
                rotation: Math.atan2(leg.toY - leg.fromY, leg.toX - leg.fromX) * 180 / Math.PI
            }
        }
        Repeater {
            model: chart.points.length

            Rectangle {
                id: point

                required property int index
                readonly property bool latest: point.index === chart.points.length - 1
                readonly property int level: chart.points[point.index].level

                x: plot.pointX(point.index) - width / 2
                y: plot.levelY(point.level) - height / 2
                width: plot.pointSize
                height: plot.pointSize
                radius: width / 2
                color: point.latest ? Theme.now : Theme.surface
                border.width: Theme.controlEdge + 1
                border.color: Theme.now

                Text {
                    anchors.centerIn: parent
                    visible: implicitWidth <= point.width && implicitHeight <= point.height
                    text: chart.signed(point.level)
                    color: point.latest ? Theme.surface : Theme.ink
                    font.family: Theme.family
                    font.pixelSize: Theme.small
                    font.bold: true
                }
            }
        }
        Repeater {
            model: chart.points.length

            Text {
                required property int index

                x: plot.pointX(index) - width / 2
                y: plot.height - height
                text: plot.datesFit ? chart.points[index].date : index + 1
                color: Theme.ink
                font.family: Theme.family
                font.pixelSize: Theme.small
            }
        }
        TextMetrics {
            id: longestDate

            text: chart.points.reduce((longest, point) => point.date.length > longest.length ? point.date : longest, "")
            font.family: Theme.family
            font.pixelSize: Theme.small
        }
        FocusRing {
            of: plot
        }
    }
    Repeater {
        model: plot.datesFit ? 0 : chart.points.length

        Words {
            required property int index

            text: qsTr("%1: %2, level %3, %4").arg(index + 1).arg(chart.points[index].date).arg(chart.signed(chart.points[index].level)).arg(chart.nameOf(chart.points[index].level).toLowerCase())
            silent: true
        }
    }
}
