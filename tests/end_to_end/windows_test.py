#!/usr/bin/python3
# SPDX-License-Identifier: GPL-3.0-or-later
# The Windows program under Wine against the one of this machine: the same documents, byte for byte, the same refusals, and
# books that both read.   windows_test.py LAPWRIGHT LAPWRIGHT.EXE SOURCE_FOLDER
import concurrent.futures
import itertools
import json
import os
import pathlib
import shutil
import subprocess
import sys
import tempfile
import unittest

HERE = pathlib.Path(sys.argv[1]).resolve()
THERE = pathlib.Path(sys.argv[2]).resolve()
SOURCE = pathlib.Path(sys.argv[3]).resolve()
SAMPLES = SOURCE / "sample-sessions"
CORPUS = SOURCE / "tests/core/import/corpus"
CORPUS_FILES = 100
ENVIRONMENT = os.environ | {"XDG_DATA_HOME": "/nonexistent", "WINEDEBUG": "-all", "WINEDLLOVERRIDES": "mscoree,mshtml="}
SESSIONS = sorted(file.name for file in SAMPLES.iterdir() if file.suffix in {".csv", ".tsv", ".txt"})


def answer(program, folder, words):
    command = ["wine", program, *words] if program == THERE else [program, *words]
    done = subprocess.run(command, cwd=folder, capture_output=True, env=ENVIRONMENT, timeout=300)
    return done.returncode, done.stdout, done.stderr


def both(folder, words):
    return answer(HERE, folder, words), answer(THERE, folder, words)


class Documents(unittest.TestCase):
    def same(self, folder, calls):
        documents = 0
        with concurrent.futures.ThreadPoolExecutor(2) as workers:
            for words, (here, there) in zip(calls, workers.map(lambda words: both(folder, words), calls)):
                with self.subTest(words=words):
                    self.assertEqual(there[0], here[0], there[2])
                    self.assertEqual(there[2], here[2])
                    self.assertTrue(there[1] == here[1], "other bytes")
                documents += here[0] == 0
        return documents

    def test_samples(self):
        calls = [["laps", file, "--json"] for file in SESSIONS]
        calls += [[command, *pair, "--json"] for command in ("compare", "causes")
                  for pair in itertools.permutations(SESSIONS, 2)]
        calls += [["compare", *SESSIONS[:2], "--track", "ternbank.track.json", "--json"], ["traces", SESSIONS[0], "--json"],
                  ["compare", *SESSIONS[:2]], ["causes", *SESSIONS[:2]], ["compare", *SESSIONS[:2], "--csv"]]
        self.assertEqual(self.same(SAMPLES, calls), len(calls))

    def test_corpus(self):
        # A hundred files of which documents are made, from all over the corpus; then as many that are refused as there are.
        outcome = {file: answer(HERE, CORPUS, ["laps", file, "--json"])[0]
                   for file in sorted(file.name for file in CORPUS.iterdir() if file.is_file())}
        read = [file for file, status in outcome.items() if status == 0]
        refused = [file for file, status in outcome.items() if status != 0][:20]
        files = [read[i * len(read) // CORPUS_FILES] for i in range(CORPUS_FILES)]
        self.assertEqual(len(set(files)), CORPUS_FILES)
        self.assertEqual(self.same(CORPUS, [["laps", file, "--json"] for file in files]), CORPUS_FILES)
        self.assertEqual(self.same(CORPUS, [["laps", file, "--json"] for file in refused]), 0)
        # Most are too short for a lap: then both refuse, in the same words.
        self.same(CORPUS, [[command, file, file, "--json"] for command in ("compare", "causes") for file in files])


class Files(unittest.TestCase):
    def setUp(self):
        self.folder = pathlib.Path(tempfile.mkdtemp(prefix="lapwright-wine-"))
        self.addCleanup(shutil.rmtree, self.folder, ignore_errors=True)

    def test_names_with_letters_that_an_old_code_page_does_not_know(self):
        name = "Übung Łódź 走.csv"
        shutil.copy(SAMPLES / SESSIONS[0], self.folder / name)
        here, there = both(self.folder, ["laps", name, "--json"])
        self.assertEqual(here[0], 0)
        self.assertEqual(there, here)
        here, there = both(self.folder, ["laps", "kein " + name, "--json"])
        self.assertEqual(here[0], 1)
        self.assertEqual(there, here)

    def test_a_book_of_one_is_read_by_the_other(self):
        asked = [["list", "--json"], ["season", "Ternbank", "--json"], ["check", "--json"], ["table", "laps"],
                 ["table", "corner_figures"], ["table", "segments"], ["pairings", "--json"]]
        for writer, reader in ((HERE, THERE), (THERE, HERE)):
            book = f"book of {'windows' if writer == THERE else 'this machine'}"
            track = os.path.relpath(SAMPLES / "ternbank.track.json", self.folder)
            for file in SESSIONS:
                shutil.copy(SAMPLES / file, self.folder)
                self.assertEqual(answer(writer, self.folder, ["book", "--book", book, "add", file, "--track", track])[0], 0)
            self.assertEqual(answer(writer, self.folder, ["book", "--book", book, "corners"])[0], 0)
            for words in asked:
                written = answer(writer, self.folder, ["book", "--book", book, *words])
                self.assertEqual(written[0], 0)
                self.assertEqual(answer(reader, self.folder, ["book", "--book", book, *words]), written)
            # The reader writes too: a session goes and comes back.
            for words in ["remove", "1"], ["restore", "1"]:
                self.assertEqual(answer(reader, self.folder, ["book", "--book", book, *words])[0], 0)
            self.assertTrue(json.loads(answer(writer, self.folder, ["book", "--book", book, "check", "--json"])[1])["whole"])
        # And each takes in the other's: nothing is new there.
        merged = answer(THERE, self.folder, ["book", "--book", "book of windows", "merge", "book of this machine", "--json"])
        self.assertEqual(json.loads(merged[1])["sessions"], 0)
        self.assertEqual(json.loads(merged[1])["known_sessions"], len(SESSIONS))


if __name__ == "__main__":
    unittest.main(argv=[sys.argv[0]], verbosity=2)
