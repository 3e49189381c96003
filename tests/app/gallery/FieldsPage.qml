import QtQuick
import Feltmark

// Entries and buttons in every state.
PageView {
    id: page

    kicker: qsTr("Controls of one kind each")
    commands: ["why"]
    onCommand: page.shell.say(qsTr("Because this is the gallery."))
    aside: [
        Finding {
            question: qsTr("Worked out for this shelf")
            answer: qsTr("28 cm above easy reach")
            reason: qsTr("Easy reach ends at 145 cm, measured today.")
        },
        Notice {
            kind: "caution"
            text: qsTr("Olive oil in glass: nothing of glass above the shoulder.")
        },
        Notice {
            kind: "error"
            text: qsTr("Not saved: disk full. Free some space, then go on.")
        },
        Notice {
            text: qsTr("Nothing was measured here yet.")
        }
    ]
    below: [
        Card {
            title: qsTr("Still to do")

            Words {
                text: qsTr("Rate goal 2. No evidence written yet.")
            }
            ActionButton {
                text: qsTr("Rate this goal")
                onActed: page.shell.say(qsTr("Rated."))
            }
        },
        ActionButton {
            text: qsTr("Throw the draft away")
            onActed: ask.open()
        },
        ConfirmDialog {
            id: ask

            title: qsTr("Throw the draft away?")
            text: qsTr("It cannot be brought back.")
            yes: qsTr("Throw away")
            onConfirmed: page.shell.say(qsTr("Thrown away."))
        }
    ]

    TextEntry {
        id: shelf

        label: qsTr("What stands on this shelf")
        hint: qsTr("A comma ends a thing.")
        value: "4 chopped tomatoes, 2 coconut milk, kidney beans; rice daily; olive oil glass daily; pomelo syrup"
        onAccepted: page.shell.say(qsTr("Saved."))
    }
    TextEntry {
        label: qsTr("Shelf height")
        unit: qsTr("cm")
        value: "4o"
        error: qsTr("Not a height: 4o. Try 40. Kept.")
        onAccepted: page.shell.say(qsTr("Saved."))
    }
    SecretEntry {
        label: qsTr("Passphrase")
        hint: qsTr("Five words or more.")
        onAccepted: page.shell.say(qsTr("Passphrase taken."))
    }
    CheckEntry {
        text: qsTr("Uses braille")
    }
    ActionButton {
        text: qsTr("Next place")
        keyName: "F3"
        primary: true
        onActed: page.shell.say(qsTr("Next."))
    }
    ActionButton {
        text: qsTr("Write the papers")
        unavailable: qsTr("There is no plan yet.")
    }
}
