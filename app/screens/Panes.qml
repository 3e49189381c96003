import QtQuick
import Feltmark

// Help, all keys, messages, "go to" with the menu of commands, and the partner's window.
PanesView {
    id: panes

    function show(name: string, ofPage: var): void {
        switch (name) {
        case "help":
            textDialog.show(qsTr("Help: %1").arg(panes.shell.pageTitle), panes.shell.helpText || qsTr("There is no help for this page yet."));
            break;
        case "allKeys":
            keysDialog.open();
            break;
        case "messages":
            messagesDialog.open();
            break;
        case "goTo":
            goToDialog.start();
            break;
        case "menu":
            goToDialog.startWithCommands(ofPage);
            break;
        }
    }
    function close(): void {
        textDialog.close();
        keysDialog.close();
        messagesDialog.close();
        goToDialog.close();
    }
    function closePartner(): void {
        partner.close();
    }
    function turnPartner(by: int): string {
        return partner.turn(by);
    }

    PartnerWindow {
        id: partner

        shell: panes.shell
    }
    TextDialog {
        id: textDialog
    }
    KeysDialog {
        id: keysDialog

        keys: panes.shell.keys
    }
    MessagesDialog {
        id: messagesDialog

        messages: panes.shell.messages
    }
    CommandMenu {
        id: goToDialog

        shell: panes.shell
        onActed: command => panes.acted(command)
    }
}
