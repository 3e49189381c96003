import QtQuick
import Feltmark

// One field of a FormView. Its properties are the roles of FormModel; the kind never changes.
Item {
    id: field

    required property string key
    required property string kind
    required property string label
    required property string hint
    required property string value
    required property string unit
    required property list<string> choices
    required property string error
    required property string note
    required property string unavailable
    required property bool noteRoom
    readonly property bool isEntry: field.kind !== "heading" && field.kind !== "caution" && field.kind !== "quiet"
    signal pointed
    signal edited(string value)
    signal typing(string text)
    signal returned

    function focusField(): void {
        if (field.kind === "choice")
            (loader.item as ChoiceEntry).focusField();
        else if (field.kind === "yesno")
            (loader.item as YesNoEntry).focusField();
        else if (field.kind === "file" || field.kind === "folder")
            (loader.item as FormFile).focusField();
        else if (field.isEntry)
            (loader.item as TextEntry).focusField();
    }

    width: parent ? (parent as Item).width : implicitWidth
    implicitHeight: loader.item ? (loader.item as Item).implicitHeight : 0

    Component.onCompleted: loader.setSource(field.kind === "choice" ? "FormChoice.qml" : field.kind === "yesno" ? "FormYesNo.qml" : field.kind === "file" || field.kind === "folder" ? "FormFile.qml" : field.kind === "heading" ? "FormHeading.qml" : field.isEntry ? "FormText.qml" : "FormNotice.qml", {
            "field": field
        })

    Loader {
        id: loader

        width: field.width
    }
}
