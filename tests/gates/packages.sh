#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# The lists of packages hold what CMake looks for, and nothing that nobody needs. usage: packages.sh SOURCE_FOLDER
set -u
cd "$1" || exit 2
work=$(mktemp -d) || exit 2
trap 'rm -rf "$work"' EXIT

# Names that CMake looks for: "Qt6 Svg", "CLI11" …
find . -name CMakeLists.txt -not -path './build*' -exec cat {} + |
    sed -n 's/^[[:space:]]*find_package(\([^)]*\)).*/\1/p' |
    awk '{ if ($1 != "Qt6") { print $1; next }
           for (i = 2; i <= NF; i++) if ($i ~ /^[A-Z][A-Za-z]+$/ && $i != "REQUIRED" && $i != "COMPONENTS") print $1 " " $i }' |
    sort -u > "$work/wanted"
# What is needed without being looked for by find_package: compiler, tools, fonts, GLPK, libsodium, a
# server and its client and what the bench compares with.
printf '%s\n' g++ libglpk-dev cmake ninja-build libsodium-dev fonts-dejavu-core ccache zbar-tools \
    poppler-utils fonts-lohit-deva postgresql-15 dcmtk python3-pydicom libpq-dev \
    > "$work/needed"
# Libraries that CMake finds without a package of its own.
find . -name CMakeLists.txt -not -path './build*' -exec cat {} + |
    sed -n 's/^[[:space:]]*find_library([A-Z_]* \([a-z0-9]*\).*/lib\1-dev/p' >> "$work/needed"
while IFS= read -r name; do
    case $name in
    'Qt6 Core' | 'Qt6 Gui' | 'Qt6 Widgets' | 'Qt6 PrintSupport' | 'Qt6 Test') echo qt6-base-dev ;;
    'Qt6 Svg' | 'Qt6 SvgWidgets') echo qt6-svg-dev ;;
    'Qt6 LinguistTools') echo qt6-tools-dev ;;
    yaml-cpp) echo libyaml-cpp-dev ;;
    CLI11) echo libcli11-dev ;;
    QCustomPlotQt6) echo libqcustomplot-dev ;;
    Boost) echo libboost-test-dev ;;
    benchmark) echo libbenchmark-dev ;;
    DCMTK) echo libdcmtk-dev ;;
    lemon) echo liblemon-dev ;;
    nanoflann) echo libnanoflann-dev ;;
    SQLite3) echo libsqlite3-dev ;;
    *) echo "no-package-known-for:$name" ;;
    esac
done < "$work/wanted" >> "$work/needed"
# Libraries that are headers alone are included without being looked for.
includes() {
    find "$@" \( -name '*.cpp' -o -name '*.hpp' \) -type f 2> /dev/null | tr '\n' '\0' |
        xargs -0 -r grep -hoE '^[[:space:]]*#[[:space:]]*include <[A-Za-z0-9_-]+/' | sed 's/.*<//' | sort -u
}
includes core inventory app > "$work/included"
sort -u "$work/included" | sed -n 's:^boost/$:libboost-dev:p; s:^Eigen/$:libeigen3-dev:p' > "$work/of_programs"
cat "$work/of_programs" >> "$work/needed"
sort -u -o "$work/needed" "$work/needed"
cat app/packages tests/packages | sed 's/#.*//; /^[[:space:]]*$/d' | sort -u > "$work/listed"
# What the programs include must be there without the packages of the tests.
for package in $(cat "$work/of_programs"); do
    grep -qx "$package" app/packages || echo "included by the programs, not in app/packages: $package"
done > "$work/late"
cat "$work/late"
missing=$(comm -23 "$work/needed" "$work/listed")
idle=$(comm -13 "$work/needed" "$work/listed")
[ -z "$missing" ] || echo "looked for by CMake, in no list of packages:" $missing
[ -z "$idle" ] || echo "in a list of packages, wanted by nothing:" $idle
[ -z "$missing$idle" ] && [ ! -s "$work/late" ]
