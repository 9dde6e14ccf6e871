#!/usr/bin/python3
# SPDX-License-Identifier: GPL-3.0-or-later
# The installer for Windows under Wine, in silence: what it puts there runs, a second run puts the same there again, and removing
# leaves what a person put beside it and nothing else.   windows_installer_test.py INSTALLER LAPWRIGHT SOURCE_FOLDER
import os
import pathlib
import shutil
import subprocess
import sys
import tempfile
import unittest

INSTALLER = pathlib.Path(sys.argv[1]).resolve()
HERE = pathlib.Path(sys.argv[2]).resolve()
SOURCE = pathlib.Path(sys.argv[3]).resolve()
LARGEST_BYTES = 60_000_000
ENVIRONMENT = os.environ | {"XDG_DATA_HOME": "/nonexistent", "WINEDEBUG": "-all", "WINEDLLOVERRIDES": "mscoree,mshtml="}
UNINSTALL = r"HKCU\Software\Microsoft\Windows\CurrentVersion\Uninstall\Lapwright"


def wine(*words, folder=SOURCE):
    return subprocess.run(["wine", *words], cwd=folder, capture_output=True, env=ENVIRONMENT, timeout=300)


def last_words(option, path):
    """The installer takes all that stands behind such an option for the path, its blanks unquoted."""
    return (option + "Z:" + str(path).replace("/", "\\")).split(" ")


def files_below(folder):
    return {file.relative_to(folder): file.read_bytes() for file in folder.rglob("*") if file.is_file()}


class Installer(unittest.TestCase):
    def setUp(self):
        above = pathlib.Path(tempfile.mkdtemp(prefix="lapwright-installed-"))
        self.addCleanup(shutil.rmtree, above, ignore_errors=True)
        self.place = above / "Programs of mine" / "Lapwright"

    def install(self):
        done = wine(INSTALLER, "/S", *last_words("/D=", self.place))
        self.assertEqual(done.returncode, 0, done.stderr)

    def known(self):
        return wine("reg", "query", UNINSTALL, "/v", "InstallLocation").returncode == 0

    def test_size(self):
        self.assertLessEqual(INSTALLER.stat().st_size, LARGEST_BYTES)

    def test_put_there_run_put_again_and_taken_away(self):
        self.install()
        first = files_below(self.place)
        self.assertTrue(self.known())
        for name in ("bin/lapwright.exe", "uninstall.exe", "share/doc/lapwright/LICENSE.txt"):
            self.assertIn(pathlib.Path(name), first)
        for sample in (SOURCE / "sample-sessions").iterdir():
            self.assertEqual(first[pathlib.Path("share/lapwright/sample-sessions") / sample.name], sample.read_bytes())

        samples = self.place / "share/lapwright/sample-sessions"
        words = ["compare", "dunlin-saturday-2.txt", "plover-saturday-2.csv", "--json"]
        there = wine(self.place / "bin/lapwright.exe", *words, folder=samples)
        here = subprocess.run([HERE, *words], cwd=samples, capture_output=True, env=ENVIRONMENT, timeout=300)
        self.assertEqual(here.returncode, 0, here.stderr)
        self.assertEqual(there.returncode, 0, there.stderr)
        self.assertTrue(there.stdout == here.stdout, "other bytes")

        self.install()
        self.assertTrue(files_below(self.place) == first, "other files or other bytes")

        mine = samples / "mine.csv"
        mine.write_text("time,speed\n")
        done = wine(self.place / "uninstall.exe", "/S", *last_words("_?=", self.place))
        self.assertEqual(done.returncode, 0, done.stderr)
        self.assertFalse(self.known())
        # The program that removes cannot remove itself when it is told to wait.
        self.assertEqual({str(file) for file in files_below(self.place)} - {"uninstall.exe"},
                         {str(mine.relative_to(self.place))})


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1])
