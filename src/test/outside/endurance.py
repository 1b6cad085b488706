#!/usr/bin/env python3
"""What the screen must stand, done to the installed program in a pseudo-terminal at the full figures: a line each.

    python3 src/test/outside/endurance.py [--only NAME] [--share 0.05] target/takeup/bin/takeup

--share does that part of each figure. Needs strace for "saved", "demo", "first_run" and "faults". The status is 1 if anything failed.
"""
import argparse
import itertools
import json
import os
import pathlib
import random
import re
import shutil
import subprocess
import sys
import tempfile
import time

from screen import KEYS, Screen

VIEWS = {"shoot": "", "help": "f1", "frames": "f2", "rolls": "f3", "plan": "f4", "bag": "f5", "day_end": "f6", "order": "f7",
         "find": "f8", "big": "f10", "actions": "enter"}
DAY = "cam 645 1\nload bw100\ncam 35\nload cn400\nm 5.6 125\n5.6 125 ; first\nplan 16:30 Prize-giving wants 12\nbag add 3 cn400 135\n"
CHANGES = ["5.6 125", ". ; bow seat", "8 250", "fix 1 8 125", "blank", "lost 1", "note torn at the rewind", "lens 50", "bias +1/3",
           "filter yellow", "filter off", "m 8 250", "cam 35", "cam 645 1", "hold f8", "hold off", "x3", "insert 1 4 60", "drop 1",
           "counter 9", "push 1", "normal", "unlogged", "double", "tripod on", "tripod off", "plan 17:00 crew portrait wants 4",
           "bag add 2 bw400 135", "fix roll @100", "with the cox", "at the slip"]
# What leads back from where a key moves to, and lists that are short enough to be seen whole.
MOVES = {"Space": "home", "Up": "end", "Down": "home", "PgUp": "end", "PgDn": "home", "Home": "end", "End": "home"}
WHOLE = {"plan", "bag", "day_end", "find", "order"}
ERRORS = ["ENOSPC", "EIO", "EACCES", "EROFS", "EMFILE"]
TRACE = re.compile(r"\bat [a-z][\w.$]*\(|Exception in thread|StackTrace")
MOUSE = re.compile(rb"\x1b\[\?100[0236]h")


