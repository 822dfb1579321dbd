#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# The picture of the house in DEVELOPERS.md is what the #include lines say: which room uses which, no arrow too many and
# none missing. usage: house_picture.sh SOURCE_FOLDER [print]; print writes the picture as it should be.
set -u
cd "$1" || exit 2
work=$(mktemp -d) || exit 2
trap 'rm -rf "$work"' EXIT

# A file's room: two folders deep; core/finding.hpp and its like belong to core.
find core inventory app samples \( -name '*.cpp' -o -name '*.hpp' \) -type f 2> /dev/null | sort | tr '\n' '\0' |
    xargs -0 grep -HoE '^#include "[^"]+"' | sed 's/:#include "/ /; s/"$//' |
    awk '
        function room(path,   parts, n) {
            n = split(path, parts, "/")
            if (n < 2) return ""
            if (parts[1] == "samples") return "samples"
            return n > 2 ? parts[1] "/" parts[2] : parts[1]
        }
        {
            from = room($1); to = room($2)
            rooms[from] = 1
            if (to != "" && to != from) uses[from " " to] = 1
        }
        END {
            for (each in rooms) print each
            for (each in uses) print each
        }' | sort > "$work/found"
awk 'NF == 1 { rooms[++n] = $1; next } { list[$1] = list[$1] " " $2 }
    END { for (i = 1; i <= n; i++) printf "%-20s uses%s\n", rooms[i], list[rooms[i]] == "" ? " nothing" : list[rooms[i]] }' \
    "$work/found" > "$work/picture"
if [ "${2-}" = print ]; then
    cat "$work/picture"
    exit 0
fi
sed -n '/^```rooms$/,/^```$/p' DEVELOPERS.md | sed '1d;$d' > "$work/shown"
diff "$work/shown" "$work/picture" > "$work/difference" && exit 0
echo "the picture of rooms in DEVELOPERS.md (<) and the #include lines (>) differ; tests/gates/house_picture.sh . print shows it as it is:"
cat "$work/difference"
exit 1
