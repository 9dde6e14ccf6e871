#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Two sessions as nobody has seen them before:   walk_files.py SAMPLE_SESSIONS FOLDER

The drives are those of the sample sessions (invented, as these say); how they are written is drawn by hand from what
loggers do: one with decimal commas, semicolons, other words, other units and other columns first, one with tabs, a clock
in seconds of the day, speed in knots and words before the table.
"""
import csv
import pathlib
import sys


def table(path, separator, head_row):
    lines = path.read_text(encoding="utf-8").splitlines()[head_row:]
    return list(csv.reader(lines, delimiter=separator))


def comma(value, decimals):
    return f"{float(value):.{decimals}f}".replace(".", ",")


def write_hatch(samples, folder):
    head, *rows = table(samples / "plover-saturday-2.csv", ",", 0)
    at = {name.split(" [")[0]: i for i, name in enumerate(head)}
    out = ["Gaspedal_%;Geschwindigkeit_m/s;Breite;Länge;Querbeschl_m/s²;Zeit_ms;Drehzahl"]
    for row in rows:
        out.append(";".join([
            comma(row[at["Throttle"]], 1), comma(float(row[at["Speed"]]) / 3.6, 3), comma(row[at["Latitude"]], 7),
            comma(row[at["Longitude"]], 7), comma(float(row[at["Lateral acceleration"]]) * 9.80665, 2),
            str(round(1000 * float(row[at["Time"]]))), row[at["Engine speed"]]]))
    (folder / "lauf 3.txt").write_text("\n".join(out) + "\n", encoding="latin-1")


def write_coupe(samples, folder):
    path = samples / "dunlin-saturday-2.txt"
    lines = path.read_text(encoding="utf-8").splitlines()
    head, units, *rows = table(path, ";", next(i for i, line in enumerate(lines) if line.startswith("Clock;")))
    assert units[head.index("Ground speed")] == "mph"
    out = ["export of the box under the seat", "do not edit", "", "secs of day\tlat\tlon\tground speed (knots)"]
    for row in rows:
        hours, minutes, seconds = row[head.index("Clock")].split(":")
        moment_s = 3600 * int(hours) + 60 * int(minutes) + float(seconds)
        knots = float(row[head.index("Ground speed")]) * 1609.344 / 1852
        out.append(f"{moment_s:.2f}\t{row[head.index('Lat')]}\t{row[head.index('Lon')]}\t{knots:.2f}")
    (folder / "OUTING_B.tab").write_text("\r\n".join(out) + "\r\n", encoding="utf-8")


if __name__ == "__main__":
    samples, folder = map(pathlib.Path, sys.argv[1:3])
    write_hatch(samples, folder)
    write_coupe(samples, folder)