class Endurance:
    def __init__(self, program, share, scratch):
        self.program = os.path.abspath(program)
        self.share = share
        self.scratch = pathlib.Path(scratch)
        self.random = random.Random(20_261_129)
        self.folders = itertools.count()
        self.screens = []

    def some(self, figure, least=2):
        return max(least, round(figure * self.share))

    def run(self, *arguments, text="", **environment):
        return subprocess.run([self.program, *arguments], input=text, capture_output=True, text=True,
                              env={**os.environ, "LC_ALL": "C.UTF-8", **environment})

    def folder(self):
        return self.scratch / f"data{next(self.folders)}"

    def day(self):
        data = self.folder()
        done = self.run("line", "--data", str(data), text=DAY)
        assert done.returncode == 0, done.stdout + done.stderr
        return data

    def screen(self, data, *arguments, before=(), columns=80, rows=24, **environment):
        command = [*before, self.program, "--data", str(data), *arguments]
        screen = Screen(command, columns, rows, HOME=str(self.scratch), **environment)
        self.screens.append(screen)
        assert screen.until(lambda: ">" in screen.text() and b"\x1b[?1049h" in screen.stream) is not None, screen.text()
        screen.quiet()
        return screen

    def typed(self, screen, line):
        screen.send(line + "\r")
        screen.settled()

    def leave(self, screen):
        screen.send("\x1b")
        screen.quiet(0.2)
        screen.send("\x15quit\r")
        status = screen.ended()
        if status is None:
            screen.kill()
        return status

    def show(self, screen, view):
        """Goes to a view, from wherever it is."""
        for _ in range(6):
            screen.send("\x15")
            screen.settled()    # what comes in one read with another key is a paste
            if "Esc" not in screen.text().rsplit("\n", 1)[-1]:
                break
            screen.send("\x1b")
            screen.until(lambda: "Esc" not in screen.text().rsplit("\n", 1)[-1], 0.6)
            screen.settled()
        before = screen.text()
        if view != "shoot":
            screen.send("\r") if VIEWS[view] == "enter" else screen.key(VIEWS[view])
            assert screen.until(lambda: screen.text() != before, 10) is not None, f"{view} does not open\n{before}"
            screen.until(lambda: "reading the " not in screen.text(), 5)
        screen.settled()

    def exports(self, data):
        rolls = []
        for number in (1, 2):
            roll = json.loads(self.run("roll", str(number), "--json", "--data", str(data)).stdout)
            del roll["revision"]
            rolls.append(roll)
        return rolls

    def journals(self, data):
        return {it.name: it.read_bytes() for it in sorted(data.rglob("*.journal"))}

    def lines(self, data):
        return sum(it.count(b"\n") for it in self.journals(data).values())

    def frames(self, data):
        return sum(it.count(b'"event":"frame"') for it in self.journals(data).values())

    def pace(self):
        """From the start to the frame counter, and from a key that logs a frame to the last byte of its picture."""
        data, starts, keys = self.day(), [], []
        for _ in range(self.some(50)):
            begun = time.monotonic()
            screen = Screen([self.program, "--data", str(data)], HOME=str(self.scratch))
            self.screens.append(screen)
            assert screen.until("left of 36") is not None, screen.text()
            starts.append(time.monotonic() - begun)
            screen.settled()
            begun = last = time.monotonic()
            screen.send(" ")
            while time.monotonic() - last < 0.1:
                before = len(screen.stream)
                screen.listen(0.002)
                last = time.monotonic() if len(screen.stream) > before else last
            assert "saved" in screen.text() or re.search(r"✓ .* Frame|Undone", screen.text()), screen.text()
            keys.append(last - begun)
            screen.send("\x1a")
            screen.settled()
            screen.kill()
        tours = []
        for _ in range(self.some(10)):
            begun = time.monotonic()
            screen = Screen([self.program, "demo"], HOME=str(self.scratch), TMPDIR=str(self.scratch),
                            JDK_JAVA_OPTIONS=f"-Djava.io.tmpdir={self.scratch}")
            self.screens.append(screen)
            assert screen.until("leaves the tour") is not None, screen.text()
            tours.append(time.monotonic() - begun)
            screen.kill()
        tour = sorted(tours)[len(tours) // 2]
        start, key = sorted(starts)[len(starts) // 2], sorted(keys)[int(len(keys) * 0.95)]
        assert start <= 0.4 and key <= 0.05 and tour <= 1, f"{start * 1000:.0f} ms, {key * 1000:.0f} ms, {tour * 1000:.0f} ms"
        return (f"{len(starts)} starts: the frame counter after {start * 1000:.0f} ms, half of them; a frame logged, saved and painted "
                f"{key * 1000:.0f} ms after its key, 95 of 100; the demo's day after {tour * 1000:.0f} ms")

    def undo(self):
        """Random changes, the program killed, and each taken back by the next one; then all done again."""
        data = self.day()
        first = self.exports(data)
        screen = self.screen(data)
        wanted = self.some(100)
        done = 0
        while done < wanted:
            before = self.lines(data)
            line = self.random.choice(CHANGES)
            screen.send(line + "\r")
            # Which camera is in the hand is no step of its own.
            done += screen.until(lambda: self.lines(data) > before, 0.4) is not None and not line.startswith("cam ")
            screen.send("\x15\x1b")
            screen.quiet(0.12)
        screen.kill()
        changed = self.exports(data)
        assert changed != first
        screen = self.screen(data)
        least = self.lines(data)
        for key, words, goal in (("\x1a", "undos", first), ("\x19", "redos", changed)):
            for number in range(wanted):
                screen.send(key)
                assert screen.until(lambda: self.lines(data) > least, 5) is not None, f"{words} {number}: {screen.text()}"
                screen.quiet(0.03)
                assert self.lines(data) > least, "the journal lost lines"
                least = self.lines(data)
            found = self.exports(data)
            assert found == goal, f"{words}: {[(it, one[it], other[it]) for one, other in zip(goal, found) for it in one if one[it] != other[it]]}"
        assert self.leave(screen) == 0
        return f"{wanted} changes, killed, {wanted} undos and as many redos: the rolls as before, byte for byte"

    def drafts(self):
        """What was being typed when the program died is offered again, but for its last second."""
        data = self.day()
        before = self.journals(data)
        worst = 0.0
        runs = self.some(50)
        for number in range(runs):
            (data / "draft").unlink(missing_ok=True)
            screen = self.screen(data)
            text, times = "; ", []
            screen.send(text)
            begun = time.monotonic()
            until = self.random.uniform(0.3, 2.5)
            while time.monotonic() - begun < until:
                letter = self.random.choice("abcdefghij klm.")
                screen.send(letter)
                text += letter
                times.append(time.monotonic())
                screen.listen(self.random.uniform(0.01, 0.08))
            screen.kill()
            killed = time.monotonic()
            screen = self.screen(data)
            screen.key("pgup")
            screen.until("> ;", 2)
            shown = next((it for it in reversed(screen.text().split("\n")) if it.startswith("> ")), "> ")[2:]
            kept = os.path.commonprefix([shown, text.rstrip()]).rstrip()
            assert shown.rstrip() == kept, f"{shown!r} is not what was typed: {text!r}"
            lost = len(text.rstrip()) - len(kept)
            if lost:
                assert kept or killed - times[0] < 1, f"nothing of {text!r}"
                worst = max(worst, killed - times[max(0, len(kept) - 2)])
            screen.kill()
        assert worst <= 1, f"{worst:.2f} s of typing lost"
        for keys in ("\x03", "\x1b"):
            screen = self.screen(data)
            screen.send("; the four at the slip")
            screen.quiet()
            screen.send(keys)
            screen.quiet(0.3)
            screen.key("pgup")
            assert screen.until("; the four at the slip", 2) is not None, repr(keys)
            screen.kill()
        assert self.journals(data) == before
        return f"{runs} kills at random while typing: at most {worst:.2f} s of typing lost; after Ctrl-C and Esc PgUp brings it back"

    def paste(self):
        """Printable text on every view, marked as a paste or not, changes nothing."""
        size = 10_000
        pasted = 0
        for view in list(VIEWS)[:self.some(len(VIEWS))]:
            for marked in (True, False):
                data = self.day()
                before = self.journals(data)
                screen = self.screen(data)
                self.show(screen, view)
                text = "".join(self.random.choice("0123456789 .;xmuqy\rabcdef/+-") if self.random.random() < 0.5 else
                               chr(self.random.randrange(0x20, 0x7f)) for _ in range(size))
                screen.send("\x1b[200~" + text + "\x1b[201~" if marked else text)
                screen.quiet(0.4)
                assert self.journals(data) == before, f"{view}, {'marked' if marked else 'raw'}"
                screen.kill()
                pasted += 1
        return f"{pasted} pastes of {size:,} characters on {pasted // 2} views, marked and raw: nothing logged, nothing changed"

    def torn(self):
        """Keys whose bytes arrive apart do what the same keys do in one piece, and Esc alone acts at once."""
        whole, parts = (self.screen(self.day()) for _ in range(2))
        names = [it for it in KEYS if it not in ("delete", "shift+tab", "f9")]
        figure, done = self.some(200), 0
        while done < figure:
            name = self.random.choice(names)
            whole.key(name)
            sent, widest = None, 0.0
            for byte in b"\x1b" + KEYS[name].encode():
                now = time.monotonic()
                widest = max(widest, now - (sent or now))
                sent = now
                parts.send(bytes([byte]))
                parts.listen(self.random.randrange(0, 101) / 1000)
            if widest > 0.11:    # the machine was busy, and this was no gap of a tenth of a second
                for it in (whole, parts):
                    self.show(it, "shoot")
                continue
            whole.quiet(0.03)
            same = lambda: whole.listen(0) and self.plain(whole) == self.plain(parts)
            assert parts.until(same, 3) is not None, f"{name}, key {done}\n{whole.text()}\n{parts.text()}"
            done += 1
        slowest = []
        for _ in range(self.some(50)):
            self.show(parts, "help")
            parts.send("\x1b")
            taken = parts.until(lambda: "Esc" not in parts.text().rsplit("\n", 1)[-1], 2)
            assert taken is not None, parts.text()
            slowest.append(taken)
        slowest = sorted(slowest)[int(len(slowest) * 0.95)]
        assert slowest <= 0.3, f"Esc acted after {slowest * 1000:.0f} ms"
        for it in (whole, parts):
            assert self.leave(it) == 0
        return f"{figure} keys byte by byte, 0 to 100 ms apart: as in one piece; Esc acts within {slowest * 1000:.0f} ms, 95 of 100"

    @staticmethod
    def plain(screen):
        return re.sub(r"\d\d:\d\d(:\d\d)?|\d+ min ago|just now", "#", screen.text())

    def suspend(self):
        """Stopped under a shell with job control, and continued: painted within a second, and the next key acts."""
        data = self.day()
        shell = Screen(["bash", "--norc", "-i"], HOME=str(self.scratch), PS1="shell> ")
        self.screens.append(shell)
        shell.until("shell>")
        shell.send(f"{self.program} --data {data}\r")
        assert shell.until("Space same again") is not None, shell.text()
        slowest, figure = 0.0, self.some(20)
        for _ in range(figure):
            job = int(pathlib.Path(f"/proc/{shell.process}/task/{shell.process}/children").read_text().split()[0])
            frames = self.frames(data)
            os.kill(job, 20)
            assert shell.until("Stopped", 5) is not None, shell.text()
            shell.send("fg\r")
            taken = shell.until("Space same again", 5)
            assert taken is not None, shell.text()
            slowest = max(slowest, taken)
            shell.send(" ")
            assert shell.until(lambda: self.frames(data) == frames + 1, 5) is not None, shell.text()
            shell.quiet()
        assert slowest <= 1
        shell.kill()
        return f"{figure} times stopped and continued: painted within {slowest * 1000:.0f} ms, the next key logs"

    def windows(self):
        """Every size of window, one after the other, while frames are logged."""
        data = self.day()
        screen = self.screen(data)
        expected, looked = self.frames(data), 0
        figure = self.some(2000)
        for number in range(figure):
            wide = self.random.random() < 0.3
            columns = self.random.randrange(1, 501 if wide else 101)
            rows = self.random.randrange(1, 201 if wide else 41)
            screen.size(columns, rows)
            screen.listen(0.01)
            if number % 80 == 79:
                screen.quiet(0.15)
                screen.send(" ")
                expected += 1
                assert screen.until(lambda: self.frames(data) == expected, 5) is not None, f"{columns}x{rows}"
                if columns >= 40 and rows >= 12:
                    screen.quiet(0.1)
                    if rows < 17:  # there the names are large letters, and words stand beside the prompt until something is said
                        screen.send("\x0c")
                        screen.quiet(0.1)
                    words = "cn400" if rows >= 17 else r"EI 200|R00"
                    text = screen.text().replace("Colour negative 400", "cn400")
                    assert re.search(words, text) and re.search("left|end", text), f"{columns}x{rows}\n{screen.text()}"
                    looked += 1
                if expected % 30 == 0:
                    screen.size(80, 24)
                    screen.quiet(0.1)
                    self.typed(screen, "unload yes")
                    self.typed(screen, "load cn400")
        for columns, rows in ((40, 12), (39, 11), (20, 5), (20, 1)):
            screen.size(columns, rows)
            screen.send("\x0c")
            screen.quiet(0.2)
            text = screen.text()
            assert ("left" in text) if rows >= 12 else re.search(r"\d", text) and (rows < 6 or "quit" in text), f"{columns}x{rows}\n{text}"
        assert self.leave(screen) == 0
        return f"{figure:,} windows from 1x1 to 500x200, {expected} frames logged meanwhile, {looked} pictures read: nothing lost"

    def colours(self):
        """Without colour none is sent; every look says the same words as the one without colours."""
        words = {}
        for theme in ("mono", "dark", "sun", "night"):
            screen = self.screen(self.day(), "--theme", theme)
            for view in VIEWS:
                self.show(screen, view)
                words[theme, view] = re.sub(rf"\b{theme}\b", "#", self.plain(screen))
                assert words[theme, view] == words["mono", view], f"{theme}, {view}\n{words[theme, view]}\n{words['mono', view]}"
            screen.kill()
        screen = self.screen(self.day(), NO_COLOR="1")
        for view in VIEWS:
            self.show(screen, view)
        codes = {int(it or 0) for found in re.findall(rb"\x1b\[([0-9;]*)m", screen.stream) for it in found.split(b";")}
        assert not [it for it in codes if 30 <= it <= 49 or 90 <= it <= 107], codes
        screen.kill()
        return f"NO_COLOR: 0 colour codes on {len(VIEWS)} views; dark, sun and night say the words of mono on each"

    def plain_characters(self):
        """On a terminal without UTF-8 the same words, and no sign that it cannot draw."""
        one, other = self.screen(self.day()), self.screen(self.day(), LC_ALL="C", LANG=None, TERM="linux")
        for view in VIEWS:
            self.show(one, view)
            self.show(other, view)
            # of a large figure, half a cell is a g on a filled ground
            wanted, found = (sorted(set(re.findall(r"[A-Za-z]{3,}", self.plain(it))) - {"ggg"}) for it in (one, other))
            assert wanted == found, f"{view}: {set(wanted) ^ set(found)}\n{one.text()}\n{other.text()}"
            assert self.plain(one).count("?") == self.plain(other).count("?"), f"{view}\n{other.text()}"
        assert max(other.stream) < 0x80
        self.show(other, "shoot")
        self.typed(other, "6.7 125")
        assert other.until("f/6.7 1/125", 3) is not None, other.text()
        for it in (one, other):
            it.kill()
        return f"LC_ALL=C: {len(other.stream):,} bytes below 0x80 on {len(VIEWS)} views, the words of UTF-8, f/6.7 1/125"

    def keys(self):
        """Each key that is listed, pressed on each of its views in the terminal, changes something or says why not."""
        listed = json.loads(self.run("keys", "--json").stdout)["keys"]
        screen = self.screen(self.day())
        pressed, resting, dead = 0, 0, []
        bytes_of = {"Space": " ", "Enter": "\r", "Tab": "\t", "Esc": "\x1b", "Backspace": "\x7f", "Del": "\x1b[3~", "?": "?"}
        for key in listed:
            for view in key["views"]:
                self.show(screen, view)
                if key["prompt"] == "typed" or key["key"] in ("Esc", "Ctrl-C") and view == "shoot":
                    screen.send("; bow")
                    screen.settled()
                    screen.send("\x1b[D")
                    screen.settled()
                name = key["key"]
                if name in MOVES and key["prompt"] != "typed":
                    screen.key(MOVES[name])
                    screen.settled()
                before, sent = screen.text(), len(screen.stream)
                if name in bytes_of:
                    screen.send(bytes_of[name])
                elif name.startswith("Ctrl-"):
                    screen.send(chr(ord(name[5]) - 64))
                elif len(name) == 1:
                    screen.send(name)
                else:
                    screen.key(name.lower().replace("-", "+"))
                moved = lambda: screen.text() != before or len(screen.stream) > sent
                if screen.until(moved, 0.5) is None:
                    screen.settled()
                if not moved():
                    if name in MOVES and view in WHOLE:
                        resting += 1
                    elif not screen.text().split("\n")[-3].strip():    # the same reason may stand there already
                        dead.append(f"{name} ({key['does']}) on {view}")
                pressed += 1
        screen.kill()
        assert not dead, dead
        return f"{len(listed)} keys pressed on each of their views, {pressed} in all: none dead; {resting} had nowhere to go on a list that is seen whole"

    def kept(self, log):
        if os.environ.get("KEEP"):
            shutil.copy(log, os.environ["KEEP"])
        return log.read_text(errors="replace").splitlines()

    def saved(self):
        """A frame is said to be saved after the call that forces it to the disk has come back."""
        data, log = self.day(), self.scratch / "saved.log"
        screen = self.screen(data, before=["strace", "-f", "-y", "-s", "4000", "-e", "trace=write,fdatasync,fsync", "-o", str(log)])
        figure = self.some(36) - 1
        for number in range(figure):
            screen.send("5.6 125\r")
            assert screen.until(f"Frame {number + 2} on R0002", 10) is not None, screen.text()
        self.leave(screen)
        written, forced, said = 1, 1, set()
        for line in self.kept(log):
            if "R0002.journal>" in line and " write(" in line:
                written = max([written, *map(int, re.findall(r'\\"frame\\":\{\\"number\\":(\d+)', line))])
            elif re.search(r"(fdatasync|fsync)(\(.*R0002.journal>\)| resumed).*= 0", line):
                forced = written
            elif "/dev/" in line:
                for number in map(int, re.findall(r"(?<!Enter: )Frame (\d+) on R0002", line)):
                    assert number <= forced, f"frame {number} was said to be saved before it was: {line[:200]}"
                    said.add(number)
        assert len(said) >= figure * 0.7 and forced == figure + 1, f"{forced} forced, said: {said}"
        return f"{len(said)} frames of {figure + 1} said to be saved in one piece, each after its sync: 0 exceptions"

    def full(self):
        """No command takes a full disk behind its output for success."""
        data = self.day()
        names = re.findall(r"^  ([a-z][a-z-]*)  ", self.run("--help").stdout, re.M)
        silent, asked = [], 0
        needs = {"roll": ["1"], "slate": ["1"], "stock": ["cn400"], "camera": ["35"], "meter": ["5.6", "125"], "completion": ["bash"],
                 "schema": ["roll"], "find": ["bow"], "order": ["list"], "plan": []}
        for name in [it for it in names if it not in ("takeup", "demo")]:
            arguments = [name, *needs.get(name, [])]
            for words in (arguments, [name, "--help"]):
                takes = words[-1] == "--help" or "--data" in self.run(name, "--help").stdout
                line = [self.program, *words, *(["--data", str(data)] if takes and words[-1] != "--help" else [])]
                plain = subprocess.run(line, input="cam 35\n", capture_output=True, text=True)
                if not plain.stdout:
                    continue
                with open("/dev/full", "w") as device:
                    ended = subprocess.run(line, input="cam 35\n", stdout=device, stderr=subprocess.PIPE, text=True)
                asked += 1
                if ended.returncode == 0 or "could not be written" not in ended.stderr:
                    silent.append(f"{words}: {ended.returncode}, {ended.stderr}")
        assert not silent, silent
        return f"{asked} command lines > /dev/full: every one ends with an error and says why"

    def settings(self):
        """Broken settings: named with file and line, and the screen starts."""
        broken = ["", "{", "[]", "{]", "null", "3", '"sun"', '{"theme": "nigth"}', '{"theme": 3}', '{"theme": null}', '{"themes": "sun"}',
                  '{"Theme": "sun"}', '{"ascii": "yes"}', '{"ascii": 1}', '{"framesLeft": 99}', '{"framesLeft": -1}', '{"framesLeft": "4"}',
                  '{"framesLeft": 2.5}', '{"writer": "abcd"}', '{"writer": 7}', '{"writer": ""}', '{"theme": "sun",}', "{theme: sun}",
                  '{"theme": "sun" "ascii": true}', '{"theme": "sun", "theme": "dark"}', "theme = sun", "\x00\x01\x02", "\ufffe{}",
                  '{"ascii": true, "framesLeft": 40, "them": "sun"}', "{" * 2000, '{"theme": "\\u00"}', '// sun\n{"theme": "sun"}']
        for number, text in enumerate(broken):
            data = self.folder()
            data.mkdir()
            file = data / "settings.json"
            file.write_bytes(text.encode("utf-8", "surrogatepass"))
            checked = self.run("check", "--data", str(data))
            assert checked.returncode == 1 and re.search(r"settings\.json:\d+: ", checked.stdout + checked.stderr), \
                f"{text[:40]!r}: {checked.returncode} {checked.stdout}{checked.stderr}"
            screen = self.screen(data)
            screen.send("cam 35\r")
            assert screen.until("35mm", 5) is not None, f"{text[:40]!r}\n{screen.text()}"
            screen.kill()
            assert not TRACE.search(checked.stdout + checked.stderr + screen.text())
        home = self.scratch / "house"
        home.mkdir()
        paths = lambda **it: self.run("paths", HOME=str(home), **it).stdout
        assert f"{home}/else/takeup" in paths(XDG_DATA_HOME=f"{home}/else")
        assert f"{home}/.local/share/takeup" in paths(XDG_DATA_HOME="relative")
        return f"{len(broken)} broken settings: each named with its line, and the screen starts; a relative XDG_DATA_HOME is left aside"

    def first_run(self):
        """From an empty home to the first logged frame, without a manual."""
        home = self.scratch / "empty"
        home.mkdir()
        begun = time.monotonic()
        screen = Screen([self.program], HOME=str(home))
        self.screens.append(screen)
        keys = 0
        for words, pressed in (("which camera", "\x1b[B"), ("►", "\r"), ("which film", "\x1b[B"), ("►", "\r"), ("how much light", "\x1b[B"),
                               ("►", "\r"), ("Space", " ")):
            assert screen.until(words) is not None, screen.text()
            screen.quiet()
            screen.send(pressed)
            keys += 1
        assert screen.until(lambda: self.frames(home) == 1, 5) is not None, screen.text()
        taken = time.monotonic() - begun
        self.leave(screen)
        assert keys <= 10 and taken <= 60
        return f"an empty home to the first frame: {keys} keys, {taken:.1f} s"

    def demo(self):
        """The demo writes in a temporary folder alone."""
        home, log = self.scratch / "demo-home", self.scratch / "demo.log"
        home.mkdir()
        temporary = self.scratch / "temporary"
        temporary.mkdir()
        screen = Screen(["strace", "-f", "-e", "trace=openat,open,creat,mkdir,rename,unlink,link,symlink", "-o", str(log), self.program, "demo"],
                        HOME=str(home), TMPDIR=str(temporary), JDK_JAVA_OPTIONS=f"-Djava.io.tmpdir={temporary}")
        self.screens.append(screen)
        assert screen.until("leaves the tour") is not None, screen.text()
        for _ in range(9):
            screen.send("\r")
            screen.quiet(0.3)
        screen.send(" ")
        screen.quiet(0.3)
        screen.send("\x03\x03")
        screen.ended()
        written = set()
        for line in log.read_text(errors="replace").splitlines():
            if " = -1" in line or "O_RDONLY" in line:
                continue
            written.update(re.findall(r'(?:open\w*|creat|mkdir|rename|unlink|link|symlink)\([^"]*"([^"]*)"', line))
        # The counters of a JVM lie with the temporary files of all programs.
        beside = (str(temporary), "/dev/", "/proc/", os.path.join(tempfile.gettempdir(), "hsperf"))
        elsewhere = [it for it in written if not it.startswith(beside)]
        assert len(written) > 20 and not elsewhere, elsewhere
        assert not [it for it in home.rglob("*") if it.is_file()]
        return f"the tour opened {len(written)} files to write, every one in its temporary folder"

    def faults(self):
        """A call on the disk fails while the screen runs: no stack trace on it, and the status is told in words."""
        calls = ["openat", "write", "fdatasync", "rename", "mkdir", "unlink", "fsync", "pwrite64"]
        figure, seen, met = self.some(100), 0, 0
        log = self.scratch / "faults.log"
        for number in range(figure):
            call, error = self.random.choice(calls), self.random.choice(ERRORS)
            data = self.day()
            first = self.random.randrange(1, 6)
            screen = Screen(["strace", "-f", "-qq", "-o", str(log), "-P", str(data), *itertools.chain(*(
                ["-P", str(it)] for it in [data / "rolls/open/R0002.journal", data / "rolls/open/R0001.journal", data / "rolls", data / "exports",
                                           data / "rolls/open", *data.rglob("*.journal")])),
                "-e", f"inject={call}:error={error}:when={first}+", self.program, "--data", str(data)], HOME=str(self.scratch))
            self.screens.append(screen)
            screen.until(">", 10)
            screen.settled()
            told = False
            for line in self.random.sample(CHANGES, 4) + ["cam 35", "unload yes", "undo"]:
                if not screen.listen(0):
                    break
                try:
                    self.typed(screen, line)
                except OSError:
                    break
                told = told or bool(re.search(r"NOT SAVED|not saved|could not|cannot|no room|failed|full", screen.text()))
            screen.kill()
            failed = "INJECTED" in log.read_text(errors="replace")
            met += failed
            seen += failed and told
        assert met >= figure / 4, f"{met} of {figure} days met a fault"
        return f"{figure} days on a disk that fails, {met} of them met it: no stack trace; {seen} said so in words"


GOALS = ["pace", "undo", "drafts", "paste", "torn", "suspend", "windows", "colours", "plain_characters", "keys", "saved", "full", "settings",
         "first_run", "demo", "faults"]


def main():
    arguments = argparse.ArgumentParser(description=__doc__.split("\n")[0])
    arguments.add_argument("program")
    arguments.add_argument("--only", choices=GOALS)
    arguments.add_argument("--share", type=float, default=1)
    chosen = arguments.parse_args()
    failed = 0
    for name in [chosen.only] if chosen.only else GOALS:
        scratch = tempfile.mkdtemp(prefix="takeup-endurance-")
        endurance = Endurance(chosen.program, chosen.share, scratch)
        begun = time.monotonic()
        try:
            figure = getattr(endurance, name)()
            for screen in endurance.screens:
                assert not MOUSE.search(screen.stream), "the mouse was switched on"
                shown = screen.stream.decode("utf-8", "replace")
                trace = TRACE.search(shown)
                assert not trace, f"a stack trace was shown: {shown[max(0, trace.start() - 500):trace.end() + 1000]!r}"
            print(f"{name}: {figure} ({time.monotonic() - begun:.0f} s)", flush=True)
        except AssertionError as wrong:
            failed += 1
            print(f"{name}: FAILED: {wrong}", flush=True)
        finally:
            for screen in endurance.screens:
                screen.kill()
            shutil.rmtree(scratch, ignore_errors=True)
    return int(failed > 0)


if __name__ == "__main__":
    sys.exit(main())
