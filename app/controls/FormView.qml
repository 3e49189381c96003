pragma ComponentBehavior: Bound
import QtQuick
import Feltmark

// A form from a FormModel: one field below the other, Tab goes from field to field, errors and results beside them.
// A change of values never moves the focus and never rebuilds a field.
// Properties: model. Signals: edited(key, value); typing(key, text) a second after typing stopped; returned(key). Functions: focusFirst(), focusKey(key) (false if there is none), keyInHand().
// Use: FormView { model: page.sight.form; onEdited: (key, value) => page.sight.edit(key, value) }
Column {
    id: form

    required property var model
    signal edited(string key, string value)
    signal typing(string key, string text)
    signal returned(string key)

    function focusKey(key: string): bool {
        for (let i = 0; i < fields.count; ++i) {
            const field = fields.itemAt(i) as FormField;
            if (field.key === key) {
                field.focusField();
                return true;
            }
        }
        return false;
    }
    // The field that has the focus; empty: none has.
    function keyInHand(): string {
        for (let item = form.Window.activeFocusItem; item; item = item.parent)
            if (item instanceof FormField)
                return (item as FormField).key;
        return "";
    }
    function focusFirst(): void {
        for (let i = 0; i < fields.count; ++i) {
            const field = fields.itemAt(i) as FormField;
            if (field.isEntry) {
                field.focusField();
                return;
            }
        }
    }

    width: parent ? (parent as Item).width : implicitWidth
    spacing: 2 * Theme.gap

    onHeightChanged: steady.keep()

    // An answer by mouse or finger may make its field higher or bring another below it. The question that comes next stays
    // where the hand found it; what was answered moves up instead.
    Timer {
        id: steady

        property Item next: null
        property real at: 0

        function place(): real {
            return steady.next.mapToItem(null, 0, 0).y;
        }
        function hold(index: int): void {
            steady.next = fields.itemAt(index + 1);
            if (steady.next) {
                steady.at = steady.place();
                steady.restart();
            }
        }
        function keep(): void {
            if (!steady.next)
                return;
            for (let above = form.parent; above; above = above.parent)
                if (above instanceof PageScroll) {
                    above.moveOn(steady.place() - steady.at);
                    return;
                }
        }

        interval: 150
        onTriggered: steady.next = null
    }
    Repeater {
        id: fields

        model: form.model

        FormField {
            id: field

            required property int index

            onPointed: steady.hold(index)
            onEdited: value => form.edited(field.key, value)
            onTyping: text => form.typing(field.key, text)
            onReturned: form.returned(field.key)
        }
    }
}
