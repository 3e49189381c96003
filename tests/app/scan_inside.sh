#!/usr/bin/env bash
# Does the whole job of hear/job.txt by keys, and all the while searches the program's home, its temp folder and the
# store for the client's words (the lines "# secret: words" of the script). They may stand in the papers and nowhere else.
# A planted word must be found by every search, and the secrets must be found in the papers: else the search proves nothing.
#
#   tests/app/scan_inside.sh PROGRAM     exit 1: the search found something or proves nothing; 3: the job failed
set -uo pipefail
here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)
tools=${FELTMARK_TOOLS:-$here/../../../shared/tools}
. "$here/alone.sh"
planted=wintergreen-lattice

# Takes the program's place as the tool starts it: plants the word in its home, leaves a searcher behind, becomes it.
if [ "${1:-}" = --become ]; then
    work=$2
    shift 2
    echo "$planted" >"$HOME/planted.txt"
    (
        while sleep 2; do
            "$tools/plainscan" --needle "$planted" --needles "$work/secrets" "$TMPDIR" "$work/store"
        done >>"$work/searches" 2>&1
    ) &
    exec "$@"
fi

[ $# = 1 ] || { sed -n '2,7s/^# \{0,1\}//p' "$0" >&2; exit 2; }
program=$(readlink -f "$1")
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
mkdir -m 700 "$work/papers" "$work/tmp"
sed -e "s#@STORE@#$work/store#g" -e "s#@PAPERS@#$work/papers#g" "$here/hear/job.txt" >"$work/steps.txt"
sed -n 's/^# secret: *//p' "$work/steps.txt" >"$work/secrets"
arguments=$(sed -n 's/^# run: *//p' "$work/steps.txt")
[ -s "$work/secrets" ] || { echo "hear/job.txt names no secret" >&2; exit 1; }

fail() {
    echo "FAILED: $*"
    exit 1
}

"$(dirname "$program")/../tests/check/vault_case" create "$work/store" || fail "making the records"
if grep -q '^# store: made' "$work/steps.txt"; then
    rm -rf "$work/store"
    "$(dirname "$program")/../tests/check/vault_case" create "$work/store" || fail "no store could be made"
fi
# shellcheck disable=SC2086 # arguments are words
TMPDIR=$work/tmp "${alone[@]}" "$tools/hear" --quiet-ms "${FELTMARK_QUIET_MS:-600}" -s "$work/steps.txt" -- \
    "$0" --become "$work" "$program" ${arguments:---store $work/store} || { echo "FAILED: the job itself" && exit 3; }

searches=$(grep -cE '^plainscan: [0-9]+ needles' "$work/searches")
hits=$(grep -c "^FOUND '$planted' as utf-8 .*planted.txt" "$work/searches")
echo "$searches searches, the planted word was found in $hits"
[ "$searches" -ge 10 ] || fail "too few searches"
[ "$hits" = "$searches" ] || fail "a search missed the planted word"
if grep '^FOUND' "$work/searches" | grep -vF "'$planted'" | sort -u; then fail "words of the client in plain sight"; fi
"$tools/plainscan" --needles "$work/secrets" --entropy '*.db' "$work/store" "$work/tmp" || fail "the store after the job"
if "$tools/plainscan" --needles "$work/secrets" "$work/papers" >"$work/in-papers"; then fail "the papers hold none of the secrets"; fi
echo "in the papers: $(sed -n "s/^FOUND '\([^']*\)'.*/\1/p" "$work/in-papers" | sort -u | tr '\n' ';')"
[ -z "$(find "$work/store" "$work/papers" -perm /077 ! -type l)" ] || fail "others may read the store or the papers"
