import QtQuick
import Feltmark

// One row of a FindingModel: a finding, or a sentence that cautions, fails or only tells.
Item {
    id: line

    required property string kind
    required property string question
    required property string answer
    required property string reason

    width: parent ? (parent as Item).width : implicitWidth
    implicitHeight: line.kind === "finding" ? finding.implicitHeight : notice.implicitHeight

    Finding {
        id: finding

        visible: line.kind === "finding"
        question: line.question
        answer: line.answer
        reason: line.reason
    }
    Notice {
        id: notice

        visible: line.kind !== "finding"
        kind: line.kind
        text: line.answer
    }
}
