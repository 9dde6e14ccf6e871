#!/usr/bin/python3
# SPDX-License-Identifier: GPL-3.0-or-later
# The HTML sheet under a finger:   touch_in_browser.py BROWSER SHEET.html PICTURES_FOLDER
# The browser is driven by its own protocol (chromedevtools.github.io/devtools-protocol), whose touches go the way of real
# ones.  At 360 px and at a desk's width: nothing wider than the screen, words large enough to be read, a finger's cursor
# with both speeds and the gap, segments that unfold, no request but the file itself.
import base64, json, os, re, socket, struct, subprocess, sys, tempfile, time, urllib.request

browser, sheet, pictures = sys.argv[1:4]
profile = tempfile.mkdtemp()
process = subprocess.Popen(
    [browser, "--headless", "--no-sandbox", "--disable-gpu", "--no-first-run", "--disable-background-networking",
     "--disable-component-update", "--disable-sync", "--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE 127.0.0.1",
     "--remote-allow-origins=*", "--remote-debugging-port=0", "--user-data-dir=" + profile, "about:blank"],
    stdout=subprocess.DEVNULL, stderr=subprocess.PIPE, text=True)


def port():
    for line in process.stderr:
        found = re.search(r"ws://127\.0\.0\.1:(\d+)/", line)
        if found:
            return int(found.group(1))
    raise SystemExit("the browser did not start")


class Page:
    """One page over a WebSocket (RFC 6455), text frames alone."""

    def __init__(self, address):
        host, path = re.match(r"ws://([^/]+)(/.*)", address).groups()
        name, number = host.split(":")
        self.socket = socket.create_connection((name, int(number)), timeout=60)
        key = base64.b64encode(os.urandom(16)).decode()
        self.socket.sendall((f"GET {path} HTTP/1.1\r\nHost: {host}\r\nUpgrade: websocket\r\nConnection: Upgrade\r\n"
                             f"Sec-WebSocket-Key: {key}\r\nSec-WebSocket-Version: 13\r\n\r\n").encode())
        head = b""
        while b"\r\n\r\n" not in head:
            head += self.socket.recv(1)
        assert b" 101 " in head, head
        self.number = 0
        self.requests = []

    def take(self, count):
        data = b""
        while len(data) < count:
            data += self.socket.recv(count - len(data))
        return data

    def message(self):
        whole = b""
        while True:
            first, second = self.take(2)
            length = second & 127
            if length == 126:
                length, = struct.unpack(">H", self.take(2))
            elif length == 127:
                length, = struct.unpack(">Q", self.take(8))
            whole += self.take(length)
            if first & 128:
                return json.loads(whole)

    def ask(self, method, **parameters):
        self.number += 1
        text = json.dumps({"id": self.number, "method": method, "params": parameters}).encode()
        mask = os.urandom(4)
        size = struct.pack(">BBH", 0x81, 0xFE, len(text)) if len(text) < 65536 else struct.pack(">BBQ", 0x81, 0xFF, len(text))
        self.socket.sendall(size + mask + bytes(b ^ mask[i % 4] for i, b in enumerate(text)))
        while True:
            answer = self.message()
            if answer.get("method") == "Network.requestWillBeSent":
                self.requests.append(answer["params"]["request"]["url"])
            if answer.get("id") == self.number:
                assert "error" not in answer, (method, answer)
                return answer["result"]

    def value(self, script):
        result = self.ask("Runtime.evaluate", expression=script, returnByValue=True)
        assert "exceptionDetails" not in result, result
        return result["result"].get("value")

    def touch(self, x, y, to=None):
        self.ask("Input.dispatchTouchEvent", type="touchStart", touchPoints=[{"x": x, "y": y}])
        if to is not None:
            for step in range(1, 6):  # and stands still before it is lifted: no fling
                self.ask("Input.dispatchTouchEvent", type="touchMove",
                         touchPoints=[{"x": x + (to - x) * step / 5, "y": y}])
            time.sleep(0.3)
        self.ask("Input.dispatchTouchEvent", type="touchEnd", touchPoints=[])
        time.sleep(0.6)  # the next touch is else the second of a double tap

    def open(self, width, height):
        self.ask("Network.enable")
        self.ask("Page.enable")
        self.ask("Emulation.setDeviceMetricsOverride", width=width, height=height, deviceScaleFactor=2, mobile=width < 600)
        self.ask("Emulation.setTouchEmulationEnabled", enabled=True)
        self.ask("Page.navigate", url="file://" + os.path.abspath(sheet))
        for _ in range(200):
            if self.value("document.readyState") == "complete" and self.value("document.querySelector('h1') != null"):
                return
            time.sleep(0.05)
        raise SystemExit("the sheet does not load")

    def box(self, script):
        return self.value(f"(() => {{ const b = ({script}).getBoundingClientRect();"
                          " return [b.left, b.top, b.width, b.height]; })()")


