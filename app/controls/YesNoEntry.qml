import QtQuick
import Feltmark

// Yes, no, or not asked, side by side. answer: "yes", "no" or "" for not asked. Signal: answered(answer).
// The other properties are those of ChoiceEntry.
ChoiceEntry {
    id: entry

    property string answer
    readonly property list<string> answers: ["yes", "no", ""]
    signal answered(string answer)

    inRow: true
    choices: [qsTr("Yes"), qsTr("No"), qsTr("Not asked")]
    value: entry.choices[Math.max(0, entry.answers.indexOf(entry.answer))]
    onChosen: words => entry.answered(entry.answers[entry.choices.indexOf(words)])
}
