import QtQuick
import Feltmark

// The marker test: a standard page with the trial in hand at its top, which has the answering keys.
StandardScreen {
    id: page

    Timer {
        id: toTrial

        interval: 0
        onTriggered: trial.forceActiveFocus(Qt.TabFocusReason)
    }
    Connections {
        target: page.vm

        function onFocusTrial(): void {
            toTrial.restart();
        }
    }

    first: [
        TrialKeys {
            id: trial

            visible: page.vm.trialWords !== ""
            words: page.vm.trialWords
            detail: page.vm.trialDetail
            onActed: key => page.vm.act(key)
        }
    ]
}
