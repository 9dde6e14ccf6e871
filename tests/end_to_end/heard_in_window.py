# SPDX-License-Identifier: GPL-3.0-or-later
"""Reads the window as a screen reader does, by AT-SPI 2 over D-Bus: everything that can have the focus has a name, every
plot says its figures in words, and the comparison can be told from what is heard alone."""
import re
import sys
import time

import gi

gi.require_version("Atspi", "2.0")
from gi.repository import Atspi  # noqa: E402

failures = []


def expect(holds, sentence):
    if not holds:
        failures.append(sentence)


def every(node):
    yield node
    for i in range(node.get_child_count()):
        child = node.get_child_at_index(i)
        if child is not None:
            yield from every(child)


def has(node, state):
    return node.get_state_set().contains(state)


def program():
    desktop = Atspi.get_desktop(0)
    for i in range(desktop.get_child_count()):
        if (found := desktop.get_child_at_index(i)) and found.get_name().lower() == "lapwright":
            return found
    return None


def compared_window():
    """The window once it names two laps."""
    for _ in range(300):
        if running := program():
            for i in range(running.get_child_count()):
                window = running.get_child_at_index(i)
                if window and " against " in window.get_name():
                    return window
        time.sleep(0.2)
    sys.exit("no window that compares two laps is heard")


# Plots over distance are told when they have been drawn.
def shown_parts(window):
    for _ in range(50):
        parts = [node for node in every(window) if has(node, Atspi.StateType.SHOWING)]
        if any(node.get_name() == "Plots over distance" for node in parts):
            return parts
        time.sleep(0.2)
    return parts


parts = shown_parts(compared_window())
for node in parts:
    # Cells are told by their row's first; a list's entries stand in their field.
    if has(node, Atspi.StateType.FOCUSABLE) and node.get_role_name() != "table cell":
        expect(node.get_name().strip(), f"a {node.get_role_name()} has no name (it says '{node.get_description()}')")

plots = {node.get_name(): node.get_description() for node in parts if len(node.get_description()) > 20}
for name in ("Plots over distance", "Map of the track, coloured by who wins time", "Segment times of all clean laps"):
    expect(re.search(r"\d", plots.get(name, "")), f"'{name}' says no figure: {plots.get(name)}")

heard = " ".join(node.get_name() for node in parts)
expect(re.search(r"A ahead by \d\.\d+ s", heard), "who is ahead is not heard")
expect("Most of it is Corner " in heard, "where it was won is not heard")
rows = re.findall(r"(?:Corner \d|\d to \d|Start straight), (?:[AB]\s\d\.\d+|level|0\.\d+)", heard)
expect(len(rows) >= 5, f"rows that are heard with who won them: {rows}")
if failures:
    sys.exit("\n".join(failures))
print(f"{len(parts)} parts are heard")
