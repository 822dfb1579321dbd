#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# What DEVELOPERS.md names is there: functions and types as words of the sources, files and folders in the tree.
# usage: names_in_guide.sh SOURCE_FOLDER
set -u
cd "$1" || exit 2
work=$(mktemp -d) || exit 2
trap 'rm -rf "$work"' EXIT
# Blocks are commands and pictures; what stands between single backticks on other lines is a name.
sed '/^```/,/^```$/d' DEVELOPERS.md | grep -oE '`[^`]+`' | tr -d '`' | sort -u > "$work/named"
find . \( -name build -o -name 'build-*' -o -name .git \) -prune -o -type f -print | sed 's:^\./::' > "$work/files"
find core inventory app tests samples -type f 2> /dev/null | tr '\n' '\0' |
    xargs -0 cat 2> /dev/null | LC_ALL=C grep -aoE '[A-Za-z_][A-Za-z_0-9]*' | sort -u > "$work/words"
# Functions and types: one word with a capital or an underscore inside. NAME stands for whatever somebody chooses.
grep -xE '([A-Za-z0-9]+::)*[A-Za-z][a-z0-9]*([A-Z_][A-Za-z0-9_]*)+(\(\))?' "$work/named" | sed 's/()$//; s/.*:://' | grep -v NAME |
    sort -u > "$work/identifiers"
comm -23 "$work/identifiers" "$work/words" | sed 's/^/DEVELOPERS.md names what is in no source: /' > "$work/missing"
# Files: a word with a dot and a known ending, or a path of a room. "_N_" and NAME stand for what somebody chooses.
grep -E '^[A-Za-z0-9_./-]+\.(cpp|hpp|md|sh|sql|yaml|ts|txt|csv)$|^(app|core|inventory|tests|samples)/[A-Za-z0-9_./-]+$' "$work/named" |
    grep -vE 'NAME|_N_|^stock\.yaml$|^rules\.yaml$' | while IFS= read -r file; do
    grep -qE "(^|/)$(printf '%s' "${file%/}" | sed 's/[.]/[.]/g')(\$|/)" "$work/files" || echo "DEVELOPERS.md names a file that is not there: $file"
done >> "$work/missing"
cat "$work/missing"
[ ! -s "$work/missing" ] && [ "$(wc -l < "$work/identifiers")" -gt 0 ]
