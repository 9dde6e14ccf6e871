#!/usr/bin/python3
# SPDX-License-Identifier: GPL-3.0-or-later
# Many pairings by the built program, alone and by several workers:   batch_test.py LAPWRIGHT SAMPLE_SESSIONS [TEST…]
# Workers are killed and find the disk full; whatever happens, every result is there once, whole, and as "compare" has it.
# GNU parallel is tried where it is installed, with the words that README.md gives; Slurm in slurm_test.py.
import csv
import json
import os
import pathlib
import resource
import shutil
import signal
import subprocess
import sys
import tempfile
import time
import unittest

PROGRAM = pathlib.Path(sys.argv[1]).resolve()
SAMPLES = pathlib.Path(sys.argv[2]).resolve()
HEADER = ["result", "status", "file_a", "file_b", "lap_a", "lap_b", "time_a_s", "time_b_s", "gap_s", "gap_sd_s", "why"]


class Batch(unittest.TestCase):
    def setUp(self):
        self.folder = pathlib.Path(tempfile.mkdtemp(prefix="lapwright-batch-"))
        self.addCleanup(shutil.rmtree, self.folder, ignore_errors=True)
        self.out = self.folder / "results"
        self.files = []
        for name in ("dunlin-saturday-2.txt", "plover-saturday-2.csv", "plover-saturday-3-less-wing.tsv"):
            shutil.copy(SAMPLES / name, self.folder)
            self.files.append(self.folder / name)
        # The same drive under another name is another session when its bytes differ.
        for number in (1, 2):
            copy = self.folder / f"run, \"{number}\".txt"
            copy.write_bytes(self.files[0].read_bytes() + b"\n" * number)
            self.files.append(copy)
        self.list = self.folder / "list.txt"
        self.list.write_text("# all of Saturday\n\n" + "\n".join(map(str, self.files)) + "\n", encoding="utf-8")
        self.environment = os.environ | {"XDG_DATA_HOME": str(self.folder / "data")}

    def words(self, *more):
        return [PROGRAM, "batch", self.list, "--every-pair", "--out", self.out, *more]

    def run_batch(self, *more, status=0, **options):
        done = subprocess.run(self.words(*more), capture_output=True, text=True, env=self.environment, **options)
        self.assertEqual(done.returncode, status, done.stderr)
        self.assertEqual(done.stdout, "")
        return done.stderr

    def results(self):
        return sorted(p for p in self.out.glob("*.json") if not p.name.endswith(".failed.json"))

    def summary(self, name="summary.csv"):
        with open(self.out / name, newline="", encoding="utf-8") as file:
            return list(csv.DictReader(file, strict=True))

    def assert_all_there(self):
        self.assertEqual(len(self.results()), 10)
        self.assertEqual([p.name for p in self.out.iterdir() if ".part" in p.name], [])
        for path in self.results():
            document = json.loads(path.read_text(encoding="utf-8"))
            self.assertIn("gap_s", document)

    def test_every_pair_once_as_compare_has_it(self):
        told = self.run_batch()
        self.assertIn("10 of 10: ", told)
        self.assertTrue(told.endswith("10 done, 0 done before, 0 failed\n"), told)
        self.assert_all_there()
        rows = self.summary()
        self.assertEqual(list(rows[0]), HEADER)
        self.assertEqual(len({frozenset((r["file_a"], r["file_b"])) for r in rows}), 10)
        for row in rows:
            self.assertEqual(row["status"], "done")
            alone = subprocess.run([PROGRAM, "compare", row["file_a"], row["file_b"], "--json"], capture_output=True,
                                   env=self.environment, check=True).stdout
            self.assertEqual((self.out / row["result"]).read_bytes(), alone)
            document = json.loads(alone)
            self.assertEqual(float(row["gap_s"]), document["gap_s"])
            self.assertEqual(int(row["lap_b"]), document["b"]["lap"])
            self.assertEqual(float(row["time_a_s"]), document["a"]["time_s"])
        before = {p: p.stat().st_mtime_ns for p in self.results()}
        self.assertEqual(self.run_batch(), "0 done, 10 done before, 0 failed\n")
        self.assertEqual({p: p.stat().st_mtime_ns for p in self.results()}, before)

    def test_pieces_are_disjoint_and_make_the_whole(self):
        done = 0
        for piece in (1, 2, 3):
            self.run_batch("--shard", f"{piece}/3")
            rows = self.summary(f"summary-{piece}-of-3.csv")
            self.assertTrue(all(row["status"] == "done" for row in rows))
            done += len(rows)
            self.assertEqual(len(self.results()), done)
        self.assertEqual(done, 10)
        for wrong in ("0/3", "4/3", "3", "a/b", "1/0"):
            self.run_batch("--shard", wrong, status=2)

    def test_one_recording_is_its_laps_and_a_pairing_may_name_them(self):
        self.list.write_text(f"{self.files[0]}\n{self.files[0]}\t{self.files[1]}\t3\t4\n", encoding="utf-8")
        words = [w for w in self.words() if w != "--every-pair"]
        subprocess.run(words, check=True, capture_output=True, env=self.environment)
        laps, pairing = self.summary()
        document = json.loads((self.out / laps["result"]).read_text(encoding="utf-8"))
        clean = [lap for lap in document["sessions"][0]["laps"] if lap["clean"]]
        fastest = min(clean, key=lambda lap: lap["time_s"])
        self.assertEqual((int(laps["lap_a"]), float(laps["time_a_s"])), (fastest["number"], fastest["time_s"]))
        self.assertEqual((pairing["lap_a"], pairing["lap_b"]), ("3", "4"))
        self.list.write_text(f"{self.files[0]}\tone\ttwo\n", encoding="utf-8")
        refused = subprocess.run(words, capture_output=True, text=True, env=self.environment)
        self.assertEqual(refused.returncode, 1)
        self.assertTrue(refused.stderr.startswith(f"{self.list}:1: "), refused.stderr)

    def test_a_failed_job_is_told_and_tried_again(self):
        hidden = self.files[1].rename(self.folder / "hidden")
        told = self.run_batch(status=1)
        self.assertTrue(told.endswith("6 done, 0 done before, 4 failed\n"), told)
        failed = [row for row in self.summary() if row["status"] == "failed"]
        self.assertEqual(len(failed), 4)
        self.assertTrue(all(self.files[1].name in row["why"] for row in failed))
        hidden.rename(self.files[1])
        self.run_batch()
        self.assert_all_there()
        self.assertEqual(list(self.out.glob("*.failed.json")), [])

    def test_a_killed_worker_loses_nothing(self):
        for kills in range(3):
            worker = subprocess.Popen(self.words(), stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL,
                                      env=self.environment)
            while worker.poll() is None and len(self.results()) < 2 + 2 * kills:
                time.sleep(0.002)
            worker.kill()
            worker.wait()
        (self.out / (self.results()[0].stem + ".json.part99999")).write_text("half")
        before = {p: p.read_bytes() for p in self.results()}
        told = self.run_batch()
        self.assertIn(f", {len(before)} done before, 0 failed", told)
        self.assert_all_there()
        for path, content in before.items():
            self.assertEqual(path.read_bytes(), content)

    def test_a_full_disk_leaves_no_half_result_and_the_next_run_finishes(self):
        def no_room():
            signal.signal(signal.SIGXFSZ, signal.SIG_IGN)
            resource.setrlimit(resource.RLIMIT_FSIZE, (20_000, 20_000))

        told = self.run_batch(status=1, preexec_fn=no_room)
        self.assertIn("cannot be written", told)
        self.assertEqual(list(self.out.iterdir()), [])
        self.run_batch()
        self.assert_all_there()

    def test_the_books_sessions_of_a_track(self):
        book = self.folder / "book"
        subprocess.run([PROGRAM, "book", "--book", book, "add", *self.files[:3], "--track",
                        SAMPLES / "ternbank.track.json"], check=True, capture_output=True, env=self.environment)
        words = [PROGRAM, "batch", "--of-track", "Ternbank", "--book", book, "--out", self.out]
        subprocess.run(words, check=True, capture_output=True, env=self.environment)
        self.assertEqual([row["status"] for row in self.summary()], ["done"] * 3)
        words[3] = "Nowhere"
        refused = subprocess.run(words, capture_output=True, text=True, env=self.environment)
        self.assertEqual(refused.returncode, 1)
        self.assertIn("Nowhere", refused.stderr)

    @unittest.skipUnless(shutil.which("parallel"), "GNU parallel is not installed")
    def test_gnu_parallel(self):
        # One worker of four is killed by its own first try; the second finishes its piece.
        once = self.folder / "killed"
        worker = self.folder / "worker"
        worker.write_text(f'#!/bin/sh\nif [ "$1" = 2 ] && [ ! -e "{once}" ]; then touch "{once}"; kill -9 $$; fi\n'
                          f'exec "{PROGRAM}" batch "{self.list}" --every-pair --out "{self.out}" --shard "$1"/4\n')
        worker.chmod(0o755)
        subprocess.run(["parallel", "--jobs", "2", "--retries", "3", str(worker), ":::", "1", "2", "3", "4"], check=True,
                       capture_output=True, env=self.environment | {"HOME": str(self.folder)})
        self.assertTrue(once.exists())
        self.assert_all_there()


if __name__ == "__main__":
    unittest.main(argv=[sys.argv[0], *sys.argv[3:]], verbosity=2)
