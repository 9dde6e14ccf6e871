#!/bin/bash
# SPDX-License-Identifier: GPL-3.0-or-later
# The HTML sheet as a browser shows it, without a network:   html_in_browser_test.sh LAPWRIGHT SAMPLE_SESSIONS BROWSER
# Read back are the text and the table that the browser made of the file, the picture that it painted, its print, and what
# it does under a finger (touch_in_browser.py).
set -u
program=$1
samples=$2
browser=$3
home=$(mktemp -d)
trap 'rm -rf "$home"' EXIT
export HOME=$home LC_ALL=C.UTF-8 DBUS_SESSION_BUS_ADDRESS=disabled:
pair=("$samples/plover-saturday-2.csv" "$samples/dunlin-saturday-2.txt")

fail() {
    echo "FAILED: $1" >&2
    cat "$home/errors" >&2
    exit 1
}

show() {
    timeout 60 "$browser" --headless --no-sandbox --disable-gpu --disable-quic --no-first-run \
        --disable-background-networking --disable-component-update --disable-sync --host-resolver-rules='MAP * ~NOTFOUND' \
        --user-data-dir="$home/profile" --hide-scrollbars --window-size=1000,1500 "$@" "file://$home/sheet.html" \
        2>>"$home/errors"
}

"$program" sheet "${pair[@]}" --out "$home/sheet.html" 2>"$home/errors" || fail "the sheet was not written"
"$program" compare "${pair[@]}" --json >"$home/compare.json" 2>>"$home/errors" || fail "no comparison to hold it against"
cp "$home/sheet.html" "$home/before"

show --dump-dom >"$home/dom.html" || fail "the browser cannot open the sheet"
python3 - "$home" <<'CHECK' 2>>"$home/errors" || fail "what the browser read is not what compare says"
import html.parser, json, sys

class Gains(html.parser.HTMLParser):
    def __init__(self):
        super().__init__()
        self.gains, self.words, self.loads = [], [], []
    def handle_starttag(self, tag, attributes):
        of = dict(attributes)
        if tag == "data":
            self.gains.append(float(of["value"]))
        self.loads += [of[k] for k in ("src", "href") if of.get(k, "#")[0] != "#"]
        if tag == "script" and of: # its own, in the file, has no attribute
            self.loads.append("script")
    def handle_data(self, data):
        self.words.append(data)

home = sys.argv[1]
read = Gains()
read.feed(open(home + "/dom.html", encoding="utf-8").read())
compare = json.load(open(home + "/compare.json", encoding="utf-8"))
corners = [s["gain_s"] for s in compare["segments"] if s["kind"] == "corner"]
assert len(corners) > 5 and read.gains == corners, (read.gains, corners)
text = " ".join(read.words)
assert "\ufffd" not in text and "Ternbank" in text, text
assert not read.loads, read.loads
CHECK

show --screenshot="$home/page.png" || fail "the browser cannot paint the sheet"
# Both cars' colours are on the page, as their lines' and their words'.
for colour in '#005A9E' '#B84700'; do
    count=$(convert "$home/page.png" -fuzz 6% -fill black +opaque "$colour" -fill white -opaque "$colour" -format '%[fx:int(mean*w*h)]' info:)
    [ "$count" -gt 300 ] || fail "$count pixels of $colour on the page"
done

show --no-pdf-header-footer --print-to-pdf="$home/print.pdf" || fail "the browser cannot print the sheet"
[ "$(pdfinfo "$home/print.pdf" | awk '$1 == "Pages:" { print $2 }')" = 1 ] || fail "it does not print on one page"
pdftotext -layout "$home/print.pdf" "$home/print.txt"
grep -q 'A ahead by' "$home/print.txt" || fail "the headline is not on the print"
python3 "$(dirname "$0")/touch_in_browser.py" "$browser" "$home/sheet.html" "${PICTURES:-$home}" 2>>"$home/errors" ||
    fail "it does not work under a finger"
cmp -s "$home/before" "$home/sheet.html" || fail "the sheet was changed by being looked at"
