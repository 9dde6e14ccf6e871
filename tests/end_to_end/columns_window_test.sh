#!/bin/bash
# SPDX-License-Identifier: GPL-3.0-or-later
# The column dialog by keyboard in a real window:   columns_window_test.sh LAPWRIGHT SAMPLE_SESSIONS
# A file whose speed is written in the wrong unit asks; the answer is read from the recipe that is kept, and the next
# start asks no more.
program=$1
samples=$2
. "$(dirname "$0")/real_window.sh"
recipes=$home/.local/share/lapwright/recipes

named() { xdotool search --onlyvisible --name "$1" >/dev/null 2>&1; }
not_named() { ! named "$1"; }
active_is() { [[ "$(xdotool getactivewindow getwindowname 2>/dev/null)" == "$1"* ]]; }
kept() { grep -q "$1" "$recipes"/*.json 2>/dev/null; }
key() {
    xdotool key --clearmodifiers "$@"
    sleep 0.3
}

leave() {
    wait_for "the window is not active" active_is "Lapwright"
    quit
}

sed '1s/Speed \[km\/h\]/Speed [mph]/' "$samples/plover-saturday-2.csv" >"$home/run.csv"

start_program "$home/run.csv"
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
leave

start_program "$home/run.csv"
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
leave
echo "columns are asked for and answered"
