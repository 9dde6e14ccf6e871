#!/usr/bin/python3
# SPDX-License-Identifier: GPL-3.0-or-later
# What other tools read: JSON documents against their published schemas, with a validator that is none of ours; the book's
# tables by Python's sqlite3 and by sqlite3 itself.   other_tools_test.py LAPWRIGHT SOURCE_FOLDER
import copy
import csv
import io
import json
import os
import pathlib
import shutil
import sqlite3
import subprocess
import sys
import tempfile
import unittest

try:
    import jsonschema
except ImportError:
    jsonschema = None

PROGRAM = pathlib.Path(sys.argv[1]).resolve()
SOURCE = pathlib.Path(sys.argv[2]).resolve()
SAMPLES = SOURCE / "sample-sessions"
DUNLIN, PLOVER = SAMPLES / "dunlin-saturday-2.txt", SAMPLES / "plover-saturday-2.csv"
TABLES = {
    "sessions": "session_id file_name driver car track start_unix_s start_utc duration_s laps clean_laps "
                "best_clean_lap_s source_sha256",
    "laps": "session_id driver car track start_unix_s lap kind clean start_s time_s time_sd_s why_not_clean",
    "segments": "track segment kind start_m end_m",
    "car_figures": "session_id driver car track start_unix_s figure value low high decided_by",
    "setups": "session_id driver car track start_unix_s tyre mass_kg mass_sd_kg front_spring_n_per_m "
              "rear_spring_n_per_m known_downforce_area_m2 known_drag_area_m2 known_power_w",
    "setup_items": "session_id driver car track start_unix_s item value",
    "conditions": "session_id driver car track start_unix_s conditions air_temperature_k air_pressure_pa "
                  "relative_humidity altitude_m"}


def run(*words):
    environment = os.environ | {"XDG_DATA_HOME": "/nonexistent"}
    return subprocess.run([PROGRAM, *words], capture_output=True, text=True, check=True, env=environment).stdout


@unittest.skipUnless(jsonschema, "python3-jsonschema is not installed")
class Documents(unittest.TestCase):
    def check(self, name, *words):
        schema = json.loads((SOURCE / f"resources/schemas/{name}.schema.json").read_text(encoding="utf-8"))
        jsonschema.Draft202012Validator.check_schema(schema)
        validator = jsonschema.Draft202012Validator(schema)
        document = json.loads(run(name, *words, "--json"))
        for error in validator.iter_errors(document):
            self.fail(f"{name} {words}: {error.json_path}: {error.message[:200]}")
        # A schema that lets anything through would prove nothing.
        for key in schema["required"]:
            less = copy.copy(document)
            del less[key]
            self.assertFalse(validator.is_valid(less), key)
            self.assertFalse(validator.is_valid(document | {key: {"no": "such"}}), key)
        return document, validator

    def test_laps(self):
        document, validator = self.check("laps", PLOVER, DUNLIN)
        document["sessions"][0]["laps"][0]["time_s"] = "fast"
        self.assertFalse(validator.is_valid(document))

    def test_compare(self):
        document, validator = self.check("compare", PLOVER, DUNLIN)
        self.assertEqual(len({len(values) for values in document["trace"].values()}), 1)
        del document["segments"][0]["braking_point_a_m"]
        self.assertFalse(validator.is_valid(document))

    def test_causes(self):
        document, validator = self.check("causes", PLOVER, DUNLIN)
        self.check("causes", PLOVER, SAMPLES / "plover-saturday-3-less-wing.tsv")
        document["cars"]["a"]["grip"]["decided_by"] = "chance"
        self.assertFalse(validator.is_valid(document))

    def test_traces(self):
        document, _ = self.check("traces", PLOVER)
        self.assertEqual({len(channel["values"]) for channel in document["channels"]}, {len(document["distance_m"])})


class Traces(unittest.TestCase):
    def test_a_spreadsheet_reads_a_lap_with_every_channel(self):
        document = json.loads(run("traces", PLOVER, "--lap", "2", "--json"))
        rows = list(csv.reader(io.StringIO(run("traces", PLOVER, "--lap", "2", "--csv"), newline=""), strict=True))
        self.assertEqual(len(rows) - 1, len(document["distance_m"]))
        self.assertEqual({len(row) for row in rows}, {6 + len(document["channels"])})


