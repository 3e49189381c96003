pragma ComponentBehavior: Bound
import QtQuick
import Feltmark

// The first page: unlock, or make new records with passphrase and recovery code, or practise.
PageView {
    id: page

    required property EntryViewModel entry
    readonly property var groups: page.entry.groups
    readonly property string stage: page.entry.stage

    function errorOf(field: string): string {
        return page.stage === "setup" && page.entry.errorAt === field ? page.entry.error : "";
    }

    // The field to mend says what is wrong with it when it takes the focus.
    function showRefused(field: var): void {
        if (field.field.activeFocus)
            page.shell.say(page.entry.error);
        else
            field.focusField();
    }

    onStageChanged: if (page.stage === "code")
        showCode.restart()
    opening: page.stage === "setup" ? what.text + " " + where.text : ""
    title: page.stage === "unlock" ? qsTr("Unlock the records") : page.stage === "code" ? qsTr("Recovery code") : qsTr("Make new records")
    startsAt: page.stage === "unlock" ? unlockField.field : null

    Timer {
        id: showCode

        interval: 0
        onTriggered: codeLines.focusRow(0)
    }
    Connections {
        target: page.entry

        function onWipe(): void {
            unlockField.clear();
            first.clear();
            second.clear();
        }
        function onRefused(at: string): void {
            page.showRefused(at === "author" ? author : at === "first" ? first : second);
        }
    }
    Column {
        width: parent ? (parent as Item).width : 0
        visible: page.stage === "unlock"
        spacing: 2 * Theme.gap

        SecretEntry {
            id: unlockField

            label: qsTr("Passphrase or recovery code")
            error: page.stage === "unlock" ? page.entry.error : ""
            onAccepted: secret => page.entry.unlock(secret)
        }
        ActionButton {
            text: page.entry.busy ? qsTr("Unlocking") : qsTr("Unlock")
            primary: true
            onActed: page.entry.unlock(unlockField.text)
        }
        ActionButton {
            visible: page.entry.keyFileDamaged
            text: qsTr("Use the copy of the key file")
            onActed: page.entry.restoreKeyFile()
        }
    }
    Column {
        width: parent ? (parent as Item).width : 0
        visible: page.stage === "setup"
        spacing: 2 * Theme.gap

        Words {
            id: what

            text: qsTr("Feltmark works out with you where things stand in a client's kitchen and how they are marked, and writes the papers. To try everything on invented clients, take the practice caseload below.")
        }
        Words {
            id: where

            text: qsTr("Your records will lie encrypted in %1. A passphrase of 15 letters or more opens them, for example five words that only you put together. Nobody can open them without it or the recovery code that you get next.").arg(page.entry.folder)
        }
        TextEntry {
            id: author

            label: qsTr("Your name")
            hint: qsTr("As it shall stand on the papers")
            error: page.errorOf("author")
            onReturned: first.focusField()
        }
        SecretEntry {
            id: first

            label: qsTr("New passphrase")
            hint: qsTr("At least 15 letters")
            error: page.errorOf("first")
            offersShow: false // nothing stands between the two: who types the second blind would tick it
            shown: second.showing
            onAccepted: second.focusField()
        }
        SecretEntry {
            id: second

            label: qsTr("The same passphrase again")
            error: page.errorOf("second")
            showName: qsTr("Show what is typed, both passphrases")
            onAccepted: page.entry.create(author.text, first.text, second.text)
        }
        ActionButton {
            text: qsTr("Make the records")
            primary: true
            onActed: page.entry.create(author.text, first.text, second.text)
        }
    }
    Column {
        width: parent ? (parent as Item).width : 0
        visible: page.stage === "code"
        spacing: 2 * Theme.gap

        Words {
            text: qsTr("Write these groups down and keep them away from this computer. They open the records when the passphrase is lost. They are shown only now.")
        }
        ReadingList {
            id: codeLines

            label: qsTr("Recovery code")
            lines: page.groups.map((group, i) => qsTr("Group %1: %2").arg(i + 1).arg(group.split("").join(" ")))
        }
        TextEntry {
            id: typedBack

            label: qsTr("Type group %1 back").arg(page.entry.askedGroup)
            error: page.stage === "code" ? page.entry.error : ""
            onReturned: page.entry.confirm(typedBack.text)
        }
        ActionButton {
            text: qsTr("The code is written down")
            primary: true
            onActed: page.entry.confirm(typedBack.text)
        }
    }
    ActionButton {
        visible: page.stage !== "code"
        text: qsTr("Practice caseload: three invented clients")
        onActed: page.entry.practice()
    }
}
