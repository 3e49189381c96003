import QtQuick
import Feltmark

// A white card round things that belong together; they stand in a column inside it.
// Use: Card { title: qsTr("Still to do"); Words { text: ... } ActionButton { ... } }. `title` is optional, heading 2.
Rectangle {
    id: card

    property string title
    default property alias content: column.data
    property alias spacing: column.spacing

    width: parent ? (parent as Item).width : implicitWidth
    implicitHeight: column.implicitHeight + 4 * Theme.gap
    radius: Theme.cardRadius
    color: Theme.surface
    border.width: Theme.cardEdge
    border.color: Theme.line

    Column {
        id: column

        x: 2 * Theme.gap
        y: 2 * Theme.gap
        width: card.width - 4 * Theme.gap
        spacing: Theme.gap

        Heading {
            visible: card.title !== ""
            text: card.title
        }
    }
}
