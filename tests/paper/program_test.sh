#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# The program draws: pages of the right size, and refusals with their codes; the camp stays as it was.
# usage: program_test.sh QUARTERSTEP SOURCE_FOLDER
set -u
program=$1
work=$(mktemp -d) || exit 2
chmod 755 "$work"
trap 'chmod -R u+w "$work"; rm -rf "$work"' EXIT
cp -R "$2/tests/command/camp" "$work/camp"
cd "$work" || exit 2
failed=0
fail() { echo "$1"; failed=1; }
"$program" dispense --camp camp --person K-2 camp/people.csv > said 2>&1 || fail "nothing was handed over"
sums() { cat camp/* | cksum; }
before=$(sums)

refused() { # CODE EXIT ARGUMENTS…
    code=$1 exit=$2
    shift 2
    "$program" print "$@" > said 2>&1
    status=$?
    [ "$status" = "$exit" ] || fail "$*: ended with $status instead of $exit"
    grep -q "\[$code\]" said || { fail "$*: does not say $code"; cat said; }
}

"$program" print note --camp camp --person K-2 --output note.pdf camp/people.csv > said 2>&1 || fail "no PDF"
[ "$(head -c 5 note.pdf)" = "%PDF-" ] || fail "note.pdf is not a PDF"
"$program" print label --camp camp --size label --line N+200-62 --dpi 203 --output label.png > said 2>&1 || fail "no PNG"
# 63.5 mm x 38.1 mm at 203 dots an inch: 508 x 305 dots, in the header of the file.
size=$(od -An -tu1 -j16 -N8 label.png | awk '{ print $3 * 256 + $4 "x" $7 * 256 + $8 }')
[ "$size" = 508x305 ] || fail "label.png has $size dots"
if command -v pdftoppm > /dev/null; then
    pdftoppm -r 25.4 -gray note.pdf page # one dot a millimetre
    for page in page*.pgm; do
        case $(sed -n 2p "$page") in "105 148" | "105 149") ;; *) fail "$page is not A6" ;; esac
    done
else
    echo "SKIPPED: pdftoppm is not installed (package poppler-utils)"
fi
if command -v pdftoppm > /dev/null && command -v zbarimg > /dev/null; then
    "$program" print label --camp camp --output labels.pdf > said 2>&1 || fail "no sheet of labels"
    pdftoppm -r 300 -gray labels.pdf sheet
    lines=$(zbarimg -q sheet*.pgm 2> /dev/null | sort | tr '\n' ' ')
    expected="CODE-128:CASE CODE-128:D-100-62 CODE-128:F-M CODE-128:L-100 CODE-128:L-250 CODE-128:N+200-62 CODE-128:N+250-60 "
    [ "$lines" = "$expected" ] || fail "read back from the PDF: $lines"
else
    echo "SKIPPED: zbarimg or pdftoppm is not installed"
fi

mkdir closed
chmod 555 closed
if [ "$(id -u)" = 0 ]; then as="setpriv --reuid=65534 --regid=65534 --clear-groups"; else as=""; fi
if $as "$program" --version > said 2>&1; then
    $as "$program" print quick-card --role keeper --stock camp/stock.yaml --output closed/card.pdf > said 2>&1
    [ $? = 4 ] || { fail "a folder that cannot be written to is not refused with 4"; cat said; }
    [ -z "$(ls closed)" ] || fail "something was written into the closed folder"
else
    echo "SKIPPED: the program cannot be run as nobody here"
fi
mkdir -p card.pdf
refused file-unwritable 4 quick-card --role keeper --camp camp --output card.pdf
refused printer-missing 4 note --camp camp --person K-2 --printer no-such-printer camp/people.csv
refused label-too-small 3 label --camp camp --label-size 20x15 --output small.pdf
[ ! -e small.pdf ] || fail "a refused paper was written"

# A machine with fonts for Latin alone.
mkdir fonts
cat > fonts.conf << END
<?xml version="1.0"?><!DOCTYPE fontconfig SYSTEM "fonts.dtd">
<fontconfig><dir>/usr/share/fonts/truetype/dejavu</dir><cachedir>$work/fonts</cachedir></fontconfig>
END
FONTCONFIG_FILE=$work/fonts.conf
export FONTCONFIG_FILE
refused font-missing 4 note --camp camp --person K-2 --language hi --output hindi.pdf camp/people.csv
grep -q fonts-lohit-deva said || fail "the package of the font is not named"
unset FONTCONFIG_FILE

# The program alone, without the one that draws.
cp "$program" alone
./alone print note --camp camp --person K-2 --text camp/people.csv > said 2>&1 || fail "text needs the program that draws"
./alone print note --camp camp --person K-2 --output note.png camp/people.csv > said 2>&1
[ $? = 4 ] && grep -q 'paper-program-missing' said || fail "a missing program is not told"
[ "$(sums)" = "$before" ] || fail "printing changed the camp"
exit $failed
