#!/usr/bin/env python3
"""Measures what a photographer feels: start, key, frame, archive, memory. Prints one table of ratios.

    python3 src/bench/bench.py [target/takeup] [--runs N] [--only WORD]

Every figure is a ratio to something measured in the same run, turn by turn: an empty Java main on the same pseudo-terminal,
a bare append and fdatasync of the same bytes, the same program with less to do. Needs Python 3.9, a JDK, and for the row
"while the disk is slow" strace; what is missing leaves its row out with a line that says so.
"""
import argparse
import fcntl
import json
import os
import pty
import random
import select
import shutil
import signal
import statistics
import struct
import subprocess
import sys
import tempfile
import termios
import time

FOOTER = b" help"
FLAGS = ["-Xshare:auto", "-Xlog:disable", "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-XX:-UsePerfData"]


class OnTerminal:
    """A program on a pseudo-terminal of 80x24."""

    def __init__(self, command, environment=None):
        self.began = time.perf_counter()
        self.pid, self.fd = pty.fork()
        if self.pid == 0:
            os.environ.update({"TERM": "xterm-256color", "LANG": "C.UTF-8", **(environment or {})})
            os.execvp(command[0], command)
        fcntl.ioctl(self.fd, termios.TIOCSWINSZ, struct.pack("HHHH", 24, 80, 0, 0))
        self.seen = b""

    def read(self, timeout):
        """Whether anything came; the end of the program is nothing."""
        if not select.select([self.fd], [], [], timeout)[0]:
            return False
        try:
            more = os.read(self.fd, 65536)
        except OSError:
            return False
        self.seen += more
        return bool(more)

    def until(self, text, timeout=20):
        """Seconds from the start until the text stands there and 20 ms of silence follow; the silence is not counted."""
        end = time.perf_counter() + timeout
        while text not in self.seen:
            if time.perf_counter() > end:
                raise SystemExit(f"{text!r} never came; this came instead:\n{self.seen[-2000:]!r}")
            self.read(0.05)
        at = time.perf_counter()
        while self.read(0.02):
            at = time.perf_counter()
        return at - self.began

    def send(self, text):
        os.write(self.fd, text if isinstance(text, bytes) else text.encode())

    def quiet(self, seconds=0.15):
        while self.read(seconds):
            pass

    def peak_kib(self):
        with open(f"/proc/{self.pid}/status") as status:
            for line in status:
                if line.startswith("VmHWM:"):
                    return int(line.split()[1])
        raise SystemExit("this system does not tell how much memory a program took")

    def kill(self):
        os.kill(self.pid, signal.SIGKILL)
        os.waitpid(self.pid, 0)
        os.close(self.fd)


