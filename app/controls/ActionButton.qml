pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Templates as T
import Feltmark

// A button whose words wrap. Return, Enter and Space press it.
// Properties: text; keyName (its key, shown and spoken); primary (filled: the one next thing of a screen);
// wide (as wide as its parent); opensList (words at the left, a mark at the right); unavailable (why not now: it stays reachable and, when pressed, says so and does nothing).
// Signal: acted(). Use: ActionButton { text: qsTr("Next place"); keyName: "F3"; primary: true; onActed: page.next() }
T.Button {
    id: button

    property string keyName
    property bool primary: false
    property bool wide: false
    property bool opensList: false
    property string unavailable
    property string spokenName: button.text
    signal acted

    readonly property string shownText: button.keyName ? qsTr("%1  (%2)").arg(button.text).arg(button.keyName) : button.text
    readonly property real room: parent ? (parent as Item).width : implicitWidth

    implicitWidth: Math.ceil(measured.advanceWidth) + 2 + leftPadding + rightPadding
    implicitHeight: Math.max(Theme.target, contentItem.implicitHeight + topPadding + bottomPadding)
    width: button.wide ? button.room : button.room > 0 ? Math.min(implicitWidth, button.room) : implicitWidth
    padding: Theme.gap
    horizontalPadding: 2 * Theme.gap
    Accessible.name: (button.keyName ? qsTr("%1, key %2").arg(button.spokenName).arg(button.keyName) : button.spokenName) + (button.unavailable ? qsTr(", unavailable. %1").arg(button.unavailable) : "")
    Keys.onReturnPressed: button.clicked()
    Keys.onEnterPressed: button.clicked()
    onClicked: {
        if (button.unavailable)
            speaker.say(button.unavailable);
        else
            button.acted();
    }

    contentItem: Text {
        objectName: "words"
        text: button.shownText
        textFormat: Text.PlainText
        wrapMode: Text.Wrap
        rightPadding: button.opensList ? Theme.body : 0
        horizontalAlignment: button.opensList ? Text.AlignLeft : Text.AlignHCenter
        verticalAlignment: Text.AlignVCenter
        color: button.unavailable ? Theme.inkSoft : button.primary ? Theme.accentInk : Theme.accent
        font.family: Theme.family
        font.pixelSize: Theme.body
        font.bold: true
    }
    background: Rectangle {
        radius: Theme.radius
        color: button.unavailable ? Theme.sunken : button.primary ? Theme.accent : button.down ? Theme.accentSoft : Theme.surface
        border.width: Theme.controlEdge
        border.color: button.unavailable ? Theme.edge : Theme.accent

        Rectangle {
            anchors.left: parent.left
            anchors.right: parent.right
            anchors.bottom: parent.bottom
            anchors.margins: Theme.controlEdge + 3
            visible: button.hovered || button.down
            height: 2
            color: button.primary && !button.unavailable ? Theme.accentInk : Theme.accent
        }
    }

    Text {
        visible: button.opensList
        anchors.right: parent.right
        anchors.rightMargin: 2 * Theme.gap
        anchors.verticalCenter: parent.verticalCenter
        text: button.opensList ? "\u25be" : "" // of another font, which takes its time
        color: Theme.accent
        font.family: Theme.family
        font.pixelSize: Theme.body
    }
    TextMetrics {
        id: measured

        text: button.shownText
        font.family: Theme.family
        font.pixelSize: Theme.body
        font.bold: true
    }
    FocusRing {
        of: button
    }
    Speaker {
        id: speaker
    }
}
