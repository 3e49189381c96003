import QtQuick
import Feltmark

// Colours, text size, keys.
PageView {
    id: page

    required property SettingsViewModel settings

    FormView {
        model: page.settings.form
        onEdited: (key, value) => page.settings.edit(key, value)
    }
}
