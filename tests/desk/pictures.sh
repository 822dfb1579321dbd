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
cat > "$place/theirs.csv" << 'END'
Patient ID;OD Sph;OD Cyl;OD Ax;OS Sph;OS Cyl;OS Ax;Add;PD;Remark
K-1;-1,25;+0,50;175;+0,75;;;2,00;62,5;tired
K-2;1,50;;;+1,50;;;;60;
K-3;+2,00;+1,00;90;+2,25;+0,75;85;;63;
K-4;-3,00;+0,75;;-3,25;;;;61;
W-004;-1,00;;;-1,00;;;;60;
END
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
            picture bring-in "$look" "$language" "$1" "$2" --bring "$place/theirs.csv" "$place/camp"
            picture send-out "$look" "$language" "$1" "$2" --place send-out "$place/camp"
            picture help "$look" "$language" "$1" "$2" --place help "$place/camp"
            picture keys "$look" "$language" "$1" "$2" --place keys "$place/camp"
        done
    done
done
echo "$made pictures in $out"
exit "$failed"
