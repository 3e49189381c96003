import QtQuick
import Feltmark

// What a ChoiceEntry of many choices shows: a button with the one that is chosen, and the list that it opens. Property: entry.
ActionButton {
    id: opener

    required property ChoiceEntry entry

    wide: true
    opensList: true
    text: opener.entry.value || qsTr("Not chosen")
    unavailable: opener.entry.unavailable
    spokenName: qsTr("%1: %2, opens a list").arg(opener.entry.spokenLabel).arg(text) // a button cannot take the role of a combo box in Qt 6.4
    Accessible.description: opener.entry.hintToTell
    onActiveFocusChanged: opener.entry.tellHint(opener.activeFocus)
    onActed: list.open()
    Keys.onDownPressed: event => {
        event.accepted = (event.modifiers & Qt.AltModifier) !== 0;
        if (event.accepted)
            opener.clicked();
    }
    Keys.onPressed: event => {
        event.accepted = list.isLetter(event) && !opener.entry.unavailable;
        if (event.accepted)
            list.openAt(event.text);
    }

    ChoiceList {
        id: list

        title: opener.entry.label
        choices: opener.entry.choices
        chosenIndex: opener.entry.chosenIndex
        onTaken: index => opener.entry.take(index)
    }
}
