#!/usr/bin/env python3
"""Translates every sentence of a .ts file into a language that nobody speaks: the same letters, full width, in
brackets. What still shows plain letters on a screen was not translated.

usage: pseudo_language.py FILE.ts
"""
import re
import sys
import xml.etree.ElementTree as ElementTree

PLACES = re.compile(r"\{\d\}|%L?\d|%n")  # where values go


def wide(text):
    return "".join(chr(ord(c) - 0x21 + 0xFF01) if c.isascii() and c.isalpha() else c for c in text)


def translated(source):
    out, done = "", 0
    for place in PLACES.finditer(source):
        out += wide(source[done : place.start()]) + place.group()
        done = place.end()
    return "\u27e6" + out + wide(source[done:]) + "\u27e7"


def main(path):
    tree = ElementTree.parse(path)
    for message in tree.iter("message"):
        translation = message.find("translation")
        translation.attrib.pop("type", None)
        forms = translation.findall("numerusform") or [translation]
        for form in forms:
            form.text = translated(message.find("source").text)
    tree.write(path, encoding="utf-8", xml_declaration=True)


if len(sys.argv) != 2:
    sys.exit(__doc__.strip())
main(sys.argv[1])