def least_letters_px(page):
    return page.value("""Math.min(...[...document.querySelectorAll('main *')].filter(e =>
        [...e.childNodes].some(n => n.nodeType == 3 ? n.textContent.trim().length > 0 : false)).filter(e =>
        e.getClientRects().length > 0).map(e => e.closest('svg') ? parseFloat(e.getAttribute('font-size')) *
        e.closest('svg').getBoundingClientRect().width / e.closest('svg').viewBox.baseVal.width :
        parseFloat(getComputedStyle(e).fontSize)))""")


def check(page, width, height, least_px):
    page.open(width, height)
    wide = page.value("document.documentElement.scrollWidth")
    assert wide <= width, f"{wide} px wide on a screen of {width}"
    letters = least_letters_px(page)
    assert letters >= least_px, f"letters of {letters} px at {width} px"
    plot = "[...document.querySelectorAll('figure.plots svg')].find(s => s.getClientRects().length > 0)"
    page.value(plot + ".scrollIntoView({block: 'center'})")
    left, top, span, tall = page.box(plot)
    words = page.value("document.querySelector('figure.plots').dataset.words").split("\n")
    assert len(words) > 100, len(words)
    first = page.value("document.querySelector('.readout').textContent")
    page.touch(left + 0.5 * span, top + 0.5 * tall)
    middle = page.value("document.querySelector('.readout').textContent")
    assert middle != first and middle in words, (first, middle)
    assert re.search(r"\d+ m, .+ · A \d+\.\d, B \d+\.\d km/h · ", middle), middle
    assert 0.3 * len(words) < words.index(middle) < 0.6 * len(words), middle
    page.touch(left + 0.5 * span, top + 0.5 * tall, to=left + 0.8 * span)
    later = page.value("document.querySelector('.readout').textContent")
    assert words.index(later) > words.index(middle), (middle, later)
    line = page.box(plot + ".querySelector('.cursor')")
    assert abs(line[0] - (left + 0.8 * span)) < 3.0, (line, left + 0.8 * span)
    moved = page.box("document.querySelector('figure.plots svg ~ .readout')")
    assert moved[2] <= width
    page.value("document.querySelector('summary').scrollIntoView({block: 'center'})")
    x, y, w, h = page.box("document.querySelector('summary')")
    assert width > 600 or h >= 40, f"a summary of {h} px is small for a finger"
    assert not page.value("document.querySelector('details').open")
    page.touch(x + 0.5 * w, y + 0.5 * h)
    for _ in range(100):  # a tap is told from other gestures first
        if page.value("document.querySelector('details').open"):
            break
        time.sleep(0.05)
    else:
        raise AssertionError("a segment does not unfold")
    assert "against" in page.value("document.querySelector('details p').textContent")
    picture = page.ask("Page.captureScreenshot", captureBeyondViewport=True,
                       clip={"x": 0, "y": 0, "width": width,
                             "height": page.value("document.documentElement.scrollHeight"), "scale": 1})
    with open(os.path.join(pictures, f"sheet-{width}.png"), "wb") as file:
        file.write(base64.b64decode(picture["data"]))
    foreign = [url for url in page.requests if not url.startswith("file://" + os.path.abspath(sheet))]
    assert not foreign, foreign


try:
    with urllib.request.urlopen(f"http://127.0.0.1:{port()}/json/list") as answer:
        target = [t for t in json.load(answer) if t["type"] == "page"][0]
    page = Page(target["webSocketDebuggerUrl"])
    check(page, 360, 640, 9.5)
    check(page, 1000, 900, 7.5)
finally:
    process.terminate()
    process.wait(20)
