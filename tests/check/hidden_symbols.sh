#!/bin/sh
# hidden_symbols.sh PROGRAM: the program holds SQLCipher, shows nothing of it, and needs no other SQLite. Otherwise one of
# the two could take the other's place, and nothing would be encrypted.
set -eu
inside=$(nm "$1")
shown=$(nm -D "$1")
needed=$(ldd "$1")
printf '%s\n' "$inside" | grep -q 'sqlite3_key_v2' || { echo "no SQLCipher in $1" >&2; exit 1; }
if printf '%s\n' "$shown" | grep 'sqlite3_'; then echo "symbols that another library could take over" >&2; exit 1; fi
if printf '%s\n' "$needed" | grep -E 'libsqlite3|libsqlcipher'; then echo "another SQLite comes first" >&2; exit 1; fi
