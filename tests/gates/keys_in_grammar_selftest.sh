#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# usage: keys_in_grammar_selftest.sh FOLDER_OF_THE_GATES
set -u
gate=$1/keys_in_grammar.sh
source=$1/../..
tree=$(mktemp -d) || exit 2
trap 'rm -rf "$tree"' EXIT
mkdir "$tree/app"
cp -R "$source/core" "$source/inventory" "$tree"
cp -R "$source/app/help" "$source/app/command" "$source/app/session" "$tree/app"
page=$tree/app/help/grammar.md
sh "$gate" "$tree" || { echo "the clean tree is refused"; exit 1; }
failed=0

finds() { # WHAT FILE SCRIPT: an edit that the gate must see
    cp "$2" "$tree/kept"
    sed "$3" "$tree/kept" > "$2"
    cmp -s "$2" "$tree/kept" && { echo "nothing was edited: $1"; failed=1; }
    sh "$gate" "$tree" > /dev/null && { echo "not found: $1"; failed=1; }
    cp "$tree/kept" "$2"
}
finds 'a key that the page lacks' "$page" 's/"axis step": //'
finds 'a key that nothing reads' "$page" 's/\["use": /["utter": words] &/'
finds 'a column that the page lacks' "$page" 's/ \["guardian": words\]//'
finds 'a new column of the table' "$tree/inventory/text/table_columns.cpp" 's/textColumn<&R::guardian>("guardian"),/&textColumn<\&R::sex>("left_handed"),/'
finds 'a criterion that the page lacks' "$page" 's/ | "trial acuity": limits//'
finds 'a word that the page lacks' "$page" 's/"recalled"/"called"/'
finds 'a label of orders that the page lacks' "$page" 's/"BVD": each-eye//'
finds 'a member of an answer that the page lacks' "$page" 's/"rank_cost": number//'
exit "$failed"
