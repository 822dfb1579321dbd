#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# usage: links_in_help_selftest.sh FOLDER_OF_THE_GATES
# shellcheck disable=SC2016 # backticks are those of Markdown
set -u
gate=$1/links_in_help.sh
tree=$(mktemp -d) || exit 2
trap 'rm -rf "$tree"' EXIT
mkdir -p "$tree/app/help/pictures" "$tree/app/desk" "$tree/app/command"
echo '{"files", "words", filesHelpText},' > "$tree/app/help/topics.cpp"
echo '{"match",' > "$tree/app/command/verbs.cpp"
echo 'foreach(name box)' > "$tree/app/desk/CMakeLists.txt"
echo small > "$tree/app/help/pictures/box.png"
clean='[here](files.md) `help files` `quarterstep help match` ![A box and what lies in it](pictures/box.png)'
failed=0

says() { # yes|no WHAT TEXT
    printf '%s\n' "$3" > "$tree/app/help/files.md"
    if sh "$gate" "$tree" > "$tree/said"; then found=no; else found=yes; fi
    [ "$found" = "$1" ] && return
    echo "$2: found $found, expected $1" && cat "$tree/said"
    failed=1
}
says no 'a clean page' "$clean"
says yes 'a link to nothing' "$clean [there](gone.md)"
says yes 'a topic that is not there' "$clean \`help gone\`"
says yes 'a picture without words' "$clean ![box](pictures/box.png)"
says yes 'a picture on no page' '[here](files.md)'
echo '# A page' > "$tree/app/help/lost.md"
says yes 'a page that is no topic' "$clean"
rm "$tree/app/help/lost.md"
head -c 70000 /dev/zero > "$tree/app/help/pictures/box.png"
says yes 'a large picture' "$clean"
echo small > "$tree/app/help/pictures/box.png"
echo 'foreach(name tray)' > "$tree/app/desk/CMakeLists.txt"
says yes 'a picture that the desk lacks' "$clean"
exit "$failed"
