#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# An interrupt while boxes are planned: exit 1, told, and the lists asked for are not there.
# usage: interrupt.sh PROGRAM CAMP_FOLDER. Ends with "N passed, N failed".
set -u
program=$1
camp=$2
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
cat > "$work/supplier.yaml" <<'END'
format: quarterstep supplier 1
supplier: Test chandlery
currency: shells
lines:
  - {line: S-150, kind: ready-made, power: +1.50, use: near, centres: 62, cost: 1.00, pack: 2, weight: 25}
  - {line: S-200, kind: ready-made, power: +2.00, use: near, centres: 62, cost: 1.00, pack: 2, weight: 25}
  - {line: S-250, kind: ready-made, power: +2.50, use: near, centres: 60, cost: 1.00, pack: 2, weight: 25}
END
"$program" pack --stock "$camp/stock.yaml" --rules "$camp/rules.yaml" --supplier "$work/supplier.yaml" --budget 90000 \
    --people 1500 --scenarios 80 --output "$work/order.csv" "$camp/people.csv" > "$work/out" 2> "$work/err" &
job=$!
sleep 2
kill -INT "$job"
(sleep 60 && kill -9 "$job") 2> /dev/null &
watch=$!
wait "$job"
status=$?
kill "$watch" 2> /dev/null
passed=0
failed=0
check() {
    if eval "$2"; then passed=$((passed + 1)); else failed=$((failed + 1)); echo "FAILED: $1"; fi
}
check "exit code is 1, was $status" '[ "$status" = 1 ]'
check "the stop is told" 'grep -q "\[cancelled\]" "$work/err"'
check "nothing is said of an order" '[ ! -s "$work/out" ]'
check "no list is written, whole or half" '[ -z "$(ls "$work" | grep -v -e supplier.yaml -e "^out$" -e "^err$")" ]'
echo "$passed passed, $failed failed"
[ "$failed" = 0 ]
