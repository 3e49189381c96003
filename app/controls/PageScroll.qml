pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Templates as T
import Feltmark

// A part that scrolls down only. It keeps what has the focus in view, ring and all; Page Up and Page Down scroll it.
// One may lie in another: each looks after its own. Who has scrolled away from the focus to read stays there until it moves on.
// `inner` is the width left beside the bar; `barAt`: where the bar stands, at the right unless told.
Flickable {
    id: scroll

    readonly property real inner: scroll.width - bar.width - Theme.gap
    readonly property real barWidth: bar.width
    property real barAt: scroll.width - bar.width
    readonly property Item focused: Window.activeFocusItem
    property Item kept: null // in view when it took the focus
    property bool wandered: false // from it

    function isInside(item: Item): bool {
        for (let above = item; above; above = above.parent)
            if (above === scroll.contentItem)
                return true;
        return false;
    }
    function isOwn(item: Item): bool {
        for (let above = item; above && above !== scroll; above = above.parent)
            if (above instanceof PageScroll)
                return false;
        return scroll.isInside(item);
    }
    // A field is shown with its label and its error, if they fit.
    function fieldAround(item: Item): Item {
        for (let above = item.parent; above && above !== scroll.contentItem; above = above.parent)
            if (above.objectName === "field")
                return above;
        return null;
    }
    function ensureVisible(): void {
        const item = scroll.focused;
        if (!item || item === scroll || scroll.wandered || !scroll.isOwn(item))
            return;
        // With what stands above it, if both fit.
        if (item.objectName === "pageHeading")
            scroll.contentY = 0;
        const whole = scroll.fieldAround(item);
        scroll.reveal(whole && whole.height + 2 * Theme.ringRoom <= scroll.height ? whole : item);
    }
    function reveal(shown: Item): void {
        const top = shown.mapToItem(scroll.contentItem, 0, 0).y - Theme.ringRoom;
        const bottom = top + shown.height + 2 * Theme.ringRoom;
        if (bottom > scroll.contentY + scroll.height)
            scroll.contentY = bottom - scroll.height;
        if (top < scroll.contentY)
            scroll.contentY = Math.max(0, top);
    }
    // At the top, as far as there is something below it.
    function bringUp(shown: Item): void {
        const top = shown.mapToItem(scroll.contentItem, 0, 0).y - Theme.ringRoom;
        scroll.contentY = Math.max(0, Math.min(top, scroll.contentHeight - scroll.height));
    }
    // By as much as what lies above has grown; a page that fits stays.
    function moveOn(by: real): void {
        if (by === 0 || scroll.contentHeight <= scroll.height)
            return;
        scroll.wandered = true;
        scroll.contentY = Math.max(0, scroll.contentY + by);
    }
    // Reads on within an item that is higher than the view, while more of it lies below (by 1) or above (by -1); false: nothing more.
    function readOn(item: Item, by: int): bool {
        const top = item.mapToItem(scroll.contentItem, 0, 0).y - Theme.ringRoom;
        const bottom = top + item.height + 2 * Theme.ringRoom;
        const seen = bottom > scroll.contentY && top < scroll.contentY + scroll.height;
        const left = by > 0 ? bottom - scroll.contentY - scroll.height : scroll.contentY - top;
        if (bottom - top <= scroll.height || !seen || left <= Theme.ringRoom)
            return false;
        scroll.scrollBy(by * Math.min(0.8, left / scroll.height));
        return true;
    }
    function scrollBy(share: real): void {
        scroll.wandered = true;
        const last = Math.max(0, scroll.contentHeight - scroll.height);
        scroll.contentY = Math.max(0, Math.min(last, scroll.contentY + share * scroll.height));
    }

    clip: true
    boundsBehavior: Flickable.StopAtBounds
    flickableDirection: Flickable.VerticalFlick
    contentWidth: scroll.width
    onMovementStarted: scroll.wandered = true
    // Back to where it was, from a dialog or the message line, is no move.
    onFocusedChanged: {
        if (scroll.focused && scroll.focused !== scroll.kept && scroll.isOwn(scroll.focused)) {
            scroll.kept = scroll.focused;
            scroll.wandered = false;
        }
        settling.restart();
    }
    onContentHeightChanged: settling.restart()
    onHeightChanged: settling.restart()
    Keys.onPressed: event => {
        if (event.key === Qt.Key_PageDown)
            scroll.scrollBy(0.8);
        else if (event.key === Qt.Key_PageUp)
            scroll.scrollBy(-0.8);
        else
            return;
        event.accepted = true;
    }

    Timer {
        id: settling

        interval: 0
        onTriggered: scroll.ensureVisible()
    }

    T.ScrollBar.vertical: T.ScrollBar {
        id: bar

        parent: scroll
        anchors.left: scroll.left // not x, which Flickable sets itself
        anchors.leftMargin: scroll.barAt
        height: scroll.height
        policy: T.ScrollBar.AsNeeded
        onPressedChanged: if (bar.pressed)
            scroll.wandered = true
        implicitWidth: Math.round(10 * Theme.growth)
        width: implicitWidth
        minimumSize: 0.08
        Accessible.ignored: true

        contentItem: Rectangle {
            radius: width / 2
            color: Theme.edge
            visible: bar.size < 1
        }
    }
}
