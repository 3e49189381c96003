import QtQuick
import Feltmark

// A FormField with choices; short ones stand side by side.
ChoiceEntry {
    id: entry

    required property FormField field

    label: entry.field.label
    choices: entry.field.choices
    inRow: Array.from(entry.field.choices).every(choice => choice.length <= 12)
    value: entry.field.value
    hint: entry.field.hint
    error: entry.field.error
    note: entry.field.note
    unavailable: entry.field.unavailable
    onPointed: entry.field.pointed()
    onChosen: taken => entry.field.edited(taken)
}
