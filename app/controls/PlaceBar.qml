import QtQuick
import Feltmark

// One line that says which page this is while its heading is scrolled out of sight. For eyes alone; a click goes back to the heading.
// Properties: page.
Rectangle {
    id: bar

    required property PageView page
    readonly property string text: bar.page.title

    implicitHeight: Math.ceil(1.4 * Theme.small) + Theme.gap / 2
    color: Theme.sunken

    Text {
        anchors.verticalCenter: parent.verticalCenter
        x: 2 * Theme.gap
        width: bar.width - 4 * Theme.gap
        text: bar.text
        textFormat: Text.PlainText
        elide: Text.ElideRight
        fontSizeMode: Text.HorizontalFit
        minimumPixelSize: Math.max(16, Theme.small / 2)
        color: Theme.ink
        font.family: Theme.family
        font.pixelSize: Theme.small
        font.bold: true
        Accessible.ignored: true
    }
    Rectangle {
        anchors.bottom: parent.bottom
        width: parent.width
        height: Theme.cardEdge
        color: Theme.line
    }
    MouseArea {
        anchors.fill: parent
        onClicked: bar.page.focusHeading()
    }
}
