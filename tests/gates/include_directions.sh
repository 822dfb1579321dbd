#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Rooms and the directions between them (DEVELOPERS.md), read from the #include lines.
# usage: include_directions.sh SOURCE_FOLDER; prints each breach as file:line: rule; exit 1 on any.
set -u
cd "$1" || exit 2

# The rules: WORDS | FILES IT IS FOR | FILES EXCEPTED | HEADERS REFUSED (extended regular expressions, from the first character).
rules() {
    widgets='QtWidgets|QtGui|Q(Widget|Application|GuiApplication|MainWindow|Dialog|Label|Painter|Pixmap|Image|Font'
    widgets="$widgets|Palette|Action|LineEdit|PushButton|TableView|Layout|BoxLayout|Printer|PagedPaintDevice)\$"
    cat << 'END'
core looks up to no other room	core/		inventory/|app/|samples/|tests/
core is plain C++: no Qt, YAML, SQL	core/		Q[A-Z]|Qt[A-Z]|yaml-cpp|sqlite|libpq|CLI/|qcustomplot
core has no I/O, clock, locale, randomness, threads	core/		(fstream|iostream|ostream|istream|sstream|filesystem|chrono|ctime|random|locale|clocale|thread|mutex|atomic|future)$
optics is the lowest room	core/optics/		core/(fitting|record|planning|auditing)/
fitting knows no records, planning or audit	core/fitting/		core/(record|planning|auditing)/
record knows no planning or audit	core/record/		core/(planning|auditing)/
inventory does not look up to app	inventory/		app/|samples/|tests/
text does not know the store	inventory/text/		inventory/(store|exchange)/
SQL is seen in inventory/store alone	core/|inventory/|app/	inventory/store/	Q(t)?Sql|sqlite3|libpq
SQLite's own interface is seen in sqlite_link.cpp alone	core/|inventory/|app/	inventory/store/sqlite_link[.]cpp	sqlite3
PostgreSQL's own interface is seen in postgresql_link.cpp alone	core/|inventory/|app/	inventory/store/postgresql_link[.]cpp	libpq
yaml-cpp is seen in yaml_map alone	core/|inventory/|app/	inventory/text/yaml_map	yaml-cpp
LEMON is seen in flow.cpp alone	core/|inventory/|app/	core/planning/flow[.]cpp	lemon/
GLPK is seen in linear_program.cpp alone	core/|inventory/|app/	core/planning/linear_program[.]cpp	glpk
planning does not know the audit	core/planning/		core/auditing/
CLI11 is seen in options.cpp alone	core/|inventory/|app/	app/command/options[.]cpp	CLI/
QCustomPlot is seen in the views of plots alone	core/|inventory/|app/	app/desk/plots/[a-z]+_view[.]	qcustomplot
session knows neither command, paper nor desk	app/session/		app/(command|paper|desk)/
paper knows neither command nor desk	app/paper/		app/(command|desk)/
content of papers knows no drawing	app/paper/content/		app/paper/render/|Qt(Widgets|Gui|PrintSupport)|Q(Gui)?Application$|Q(Painter|Image|Font|PdfWriter|Printer|PageSize|TextLayout)$
zint is seen in bar_code.cpp alone	core/|inventory/|app/	app/paper/render/bar_code[.]cpp	zint
DCMTK is seen in dicom_object*.cpp alone	core/|inventory/|app/	inventory/exchange/dicom_object(_writing)?[.]cpp	dcmtk
exchange does not know the store	inventory/exchange/		inventory/store/
printers are seen in printer.cpp alone	core/|inventory/|app/	app/paper/render/printer[.]cpp	QPrint
command does not know the desk	app/command/		app/desk/
the desk does not know command	app/desk/		app/command/
nobody knows what is installed	core/|inventory/|app/(session|paper|command|desk|help|translations)/		app/install/
programs know nothing of samples and tests	app/		samples/|tests/
END
    printf 'no widgets outside the desk and paper\tinventory/|app/session/|app/command/\t\t%s\n' "$widgets"
    # Headers of inventory speak std types; those that only its own .cpp files share may hold Qt types.
    printf 'headers of inventory hold no Qt types\tinventory/.*[.]hpp$\tinventory/store/([a-z_]*_)?(connection|inside|statement|query)[.]hpp\tQ[A-Z]|Qt[A-Z]\n'
}

find core inventory app samples \( -name '*.cpp' -o -name '*.hpp' -o -name '*.h' \) -type f 2>/dev/null | sort |
    tr '\n' '\0' | xargs -0 -r grep -HnE '^[[:space:]]*#[[:space:]]*include' |
    sed 's/^\([^:]*\):\([0-9]*\):[^<"]*[<"]\([^>"]*\)[>"].*/\1\t\2\t\3/' |
    { rules | sed 's/^/rule\t/'; sed 's/^/line\t/'; } |
    awk -F '\t' '
        $1 == "rule" { words[++rules] = $2; within[rules] = $3; except[rules] = $4; refused[rules] = $5; next }
        {
            for (i = 1; i <= rules; i++)
                if ($2 ~ ("^(" within[i] ")") && (except[i] == "" || $2 !~ ("^(" except[i] ")")) && $4 ~ ("^(" refused[i] ")")) {
                    print $2 ":" $3 ": " $4 ": " words[i]
                    broken = 1
                }
        }
        END { exit broken }'
