#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# The day shown in README.md is what the programs say, line by line in this order; a line "…" stands for what was left out.
# usage: readme_example.sh BUILD_FOLDER SOURCE_FOLDER
set -eu
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
cd "$2"
sh app/sample_day.sh "$1/bin" "$work/day" | sed "s:$work/day:build/sample-day:g; s:$1/bin:build/bin:g" > "$work/said"
sed -n '/^```text$/,/^```$/p' README.md | sed '1d;$d' > "$work/shown"
awk -v said="$work/said" '
    function next_line() { more = (getline line < said) > 0; return more }
    BEGIN { left_out = 0 }
    $0 == "…" { left_out = 1; next }
    {
        shown++
        if (!next_line()) { print "README.md shows what is not said: " $0; exit wrong = 1 }
        while (line != $0 && left_out && next_line()) {}
        if (line != $0) { print "README.md shows: " $0 "\nthe program says: " line; exit wrong = 1 }
        left_out = 0
    }
    END {
        if (wrong) exit 1
        if (next_line()) { print "README.md leaves out the end: " line; exit 1 }
        print shown " lines of README.md are as said"
        exit shown < 10
    }' "$work/shown"
