#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""What the program says of the sample sessions and of small files, held against what it said before.

  golden.py PROGRAM [NAME...]              shows every change as a difference, and fails where there is one
  golden.py PROGRAM --take-over [NAME...]  takes the changes over; look at `git diff` before you commit them

`cases` names each: NAME | HOW | arguments, one a line. HOW says what of the output is kept:
  text   as it stands
  json   one value a line, numbers to six digits (the seventh depends on the machine's mathematics library)
  words  the words alone, every number as 0 and every cell's winner as #: of what is drawn at random
  sheet  the text of the HTML sheet, likewise as words
"""
import difflib
import html.parser
import json
import pathlib
import re
import subprocess
import sys
import tempfile

here = pathlib.Path(__file__).resolve().parent
root = here.parent.parent


class Text(html.parser.HTMLParser):
    def __init__(self):
        super().__init__()
        self.lines, self.hidden = [], 0

    def handle_starttag(self, tag, attributes):
        self.hidden += tag in ("style", "script")

    def handle_endtag(self, tag):
        self.hidden -= tag in ("style", "script")

    def handle_data(self, data):
        if not self.hidden and data.strip():
            self.lines.append(" ".join(data.split()))


def without_numbers(text):
    text = re.sub(r"[−-]?\d+(:\d+)*([.,]\d+)?", "0", text)
    text = re.sub(r"\b[AB] 0( ±0)?|[·—]", "#", text)
    return re.sub(r"[ ─]{2,}", "  ", text)


def value_lines(value, path=""):
    if isinstance(value, dict):
        return [line for key, inner in value.items() for line in value_lines(inner, f"{path}.{key}")] or [f"{path} {{}}"]
    if isinstance(value, list):
        if len(value) > 24 and all(isinstance(v, (int, float)) for v in value):
            return [f"{path}[] {len(value)} numbers, first {shown(value[0])}, last {shown(value[-1])}"]
        return [line for i, inner in enumerate(value) for line in value_lines(inner, f"{path}[{i}]")] or [f"{path} []"]
    return [f"{path} {shown(value)}"]


def shown(value):
    return f"{value:.6g}" if isinstance(value, float) else json.dumps(value, ensure_ascii=False)


def run(program, arguments):
    done = subprocess.run([program, *arguments], cwd=root, capture_output=True, text=True, encoding="utf-8", timeout=300)
    return done.stdout, done.stderr, done.returncode


def answer(program, how, arguments):
    if how == "sheet":
        with tempfile.TemporaryDirectory() as folder:
            file = pathlib.Path(folder, "sheet.html")
            _, told, status = run(program, [*arguments, "--out", str(file)])
            text = Text()
            text.feed(file.read_text(encoding="utf-8"))
        return without_numbers("\n".join(text.lines)) + "\n" + f"exit {status}\n"
    out, told, status = run(program, arguments)
    if how == "json" and out:
        out = "\n".join(value_lines(json.loads(out))) + "\n"
    if how == "words":
        out = without_numbers(out)
    return out + "".join(f"stderr: {line}\n" for line in told.splitlines()) + f"exit {status}\n"


def cases():
    for line in (here / "cases").read_text(encoding="utf-8").splitlines():
        if line and not line.startswith("#"):
            name, how, arguments = (part.strip() for part in line.split("|"))
            yield name, how, arguments.split()


def main():
    program, *names = sys.argv[1:]
    program = str(pathlib.Path(program).resolve())
    take_over = "--take-over" in names
    names = [name for name in names if name != "--take-over"]
    changed = 0
    for name, how, arguments in cases():
        if names and name not in names:
            continue
        file = here / "expected" / f"{name}.txt"
        before = file.read_text(encoding="utf-8") if file.exists() else ""
        now = answer(program, how, arguments)
        if now == before:
            continue
        changed += 1
        if take_over:
            file.parent.mkdir(exist_ok=True)
            file.write_text(now, encoding="utf-8")
        sys.stdout.writelines(difflib.unified_diff(before.splitlines(True), now.splitlines(True), f"{name} before", f"{name} now", n=1))
    print(f"{changed} changed" + (" and taken over" if take_over else ""))
    return 1 if changed and not take_over else 0


if __name__ == "__main__":
    sys.exit(main())
