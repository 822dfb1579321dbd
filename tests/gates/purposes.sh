#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# What a reader finds at the head of a file and of a function: every header, and every source file without a header
# of its name, says below its licence what it is for; functions and constants of the headers of core and inventory
# stand below a comment (one for a group without blank lines) or have one behind them; a header of core/optics that
# is not internal names the source of its formulas. usage: purposes.sh SOURCE_FOLDER; exit 1 on any breach.
set -u
cd "$1" || exit 2
mine=$(mktemp) || exit 2
trap 'rm -f "$mine"' EXIT
find core inventory app samples -type f \( -name '*.hpp' -o -name '*.cpp' \) 2>/dev/null | sort | while IFS= read -r file; do
    case $file in
    *.cpp) [ ! -e "${file%.cpp}.hpp" ] || continue ;;
    esac
    sed -n 2p "$file" | grep -q '^// .' || echo "$file:2: say here what the file is for"
done > "$mine"
find core inventory -type f -name '*.hpp' 2>/dev/null | sort | tr '\n' '\0' | xargs -0 -r awk '
    FNR == 1 { told = 0 }
    /^\/\// { told = 1; next }
    NF == 0 { told = 0; next }
    /^(\[\[nodiscard\]\] |inline |constexpr |template|std::|double |bool |void |int |const )/ {
        if (!told && /\(/ && !/\/\/\/</)
            print FILENAME ":" FNR ": say before it what it gives: unit, range, errors"
        told = 1
    }' >> "$mine"
find core/optics -type f -name '*.hpp' 2>/dev/null | sort | while IFS= read -r file; do
    grep -qE 'Internal to core/optics|[Ss]ources?:|ISO [0-9]|[Cc]ommon practice|from memory|[Dd]erived|[Dd]efinition|(19|20)[0-9][0-9];' "$file" ||
        echo "$file:2: name the source of its formulas (author and journal, standard, derived, common practice)"
done >> "$mine"
cat "$mine"
[ ! -s "$mine" ]
