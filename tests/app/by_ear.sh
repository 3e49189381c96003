#!/usr/bin/env bash
# Works the program by keys alone and listens: the scripts of hear/ with a screen reader, those of axtree/ as the way to a
# screen, whose every control is then visited and checked. As many run at a time as there are processors.
#
#   tests/app/by_ear.sh PROGRAM [SCRIPT...]      without SCRIPT all of hear/ and axtree/, but for hear/job.txt, the
#                                                whole job, which scan_inside.sh does
#
# A script may begin with lines "# word: text":
#   # run: ARGUMENTS    of the program; without it: --store @STORE@
#   # program: NAME     another program, in the folder of PROGRAM, such as the gallery of controls
#   # store: made       records of which the passphrase is known lie in the store already (tests/check/vault_case)
#   # before: ARGUMENTS the program is run with these first, to the end, for instance to fill the store
#   # walk: no          of a dialog: what stands there is checked, not walked: the page behind it cannot be reached, as it should
# FELTMARK_THEME: colours to begin with, as kept in the settings (dark). Without it those of the system for what is heard, and for
# axtree another of the five each day, from screen to screen; the row says which. That the tree is the same in all of them is a
# test of its own (screens_tests, "theSameTreeInEveryTheme").
# FELTMARK_QUIET_MS: so long must nothing be heard before a step is over (600); more on a busy machine.
# In the whole script @STORE@ and @PAPERS@ stand for two new folders outside the private home that the tool makes.
set -uo pipefail
here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)
logs=$here/../../build/logs
tools=${FELTMARK_TOOLS:-$here/../../../shared/tools}
. "$here/alone.sh"

# said WORD FILE: the text of the line "# WORD: text".
said() { sed -n "s/^# $1: *//p" "$2" | head -n 1; }

# theme_of NAME: the colours for this run of it; empty: those of the system.
theme_of() {
    local themes=(light dark contrast paper own)
    case ${FELTMARK_THEME:-}:$1 in
    ?*:*) printf '%s' "$FELTMARK_THEME" ;;
    :axtree-*) printf '%s' "${themes[$((($(cksum <<<"$1" | cut -d ' ' -f 1) + 10#$(date +%j)) % ${#themes[@]}))]}" ;;
    esac
}

# attempt PROGRAM SCRIPT NAME QUIET THEME: one run in folders of its own.
attempt() {
    local program script=$2 name=$3 quiet=$4 theme=$5 work steps tool code arguments
    program=$(readlink -f "$1")
    work=$(mktemp -d)
    steps=$work/steps.txt
    mkdir -m 700 "$work/papers"
    sed -e "s#@STORE@#$work/store#g" -e "s#@PAPERS@#$work/papers#g" "$script" >"$steps"
    arguments=$(said run "$steps")
    [ -z "$(said program "$steps")" ] || program=$(dirname "$program")/$(said program "$steps")
    case $name in axtree-*) tool=(axtree --no-tree --strict --allow "$here/axtree/allowed") ;; *) tool=(hear --quiet-ms "$quiet") ;; esac
    [ "$(said walk "$steps")" != no ] || tool+=(--no-walk)
    if [ -n "$theme" ]; then
        mkdir -p "$work/config/feltmark"
        printf '[General]\ntheme=%s\n' "$theme" >"$work/config/feltmark/feltmark.ini"
        tool+=(--env XDG_CONFIG_HOME="$work/config")
    fi
    (
        set -e
        if [ -n "$(said store "$steps")" ]; then "$(dirname "$program")/../tests/check/vault_case" create "$work/store"; fi
        # shellcheck disable=SC2046,SC2086 # arguments are words
        if [ -n "$(said before "$steps")" ]; then "$program" $(said before "$steps"); fi
        # shellcheck disable=SC2086
        "${alone[@]}" "$tools/${tool[0]}" "${tool[@]:1}" -s "$steps" -- "$program" ${arguments:---store $work/store}
    )
    code=$?
    rm -rf "$work"
    return $code
}

# one PROGRAM SCRIPT: speech is timed, and a busy machine can be late, so what fails gets a second try with more patience,
# and the row says so.
one() {
    local script=$2 name log theme begin=$SECONDS word=passed quiet=${FELTMARK_QUIET_MS:-600}
    name=$(basename "$(dirname "$script")")-$(basename "$script" .txt)
    theme=$(theme_of "$name")
    log=$logs/$name.log
    if ! attempt "$1" "$script" "$name" "$quiet" "$theme" >"$log" 2>&1; then
        mv "$log" "$logs/$name.first.log"
        grep -hE -A 1 '^  line [0-9]+: |^hear: |^axtree: |^E ' "$logs/$name.first.log" | head -n 20
        word="passed at the second try"
        attempt "$1" "$script" "$name" $((3 * quiet)) "$theme" >"$log" 2>&1 || word=FAILED
    fi
    printf '%-32s %s %4d s %s\n' "$name" "$word" $((SECONDS - begin)) "$theme"
    [ "$word" != FAILED ] || { tail -n 25 "$log" && return 1; }
}

if [ "${1:-}" = --one ]; then
    one "$2" "$3"
    exit
fi
[ $# -gt 0 ] || { sed -n '2,16s/^# \{0,1\}//p' "$0" >&2; exit 2; }
program=$1
shift
mkdir -p "$logs"
scripts=("$@")
for script in "${scripts[@]}"; do
    [ -r "$script" ] || { echo "by_ear.sh: no script $script" >&2; exit 2; }
done
[ ${#scripts[@]} -gt 0 ] || mapfile -t scripts < <(ls -S "$here"/hear/*.txt "$here"/axtree/*.txt | grep -v /hear/job.txt)
[ ${#scripts[@]} -gt 0 ] || { echo "by_ear.sh: no scripts" >&2; exit 1; }
printf '%s\0' "${scripts[@]}" | xargs -0 -P "$at_once" -n 1 "$0" --one "$program"
