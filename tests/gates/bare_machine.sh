#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# The two commands of README.md on a bare Debian 12, made for it and thrown away; then the package made there, installed
# on a second bare one. Needs root and debootstrap.
# The packages come from the mirror this machine uses. QS_BARE names a folder to keep the bare system in.
set -eu
cd "$(dirname "$0")/../.."
[ "$(id -u)" = 0 ] || { echo "the bare machine needs root (chroot, mount)" >&2; exit 4; }
command -v debootstrap > /dev/null || { echo "the bare machine needs debootstrap" >&2; exit 4; }
bare=$(mktemp -d /tmp/quarterstep-bare.XXXXXX)
chmod 755 "$bare" # it becomes the root folder of a machine with other users
second=$bare.second
leave() {
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
megabytes() { du -sxm "$bare" | cut -f 1; }

begin=$(seconds)
debootstrap --variant=minbase bookworm "$bare" "${mirror:-http://deb.debian.org/debian}" > "$bare.log" 2>&1 ||
    { tail -n 5 "$bare.log"; rm -f "$bare.log"; exit 1; }
rm -f "$bare.log"
mkdir -p "$bare/etc/apt/apt.conf.d"
for file in $(grep -liE 'proxy|verify' /etc/apt/apt.conf.d/* 2> /dev/null); do cp "$file" "$bare/etc/apt/apt.conf.d/"; done
# Fetched archives stay, so that they can be counted.
echo 'Binary::apt::APT::Keep-Downloaded-Packages "true"; APT::Keep-Downloaded-Packages "true";' \
    > "$bare/etc/apt/apt.conf.d/90keep"
cp /etc/resolv.conf "$bare/etc/" 2> /dev/null || true
cp -a "$bare" "$second"
mount -t proc proc "$bare/proc"
mount -t proc proc "$second/proc"
mkdir "$bare/quarterstep"
git archive HEAD | tar -x -C "$bare/quarterstep"
echo "bare Debian 12: $(($(seconds) - begin)) s, $(megabytes) MB"

# on MACHINE COMMAND
on() {
    chroot "$1" /usr/bin/env -i HOME=/root PATH=/usr/sbin:/usr/bin:/sbin:/bin LC_ALL=C.UTF-8 DEBIAN_FRONTEND=noninteractive sh -c "$2"
}

# The package made on the first machine, on the second: installed with what it depends on, and the sample's day.
package_works() {
    begin=$(seconds)
    on "$bare" 'cd /quarterstep && sh app/run package' > "$bare/said" 2>&1 || { cat "$bare/said"; return 1; }
    cp "$bare"/quarterstep/build/package/quarterstep_*.deb "$second/"
    before=$(du -sxm "$second" | cut -f 1)
    on "$second" 'apt-get -qq update && apt-get -qq -y install --no-install-recommends /quarterstep_*.deb' > "$bare/said" 2>&1 ||
        { cat "$bare/said"; return 1; }
    echo "package made and installed: $(($(seconds) - begin)) s, disk grew by $(($(du -sxm "$second" | cut -f 1) - before)) MB"
    on "$second" 'set -e
        cp -R /usr/share/quarterstep/samples/orrowen_coast /root/camp
        quarterstep dispense --camp /root/camp /root/camp/people.csv > /root/day || [ $? = 1 ]
        tail -n 3 /root/day
        quarterstep stock --camp /root/camp --check
        quarterstep print count-sheet --camp /root/camp --output /root/sheet.pdf
        quarterstep-desk --screenshot /root/desk.png /root/camp
        [ -s /root/sheet.pdf ] && [ -s /root/desk.png ]'
}

fetched=$(du -sm "$bare/var/cache/apt/archives" | cut -f 1)
for command in 'sh app/run' 'sh tests/run' 'sh tests/run'; do
    begin=$(seconds)
    before=$(megabytes)
    status=0
    on "$bare" "cd /quarterstep && $command" > "$bare/said" 2>&1 || status=$?
    tail -n 12 "$bare/said"
    now=$(du -sm "$bare/var/cache/apt/archives" | cut -f 1)
    echo "$command: exit $status, $(($(seconds) - begin)) s, fetched $((now - fetched)) MB," \
        "disk grew by $(($(megabytes) - before)) MB (fetched archives and build included)"
    fetched=$now
    [ "$status" = 0 ] || { cat "$bare/said"; exit 1; }
done
package_works
echo "4 passed, 0 failed"
