#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# usage: run_fuzzer.sh PROGRAM CORPUS SCRATCH [MOST_BYTES [RUNS]]
# Fuzzes for 15 seconds from the kept corpus; with QS_LONG=1 until RUNS inputs (5 million) or 30 minutes of processor
# time, whichever comes first. No input may take more than a minute or 1 GiB. New inputs and what fails stay in SCRATCH.
set -eu
program=$1 corpus=$2 scratch=$3 bytes=${4-4096} runs=${5-5000000}
most_seconds=1800
most_wall=60 # of one input by the clock on the wall, so that a crowded machine is no fault
mkdir -p "$scratch"
words="$(dirname "$0")/$(basename "$corpus").dict"
export ASAN_OPTIONS="quarantine_size_mb=32:external_symbolizer_path="
set -- -max_len="$bytes" -timeout="$most_wall" -rss_limit_mb=1024 -print_final_stats=1 -print_funcs=0 \
    -artifact_prefix="$scratch/" -dict="$words" "$scratch" "$corpus"
if [ "${QS_LONG-0}" != 1 ]; then
    exec "$program" -max_total_time=15 "$@"
fi

# Processor time of a process so far, in hundredths of a second: fields 14 and 15 after the name in brackets.
used() {
    sed 's/^.*) //' "/proc/$1/stat" 2> /dev/null | cut -d' ' -f12,13
}

"$program" -runs="$runs" "$@" &
fuzzer=$!
trap 'kill "$fuzzer" 2> /dev/null || true' INT TERM
ticks=0
while time=$(used "$fuzzer") && [ -n "$time" ]; do
    ticks=$((${time% *} + ${time#* }))
    [ "$ticks" -lt $((most_seconds * 100)) ] || {
        kill -USR1 "$fuzzer" || true # it says its figures and ends with 0; at TERM it ends with 72
        break
    }
    sleep 2
done
ended=0
wait "$fuzzer" || ended=$?
echo "processor time: $((ticks / 100)) s"
exit "$ended"
