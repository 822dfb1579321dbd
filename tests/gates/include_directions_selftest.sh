#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# A clean tree must pass; then one breach of each direction is planted, and each must be found.
set -u
gate=$1/include_directions.sh
tree=$(mktemp -d) || exit 2
trap 'rm -rf "$tree"' EXIT
failed=0
mkdir -p "$tree/core/optics" "$tree/core/fitting" "$tree/core/record" "$tree/core/planning" "$tree/inventory/text" "$tree/inventory/store" "$tree/inventory/exchange" \
    "$tree/app/session" "$tree/app/command" "$tree/app/desk/plots" "$tree/app/paper/content" \
    "$tree/app/paper/render" "$tree/samples"
echo '#include "core/optics/units.hpp"' > "$tree/core/fitting/fit.hpp"
echo '#include <yaml-cpp/yaml.h>' > "$tree/inventory/text/yaml_map.cpp"
echo '#include <libpq-fe.h>' > "$tree/inventory/store/postgresql_link.cpp"
echo '#include <sqlite3.h>' > "$tree/inventory/store/sqlite_link.cpp"
echo '#include <CLI/CLI.hpp>' > "$tree/app/command/options.cpp"
echo '#include <qcustomplot.h>' > "$tree/app/desk/plots/plot_view.cpp"
echo '#include <QString>' > "$tree/app/session/wording.hpp"
if ! sh "$gate" "$tree"; then
    echo "the clean tree is refused"
    failed=1
fi
planted=0
plant() { # FILE INCLUDE: the gate is asked once, about all of them
    echo "$2" > "$tree/$1"
    planted=$((planted + 1))
    expected="$expected $1"
}
expected=
plant core/optics/angle.cpp '#include "inventory/text/csv.hpp"'
plant core/fitting/need.cpp '#include <QString>'
plant core/fitting/rules.cpp '#include <yaml-cpp/yaml.h>'
plant core/record/entry.cpp '#  include <chrono>'
plant core/optics/up.cpp '#include "core/fitting/fit.hpp"'
plant core/fitting/plan.cpp '#include "core/planning/demand.hpp"'
plant core/record/audit.cpp '#include "core/auditing/slip.hpp"'
plant core/planning/side.cpp '#include "core/auditing/rates.hpp"'
plant core/planning/demand.cpp '#include <lemon/smart_graph.h>'
plant core/planning/packing.cpp '#include <glpk.h>'
plant inventory/text/up.cpp '#include "app/session/camp.hpp"'
plant inventory/text/side.cpp '#include "inventory/store/ledger.hpp"'
plant inventory/text/sql.cpp '#include <QSqlQuery>'
plant inventory/store/ledger.cpp '#include <sqlite3.h>'
plant inventory/store/connection.cpp '#include <libpq-fe.h>'
plant inventory/text/stock_file.cpp '#include <yaml-cpp/yaml.h>'
plant inventory/text/csv.hpp '#include <QByteArray>'
plant inventory/store/lock.cpp '#include <QWidget>'
plant app/session/camp.cpp '#include <QSqlDatabase>'
plant app/session/window.cpp '#include <QApplication>'
plant app/session/up.cpp '#include "app/desk/models/people.hpp"'
plant app/command/match.cpp '#include <CLI/App.hpp>'
plant app/command/paint.cpp '#include <QPainter>'
plant app/paper/content/note.cpp '#include <QPainter>'
plant app/paper/render/up.cpp '#include "app/command/print.hpp"'
plant app/desk/bars.cpp '#include <zint.h>'
plant app/desk/dialog.cpp '#include <QPrinter>'
plant inventory/exchange/fhir.cpp '#include <dcmtk/dcmdata/dctk.h>'
plant inventory/exchange/rows.cpp '#include "inventory/store/ledger.hpp"'
plant app/desk/plots/ladder.cpp '#include <qcustomplot.h>'
plant app/desk/main.cpp '#include "app/command/options.hpp"'
plant app/desk/sample.cpp '#include "samples/generate/samples.hpp"'
sh "$gate" "$tree" > "$tree/said" && failed=1
for file in $expected; do
    grep -q "^$file:1: " "$tree/said" || { echo "not found: the breach in $file"; failed=1; }
done
[ "$(cut -d : -f 1 "$tree/said" | sort -u | wc -l)" = "$planted" ] || { echo "other files are named, too:"; cat "$tree/said"; failed=1; }
echo "$planted planted breaches"
exit $failed
