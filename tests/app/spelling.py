#!/usr/bin/env python3
"""Every text of the window that is spelt or named differently in American English has its entry in the translation.

Usage: spelling.py APP_FOLDER TS_FILE. Prints what is missing or no longer used, and fails then. The words come from common practice.
"""

import re
import sys
import xml.etree.ElementTree
from pathlib import Path

BRITISH = re.compile(
    r"\b(colour|grey|centimetre|millimetre|kilometre|litre|favour|neighbour|behaviour|organis|recognis|practis|"
    r"cupboard|larder|worktop|hob\b|cooker|tin\b|tins\b)",
    re.IGNORECASE,
)
LITERAL = r'"((?:[^"\\]|\\.)*)"'
CALL = re.compile(r"(?:\btr|qsTr|QT_TRANSLATE_NOOP)\(\s*(?:\"[A-Za-z:]+\",\s*)?((?:" + LITERAL + r"\s*)+)")


def texts(file: Path) -> set[str]:
    found = set()
    for call in CALL.finditer(file.read_text(encoding="utf-8")):
        words = "".join(re.findall(LITERAL, call.group(1)))
        found.add(words.replace("\\n", "\n").replace('\\"', '"').replace("\\\\", "\\"))
    return found


def main() -> int:
    app, ts = Path(sys.argv[1]), Path(sys.argv[2])
    used = set().union(*(texts(file) for file in app.rglob("*") if file.suffix in (".cpp", ".h", ".qml")))
    root = xml.etree.ElementTree.parse(ts).getroot()
    entries = {message.findtext("source", ""): message.findtext("translation", "") for message in root.iter("message")}
    wrong = 0
    for words in sorted(used):
        if BRITISH.search(words) and words not in entries:
            print(f"no American words for: {words!r}")
            wrong += 1
    for words, american in sorted(entries.items()):
        if words not in used:
            print(f"not used any more: {words!r}")
            wrong += 1
        if not american or BRITISH.search(american):
            print(f"still British: {american!r}")
            wrong += 1
    print(f"spelling: {len(used)} texts, {len(entries)} of them in American words, {wrong} wrong")
    return 1 if wrong or len(used) < 100 else 0


if __name__ == "__main__":
    sys.exit(main())
