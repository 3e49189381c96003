import QtQuick
import Feltmark

// "Go to" (start) and "what can be done here" (startWithCommands): type a part of a name; Down goes into the list, Return goes to the first or to the one in hand.
// Property: shell (findDestinations fills shell.destinations). A key that begins with "command:" is given by acted(name).
ModalPane {
    id: menu

    required property ShellViewModel shell
    property bool commandsOnly: false
    property var pageCommands: []
    signal acted(string command)

    function start(): void {
        menu.commandsOnly = false;
        menu.begin();
    }
    function startWithCommands(ofPage: var): void {
        menu.commandsOnly = true;
        menu.pageCommands = ofPage;
        menu.begin();
    }
    function begin(): void {
        filter.clear();
        menu.find("");
        menu.open();
    }
    function find(text: string): void {
        if (menu.commandsOnly)
            menu.shell.findCommands(text, menu.pageCommands);
        else
            menu.shell.findDestinations(text);
    }
    function go(key: string): void {
        pause.stop();
        if (key === "") {
            menu.shell.announce(list.emptyText);
            return;
        }
        menu.close();
        if (key.startsWith("command:"))
            menu.acted(key.slice(8));
        else
            menu.shell.goTo(key);
    }

    title: menu.commandsOnly ? qsTr("What can be done here") : qsTr("Go to")
    closer: true
    atTop: true
    onOpened: filter.focusField()

    TextEntry {
        id: filter

        label: qsTr("Part of a name")
        hint: qsTr("Return goes to the first, Down to the list.")
        onTyped: text => {
            menu.find(text);
            pause.restart();
        }
        downLeaves: true
        onReturned: menu.go(list.firstKey())
        onLeftDown: list.focusRow(0)
    }
    ListEntry {
        id: list

        label: qsTr("Found")
        showLabel: false
        model: menu.shell.destinations
        emptyText: qsTr("Nothing of that name.")
        onActivated: key => menu.go(key)
    }
    Words {
        id: more

        visible: text !== ""
        silent: true
        text: menu.shell.foundInAll > list.count ? qsTr("%1 more: type more of the name.").arg(menu.shell.foundInAll - list.count) : ""
    }
    Timer {
        id: pause

        interval: 700
        onTriggered: menu.shell.announce(list.count === 0 ? list.emptyText : (qsTr("%1 found, first %2.").arg(menu.shell.foundInAll).arg(list.firstTitle()) + " " + more.text).trim())
    }
}
