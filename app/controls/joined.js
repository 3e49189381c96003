.pragma library

// Parts as one sentence to be heard; a part that ends with a mark of its own gets no second one.
function joined(parts, mark) {
    return parts.filter(part => part !== "").reduce((all, part) => all === "" ? part : all + (/[.?!:;]$/.test(all) ? " " : mark + " ") + part, "");
}
