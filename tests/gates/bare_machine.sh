#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# The two commands of README.md on a bare Debian 12, made for it and thrown away. Needs root and debootstrap.
# The packages come from the mirror this machine uses. QS_BARE names a folder to keep the bare system in.
set -eu
cd "$(dirname "$0")/../.."
[ "$(id -u)" = 0 ] || { echo "the bare machine needs root (chroot, mount)" >&2; exit 4; }
command -v debootstrap > /dev/null || { echo "the bare machine needs debootstrap" >&2; exit 4; }
bare=$(mktemp -d /tmp/quarterstep-bare.XXXXXX)
chmod 755 "$bare" # it becomes the root folder of a machine with other users
leave() {
    umount "$bare/proc" 2> /dev/null || true
    # Nothing is removed through a mount that would not come off.
    if grep -q " $bare/proc " /proc/mounts; then echo "$bare/proc is still mounted; $bare is left" >&2; else rm -rf "$bare"; fi
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
mount -t proc proc "$bare/proc"
mkdir "$bare/quarterstep"
git archive HEAD | tar -x -C "$bare/quarterstep"
echo "bare Debian 12: $(($(seconds) - begin)) s, $(megabytes) MB"

fetched=$(du -sm "$bare/var/cache/apt/archives" | cut -f 1)
for command in 'sh app/run' 'sh tests/run' 'sh tests/run'; do
    begin=$(seconds)
    before=$(megabytes)
    status=0
    chroot "$bare" /usr/bin/env -i HOME=/root PATH=/usr/sbin:/usr/bin:/sbin:/bin LC_ALL=C.UTF-8 \
        sh -c "cd /quarterstep && $command" > "$bare/said" 2>&1 || status=$?
    tail -n 12 "$bare/said"
    now=$(du -sm "$bare/var/cache/apt/archives" | cut -f 1)
    echo "$command: exit $status, $(($(seconds) - begin)) s, fetched $((now - fetched)) MB," \
        "disk grew by $(($(megabytes) - before)) MB (fetched archives and build included)"
    fetched=$now
    [ "$status" = 0 ] || { cat "$bare/said"; exit 1; }
done
echo "3 passed, 0 failed"
