import QtQuick
import Feltmark

// A FormField answered by yes, no or not asked.
YesNoEntry {
    id: entry

    required property FormField field

    label: entry.field.label
    answer: entry.field.value
    hint: entry.field.hint
    error: entry.field.error
    note: entry.field.note
    unavailable: entry.field.unavailable
    onPointed: entry.field.pointed()
    onAnswered: taken => entry.field.edited(taken)
}
