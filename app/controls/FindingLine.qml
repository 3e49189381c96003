import QtQuick
import Feltmark
import "joined.js" as Joined

// One row of a FindingList: a finding, or a sentence that cautions, fails or only tells. Spoken as one.
Item {
    id: line

    required property string kind
    required property string question
    required property string answer
    required property string reason
    required property bool ofRow
    // "2 of 5", spoken last; empty for a single one.
    property string position
    property bool taken: true // by the list that it is in
    property int place: 0 // among those taken
    readonly property string told: line.kind === "caution" ? qsTr("Caution. %1").arg(line.answer) : line.kind === "urgent" ? qsTr("Urgent. %1").arg(line.answer) : line.kind === "error" ? qsTr("Error. %1").arg(line.answer) : line.answer

    width: parent ? (parent as Item).width : implicitWidth
    implicitHeight: line.kind === "finding" ? finding.implicitHeight : Math.max(Theme.target, notice.implicitHeight)
    Accessible.role: Accessible.Note
    Accessible.focusable: true
    Accessible.name: line.kind === "finding" ? Joined.joined([line.question, line.answer, line.reason], ".") : line.told
    Accessible.description: line.position

    Finding {
        id: finding

        visible: line.kind === "finding"
        silent: true
        question: line.question
        answer: line.answer
        reason: line.reason
    }
    Notice {
        id: notice

        visible: line.kind !== "finding"
        silent: true
        kind: line.kind === "urgent" ? "error" : line.kind
        text: line.answer
        anchors.verticalCenter: parent.verticalCenter
    }
    FocusRing {
        of: line
        corner: line.kind === "finding" ? Theme.cardRadius : Theme.radius
    }
}
