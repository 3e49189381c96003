.pragma library

// Hints that were heard since the page opened: the same words on another field are not said again, F1 has them.
let heard = {};

function has(hint) {
    return heard[hint] === true;
}

function add(hint) {
    heard[hint] = true;
}

function forget() {
    heard = {};
}
