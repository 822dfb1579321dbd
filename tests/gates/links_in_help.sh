#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Links of the pages lead to files, `help TOPIC` to pages, each page is a topic, and each picture is shown, compiled in and small.
# usage: links_in_help.sh SOURCE_FOLDER
# shellcheck disable=SC2016 # backticks are those of Markdown
set -u
cd "$1" || exit 2
work=$(mktemp -d) || exit 2
trap 'rm -rf "$work"' EXIT

find . \( -name build -o -name 'build-*' -o -name .git \) -prune -o -name '*.md' -print | sort > "$work/pages"
while IFS= read -r page; do
    # Blocks are commands and files; what looks like a link there is none.
    sed '/^```/,/^```/d' "$page" | grep -oE '\]\([^)]+\)' | sed 's/^](//; s/)$//; s/#.*//' | sort -u | while IFS= read -r target; do
        case $target in '' | http://* | https://* | mailto:*) continue ;; esac
        [ -e "$(dirname "$page")/$target" ] || echo "$page links to $target, which is not there"
    done
    grep -oE '`(quarterstep )?help [a-z-]+`' "$page" | grep -oE '[a-z-]+`$' | tr -d '`' | sort -u | while IFS= read -r topic; do
        [ -f "app/help/$topic.md" ] || grep -q "{\"$topic\"," app/command/verbs.cpp ||
            echo "$page names the page $topic, which is not there"
    done
done < "$work/pages" > "$work/said"

for page in app/help/*.md; do
    topic=$(basename "$page" .md)
    grep -q "{\"$topic\"," app/help/topics.cpp || echo "$page is no topic of app/help/topics.cpp"
done >> "$work/said"

cat app/help/*.md README.md 2> /dev/null | grep -oE 'pictures/[a-z-]+\.png' | sort -u > "$work/shown"
pictures=0
for picture in app/help/pictures/*.png; do
    [ -f "$picture" ] || continue
    pictures=$((pictures + 1))
    name=$(basename "$picture" .png)
    grep -qx "pictures/$name.png" "$work/shown" || echo "$picture is shown on no page" >> "$work/said"
    grep -qE "[ (]${name}[ )]" app/desk/CMakeLists.txt || echo "$picture is not compiled into the desk" >> "$work/said"
    [ "$(wc -c < "$picture")" -le 60000 ] || echo "$picture has more than 60000 bytes" >> "$work/said"
done
[ "$pictures" -le 20 ] || echo "app/help/pictures holds $pictures pictures; 20 are enough" >> "$work/said"
# Words for who cannot see a picture.
grep -nE '!\[[^]]{0,15}\]\(' app/help/*.md | sed 's/:.*//; s/$/: a picture has no words/' >> "$work/said"
cat "$work/said"
[ ! -s "$work/said" ]
