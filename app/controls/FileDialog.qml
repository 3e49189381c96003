import QtQuick
import Feltmark

// A list of one folder to choose a file from: the way up, folders, files of the wanted kinds. Arrows and first letters
// move, Return opens a folder or takes a file, Escape changes nothing. To choose a folder, its first row takes the one shown.
// Properties: kinds (ends of names, such as "jpg"); folders (a folder is wanted). Signal: taken(path). Use: dialog.start(field.text)
ModalPane {
    id: dialog

    property list<string> kinds
    property bool folders: false
    signal taken(string path)

    function start(typed: string): void {
        listing.start(typed);
        dialog.open();
    }
    function choose(key: string): void {
        const path = listing.choose(key);
        if (path === "") {
            settled.restart();
        } else {
            dialog.close();
            dialog.taken(path);
        }
    }

    title: dialog.folders ? qsTr("Choose a folder") : qsTr("Choose a file")
    closer: true
    atTop: true
    onOpened: settled.restart()

    FolderListing {
        id: listing

        kinds: dialog.kinds
        foldersOnly: dialog.folders
    }
    // Once the rows of the new folder stand.
    Timer {
        id: settled

        interval: 0
        onTriggered: {
            list.focusKey(listing.startRow());
            told.restart();
        }
    }
    // After the focus: a reader lets a new focus cut off what was said before it.
    Timer {
        id: told

        interval: 80
        onTriggered: speaker.say(listing.error || listing.words)
    }
    Speaker {
        id: speaker
    }
    Words {
        text: listing.folder
        small: true
        soft: true
    }
    Notice {
        visible: listing.error !== ""
        kind: "error"
        text: listing.error
        silent: true
    }
    Words {
        text: listing.words
        silent: true
    }
    ListEntry {
        id: list

        label: dialog.folders ? qsTr("Folders") : qsTr("Files and folders")
        showLabel: false
        model: listing.rows
        onActivated: key => dialog.choose(key)
    }
}
