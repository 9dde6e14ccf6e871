#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Seeded tables, read by the import and by Python's csv module with float(): every value must be the same double.

usage: against_csv_module.py PRINT_CHANNELS SCRATCH_FOLDER
"""
import csv
import os
import random
import subprocess
import sys


def number(rng):
    kind = rng.randrange(6)
    if kind == 0:
        return str(rng.randrange(-10**6, 10**6))
    if kind == 1:
        return "%.*f" % (rng.randrange(1, 18), rng.uniform(-1000, 1000))
    if kind == 2:
        return "%.*e" % (rng.randrange(0, 17), rng.uniform(-1, 1) * 10 ** rng.randrange(-20, 12))
    if kind == 3:
        return repr(rng.uniform(-1e6, 1e6))
    if kind == 4:
        return "-0." + "%05d" % rng.randrange(10**5)
    return ""


def text(rng):
    return rng.choice(["plain", "with, comma", 'with "quotes"', "two\nlines", "semi;colon", "", "x"])


def write_table(path, seed):
    rng = random.Random(seed)
    delimiter = rng.choice([",", ";", "\t", "|"])
    quoting = rng.choice([csv.QUOTE_MINIMAL, csv.QUOTE_ALL])
    line_end = rng.choice(["\n", "\r\n"])
    columns = rng.randrange(1, 12)
    # Some with free text in the last column, which brings line ends inside quotes.
    with_text = rng.random() < 0.4
    header = ["time (s)"] + ["signal %d kind" % i for i in range(columns)] + (["remark"] if with_text else [])
    with open(path, "w", newline="", encoding="utf-8") as file:
        writer = csv.writer(file, delimiter=delimiter, quoting=quoting, lineterminator=line_end)
        writer.writerow(header)
        for row in range(rng.randrange(50, 1500)):
            # The first rows are full, so that the columns are known for numbers.
            cells = [number(rng) if row > 40 else "%.4f" % rng.uniform(-9, 9) for _ in range(columns)]
            extra = [text(rng) if row > 40 else "plain"] if with_text else []
            writer.writerow(["%.3f" % (row * 0.02)] + cells + extra)
    return delimiter


def reference(path, delimiter):
    values = {}
    with open(path, newline="", encoding="utf-8") as file:
        reader = csv.reader(file, delimiter=delimiter)
        header = next(reader)
        before = reader.line_num
        for row in reader:
            line, before = before + 1, reader.line_num
            for name, cell in zip(header[1:], row[1:]):
                if cell and name != "remark":
                    values[(path, name, line)] = (float(row[0]), float(cell))
    return values


def main():
    program, folder = sys.argv[1:3]
    os.makedirs(folder, exist_ok=True)
    wanted = {}
    paths = []
    for seed in range(60):
        path = os.path.join(folder, "table_%02d.csv" % seed)
        wanted.update(reference(path, write_table(path, seed)))
        paths.append(path)
    printed = subprocess.run([program] + paths, check=True, capture_output=True, text=True).stdout
    found = {}
    for line in printed.splitlines():
        path, name, number_of_line, time_s, value = line.split("\t")
        found[(path, name, int(number_of_line))] = (float(time_s), float(value))
    wrong = [key for key in wanted.keys() | found.keys() if wanted.get(key) != found.get(key)]
    for key in sorted(wrong)[:10]:
        print(key, "csv module:", wanted.get(key), "import:", found.get(key))
    print("%d values compared, %d differ" % (len(wanted), len(wrong)))
    return 1 if wrong or not wanted else 0


if __name__ == "__main__":
    sys.exit(main())
