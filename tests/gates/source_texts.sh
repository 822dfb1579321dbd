#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Every source file names its licence first, has at most 500 lines, and leaves no note to finish it later. One of
# the program well over 300 lines says in its first lines why ("over 300 lines: …"; desk and exchange are left to
# the limit of 500); a function over 60 lines says so in the comment before it ("over 60 lines: …").
# usage: source_texts.sh SOURCE_FOLDER; exit 1 on any breach.
set -u
cd "$1" || exit 2
mine=$(mktemp) || exit 2
trap 'rm -f "$mine"' EXIT
find core inventory app tests samples .ci CMakeLists.txt -type f \( -name '*.cpp' -o -name '*.hpp' -o -name '*.c' \
    -o -name '*.h' -o -name '*.sh' -o -name '*.cmake' -o -name '*.sql' -o -name '*.py' -o -name CMakeLists.txt \
    -o -name run \) 2>/dev/null | sort | tr '\n' '\0' | xargs -0 -r awk '
    function close_file() {
        if (file != "" && !licensed)
            print file ":1: the first line does not name the licence (SPDX-License-Identifier: GPL-3.0-or-later)"
        if (file != "" && count > 500)
            print file ":" count ": more than 500 lines; split it"
        if (file ~ /^(core|inventory|app|samples)\/.*[.](cpp|hpp)$/ && file !~ /^(inventory\/exchange|app\/desk)\// &&
            count > 310 && !why_file)
            print file ":" count ": well over 300 lines; split it, or say in its first lines why (over 300 lines: …)"
    }
    FNR == 1 {
        close_file()
        file = FILENAME
        licensed = why_file = why_function = 0
        code = FILENAME ~ /[.](cpp|hpp)$/
        split("", open)
        before = ""
    }
    FNR <= 12 && /^\/\/.*[Oo]ver 300 lines/ { why_file = 1 }
    /^ *\/\/.*[Oo]ver 60 lines/ { why_function = FNR }
    # Bodies of functions have their braces on lines of their own, as those of classes have, at one depth.
    code && /^ *\{$/ {
        at = index($0, "{")
        open[at] = before ~ /^ *(class|struct|namespace|extern|enum)( |$)/ ? 0 : FNR
        excused[at] = why_function > 0 && FNR - why_function <= 8
    }
    code && /^ *\}/ {
        at = index($0, "}")
        if (open[at] && FNR - open[at] - 1 > 60 && !excused[at])
            print FILENAME ":" open[at] ": a function of " FNR - open[at] - 1 " lines; part it, or say before it why (over 60 lines: …)"
        open[at] = 0
    }
    code && NF && !/^ *\{$/ { before = $0 }
    { count = FNR }
    # The first line of a script names its interpreter.
    FNR <= 2 && /SPDX-License-Identifier: GPL-3.0-or-later/ && (FNR == 1 || script) { licensed = 1 }
    FNR == 1 { script = /^#!/ }
    /(^|[^A-Za-z])(TO[D]O|FIX[M]E|XX[X])([^A-Za-z]|$)/ { print FILENAME ":" FNR ": unfinished by its own words" }
    END { close_file() }' > "$mine"
cat "$mine"
[ ! -s "$mine" ]
