import QtQuick
import Feltmark

// A FormField to type into.
TextEntry {
    id: entry

    required property FormField field

    label: entry.field.label
    unit: entry.field.unit
    value: entry.field.value
    hint: entry.field.hint
    error: entry.field.error
    note: entry.field.note
    noteRoom: entry.field.noteRoom
    unavailable: entry.field.unavailable
    multiline: entry.field.kind === "multiline"
    onAccepted: typed => {
        pause.stop();
        entry.field.edited(typed);
    }
    onReturned: entry.field.returned()
    // Kept while typing goes on, not only after a pause.
    onTyped: if (!pause.running)
        pause.start()

    Timer {
        id: pause

        interval: 1000
        onTriggered: entry.field.typing(entry.text)
    }
}
