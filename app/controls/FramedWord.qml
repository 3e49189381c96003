import QtQuick
import Feltmark

// A word in a frame, such as "usual" or "not known". `caution` gives it the tone of a caution. The row says it.
Rectangle {
    id: frame

    required property string text
    property bool caution: false
    readonly property real room: parent ? (parent as Item).width : implicitWidth

    width: words.width + 2 * words.x
    height: words.implicitHeight + 4
    radius: 4
    color: frame.caution ? Theme.cautionSoft : "transparent"
    border.width: Theme.cardEdge
    border.color: frame.caution ? Theme.caution : Theme.edge

    FittedWords {
        id: words

        x: Math.round(Theme.gap / 2) + 2
        y: 2
        room: frame.room - 2 * x
        small: true
        strong: frame.caution
        color: frame.caution ? Theme.caution : Theme.inkSoft
        text: frame.text
        silent: true
    }
}
