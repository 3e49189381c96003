pragma ComponentBehavior: Bound
import QtQuick
import Feltmark

// The kitchen from the front or from above, to scale. Plus and minus zoom, to the place in hand first; zero shows all, the arrows move. The sentence under it says what matters; the reader hears that sentence.
// Properties: label; words (whole sentences); boxes: [{ x, y, width, height, label, unit, here }] in mm from the left and
// from the top of the wall (unit: the outline of a unit, else one of its places; here: the place in hand);
// floorShown: a line under it. Signal: zoomed(words), to be said. wallWidth, wallHeight (mm); reachTop, reachBottom (mm from the top; 0 and 0: not known); reachWords.
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
    property bool floorShown: true
    property real zoom: 1
    signal zoomed(string words)
    readonly property bool reachKnown: drawing.reachBottom > drawing.reachTop

    function zoomTo(zoom: real): void {
        const to = Math.max(1, Math.min(8, zoom));
        if (to === drawing.zoom) {
            drawing.zoomed(to === 1 ? qsTr("The whole drawing is shown.") : qsTr("This is the largest."));
            return;
        }
        const here = drawing.zoom === 1 ? Array.from(drawing.boxes).find(box => box.here === true) : undefined;
        const x = here ? plane.x + (here.x + here.width / 2) * wall.mm : view.contentX + view.width / 2;
        const y = here ? plane.y + (here.y + here.height / 2) * wall.mm : view.contentY + view.height / 2;
        const by = to / drawing.zoom;
        drawing.zoom = to;
        view.moveTo(x * by - view.width / 2, y * by - view.height / 2);
        drawing.zoomed(qsTr("Drawing at %1 percent.").arg(Math.round(to * 100)));
    }

    width: parent ? (parent as Item).width : implicitWidth
    spacing: Theme.gap

    Rectangle {
        id: wall

        readonly property real bar: Theme.gap
        readonly property real room: width - 4 * Theme.gap - wall.bar
        readonly property real whole: Math.max(0.01, Math.min(wall.room / Math.max(1, drawing.wallWidth), 0.6 * Window.height / Math.max(1, drawing.wallHeight)))

        readonly property real mm: wall.whole * drawing.zoom

        width: drawing.width
        height: Math.round(drawing.wallHeight * wall.whole) + 4 * Theme.gap
        radius: Theme.radius
        color: Theme.sunken
        border.width: Theme.cardEdge
        border.color: Theme.line
        activeFocusOnTab: true
        Accessible.role: Accessible.Graphic
        Accessible.name: drawing.label
        Accessible.description: drawing.words + (drawing.reachWords ? " " + drawing.reachWords : "")
        Accessible.focusable: true
        Keys.onPressed: event => {
            const step = wall.width / 4;
            if (event.key === Qt.Key_Plus || event.key === Qt.Key_Equal)
                drawing.zoomTo(drawing.zoom * 2);
            else if (event.key === Qt.Key_Minus)
                drawing.zoomTo(drawing.zoom / 2);
            else if (event.key === Qt.Key_0)
                drawing.zoomTo(1);
            else if (drawing.zoom === 1)
                return;
            else if (event.key === Qt.Key_Left || event.key === Qt.Key_Right)
                view.moveTo(view.contentX + (event.key === Qt.Key_Right ? step : -step), view.contentY);
            else if (event.key === Qt.Key_Up || event.key === Qt.Key_Down)
                view.moveTo(view.contentX, view.contentY + (event.key === Qt.Key_Down ? step : -step));
            else
                return;
            event.accepted = true;
        }

        Flickable {
            id: view

            function moveTo(x: real, y: real): void {
                view.contentX = Math.max(0, Math.min(x, view.contentWidth - view.width));
                view.contentY = Math.max(0, Math.min(y, view.contentHeight - view.height));
            }

            anchors.fill: parent
            anchors.margins: Theme.cardEdge
            contentWidth: Math.max(width, drawing.wallWidth * wall.mm + 4 * Theme.gap + wall.bar)
            contentHeight: Math.max(height, drawing.wallHeight * wall.mm + 4 * Theme.gap)
            interactive: drawing.zoom > 1
            clip: true
            boundsBehavior: Flickable.StopAtBounds

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

                            // Smaller where it must, down to the least that is drawn at all; zooming makes room.
                            anchors.centerIn: parent
                            width: box.width - 6
                            height: box.height
                            visible: contentWidth <= width && contentHeight <= height
                            horizontalAlignment: Text.AlignHCenter
                            verticalAlignment: Text.AlignVCenter
                            fontSizeMode: Text.Fit
                            minimumPixelSize: 16
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
                visible: drawing.floorShown
                width: view.contentWidth - 2 * Theme.gap
                height: 3
                color: Theme.edge
            }
        }
        FocusRing {
            of: wall
        }
    }
    // For the mouse and the finger; by keys plus and minus do the same on the drawing.
    Row {
        spacing: Theme.gap

        Repeater {
            model: [{
                    "sign": "\u2212",
                    "by": 0.5
                }, {
                    "sign": "+",
                    "by": 2
                }]

            Rectangle {
                id: zoomButton

                required property var modelData

                width: Math.max(Theme.target, Theme.body * 2)
                height: width
                radius: Theme.radius
                color: Theme.surface
                border.width: 2
                border.color: Theme.edge
                Accessible.ignored: true

                Text {
                    anchors.centerIn: parent
                    text: zoomButton.modelData.sign
                    color: Theme.ink
                    font.family: Theme.family
                    font.pixelSize: Theme.body
                    font.bold: true
                    Accessible.ignored: true
                }
                MouseArea {
                    anchors.fill: parent
                    onClicked: drawing.zoomTo(drawing.zoom * zoomButton.modelData.by)
                }
            }
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
