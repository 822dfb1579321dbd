#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Installs the packages named in the files given, where they are missing. usage: install_packages.sh LIST…
# Exit 4 when something is missing and may not be installed from here; the one line to run is printed.
set -u
if ! command -v dpkg-query > /dev/null 2>&1; then
    echo "This is not a Debian system: make sure that what these packages hold is installed:" \
        $(cat "$@" | sed 's/#.*//') >&2
    exit 0
fi
missing=
for package in $(cat "$@" | sed 's/#.*//'); do
    status=$(dpkg-query -W -f='${db:Status-Status}' "$package" 2> /dev/null) || status=
    [ "$status" = installed ] || missing="$missing $package"
done
[ -z "$missing" ] && exit 0

if [ "$(id -u)" = 0 ]; then
    as=
elif command -v sudo > /dev/null 2>&1 && sudo -n true 2> /dev/null; then
    as=sudo
else
    echo "Some packages are missing. Run this once, then try again:" >&2
    echo "  sudo apt-get install --no-install-recommends$missing" >&2
    exit 4
fi
echo "Installing:$missing"
$as apt-get -qq update > /dev/null || echo "The package lists could not be brought up to date; trying all the same." >&2
if ! $as env DEBIAN_FRONTEND=noninteractive apt-get -qq -y install --no-install-recommends $missing > /dev/null; then
    echo "The packages could not be installed. Without a network, bring them on a disk; they are:$missing" >&2
    exit 4
fi
