#!/bin/bash
# SPDX-License-Identifier: GPL-3.0-or-later
# What the shell offers is what the program takes:   completion_test.sh LAPWRIGHT COMPLETION
set -u
program=$(realpath "$1")
. "$2"

offered() { # the words after the program; the last is to be completed
    COMP_WORDS=("$program" "$@")
    COMP_CWORD=$#
    COMPREPLY=()
    _lapwright
    printf '%s\n' "${COMPREPLY[@]}"
}
expect() { # WORD among what is offered for the rest
    local wanted=$1
    shift
    offered "$@" | grep -qx -- "$wanted" || {
        echo "FAILED: \"$wanted\" is not offered after: $*" >&2
        exit 1
    }
}
refuse() {
    local unwanted=$1
    shift
    ! offered "$@" | grep -qx -- "$unwanted" || {
        echo "FAILED: \"$unwanted\" is offered after: $*" >&2
        exit 1
    }
}

for command in laps compare causes sheet trial learn traces batch recipe video book; do
    expect "$command" ""
    expect "$command" "${command:0:2}"
    expect --help "$command" --h
done
expect learn le
refuse laps le
expect --also compare --al
expect --lap-b compare one.csv two.csv --lap
refuse --lap-b laps --lap
expect add book ""
refuse add ""
expect --changed trial --ch
cd "$(dirname "$program")" && expect "$(basename "$program")" compare "$(basename "$program")"
echo "the shell completes what the program takes"
