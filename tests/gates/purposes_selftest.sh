#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# A header and a lone source without purpose, a function without a word and a formula without source must be found.
set -u
gate=$1/purposes.sh
tree=$(mktemp -d) || exit 2
trap 'rm -rf "$tree"' EXIT
failed=0
licence='// SPDX-License-Identifier: GPL-3.0-or-later'
mkdir -p "$tree/core/optics" "$tree/app"
printf '%s\n// Prism of a decentred lens. Source: derived.\n#pragma once\n\n/// In prism dioptres.\n[[nodiscard]] double prism(double mm);\n' \
    "$licence" > "$tree/core/optics/prism.hpp"
printf '%s\n#include "core/optics/prism.hpp"\n' "$licence" > "$tree/core/optics/prism.cpp"
sh "$gate" "$tree" || { echo "the clean tree is refused"; failed=1; }
expect() { # FILE WORDS
    if sh "$gate" "$tree" | grep -q "^$1:.*$2"; then :; else echo "not found: $1 $2"; failed=1; fi
    rm "$tree/$1"
}
printf '%s\n#pragma once\n' "$licence" > "$tree/app/none.hpp"
expect app/none.hpp 'what the file is for'
printf '%s\nint main() {}\n' "$licence" > "$tree/app/main.cpp"
expect app/main.cpp 'what the file is for'
printf '%s\n// Axes. Source: derived.\n#pragma once\n\ndouble turned(double axis);\n' "$licence" > "$tree/core/optics/axes.hpp"
expect core/optics/axes.hpp 'say before it'
printf '%s\n// Axes.\n#pragma once\n' "$licence" > "$tree/core/optics/axes.hpp"
expect core/optics/axes.hpp 'source of its formulas'
exit $failed
