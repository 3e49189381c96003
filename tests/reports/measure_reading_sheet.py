#!/usr/bin/python3
"""Measures a sheet of the reading trial on its rendered pages: ruler and letters.

    tests/reports/measure_reading_sheet.py SHEET.pdf

Each page is drawn by pdftoppm; in each sentence the letters without stems are cut out and their ink is measured. Round ones
stand a little above and below the line by design: the font's own outlines say how much. Each letter must be within 2 % of
what the line's heading says, and the ruler 100 mm within 1 %. Exit 1 if not.
"""
import re
import subprocess
import sys

from fontTools.ttLib import TTFont

PIXELS = 240  # of an x-height: half a pixel is 0.2 %
SMALL = "acemnorsuvwxz"


def run(*command):
    return subprocess.run(command, check=True, capture_output=True).stdout


def overshoots():
    """Height of each small letter over the x-height, by the outlines of the face."""
    font = TTFont(run("fc-match", "-f", "%{file}", "Noto Sans:style=Regular").decode())
    outlines, names, flat = font["glyf"], font.getBestCmap(), font["OS/2"].sxHeight
    return {c: (outlines[names[ord(c)]].yMax - outlines[names[ord(c)]].yMin) / flat for c in SMALL}


def words_of(pdf):
    """Page, box in points and text of every word."""
    found, page = [], 0
    for line in run("pdftotext", "-bbox", pdf, "-").decode().splitlines():
        if "<page " in line:
            page += 1
        match = re.search(r'<word xMin="([\d.]+)" yMin="([\d.]+)" xMax="([\d.]+)" yMax="([\d.]+)">(.*)</word>', line)
        if match:
            found.append((page, *map(float, match.groups()[:4]), match.group(5)))
    return found


def picture(pdf, page, box, dpi):
    """Grey pixels of a box in points: width and rows one after the other."""
    left, top, right, bottom = (round(value / 72 * dpi) for value in box)
    data = run("pdftoppm", "-gray", "-r", str(dpi), "-f", str(page), "-l", str(page), "-x", str(left), "-y", str(top),
               "-W", str(right - left), "-H", str(bottom - top), pdf)
    head = re.match(rb"P5\s+(\d+)\s+(\d+)\s+255\s", data)
    return int(head.group(1)), data[head.end():]


def letters_in(width, pixels):
    """Columns of ink: first and last of each run without a gap."""
    dark = [min(pixels[x::width]) < 128 for x in range(width)]
    runs, start = [], None
    for x, ink in enumerate(dark + [False]):
        if ink and start is None:
            start = x
        if not ink and start is not None:
            runs.append((start, x))
            start = None
    return runs


def height_of(width, pixels, first, last):
    rows = [y for y in range(len(pixels) // width) if min(pixels[y * width + first:y * width + last]) < 128]
    return rows[-1] - rows[0] + 1


def measure_word(pdf, word, expected, over):
    """x-heights in mm by the small letters of a word; none if its letters touch."""
    page, left, top, right, bottom, text = word
    dpi = round(PIXELS / (expected / 25.4))
    width, pixels = picture(pdf, page, (left, top, right, bottom), dpi)
    runs = letters_in(width, pixels)
    if len(runs) != len(text):
        return []
    return [height_of(width, pixels, *run_of) / dpi * 25.4 / over[letter]
            for letter, run_of in zip(text, runs) if letter in over]


def measure_lines(pdf):
    words, good, measured, over = words_of(pdf), True, 0, overshoots()
    for i, word in enumerate(words):
        heading = [w[5] for w in words[i:i + 8]]
        if not (word[5] == "Line" and len(heading) == 8 and heading[1].endswith(":") and heading[7] == "mm"):
            continue
        expected = float(heading[6])
        heights = []
        for candidate in words[i + 8:i + 18]:
            if len(heights) < 6:  # enough, and drawing takes its time
                heights += measure_word(pdf, candidate, expected, over)
        if not heights:
            print(f"line {heading[1]} no letter stands free")
            good = False
            continue
        worst = max(abs(h / expected - 1) for h in heights)
        measured += 1
        good = good and worst <= 0.02
        print(f"line {heading[1]:<4}{expected:>7.2f} mm said, {sum(heights) / len(heights):>7.3f} mm measured, "
              f"{len(heights)} letters, off by at most {worst:.2%}")
    return good and measured == 12


def measure_ruler(pdf):
    """The longest dark row of the first page."""
    dpi = 600
    data = run("pdftoppm", "-gray", "-r", str(dpi), "-f", "1", "-l", "1", pdf)
    head = re.match(rb"P5\s+(\d+)\s+(\d+)\s+255\s", data)
    width, pixels = int(head.group(1)), data[head.end():]
    longest = 0
    for y in range(int(head.group(2))):
        for dark in re.finditer(rb"[\x00-\x7f]{600,}", pixels[y * width:(y + 1) * width]):
            longest = max(longest, len(dark.group()))
    millimetres = longest / dpi * 25.4
    print(f"ruler {millimetres:.2f} mm")
    return abs(millimetres / 100 - 1) <= 0.01


def main():
    if len(sys.argv) != 2:
        sys.exit(__doc__)
    ruler, lines = measure_ruler(sys.argv[1]), measure_lines(sys.argv[1])
    print("as it says" if ruler and lines else "not as it says")
    return 0 if ruler and lines else 1


if __name__ == "__main__":
    sys.exit(main())
