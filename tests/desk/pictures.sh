#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Every screen of the desk in every look, in English, Arabic and Hindi, at two sizes, and at 200 per cent on the
# small one, for people to look at. usage: pictures.sh [BUILD_FOLDER [ONLY]]; pictures go into
# BUILD_FOLDER/pictures, as PAGE-LOOK-LANGUAGE-SIZE.png; ONLY is a part of the names to make. Exit 1 when one is missing.
# pictures.sh manual [BUILD_FOLDER] makes those of the manual anew, into app/help/pictures: in English, with few colours
# (by pngquant), each of at most 60 kB.
set -u
cd "$(dirname "$0")/../.." || exit 1
manual=
[ "${1-}" = manual ] && manual=yes && shift
build=${1-build}
only=${2-}
place=$(mktemp -d) || exit 1
trap 'rm -rf "$place"' EXIT
export HOME=/home/keeper XDG_RUNTIME_DIR="$place" XDG_CONFIG_HOME="$place/config" XDG_DATA_HOME="$place/data" QT_QPA_PLATFORM=offscreen
cp -R samples/orrowen_coast "$place/camp"
cp -R samples/orrowen_coast "$place/lean" # a box that needs filling
sed -i "s/on hand: [0-9]*/on hand: 1/" "$place/lean/stock.yaml"
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

paint() { # FILE, then flags
    file=$1
    shift
    if "$build/bin/quarterstep-desk" --screenshot "$file" "$@" 2> "$place/err"; then
        made=$((made + 1))
    else
        echo "$file was not made:" && cat "$place/err"
        failed=1
        return 1
    fi
}

picture() { # page, look, language, size, percent, then flags
    page=$1 look=$2 language=$3 size=$4 percent=$5
    shift 5
    name=$page-$look-$language-$size-$percent
    case $name in *"$only"*) ;; *) return ;; esac
    paint "$out/$name.png" --theme "$look" --language "$language" --size "$size" --text-scale "$percent" "$@"
}

# One picture of the manual: name, then flags; as many colours as its bytes allow.
of_manual() {
    name=$1
    shift
    paint "$place/whole.png" --theme light --language en --size 1200x700 --text-scale 100 "$@" || return
    for colours in 48 32 16; do
        pngquant "$colours" --nofs --force --speed 1 --strip --output "$out/$name.png" "$place/whole.png" || failed=1
        bytes=$(wc -c < "$out/$name.png")
        [ "$bytes" -le 60000 ] && return
    done
    echo "$out/$name.png has $bytes bytes; 60000 are allowed"
    failed=1
}

worked() { # verb and words: on the day's camp; 1 only says that somebody was not served
    verb=$1
    shift
    "$build/bin/quarterstep" "$verb" --camp "$place/day" "$@" > "$place/said" 2>&1 && return
    [ $? = 1 ] || { cat "$place/said" && exit 1; }
}

# A day behind it, with two pairs picked by hand and a lot drawn, so that the audit has something to look at.
make_day() {
    cp -R "$place/camp" "$place/day"
    worked dispense --person W-012 --lines D-300-54C --reason "asked for it after trying" --actor AB "$place/day/people.csv"
    worked dispense --person W-003 --lines N+200-60M-BK --reason "asked for a stronger pair" --actor AB "$place/day/people.csv"
    worked dispense --actor AB "$place/day/people.csv"
    worked audit draw --actor AB
}

manual_pictures() {
    command -v pngquant > /dev/null || { echo "the pictures of the manual need the package pngquant" >&2; exit 4; }
    out=app/help/pictures
    mkdir -p "$out" && rm -f "$out"/*.png
    make_day
    of_manual opening
    of_manual trays --place trays
    of_manual near-pair --person W-003 "$place/camp"
    of_manual custom-order --person W-012 "$place/camp"
    of_manual dark --theme dark --person W-003 "$place/camp"
    of_manual arabic --language ar --person W-003 "$place/camp"
    of_manual stock --place stock --line N+200-62M-BK "$place/camp"
    of_manual stock-ladder --place stock-ladder "$place/camp"
    of_manual stock-box --place stock-box "$place/camp"
    of_manual stock-packing --place stock-packing "$place/day"
    of_manual audit --place audit --person W-003 "$place/day"
    of_manual audit-charts --place audit-charts "$place/day"
    of_manual audit-bench --place audit-bench "$place/day"
    of_manual settings --place settings "$place/camp"
    of_manual keys --place keys "$place/camp"
}

if [ -n "$manual" ]; then
    manual_pictures
    echo "$made pictures in $out, $(cat "$out"/*.png | wc -c) bytes"
    exit "$failed"
fi
out=$build/pictures
mkdir -p "$out"
make_day
for look in light dark sun; do
    for language in en ar hi; do
        for form in "1366x768 100" "1920x1080 100" "1366x768 200"; do
            # shellcheck disable=SC2086 # two words
            set -- $form
            picture opening "$look" "$language" "$1" "$2"
            picture trays "$look" "$language" "$1" "$2" --place trays
            picture settings "$look" "$language" "$1" "$2" --place settings "$place/camp"
            picture dispense-empty "$look" "$language" "$1" "$2" "$place/camp"
            picture dispense "$look" "$language" "$1" "$2" --person W-003 "$place/camp"
            picture dispense-trial "$look" "$language" "$1" "$2" --person W-001 "$place/camp"
            picture stock "$look" "$language" "$1" "$2" --place stock --line N+200-62M-BK "$place/camp"
            picture stock-ladder "$look" "$language" "$1" "$2" --place stock-ladder "$place/camp"
            picture stock-box "$look" "$language" "$1" "$2" --place stock-box "$place/camp"
            picture stock-packing "$look" "$language" "$1" "$2" --place stock-packing "$place/lean"
            picture stock-transfers "$look" "$language" "$1" "$2" --place stock-transfers "$place/camp"
            picture bring-in "$look" "$language" "$1" "$2" --bring "$place/theirs.csv" "$place/camp"
            picture send-out "$look" "$language" "$1" "$2" --place send-out "$place/camp"
            picture audit "$look" "$language" "$1" "$2" --place audit --person W-003 "$place/day"
            picture audit-charts "$look" "$language" "$1" "$2" --place audit-charts "$place/day"
            picture audit-bench "$look" "$language" "$1" "$2" --place audit-bench "$place/day"
            picture help "$look" "$language" "$1" "$2" --place help "$place/camp"
            picture keys "$look" "$language" "$1" "$2" --place keys "$place/camp"
        done
    done
done
echo "$made pictures in $out"
exit "$failed"
