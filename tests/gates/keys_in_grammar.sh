#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# app/help/grammar.md and the readers agree, section by section: every key and column that the sources of a section know
# stands in it as "key":, and no other does; every word that they accept for a value stands there in quotes.
# usage: keys_in_grammar.sh SOURCE_FOLDER
set -u
cd "$1" || exit 2
work=$(mktemp -d) || exit 2
trap 'rm -rf "$work"' EXIT
failed=0

# The parts of a source that name keys; a list in braces is taken to its closing brace.
keys_of() { # SOURCE…
    cat "$@" | tr '\n' ' ' | grep -oE \
        -e 'YamlMap [A-Za-z]*\([^;{]*\{[^}]*\}' \
        -e 'std::array [A-Za-z]*Columns\{"[^}]*\}' \
        -e 'const char\* needed : \{[^}]*\}' \
        -e '(Column<[^>]*>\(|TableColumn\{|OrderLabel\{|WitnessColumn\{)"[^"]*"' \
        -e 'cellOf\(row, "[^"]*"' \
        -e 'csvRow\(\{("[a-z0-9_]+",? *)+\}\)' \
        -e 'ExportTable table\{\{[^}]*\}' \
        -e 'addJsonMember\((stamp|object), "[^"]*"' \
        -e 'QStringLiteral\("[a-z_]+(,[a-z_]+)+"\)' \
        -e 'cell.text == "[^"]*"' \
        -e '(\.at|\.find)\(row, "[^"]*"' \
        -e 'need\(\{[^}]*\}' \
        -e '\{C::[A-Za-z]*, "[^"]*", "[^"]*"' |
        sed -E 's/\{C::[A-Za-z]*, "[^"]*",//' | grep -oE '"[^"]+"' | tr -d '"' | tr ',' '\n' | sort -u
}

# Members of objects; lists of words in braces are none.
json_keys_of() { # SOURCE…
    cat "$@" | tr '\n' ' ' | sed -E 's/words\[\] = \{[^}]*\}//g' |
        grep -oE '(\{|insert\()"[a-z0-9_]+",' | grep -oE '"[^"]+"' | tr -d '"' | sort -u
}

words_of() { # SOURCE…: what a value may be
    cat "$@" | tr '\n' ' ' | grep -oE \
        -e 'word\((\*[a-z]+|"[a-z ]+"), *\{[^}]*\}' \
        -e 'std::array (words|uses|sizes|eyeParts)\{"[^}]*\}' \
        -e 'const char\*> causes\{[^}]*\}' \
        -e '[wW]ords\[\] = \{[^}]*\}' \
        -e 'word != "[^"]*"' \
        -e '\{S::[A-Za-z0-9]*, "[a-z0-9-]*"' \
        -e '\{"[A-Za-z ]+", [0-9.e-]+, [0-9.e-]+, &' | sed -E 's/word\("[a-z ]+"/word(/' |
        grep -oE '"[^"]*"' | tr -d '"' | grep -vxE 'none|' | sort -u
}

section() { # HEADING: its blocks, without the explanations in words above and below
    awk -v heading="## $1" '$0 == heading { inside = 1; next } /^## / { inside = 0 }
        inside && /^```/ { block = !block; next } inside && block' app/help/grammar.md
}

agree() { # HEADING KEYS WORDS: lists of sources
    section "$1" > "$work/section"
    [ -s "$work/section" ] || { echo "grammar.md has no section $1"; failed=1; return; }
    for source in $2 $3; do # lists of names without blanks, some with *
        [ -f "$source" ] || { echo "$1 of grammar.md is held against $source, which is not there"; failed=1; return; }
    done
    : > "$work/said"
    if [ -n "$2" ]; then
        # shellcheck disable=SC2086
        case $1 in
        'Answers in JSON') json_keys_of $2 ;;
        *) keys_of $2 ;;
        esac > "$work/read"
        grep -oE '"[^"]+":' "$work/section" | tr -d '":' | sort -u > "$work/told"
        comm -23 "$work/read" "$work/told" | sed "s|^|grammar.md, $1: lacks the key: |" >> "$work/said"
        comm -13 "$work/read" "$work/told" | sed "s|^|grammar.md, $1: has a key that nothing reads: |" >> "$work/said"
        [ -s "$work/read" ] || echo "no key was found in the sources of $1" >> "$work/said"
    fi
    if [ -n "$3" ]; then
        # shellcheck disable=SC2086
        words_of $3 > "$work/words"
        grep -oE '"[^"]+"' "$work/section" | tr -d '"' | sort -u | comm -23 "$work/words" - |
            sed "s|^|grammar.md, $1: lacks the word: |" >> "$work/said"
        [ -s "$work/words" ] || echo "no word was found in the sources of $1" >> "$work/said"
    fi
    [ ! -s "$work/said" ] && return
    cat "$work/said"
    failed=1
}

text=inventory/text
agree 'stock.yaml and suppliers'"'"' lists' \
    "$text/stock_file.cpp $text/stock_line_reader.cpp $text/stock_power_reader.cpp $text/supplier_list.cpp" \
    "$text/stock_line_reader.cpp $text/stock_power_reader.cpp"
agree 'rules.yaml' "$text/rules_file.cpp $text/criterion_rule_reader.cpp core/fitting/criteria/table.cpp" ''
agree 'desk.yaml' "$text/camp_settings.cpp" "$text/camp_settings.cpp"
agree 'tolerances.yaml' "$text/tolerance_file.cpp $text/tolerance_rows.cpp" "$text/tolerance_file.cpp $text/tolerance_rows.cpp"
agree 'Tables by age' "$text/age_table_file.cpp" "$text/age_table_file.cpp"
agree 'Priors and limits of the audit' "$text/audit_file.cpp" "$text/audit_file.cpp core/auditing/slip*.cpp"
agree 'The prescription table' "$text/table_columns.cpp" "$text/table_cells.cpp"
agree 'The table of the public survey' "$text/survey_table.cpp" ''
agree 'Lists of lines and quantities, count sheets' "$text/quantity_list.cpp app/command/count.cpp" core/record/entry.cpp
agree 'Names of persons' "$text/names_list.cpp" ''
agree 'Repeated readings' "$text/readings_file.cpp" ''
agree 'The bench sheet of a lot' "$text/bench_sheet.cpp" "$text/bench_sheet.cpp"
agree 'What was read again' "$text/witness_table.cpp" ''
agree 'Lists of who gets what' "$text/told_list.cpp app/command/assign.cpp" ''
agree 'Order lists and packing lists' app/session/pack_lists.cpp ''
agree 'A map of columns' '' inventory/exchange/table_map.cpp
agree 'Lines of JSON' inventory/exchange/json_lines.cpp ''
agree 'Laboratory orders' inventory/exchange/order_labels.cpp ''
agree 'Tables that leave a camp' app/session/export_table.cpp ''
agree 'The report of the audit as CSV' 'app/session/audit_report*.cpp' ''
agree 'Answers in JSON' "app/command/match.cpp app/command/answers_json.cpp app/command/answers_details.cpp" ''
exit "$failed"
