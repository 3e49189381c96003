import QtQuick
import Feltmark

// The mark of the focus, outside the control: a gap in the halo's colour, then the ring.
// Put it last into a control: FocusRing { of: button }. `shown` may follow something else than `of`'s own focus.
Rectangle {
    id: ring

    required property Item of
    property int corner: Theme.radius
    property bool shown: ring.of.activeFocus
    readonly property int reach: Theme.halo + Theme.ring

    objectName: "focusRing"
    visible: ring.shown
    z: 1
    x: ring.of.x * (ring.parent === ring.of.parent ? 1 : 0) - ring.reach
    y: ring.of.y * (ring.parent === ring.of.parent ? 1 : 0) - ring.reach
    width: ring.of.width + 2 * ring.reach
    height: ring.of.height + 2 * ring.reach
    radius: ring.corner + ring.reach
    color: "transparent"
    border.width: ring.reach
    border.color: Theme.focusHalo

    Rectangle {
        anchors.fill: parent
        radius: ring.radius
        color: "transparent"
        border.width: Theme.ring
        border.color: Theme.focus
    }
}
