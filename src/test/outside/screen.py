"""A program in a pseudo-terminal, and what a person would see there: the cells after every escape sequence was obeyed."""
import fcntl
import os
import pathlib
import pty
import re
import select
import signal
import struct
import termios
import time
import unicodedata

SEQUENCE = re.compile(r"\x1b(?:\[([?<>=]?)([0-9;]*)([A-Za-z])|\][^\x07\x1b]*(?:\x07|\x1b\\)|[P_][^\x1b]*\x1b\\|[=>78]|[()].)")
KEYS = {"up": "[A", "down": "[B", "right": "[C", "left": "[D", "home": "[H", "end": "[F", "delete": "[3~", "pgup": "[5~",
        "pgdn": "[6~", "f1": "OP", "f2": "OQ", "f3": "OR", "f4": "OS", "f5": "[15~", "f6": "[17~", "f7": "[18~", "f8": "[19~",
        "f9": "[20~", "f10": "[21~", "shift+tab": "[Z"}


class Screen:
    def __init__(self, command, columns=80, rows=24, **environment):
        self.stream = bytearray()
        self.rest = b""
        self.resized(columns, rows)
        self.process, self.descriptor = pty.fork()
        if self.process == 0:
            env = {"HOME": os.environ.get("HOME", "/"), "PATH": os.environ["PATH"], "TERM": "xterm-256color", "LC_ALL": "C.UTF-8"}
            if "JAVA_HOME" in os.environ:
                env["JAVA_HOME"] = os.environ["JAVA_HOME"]
            env.update({name: value for name, value in environment.items() if value is not None})
            fcntl.ioctl(0, termios.TIOCSWINSZ, struct.pack("HHHH", rows, columns, 0, 0))
            os.execvpe(command[0], command, env)
        self.size(columns, rows)
        self.status = None

    def resized(self, columns, rows):
        self.columns, self.rows = columns, rows
        self.cells = [[" "] * columns for _ in range(rows)]
        self.row = self.column = 0

    def size(self, columns, rows):
        self.listen(0)
        self.resized(columns, rows)
        fcntl.ioctl(self.descriptor, termios.TIOCSWINSZ, struct.pack("HHHH", rows, columns, 0, 0))

    def send(self, data):
        data = data if isinstance(data, bytes) else data.encode()
        while data:
            if select.select([], [self.descriptor], [], 10)[1]:
                data = data[os.write(self.descriptor, data[:1024]):]
            self.listen(0)

    def key(self, name):
        self.send("\x1b" + KEYS[name])

    def listen(self, seconds):
        """Takes in what comes for so long; False once the program is gone."""
        until = time.monotonic() + seconds
        while True:
            left = until - time.monotonic()
            if not select.select([self.descriptor], [], [], max(0, left))[0]:
                return True
            try:
                data = os.read(self.descriptor, 1 << 16)
            except OSError:
                data = b""
            if not data:
                return False
            self.stream += data
            self.draw(data)

    def quiet(self, seconds=0.06, most=5):
        """Until nothing came for so long."""
        until = time.monotonic() + most
        while time.monotonic() < until:
            before = len(self.stream)
            if not self.listen(seconds) or len(self.stream) == before:
                return

    def settled(self, most=10):
        """Until nothing comes any more and the program rests, however busy the machine is."""
        until, rests = time.monotonic() + most, 0
        while rests < 3 and time.monotonic() < until:
            before = len(self.stream)
            if not self.listen(0.03):
                return
            rests = 0 if len(self.stream) > before or self.works() else rests + 1

    def works(self):
        """Whether a thread of the program, or of one that it started, runs, waits for a processor or is held by strace."""
        processes = [str(self.process)]
        try:
            for process in processes:
                for task in pathlib.Path(f"/proc/{process}/task").iterdir():
                    processes += (task / "children").read_text().split()
                    if (task / "stat").read_text().rpartition(")")[2].split()[0] in "Rt":
                        return True
        except OSError:
            return self.status is None and self.process_lives()    # a thread ended meanwhile: not at rest
        return False

    def process_lives(self):
        return os.path.exists(f"/proc/{self.process}/stat")

    def until(self, what, most=20):
        """Until the words stand on the screen, or until it is so; the seconds that it took, or None."""
        true = what if callable(what) else lambda: what in self.text()
        begun = time.monotonic()
        while not true():
            if time.monotonic() - begun > most or not self.listen(0.005) and not true():
                return None
        return time.monotonic() - begun

    def draw(self, data):
        text = (self.rest + data).decode("utf-8", "surrogateescape")
        at = 0
        self.rest = b""
        while at < len(text):
            if text[at] == "\x1b" or "\udc80" <= text[at]  <= "\udcff":
                found = SEQUENCE.match(text, at)
                if not found:
                    if len(text) - at < 4096:
                        self.rest = text[at:].encode("utf-8", "surrogateescape")
                        return
                    at += 1
                    continue
                at = found.end()
                if found.group(3):
                    self.obey(found.group(1), found.group(2), found.group(3))
                continue
            self.put(text[at])
            at += 1

    def obey(self, mark, numbers, letter):
        values = [int(it or 0) for it in numbers.split(";")]
        if letter == "H":
            self.row, self.column = max(values[0], 1) - 1, max((values + [1])[1], 1) - 1
        elif letter == "C":
            self.column += max(values[0], 1)
        elif letter == "J" or mark and letter in "hl" and 1049 in values:
            self.cells = [[" "] * self.columns for _ in range(self.rows)]
        elif letter == "K":
            for column in range(self.column, self.columns):
                self.put_at(self.row, column, " ")

    def put(self, character):
        if character == "\r":
            self.column = 0
        elif character == "\n":
            self.row += 1
        elif character == "\b":
            self.column -= 1
        elif character >= " ":
            self.put_at(self.row, self.column, character)
            self.column += 2 if unicodedata.east_asian_width(character) in "WF" else 1

    def put_at(self, row, column, character):
        if 0 <= row < self.rows and 0 <= column < self.columns:
            self.cells[row][column] = character

    def text(self):
        return "\n".join("".join(row).rstrip() for row in self.cells)

    def kill(self, how=signal.SIGKILL):
        if self.status is None:
            try:
                os.kill(self.process, how)
            except ProcessLookupError:
                pass
        return self.ended()

    def ended(self, most=20):
        """The exit status, negative for a signal."""
        until = time.monotonic() + most
        while self.status is None and time.monotonic() < until:
            self.listen(0.02)
            process, status = os.waitpid(self.process, os.WNOHANG)
            if process:
                self.status = os.waitstatus_to_exitcode(status)
                self.listen(0)
                os.close(self.descriptor)
        return self.status
