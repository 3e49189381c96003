pragma Singleton
import QtQuick

// The whole look: colours, type, space. `mode` and `scale` are set once, by Main.qml; all else follows from them.
// The one QML singleton: it holds nothing of a client, and every control needs it.
// Use: Text { color: Theme.ink; font.pixelSize: Theme.body }
QtObject {
    id: theme

    property string mode: "light" // light, dark, contrast (light on black), paper (black on white), own
    property real scale: 1 // text size, 1 to 4
    property color ownInk: "#1A1E23" // the two colours of mode "own"
    property color ownPaper: "#FFFFFF"
    property bool hints: true // a field's hint is spoken on its first visit

    readonly property var columns: ({
            "light": 0,
            "dark": 1,
            "contrast": 2,
            "paper": 3,
            "own": 4
        })
    readonly property int column: columns[mode] ?? 0
    readonly property bool bare: column > 1 // edges instead of grounds

    // Grounds.
    readonly property color page: ["#F6F4EF", "#15191C", "#000000", "#FFFFFF", ownPaper][column]
    readonly property color surface: ["#FFFFFF", "#1E2428", "#000000", "#FFFFFF", ownPaper][column] // card, field, row
    readonly property color sunken: ["#E9E6DE", "#0F1214", "#000000", "#FFFFFF", ownPaper][column] // rail, message line, drawn wall
    readonly property color accentSoft: ["#DCEBE6", "#1F3732", "#26230A", "#E4EEFF", ownPaper][column] // what is chosen
    readonly property color errorSoft: ["#FBE9E6", "#43211D", "#2B0000", "#FFFFFF", ownPaper][column]
    readonly property color cautionSoft: ["#FBEFD6", "#3D2F17", "#2A1D00", "#FFFFFF", ownPaper][column]
    // Words: 7:1 on every ground they stand on.
    readonly property color ink: ["#1A1E23", "#ECE9E2", "#FFFFFF", "#000000", ownInk][column]
    readonly property color inkSoft: ["#474B50", "#CDCFCB", "#FFFFFF", "#000000", ownInk][column] // hint, usual fact
    readonly property color accent: ["#16504A", "#9ADCCC", "#FFE45C", "#00308F", ownInk][column] // to act on, chosen
    readonly property color accentInk: ["#FFFFFF", "#0E1A18", "#000000", "#FFFFFF", ownPaper][column] // on accent
    readonly property color error: ["#8C1D18", "#FFB4A8", "#FFB3B3", "#8A0000", ownInk][column]
    readonly property color caution: ["#6B3F00", "#FFD08A", "#FFD27A", "#5A3300", ownInk][column]
    // Edges: 4.5:1, but for `line`, which only separates.
    readonly property color edge: ["#625F57", "#A3AAAD", "#FFFFFF", "#000000", ownInk][column]
    readonly property color line: ["#D2CDC2", "#3A4247", "#FFFFFF", "#000000", ownInk][column]
    readonly property color focus: ["#5B21B6", "#FFC857", "#5CF0FF", "#A3007A", ownInk][column]
    readonly property color focusHalo: ["#FFFFFF", "#0F1214", "#000000", "#FFFFFF", ownPaper][column]
    // Charts: now, before, aim.
    readonly property color now: ["#1D4F91", "#8CB8FF", "#9CC4FF", "#00308F", ownInk][column]
    readonly property color before: ["#A8430A", "#F2A65A", "#FFB25C", "#A13D00", ownInk][column]
    readonly property color aim: ["#5D5A52", "#B5B2A9", "#FFFFFF", "#000000", ownInk][column]

    // Type. A heading grows less than the text, or one word would fill a line at 400 %.
    readonly property string family: "Noto Sans"
    readonly property int small: Math.round(16 * scale)
    readonly property int body: Math.round(18 * scale)
    readonly property int heading2: Math.round(body * (1 + 0.22 / scale))
    readonly property int heading1: Math.round(body * (1 + 0.67 / scale))
    readonly property real lineHeight: 1.05

    // Space grows with the root of the text.
    readonly property real growth: Math.sqrt(scale)
    readonly property int gap: Math.round(8 * growth)
    readonly property int target: Math.max(44, Math.ceil(body * 1.4) + 2 * gap) // least height of a control
    readonly property int radius: 8
    readonly property int cardRadius: 12
    readonly property int cardEdge: bare ? 2 : 1
    readonly property int controlEdge: Math.round(2 * growth)
    readonly property int ring: Math.round(3 * growth)
    readonly property int halo: 2
    readonly property int ringRoom: ring + halo + 4 // kept free round a control

    // A width in letters' heights, so that a big window at 400 % is laid out as a small one at 100 %.
    function em(width: real): real {
        return width / theme.body;
    }
}
