#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# A copy installed into a folder of its own works from there. usage: installed_copy.sh BUILD_FOLDER
set -eu
build=$1
place=$(mktemp -d)
trap 'rm -rf "$place"' EXIT
cmake --install "$build" --prefix "$place" > "$place/log" 2>&1 || { cat "$place/log"; exit 1; }

camp=$place/share/quarterstep/samples/orrowen_coast
"$place/bin/quarterstep" match --stock "$camp/stock.yaml" --rules "$camp/rules.yaml" "$camp/people.csv" > "$place/match" || [ $? = 1 ]
"$build/bin/quarterstep" match --stock "$camp/stock.yaml" --rules "$camp/rules.yaml" "$camp/people.csv" > "$place/built" || [ $? = 1 ]
[ -s "$place/match" ] && cmp "$place/match" "$place/built"
# The program that draws is found in its own folder.
"$place/bin/quarterstep" print count-sheet --stock "$camp/stock.yaml" --output "$place/sheet.pdf" > /dev/null
[ "$(head -c 5 "$place/sheet.pdf")" = "%PDF-" ]
"$place/bin/quarterstep-desk" --version > /dev/null

for file in share/man/man1/quarterstep.1.gz share/man/man1/quarterstep-desk.1.gz share/bash-completion/completions/quarterstep \
    share/zsh/vendor-completions/_quarterstep share/fish/vendor_completions.d/quarterstep.fish \
    share/applications/quarterstep-desk.desktop share/metainfo/quarterstep-desk.metainfo.xml \
    share/mime/packages/quarterstep-stock.xml share/icons/hicolor/scalable/apps/quarterstep-desk.svg \
    share/doc/quarterstep/copyright share/doc/quarterstep/manual/matching.md; do
    [ -s "$place/$file" ] || { echo "not installed: $file"; exit 1; }
done
[ "$(find "$place/bin" -type f | wc -l)" = 2 ]
# The desktop entry starts what is installed and claims the type that is defined.
program=$(sed -n 's/^TryExec=//p' "$place/share/applications/quarterstep-desk.desktop")
[ -x "$place/bin/$program" ]
type=$(sed -n 's/^MimeType=\(.*\);$/\1/p' "$place/share/applications/quarterstep-desk.desktop")
grep -q "mime-type type=\"$type\"" "$place/share/mime/packages/quarterstep-stock.xml"
grep -q "format: quarterstep stock" "$camp/stock.yaml"
# What others say of the files, where they are there to be asked.
ask() {
    if command -v "$1" > /dev/null; then
        "$@" > "$place/said" 2>&1 || { cat "$place/said"; exit 1; }
    else
        echo "1 skipped: no $1"
    fi
}
ask desktop-file-validate "$place/share/applications/quarterstep-desk.desktop"
ask appstreamcli validate --no-net "$place/share/metainfo/quarterstep-desk.metainfo.xml"
ask mandoc -Tlint -Werror "$build/app/install/quarterstep.1" "$build/app/install/quarterstep-desk.1"
