#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# A file without licence line, a file of 501 lines and a note to finish later must each be found.
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
printf '%s\n// TO''DO: later\n' "$licence" > "$tree/core/bad.cpp"
expect 'unfinished'
exit $failed
