#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# usage: run_notation.sh PROGRAM CORPUS SCRATCH
# Fuzzes the notation for 15 seconds from the kept corpus; with QS_LONG=1 ten million inputs. New inputs stay in SCRATCH.
set -eu
program=$1 corpus=$2 scratch=$3
mkdir -p "$scratch"
limits="-max_total_time=15"
[ "${QS_LONG-0}" = 1 ] && limits="-runs=10000000"
exec "$program" $limits -max_len=200 -timeout=5 -print_final_stats=1 -verbosity=1 -artifact_prefix="$scratch/" \
    -dict="$(dirname "$0")/notation.dict" "$scratch" "$corpus"
