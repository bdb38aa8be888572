#!/bin/sh
# Writes each golden frame as a file of the corpus: GOLDEN-FILE CORPUS-DIRECTORY. A leading 00 makes the board listen, and
# FFh is doubled, because the fuzzed input uses it as an escape.
set -eu
grep -v '^#' "$1" | while IFS='|' read -r outcome name frame rest; do
    name=$(echo "$name" | tr -d ' ')
    if [ -n "$name" ]; then
        escaped=$(for byte in 00 $(echo "$frame" | sed 's/ff/ff ff/g'); do printf '\\%03o' "0x$byte"; done)
        # shellcheck disable=SC2059
        printf "$escaped" > "$2/golden-$name"
    fi
done
