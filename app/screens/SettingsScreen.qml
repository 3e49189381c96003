import QtQuick
import Feltmark

// Colours, text size, keys.
PageView {
    id: page

    required property SettingsViewModel settings

    onCommand: name => {
        if (name === "back")
            page.shell.goTo("beforeSettings");
    }

    FormView {
        model: page.settings.form
        onEdited: (key, value) => page.settings.edit(key, value)
    }
}
