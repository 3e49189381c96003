import QtQuick
import Feltmark

// A sentence that says what to do. kind: "quiet" (words only), "caution" (round sign), "error" (square sign).
// Use: Notice { kind: "caution"; text: qsTr("Olive oil in glass: nothing of glass above the shoulder.") }
Item {
    id: notice

    property string kind: "quiet"
    property alias text: words.text
    property bool silent: false
    readonly property bool framed: notice.kind !== "quiet"
    readonly property color tone: notice.kind === "error" ? Theme.error : Theme.caution
    readonly property int pad: notice.framed ? Theme.gap : 0

    width: parent ? (parent as Item).width : implicitWidth
    implicitWidth: words.implicitWidth + words.x + notice.pad
    implicitHeight: Math.max(words.implicitHeight, notice.framed ? sign.height : 0) + 2 * notice.pad

    Rectangle {
        anchors.fill: parent
        visible: notice.framed
        radius: Theme.radius
        color: notice.kind === "error" ? Theme.errorSoft : Theme.cautionSoft
        border.width: Theme.cardEdge
        border.color: notice.tone
    }
    Rectangle {
        id: sign

        x: notice.pad
        y: notice.pad
        visible: notice.framed
        width: Math.round(Theme.body * 1.4)
        height: width
        radius: notice.kind === "error" ? 3 : width / 2
        color: notice.tone

        Text {
            anchors.centerIn: parent
            text: notice.kind === "error" ? "\u00d7" : "!"
            color: notice.kind === "error" ? Theme.errorSoft : Theme.cautionSoft
            font.family: Theme.family
            font.pixelSize: Theme.body
            font.bold: true
        }
    }
    Words {
        id: words

        x: notice.framed ? sign.x + sign.width + Theme.gap : 0
        y: notice.pad
        width: notice.width - x - notice.pad
        silent: true
    }

    Accessible.role: Accessible.StaticText
    Accessible.ignored: notice.silent
    Accessible.name: notice.kind === "caution" ? qsTr("Caution. %1").arg(notice.text) : notice.kind === "error" ? qsTr("Error. %1").arg(notice.text) : notice.text
}
