#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# A file without licence line, one of 501 lines, one of 311 and a function of 61 without a reason, and a note to finish
# later must each be found.
set -u
gate=$1/source_texts.sh
tree=$(mktemp -d) || exit 2
trap 'rm -rf "$tree"' EXIT
failed=0
licence='// SPDX-License-Identifier: GPL-3.0-or-later'
mkdir -p "$tree/core" "$tree/app"
printf '%s\nint a;\n' "$licence" > "$tree/core/good.cpp"
printf '#!/bin/sh\n# SPDX-License-Identifier: GPL-3.0-or-later\n' > "$tree/app/run"
sh "$gate" "$tree" || { echo "the clean tree is refused"; failed=1; }
expect() {
    if sh "$gate" "$tree" | grep -q "$1"; then :; else echo "not found: $1"; failed=1; fi
    rm "$tree/core/bad.cpp"
}
echo 'int a;' > "$tree/core/bad.cpp"
expect 'does not name the licence'
{ echo "$licence"; yes '//' | head -n 500; } > "$tree/core/bad.cpp"
expect 'more than 500 lines'
{ echo "$licence"; yes '//' | head -n 310; } > "$tree/core/bad.cpp"
expect 'well over 300 lines'
{ echo "$licence"; echo '// Over 300 lines: a table.'; yes '//' | head -n 310; } > "$tree/core/good.cpp"
long() { echo "$licence"; echo 'class A'; echo '{'; yes '    int a;' | head -n 80; echo '};'; echo "$1"; echo 'void f()'; echo '{'; yes '    g();' | head -n "$2"; echo '}'; }
long '/// Does g.' 61 > "$tree/core/bad.cpp"
expect 'a function of 61 lines'
long '/// Over 60 lines: all of g.' 61 > "$tree/core/also_good.cpp"
long '/// Does g.' 60 > "$tree/core/short.cpp"
sh "$gate" "$tree" || { echo "reasons are refused"; failed=1; }
printf '%s\n// TO''DO: later\n' "$licence" > "$tree/core/bad.cpp"
expect 'unfinished'
exit $failed
