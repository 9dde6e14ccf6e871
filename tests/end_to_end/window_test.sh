#!/bin/bash
# SPDX-License-Identifier: GPL-3.0-or-later
# The main job by mouse and keyboard in a real window:   window_test.sh LAPWRIGHT SAMPLE_SESSIONS
# What the window has done is read from its title (which names the compared laps), from the settings file, from the
# screen's picture before and after, and from the exit status.
program=$1
samples=$2
. "$(dirname "$0")/real_window.sh"
settings=$home/config/lapwright/lapwright.conf
# Without the videos, which have a test of their own.
mkdir "$home/samples"
find "$samples" -type f ! -name "*.mp4" -exec cp {} "$home/samples" \;
samples=$home/samples

window_id() { xdotool search --onlyvisible --pid "$pid" --class lapwright 2>/dev/null | head -1; }
title() { xdotool getwindowname "$window" 2>/dev/null; }
title_has() { [[ "$(title)" == *"$1"* ]]; }
title_starts() { [[ "$(title)" == "$1"* ]]; }
has_window() { window=$(window_id) && [ -n "$window" ]; }
setting_is() { grep -qx "$1" "$settings" 2>/dev/null; }
picture() { xdotool sync 2>/dev/null; sleep 0.4; import -window "$window" -depth 8 rgb:- | sha256sum; }
key() { xdotool key --window "$window" --clearmodifiers "$@"; sleep 0.15; }

start() {
    start_program "$@"
    wait_for "no window came" has_window
    xdotool windowactivate --sync "$window"
    xdotool windowsize --sync "$window" 1300 700
}

changes_picture() { # SENTENCE COMMAND…
    local sentence=$1 before after
    shift
    before=$(picture)
    "$@"
    after=$(picture)
    [ "$before" != "$after" ] || fail "$sentence"
}

start "$samples/ternbank.track.json" "$samples/plover-saturday-2.csv" "$samples/dunlin-saturday-2.txt"
wait_for "the two files are not compared" title_has " against Odran Pell lap "
xdotool key --clearmodifiers Home
changes_picture "the arrow key moves no cursor" xdotool key --clearmodifiers shift+Right
changes_picture "plus does not zoom" xdotool key --clearmodifiers plus
xdotool mousemove --window "$window" 400 300
changes_picture "the wheel does not zoom" xdotool click 4
changes_picture "the pointer moves no cursor" xdotool mousemove --window "$window" 480 300
changes_picture "a click chooses no segment" xdotool click 1
changes_picture "w does not show the whole lap" xdotool key --clearmodifiers w
changes_picture "n does not choose the next segment" xdotool key --clearmodifiers n
changes_picture "a click into the table chooses no row" xdotool mousemove --window "$window" 900 260 click 1
changes_picture "the arrow key moves no row" xdotool key --clearmodifiers Down
changes_picture "plus in the table does not zoom" xdotool key --clearmodifiers plus
changes_picture "j does not join corners with straights" xdotool key --clearmodifiers j
xdotool key --clearmodifiers j

xdotool key --clearmodifiers ctrl+u
wait_for "the units are not kept" setting_is "units=imperial"
xdotool key --clearmodifiers x
wait_for "x does not swap" title_starts "Odran Pell lap "

changes_picture "ctrl+1 shows no sessions" xdotool key --clearmodifiers ctrl+1
# Into the first session's laps, one lap up, make it B, compare.
xdotool key --clearmodifiers Tab Tab
for _ in 1 2 3 4 5 6; do xdotool key --clearmodifiers Tab; done
quit
setting_is "b_lap=6" || fail "the pairing is not kept"

start
wait_for "the last pairing does not come back" title_starts "Odran Pell lap "
quit

# A file that is no session: a sentence, and the window stays in use.
printf 'only\nwords\n' >"$home/words.csv"
start "$home/words.csv" "$samples/plover-saturday-2.csv"
sleep 3
has_window || fail "a bad file closes the window"
changes_picture "the sentence is not shown, or escape does not dismiss it" xdotool key --clearmodifiers Escape
quit
echo "the window does the main job"
