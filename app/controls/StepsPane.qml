import QtQuick
import Feltmark

// The steps of the visit, scrolled, and below them its begin or end: at the left of a wide window under the client's name, else in
// the place of the page. Properties: shell, aside (at the left). focusHere() goes to the step in hand, revealHere() brings it in sight.
PageScroll {
    id: pane

    required property ShellViewModel shell
    property bool aside: false

    function focusHere(): void {
        steps.focusHere();
    }
    function revealHere(): void {
        const here = steps.hereRow();
        if (here)
            pane.reveal(here);
    }

    contentHeight: column.implicitHeight + 2 * column.y

    Column {
        id: column

        x: Math.max(2 * Theme.gap, Theme.ringRoom)
        y: x
        width: pane.width - x - 3 * Theme.gap
        spacing: pane.aside ? Theme.gap : 2 * Theme.gap

        Heading {
            visible: pane.aside && text !== ""
            leftPadding: Theme.gap
            text: pane.shell.clientName
        }
        Words {
            visible: pane.aside && text !== ""
            leftPadding: Theme.gap
            text: pane.shell.clientLine
            small: true
            soft: true
        }
        StepList {
            id: steps

            model: pane.shell.steps
            currentIndex: pane.shell.lastStep
            onOpened: key => pane.shell.goTo(key)
        }
        ActionButton {
            visible: text !== ""
            text: pane.shell.visitAction
            keyName: pane.shell.keys.keyOf(pane.shell.visitCommand)
            onActed: pane.shell.visitCommand === "closeVisit" ? pane.shell.closeVisit() : pane.shell.startVisit()
        }
    }
}
