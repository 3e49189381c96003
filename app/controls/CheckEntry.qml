pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Templates as T
import Feltmark

// A box to tick; the whole row is the target. Space, Return and a click tick it.
// Properties: text, checked, error, unavailable. Signal: toggled() after a change by the user.
// Use: CheckEntry { text: qsTr("Uses braille"); checked: vm.braille; onToggled: vm.braille = checked }
T.CheckBox {
    id: box

    property string error
    property string spokenName: box.text

    implicitWidth: leftPadding + rightPadding + contentItem.implicitWidth
    implicitHeight: Math.max(Theme.target, contentItem.implicitHeight + topPadding + bottomPadding)
    width: parent ? (parent as Item).width : implicitWidth
    padding: Theme.gap
    Accessible.name: box.error ? qsTr("%1, error: %2").arg(box.spokenName).arg(box.error) : box.spokenName
    Keys.onReturnPressed: box.flip()
    Keys.onEnterPressed: box.flip()

    function flip(): void {
        box.toggle();
        box.toggled();
    }

    indicator: Rectangle {
        x: box.leftPadding
        anchors.verticalCenter: parent ? (parent as Item).verticalCenter : undefined
        width: Math.round(Theme.body * 1.3)
        height: width
        radius: 4
        color: box.checked ? Theme.accent : Theme.surface
        border.width: Theme.controlEdge
        border.color: box.checked ? Theme.accent : Theme.edge

        Text {
            anchors.centerIn: parent
            visible: box.checked
            text: box.checked ? "\u2713" : "" // of another font, which takes its time
            color: Theme.accentInk
            font.family: Theme.family
            font.pixelSize: Theme.body
            font.bold: true
        }
    }
    contentItem: Words {
        width: box.availableWidth
        leftPadding: box.indicator.width + Theme.gap
        verticalAlignment: Text.AlignVCenter
        text: box.error ? qsTr("%1. %2").arg(box.text).arg(box.error) : box.text
        color: box.error ? Theme.error : Theme.ink
        silent: true
    }
    background: Rectangle {
        radius: Theme.radius
        color: box.hovered ? Theme.accentSoft : "transparent"
    }

    FocusRing {
        of: box
    }
}
