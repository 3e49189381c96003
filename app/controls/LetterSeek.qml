import QtQuick
import Feltmark

// Letters typed into a list: they name the row that begins so, or has a word that does; the same letter again goes on.
// When no row is so named it is said, and the next Return only tells the row in hand: takes() is false once.
// Properties: count, and model or titles. Functions: begin() forgets; seek(letters, current) gives a row or -1; takes(current); isLetter(event).
Item {
    id: seeker

    property int count: 0
    property RowModel model: null
    property list<string> titles
    property string typed
    property bool missed: false

    function titleOf(index: int): string {
        return seeker.model ? seeker.model.titleAt(index) : seeker.titles[index];
    }
    function isLetter(event: var): bool {
        return event.text > " " && event.text !== "\u007f" && !(event.modifiers & (Qt.ControlModifier | Qt.AltModifier));
    }
    function begins(index: int, wanted: string, within: bool): bool {
        const title = seeker.titleOf(index).toLowerCase();
        return within ? title.split(/[\s,.;:()-]+/).some((word, at) => at > 0 && word.startsWith(wanted)) : title.startsWith(wanted);
    }
    function find(wanted: string, from: int): int {
        for (const within of [false, true])
            for (let i = 0; i < seeker.count; ++i)
                if (seeker.begins((from + i) % seeker.count, wanted, within))
                    return (from + i) % seeker.count;
        return -1;
    }
    function seek(letters: string, current: int): int {
        const letter = letters.toLowerCase();
        seeker.typed += letter;
        forget.restart();
        const again = seeker.typed.length > 1 && seeker.typed === letter.repeat(seeker.typed.length);
        let found = seeker.find(seeker.typed, seeker.typed.length === 1 ? current + 1 : current);
        if (found < 0 && again)
            found = seeker.find(letter, current + 1);
        seeker.missed = found < 0;
        if (seeker.missed)
            speaker.say(qsTr("None begins with %1.").arg(seeker.typed));
        return found;
    }
    function begin(): void {
        seeker.typed = "";
        seeker.missed = false;
    }
    function takes(current: int): bool {
        if (!seeker.missed)
            return true;
        seeker.missed = false;
        seeker.typed = "";
        speaker.say(qsTr("Not taken. In hand is %1. Return again takes it.").arg(seeker.titleOf(current)));
        return false;
    }

    visible: false
    Timer {
        id: forget

        interval: 1500
        onTriggered: seeker.typed = ""
    }
    Speaker {
        id: speaker
    }
}
