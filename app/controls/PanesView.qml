import QtQuick
import Feltmark

// What opens over a page, as the window knows it; screens/Panes.qml does it. A type of its own so that the window need not
// load every dialog to show its first page. show(name of a key, commands of the page); acted(name) gives a command back.
Item {
    required property ShellViewModel shell
    signal acted(string command)

    function show(name: string, ofPage: var): void {
        console.error("PanesView: nothing to show for", name, ofPage);
    }
    function close(): void {
    }
    function closePartner(): void {
    }
    // Turns the partner's page down or up; what is to be said of it.
    function turnPartner(by: int): string {
        console.error("PanesView: no page to turn by", by);
        return "";
    }
}
