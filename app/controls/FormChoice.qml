import QtQuick
import Feltmark

// A FormField with choices.
ChoiceEntry {
    id: entry

    required property FormField field

    label: entry.field.label
    choices: entry.field.choices
    value: entry.field.value
    hint: entry.field.hint
    error: entry.field.error
    note: entry.field.note
    unavailable: entry.field.unavailable
    onChosen: taken => entry.field.edited(taken)
}
