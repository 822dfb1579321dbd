#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# The gate of names finds a function and a file that are gone. usage: names_in_guide_selftest.sh FOLDER_OF_GATES
set -eu
gates=$1
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
mkdir -p "$work/core/optics"
echo 'int blurStrength(int);' > "$work/core/optics/power.hpp"
echo 'See `blurStrength` in `core/optics` (`power.hpp`).' > "$work/DEVELOPERS.md"
sh "$gates/names_in_guide.sh" "$work" || { echo "a true guide is refused"; exit 1; }
echo 'And `blurStrengthOf`.' >> "$work/DEVELOPERS.md"
if sh "$gates/names_in_guide.sh" "$work" > /dev/null; then echo "a function that is gone is not seen"; exit 1; fi
echo 'See `blurStrength` in `vector.hpp`.' > "$work/DEVELOPERS.md"
if sh "$gates/names_in_guide.sh" "$work" > /dev/null; then echo "a file that is gone is not seen"; exit 1; fi
echo "3 passed"
