#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
set -u
gate=$1/codes_in_help.sh
tree=$(mktemp -d) || exit 2
trap 'rm -rf "$tree"' EXIT
mkdir -p "$tree/core" "$tree/app/help"
echo 'const char* code = "axis-range";' > "$tree/core/a.cpp"
echo 'codes: `axis-range`' > "$tree/app/help/files.md"
sh "$gate" "$tree" || { echo "the clean tree is refused"; exit 1; }
echo 'const char* code = "axis-lost";' > "$tree/core/b.cpp"
if sh "$gate" "$tree" > /dev/null; then
    echo "a code missing in the help is not found"
    exit 1
fi
