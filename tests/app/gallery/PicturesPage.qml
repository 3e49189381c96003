import QtQuick
import Feltmark

// Chart, counts and drawing, with invented values.
PageView {
    id: page

    kicker: qsTr("Goal 1 of 3, agreed 3 September")
    aside: [
        KitchenDrawing {
            label: qsTr("Kitchen from the front")
            words: qsTr("Place 2 is the top shelf of the wall cupboard. Its board is 173 cm above the floor.")
            reachWords: qsTr("Bar and dashes: easy reach, 65 to 145 cm.")
            wallWidth: 2600
            wallHeight: 2100
            reachTop: 650
            reachBottom: 1450
            boxes: [{
                    "x": 0,
                    "y": 0,
                    "width": 600,
                    "height": 2100,
                    "unit": true,
                    "label": qsTr("larder")
                }, {
                    "x": 700,
                    "y": 0,
                    "width": 600,
                    "height": 360,
                    "label": "2",
                    "here": true
                }, {
                    "x": 700,
                    "y": 360,
                    "width": 600,
                    "height": 360,
                    "label": "3"
                }, {
                    "x": 700,
                    "y": 1200,
                    "width": 600,
                    "height": 900,
                    "unit": true,
                    "label": qsTr("sink")
                }, {
                    "x": 1400,
                    "y": 1200,
                    "width": 40,
                    "height": 900,
                    "unit": true,
                    "label": qsTr("too narrow for words")
                }]
        }
    ]

    Card {
        title: qsTr("Level at each visit")

        LevelChart {
            label: qsTr("Level at each visit")
            sentence: qsTr("Two levels below what was expected at first, one above it now. It rose at every visit.")
            points: [{
                    "date": qsTr("3 Sep"),
                    "level": -2
                }, {
                    "date": qsTr("1 Oct"),
                    "level": -1
                }, {
                    "date": qsTr("5 Nov"),
                    "level": 0
                }, {
                    "date": qsTr("25 Nov"),
                    "level": 1
                }]
        }
    }
    Card {
        title: qsTr("Things found")

        Words {
            text: qsTr("3 of 6 at first, 5 of 6 now. Too few to tell whether this is more than chance.")
        }
        CountBoxes {
            label: qsTr("3 Sep, before")
            done: 3
            total: 6
            words: qsTr("3 of 6 found")
            earlier: true
        }
        CountBoxes {
            label: qsTr("25 Nov, now")
            done: 5
            total: 6
            words: qsTr("5 of 6 found")
        }
    }
}
