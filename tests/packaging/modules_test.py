# SPDX-License-Identifier: GPL-3.0-or-later
"""modules_test.py BUILD: whoever builds the program alone, as packaging/try does, has the modules that it loads."""
import subprocess
import sys

build = sys.argv[1]


def ninja(*words):
    return subprocess.run(["ninja", "-C", build, "-t", *words], check=True, capture_output=True, text=True).stdout


modules = {line.split(":")[0] for line in ninja("targets", "all").splitlines()
           if "lapwright/modules/" in line and line.split(":")[0].endswith(".so")}
needed = {line.strip().lstrip("|").strip() for line in ninja("query", "app/lapwright").splitlines()}
missing = sorted(modules - needed)
print(len(modules), "modules;", "not built with the program: " + ", ".join(missing) if missing else "all are built with the program")
sys.exit(1 if missing or not modules else 0)
