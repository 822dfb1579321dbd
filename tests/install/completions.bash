#!/bin/bash
# SPDX-License-Identifier: GPL-3.0-or-later
# What the shells are offered is what the program takes. usage: completions.bash BUILD_FOLDER SOURCE_FOLDER
set -u
program=$1/bin/quarterstep
described=$1/app/install
camp=$2/samples/orrowen_coast
failed=0
checked=0
source "$described/quarterstep.bash"

wrong() {
    failed=$((failed + 1))
    echo "wrong: $*"
}

# offered WORD…: what bash would offer for the last word.
offered() {
    COMP_WORDS=(quarterstep "$@")
    COMP_CWORD=$#
    _quarterstep 2> /dev/null
    printf '%s\n' "${COMPREPLY[@]-}" | sort
}

# Options of a verb as its help lists them.
listed() { "$program" help "$1" | sed '/^# /,$d' | sed -n 's/^  \(--[a-z-]*\).*/\1/p' | sort; }

verbs=$("$program" help | sed -n '/^Verbs:/,/^Topics/s/^  \([a-z]*\) .*/\1/p')
[ "$(echo "$verbs" | wc -l)" -ge 15 ] || wrong "help lists too few verbs: $verbs"
for verb in $verbs; do
    checked=$((checked + 1))
    [ "$verb" = help ] || [ "$(offered "$verb" --)" = "$(listed "$verb")" ] || wrong "options of $verb"
    offered '' | grep -qx "$verb" || wrong "$verb is not offered first"
    grep -q "^    $verb) _arguments" "$described/_quarterstep" || wrong "zsh does not know $verb"
    grep -q "use_subcommand -a $verb " "$described/quarterstep.fish" || wrong "fish does not know $verb"
    grep -q "^\.SS \"quarterstep $verb " "$described/quarterstep.1" || wrong "the manual page does not know $verb"
    for option in $(listed "$verb"); do
        grep -qF -- "$option" "$described/quarterstep.1" 2> /dev/null ||
            grep -qF -- "${option//-/\\-}" "$described/quarterstep.1" || wrong "the manual page does not know $option"
    done
done

# accepts COMMAND…: the program does not call one of these words unknown (it may want more).
accepts() {
    checked=$((checked + 1))
    said=$("$program" "$@" 2>&1 < /dev/null)
    case $said in
    *"is nothing to record"* | *"is no step of"* | *"is not a paper"* | *"is not a cause"* | *"is not a form"* | *"is not a level"* | \
        *"is not a size"* | *"is not a role"* | *"[verb-unknown]"*) wrong "offered, but not taken: $*: ${said%%$'\n'*}" ;;
    esac
}
for kind in $(offered record ''); do accepts record "$kind" --camp "$camp" --dry-run --person 1 --line X; done
for step in $(offered order ''); do accepts order "$step" --camp "$camp" --dry-run; done
for paper in $(offered print ''); do accepts print "$paper" --stock "$camp/stock.yaml" --text; done
for cause in $(offered record written-off --cause ''); do
    accepts record written-off --camp "$camp" --dry-run --line N+200-62M-BK --cause "$cause"
done
for form in $(offered match --form ''); do accepts match --stock "$camp/stock.yaml" --form "$form" --explain 1 X "$camp/people.csv"; done
for level in $(offered export --level ''); do accepts export --camp "$camp" --level "$level"; done
for size in $(offered print --size ''); do accepts print count-sheet --stock "$camp/stock.yaml" --size "$size" --text; done
for role in $(offered print --role ''); do accepts print quick-card --stock "$camp/stock.yaml" --role "$role" --text; done
for word in $(offered help ''); do accepts help "$word"; done
# The checks above can fail: a word that is not offered is refused.
said=$("$program" record nonsense --camp "$camp" --dry-run 2>&1)
case $said in *"is nothing to record"*) ;; *) wrong "a refusal is no longer recognised: $said" ;; esac

for shell in zsh fish; do
    case $shell in zsh) file=_quarterstep ;; fish) file=quarterstep.fish ;; esac
    if command -v $shell > /dev/null; then
        $shell -n "$described/$file" || wrong "$shell cannot read its completion"
    else
        echo "1 skipped: no $shell to read its completion"
    fi
done
echo "$checked checked, $failed wrong"
[ "$failed" = 0 ]
