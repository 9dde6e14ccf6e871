#!/bin/bash
# SPDX-License-Identifier: GPL-3.0-or-later
# What a screen reader is told, over the desktop's own bus (AT-SPI 2):   heard_window_test.sh LAPWRIGHT SAMPLE_SESSIONS
program=$1
samples=$2
here=$(dirname "$0")
. "$here/real_window.sh"
bus=
launcher=
finish_buses() {
    [ -n "$launcher" ] && kill "$launcher" 2>/dev/null
    [ -n "$bus" ] && kill "$bus" 2>/dev/null
    finish
}
trap finish_buses EXIT

dbus-daemon --session --nofork --print-address=3 3>"$home/bus" 2>"$home/errors" &
bus=$!
wait_for "no message bus" test -s "$home/bus"
DBUS_SESSION_BUS_ADDRESS=$(cat "$home/bus")
export DBUS_SESSION_BUS_ADDRESS
/usr/libexec/at-spi-bus-launcher --launch-immediately 2>"$home/launcher" &
launcher=$!
export QT_LINUX_ACCESSIBILITY_ALWAYS_ON=1

start_program "$samples/plover-saturday-2.csv" "$samples/dunlin-saturday-2.txt"
# Debian's own Python, which has the library of the bus.
timeout 120 /usr/bin/python3 "$here/heard_in_window.py" || fail "not all of the window is heard"
window=$(xdotool search --onlyvisible --pid "$pid" --class lapwright | head -1)
xdotool windowactivate --sync "$window"
quit
