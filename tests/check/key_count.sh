#!/usr/bin/env bash
# Keys a thing for the entry log of the invented kitchen of 80 things on 16 places, beside a spreadsheet with the same facts.
#
#   tests/check/key_count.sh PROGRAM       PROGRAM: the built key_count
set -euo pipefail
here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)
# The last text of each row of places is the line as it was typed; a long one is parted in the source.
python3 - "$here/../../model/demo_idris.cpp" <<'PY' | "$1"
import re, sys
source = open(sys.argv[1], encoding="utf-8").read()
rows = source.split("const std::vector<PlaceRow> places{", 1)[1].split("\n};", 1)[0]
for row in re.findall(r"\{\d+, .*?\}", rows, re.S):
    texts = re.sub(r'"\s+"', "", row)
    print(re.findall(r'"([^"]*)"', texts)[-1])
PY
