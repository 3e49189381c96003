pragma ComponentBehavior: Bound
import QtQuick
import Feltmark

// Most pages: a line above, heading, fields, buttons, what was found beside them, and a list below.
PageView {
    id: page

    required property PageViewModel vm
    readonly property var drawing: page.vm.drawing
    readonly property var gaps: ["nextGap", "previousGap"] // answered here on every page that does not do so itself
    // Between entry and list, for pages that have more to show there.
    property alias more: more.data
    // At the end of the right pane, or of the one column.
    property alias tail: tail.data
    // Above the fields: what is in hand.
    property alias first: first.data

    // What is typed is taken first: a field hands it over when it loses the focus.
    function leave(): void {
        quiet.forceActiveFocus();
        page.vm.goBack();
        settled.restart();
    }

    title: page.vm.title || page.shell.pageTitle
    kicker: page.vm.kicker
    takeBack: () => page.vm.takeBack(form.keyInHand())
    commands: Array.from(page.vm.commands).concat(page.gaps)
    onCommand: name => {
        if (name === "back")
            page.leave();
        else if (page.vm.commands.includes(name)) {
            if (name === "correct" && list.currentRow && list.currentRow.activeFocus)
                page.vm.moved(list.currentKey); // what has the focus is in hand, however it came there
            page.vm.command(name);
        } else
            page.vm.nextGap(form.keyInHand(), name === "nextGap" ? 1 : -1);
    }
    Component.onCompleted: if (page.vm.startRow)
        page.startsAt = list.rowOf(page.vm.startRow)

    // After the change that asked for it has reached the fields and rows.
    Timer {
        id: later

        property string field
        property string row

        interval: 0
        onTriggered: {
            if (later.field)
                form.focusKey(later.field);
            if (later.row)
                list.focusKey(later.row);
            later.field = "";
            later.row = "";
        }
    }
    Connections {
        target: page.vm

        function onFocusField(key: string): void {
            later.field = key;
            later.restart();
        }
        function onFocusRow(key: string): void {
            later.row = key;
            later.restart();
        }
        function onFocusHeading(): void {
            page.focusHeading();
        }
    }
    // Why, of the row in hand: under it where there is but one column, else at the top of the right pane.
    FindingList {
        id: ofRow

        parent: list.currentRow && !page.wide ? (list.currentRow as ListEntryRow).under : nowhere
        model: page.vm.findings
        part: page.wide ? "none" : "row"
    }
    Item {
        id: nowhere

        visible: false
    }
    Timer {
        id: showWhy

        interval: 50 // its rows have found their places
        onTriggered: {
            const why = findings.firstOfRow();
            if (why && page.wide)
                page.bringUp(overruling.visible ? overruling : why);
        }
    }
    // Nothing was left, and nothing else has taken the focus.
    Timer {
        id: settled

        interval: 30
        onTriggered: if (quiet.activeFocus)
            page.focusHeading()
    }
    Item {
        id: quiet
    }
    Column {
        id: first

        width: parent ? (parent as Item).width : 0
        spacing: 2 * Theme.gap
    }
    FormView {
        id: form

        Keys.onDownPressed: event => {
            event.accepted = page.vm.fieldAboveList !== "" && form.keyInHand() === page.vm.fieldAboveList && list.visible && list.count > 0;
            if (event.accepted)
                list.focusCurrent();
        }
        model: page.vm.form
        onEdited: (key, value) => page.vm.edit(key, value)
        onTyping: (key, text) => page.vm.typing(key, text)
        onReturned: key => page.vm.returned(key)
    }
    Item {
        width: parent ? (parent as Item).width : 0
        implicitHeight: buttons.implicitHeight
        visible: actions.count > 0

        Flow {
            id: buttons

            width: parent.width
            spacing: 2 * Theme.gap

            Repeater {
                id: actions

                model: page.vm.actions

                ActionButton {
                    required property string key
                    required property string title
                    required keyName
                    required primary
                    required unavailable

                    text: title
                    onActed: page.vm.act(key)
                }
            }
        }
    }
    Repeater {
        model: page.vm.charts

        LevelChart {
            required property var modelData

            label: modelData.label
            sentence: modelData.sentence
            points: modelData.points
        }
    }
    Column {
        id: more

        width: parent ? (parent as Item).width : 0
        spacing: 2 * Theme.gap
    }

    aside: [
        // For the mouse: the row may be far below the fields that overrule it. Keys have one of their own.
        ActionButton {
            id: overruling

            visible: page.wide && Array.from(page.vm.commands).includes("overrule") && list.currentKey !== ""
            text: qsTr("Overrule this line")
            keyName: page.shell.keys.keyOf("overrule")
            focusPolicy: Qt.NoFocus
            activeFocusOnTab: false
            Accessible.ignored: true
            onActed: page.vm.command("overrule")
        },
        FindingList {
            id: findings

            model: page.vm.findings
            part: page.wide ? "all" : "page"
        }
    ]
    last: [
        KitchenDrawing {
            visible: page.drawing.boxes !== undefined
            label: page.drawing.label ?? ""
            floorShown: page.drawing.floorShown ?? true
            words: page.vm.drawingWords
            boxes: page.drawing.boxes ?? []
            wallWidth: page.drawing.width ?? 1
            wallHeight: page.drawing.height ?? 1
            onZoomed: words => page.shell.say(words)
        },
        Column {
            id: tail

            width: parent ? (parent as Item).width : 0
            spacing: 2 * Theme.gap
        }
    ]
    below: [
        ListEntry {
            id: list

            visible: page.vm.rowsLabel !== ""
            label: page.vm.rowsLabel
            model: page.vm.rows
            emptyText: page.vm.rowsEmpty
            onMoved: key => {
                page.vm.moved(key);
                showWhy.restart();
            }
            onActivated: key => page.vm.activated(key)
        }
    ]
}
