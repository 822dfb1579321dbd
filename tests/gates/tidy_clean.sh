#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# clang-tidy on the source files named on standard input, from the top of the checkout; exit 1 on any warning.
# What was clean is remembered in build/tidy, by the text of the file and of every header of the project that
# it includes, of .clang-tidy and of the tool: a file is looked at again only when one of these has changed.
set -u
work=$(mktemp -d) || exit 2
trap 'rm -rf "$work"' EXIT
trap 'exit 130' INT TERM
clean=build/tidy
mkdir -p "$clean"
# Builds join files; clang-tidy wants to know how each is compiled alone.
cmake -S . -B build/alone -G Ninja -DCMAKE_BUILD_TYPE=Release -DQUARTERSTEP_JOIN=OFF > "$work/configured" 2>&1 || {
    cat "$work/configured"
    exit 1
}
cat > "$work/wanted"
rules=$({ cat .clang-tidy; clang-tidy-19 --version; } | sha256sum | cut -c 1-64)
find core inventory app samples \( -name '*.cpp' -o -name '*.hpp' \) -exec sha256sum {} + > "$work/sums"
find core inventory app samples \( -name '*.cpp' -o -name '*.hpp' \) -exec grep -H '^#include "' {} + > "$work/includes"

# For each wanted source: its name, then the sums of all it is made of.
awk -v rules="$rules" '
    FILENAME ~ /sums$/ { sum[$2] = $1; next }
    FILENAME ~ /includes$/ {
        split($0, part, ":#include \"")
        sub(/".*/, "", part[2])
        heads[part[1]] = heads[part[1]] " " part[2]
        next
    }
    function gather(file,    list, n, i) {
        if (seen[file] == wanted || !(file in sum))
            return
        seen[file] = wanted
        all = all " " sum[file]
        n = split(heads[file], list, " ")
        for (i = 1; i <= n; ++i)
            gather(list[i])
    }
    { wanted = $0; all = rules; gather($0); print $0, all }' "$work/sums" "$work/includes" "$work/wanted" |
    while IFS=' ' read -r file parts; do
        stamp=$(echo "$parts" | sha256sum | cut -c 1-64)
        [ -e "$clean/$stamp" ] || echo "$file $clean/$stamp"
    done > "$work/due"
echo "$(wc -l < "$work/due") of $(wc -l < "$work/wanted") files have changed since they were clean"
xargs -r -n 2 -P "${QS_TIDY_JOBS:-2}" sh -c 'clang-tidy-19 -p build/alone --quiet --extra-arg=-Wno-unknown-warning-option "$1" 2> /dev/null &&
    : > "$2"' tidy < "$work/due" > "$work/said" && exit 0
grep -E 'warning:|error:' "$work/said" | sort -u
exit 1
