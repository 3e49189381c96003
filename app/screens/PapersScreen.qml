import QtQuick
import Feltmark

// The papers: a picture of the page for eyes, the same words as lines for ears, beside the list of papers.
StandardScreen {
    id: page

    tail: [
        Image {
            id: picture

            visible: page.vm.picture !== ""
            width: Math.min(parent ? (parent as Item).width : 0, 34 * Theme.body)
            source: page.vm.picture
            sourceSize.width: Math.min(1200, width)
            fillMode: Image.PreserveAspectFit
            cache: false
            activeFocusOnTab: true
            Accessible.role: Accessible.Graphic
            Accessible.name: qsTr("Picture of the paper. %1").arg(page.vm.pictureWords)
            Accessible.focusable: true

            FocusRing {
                of: picture
            }
        },
        Words {
            visible: page.vm.picture !== ""
            text: page.vm.pictureWords
            silent: true
        },
        ActionButton {
            visible: page.vm.pictureTurns
            text: qsTr("Next page of the picture")
            onActed: page.vm.act("nextPage")
        },
        ActionButton {
            visible: page.vm.pictureTurns
            text: qsTr("Page before")
            onActed: page.vm.act("pageBefore")
        },
        Card {
            visible: page.vm.reading.length > 0
            title: qsTr("Its words")

            ReadingList {
                label: qsTr("Words of the paper")
                lines: page.vm.reading
            }
        }
    ]
}
