pragma ComponentBehavior: Bound
import QtQuick
import Feltmark

// The page in plain large words on a second window, without names, for a client or a sighted helper. It takes no keys:
// those stay with the therapist. It is scrolled by mouse or finger.
Window {
    id: window

    required property ShellViewModel shell

    title: qsTr("Partner view")
    width: 900
    height: 700
    visible: window.shell.partnerShown
    color: Theme.page
    flags: Qt.Window | Qt.WindowDoesNotAcceptFocus
    onClosing: if (window.shell.partnerShown)
        window.shell.togglePartner()

    Flickable {
        id: view

        anchors.fill: parent
        anchors.margins: 2 * Theme.body
        contentHeight: lines.height
        clip: true
        boundsBehavior: Flickable.StopAtBounds

        Column {
            id: lines

            width: view.width
            spacing: Theme.body

            Repeater {
                model: window.shell.partnerLines

                Text {
                    required property string modelData
                    required property int index

                    width: lines.width
                    text: modelData
                    textFormat: Text.PlainText
                    wrapMode: Text.Wrap
                    color: Theme.ink
                    font.family: Theme.family
                    font.pixelSize: Math.round(Theme.body * (index === 0 ? 2.4 : 1.8))
                    font.bold: index === 0
                    Accessible.role: index === 0 ? Accessible.Heading : Accessible.StaticText
                    Accessible.name: modelData
                }
            }
        }
    }
}
