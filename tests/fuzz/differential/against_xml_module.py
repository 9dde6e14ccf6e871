#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Seeded GPX tracks, read by the import and by Python's xml.etree: positions and heights must be the same doubles, times
the same to a microsecond.

usage: against_xml_module.py PRINT_CHANNELS SCRATCH_FOLDER
"""
import datetime
import math
import os
import random
import subprocess
import sys
import xml.etree.ElementTree as tree

SPACE = "{http://www.topografix.com/GPX/1/1}"


def write_track(path, seed):
    rng = random.Random(seed)
    start = datetime.datetime(2026, 5, 16, 10, 20, 3, tzinfo=datetime.timezone.utc)
    lines = ['<?xml version="1.0" encoding="UTF-8"?>',
             '<gpx version="1.1" creator="seeded &amp; written here" xmlns="http://www.topografix.com/GPX/1/1">',
             "<!-- <trkpt lat='1' lon='1'> in a comment is none -->", "<trk><name>a &lt; b</name><trkseg>"]
    for i in range(rng.randrange(3, 400)):
        moment = start + datetime.timedelta(milliseconds=100 * i)
        quote = rng.choice(["'", '"'])
        attributes = ["lat=%s%.*f%s" % (quote, rng.randrange(5, 12), rng.uniform(-89, 89), quote),
                      "lon=%s%.*f%s" % (quote, rng.randrange(5, 12), rng.uniform(-179, 179), quote)]
        rng.shuffle(attributes)
        children = ["<ele>%.*f</ele>" % (rng.randrange(0, 6), rng.uniform(-50, 900)),
                    "<time> %s </time>" % moment.isoformat(timespec="milliseconds").replace("+00:00", "Z")]
        rng.shuffle(children)
        lines.append("<trkpt %s>%s</trkpt>" % (" ".join(attributes), rng.choice(["", "\n  "]).join(children)))
    lines.append("</trkseg></trk></gpx>")
    with open(path, "w", encoding="utf-8") as file:
        file.write("\n".join(lines) + "\n")


def reference(path):
    values = {}
    start = None
    for i, point in enumerate(tree.parse(path).getroot().iter(SPACE + "trkpt")):
        text = point.find(SPACE + "time").text.strip().replace("Z", "+00:00")
        moment = datetime.datetime.fromisoformat(text).timestamp()
        start = moment if start is None else start
        values[(path, "latitude", i)] = (moment - start, float(point.get("lat")) * math.pi / 180.0)
        values[(path, "longitude", i)] = (moment - start, float(point.get("lon")) * math.pi / 180.0)
        values[(path, "altitude", i)] = (moment - start, float(point.find(SPACE + "ele").text))
    return values


def main():
    program, folder = sys.argv[1:3]
    os.makedirs(folder, exist_ok=True)
    paths = [os.path.join(folder, "track_%02d.gpx" % seed) for seed in range(40)]
    wanted = {}
    for seed, path in enumerate(paths):
        write_track(path, seed)
        wanted.update(reference(path))
    printed = subprocess.run([program] + paths, check=True, capture_output=True, text=True).stdout
    found = {}
    index = {}
    for line in printed.splitlines():
        path, name, _, time_s, value = line.split("\t")
        if name.startswith("speed"):
            continue
        index[(path, name)] = index.get((path, name), -1) + 1
        found[(path, name, index[(path, name)])] = (float(time_s), float(value))

    def differs(key):
        a, b = wanted.get(key), found.get(key)
        return a is None or b is None or a[1] != b[1] or abs(a[0] - b[0]) > 1e-6

    wrong = [key for key in wanted.keys() | found.keys() if differs(key)]
    for key in sorted(wrong)[:10]:
        print(key, "xml module:", wanted.get(key), "import:", found.get(key))
    print("%d values compared, %d differ" % (len(wanted), len(wrong)))
    return 1 if wrong or not wanted else 0


if __name__ == "__main__":
    sys.exit(main())
