import QtQuick
import Feltmark

// A heading between the fields of a form.
Heading {
    id: heading

    required property FormField field

    text: heading.field.label
}
