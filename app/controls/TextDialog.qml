import QtQuick
import Feltmark

// A heading and paragraphs to read, such as the help of a page. Each paragraph is a line that arrows reach.
// Use: dialog.show(qsTr("Help"), text); a line of `text` is a paragraph.
ModalPane {
    id: dialog

    property list<string> lines

    function show(title: string, text: string): void {
        dialog.title = title;
        dialog.lines = text.split("\n").filter(line => line.trim() !== "");
        dialog.open();
    }

    onOpened: paragraphs.focusRow(0)

    ReadingList {
        id: paragraphs

        label: qsTr("Lines")
        lines: dialog.lines
    }
    ActionButton {
        text: qsTr("Close")
        onActed: dialog.close()
    }
}
