#!/bin/bash
# SPDX-License-Identifier: GPL-3.0-or-later
# The samples with their videos in a real window, by keyboard:   video_window_test.sh LAPWRIGHT SAMPLE_SESSIONS
# What the window has done is read from the book (where the videos lie and how they stand), from the screen's picture, from
# the sheet that it writes, and from the exit status.
program=$1
samples=$2
. "$(dirname "$0")/real_window.sh"
book=$home/.local/share/lapwright/book.sqlite
cp "$samples"/plover-saturday-2.* "$samples"/dunlin-saturday-2.* "$home"

named() { [[ "$(xdotool getactivewindow getwindowname 2>/dev/null)" == *"$1"* ]]; }
picture() { xdotool sync 2>/dev/null; sleep 0.6; import -window root -depth 8 rgb:- | sha256sum; }
key() { xdotool key --clearmodifiers "$@"; sleep 0.3; }
changes_picture() { # SENTENCE COMMAND…
    local sentence=$1 before after
    shift
    before=$(picture)
    "$@"
    after=$(picture)
    [ "$before" != "$after" ] || fail "$sentence"
}
steps() { # how many videos the book keeps in step by their sound
    python3 - "$book" <<'EOF'
import sqlite3, sys
try:
    rows = sqlite3.connect(f"file:{sys.argv[1]}?mode=ro", uri=True).execute(
        "SELECT count(*) FROM video_step JOIN video_file USING (session_id) WHERE method LIKE 'sound%' AND path LIKE '%.mp4'")
    print(rows.fetchone()[0])
except sqlite3.Error:
    print(0)
EOF
}
both_in_step() { [ "$(steps)" = 2 ]; }

start_program "$home/plover-saturday-2.csv" "$home/dunlin-saturday-2.txt"
wait_for "the two files are not compared" named " against "
for _ in 1 2 3 4 5; do both_in_step || sleep 10; done # the picture is asked too, which takes its time on a busy machine
wait_for "the videos beside the recordings are not put in step" both_in_step
key Home
for _ in 1 2 3 4; do key shift+Right; done
sleep 2
changes_picture "a frame on changes nothing" key Next
changes_picture "a frame back changes nothing" key Prior
changes_picture "space plays nothing" key space
key space
sleep 1
before=$(picture)
[ "$before" = "$(picture)" ] || fail "it does not pause"
changes_picture "y does not close the videos" key y
changes_picture "y does not show them again" key y

# A video that vanishes while it is open costs a sentence at most.
mv "$home/dunlin-saturday-2.mp4" "$home/gone"
for _ in 1 2 3; do key shift+Right; done
gone && fail "the program ended with its video"
mv "$home/gone" "$home/dunlin-saturday-2.mp4"

# The page of stills, and the next start knows the videos.
changes_picture "shift+y puts no stills on the sheet" key ctrl+4 shift+y
quit
start_program "$home/plover-saturday-2.csv" "$home/dunlin-saturday-2.txt"
wait_for "the two files are not compared again" named " against "
sleep 3
changes_picture "the next start shows no videos" key y
quit
echo "the videos are shown, played and kept"
