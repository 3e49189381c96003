import QtQuick
import Feltmark

// A text that wraps and is never cut. The reader finds it by browsing; set `silent` where a control already says it.
// Properties: text, silent, soft (hint), small, strong. Width: give one, or it takes its parent's.
Text {
    id: words

    property bool silent: false
    property bool soft: false
    property bool small: false
    property bool strong: false

    width: parent ? (parent as Item).width : implicitWidth
    wrapMode: Text.Wrap
    textFormat: Text.PlainText
    color: words.soft ? Theme.inkSoft : Theme.ink
    lineHeight: Theme.lineHeight
    font.family: Theme.family
    font.pixelSize: words.small ? Theme.small : Theme.body
    font.bold: words.strong
    Accessible.role: Accessible.StaticText
    Accessible.name: words.text
    Accessible.ignored: words.silent
}
