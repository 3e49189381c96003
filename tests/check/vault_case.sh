#!/bin/sh
# vault_case.sh VAULT_CASE: its commands end as they should, and its check can say no.
set -eu
vault=$1
folder=$(mktemp -d)
trap 'rm -rf "$folder"' EXIT
store=$folder/store

ends() {
    expected=$1
    shift
    code=0
    "$@" >"$folder/out" 2>"$folder/err" || code=$?
    if [ "$code" -ne "$expected" ]; then
        echo "$*: ended with $code, not $expected: $(cat "$folder/err")" >&2
        exit 1
    fi
}

: >"$folder/none"
ends 2 "$vault"
ends 2 "$vault" create
ends 2 "$vault" open "$store"
ends 2 "$vault" write "$store"
ends 2 "$vault" verify "$store" "$folder/none"
ends 0 "$vault" create "$store"
recovery=$(sed -n 's/^recovery //p' "$folder/out")
ends 2 "$vault" create "$store"
ends 0 "$vault" verify "$store" "$folder/none"
grep -qx 'sound 0 rows' "$folder/out"

{ timeout 1 "$vault" write "$store" >"$folder/acks"; } 2>/dev/null || true
grep -q '^ack 5$' "$folder/acks"
ends 0 "$vault" verify "$store" "$folder/acks" --recovery "$recovery"
ends 2 "$vault" verify "$store" "$folder/acks" --recovery "$(printf '%s' "$recovery" | tr 2-9 3-92)"
ends 2 "$vault" verify "$store" "$folder/missing"
ends 2 "$vault" verify "$store" "$vault"
echo 'ack 999999' >"$folder/never"
ends 1 "$vault" verify "$store" "$folder/never"
grep -q '999999' "$folder/err"

{ timeout 1 "$vault" rekey "$store" >"$folder/changes"; } 2>/dev/null || true
grep -q '^ack new$' "$folder/changes"
grep -q '^ack old$' "$folder/changes"
ends 0 "$vault" verify "$store" "$folder/acks" --recovery "$recovery"

cp "$store/records.db" "$folder/sound.db"
printf 'damage' | dd of="$store/records.db" bs=1 seek=9000 conv=notrunc status=none
ends 1 "$vault" verify "$store" "$folder/acks"
cp "$folder/sound.db" "$store/records.db"
ends 0 "$vault" verify "$store" "$folder/acks"
printf 'damage' | dd of="$store/records.key" bs=1 seek=90 conv=notrunc status=none
ends 1 "$vault" verify "$store" "$folder/acks"
