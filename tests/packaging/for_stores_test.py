#!/usr/bin/python3
# SPDX-License-Identifier: GPL-3.0-or-later
# AppStream data, desktop entry and Flatpak manifest, held to the validators of those who read them, without a network, and to
# one another.   for_stores_test.py SOURCE_FOLDER
import json
import pathlib
import re
import shutil
import struct
import subprocess
import sys
import tempfile
import unittest
import xml.etree.ElementTree as ElementTree

SOURCE = pathlib.Path(sys.argv[1]).resolve()
PACKAGING = SOURCE / "packaging"
METAINFO = PACKAGING / "lapwright.metainfo.xml"
DESKTOP = PACKAGING / "lapwright.desktop"
MANIFEST = PACKAGING / "flatpak/example.lapwright.lapwright.yml"


def ends_well(*words, folder=None):
    return subprocess.run(words, capture_output=True, cwd=folder).returncode == 0


def changed(folder, file, old, new):
    text = file.read_text(encoding="utf-8")
    assert old in text, old
    other = pathlib.Path(folder) / file.name
    other.write_text(text.replace(old, new, 1), encoding="utf-8")
    return other


class ForStores(unittest.TestCase):
    def setUp(self):
        folder = tempfile.TemporaryDirectory()
        self.addCleanup(folder.cleanup)
        self.folder = folder.name

    def need(self, program):
        if not shutil.which(program):
            self.skipTest(f"{program} is not installed")

    def manifest(self, file=MANIFEST):
        shown = subprocess.run(["flatpak-builder", "--show-manifest", file], capture_output=True, text=True,
                               cwd=self.folder)
        self.assertEqual(shown.returncode, 0, shown.stderr)
        return json.loads(shown.stdout)

    def test_metadata_is_valid(self):
        self.need("appstreamcli")
        validate = ("appstreamcli", "validate", "--no-net")
        self.assertTrue(ends_well(*validate, METAINFO))
        for old, new in (("<name>Lapwright</name>", ""), ("CC0-1.0", "secret"), ('type="source"', 'type="none"'),
                         ("</developer_name>", "</developer>")):
            self.assertFalse(ends_well(*validate, changed(self.folder, METAINFO, old, new)), old)

    def test_metadata_says_what_is_so(self):
        root = ElementTree.parse(METAINFO).getroot()
        self.assertEqual(root.findtext("launchable"), DESKTOP.name)
        version = re.search(r"project\(lapwright VERSION (\S+)", (SOURCE / "CMakeLists.txt").read_text()).group(1)
        self.assertEqual(root.find("releases/release").get("version"), version)
        self.assertGreater(len(root.findall("screenshots/screenshot")), 0)
        for image in root.findall("screenshots/screenshot/image"):
            picture = SOURCE / "resources/screenshots" / image.text.rsplit("/", 1)[1]
            size = struct.unpack(">II", picture.read_bytes()[16:24])
            self.assertEqual((int(image.get("width")), int(image.get("height"))), size)

    def test_desktop_entry_is_valid(self):
        self.need("desktop-file-validate")
        self.assertTrue(ends_well("desktop-file-validate", DESKTOP))
        self.assertFalse(ends_well("desktop-file-validate", changed(self.folder, DESKTOP, "Type=", "Kind=")))

    def test_manifest_is_understood_and_fits_the_rest(self):
        self.need("flatpak-builder")
        manifest = self.manifest()
        root = ElementTree.parse(METAINFO).getroot()
        self.assertEqual(manifest["id"], root.findtext("id"))
        self.assertEqual(manifest["id"] + ".yml", MANIFEST.name)
        self.assertEqual(manifest["command"], root.findtext("provides/binary"))
        self.assertEqual(manifest["rename-desktop-file"], DESKTOP.name)
        self.assertEqual(manifest["rename-appdata-file"], METAINFO.name)
        self.assertTrue((SOURCE / "resources/icons" / (manifest["rename-icon"] + ".svg")).exists())
        self.assertNotIn("--share=network", manifest["finish-args"])
        fetched = re.search(r'fetch-sources" "\$here" (.+)', (PACKAGING / "flatpak/build").read_text()).group(1).split()
        *libraries, program = manifest["modules"]
        self.assertEqual([source["type"] for source in program["sources"]], ["dir"])
        named = set()
        for module in libraries:
            self.assertNotIn("build-options", module, "no library gets a network")
            for source in module["sources"]:
                if source["type"] != "archive":
                    continue
                self.assertRegex(source["sha256"], "^[0-9a-f]{64}$")
                named.add(pathlib.PurePath(source["path"]).name.split("_")[0])
        self.assertEqual(named, set(fetched))
        # A manifest that another program would not read is refused, or what is in it lost.
        wrong = changed(self.folder, MANIFEST, "    buildsystem: cmake-ninja", "  buildsystem: cmake-ninja")
        self.assertFalse(ends_well("flatpak-builder", "--show-manifest", wrong, folder=self.folder))


if __name__ == "__main__":
    unittest.main(argv=[sys.argv[0]], verbosity=2)
