#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# clang-tidy on the source files named on standard input, from the top of the checkout; exit 1 on any warning.
# Builds join sources of a folder into one (unity builds); so does this, since four joined take hardly longer than one.
# What was clean is remembered in build/tidy, by the text of the joined sources and of every header of the project
# that they include, of .clang-tidy and of the tool: it is looked at again only when one of these has changed.
set -u
work=$(mktemp -d) || exit 2
trap 'rm -rf "$work"' EXIT
trap 'exit 130' INT TERM
clean=build/tidy
mkdir -p "$clean"
# A folder of its own, so that builds without joining, and builds without tests, are tidied all the same.
cmake -S . -B build/joined -G Ninja -DCMAKE_BUILD_TYPE=Release -DQUARTERSTEP_JOIN=ON > "$work/configured" 2>&1 || {
    cat "$work/configured"
    exit 1
}
cat > "$work/wanted"
rules=$({ cat .clang-tidy; clang-tidy-19 --version; } | sha256sum | cut -c 1-64)
find core inventory app samples \( -name '*.cpp' -o -name '*.hpp' \) -exec sha256sum {} + > "$work/sums"
find core inventory app samples \( -name '*.cpp' -o -name '*.hpp' \) -exec grep -H '^#include "' {} + > "$work/includes"
find build/joined -name 'unity_*.cxx' -exec grep -H '^#include "' {} + | sed "s,\"$PWD/,\"," > "$work/joins"

# For each wanted source, once: what is compiled for it (the joined source or itself), then the sums of all that is in it.
awk -v rules="$rules" '
    FILENAME ~ /sums$/ { sum[$2] = $1; next }
    FILENAME ~ /(includes|joins)$/ {
        split($0, part, ":#include \"")
        sub(/".*/, "", part[2])
        heads[part[1]] = heads[part[1]] " " part[2]
        if (FILENAME ~ /joins$/)
            joined[part[2]] = part[1]
        next
    }
    function gather(file,    list, n, i) {
        if (seen[file] == wanted || !(file in sum || file in heads))
            return
        seen[file] = wanted
        all = all " " sum[file]
        n = split(heads[file], list, " ")
        for (i = 1; i <= n; ++i)
            gather(list[i])
    }
    {
        wanted = ($0 in joined) ? joined[$0] : $0
        if (wanted in done)
            next
        done[wanted] = 1
        all = rules
        gather(wanted)
        print wanted, all
    }' "$work/sums" "$work/includes" "$work/joins" "$work/wanted" |
    while IFS=' ' read -r file parts; do
        stamp=$(echo "$parts" | sha256sum | cut -c 1-64)
        [ -e "$clean/$stamp" ] || echo "$file $clean/$stamp"
    done > "$work/due"
echo "$(wc -l < "$work/due") compilations have changed since they were clean, of those of $(wc -l < "$work/wanted") files"
xargs -r -n 2 -P "${QS_TIDY_JOBS:-2}" sh -c 'clang-tidy-19 -p build/joined --quiet --checks=-bugprone-suspicious-include \
    --extra-arg=-Wno-unknown-warning-option "$1" 2> /dev/null && : > "$2"' tidy < "$work/due" > "$work/said" && exit 0
grep -E 'warning:|error:' "$work/said" | sort -u
exit 1
