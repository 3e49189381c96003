import QtQuick
import Feltmark

// The one message line of a window: shows the first two lines of what the shell says and has it spoken, also the same sentence twice.
// A button, so that the list of messages is at hand; beside it, for the mouse, one that opens what a key does (F10).
// Properties: shell. Signals: listWanted(), menuWanted().
// Sentences said within one turn are spoken as one: the second would cut the first off.
Rectangle {
    id: line

    required property ShellViewModel shell
    property var waiting: []
    readonly property bool isFocused: button.activeFocus
    readonly property real taken: menu.width + 2 * Theme.ringRoom + (stop.visible ? stop.width + Theme.ringRoom : 0) // at the right
    signal listWanted
    signal menuWanted

    function focusLine(): void {
        button.forceActiveFocus(Qt.TabFocusReason);
    }
    function flush(): void {
        spoken.visible = false;
        spoken.text = line.waiting.join(" ");
        spoken.visible = spoken.text !== "";
        line.waiting = [];
    }

    implicitHeight: Math.max(Theme.target, stop.visible ? stop.height : 0, words.implicitHeight + 2 * Theme.gap) + 2 * (Theme.ring + Theme.halo)
    color: Theme.sunken
    Connections {
        target: line.shell

        function onMessageChanged(): void {
            if (line.shell.message === "")
                spoken.text = "";
        }
    }
    Component.onCompleted: line.shell.said.connect(text => {
            if (!line.waiting.includes(text))
                line.waiting.push(text);
            Qt.callLater(line.flush);
        })

    Rectangle {
        width: parent.width
        height: Theme.cardEdge
        color: Theme.line
    }
    Item {
        id: spoken

        property string text

        visible: false
        width: 1
        height: 1
        Accessible.role: Accessible.Notification
        Accessible.name: spoken.text
    }
    ActionButton {
        id: stop

        visible: line.shell.busyWith !== ""
        anchors.right: menu.left
        anchors.rightMargin: Theme.ringRoom
        anchors.verticalCenter: parent.verticalCenter
        text: qsTr("Stop")
        keyName: line.shell.keys.keyOf("stop")
        onActed: {
            line.focusLine();
            line.shell.stopWork();
        }
    }
    // For the mouse alone: a key reaches it from everywhere, and one stop less is one key less.
    ActionButton {
        id: menu

        anchors.right: parent.right
        anchors.rightMargin: Theme.ringRoom
        anchors.verticalCenter: parent.verticalCenter
        text: qsTr("Menu")
        focusPolicy: Qt.NoFocus
        activeFocusOnTab: false
        Accessible.ignored: true
        onActed: line.menuWanted()
    }
    Item {
        id: button

        anchors.fill: parent
        anchors.margins: Theme.ring + Theme.halo
        anchors.rightMargin: line.taken
        activeFocusOnTab: true
        Accessible.role: Accessible.Button
        Accessible.name: line.shell.message ? qsTr("%1 List of messages, key %2").arg(line.shell.message).arg(line.shell.keys.keyOf("messages")) : qsTr("No message yet. List of messages")
        Accessible.focusable: true
        Accessible.onPressAction: line.listWanted()
        Keys.onReturnPressed: line.listWanted()
        Keys.onEnterPressed: line.listWanted()
        Keys.onSpacePressed: line.listWanted()

        FocusRing {
            of: button
        }
    }
    Words {
        id: words

        objectName: "firstLines"
        x: 3 * Theme.gap
        anchors.verticalCenter: parent.verticalCenter
        width: button.width - 6 * Theme.gap
        maximumLineCount: 2 // the list of messages has the whole
        elide: Text.ElideRight
        text: line.shell.busyWith ? qsTr("%1 %2 percent.").arg(line.shell.busyWith).arg(Math.round(line.shell.progress * 100)) : line.shell.message
        silent: true
    }
    MouseArea {
        anchors.fill: button
        onClicked: line.listWanted()
    }
}
