#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Every source file names its licence first, has at most 500 lines, and leaves no note to finish it later.
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
    }
    FNR == 1 { close_file(); file = FILENAME; licensed = 0 }
    { count = FNR }
    # The first line of a script names its interpreter.
    FNR <= 2 && /SPDX-License-Identifier: GPL-3.0-or-later/ && (FNR == 1 || script) { licensed = 1 }
    FNR == 1 { script = /^#!/ }
    /(^|[^A-Za-z])(TO[D]O|FIX[M]E|XX[X])([^A-Za-z]|$)/ { print FILENAME ":" FNR ": unfinished by its own words" }
    END { close_file() }' > "$mine"
cat "$mine"
[ ! -s "$mine" ]
