#!/bin/bash
# SPDX-License-Identifier: GPL-3.0-or-later
# The column dialog by keyboard in a real window:   columns_window_test.sh LAPWRIGHT SAMPLE_SESSIONS
# A file whose speed is written in the wrong unit asks; the answer is read from the recipe that is kept, and the next
# start asks no more.
set -u
program=$1
samples=$2
home=$(mktemp -d)
mkdir -p -m 700 "$home/run"
export HOME=$home XDG_CONFIG_HOME=$home/config XDG_RUNTIME_DIR=$home/run DBUS_SESSION_BUS_ADDRESS=disabled:
export QT_QPA_PLATFORM=xcb LC_ALL=C.UTF-8
unset XDG_DATA_HOME
recipes=$home/.local/share/lapwright/recipes
pid=
# Under load the X server is not always there yet.
for _ in $(seq 100); do
    xdotool getdisplaygeometry >/dev/null 2>&1 && break
    sleep 0.2
done
openbox &
manager=$!
# A window that is mapped while the manager takes over may stay withdrawn: the manager first.
for _ in $(seq 150); do
    xdotool get_num_desktops >/dev/null 2>&1 && break
    sleep 0.2
done

finish() {
    [ -n "$pid" ] && kill "$pid" 2>/dev/null
    kill "$manager" 2>/dev/null
    rm -rf "$home"
}
trap finish EXIT

fail() {
    echo "FAILED: $1" >&2
    [ -s "$home/errors" ] && cat "$home/errors" >&2
    exit 1
}

# wait_for SENTENCE COMMAND…: until the command succeeds, at most half a minute.
wait_for() {
    local sentence=$1
    shift
    for _ in $(seq 150); do
        "$@" && return 0
        sleep 0.2
    done
    fail "$sentence"
}

named() { xdotool search --onlyvisible --name "$1" >/dev/null 2>&1; }
not_named() { ! named "$1"; }
active_is() { [[ "$(xdotool getactivewindow getwindowname 2>/dev/null)" == "$1"* ]]; }
kept() { grep -q "$1" "$recipes"/*.json 2>/dev/null; }
gone() { ! kill -0 "$pid" 2>/dev/null; }
key() {
    xdotool key --clearmodifiers "$@"
    sleep 0.3
}

start() {
    "$program" "$@" 2>"$home/errors" &
    pid=$!
}

quit() {
    wait_for "the window is not active" active_is "Lapwright"
    xdotool key --clearmodifiers ctrl+q
    wait_for "ctrl+q does not quit" gone
    wait "$pid"
    pid=
}

sed '1s/Speed \[km\/h\]/Speed [mph]/' "$samples/plover-saturday-2.csv" >"$home/run.csv"

start "$home/run.csv"
wait_for "the doubtful file does not ask" active_is "Columns of run.csv"
# From the table to what the column is taken for, on to its unit, and km/h by its first letters.
key Tab
key Tab
xdotool type --delay 30 "km"
sleep 0.3
key Return
wait_for "the answer is not kept" kept '"unit": "km/h"'
kept '"unit": "mph"' && fail "the unit was not changed"
wait_for "the dialog stays open" not_named "Columns of run.csv"
quit

start "$home/run.csv"
wait_for "no window came" named "Lapwright"
sleep 5
named "Columns of" && fail "it asks again, though there is a recipe"
wait_for "the window is not active" active_is "Lapwright"
xdotool key --clearmodifiers i
wait_for "the key does not open the dialog" active_is "Columns of run.csv"
key Escape
wait_for "escape does not close the dialog" not_named "Columns of run.csv"
key ctrl+r
wait_for "the recipes are not listed" active_is "Import recipes"
# The list has the focus: rename, delete, close.
key F2
xdotool type --delay 30 "season"
key Return
wait_for "the recipe is not renamed" kept '"title": "season"'
key alt+d
sleep 1
kept "season" && fail "the recipe is not deleted"
key Escape
quit
echo "columns are asked for and answered"
