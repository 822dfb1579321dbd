#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# The top level holds the five rooms, four files, dot files and build folders. usage: top_level.sh SOURCE_FOLDER
set -u
cd "$1" || exit 2
odd=$(ls | grep -Ev '^(CMakeLists\.txt|README\.md|DEVELOPERS\.md|LICENSE|app|core|inventory|tests|samples|build|build-.*)$')
[ -z "$odd" ] && exit 0
echo "the top level holds what belongs in a room:" $odd
exit 1
