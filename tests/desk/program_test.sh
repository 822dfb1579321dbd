#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# The desk as a program: screenshots and exit codes. Usage: program_test.sh PROGRAM
set -u
desk=$1
place=$(mktemp -d /tmp/quarterstep-desk.XXXXXX) || exit 1
trap 'rm -rf "$place"' EXIT
export XDG_RUNTIME_DIR="$place" XDG_CONFIG_HOME="$place/config" XDG_DATA_HOME="$place/data"
failed=0

expect() { # code, words to find in stderr, then the command's arguments
    code=$1; words=$2; shift 2
    "$desk" "$@" >"$place/out" 2>"$place/err"
    got=$?
    if [ "$got" -ne "$code" ]; then
        echo "exit $got, expected $code: $*"; cat "$place/err"; failed=$((failed + 1))
    elif [ -n "$words" ] && ! grep -q -e "$words" "$place/err"; then
        echo "stderr lacks '$words': $*"; cat "$place/err"; failed=$((failed + 1))
    fi
}

mkdir "$place/camp"
cat >"$place/camp/stock.yaml" <<'YAML'
format: quarterstep stock 1
site: Test table
lines:
  - {line: D-125, kind: ready-made, power: -1.25, centres: 62, centres from: measured, bin: B2, on hand: 3}
YAML
printf 'person,age,right,left,pd_mm\nP-1,24,-1.25,-1.25,62\n' >"$place/camp/people.csv"

expect 0 "" --help
expect 0 "" --version
expect 2 "unknown\|Unknown" --no-such-flag
expect 2 "theme" --theme purple
expect 2 "size" --size huge
expect 2 "one camp folder" one two
expect 2 "text-scale" --text-scale 20
expect 2 "not known" --place attic
expect 0 "" --screenshot "$place/empty.png" --size 1366x768
printf 'ID;OD Sph;OS Sph\nK-1;-1,25;-1,00\n' >"$place/theirs.csv"
expect 0 "" --screenshot "$place/bring.png" --bring "$place/theirs.csv" "$place/camp"
expect 0 "" --screenshot "$place/send.png" --place send-out "$place/camp"
expect 0 "" --screenshot "$place/camp.png" --size 1366x768 --person P-1 "$place/camp"
expect 0 "" --screenshot "$place/rtl.png" --size 1366x768 --right-to-left --theme dark "$place/camp"
expect 1 "P-9" --screenshot "$place/none.png" --person P-9 "$place/camp"
expect 3 "no-such-folder" --screenshot "$place/none.png" "$place/no-such-folder"
expect 4 "cannot write" --screenshot "$place/no-such-folder/x.png" "$place/camp"

for picture in empty camp rtl; do
    # width and height stand in bytes 17 to 24 of a PNG
    size=$(od -An -tu1 -j16 -N8 "$place/$picture.png" | tr -s ' ' | sed 's/^ //')
    [ "$size" = "0 0 5 86 0 0 3 0" ] || { echo "$picture.png is not 1366x768: $size"; failed=$((failed + 1)); }
done
[ ! -e "$place/none.png" ] || { echo "a picture was written in spite of an error"; failed=$((failed + 1)); }
[ "$failed" -eq 0 ] && echo "desk program: all as expected"
exit "$failed"
