#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Rooms and the directions between them (DEVELOPERS.md), read from the #include lines.
# usage: include_directions.sh SOURCE_FOLDER; prints each breach as file:line: rule; exit 1 on any.
set -u
cd "$1" || exit 2
lines=$(mktemp) || exit 2
trap 'rm -f "$lines"' EXIT
# One line an include: file:number:header.
find core inventory app samples \( -name '*.cpp' -o -name '*.hpp' -o -name '*.h' \) -type f 2>/dev/null | sort |
    tr '\n' '\0' | xargs -0 -r grep -HnE '^[[:space:]]*#[[:space:]]*include' |
    sed 's/^\([^:]*:[0-9]*:\)[^<"]*[<"]\([^>"]*\)[>"].*/\1\2/' > "$lines"

# rule WORDS FILES-THE-RULE-IS-FOR FILES-EXCEPTED HEADERS-REFUSED (the last three: extended regular expressions)
broken=0
rule() {
    found=$(grep -E "^($2)" "$lines" | grep -Ev "^($3)" | grep -E ":[0-9]+:($4)")
    [ -z "$found" ] && return
    broken=1
    printf '%s\n' "$found" | while IFS= read -r line; do printf '%s: %s\n' "$line" "$1"; done
}
nothing='$^'
widgets='QtWidgets|QtGui|Q(Widget|Application|GuiApplication|MainWindow|Dialog|Label|Painter|Pixmap|Image|Font|Palette'
widgets="$widgets|Action|LineEdit|PushButton|TableView|Layout|BoxLayout|VBoxLayout|HBoxLayout|Printer|PagedPaintDevice)"

rule 'core looks up to no other room'                'core/'           "$nothing" 'inventory/|app/|samples/|tests/'
rule 'core is plain C++: no Qt, YAML, SQL'           'core/'           "$nothing" 'Q[A-Z]|Qt[A-Z]|yaml-cpp|sqlite|libpq|CLI/|qcustomplot'
rule 'core has no I/O, clock, locale, randomness, threads' 'core/'     "$nothing" '(fstream|iostream|ostream|istream|sstream|filesystem|chrono|ctime|random|locale|clocale|thread|mutex|atomic|future)$'
rule 'optics is the lowest room'                     'core/optics/'    "$nothing" 'core/(fitting|record|planning|auditing)/'
rule 'fitting knows no records, planning or audit'   'core/fitting/'   "$nothing" 'core/(record|planning|auditing)/'
rule 'record knows no planning or audit'             'core/record/'    "$nothing" 'core/(planning|auditing)/'
rule 'inventory does not look up to app'             'inventory/'      "$nothing" 'app/|samples/|tests/'
rule 'text does not know the store'                  'inventory/text/' "$nothing" 'inventory/(store|exchange)/'
rule 'SQL is seen in inventory/store alone'          'core/|inventory/|app/' 'inventory/store/' 'Q(t)?Sql|sqlite3|libpq'
rule 'yaml-cpp is seen in yaml_map alone'            'core/|inventory/|app/' 'inventory/text/yaml_map' 'yaml-cpp'
rule 'CLI11 is seen in options.cpp alone'            'core/|inventory/|app/' 'app/command/options\.cpp' 'CLI/'
rule 'QCustomPlot is seen in plot_view alone'        'core/|inventory/|app/' 'app/desk/plots/plot_view\.' 'qcustomplot'
rule 'no widgets outside the desk and paper'         'inventory/|app/session/|app/command/' "$nothing" "($widgets)\$"
rule 'session knows neither command, paper nor desk' 'app/session/'    "$nothing" 'app/(command|paper|desk)/'
rule 'command and desk do not know each other'       'app/command/'    "$nothing" 'app/desk/'
rule 'command and desk do not know each other'       'app/desk/'       "$nothing" 'app/command/'
rule 'programs know nothing of samples and tests'    'app/'            "$nothing" 'samples/|tests/'
# Headers of inventory speak std types; what only its own .cpp files share is named *_inside.hpp or lies in connection.hpp.
rule 'headers of inventory hold no Qt types'         'inventory/[^:]*\.hpp' 'inventory/store/[a-z_]*(connection|_inside|statement|query)[a-z_]*\.hpp' 'Q[A-Z]|Qt[A-Z]'
exit $broken
