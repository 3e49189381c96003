import QtQuick
import Feltmark

// What a FocusRing paints. Property: corner (radius of what it lies round).
Rectangle {
    id: frame

    property int corner

    radius: frame.corner + Theme.halo + Theme.ring
    color: "transparent"
    border.width: Theme.halo + Theme.ring
    border.color: Theme.focusHalo

    Rectangle {
        anchors.fill: parent
        radius: frame.radius
        color: "transparent"
        border.width: Theme.ring
        border.color: Theme.focus
    }
}
