pragma ComponentBehavior: Bound
import QtQuick
import Feltmark

// The first page: unlock, or make new records with passphrase and recovery code, or practise. What a start does not show is not made.
PageView {
    id: page

    required property EntryViewModel entry
    readonly property string stage: page.entry.stage
    readonly property UnlockStage unlocking: other.item as UnlockStage

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

    onStageChanged: other.show()
    opening: page.stage === "setup" ? what.text + " " + where.text : ""
    title: page.stage === "unlock" ? qsTr("Unlock the records") : page.stage === "code" ? qsTr("Recovery code") : qsTr("Make new records")
    startsAt: page.unlocking ? page.unlocking.field : null

    Connections {
        target: page.entry

        function onWipe(): void {
            if (page.unlocking)
                page.unlocking.clear();
            first.clear();
            second.clear();
        }
        function onRefused(at: string): void {
            page.showRefused(at === "author" ? author : at === "first" ? first : second);
        }
    }
    Loader {
        id: other

        function show(): void {
            if (page.stage === "setup")
                other.source = "";
            else
                other.setSource(page.stage === "unlock" ? "UnlockStage.qml" : "RecoveryCode.qml", {
                        "entry": page.entry
                    });
        }

        width: parent ? (parent as Item).width : 0
        visible: page.stage !== "setup"
        Component.onCompleted: other.show()
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
    ActionButton {
        visible: page.stage !== "code"
        text: qsTr("Practice caseload: three invented clients")
        onActed: page.entry.practice()
    }
}