class Tables(unittest.TestCase):
    def setUp(self):
        self.folder = pathlib.Path(tempfile.mkdtemp(prefix="lapwright-tables-"))
        self.addCleanup(shutil.rmtree, self.folder, ignore_errors=True)
        self.book = self.folder / "book"
        setup = self.folder / "setup.json"
        setup.write_text(json.dumps({
            "mass_kg": 1300, "tyre": "soft", "items": [{"name": "wing", "value": "=7, \"deg\""}],
            "springs": {"front_n_per_mm": 60, "rear_n_per_mm": 50}, "known": {"power_kw": 180},
            "conditions": {"air_temperature_c": 20, "pressure_hpa": 1000, "humidity_percent": 50}}))
        run("book", "--book", self.book, "add", PLOVER, "--setup", setup, "--track", SAMPLES / "ternbank.track.json",
            "--conditions", "dry")
        run("book", "--book", self.book, "add", DUNLIN)
        self.base = sqlite3.connect(f"file:{self.book}?mode=ro", uri=True)
        self.addCleanup(self.base.close)

    def test_columns_are_as_they_were_published(self):
        for name, columns in TABLES.items():
            rows = self.base.execute(f"SELECT * FROM {name}")
            self.assertEqual(" ".join(column[0] for column in rows.description), columns)

    def test_what_they_hold_is_what_the_program_says(self):
        document = json.loads(run("laps", PLOVER, "--track", SAMPLES / "ternbank.track.json", "--json"))
        laps = self.base.execute("SELECT lap, kind, clean, start_s, time_s FROM laps WHERE session_id = 1").fetchall()
        self.assertEqual(laps, [(lap["number"], lap["kind"], int(lap["clean"]), lap["start_s"], lap["time_s"])
                                for lap in document["sessions"][0]["laps"]])
        record = json.loads((SAMPLES / "ternbank.track.json").read_text())
        self.assertEqual(self.base.execute("SELECT track, segment, kind, start_m, end_m FROM segments").fetchall(),
                         [(record["name"], s["name"], s["kind"], s["start_m"], s["end_m"]) for s in record["segments"]])
        self.assertEqual(self.base.execute("SELECT tyre, mass_kg, front_spring_n_per_m, rear_spring_n_per_m, "
                                           "known_power_w FROM setups WHERE session_id = 1").fetchone(),
                         ("soft", 1300.0, 60000.0, 50000.0, 180000.0))
        self.assertEqual(self.base.execute("SELECT conditions, air_temperature_k, air_pressure_pa, relative_humidity, "
                                           "altitude_m FROM conditions WHERE session_id = 1").fetchone(),
                         ("dry", 293.15, 100000.0, 0.5, None))
        self.assertEqual(self.base.execute("SELECT item, value FROM setup_items WHERE session_id = 1").fetchall(),
                         [("wing", '=7, "deg"')])
        self.assertEqual(self.base.execute("SELECT count(*) FROM sessions").fetchone(), (2,))

    def test_the_printed_table_is_the_same(self):
        for name in TABLES:
            printed = list(csv.reader(io.StringIO(run("book", "--book", self.book, "table", name, "--csv"), newline=""),
                                      strict=True))
            rows = self.base.execute(f"SELECT * FROM {name}")
            self.assertEqual(printed[0], [column[0] for column in rows.description])
            expected = rows.fetchall()
            self.assertEqual(len(printed) - 1, len(expected))
            for one, other in zip(printed[1:], expected):
                for cell, value in zip(one, other):
                    if isinstance(value, float):
                        self.assertEqual(float(cell), value)
                    else:
                        self.assertIn(cell, ("" if value is None else str(value), f"'{value}"))

    def test_a_removed_session_is_in_none(self):
        run("book", "--book", self.book, "remove", "1")
        for name in TABLES:
            if name != "segments":
                self.assertEqual(self.base.execute(f"SELECT count(*) FROM {name} WHERE session_id = 1").fetchone(), (0,))

    @unittest.skipUnless(shutil.which("sqlite3"), "sqlite3 is not installed")
    def test_sqlite3_reads_them(self):
        for name, columns in TABLES.items():
            printed = subprocess.run(["sqlite3", "-readonly", "-header", "-csv", self.book, f"SELECT * FROM {name}"],
                                     capture_output=True, text=True, check=True).stdout
            if printed:
                self.assertEqual(printed.splitlines()[0].replace(",", " "), columns)


if __name__ == "__main__":
    unittest.main(argv=[sys.argv[0]], verbosity=2)
