#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Which lines of core no test runs, against tests/gates/uncovered.txt, where each stands below its reason.
# usage: coverage.sh SOURCE_FOLDER [print]; builds in build-coverage. Exit 1 when a line is not in the list; `print`
# writes those.
set -u
cd "$1" || exit 2
tests='optics_test|optics_depth_test|record_test|audit_rates_test|independent_routes|planning_test|text_test|fit_cases_test'
tests="$tests|recommendation_test|fit_details_test|search_test|camp_test|sample_day_test|keeping_test|leaving_test|golden_test"
tests="$tests|slip_classes_test|waiting_line_test|lot_test|planning_job_test|audit_test|injected_truth_test|paper_content_test|command_test|samples_test"
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
QT_QPA_PLATFORM=offscreen ctest --test-dir build-coverage -R "^($tests)\$" -E '^command_test$' -j2 > "$log" 2>&1 || {
    tail -n 20 "$log"
    exit 1
}
# Some of its cases run as nobody, who cannot write counters and hears so on standard error, where the case expects
# nothing: whether they pass is for the usual build to say.
QT_QPA_PLATFORM=offscreen ctest --test-dir build-coverage -R '^command_test$' >> "$log" 2>&1 || :
gcovr -r . --filter 'core/' --json -o build-coverage/lines.json build-coverage 2>> "$log" || exit 1
python3 tests/gates/uncovered.py build-coverage/lines.json tests/gates/uncovered.txt ${2+"$2"}
