pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Templates as T
import Feltmark

// A dialog over the window: its heading, then a column that scrolls. Tab stays inside, Escape or a click outside closes, and the
// focus goes back to where it was. `closer`: a button for mouse and finger beside the heading, where the pane has no other. `atTop`: its top stays where it is, however long it gets. Give the focus to something in it: onOpened: button.forceActiveFocus(Qt.TabFocusReason).
// Use: ModalPane { id: pane; title: qsTr("All keys"); Words { text: ... } ActionButton { text: qsTr("Close"); onActed: pane.close() } }
T.Dialog {
    id: pane

    // A popup gives the focus back only within its own scope, so the way back is kept here.
    property Item opener: null
    property bool closer: false
    property bool atTop: false // for a list that grows and shrinks under the pointer
    default property alias content: column.data
    readonly property real room: parent ? (parent as Item).width : 640

    modal: true
    focus: true
    closePolicy: T.Popup.CloseOnEscape | T.Popup.CloseOnPressOutside
    parent: T.Overlay.overlay
    x: Math.round((pane.room - pane.width) / 2)
    y: pane.atTop ? Theme.ringRoom : Math.round(((parent ? (parent as Item).height : 480) - pane.height) / 2)
    width: Math.min(pane.room - 2 * Theme.ringRoom, 36 * Theme.body)
    height: Math.min(parent ? (parent as Item).height - 2 * Theme.ringRoom : 480, column.implicitHeight + 4 * Theme.gap + 2 * Theme.controlEdge)
    padding: Theme.controlEdge

    onAboutToShow: pane.opener = pane.parent ? pane.parent.Window.activeFocusItem : null
    onClosed: {
        if (pane.opener)
            pane.opener.forceActiveFocus(Qt.TabFocusReason);
        pane.opener = null;
    }

    background: Rectangle {
        radius: Theme.cardRadius
        color: Theme.page
        border.width: Theme.controlEdge
        border.color: Theme.edge
    }
    T.Overlay.modal: Rectangle {
        color: Qt.rgba(0, 0, 0, 0.6)
    }

    // qmllint disable deferred-property-id
    contentItem: PageScroll {
        id: scroll

        contentHeight: column.implicitHeight + 4 * Theme.gap
        // While it opens it is not yet laid out as it will be, and what has the focus pushes the heading out.
        function backToTop(): void {
            if (!scroll.wandered)
                scroll.contentY = 0;
        }
        onHeightChanged: scroll.backToTop()
        onContentHeightChanged: scroll.backToTop()

        Column {
            id: column

            x: 2 * Theme.gap
            y: 2 * Theme.gap
            width: scroll.inner - 3 * Theme.gap
            spacing: 2 * Theme.gap

            Item {
                width: column.width
                implicitHeight: Math.max(heading.height, close.visible ? close.height : 0)

                Heading {
                    id: heading

                    width: column.width - (close.visible ? close.width + Theme.gap : 0)
                    text: pane.title
                }
                // Keys have Escape.
                ActionButton {
                    id: close

                    visible: pane.closer
                    anchors.right: parent.right
                    text: qsTr("Close")
                    focusPolicy: Qt.NoFocus
                    activeFocusOnTab: false
                    Accessible.ignored: true
                    onActed: pane.close()
                }
            }
        }
    }
}
