import QtQuick
import Feltmark

// Words as wide as they need and no wider than `room`, where they wrap.
Words {
    id: words

    property real room: Infinity

    width: Math.min(Math.ceil(measured.advanceWidth) + 2, words.room)

    TextMetrics {
        id: measured

        text: words.text
        font: words.font
    }
}
