import QtQuick
import Feltmark

// The one message line of a window: shows the first two lines of what the shell says, all of it while it has the focus, and has it spoken,
// also the same sentence twice. A button, so that the list of messages is at hand, and no stop for keys while it has nothing to say; beside it, for the mouse, one that opens what a key does (F10).
// Where text is very large the line takes no room while it has nothing to say, and the page has the other button.
// Properties: shell. Signals: listWanted(), menuWanted().
// Sentences said within one turn are spoken as one: the second would cut the first off.
Rectangle {
    id: line

    required property ShellViewModel shell
    property var waiting: []
    readonly property bool isFocused: button.activeFocus
    readonly property bool narrow: Theme.em(width) < 26
    readonly property bool empty: words.text === "" && !stop.visible && !line.isFocused
    readonly property bool bare: line.narrow && line.empty
    readonly property real ringRoom: 2 * (Theme.ring + Theme.halo)
    readonly property real taken: (menu.visible ? menu.width + 2 * Theme.ringRoom : Theme.ring + Theme.halo) + (stop.visible ? stop.width + Theme.ringRoom : 0) // at the right
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

    implicitHeight: line.bare ? 0 : button.height + line.ringRoom
    clip: line.bare
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
        anchors.right: menu.visible ? menu.left : parent.right
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

        visible: !line.narrow
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

        x: Theme.ring + Theme.halo
        y: x
        width: line.width - x - line.taken
        height: Math.max(line.narrow ? 44 : Theme.target, stop.visible ? stop.height : 0, words.implicitHeight + (line.narrow ? 0 : 2 * Theme.gap))
        activeFocusOnTab: !line.empty
        Accessible.role: Accessible.Button
        Accessible.name: line.shell.message ? qsTr("%1 List of messages, key %2").arg(line.shell.message).arg(line.shell.keys.keyOf("messages")) : qsTr("No message yet. List of messages")
        Accessible.ignored: line.empty
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
        anchors.verticalCenter: button.verticalCenter
        width: button.width - 6 * Theme.gap
        maximumLineCount: line.isFocused ? Math.max(2, Math.floor(0.6 * Window.height / (1.4 * Theme.body))) : 2 // the list of messages has the whole
        elide: Text.ElideRight
        text: line.shell.busyWith ? qsTr("%1 %2 percent.").arg(line.shell.busyWith).arg(Math.round(line.shell.progress * 100)) : line.shell.message
        silent: true
    }
    MouseArea {
        anchors.fill: button
        onClicked: line.listWanted()
    }
}
