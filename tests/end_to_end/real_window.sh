# SPDX-License-Identifier: GPL-3.0-or-later
# Sourced by the tests in a real window: a screen of their own, a window manager, a home that starts empty, and the words to
# wait and to fail.   program=$1 samples=$2 are set before.
set -u
home=$(mktemp -d)
mkdir -p -m 700 "$home/run"
export HOME=$home XDG_CONFIG_HOME=$home/config XDG_RUNTIME_DIR=$home/run DBUS_SESSION_BUS_ADDRESS=disabled:
export QT_QPA_PLATFORM=xcb LC_ALL=C.UTF-8
unset XDG_DATA_HOME XDG_STATE_HOME
screen=${screen:-1366x768}
pid=
server=
manager=

finish() {
    [ -n "$pid" ] && kill "$pid" 2>/dev/null
    [ -n "$manager" ] && kill "$manager" 2>/dev/null
    [ -n "$server" ] && kill "$server" 2>/dev/null
    wait 2>/dev/null
    rm -rf "$home"
}
trap finish EXIT

fail() {
    echo "FAILED: $1" >&2
    local kept
    for kept in errors server manager; do
        [ -s "$home/$kept" ] && sed "s/^/$kept: /" "$home/$kept" >&2
    done
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

# The server chooses a free number itself and writes it when it listens. It must not reset: by default it starts anew when
# its last client leaves, and whoever comes at that moment is turned away.
start_screen() {
    Xvfb -displayfd 3 -noreset -nolisten tcp -screen 0 "${screen}x24" 3>"$home/display" 2>"$home/server" &
    server=$!
    wait_for "no X server" test -s "$home/display"
    DISPLAY=:$(cat "$home/display")
    export DISPLAY
}

manager_runs() { xdotool get_num_desktops >/dev/null 2>&1; }

# A window that is mapped while the manager takes over may stay withdrawn: the manager first.
start_manager() {
    openbox 2>"$home/manager" &
    manager=$!
    wait_for "no window manager" manager_runs
}

start_program() {
    "$program" "$@" 2>"$home/errors" &
    pid=$!
}

gone() { ! kill -0 "$pid" 2>/dev/null; }

quit() {
    xdotool key --clearmodifiers ctrl+q
    wait_for "ctrl+q does not quit" gone
    wait "$pid"
    local status=$?
    pid=
    [ $status -eq 0 ] || fail "the program ended with status $status"
}

start_screen
start_manager
