#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Every screen of the desk in every look, in English, Arabic and Hindi, at two sizes, and at 200 per cent on the
# small one, for people to look at. usage: pictures.sh [BUILD_FOLDER [ONLY]]; pictures go into
# BUILD_FOLDER/pictures, as PAGE-LOOK-LANGUAGE-SIZE.png; ONLY is a part of the names to make. Exit 1 when one is missing.
set -u
cd "$(dirname "$0")/../.." || exit 1
build=${1-build}
only=${2-}
out=$build/pictures
mkdir -p "$out"
place=$(mktemp -d) || exit 1
trap 'rm -rf "$place"' EXIT
export XDG_RUNTIME_DIR="$place" XDG_CONFIG_HOME="$place/config" XDG_DATA_HOME="$place/data" QT_QPA_PLATFORM=offscreen
cp -R samples/orrowen_coast "$place/camp"
cp -R samples/orrowen_coast "$place/audited"
"$build/bin/quarterstep" dispense --camp "$place/audited" samples/orrowen_coast/people.csv > "$place/given" 2>&1
[ -s "$place/audited/ledger.sqlite" ] || { cat "$place/given"; exit 1; }
failed=0
made=0

picture() { # page, look, language, size, percent, then flags
    page=$1 look=$2 language=$3 size=$4 percent=$5
    shift 5
    name=$page-$look-$language-$size-$percent
    case $name in *"$only"*) ;; *) return ;; esac
    if "$build/bin/quarterstep-desk" --screenshot "$out/$name.png" --theme "$look" --language "$language" \
        --size "$size" --text-scale "$percent" "$@" 2> "$place/err"; then
        made=$((made + 1))
    else
        echo "$name was not made:" && cat "$place/err"
        failed=1
    fi
}

for look in light dark sun; do
    for language in en ar hi; do
        for form in "1366x768 100" "1920x1080 100" "1366x768 200"; do
            set -- $form
            picture opening "$look" "$language" "$1" "$2"
            picture trays "$look" "$language" "$1" "$2" --place trays
            picture settings "$look" "$language" "$1" "$2" --place settings "$place/camp"
            picture dispense-empty "$look" "$language" "$1" "$2" "$place/camp"
            picture dispense "$look" "$language" "$1" "$2" --person W-004 "$place/camp"
            picture stock "$look" "$language" "$1" "$2" --place stock --line N+200-62M-BK "$place/camp"
            picture stock-ladder "$look" "$language" "$1" "$2" --place stock-ladder "$place/camp"
            picture stock-box "$look" "$language" "$1" "$2" --place stock-box "$place/camp"
            picture audit "$look" "$language" "$1" "$2" --place audit "$place/audited"
            picture audit-charts "$look" "$language" "$1" "$2" --place audit-charts "$place/audited"
            picture audit-bench "$look" "$language" "$1" "$2" --place audit-bench "$place/audited"
            picture help "$look" "$language" "$1" "$2" --place help "$place/camp"
            picture keys "$look" "$language" "$1" "$2" --place keys "$place/camp"
        done
    done
done
echo "$made pictures in $out"
exit "$failed"
