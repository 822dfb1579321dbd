#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Which lines of core no test runs, against tests/gates/uncovered.txt, where each file that has some says how many and why.
# usage: coverage.sh SOURCE_FOLDER; builds in build-coverage. Exit 1 when a file has more than it says, or says nothing.
set -u
cd "$1" || exit 2
tests='optics_test|optics_depth_test|record_test|audit_rates_test|independent_routes|planning_test|text_test|fit_cases_test'
tests="$tests|recommendation_test|fit_details_test|search_test|camp_test|sample_day_test|keeping_test|leaving_test|golden_test"
tests="$tests|audit_test|injected_truth_test|paper_content_test|command_test|samples_test"
mkdir -p build-coverage
log=build-coverage/coverage.log
{
    cmake -S . -B build-coverage -G Ninja -DQUARTERSTEP_TESTS=ON -DCMAKE_BUILD_TYPE=Release -DQUARTERSTEP_COVERAGE=ON &&
        cmake --build build-coverage --target $(echo "$tests" | tr '|' '\n' | sed 's/independent_routes/independent_values/') quarterstep-paper
} > "$log" 2>&1 || {
    tail -n 20 "$log"
    exit 1
}
find build-coverage -name '*.gcda' -delete
# Some tests take away the right to write; what the counters say of that is not the program's word.
GCOV_ERROR_FILE=/dev/null QT_QPA_PLATFORM=offscreen ctest --test-dir build-coverage -R "^($tests)\$" -j2 > "$log" 2>&1 || {
    tail -n 20 "$log"
    exit 1
}
gcovr -r . --filter 'core/' --csv -o build-coverage/lines.csv build-coverage 2>> "$log" || exit 1
gcovr -r . --filter 'core/' -o build-coverage/uncovered_now.txt build-coverage 2>> "$log"
awk -F '[,\t]' '
    FILENAME ~ /uncovered.txt$/ { if ($0 !~ /^#/ && NF >= 3) { allowed[$1] = $2; why[$1] = $3 } next }
    FNR == 1 { next }
    {
        gsub(/"/, "", $1)
        missing = $2 - $3
        lines += $2; covered += $3
        if (missing > 0 && !($1 in why)) { print $1 ": " missing " lines that no test runs, not explained"; bad = 1 }
        else if (missing > allowed[$1]) { print $1 ": " missing " lines that no test runs, " allowed[$1] " are explained"; bad = 1 }
    }
    END { printf "core: %d of %d lines run by tests, %.1f %%\n", covered, lines, 100 * covered / lines; exit bad }' \
    tests/gates/uncovered.txt build-coverage/lines.csv
