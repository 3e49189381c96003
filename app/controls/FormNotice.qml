import QtQuick
import Feltmark

// A notice between the fields of a form.
Notice {
    id: notice

    required property FormField field

    kind: notice.field.kind
    text: notice.field.label
}
