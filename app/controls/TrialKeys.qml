import QtQuick
import Feltmark

// One trial of a test by touch: which slots to take from, and the keys that answer it while it has the focus.
// Shows and says numbers only, so that a client who hears or sees it learns nothing of the answer.
// Properties: words ("Slot 4, then 9"), detail. Signal: acted(key), the key of the page's button.
// Use: TrialKeys { words: page.vm.trialWords; detail: page.vm.trialDetail; onActed: key => page.vm.act(key) }
Rectangle {
    id: trial

    required property string words
    property string detail
    signal acted(string key)

    width: parent ? (parent as Item).width : implicitWidth
    implicitHeight: column.implicitHeight + 4 * Theme.gap
    radius: Theme.cardRadius
    color: Theme.surface
    border.width: Theme.cardEdge
    border.color: Theme.line
    activeFocusOnTab: true
    Accessible.role: Accessible.Note
    Accessible.focusable: true
    Accessible.name: qsTr("%1. %2").arg(trial.words).arg(trial.detail)
    Keys.onPressed: event => {
        const keys = {};
        keys[Qt.Key_J] = "same";
        keys[Qt.Key_F] = "different";
        keys[Qt.Key_U] = "unsure";
        keys[Qt.Key_Space] = "repeat";
        keys[Qt.Key_Backspace] = "back";
        if (event.modifiers !== Qt.NoModifier || event.isAutoRepeat || !keys[event.key])
            return;
        event.accepted = true;
        trial.acted(keys[event.key]);
    }

    Column {
        id: column

        x: 2 * Theme.gap
        y: 2 * Theme.gap
        width: trial.width - 4 * Theme.gap
        spacing: Theme.gap

        Words {
            text: trial.words
            strong: true
            silent: true
            font.pixelSize: Theme.heading1
        }
        Words {
            text: trial.detail
            soft: true
            silent: true
        }
        Words {
            text: qsTr("Keys here: J same, F different, U unsure, Space repeat, Backspace take back.")
            small: true
            silent: true
        }
    }
    FocusRing {
        of: trial
        corner: Theme.cardRadius
    }
}
