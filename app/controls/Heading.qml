import QtQuick
import Feltmark

// A heading: level 1 (the page, takes the focus when the page opens), 2 (a part) or 3 (within a card).
// Use: Heading { level: 2; text: qsTr("Still to do") }; pageHeading.forceActiveFocus() speaks it.
Text {
    id: heading

    property int level: 2
    property string detail // spoken after the text

    width: parent ? (parent as Item).width : implicitWidth
    wrapMode: Text.Wrap
    textFormat: Text.PlainText
    color: heading.level === 3 ? Theme.inkSoft : Theme.ink
    lineHeight: Theme.lineHeight
    font.family: Theme.family
    font.pixelSize: heading.level === 1 ? Theme.heading1 : heading.level === 2 ? Theme.heading2 : Theme.body
    font.bold: true
    Accessible.role: Accessible.Heading
    Accessible.name: heading.text
    Accessible.description: heading.detail
    Accessible.focusable: true
    // Not a Tab stop itself, so Tab would start again at the window's first.
    Keys.onTabPressed: heading.nextItemInFocusChain(true).forceActiveFocus(Qt.TabFocusReason)
    Keys.onBacktabPressed: heading.nextItemInFocusChain(false).forceActiveFocus(Qt.BacktabFocusReason)

    FocusRing {
        of: heading
    }
}
