pragma ComponentBehavior: Bound
import QtQuick
import Feltmark

// The page in plain large words on a second window, without names, for a client or a sighted helper. It takes no keys:
// those stay with the therapist, who turns its page from her own window. It is scrolled by mouse or finger too.
Window {
    id: window

    required property ShellViewModel shell

    readonly property real end: Math.max(0, lines.height - view.height)

    // By what fits, so that the line that was cut off comes whole. Returns what is to be said.
    function turn(by: int): string {
        if (!window.shell.partnerShown)
            return qsTr("Partner view is closed. %1 opens it.").arg(window.shell.keys.keyOf("partner") || window.shell.keys.titleOf("partner"));
        const before = view.contentY;
        view.contentY = by > 0 ? Math.min(window.end, window.below()) : Math.max(0, window.above());
        const shown = window.shownLines();
        const where = qsTr("Partner's page: lines %1 to %2 of %3.").arg(shown[0]).arg(shown[1]).arg(linesShown.count);
        if (view.contentY !== before)
            return where;
        return (by > 0 ? qsTr("The end. %1") : qsTr("The beginning. %1")).arg(where);
    }
    function below(): real {
        const bottom = view.contentY + view.height;
        for (let i = 0; i < linesShown.count; i++) {
            const line = linesShown.itemAt(i);
            if (line.y + line.height > bottom + 1)
                return line.y > view.contentY ? line.y : bottom;
        }
        return window.end;
    }
    function above(): real {
        const top = view.contentY - view.height;
        for (let i = 0; i < linesShown.count; i++) {
            const line = linesShown.itemAt(i);
            if (line.y >= top)
                return line.y < view.contentY ? line.y : top;
        }
        return top;
    }
    // First and last line of which something is to be seen.
    function shownLines(): var {
        let first = 0, last = 0;
        for (let i = 0; i < linesShown.count; i++) {
            const line = linesShown.itemAt(i);
            if (line.y + line.height <= view.contentY || line.y >= view.contentY + view.height)
                continue;
            first = first || i + 1;
            last = i + 1;
        }
        return [first, last];
    }

    title: qsTr("Partner view")
    width: 900
    height: 700
    visible: window.shell.partnerShown
    color: Theme.page
    flags: Qt.Window | Qt.WindowDoesNotAcceptFocus
    onClosing: if (window.shell.partnerShown)
        window.shell.togglePartner()

    // Another page begins at its top; the same page, changed, stays where it is.
    Connections {
        target: window.shell

        function onPageOpened(): void {
            view.contentY = 0;
        }
    }
    onEndChanged: settling.restart()

    // Once all lines of the changed page stand.
    Timer {
        id: settling

        interval: 0
        onTriggered: view.contentY = Math.min(view.contentY, window.end)
    }

    Flickable {
        id: view

        anchors.fill: parent
        anchors.margins: 4 * Theme.gap
        contentHeight: lines.height
        clip: true
        boundsBehavior: Flickable.StopAtBounds

        Column {
            id: lines

            width: view.width
            spacing: 2 * Theme.gap

            Repeater {
                id: linesShown

                model: window.shell.partnerLines

                Text {
                    required property string modelData
                    required property int index

                    width: lines.width
                    text: modelData
                    textFormat: Text.PlainText
                    wrapMode: Text.Wrap
                    color: Theme.ink
                    font.family: Theme.family
                    font.pixelSize: Math.round(Theme.body * (1 + (index === 0 ? 1.4 : 0.8) / Theme.scale)) // grows less than the text, as headings do
                    font.bold: index === 0
                    Accessible.role: index === 0 ? Accessible.Heading : Accessible.StaticText
                    Accessible.name: modelData
                }
            }
        }
    }
}
