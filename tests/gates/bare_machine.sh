#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# The two commands of README.md on a bare Debian 12, made for it and thrown away; then the package made there, installed
# on a second bare one and used there. Needs root and debootstrap. The packages come from the mirror this machine uses.
# Each step tells how long it took; one that fails is told in full, and nothing comes after it.
# Exit: 0 all passed, 1 a step failed, 4 no root or no debootstrap.
set -eu
cd "$(dirname "$0")/../.."
[ "$(id -u)" = 0 ] || { echo "the bare machine needs root (chroot, mount)" >&2; exit 4; }
command -v debootstrap > /dev/null || { echo "the bare machine needs debootstrap" >&2; exit 4; }
bare=$(mktemp -d /tmp/quarterstep-bare.XXXXXX)
chmod 755 "$bare" # it becomes the root folder of a machine with other users
second=$bare.second
said=$(mktemp)
leave() {
    rm -f "$said"
    for machine in "$bare" "$second"; do
        umount "$machine/proc" 2> /dev/null || true
        # Nothing is removed through a mount that would not come off.
        if grep -q " $machine/proc " /proc/mounts; then
            echo "$machine/proc is still mounted; $machine is left" >&2
        else
            rm -rf "$machine"
        fi
    done
}
trap leave EXIT
trap 'exit 130' INT TERM

mirror=$(sed -n 's/^URIs:[[:space:]]*\([^ ]*\).*/\1/p; s/^deb \(\[[^]]*\] \)\{0,1\}\([^ ]*\).*/\2/p' \
    /etc/apt/sources.list.d/debian.sources /etc/apt/sources.list 2> /dev/null | head -n 1)
seconds() { date +%s; }
megabytes() { du -sxm "$1" | cut -f 1; }
fetched() { du -sm "$1/var/cache/apt/archives" | cut -f 1; }
passed=0

begin=$(seconds)
debootstrap --variant=minbase bookworm "$bare" "${mirror:-http://deb.debian.org/debian}" > "$bare.log" 2>&1 ||
    { tail -n 5 "$bare.log"; rm -f "$bare.log"; echo "FAILED  bare Debian 12" >&2; exit 1; }
rm -f "$bare.log"
mkdir -p "$bare/etc/apt/apt.conf.d"
grep -liE 'proxy|verify' /etc/apt/apt.conf.d/* 2> /dev/null | while IFS= read -r file; do cp "$file" "$bare/etc/apt/apt.conf.d/"; done
# Fetched archives stay, so that they can be counted.
echo 'Binary::apt::APT::Keep-Downloaded-Packages "true"; APT::Keep-Downloaded-Packages "true";' \
    > "$bare/etc/apt/apt.conf.d/90keep"
cp /etc/resolv.conf "$bare/etc/" 2> /dev/null || true
cp -a "$bare" "$second"
mount -t proc proc "$bare/proc"
mount -t proc proc "$second/proc"
mkdir "$bare/quarterstep"
git archive HEAD | tar -x -C "$bare/quarterstep"
echo "made    bare Debian 12, twice: $(($(seconds) - begin)) s, $(megabytes "$bare") MB each"

# on MACHINE COMMAND
on() {
    chroot "$1" /usr/bin/env -i HOME=/root PATH=/usr/sbin:/usr/bin:/sbin:/bin LC_ALL=C.UTF-8 DEBIAN_FRONTEND=noninteractive sh -c "$2"
}

# step NAME MACHINE LINES COMMAND: runs it there and shows the last LINES of what it says.
step() {
    begin=$(seconds)
    before=$(megabytes "$2")
    had=$(fetched "$2")
    status=0
    on "$2" "$4" > "$said" 2>&1 || status=$?
    took=$(($(seconds) - begin))
    if [ "$status" != 0 ]; then
        cat "$said"
        echo "FAILED  $1: exit $status after $took s; $passed passed before it, what comes after was not run" >&2
        exit 1
    fi
    [ "$3" = 0 ] || tail -n "$3" "$said"
    passed=$((passed + 1))
    echo "passed  $1: $took s, fetched $(($(fetched "$2") - had)) MB, disk grew by $(($(megabytes "$2") - before)) MB"
}

step 'sh app/run' "$bare" 12 'cd /quarterstep && sh app/run'
step 'sh tests/run' "$bare" 12 'cd /quarterstep && sh tests/run'
step 'sh tests/run, a second time' "$bare" 3 'cd /quarterstep && sh tests/run'
step 'sh app/run package' "$bare" 1 'cd /quarterstep && sh app/run package'
cp "$bare"/quarterstep/build/package/quarterstep_*.deb "$second/"
step 'apt-get install ./quarterstep_*.deb' "$second" 0 \
    'apt-get -qq update && apt-get -qq -y install --no-install-recommends /quarterstep_*.deb'
step 'the sample day with the package' "$second" 4 'set -e
    cp -R /usr/share/quarterstep/samples/orrowen_coast /root/camp
    quarterstep dispense --camp /root/camp /root/camp/people.csv || [ $? = 1 ] # 1: somebody was not served
    quarterstep stock --camp /root/camp --check > /root/checked
    tail -n 3 /root/checked'
step 'paper and window with the package' "$second" 0 'set -e
    quarterstep print count-sheet --camp /root/camp --output /root/sheet.pdf
    quarterstep-desk --screenshot /root/desk.png /root/camp
    [ -s /root/sheet.pdf ] && [ -s /root/desk.png ]'
echo "$passed passed, 0 failed"
