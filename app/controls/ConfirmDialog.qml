import QtQuick
import Feltmark

// A question before something that cannot be undone. The safe answer has the focus; Escape is the safe answer too.
// Properties: title (the question), text (what would happen), yes, no (words of the buttons). Signal: confirmed().
// Use: ConfirmDialog { id: ask; title: qsTr("Throw the draft away?"); text: ...; yes: qsTr("Throw away"); onConfirmed: ... }
ModalPane {
    id: dialog

    property alias text: words.text
    property string yes: qsTr("Yes")
    property string no: qsTr("Cancel")
    signal confirmed

    onOpened: refuse.forceActiveFocus(Qt.TabFocusReason)

    Words {
        id: words
    }
    ActionButton {
        id: refuse

        text: dialog.no
        primary: true
        onActed: dialog.close()
    }
    ActionButton {
        text: dialog.yes
        onActed: {
            dialog.close();
            dialog.confirmed();
        }
    }
}
