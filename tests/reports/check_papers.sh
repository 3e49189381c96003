#!/usr/bin/env bash
# Checks every paper in a folder: PDF (structure, fonts, words), braille (limits, characters, words).
#
#   tests/reports/check_papers.sh BUILD_FOLDER TOOLS_FOLDER PAPERS_FOLDER
#
# PDF/UA is checked with pdfua-check of TOOLS_FOLDER; where that is missing, the other checks still run and the last line
# says so. CELLS, LINES and POINTS in the environment set other limits than 40, 25 and 18.
set -uo pipefail
[ $# = 3 ] || { echo "usage: check_papers.sh BUILD_FOLDER TOOLS_FOLDER PAPERS_FOLDER" >&2; exit 2; }
build=$1 tools=$2 papers=$3
cells=${CELLS:-40} lines=${LINES:-25} points=${POINTS:-18}
reader=$build/tests/check/brf_back
failures=0
checked=0

wrong() {
    printf '%s: %s\n' "$1" "$2" >&2
    failures=$((failures + 1))
}

# words: the words of standard input, one blank between.
words() { tr -s '[:space:]' ' ' | sed 's/^ //; s/ $//'; }

check_pdf() {
    local file=$1 text=${1%.pdf}.txt
    if [ -x "$tools/pdfua-check" ]; then
        /usr/bin/python3 "$tools/pdfua-check" --quiet --min-pt "$points" "$file" >&2 || wrong "$file" "is not PDF/UA-1"
    fi
    qpdf --check "$file" >/dev/null 2>&1 || wrong "$file" "qpdf --check finds errors"
    pdffonts "$file" | awk 'NR > 2 && ($(NF-4) != "yes" || $(NF-2) != "yes") { bad = 1 } END { exit bad || NR < 3 }' ||
        wrong "$file" "a font is not embedded, or its letters have no meaning"
    if [ -f "$text" ]; then
        cmp -s <(pdftotext -raw "$file" - | tr '\f' '\n' | grep -vE '^Page [0-9]+ of [0-9]+$' | words) <(words <"$text") ||
            wrong "$file" "does not say the words of $text"
    fi
}

check_brf() {
    local file=$1 text=${1%.brf}.txt
    # The 64 characters, CR LF ends, form feed ends; no line or page past the limit.
    LC_ALL=C awk -v cells="$cells" -v lines="$lines" '
        BEGIN { RS = "\f"; FS = "\r\n" }
        $0 == "" { next }
        {
            pages++
            if (NF - 1 != lines) { print "page " pages " has " NF - 1 " lines"; bad = 1 }
            for (i = 1; i <= NF; i++) {
                if (length($i) > cells) { print "page " pages ", line " i ": " length($i) " cells"; bad = 1 }
                if ($i ~ /[^ -_]/) { print "page " pages ", line " i ": not in the 64 characters"; bad = 1 }
                if ($i ~ / $/) { print "page " pages ", line " i ": blanks at the end"; bad = 1 }
            }
        }
        END { exit bad || !pages }' "$file" >&2 || wrong "$file" "breaks the limits of braille pages"
    if [ -f "$text" ]; then
        "$reader" "$file" "$text" || wrong "$file" "does not say the words of $text"
    fi
}

[ -x "$reader" ] || { echo "$reader is not there: build it first." >&2; exit 2; }
while IFS= read -r -d '' file; do
    checked=$((checked + 1))
    case $file in
    *.pdf) check_pdf "$file" ;;
    *.brf) check_brf "$file" ;;
    esac
done < <(find "$papers" -type f \( -name '*.pdf' -o -name '*.brf' \) -print0 | sort -z)
[ "$checked" -gt 0 ] || wrong "$papers" "holds no papers"
[ -x "$tools/pdfua-check" ] || echo "left out: PDF/UA-1, for want of $tools/pdfua-check"
echo "papers: $checked checked, $failures failed"
[ "$failures" = 0 ]
