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
# FELTMARK_QUIET_MS: so long must nothing be heard before a step is over (350); more on a busy machine.
# In the whole script @STORE@ and @PAPERS@ stand for two new folders outside the private home that the tool makes.
set -uo pipefail
here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)
logs=$here/../../build/logs
tools=${FELTMARK_TOOLS:-$here/../../../shared/tools}
. "$here/alone.sh"

# said WORD FILE: the text of the line "# WORD: text".
said() { sed -n "s/^# $1: *//p" "$2" | head -n 1; }

one() {
    local program script=$2 name work steps tool begin=$SECONDS code log arguments
    program=$(readlink -f "$1")
    name=$(basename "$(dirname "$script")")-$(basename "$script" .txt)
    log=$logs/$name.log
    work=$(mktemp -d)
    steps=$work/steps.txt
    mkdir -m 700 "$work/papers"
    sed -e "s#@STORE@#$work/store#g" -e "s#@PAPERS@#$work/papers#g" "$script" >"$steps"
    arguments=$(said run "$steps")
    [ -z "$(said program "$steps")" ] || program=$(dirname "$program")/$(said program "$steps")
    case $name in axtree-*) tool=(axtree --no-tree) ;; *) tool=(hear --quiet-ms "${FELTMARK_QUIET_MS:-350}") ;; esac
    (
        set -e
        if [ -n "$(said store "$steps")" ]; then "$(dirname "$program")/../tests/check/vault_case" create "$work/store"; fi
        # shellcheck disable=SC2046,SC2086 # arguments are words
        if [ -n "$(said before "$steps")" ]; then "$program" $(said before "$steps"); fi
        "${alone[@]}" "$tools/${tool[0]}" "${tool[@]:1}" -s "$steps" -- "$program" ${arguments:---store $work/store}
    ) >"$log" 2>&1
    code=$?
    rm -rf "$work"
    if [ $code != 0 ]; then
        tail -n 25 "$log"
        printf '%-32s FAILED %4d s  %s\n' "$name" $((SECONDS - begin)) "$log"
        return 1
    fi
    printf '%-32s passed %4d s\n' "$name" $((SECONDS - begin))
}

if [ "${1:-}" = --one ]; then
    one "$2" "$3"
    exit
fi
[ $# -gt 0 ] || { sed -n '2,13s/^# \{0,1\}//p' "$0" >&2; exit 2; }
program=$1
shift
mkdir -p "$logs"
scripts=("$@")
[ ${#scripts[@]} -gt 0 ] || mapfile -t scripts < <(ls -S "$here"/hear/*.txt "$here"/axtree/*.txt | grep -v /hear/job.txt)
[ ${#scripts[@]} -gt 0 ] || { echo "by_ear.sh: no scripts" >&2; exit 1; }
printf '%s\0' "${scripts[@]}" | xargs -0 -P "$at_once" -n 1 "$0" --one "$program"
