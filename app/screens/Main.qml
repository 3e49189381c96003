pragma ComponentBehavior: Bound
import QtQuick
import Feltmark

// The window: steps at the left (from 60 em), the page, the message line. All keys of the shell are bound here.
Window {
    id: window

    required property ShellViewModel shell
    readonly property bool railShown: Theme.em(window.width) >= 60 && !window.shell.locked && window.shell.hasSteps
    readonly property PageView view: loader.item as PageView
    property bool stepsOpen: false
    property bool shown: false // from the first frame on
    readonly property PanesView panes: panesLoader.item as PanesView

    // What opens over the page is made after the first frame or at the first call: it takes as long to make as the page.
    function makePanes(): void {
        if (!window.panes)
            panesLoader.setSource("Panes.qml", {
                    "shell": window.shell
                });
    }
    function show(name: string): void {
        window.makePanes();
        window.panes.show(name, window.view ? window.view.commands : []);
    }

    function turnPartner(by: int): void {
        window.makePanes();
        window.shell.announce(window.panes.turnPartner(by));
    }
    function act(command: string): void {
        const shell = window.shell;
        if (command.startsWith("step"))
            shell.goToStep(Number(command.slice(4)));
        else if (window.view && window.view.commands.includes(command))
            window.view.command(command);
        else if (window.actions[command])
            window.actions[command]();
        else
            shell.say(qsTr("%1: not on this page.").arg(shell.keys.titleOf(command)));
    }
    readonly property var actions: ({
            "help": () => window.show("help"),
            "allKeys": () => window.show("allKeys"),
            "sayAgain": () => window.shell.sayAgain(),
            "messages": () => window.show("messages"),
            "nextRegion": () => window.moveRegion(1),
            "previousRegion": () => window.moveRegion(-1),
            "whereAmI": () => window.shell.say(window.shell.whereAmI(speaker.nameOf(window.activeFocusItem))),
            "goTo": () => window.show("goTo"),
            "undo": () => window.undo(),
            "redo": () => window.shell.redo(),
            "menu": () => window.show("menu"),
            "stop": () => window.stop(),
            "lock": () => window.shell.lock(),
            "larger": () => window.shell.larger(),
            "smaller": () => window.shell.smaller(),
            "plainSize": () => window.shell.plainSize(),
            "caseload": () => window.shell.goTo("caseload"),
            "startVisit": () => window.shell.startVisit(),
            "closeVisit": () => window.shell.closeVisit(),
            "blank": () => window.shell.toggleBlank(),
            "partner": () => window.shell.togglePartner(),
            "partnerDown": () => window.turnPartner(1),
            "partnerUp": () => window.turnPartner(-1)
        })

    // Steps, page, message line if it has something to say, in a circle.
    function moveRegion(by: int): void {
        const here = message.isFocused ? 2 : (rail.activeFocus || window.stepsOpen) ? 0 : 1;
        let to = (here + by + 3) % 3;
        while ((to === 0 && window.shell.locked) || (to === 2 && message.empty))
            to = (to + by + 3) % 3;
        window.stepsOpen = to === 0 && !window.railShown;
        if (to === 0)
            ((window.railShown ? railLoader : narrowLoader).item as StepsPane).focusHere();
        else if (to === 1)
            window.focusPage();
        else
            message.focusLine();
    }
    function isFocusLost(): bool {
        const item = window.activeFocusItem;
        return !item || item === window.contentItem || item === holder || item === loader || item === rail || item === window.view;
    }
    function focusPage(): void {
        if (window.view)
            window.view.focusBack();
        else
            message.focusLine();
    }
    // What is not accepted yet in the field in hand goes first.
    function undo(): void {
        const takeBack = window.view ? window.view.takeBack : null;
        if (!takeBack || !takeBack())
            window.shell.undo();
    }
    function stop(): void {
        if (window.shell.busyWith !== "")
            window.shell.stopWork();
        else if (window.stepsOpen)
            window.moveRegion(1);
        else if (window.view)
            window.view.command("back");
    }
    function closeDialogs(): void {
        if (window.panes)
            window.panes.close();
    }
    // Steps are made when they are shown the first time.
    function makeSteps(into: Loader, aside: bool): void {
        if (!into.item)
            into.setSource("../controls/StepsPane.qml", {
                    "shell": window.shell,
                    "aside": aside
                });
    }
    function emptyPage(): void {
        loader.source = "";
        holder.forceActiveFocus(); // silent: another page may follow at once; if none does, rescue goes on from here
    }
    function loadPage(): void {
        window.stepsOpen = false;
        window.closeDialogs();
        if (window.shell.page === "")
            window.emptyPage();
        else
            loader.setSource(window.shell.pageFile, window.shell.pageProperties);
    }

    title: qsTr("Feltmark")
    width: 1280
    height: 800
    minimumWidth: 480
    minimumHeight: 480
    visible: true
    color: Theme.page
    onActiveFocusItemChanged: if (window.isFocusLost())
        rescue.restart()
    onActiveChanged: if (window.active)
        arrived.restart()
    onFrameSwapped: if (!window.shown)
        afterFirstFrame.start()
    onClosing: {
        window.shell.leaving();
        if (window.panes)
            window.panes.closePartner();
    }
    onStepsOpenChanged: if (window.stepsOpen)
        window.makeSteps(narrowLoader, false)
    onRailShownChanged: if (window.railShown) {
        window.stepsOpen = false;
        window.makeSteps(railLoader, true);
    }
    Component.onCompleted: {
        if (window.railShown)
            window.makeSteps(railLoader, true);
        window.loadPage();
    }

    Binding {
        target: Theme
        property: "mode"
        value: window.shell.themeMode
    }
    Binding {
        target: Theme
        property: "scale"
        value: window.shell.textScale
    }
    Binding {
        target: Theme
        property: "ownInk"
        value: window.shell.ownInk
    }
    Binding {
        target: Theme
        property: "ownPaper"
        value: window.shell.ownPaper
    }
    Binding {
        target: Theme
        property: "hints"
        value: !window.shell.shortSpeech
    }
    Connections {
        target: window.shell

        function onPageOpened(): void {
            window.loadPage();
        }
        function onLeaving(): void {
            // A field hands over its typing when it loses the focus.
            holder.forceActiveFocus();
        }
        function onChanged(): void {
            if (window.shell.locked && window.shell.page === "") {
                window.closeDialogs();
                window.emptyPage();
            }
        }
    }
    Repeater {
        model: window.shown ? window.shell.keys : null // no key comes before there is something to see

        Item {
            id: command

            required property string key
            required property var keySequences

            Shortcut {
                sequences: firstKeys.takes(command.key) ? [] : command.keySequences
                onActivated: window.act(command.key)
            }
        }
    }
    FirstKeys {
        id: firstKeys

        keys: window.shell.keys
        onPressed: command => window.act(command)
    }
    Item {
        id: holder
    }
    Timer {
        id: afterFirstFrame

        interval: 0
        onTriggered: window.shown = true
    }
    Timer {
        id: arrived

        interval: 150
        onTriggered: speaker.tellFocus(window.activeFocusItem)
    }
    Timer {
        id: showStep

        interval: 50
        onTriggered: {
            if (railLoader.pane)
                railLoader.pane.revealHere();
        }
    }
    // What had the focus is gone or hidden: back to the page, so that no key falls on nothing.
    Timer {
        id: rescue

        interval: 100
        onTriggered: if (window.isFocusLost())
            window.focusPage()
    }
    Speaker {
        id: speaker
    }
    // Over everything but a dialog; what is under it goes on.
    Rectangle {
        anchors.fill: parent
        z: 1000
        visible: window.shell.blank
        color: "black"

        Text {
            anchors.centerIn: parent
            width: parent.width - 4 * Theme.body
            horizontalAlignment: Text.AlignHCenter
            wrapMode: Text.Wrap
            text: qsTr("The screen is blank. %1 shows it again.").arg(window.shell.keys.keyOf("blank"))
            color: "#808080"
            font.family: Theme.family
            font.pixelSize: Theme.body
            Accessible.ignored: true
        }
        MouseArea {
            anchors.fill: parent
            onClicked: window.shell.toggleBlank()
        }
    }

    FocusScope {
        id: rail

        anchors.left: parent.left
        anchors.top: parent.top
        anchors.bottom: message.top
        visible: window.railShown
        width: window.railShown ? Math.round(15.5 * Theme.body) : 0

        Rectangle {
            anchors.fill: parent
            color: Theme.sunken

            Rectangle {
                anchors.right: parent.right
                width: Theme.cardEdge
                height: parent.height
                color: Theme.line
            }
        }
        Loader {
            id: railLoader

            readonly property StepsPane pane: railLoader.item as StepsPane

            anchors.fill: parent
            anchors.rightMargin: Theme.cardEdge
            onLoaded: showStep.restart()
        }
    }
    Item {
        id: pageArea

        anchors.left: rail.right
        anchors.right: parent.right
        anchors.top: parent.top
        anchors.bottom: message.top

        Loader {
            id: loader

            anchors.fill: parent
            visible: !window.stepsOpen
            onLoaded: {
                if (window.view) {
                    window.view.stepsWanted.connect(() => window.moveRegion(-1));
                    window.view.menuWanted.connect(() => window.actions.menu());
                    window.view.focusStart();
                    showStep.restart();
                }
            }
            onStatusChanged: if (loader.status === Loader.Error)
                failed.forceActiveFocus()
        }
        Heading {
            id: failed

            x: 3 * Theme.gap
            y: 3 * Theme.gap
            width: parent.width - 6 * Theme.gap
            visible: loader.status === Loader.Error
            level: 1
            text: qsTr("The page %1 cannot be shown. Go on with another: %2.").arg(window.shell.pageTitle).arg(window.shell.keys.keyOf("goTo"))
        }
        // For the mouse, where the message line has no room for it; it stays while the steps scroll.
        ActionButton {
            id: stepsMenu

            x: Math.max(2 * Theme.gap, Theme.ringRoom)
            y: Theme.gap
            visible: window.stepsOpen && message.narrow
            text: qsTr("Menu")
            focusPolicy: Qt.NoFocus
            activeFocusOnTab: false
            Accessible.ignored: true
            onActed: window.actions.menu()
        }
        Loader {
            id: narrowLoader

            anchors.fill: parent
            anchors.topMargin: stepsMenu.visible ? stepsMenu.y + stepsMenu.height : 0
            visible: window.stepsOpen
        }
    }
    Notifier {
        id: message

        anchors.left: parent.left
        anchors.right: parent.right
        anchors.bottom: parent.bottom
        shell: window.shell
        onListWanted: window.show("messages")
        onMenuWanted: window.actions.menu()
    }
    Loader {
        id: panesLoader

        onLoaded: window.panes.acted.connect(command => window.act(command))
    }
    Timer {
        interval: 300 // the first frame stands
        running: true
        onTriggered: window.makePanes()
    }
}
