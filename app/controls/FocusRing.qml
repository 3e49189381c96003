import QtQuick
import Feltmark

// The mark of the focus, outside the control: a gap in the halo's colour, then the ring. Painted from when it shows: a page has
// hundreds of controls, and one has the focus.
// Put it last into a control: FocusRing { of: button }. `shown` may follow something else than `of`'s own focus.
Loader {
    id: ring

    required property Item of
    property int corner: Theme.radius
    property bool shown: ring.of.activeFocus
    readonly property int reach: Theme.halo + Theme.ring

    objectName: "focusRing"
    z: 1
    x: ring.of.x * (ring.parent === ring.of.parent ? 1 : 0) - ring.reach
    y: ring.of.y * (ring.parent === ring.of.parent ? 1 : 0) - ring.reach
    width: ring.of.width + 2 * ring.reach
    height: ring.of.height + 2 * ring.reach
    active: ring.shown
    source: Qt.resolvedUrl("FocusFrame.qml") // beside this file, wherever the ring is used
    onLoaded: (ring.item as FocusFrame).corner = Qt.binding(() => ring.corner)
}
