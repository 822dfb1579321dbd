#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# A day of the sample camp: everybody in the queue, on a fresh copy of the camp. From the top of the checkout.
# usage: sample_day.sh FOLDER_OF_PROGRAMS FOLDER_TO_MAKE
set -eu
programs=$1
day=$2

stock_totals() {
    pieces=$("$programs/quarterstep" stock --camp "$day" --json | tr ',{' '\n\n' |
        sed -n 's/.*"on_hand": *\([0-9]*\).*/\1/p' | awk '{ sum += $1 } END { print sum " pieces in " NR " lines" }')
    echo "$pieces, $("$programs/quarterstep" stock --camp "$day" | tail -n 1)"
}

rm -rf "$day"
cp -R samples/orrowen_coast "$day"
before=$(stock_totals)
status=0
"$programs/quarterstep" dispense --camp "$day" "$day/people.csv" || status=$?
[ "$status" -le 1 ] || exit "$status"
echo
echo "Stock before: $before"
echo "Stock after:  $(stock_totals)"
[ "$status" = 0 ] || echo "Somebody could not be served from stock (exit 1 of dispense): on a real day, too."
echo
echo "The camp of this day is in $day. To look at it in a window:  sh app/run desk"
echo "Everybody with every reason, nothing handed over:  $programs/quarterstep match --camp $day $day/people.csv"
