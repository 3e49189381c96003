#!/bin/bash
# crash.sh VAULT_CASE TOOLS [KILLS=60] [WRITES=60]
#
# What the store keeps when the program is killed, the disk is full or broken, or a file is damaged. VAULT_CASE is the
# check program; TOOLS is the folder of killstorm, badwrites and bitstorm. KILLS: rounds of killing at random moments;
# WRITES: kill at each of the first so many writes. Exit 0: all as it should be; the control without a journal failed.
set -uo pipefail

if [ $# -lt 2 ] || [ ! -x "$1" ] || [ ! -x "$2/killstorm" ] || [ ! -x "$2/badwrites" ]; then
    sed -n '2,6s/^# \{0,1\}//p' "$0" >&2
    exit 2
fi
vault=$(realpath "$1")
tools=$(realpath "$2")
kills=${3:-60}
writes=${4:-60}

folder=$(mktemp -d)
trap 'rm -rf "$folder"' EXIT
store=$folder/store
acks=$folder/acks
wrong=0

problem() {
    printf 'crash: %s\n' "$*"
    wrong=1
}

fresh() {
    rm -rf "$store" "$acks"
    : >"$acks"
    "$vault" create "$store" >"$folder/recovery" || problem "no store could be made"
}

# kill -9 at random moments of a store that lives on. Every number that was ever acknowledged must still be there.
kill_while_writing() {
    fresh
    export vault store acks folder
    "$tools/killstorm" -n "$kills" --max 1500 --check '
        grep -q "^ack " "$KILLSTORM_STDOUT" && echo "$KILLSTORM_ROUND" >>"$folder/with-ack"
        cat "$KILLSTORM_STDOUT" >>"$acks"
        "$vault" verify "$store" "$acks"' -- "$vault" write "$store" || problem "a kill lost or broke records"
    local met
    met=$(wc -l <"$folder/with-ack")
    echo "kill while writing: $met of $kills rounds met a write, $(wc -l <"$acks") numbers acknowledged"
    [ $((met * 10)) -ge $((kills * 9)) ] || problem "fewer than 9 of 10 rounds met a write: the test is too weak"
}

# kill -9 while the passphrase changes to and fro: the one or the other opens, and the recovery code always.
kill_while_changing() {
    fresh
    recovery=$(sed -n 's/^recovery //p' "$folder/recovery")
    export recovery
    "$tools/killstorm" -n "$kills" --max 400 --check '
        "$vault" verify "$store" "$KILLSTORM_STDOUT" --recovery "$recovery"' -- "$vault" rekey "$store" ||
        problem "a kill during a change of passphrase locked the store"
    rm -f "$store/records.key.new"
    if ls "$store"/*.new 2>/dev/null; then problem "something half-written was left"; fi
}

# bad MODE CALL COMMAND...: runs with writes that go wrong from this call on. Leaves its exit code in $code.
bad() {
    local mode=$1 call=$2
    shift 2
    { "$tools/badwrites" -m "$mode" -c "$call" -p records -- timeout 20 "$vault" "$@" >>"$acks"; } 2>"$folder/said"
    code=$?
}

# sweep MODE FROM STEP TO CODE OPTION: a fresh store for each; CODE is how the program must end. Counts in $broken.
sweep() {
    local mode=$1 from=$2 step=$3 to=$4 expected=$5 option=$6 call rounds=0 met=0
    broken=0
    for call in $(seq "$from" "$step" "$to"); do
        fresh
        # shellcheck disable=SC2086
        bad "$mode" "$call" write "$store" $option
        [ "$code" -eq "$expected" ] || problem "$mode at $call ended with $code, not $expected: $(head -c 200 "$folder/said")"
        rounds=$((rounds + 1))
        [ ! -s "$acks" ] || met=$((met + 1))
        if ! "$vault" verify "$store" "$acks" >"$folder/verdict" 2>&1; then
            broken=$((broken + 1))
            [ -n "$option" ] || problem "$mode at $call: $(cat "$folder/verdict")"
        fi
    done
    echo "$mode at writes $from to $to${option:+ with $option}: $rounds rounds, $met with acknowledged numbers, $broken broken"
}

# The making of a store that is cut short: either it is whole, or a new one can be made in its place.
stopped_making() {
    local mode=$1 call whole=0 again=0
    for call in $(seq 0 2 60); do
        rm -rf "$store" "$acks"
        : >"$acks"
        bad "$mode" "$call" create "$store"
        : >"$acks"
        if "$vault" verify "$store" "$acks" >/dev/null 2>&1; then
            whole=$((whole + 1))
        elif "$vault" create "$store" >/dev/null 2>"$folder/said"; then
            again=$((again + 1))
        else
            problem "making stopped by $mode at $call: neither whole nor to be made again: $(cat "$folder/said")"
        fi
    done
    echo "making stopped by $mode: $whole whole, $again made again"
    [ "$again" -gt 0 ] || problem "no making was ever stopped: the test is too weak"
}

# A change of passphrase that goes wrong: the one or the other opens, and the recovery code always.
stopped_changing() {
    local mode=$1 to=$2 call stopped=0
    for call in $(seq 0 "$to"); do
        fresh
        recovery=$(sed -n 's/^recovery //p' "$folder/recovery")
        bad "$mode" "$call" rekey "$store"
        [ "$code" -eq 124 ] || stopped=$((stopped + 1))
        "$vault" verify "$store" "$acks" --recovery "$recovery" >"$folder/verdict" 2>&1 ||
            problem "a change stopped by $mode at $call: $(cat "$folder/verdict")"
    done
    echo "changing the passphrase stopped by $mode: $stopped of $((to + 1)) stopped, every store opens"
    [ "$stopped" -eq $((to + 1)) ] || problem "$mode did not stop every change: the test is too weak"
}

says() {
    grep -q "$1" "$folder/said" || problem "no sentence with \"$1\": $(cat "$folder/said")"
}

# damaged FILE MODES: every damage is noticed. Twelve bytes at the end of each page mean nothing; a flip there may pass. So
# may damage to a page that is not in use: the check has read every row then, and the store must go on: a second of writing,
# which takes such pages into use again, and the same check once more.
damaged() {
    local file=$1 modes=$2 all
    shift 2
    fresh
    { timeout 1 "$vault" write "$store" >"$acks"; } 2>/dev/null
    "$vault" verify "$store" "$acks" >/dev/null || problem "no store to damage"
    export vault store acks
    all=$("$tools/bitstorm" -n 40 --modes "$modes" "$store/$file" -- sh -c '
        here=$(dirname {})
        for name in records.db records.key records.head; do
            [ -e "$here/$name" ] || cp "$store/$name" "$here/$name"
        done
        "$vault" verify "$here" "$acks" || exit 1
        timeout 1 "$vault" write "$here" >"$here/more" 2>"$here/said"
        if [ $? -ne 124 ] || ! "$vault" verify "$here" "$here/more" >"$here/said" 2>&1; then
            echo "LOST LATER: $(cat "$here/said")"
        fi')
    printf '%s\n' "$all" | sed "s/^/$file: /"
    if printf '%s\n' "$all" | grep 'CRASHED\|LOST LATER\|UNNOTICED: trunc'; then problem "damage of $file was not met"; fi
    if printf '%s\n' "$all" | grep 'UNNOTICED: \(zero\|swap\):' | grep -v ': sound '; then
        problem "damaged pages of $file went unnoticed"
    fi
    if printf '%s\n' "$all" | sed -n 's/.*UNNOTICED: flip: bit . of byte \([0-9]*\).*/\1/p' |
        awk -v file="$file" 'file != "records.db" || $1 % 4096 < 4084 { bad = 1 } END { exit !bad }'; then
        problem "a flipped bit of $file went unnoticed"
    fi
}

kill_while_writing
kill_while_changing
sweep exit 0 1 $((writes - 1)) 137 ""
sweep exit "$writes" 7 $((writes + 240)) 137 ""
sweep enospc 0 9 180 1 ""
says "disk is full"
sweep short 3 9 180 1 ""
sweep eio 0 9 180 1 ""
says "disk did not take"
sweep fsync 0 2 30 1 ""
stopped_changing exit 29
stopped_changing enospc 29
stopped_changing fsync 11
stopped_changing rename 4
stopped_making exit
stopped_making enospc
stopped_making fsync
if [ -x "$tools/bitstorm" ]; then
    damaged records.db flip,zero,swap,trunc
    damaged records.key flip,trunc
fi
# The control: without the journal the same kills must break something, or they prove nothing.
sweep exit 0 1 $((writes - 1)) 137 --journal-off
[ "$broken" -gt 0 ] || problem "the control without a journal was never broken: these kills prove nothing"

[ "$wrong" -eq 0 ] && echo "crash: all as it should be"
exit "$wrong"
