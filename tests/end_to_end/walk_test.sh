#!/bin/bash
# SPDX-License-Identifier: GPL-3.0-or-later
# The half hour between two sessions, in a real window, by keyboard:   walk_test.sh LAPWRIGHT SAMPLE_SESSIONS [PICTURES]
# Two files that nobody has seen before are opened, compared, named, noted on, given their setups and explained; the
# sheet is saved, and everything is found again in the book.  An action is a key, or words typed into one field.  It
# prints the actions and seconds that each step took; with PICTURES a picture of each step is kept there.  WALK_SCREEN
# (1366x768) and WALK_SCALE (1) are the screen.  At the end it prints how long the window took to its first reactions,
# as the program's own log has them: from a key or click to the end of the next painting, and the same for what moves the
# cursor or zooms (bars: 100 ms and 16 ms, on a machine that does nothing else; printed here, not demanded).
# Bars: from two unknown files to the answer at most 6 actions, to the sheet with names, setups and a note at most 25.
program=$1
samples=$2
pictures=${3:-}
screen=${WALK_SCREEN:-1366x768}
export QT_SCALE_FACTOR=${WALK_SCALE:-1}
here=$(dirname "$0")
. "$here/real_window.sh"
files=$home/card
mkdir -p "$files"
[ -n "$pictures" ] && mkdir -p "$pictures"
book=$home/.local/share/lapwright/book.sqlite
most_to_the_answer=6
most_to_the_sheet=25

window_id() { xdotool search --onlyvisible --pid "$pid" --class lapwright 2>/dev/null | head -1; }
has_window() { window=$(window_id) && [ -n "$window" ]; }
title_has() { [[ "$(xdotool getwindowname "$window" 2>/dev/null)" == *"$1"* ]]; }
active_is() { [[ "$(xdotool getactivewindow getwindowname 2>/dev/null)" == *"$1"* ]]; }
inactive() { ! active_is "$1"; }
book_has() { lapwright_book list 2>/dev/null | grep -q "$1"; }
lapwright_book() { "$program" book "$@" --book "$book"; }

sheet_is_there() { sheet=$(find "$home" -name '*.pdf' -size +0 | head -1) && [ -n "$sheet" ]; }

actions=0
began_s=0
steps=()
now_s() { date +%s.%N; }
key() {
    actions=$((actions + 1))
    xdotool key --clearmodifiers "$@"
    sleep 0.2
}
words() {
    actions=$((actions + 1))
    xdotool type --delay 5 "$1"
    sleep 0.2
}
begin() { began_s=$(now_s); }
done_with() { # what was done: its actions so far and its seconds, with a picture
    local seconds
    seconds=$(awk "BEGIN { print $(now_s) - $began_s }")
    steps+=("$(printf '%-42s %3d actions so far  %5.1f s' "$1" "$actions" "$seconds")")
    [ -n "$pictures" ] && { sleep 0.5; import -window root "$pictures/$(printf '%02d' ${#steps[@]}) ${1// /-}.png"; }
    begin
}

python3 "$here/walk_files.py" "$samples" "$files" || fail "the two files are not written"

# The folder from which files were opened last, as on any day but the first.
mkdir -p "$home/config/lapwright"
printf '[General]\nfolder=%s\n' "$files" >"$home/config/lapwright/lapwright.conf"
start_program
wait_for "no window came" has_window
xdotool windowactivate --sync "$window"
xdotool windowsize --sync "$window" "${screen%x*}" $((${screen#*x} - 28))

begin
key ctrl+o
wait_for "no files are asked for" active_is "Open logger files"
words '"lauf 3.txt" "OUTING_B.tab"'
key Return
# One of them says "secs of day", which may be another clock: it is asked about, and taken as it is.
wait_for "the doubtful file does not ask" active_is "Columns of OUTING_B.tab"
key Return
wait_for "the question stays" inactive "Columns of"
wait_for "the first is not in the book" book_has "lauf 3.txt"
wait_for "the second is not in the book" book_has OUTING_B.tab
sleep 1 # it is in the book from before the question; read again it takes a moment
key Return
wait_for "they are not compared" title_has " against "
done_with "the answer"
to_the_answer=$actions

# The cursor by pointer and by key, and zooming: not counted as actions, for nothing has to be done so to go on.
across=$((${screen%x*} / 2))
down=$((${screen#*x} / 3))
for step in $(seq 60); do
    xdotool mousemove $((across - 180 + 6 * step)) "$down"
    sleep 0.03
done
for turn in 4 4 4 5 5 5; do
    xdotool keydown ctrl click $turn keyup ctrl
    sleep 0.1
done
for pressed in Right Right Right Left Left shift+Right plus plus minus minus; do
    xdotool key --clearmodifiers $pressed
    sleep 0.1
done
done_with "cursor and zoom"

key ctrl+1
key d
words "Imke Vance"
key Tab
words "grey hatch"
key Return
wait_for "the first name is not kept" book_has "Imke Vance"
key Right
key d
words "Rolf Adair"
key Tab
words "black saloon"
key Return
wait_for "the second name is not kept" book_has "Rolf Adair"
done_with "names"

key m
words "turn in later" # on the lap that has the focus
key Return
done_with "a note"

key ctrl+e
wait_for "no setups are asked for" active_is "Setup"
words "1310"
key Return
wait_for "the setup stays open" inactive "Setup"
done_with "a setup"

key ctrl+s
wait_for "no file is asked for" active_is "heet"
key Return # under the name that is proposed
wait_for "no sheet is written" sheet_is_there
done_with "the sheet"
to_the_sheet=$actions
if command -v pdftotext >/dev/null; then
    for said in "Imke Vance" "Rolf Adair" "turn in later"; do
        pdftotext "$sheet" - | tr '\n' ' ' | grep -q "$said" || fail "the sheet does not say: $said"
    done
fi

key ctrl+3
sleep 3
done_with "the causes"
key ctrl+p
wait_for "nothing is printed" active_is "rint"
done_with "the printer"
key Escape

key ctrl+1
key l
sleep 1
words "Imke"
done_with "the book"
key Escape
key ctrl+g
wait_for "nothing is looked for" active_is "Go to"
words "swap"
done_with "found again"
key Escape
quit

printf '%s\n' "${steps[@]}"
log=$home/.local/state/lapwright/lapwright.log
[ -s "$log" ] || fail "the program keeps no log"
echo "on a screen of $screen, scale $QT_SCALE_FACTOR:"
grep -h "a reaction was slow\|reactions to\|cursor and zoom\|did not answer" "$log" | sed 's/^[^ ]* /  /'
for private in "$home" "Imke" "lauf" "OUTING" "turn in later"; do
    grep -q "$private" "$log" && fail "the log says: $private"
done
echo "to the answer: $to_the_answer actions (bar $most_to_the_answer); to the sheet: $to_the_sheet (bar $most_to_the_sheet)"
[ "$to_the_answer" -le $most_to_the_answer ] || fail "$to_the_answer actions to the answer"
[ "$to_the_sheet" -le $most_to_the_sheet ] || fail "$to_the_sheet actions to the sheet"
