#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Every code of a finding, a flag or an error is listed in app/help/files.md. usage: codes_in_help.sh SOURCE_FOLDER
set -u
cd "$1" || exit 2
# Codes are the kebab-case texts of the program; these are other words of the same form.
others='^(fhir-alone|json-lines|pupillary-distance|refraction-record|data-absent-reason|ready-made|on-hand|on-trial|handed-over|entered-in-error|adult-near|adult-distance|school-guideline|as-written|survey-id|first-pairs|worst-sight|keep-levels|quarterstep-paper|quarterstep-dicom|roll-80|roll-58|(bin|quick|teacher|guardian|packing|count|audit|lab)-(label|card|note|list|sheet|order))$'
work=$(mktemp -d) || exit 2
trap 'rm -rf "$work"' EXIT
find core inventory app/session app/paper app/command \( -name '*.cpp' -o -name '*.hpp' \) -type f 2> /dev/null |
    tr '\n' '\0' | xargs -0 -r grep -hoE '"[a-z]+(-[a-z0-9]+)+"' | tr -d '"' | grep -Ev "$others" | sort -u > "$work/used"
grep -oE '`[a-z0-9-]+`' app/help/files.md | tr -d '`' | sort -u > "$work/listed"
missing=$(comm -23 "$work/used" "$work/listed")
[ -z "$missing" ] && exit 0
echo "not listed in app/help/files.md:" $missing
exit 1
