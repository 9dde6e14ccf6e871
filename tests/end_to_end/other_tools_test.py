#!/usr/bin/python3
# SPDX-License-Identifier: GPL-3.0-or-later
# What other tools read: JSON documents against their published schemas, with a validator that is none of ours; the book's
# tables by Python's sqlite3 and by sqlite3 itself.   other_tools_test.py LAPWRIGHT SOURCE_FOLDER
import contextlib
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
    "corner_figures": "session_id driver car track start_unix_s lap clean segment start_m end_m time_s entry_speed_mps "
                      "entry_speed_sd_mps min_speed_mps min_speed_sd_mps min_speed_at_m exit_speed_mps "
                      "exit_speed_sd_mps lift_at_m braking_point_m braking_point_sd_m braking_mps2 throttle_opens_m "
                      "full_throttle_m full_throttle_sd_m peak_lateral_mps2 coasting_s driven_length_m",
    "car_figures": "session_id driver car track start_unix_s figure value low high decided_by",
    "setups": "session_id driver car track start_unix_s tyre mass_kg mass_sd_kg front_spring_n_per_m "
              "rear_spring_n_per_m known_downforce_area_m2 known_drag_area_m2 known_power_w",
    "setup_items": "session_id driver car track start_unix_s item value",
    "conditions": "session_id driver car track start_unix_s conditions air_temperature_k air_pressure_pa "
                  "relative_humidity altitude_m",
    "predictions": "prediction_id session_id driver car track source program_version kept_unix_s grip_share "
                   "downforce_share drag_share downforce_area_m2 drag_area_m2 on_a_tonne power_w mass_kg lap_before_s "
                   "change_s change_low_s change_high_s observed_change_s observed_change_low_s observed_change_high_s"}


HELD = set()  # schemas that a document was held against


def run(*words):
    environment = os.environ | {"XDG_DATA_HOME": "/nonexistent"}
    return subprocess.run([PROGRAM, *words], capture_output=True, text=True, check=True, env=environment).stdout


