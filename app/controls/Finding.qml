import QtQuick
import Feltmark
import "joined.js" as Joined

// What the program worked out, spoken as one: question, answer, reason. A Tab stop, so that it can be read at will.
// Use: Finding { question: qsTr("Worked out for this shelf"); answer: page.sight.size; reason: page.sight.why }
Rectangle {
    id: finding

    required property string question
    required property string answer
    property string reason
    property bool silent: false

    width: parent ? (parent as Item).width : implicitWidth
    implicitHeight: column.implicitHeight + 4 * Theme.gap
    radius: Theme.cardRadius
    color: Theme.surface
    border.width: Theme.cardEdge
    border.color: Theme.line
    activeFocusOnTab: !finding.silent
    Accessible.role: Accessible.Note
    Accessible.ignored: finding.silent
    Accessible.focusable: !finding.silent
    Accessible.name: Joined.joined([finding.question, finding.answer, finding.reason], ".")

    Rectangle {
        x: 2 * Theme.gap
        width: Math.min(6 * Theme.gap, finding.width - 4 * Theme.gap)
        height: 4
        color: Theme.accent
    }
    Column {
        id: column

        x: 2 * Theme.gap
        y: 2 * Theme.gap
        width: finding.width - 4 * Theme.gap
        spacing: Theme.gap

        Words {
            text: finding.question
            small: true
            soft: true
            silent: true
        }
        Words {
            id: answer

            readonly property bool isShort: finding.answer.length <= 60 // a sentence or two are no heading

            text: finding.answer
            strong: answer.isShort
            silent: true
            font.pixelSize: answer.isShort ? Theme.heading2 : Theme.body
        }
        Words {
            visible: finding.reason !== ""
            text: finding.reason
            silent: true
        }
    }
    FocusRing {
        of: finding
        corner: Theme.cardRadius
    }
}