def spread(values, unit=""):
    """Median, and the tenth and ninetieth of a hundred."""
    values = sorted(values)
    low, high = values[len(values) // 10], values[-1 - len(values) // 10]
    return f"{statistics.median(values):.2f}{unit} ({low:.2f} to {high:.2f})"


class Bench:
    def __init__(self, home, runs, scratch):
        self.home, self.runs, self.scratch = os.path.abspath(home), runs, scratch
        self.rows, self.left_out = [], []
        self.launcher = os.path.join(self.home, "bin", "takeup")
        source = os.path.join(scratch, "Empty.java")
        with open(source, "w") as file:
            # The footer's text, so that both are timed to their last byte in the same way.
            file.write('public class Empty { public static void main(String[] a) throws Exception { System.out.println("? help");'
                       ' if (a.length > 0) { Thread.sleep(60000); } } }\n')
        self.javas = {}
        for version in (17, 25):
            java = find_java(version)
            if java:
                classes = os.path.join(scratch, f"empty{version}")
                subprocess.run([java + "c", "--release", "17", "-d", classes, source], check=True)
                self.javas[version] = (java, [java, "-Xshare:auto", "-cp", classes, "Empty"])
        if not self.javas:
            raise SystemExit("no JDK 17 or 25 was found: set JAVA_HOME, or put java and javac on the path")

    def row(self, what, ratio, aim, detail):
        self.rows.append((what, ratio, aim, detail))
        print(f"  {what}: {ratio}", file=sys.stderr, flush=True)

    def folder(self, lines):
        """A data folder in which these lines were typed."""
        folder = tempfile.mkdtemp(dir=self.scratch)
        subprocess.run([self.launcher, "--data", folder, "line"], input="\n".join(lines) + "\n", text=True, check=True,
                       stdout=subprocess.DEVNULL)
        return folder

    def one_roll(self, frames=6):
        return self.folder(["cam 645", "load cn400", "m 5.6 125"] + ["."] * frames)

    def first_paint(self, command, environment=None):
        program = OnTerminal(command, environment)
        seconds = program.until(FOOTER)
        program.kill()
        return seconds

    def start(self):
        folder = self.one_roll()
        for version, (java, empty) in self.javas.items():
            home = os.path.join(self.scratch, f"takeup{version}")
            if not os.path.isdir(home):
                shutil.copytree(self.home, home)
            environment = {"JAVA_HOME": os.path.dirname(os.path.dirname(java))}
            subprocess.run([os.path.join(home, "bin", "takeup"), "--warm"], env={**os.environ, **environment}, check=True,
                           stdout=subprocess.DEVNULL)
            forms = {"launcher": [os.path.join(home, "bin", "takeup"), "--data", folder],
                     "java -jar": [java, "-jar", os.path.join(home, "takeup.jar"), "--data", folder]}
            times = {name: [] for name in (*forms, "empty")}
            for turn in range(self.runs + 1):
                for name, command in (*forms.items(), ("empty", empty)):
                    seconds = self.first_paint(command, environment)
                    if turn:
                        times[name].append(seconds)
            base = statistics.median(times["empty"])
            for name, aim in (("launcher", 3.3), ("java -jar", 5.5)):
                self.row(f"first paint, {name}, Java {version}", spread([it / base for it in times[name]], "x"), f"{aim}x an empty main",
                         f"{1000 * statistics.median(times[name]):.0f} ms against {1000 * base:.0f} ms")

    def key(self):
        program = OnTerminal([self.launcher, "--data", self.one_roll()])
        program.until(FOOTER)
        random.seed(7)
        delays = []
        for turn in range(520):
            program.quiet(random.uniform(0.008, 0.024))
            began = time.perf_counter()
            program.send("4" if turn % 2 == 0 else b"\x7f")
            if not program.read(2):
                raise SystemExit("a key was typed and nothing was drawn")
            last = time.perf_counter()
            while program.read(0.004):
                last = time.perf_counter()
            delays.append(last - began)
        program.kill()
        delays = sorted(1000 * it for it in delays[20:])
        bare = self.bare_echo()
        self.row("key to painted cell, p99", f"{delays[-1 - len(delays) // 100]:.1f} ms", "16 ms",
                 f"p50 {delays[len(delays) // 2]:.1f} ms; a terminal's own echo takes {bare:.2f} ms")

    def bare_echo(self):
        """What a pseudo-terminal alone takes: cat and the echo of the line discipline, in milliseconds."""
        program = OnTerminal(["cat"])
        program.quiet()
        times = []
        for _ in range(100):
            began = time.perf_counter()
            program.send("4")
            program.read(1)
            times.append(time.perf_counter() - began)
            program.quiet(0.002)
        program.kill()
        return 1000 * statistics.median(times)

    def slow_disk(self):
        if not shutil.which("strace"):
            self.left_out.append("while the disk is slow: strace is missing")
            return
        program = OnTerminal(["strace", "-f", "-qq", "-o", "/dev/null", "-e", "trace=fdatasync", "-e", "inject=fdatasync:delay_exit=200000",
                              self.launcher, "--data", self.one_roll()])
        program.until(FOOTER)
        program.quiet(0.5)
        said, echoed = [], []
        for turn in range(10):
            program.seen = b""
            began = time.perf_counter()
            program.send("4 125\r")
            while b"saving" not in program.seen.lower() and time.perf_counter() - began < 2:
                program.read(0.005)
            said.append(1000 * (time.perf_counter() - began))
            program.seen = b""
            began = time.perf_counter()
            program.send("q")
            program.read(2)
            echoed.append(1000 * (time.perf_counter() - began))
            program.send(b"\x7f")
            program.quiet(0.5)
        program.kill()
        self.row("a sync of 200 ms: until it says saving", f"{statistics.median(said):.0f} ms", "100 ms",
                 f"the next key is echoed after {statistics.median(echoed):.0f} ms meanwhile")

    def frame(self):
        folder = self.one_roll(0)
        journal = os.path.join(folder, "rolls", "open", "R0001.journal")
        line = subprocess.Popen([self.launcher, "--data", folder, "line"], stdin=subprocess.PIPE, stdout=subprocess.PIPE)
        for _ in range(40):
            answer(line)
        before = os.path.getsize(journal)
        bare = os.open(os.path.join(folder, "bare"), os.O_WRONLY | os.O_CREAT | os.O_APPEND)
        ours, theirs, undone = [], [], []
        for turn in range(300):
            began = time.perf_counter()
            answer(line)
            ours.append(time.perf_counter() - began)
            size = os.path.getsize(journal)
            record = b"x" * (size - before)
            before = size
            began = time.perf_counter()
            os.write(bare, record)
            os.fdatasync(bare)
            theirs.append(time.perf_counter() - began)
            if turn % 10 == 9:
                # a roll of usual length: the tenth frame is taken back nine times over
                for _ in range(10):
                    answer(line, "undo")
                before = os.path.getsize(journal)
        line.stdin.close()
        line.wait()
        base = statistics.median(theirs)
        self.row("an acknowledged frame", spread([it / base for it in ours], "x"), "2x append and fdatasync",
                 f"{1000 * statistics.median(ours):.2f} ms against {1000 * base:.2f} ms, the pipe and the answer counted")

    def archive(self):
        sizes = [1000, 2000, 4000, 10000]
        folder = self.one_roll(36)
        subprocess.run([self.launcher, "--data", folder, "line"], input="unload yes\n", text=True, check=True, stdout=subprocess.DEVNULL)
        finished = os.path.join(folder, "rolls", "finished")
        with open(os.path.join(finished, "R0001.journal"), "rb") as file:
            journal = file.read()
        subprocess.run([self.launcher, "--data", folder, "scans", "1", "--good", "1-24", "--thin", "25-36"], check=True, stdout=subprocess.DEVNULL)
        reviews = os.path.join(folder, "reviews")
        with open(os.path.join(reviews, "R0001.journal"), "rb") as file:
            review = file.read()
        empty = self.one_roll()
        commands = [["rolls", "--json"], ["frames", "--json"], ["review", "--json"]]
        times = {it[0]: [] for it in commands}
        tools = {it[0]: [] for it in commands}
        with open(os.path.join(folder, "exports", "R0001.json"), "rb") as file:
            export = file.read()
        frame = subprocess.run([self.launcher, "--data", folder, "frames", "--json"], capture_output=True, text=True, check=True).stdout.splitlines()[0]
        have = 1
        for size in sizes:
            while have < size:
                have += 1
                with open(os.path.join(finished, f"R{have:04d}.journal"), "wb") as file:
                    file.write(renamed(journal, f"R{have:04d}"))
                with open(os.path.join(reviews, f"R{have:04d}.journal"), "wb") as file:
                    file.write(review)
                with open(os.path.join(folder, "exports", f"R{have:04d}.json"), "wb") as file:
                    file.write(export)
            for command in commands:
                times[command[0]].append(self.whole([self.launcher, "--data", folder, *command]))
                tools[command[0]].append(self.whole([sys.executable, "-c", READER, frame if command[0] == "frames" else "", finished,
                                                     *([reviews] if command[0] != "rolls" else [])]))
        subprocess.run([self.launcher, "--data", folder, "line"], input="load cn400\nm 5.6 125\n.\n", text=True, check=True, stdout=subprocess.DEVNULL)
        start = {"none": [], "many": []}
        for _ in range(self.runs):
            start["none"].append(self.first_paint([self.launcher, "--data", empty]))
            start["many"].append(self.first_paint([self.launcher, "--data", folder]))
        base = statistics.median(start["none"])
        self.row("first paint with 10,000 finished rolls", spread([it / base for it in start["many"]], "x"), "1.1x that with none",
                 f"{1000 * statistics.median(start['many']):.0f} ms against {1000 * base:.0f} ms")
        for name, taken in times.items():
            per = [(taken[i] - taken[0]) / (sizes[i] - sizes[0]) for i in range(1, len(sizes))]
            against = "reads the same lines" + (" and writes as many frames" if name == "frames" else "")
            self.row(f"takeup {name}, 10,000 rolls", f"{taken[-1] / tools[name][-1]:.2f}x", f"3x Python's json that {against}",
                     f"{taken[-1]:.1f} s against {tools[name][-1]:.1f} s; a roll more costs " + ", ".join(f"{1e6 * it:.0f}" for it in per) + " µs at 2,000, 4,000, 10,000")

    def find(self):
        """Three questions to 10,000 rolls, against DuckDB that is asked the same of the same frames as JSON lines."""
        jar = os.environ.get("DUCKDB_JAR") or newest(os.path.expanduser("~/.m2/repository/org/duckdb/duckdb_jdbc"))
        if not jar:
            self.left_out.append("takeup find against DuckDB: its driver is missing (DUCKDB_JAR names it)")
            return
        folder = self.folder(["cam 35", "load bw400", "m 5.6 125", "5.6 125 ; the cox"] + ["2.8 500"] * 35 + ["unload yes"])
        subprocess.run([self.launcher, "--data", folder, "scans", "1", "--good", "1-24", "--thin", "25-36"], check=True, stdout=subprocess.DEVNULL)
        copies(folder, 2, 10000)
        lines = os.path.join(self.scratch, "frames.jsonl")
        with open(lines, "w") as file:
            subprocess.run([self.launcher, "--data", folder, "frames", "--json"], check=True, stdout=file)
        first = self.whole([self.launcher, "--data", folder, "find", "cox"])
        copies(folder, 10001, 10100)
        hundred = self.whole([self.launcher, "--data", folder, "find", "cox"])
        self.row("takeup find, the first time, 10,000 rolls", f"{first:.1f} s", "", "makes the index; "
                 f"after 100 new rolls {hundred:.2f} s")
        for rolls in range(10001, 10101):
            os.remove(os.path.join(folder, "rolls", "finished", f"R{rolls:04d}.journal"))
            os.remove(os.path.join(folder, "reviews", f"R{rolls:04d}.journal"))
        self.whole([self.launcher, "--data", folder, "find", "cox"])
        java = self.javas[min(self.javas)][0]
        source = os.path.join(self.scratch, "Ask.java")
        with open(source, "w") as file:
            file.write(ASK)
        subprocess.run([java + "c", "-d", self.scratch, source], check=True)
        for words, where in (("cox", "note like '%cox%'"), ("bw400 f2.8 judged thin", "stock = 'bw400' and fNumber = 2.8 and verdict = 'thin'"),
                             ("error over 1 since 2026-01", "abs(errorStops) > 1 and \"at\" >= timestamp '2026-01-01'")):
            query = f"select roll, frame, scan from read_json('{lines}', format = 'newline_delimited') where {where}"
            ours, theirs = [], []
            for _ in range(max(3, self.runs // 3)):
                ours.append(self.whole([self.launcher, "--data", folder, "find", *words.split()]))
                theirs.append(self.whole([java, "-cp", f"{jar}{os.pathsep}{self.scratch}", "Ask", query]))
            self.row(f"takeup find {words}, 360,000 frames", f"{statistics.median(ours) / statistics.median(theirs):.2f}x",
                     "DuckDB on the same JSON lines", f"{statistics.median(ours):.2f} s against {statistics.median(theirs):.2f} s, both with the start of Java")

    @staticmethod
    def whole(command):
        began = time.perf_counter()
        subprocess.run(command, check=True, stdout=subprocess.DEVNULL)
        return time.perf_counter() - began

    def memory(self):
        ratios, ours, theirs = [], [], []
        for _ in range(3):
            empty = OnTerminal([*self.javas[min(self.javas)][1], "wait"])
            empty.until(FOOTER)
            theirs.append(empty.peak_kib())
            empty.kill()
            program = OnTerminal([self.launcher, "--data", self.one_roll(0)])
            program.until(FOOTER)
            for frame in range(36):
                program.send(" ")
                program.quiet(0.1)
            ours.append(program.peak_kib())
            program.kill()
        self.row("memory after 36 frames", f"{statistics.median(ours) / statistics.median(theirs):.2f}x", "1.4x an empty main",
                 f"{statistics.median(ours) / 1024:.0f} MiB against {statistics.median(theirs) / 1024:.0f} MiB, at their peaks")


def newest(folder):
    """The newest jar below a folder, by its name; nothing where there is none."""
    jars = [os.path.join(at, name) for at, _, names in os.walk(folder) for name in names if name.endswith(".jar")]
    return max(jars, default="")


def copies(folder, first, last):
    """The roll R0001 and what was decided about it, under further numbers."""
    finished, reviews = os.path.join(folder, "rolls", "finished"), os.path.join(folder, "reviews")
    with open(os.path.join(finished, "R0001.journal"), "rb") as file:
        journal = file.read()
    with open(os.path.join(reviews, "R0001.journal"), "rb") as file:
        review = file.read()
    for number in range(first, last + 1):
        with open(os.path.join(finished, f"R{number:04d}.journal"), "wb") as file:
            file.write(renamed(journal, f"R{number:04d}"))
        with open(os.path.join(reviews, f"R{number:04d}.journal"), "wb") as file:
            file.write(review)


# Asks DuckDB one query and prints what it answers, a row a line.
ASK = """
import java.sql.*;
public class Ask {
    public static void main(String[] query) throws Exception {
        try (Connection connection = DriverManager.getConnection("jdbc:duckdb:"); Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery(query[0])) {
            StringBuilder all = new StringBuilder();
            while (rows.next()) {
                all.append(rows.getString(1)).append(' ').append(rows.getString(2)).append(' ').append(rows.getString(3)).append('\\n');
            }
            System.out.print(all);
        }
    }
}
"""


def crc32c(data):
    """CRC-32C as RFC 3720, appendix B.4 has it; the standard library has none."""
    crc = 0xFFFFFFFF
    for byte in data:
        crc = CRC_TABLE[(crc ^ byte) & 0xFF] ^ (crc >> 8)
    return crc ^ 0xFFFFFFFF


def crc_table():
    table = []
    for value in range(256):
        for _ in range(8):
            value = (value >> 1) ^ (0x82F63B78 if value & 1 else 0)
        table.append(value)
    return table


CRC_TABLE = crc_table()


def renamed(journal, roll):
    """The journal of R0001 as that of another roll: its first record has the number, and is sealed anew."""
    head, loaded, rest = journal.split(b"\n", 2)
    front = loaded[:loaded.rindex(b',"crc":"')].replace(b'"roll":"R0001"', b'"roll":"%s"' % roll.encode())
    return b"\n".join([head, front + b',"crc":"%08x"}' % crc32c(front), rest])


# Every line of every file to an object; with a frame given, for each frame that is met an object with the same fields to a line.
READER = """
import json, os, sys
frames = 0
frame = json.loads(sys.argv[1] or "{}")
for folder in sys.argv[2:]:
    for name in sorted(os.listdir(folder)):
        with open(os.path.join(folder, name), encoding="utf-8") as journal:
            for line in journal:
                if json.loads(line).get("event") == "frame":
                    frames += 1
                    if frame:
                        frame["roll"], frame["sequence"] = name[:-8], frames
                        print(json.dumps(frame, ensure_ascii=False, separators=(",", ":")))
if not frame:
    print(frames)
"""


def answer(process, line="."):
    process.stdin.write(line.encode() + b"\n")
    process.stdin.flush()
    return process.stdout.readline()


def find_java(version):
    homes = [os.environ.get("JAVA_HOME", "")] + [os.path.join("/usr/lib/jvm", it) for it in sorted(os.listdir("/usr/lib/jvm"))] if os.path.isdir(
        "/usr/lib/jvm") else [os.environ.get("JAVA_HOME", "")]
    for home in homes:
        release = os.path.join(home, "release")
        if home and os.path.exists(os.path.join(home, "bin", "javac")) and os.path.exists(release):
            with open(release) as file:
                if f'JAVA_VERSION="{version}' in file.read():
                    return os.path.join(os.path.realpath(home), "bin", "java")
    return None


def main():
    arguments = argparse.ArgumentParser(description=__doc__.split("\n")[0])
    arguments.add_argument("home", nargs="?", default="target/takeup")
    arguments.add_argument("--runs", type=int, default=15)
    arguments.add_argument("--only", default="")
    chosen = arguments.parse_args()
    scratch = tempfile.mkdtemp(prefix="takeup-bench-")
    try:
        bench = Bench(chosen.home, chosen.runs, scratch)
        for name in ("start", "key", "slow_disk", "frame", "archive", "find", "memory"):
            if chosen.only in name:
                getattr(bench, name)()
    finally:
        shutil.rmtree(scratch, ignore_errors=True)
    widths = [max(len(row[i]) for row in bench.rows) for i in range(3)] if bench.rows else [0, 0, 0]
    for row in [("what", "measured", "aim", "")] + bench.rows:
        print("  ".join(row[i].ljust(max(widths[i], 8)) for i in range(3)) + "  " + row[3])
    for line in bench.left_out:
        print("left out:", line)


if __name__ == "__main__":
    main()