@unittest.skipUnless(jsonschema, "python3-jsonschema is not installed")
class Documents(unittest.TestCase):
    def check(self, name, *words):
        return self.hold(name, json.loads(run(name, *words, "--json")))

    def hold(self, name, document):
        schema = json.loads((SOURCE / f"resources/schemas/{name}.schema.json").read_text(encoding="utf-8"))
        jsonschema.Draft202012Validator.check_schema(schema)
        validator = jsonschema.Draft202012Validator(schema)
        for error in validator.iter_errors(document):
            self.fail(f"{name}: {error.json_path}: {error.message[:200]}")
        # A schema that lets anything through would prove nothing.
        for key in schema["required"]:
            less = copy.copy(document)
            del less[key]
            self.assertFalse(validator.is_valid(less), key)
            self.assertFalse(validator.is_valid(document | {key: {"no": "such"}}), key)
        HELD.add(name)
        return document, validator

    def test_laps(self):
        document, validator = self.check("laps", PLOVER, DUNLIN)
        document["sessions"][0]["laps"][0]["time_s"] = "fast"
        self.assertFalse(validator.is_valid(document))

    def test_compare(self):
        document, validator = self.check("compare", PLOVER, DUNLIN)
        self.assertEqual(len({len(values) for values in document["trace"].values()}), 1)
        self.assertEqual(document["further_laps"], [])
        third, _ = self.check("compare", PLOVER, DUNLIN, "--also", SAMPLES / "plover-saturday-3-less-wing.tsv",
                              "--also", PLOVER, "--also-lap", "3,4")
        self.assertEqual([lap["lap"] for lap in third["further_laps"]], [3, 4])
        for lap in third["further_laps"]:
            self.assertAlmostEqual(lap["gap_s"], lap["time_s"] - third["a"]["time_s"], delta=0.02)
            self.assertAlmostEqual(sum(one["gain_s"] for one in lap["segments"]), lap["gap_s"], places=6)
            self.assertAlmostEqual(lap["trace"]["distance_m"][-1], third["track"]["length_m"], places=3)
        del document["segments"][0]["braking_point_a_m"]
        self.assertFalse(validator.is_valid(document))

    def test_causes(self):
        document, validator = self.check("causes", PLOVER, DUNLIN)
        self.check("causes", PLOVER, SAMPLES / "plover-saturday-3-less-wing.tsv")
        document["cars"]["a"]["grip"]["decided_by"] = "chance"
        self.assertFalse(validator.is_valid(document))

    def test_wing(self):
        document, validator = self.check("wing", PLOVER, DUNLIN)
        del document["b"]["cannot_tell"]
        self.assertFalse(validator.is_valid(document))

    def test_learn(self):
        less_wing = SAMPLES / "plover-saturday-3-less-wing.tsv"
        document, validator = self.check("learn", PLOVER, less_wing)
        self.check("learn", DUNLIN) # too few laps to tell a course
        for lap in document["laps"]:
            self.assertEqual(len(lap["segment_times_s"]), len(document["segments"]))
            self.assertAlmostEqual(sum(lap["segment_times_s"]), lap["time_s"], places=6)
        for course in [document["lap"], *document["segments"]]:
            clean = [lap for lap in document["laps"] if lap["clean"]]
            best = [lap for lap in clean if (lap["session"], lap["number"]) ==
                    (course["best_session"], course["best_lap"])]
            self.assertEqual(len(best), 1)
        self.assertLessEqual(document["best_segments_s"], document["lap"]["best_s"])
        document["segments"][0]["state"] = "fast"
        self.assertFalse(validator.is_valid(document))

    def test_traces(self):
        document, _ = self.check("traces", PLOVER)
        self.assertEqual({len(channel["values"]) for channel in document["channels"]}, {len(document["distance_m"])})

    def test_trial(self):
        with tempfile.TemporaryDirectory() as folder:
            again = pathlib.Path(folder) / "again.csv"
            # One baseline for the run before and the run after, an altitude apart, or it would be there twice.
            again.write_bytes(PLOVER.read_bytes().replace(b",12.25,", b",12.26,", 1))
            document, validator = self.check("trial", PLOVER, SAMPLES / "plover-saturday-3-less-wing.tsv", again,
                                             "--changed", "2")
        self.assertTrue(validator.is_valid(document | {"figures": {"cannot_tell": "no speeds"}}))
        del document["segments"][0]["gain_low_s"]
        self.assertFalse(validator.is_valid(document))

    @unittest.skipUnless(shutil.which("ffmpeg"), "ffmpeg is not installed")
    def test_video(self):
        with tempfile.TemporaryDirectory() as folder:
            video = pathlib.Path(folder) / "video.mp4"
            subprocess.run(["ffmpeg", "-nostdin", "-v", "error", "-f", "lavfi", "-i", "testsrc=size=64x64:rate=10",
                            "-t", "2", video], check=True)
            answer = subprocess.run([PROGRAM, "video", PLOVER, video, "--json"], capture_output=True, text=True)
        if answer.returncode != 0 and "no video decoder" in answer.stderr:
            self.skipTest("built without a video decoder")
        document, validator = self.hold("video", json.loads(answer.stdout))
        self.assertEqual(document["video"]["width"], 64)
        step = {"offset_s": 1.0, "offset_low_s": 0.5, "offset_high_s": 1.5, "drift": 0.0, "around_video_s": 3.0,
                "method": "by_hand", "score": None}
        self.assertTrue(validator.is_valid(document | {"in_step": step}))
        self.assertFalse(validator.is_valid(document | {"in_step": step | {"offset_s": None}}))

    def test_recipe(self):
        for file in DUNLIN, PLOVER:
            document, validator = self.hold("recipe", json.loads(run("recipe", file)))
            document["columns"][0]["header"] = 7
            self.assertFalse(validator.is_valid(document))

    def test_the_book(self):
        with tempfile.TemporaryDirectory() as folder:
            self.documents_of_a_book(pathlib.Path(folder))

    def documents_of_a_book(self, folder):
        mine, theirs = folder / "mine", folder / "theirs"

        def ask(name, book, *words):
            document, validator = self.hold("book-" + name, json.loads(run("book", "--book", book, *words, "--json")))
            for rows in document.values():
                for key in rows[0] if isinstance(rows, list) and rows and isinstance(rows[0], dict) else []:
                    less = copy.deepcopy(document)
                    del next(value for value in less.values() if isinstance(value, list))[0][key]
                    self.assertFalse(validator.is_valid(less), f"{name}: {key}")
            return document

        ask("add", mine, "add", PLOVER, "--track", SAMPLES / "ternbank.track.json")
        ask("add", mine, "add", DUNLIN)
        ask("list", mine, "list")
        ask("corners", mine, "corners")
        self.assertEqual(len(ask("season", mine, "season", "Ternbank")["sessions"]), 2)
        with contextlib.closing(sqlite3.connect(mine)) as base, base:
            car = base.execute("SELECT car FROM sessions WHERE session_id = 1").fetchone()[0]
            # The window alone keeps these.
            base.execute("INSERT INTO figure VALUES (1, 'grip', 1.2, 1.1, 1.3, 'data')")
            base.execute("INSERT INTO pairing (session_a, lap_a, session_b, lap_b, title, sentence, changed_unix_s) "
                         "VALUES (1, 3, 2, 3, '', 'A is ahead', 1.7e9)")
        self.assertEqual(len(ask("figures", mine, "figures", car)["sessions"]), 1)
        ask("together", mine, "together", car)
        self.assertEqual(len(ask("pairings", mine, "pairings")["pairings"]), 1)
        self.predictions_of_a_book(folder, mine, ask)
        ask("my-car", mine, "my-car", car)
        ask("merge", theirs, "merge", mine)
        ask("rename", theirs, "rename", "driver", "Ylva Tarnby", "Y. Tarnby")
        ask("rename", mine, "rename", "driver", "Ylva Tarnby", "Ylva T.")
        ask("merge", mine, "merge", theirs)
        self.assertGreater(len(ask("conflicts", mine, "conflicts")["conflicts"]), 0)
        run("book", "--book", theirs, "remove", "1")
        self.assertEqual(len(ask("merge", mine, "merge", theirs)["removed"]), 1)
        self.assertEqual(len(ask("list-removed", mine, "list", "--removed")["sessions"]), 1)
        ask("check", mine, "check")
        ask("salvage", mine, "salvage")

    def predictions_of_a_book(self, folder, mine, ask):
        """Less wing is predicted, then driven between two runs as before, and held against what happened."""
        less_wing = SAMPLES / "plover-saturday-3-less-wing.tsv"
        keep = ["wing", PLOVER, DUNLIN, "--book", mine, "--keep", "a", "--keep-downforce=-1", "--keep-with",
                "wing angle=3 deg"]
        run(*keep)
        again = subprocess.run([PROGRAM, *keep], capture_output=True, text=True)
        self.assertEqual((again.returncode, again.stdout), (1, ""))
        self.assertIn("is kept already", again.stderr)
        document = ask("predictions", mine, "predictions")
        self.assertEqual(document["score"]["judged"], 0)
        self.assertIsNone(document["predictions"][0]["verdict"])
        last = folder / "after.csv"
        # The run before once more, an altitude apart, or it would be there twice.
        last.write_bytes(PLOVER.read_bytes().replace(b",12.25,", b",12.26,", 1))
        shutil.copy(SAMPLES / "plover-saturday-2.setup.json", folder / "after.setup.json")
        first = folder / "first.csv"
        first.write_bytes(PLOVER.read_bytes().replace(b",12.25,", b",12.27,", 1))
        shutil.copy(SAMPLES / "plover-saturday-2.setup.json", folder / "first.setup.json")
        for file, hour in (first, 9), (less_wing, 10), (last, 11):
            number = json.loads(run("book", "--book", mine, "add", file, "--track", SAMPLES / "ternbank.track.json",
                                    "--json"))["sessions"][0]["id"]
            run("book", "--book", mine, "date", str(number), f"2098-05-17 {hour:02d}:00")
        driven = ask("predictions", mine, "predictions")["predictions"][0]
        self.assertIn(driven["verdict"], ("held", "missed", "too_wide"))
        self.assertAlmostEqual(driven["difference_s"], driven["observed_change_s"]["value"] -
                               driven["change_s"]["value"])
        table = list(csv.DictReader(io.StringIO(run("book", "--book", mine, "table", "predictions"))))
        self.assertEqual(float(table[0]["observed_change_s"]), driven["observed_change_s"]["value"])
        # A person's word counts for more than the sheets, but not for what was driven before.
        before = subprocess.run([PROGRAM, "book", "--book", mine, "driven", "1", "2"], capture_output=True, text=True)
        self.assertEqual(before.returncode, 1)
        self.assertIn("was driven before", before.stderr)
        run("book", "--book", mine, "take-back", "1")
        self.assertEqual(json.loads(run("book", "--book", mine, "predictions", "--json"))["predictions"], [])

    def test_zz_no_document_is_without_a_test(self):
        named = {file.name.removesuffix(".schema.json") for file in (SOURCE / "resources/schemas").iterdir()}
        self.assertEqual(named - HELD, set() if shutil.which("ffmpeg") and "video" in HELD else {"video"})


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

    def test_corners_are_those_of_a_comparison(self):
        run("book", "--book", self.book, "corners")
        pair = json.loads(run("compare", PLOVER, PLOVER, "--lap-a", "3", "--lap-b", "4", "--track",
                              SAMPLES / "ternbank.track.json", "--json"))
        for letter, lap in ("a", 3), ("b", 4):
            compared = [s for s in pair["segments"] if s["kind"] == "corner"]
            rows = self.base.execute("SELECT segment, entry_speed_mps, min_speed_mps, exit_speed_mps, entry_speed_sd_mps "
                                     "FROM corner_figures WHERE session_id = 1 AND lap = ?", (lap,)).fetchall()
            self.assertEqual([row[0] for row in rows], [s["name"] for s in compared])
            for row, segment in zip(rows, compared):
                for value, figure in zip(row[1:4], ("entry_speed", "min_speed", "exit_speed")):
                    self.assertAlmostEqual(value, segment[f"{figure}_{letter}_mps"], delta=0.05)
                self.assertGreater(row[4], 0)
        count = self.base.execute("SELECT count(*) FROM corner_figures").fetchone()[0]
        # Corners that were moved are no longer those that were measured.
        record = json.loads((SAMPLES / "ternbank.track.json").read_text())
        corner = next(s for s in record["segments"] if s["kind"] == "corner")
        corner["name"] = "Renamed"
        moved = self.folder / "moved.json"
        moved.write_text(json.dumps(record))
        run("book", "--book", self.book, "add", PLOVER, "--track", moved)
        fewer = self.base.execute("SELECT count(*) FROM corner_figures").fetchone()[0]
        self.assertLess(fewer, count)
        self.assertGreater(fewer, 0)

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
