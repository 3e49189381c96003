import QtQuick
import Feltmark

// Photographs: a picture for eyes, its description for ears.
StandardScreen {
    id: page

    tail: [
        Image {
            id: picture

            visible: page.vm.picture !== ""
            width: Math.min(parent ? (parent as Item).width : 0, 34 * Theme.body)
            source: page.vm.picture
            fillMode: Image.PreserveAspectFit
            cache: false
            activeFocusOnTab: true
            Accessible.role: Accessible.Graphic
            Accessible.name: qsTr("Photograph. %1").arg(page.vm.pictureWords)
            Accessible.focusable: true

            FocusRing {
                of: picture
            }
        },
        Words {
            visible: page.vm.picture !== ""
            text: page.vm.pictureWords
            silent: true
        }
    ]
}
