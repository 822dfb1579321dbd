#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# The picture's gate sees an arrow too many and one that is missing. usage: house_picture_selftest.sh FOLDER_OF_GATES
set -eu
gates=$1
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
mkdir -p "$work/core/optics" "$work/core/fitting"
echo '#include "core/finding.hpp"' > "$work/core/optics/power.cpp"
echo '#include "core/optics/power.hpp"' > "$work/core/fitting/fit.cpp"
draw() { { echo '```rooms'; sh "$gates/house_picture.sh" "$work" print; echo '```'; } > "$work/DEVELOPERS.md"; }
draw
sh "$gates/house_picture.sh" "$work" || { echo "a true picture is refused"; exit 1; }
echo '#include "core/optics/power.hpp"' > "$work/core/optics/other.cpp"
sh "$gates/house_picture.sh" "$work" || { echo "a room's use of itself is no arrow"; exit 1; }
echo '#include "core/fitting/fit.hpp"' >> "$work/core/optics/power.cpp"
if sh "$gates/house_picture.sh" "$work" > /dev/null; then echo "a new arrow is not seen"; exit 1; fi
draw
rm "$work/core/fitting/fit.cpp"
echo 'int fit;' > "$work/core/fitting/fit.cpp"
if sh "$gates/house_picture.sh" "$work" > /dev/null; then echo "an arrow that is gone is not seen"; exit 1; fi
echo "4 passed"
