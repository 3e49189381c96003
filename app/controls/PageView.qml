import QtQuick
import Feltmark
import "told.js" as Told

// A page: small line, heading (takes the focus when the page opens), then two panes from 48 em, one column below that.
// The right pane stays in sight while the left one scrolls, and scrolls by itself when it is longer than the window.
// Properties: shell; title; kicker (small line above); aside: [...] (right pane, or after the entry in one column);
// last: [...] (at the end of the right pane, or of the one column);
// opening (spoken after the heading, for a page that is read before it is filled in);
// below: [...] (under the entry, after the aside in one column); commands (names of keys of shell.keys that it answers).
// Its own children are the entry: what is asked here. Signal: command(name). Functions: focusHeading(), focusBack(), bringUp(item) (to the top of the right pane).
// Use: PageView { id: page; title: qsTr("Sight"); required property SightViewModel sight
//          FormView { model: page.sight.form; ... }  aside: [Finding { ... }]  below: [ListEntry { ... }]
//          commands: ["why"]; onCommand: name => page.sight.why() }
FocusScope {
    id: page

    required property ShellViewModel shell
    property string title: page.shell.pageTitle
    property string kicker
    property string opening // spoken after the heading; shown where the page shows it
    property var commands: [] // texts
    property var takeBack: null // (): whether something not accepted yet was taken out of the field in hand
    property bool stepsInPage: Theme.em(Window.width) < 60 && page.shell.hasSteps
    readonly property bool wide: Theme.em(Window.width) >= 48
    readonly property bool twoPanes: page.wide && aside.implicitHeight + last.implicitHeight > 0
    readonly property int margin: Theme.em(Window.width) < 26 ? Math.max(Theme.gap, Theme.ringRoom) : 3 * Theme.gap
    default property alias content: entry.data
    property alias aside: aside.data
    property alias last: last.data
    property alias below: below.data
    property Item startsAt: null
    property Item lastFocused: heading
    signal command(string name)
    signal stepsWanted
    signal menuWanted

    Component.onCompleted: Told.forget()

    // Where the page begins: the heading, or what `startsAt` names (the passphrase of the first page).
    function focusStart(): void {
        if (page.startsAt)
            page.startsAt.forceActiveFocus(Qt.TabFocusReason);
        else
            page.focusHeading();
    }
    function focusHeading(): void {
        heading.forceActiveFocus(Qt.TabFocusReason);
    }
    function focusBack(): void {
        if (page.lastFocused && page.lastFocused.visible)
            page.lastFocused.forceActiveFocus(Qt.TabFocusReason);
        else
            page.focusHeading();
    }

    function bringUp(item: Item): void {
        if (page.twoPanes && asideScroll.isInside(item))
            asideScroll.bringUp(item);
    }

    Connections {
        target: page.Window.window

        function onActiveFocusItemChanged(): void {
            const item = page.Window.activeFocusItem;
            if (item && scroll.isInside(item))
                page.lastFocused = item;
        }
    }
    // Where no step list at the left says it; made when it is first wanted.
    Loader {
        id: place

        property bool wanted: false

        width: parent.width
        height: place.visible ? implicitHeight : 0
        visible: place.wanted
        onWantedChanged: if (place.wanted && !place.item)
            place.setSource("PlaceBar.qml", {
                    "page": page
                })
    }
    // Later: the bar takes its room from what scrolls.
    Timer {
        id: placing

        interval: 0
        onTriggered: place.wanted = Theme.em(page.Window.width) < 60 && scroll.contentY > panes.y + heading.y + heading.height
    }
    PageScroll {
        id: scroll

        readonly property real room: scroll.inner - 2 * page.margin

        anchors.fill: parent
        anchors.topMargin: place.height
        barAt: page.twoPanes ? page.margin + panes.leftWidth + Theme.ringRoom : scroll.width - scroll.barWidth
        contentHeight: panes.height + panes.y + page.margin
        onContentYChanged: placing.restart()
        onContentHeightChanged: placing.restart()
        Keys.onUpPressed: scroll.scrollBy(-0.15)
        Keys.onDownPressed: scroll.scrollBy(0.15)

        Item {
            id: panes

            readonly property real between: 3 * Theme.gap
            readonly property real leftWidth: page.twoPanes ? Math.round((scroll.room - panes.between) * 0.6) : scroll.room
            readonly property real rightWidth: page.twoPanes ? scroll.room - panes.between - panes.leftWidth : scroll.room

            x: page.margin
            y: page.margin
            width: scroll.room
            height: page.twoPanes ? below.y + below.height : endSlot.y + endSlot.height

            Column {
                id: entry

                width: panes.leftWidth
                spacing: 2 * Theme.gap

                ActionButton {
                    visible: page.stepsInPage
                    wide: true
                    text: page.shell.stepLine
                    keyName: page.shell.keys.keyOf("nextRegion")
                    onActed: page.stepsWanted()
                }
                // For the mouse alone, as in the message line, which has no room for it; with steps it is above them.
                ActionButton {
                    visible: Theme.em(page.Window.width) < 26 && !page.shell.hasSteps
                    text: qsTr("Menu")
                    focusPolicy: Qt.NoFocus
                    activeFocusOnTab: false
                    Accessible.ignored: true
                    onActed: page.menuWanted()
                }
                Words {
                    visible: text !== ""
                    text: page.kicker
                    soft: true
                    silent: true
                }
                Heading {
                    id: heading

                    objectName: "pageHeading"
                    level: 1
                    text: page.title
                    detail: page.kicker || (heading.openingTold ? "" : page.opening)

                    property bool openingTold: false

                    onActiveFocusChanged: if (!heading.activeFocus)
                        heading.openingTold = true
                }
            }
            Item {
                id: asideSlot

                y: entry.height + (height > 0 ? 2 * Theme.gap : 0)
                width: scroll.room
                height: page.twoPanes ? 0 : aside.height

                Column {
                    id: aside

                    parent: page.wide ? rightAside : asideSlot
                    width: page.wide ? panes.rightWidth : scroll.room
                    spacing: 2 * Theme.gap
                }
            }
            // Stays where it is in the window.
            PageScroll {
                id: asideScroll

                x: panes.leftWidth + panes.between - Theme.ringRoom
                visible: page.wide
                y: scroll.contentY - page.margin
                width: panes.rightWidth + 2 * Theme.ringRoom + Math.round(10 * Theme.growth)
                height: scroll.height
                interactive: contentHeight > height
                contentHeight: rightColumn.y + rightColumn.height + page.margin

                Column {
                    id: rightColumn

                    x: Theme.ringRoom
                    y: page.margin
                    width: panes.rightWidth
                    spacing: 2 * Theme.gap

                    Item {
                        id: rightAside

                        width: panes.rightWidth
                        height: page.wide ? aside.height : 0
                    }
                    Item {
                        id: rightLast

                        width: panes.rightWidth
                        height: page.wide ? last.height : 0
                    }
                }
            }
            Column {
                id: below

                y: (page.twoPanes ? entry.height : asideSlot.y + asideSlot.height) + (below.height > 0 ? 2 * Theme.gap : 0)
                width: panes.leftWidth
                spacing: 2 * Theme.gap
            }
            Item {
                id: endSlot

                y: below.y + below.height + (height > 0 ? 2 * Theme.gap : 0)
                width: scroll.room
                height: page.twoPanes ? 0 : last.height

                Column {
                    id: last

                    parent: page.wide ? rightLast : endSlot
                    width: page.wide ? panes.rightWidth : scroll.room
                    spacing: 2 * Theme.gap
                }
            }
        }
    }
}
