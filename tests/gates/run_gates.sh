#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# The gates beside the tests, from the top of the checkout. usage: run_gates.sh changed|all
set -u
which=$1
failed=0
passed=0
work=$(mktemp -d) || exit 2
trap 'rm -rf "$work"' EXIT

gate() { # NAME COMMAND…
    name=$1
    shift
    if "$@" > "$work/said" 2>&1; then
        passed=$((passed + 1))
        echo "passed  $name"
    else
        failed=$((failed + 1))
        echo "FAILED  $name"
        cat "$work/said"
    fi
}

every_source() {
    find core inventory app tests samples \( -name '*.cpp' -o -name '*.hpp' \) -type f | sort
}

# What the last commit and the working tree changed; everything where there is no earlier commit to compare with.
changed_sources() {
    if git rev-parse -q --verify HEAD~1 > /dev/null 2>&1; then
        { git diff --name-only --diff-filter=d HEAD~1; git ls-files --others --exclude-standard; } |
            grep -E '^(core|inventory|app|tests|samples)/.*\.(cpp|hpp)$' | sort -u
    else
        every_source
    fi
}

# clang-tidy reads a header through the sources that include it. Tests are left to the compiler's warnings.
tidy_sources() {
    while IFS= read -r file; do
        case $file in
        tests/*) ;;
        *.cpp) echo "$file" ;;
        *.hpp) grep -rlF --include='*.cpp' "#include \"$file\"" core inventory app samples ;;
        esac
    done | sort -u
}

format_is_clean() {
    xargs -r clang-format --dry-run -Werror < "$work/every"
}

tidy_is_clean() {
    sh tests/gates/tidy_clean.sh < "$work/tidy"
}

# A source that is joined to others may live on their headers, until a new file moves it to another place.
compiles_alone() {
    cmake -S . -B build/alone -G Ninja -DCMAKE_BUILD_TYPE=Release -DQUARTERSTEP_JOIN=OFF > "$work/configured" 2>&1 || {
        cat "$work/configured"
        return 1
    }
    awk -v top="$PWD/" '
        NR == FNR { wanted[top $0] = 1; next }
        { text = $0; sub(/^ *"[a-z]+": "/, "", text); sub(/",?$/, "", text) }
        /^ *"command": / { sub(/ -o .*/, "", text); gsub(/\\"/, "\"", text); gsub(/\\\\/, "\\", text); command = text }
        /^ *"file": / && text in wanted { print command " -O0 -fsyntax-only " text }
    ' "$work/tidy" build/alone/compile_commands.json > "$work/commands"
    xargs -r -d '\n' -n 1 -P 2 sh -c < "$work/commands"
}

# Macros of translation are plain words to it.
cppcheck_is_clean() {
    grep -E '[.]cpp$' "$work/tidy" > "$work/checked"
    [ -s "$work/checked" ] || return 0
    cppcheck --std=c++20 --language=c++ --enable=warning,performance,portability --inline-suppr --quiet -j2 -I . \
        '-DQS_SAY(context,text)=text' '-DQT_TRANSLATE_NOOP(context,text)=text' \
        --suppress=missingIncludeSystem --suppressions-list=tests/gates/cppcheck_suppressions --suppress=unmatchedSuppression \
        --error-exitcode=1 --file-list="$work/checked"
}

every_source > "$work/every"
if [ "$which" = all ]; then cp "$work/every" "$work/changed"; else changed_sources > "$work/changed"; fi
tidy_sources < "$work/changed" > "$work/tidy"
gate "layout of $(wc -l < "$work/every") source files (clang-format)" format_is_clean
gate "clang-tidy on $(wc -l < "$work/tidy") source files" tidy_is_clean
gate "$(wc -l < "$work/tidy") source files compile alone" compiles_alone
gate "cppcheck on $(wc -l < "$work/tidy") source files" cppcheck_is_clean
[ "$which" != all ] || gate "lines of core that tests run" sh tests/gates/coverage.sh .
for name in include_directions source_texts purposes top_level codes_in_help house_picture names_in_guide packages; do
    gate "$name" sh "tests/gates/$name.sh" .
done
echo "$passed passed, $failed failed"
[ "$failed" = 0 ]
