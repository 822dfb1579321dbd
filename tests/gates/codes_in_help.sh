#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Every code of a finding, a flag or an error is listed in app/help/files.md. usage: codes_in_help.sh SOURCE_FOLDER
set -u
cd "$1" || exit 2
# Codes are the kebab-case texts of the program; these are other words of the same form.
others='^(ready-made|on-hand|on-trial|handed-over|entered-in-error|adult-near|adult-distance|school-guideline|survey-id)$'
missing=$(find core inventory app/session app/command \( -name '*.cpp' -o -name '*.hpp' \) -type f 2> /dev/null | sort |
    tr '\n' '\0' | xargs -0 -r grep -hoE '"[a-z]+(-[a-z0-9]+)+"' | tr -d '"' | sort -u | grep -Ev "$others" |
    while IFS= read -r code; do grep -qF "\`$code\`" app/help/files.md || echo "$code"; done)
[ -z "$missing" ] && exit 0
echo "not listed in app/help/files.md:" $missing
exit 1
