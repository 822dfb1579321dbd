#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
set -u
gate=$1/top_level.sh
tree=$(mktemp -d) || exit 2
trap 'rm -rf "$tree"' EXIT
mkdir "$tree/core" "$tree/build-asan"
: > "$tree/README.md"
sh "$gate" "$tree" || { echo "the clean tree is refused"; exit 1; }
mkdir "$tree/utils"
if sh "$gate" "$tree" > /dev/null; then
    echo "an odd folder is not found"
    exit 1
fi
