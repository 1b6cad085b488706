#!/usr/bin/env python3
"""Measures what a photographer feels: start, key, frame, archive, memory. Prints the machine and one table, each figure
with its spread beside what it aims at, and whether that was met.

    python3 src/bench/bench.py [target/takeup] [--runs N] [--only WORD] [--against JAR]

Every figure is a ratio to something measured in the same run, turn by turn: an empty Java main on the same pseudo-terminal,
a bare append and fdatasync of the same bytes, the same program with less to do. With --against an older build, its jar
alone or in its package, or the folder of the package, takes turns with this one, so that what became slower shows before it
is released. Needs Python 3.9, a JDK, and for the row "while the disk is slow" strace; what is missing leaves its row out
with a line that says so.
"""
import argparse
import datetime
import fcntl
import json
import os
import platform
import pty
import random
import resource
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
import zipfile

FOOTER = b" help"
FLAGS = ["-Xshare:auto", "-Xlog:disable", "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-XX:-UsePerfData"]


class OnTerminal:
    """A program on a pseudo-terminal."""

    def __init__(self, command, environment=None, size=(80, 24)):
        self.began = time.perf_counter()
        self.pid, self.fd = pty.fork()
        if self.pid == 0:
            os.environ.update({"TERM": "xterm-256color", "LANG": "C.UTF-8", **(environment or {})})
            os.execvp(command[0], command)
        fcntl.ioctl(self.fd, termios.TIOCSWINSZ, struct.pack("HHHH", size[1], size[0], 0, 0))
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
        return peak_kib(self.pid)

    def kill(self):
        """Ends it; seconds of CPU that it took."""
        os.kill(self.pid, signal.SIGKILL)
        usage = os.wait4(self.pid, 0)[2]
        os.close(self.fd)
        return usage.ru_utime + usage.ru_stime


class Bench:
    def __init__(self, home, runs, scratch):
        self.home, self.runs, self.scratch = os.path.abspath(home), runs, scratch
        self.rows, self.left_out = [], []
        # As it is used: a copy that made its archive of classes for the Java that is there.
        ready = os.path.join(scratch, "takeup")
        shutil.copytree(self.home, ready)
        self.launcher = os.path.join(ready, "bin", "takeup")
        subprocess.run([self.launcher, "--warm"], check=True, stdout=subprocess.DEVNULL)
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

    def row(self, what, value, most, unit, detail, low=None, high=None):
        """A figure, with the tenth and the ninetieth of a hundred where there were many; it aims at no more than that."""
        digits = 0 if unit.strip() == "bytes" else 2
        measured = f"{value:.{digits}f}{unit}" + ("" if low is None else f" ({low:.{digits}f} to {high:.{digits}f})")
        aim = "" if most is None else f"{most:g}{unit}"
        verdict = "" if most is None else "met" if value <= most else "**missed**"
        self.rows.append((what, measured, aim, verdict, detail))
        print(f"  {what}: {measured} {verdict}", file=sys.stderr, flush=True)

    def spread(self, what, values, most, unit, detail):
        values = sorted(values)
        self.row(what, statistics.median(values), most, unit, detail, values[len(values) // 10], values[-1 - len(values) // 10])

    def folder(self, lines):
        """A data folder in which these lines were typed."""
        folder = tempfile.mkdtemp(dir=self.scratch)
        subprocess.run([self.launcher, "--data", folder, "line"], input="\n".join(lines) + "\n", text=True, check=True,
                       stdout=subprocess.DEVNULL)
        return folder

    def one_roll(self, frames=6):
        return self.folder(["cam 645", "load cn400", "m 5.6 125"] + ["."] * frames)

    def first_paint(self, command, environment=None):
        """Seconds until the screen stands, and those of CPU."""
        program = OnTerminal(command, environment)
        return program.until(FOOTER), program.kill()

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
                    taken = self.first_paint(command, environment)
                    if turn:
                        times[name].append(taken)
            for name, most in (("launcher", 2.6 if version == 17 else 3.5), ("java -jar", None)):
                for i, kind in enumerate(("wall", "CPU")):
                    base = statistics.median(it[i] for it in times["empty"])
                    taken = [it[i] for it in times[name]]
                    self.spread(f"first paint, {name}, Java {version}, {kind}", [it / base for it in taken], most, "x",
                                f"of an empty Java main; {1000 * statistics.median(taken):.0f} ms against {1000 * base:.0f} ms")

    def keys(self, command, size, count):
        """How long each of so many keys took until its cell was painted, in milliseconds, and how many bytes came for one."""
        program = OnTerminal(command, size=size)
        program.until(FOOTER)
        random.seed(7)
        delays = []
        begun = len(program.seen)
        for turn in range(count):
            program.quiet(random.uniform(0.008, 0.024))
            began = time.perf_counter()
            program.send("4" if turn % 2 == 0 else b"\x7f")
            if not program.read(2):
                raise SystemExit("a key was typed and nothing was drawn")
            last = time.perf_counter()
            while program.read(0.004):
                last = time.perf_counter()
            delays.append(1000 * (last - began))
        bytes_a_key = (len(program.seen) - begun) / count
        program.kill()
        return delays, bytes_a_key

    def key(self):
        bare = self.bare_echo()
        firsts = []
        for size, most in (((80, 24), 5), ((200, 60), 8)):
            delays, bytes_a_key = self.keys([self.launcher, "--data", self.one_roll()], size, 520)
            firsts.append(delays[0])
            rest = sorted(delays[1:])
            name = f"{size[0]}x{size[1]}"
            self.row(f"key to painted cell, 99 of 100, {name}", rest[-1 - len(rest) // 100], most, " ms",
                     f"half of them {statistics.median(rest):.1f} ms; a terminal's own echo takes {bare:.2f} ms")
            if size == (80, 24):
                self.row(f"what is sent for a key, {name}", bytes_a_key, 400, " bytes", "on an average")
        self.row("the very first key", max(firsts), 16, " ms", "the slower of two")

    def many_keys(self):
        """Neither slower nor larger after 20,000 keys."""
        program = OnTerminal([self.launcher, "--data", self.one_roll()])
        program.until(FOOTER)
        delays, sizes = [], []
        for turn in range(20000):
            began = time.perf_counter()
            program.send("4" if turn % 2 == 0 else b"\x7f")
            program.read(2)
            delays.append(time.perf_counter() - began)
            program.seen = b""
            if turn % 2000 == 1999:
                sizes.append(program.peak_kib())
        program.kill()
        early, late = statistics.median(delays[2000:4000]), statistics.median(delays[-2000:])
        self.row("20,000 keys: the last against the early ones", late / early, 1.1, "x", f"{1000 * late:.2f} ms against {1000 * early:.2f} ms")
        self.row("20,000 keys: memory against that after 4,000", sizes[-1] / sizes[1], 1.1, "x",
                 f"{sizes[-1] / 1024:.0f} MiB against {sizes[1] / 1024:.0f} MiB")

    def long_day(self):
        """A thousand rolls of 36 frames through one pipe: the last cost what the early ones did."""
        folder = self.one_roll(0)
        line = subprocess.Popen([self.launcher, "--data", folder, "line"], stdin=subprocess.PIPE, stdout=subprocess.PIPE)
        times, sizes = [], []
        for roll in range(1000):
            began = time.perf_counter()
            for _ in range(36):
                answer(line)
            times.append((time.perf_counter() - began) / 36)
            answer(line, "unload yes")
            answer(line, "load cn400")
            if roll % 100 == 99:
                sizes.append(peak_kib(line.pid))
        line.stdin.close()
        line.wait()
        early, late = statistics.median(times[100:200]), statistics.median(times[-100:])
        self.row("36,000 frames in a day: the last rolls against the early ones", late / early, 1.5, "x",
                 f"{1000 * late:.2f} ms against {1000 * early:.2f} ms a frame")
        self.row("36,000 frames in a day: memory against that after 3,600", sizes[-1] / sizes[0], 1.5, "x",
                 f"{sizes[-1] / 1024:.0f} MiB against {sizes[0] / 1024:.0f} MiB: the day's steps, for undo")

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
        self.spread("a sync of 200 ms: until it says saving", said, 100, " ms",
                 f"the next key is echoed after {statistics.median(echoed):.0f} ms meanwhile")

    def frame(self):
        for name, gap, turns in (("warm", 0, 300), ("after an idle gap", 0.4, 40)):
            ours, theirs = self.frames(self.launcher, gap, turns)
            base = statistics.median(theirs)
            self.spread(f"an acknowledged frame, {name}, above a bare append and fdatasync", [1000 * (it - base) for it in ours], 0.6, " ms",
                        f"{1000 * statistics.median(ours):.2f} ms against {1000 * base:.2f} ms, the pipe and the answer counted")

    def frames(self, launcher, gap, turns):
        """Seconds for each of so many frames, and for a bare append and fdatasync of as many bytes, in turns."""
        folder = self.one_roll(0)
        journal = os.path.join(folder, "rolls", "open", "R0001.journal")
        line = subprocess.Popen([launcher, "--data", folder, "line"], stdin=subprocess.PIPE, stdout=subprocess.PIPE)
        ours, theirs = [], []
        bare = os.open(os.path.join(folder, "bare"), os.O_WRONLY | os.O_CREAT | os.O_APPEND)
        early = 300
        for turn in range(early + turns):
            before = os.path.getsize(journal)
            pause = gap if turn >= early else 0
            time.sleep(pause)
            began = time.perf_counter()
            answer(line)
            ours.append(time.perf_counter() - began)
            record = b"x" * (os.path.getsize(journal) - before)
            time.sleep(pause)
            began = time.perf_counter()
            os.write(bare, record)
            os.fdatasync(bare)
            theirs.append(time.perf_counter() - began)
            if turn % 10 == 9:
                # a roll of usual length: the tenth frame is taken back nine times over
                for _ in range(10):
                    answer(line, "undo")
        line.stdin.close()
        line.wait()
        os.close(bare)
        return ours[early:], theirs[early:]

    def archive(self):
        """10,000 finished rolls of 36 frames with verdicts: first time, again, and after 100 new ones."""
        folder = self.one_roll(36)
        subprocess.run([self.launcher, "--data", folder, "line"], input="unload yes\n", text=True, check=True, stdout=subprocess.DEVNULL)
        subprocess.run([self.launcher, "--data", folder, "scans", "1", "--good", "1-24", "--thin", "25-36"], check=True, stdout=subprocess.DEVNULL)
        empty = self.one_roll()
        copies(folder, 2, 10000)
        first, _ = used([self.launcher, "--data", folder, "rolls", "--json"])
        python = self.whole([sys.executable, "-c", READER, "", os.path.join(folder, "rolls", "finished"), os.path.join(folder, "reviews")])
        self.row("10,000 rolls: the index, made by the first who asks", first / python, 3, "x",
                 f"of Python's json that reads the same lines; {first:.1f} s against {python:.1f} s")
        few = self.folder(["cam 645", "load cn400", "m 5.6 125"] + ["."] * 36 + ["unload yes"])
        subprocess.run([self.launcher, "--data", few, "scans", "1", "--good", "1-24", "--thin", "25-36"], check=True, stdout=subprocess.DEVNULL)
        commands = (["rolls", "--json"], ["review", "--json"], ["order", "list", "--json"])
        for command in commands:
            ours, theirs = [], []
            for _ in range(max(3, self.runs // 3)):
                ours.append(self.whole([self.launcher, "--data", folder, *command]))
                theirs.append(self.whole([self.launcher, "--data", few, *command]))
            base = statistics.median(theirs)
            self.spread(f"10,000 rolls: {' '.join(command[:-1])}", [it - base for it in ours], 1, " s",
                        f"above the same with one roll; {statistics.median(ours):.2f} s against {base:.2f} s")
        copies(folder, 10001, 10100)
        anew = self.whole([self.launcher, "--data", folder, "rolls", "--json"])
        self.row("10,000 rolls and 100 new ones: rolls", anew / first, 0.1, "x", f"of the first time; {anew:.2f} s against {first:.1f} s")
        self.frames_json(folder)
        subprocess.run([self.launcher, "--data", folder, "line"], input="load cn400\nm 5.6 125\n.\n", text=True, check=True, stdout=subprocess.DEVNULL)
        start = {"none": [], "many": []}
        for _ in range(self.runs):
            start["none"].append(self.first_paint([self.launcher, "--data", empty])[0])
            start["many"].append(self.first_paint([self.launcher, "--data", folder])[0])
        base = statistics.median(start["none"])
        self.spread("first paint with 10,000 finished rolls", [it / base for it in start["many"]], 1.1, "x",
                    f"of that with none; {1000 * statistics.median(start['many']):.0f} ms against {1000 * base:.0f} ms")

    def frames_json(self, folder):
        """All frames as JSON lines, against DuckDB that reads those lines and writes as many."""
        lines = os.path.join(self.scratch, "all.jsonl")
        with open(lines, "w") as file:
            subprocess.run([self.launcher, "--data", folder, "frames", "--json"], check=True, stdout=file)
        ask = self.duckdb()
        if not ask:
            return
        ours, theirs, sizes = [], [], []
        for _ in range(max(3, self.runs // 3)):
            seconds, kib = used([self.launcher, "--data", folder, "frames", "--json"])
            ours.append(seconds)
            sizes.append(kib)
            theirs.append(self.whole([*ask, f"copy (select * from read_json('{lines}', format = 'newline_delimited')) to "
                                            f"'{lines}.copy' (format json)"]))
        base = statistics.median(theirs)
        self.spread("frames --json, 363,600 frames", [it / base for it in ours], 1.2, "x",
                    f"of DuckDB that reads and writes as many; {statistics.median(ours):.1f} s against {base:.1f} s, both with the start of Java")
        self.row("frames --json, its memory", max(sizes) / 1024, 150, " MiB", "at its peak")

    def duckdb(self):
        """How DuckDB is asked one query; nothing where its driver is missing."""
        jar = os.environ.get("DUCKDB_JAR") or newest(os.path.expanduser("~/.m2/repository/org/duckdb/duckdb_jdbc"))
        if not jar:
            self.left_out.append("what is measured against DuckDB: its driver is missing (DUCKDB_JAR names it)")
            return None
        java = self.javas[min(self.javas)][0]
        source = os.path.join(self.scratch, "Ask.java")
        with open(source, "w") as file:
            file.write(ASK)
        subprocess.run([java + "c", "-d", self.scratch, source], check=True)
        return [java, "-cp", f"{jar}{os.pathsep}{self.scratch}", "Ask"]

    def find(self):
        """Three questions to 10,000 rolls, against DuckDB that is asked the same of the same frames as JSON lines."""
        ask = self.duckdb()
        if not ask:
            return
        folder = self.folder(["cam 35", "load bw400", "m 5.6 125", "5.6 125 ; the cox"] + ["2.8 500"] * 35 + ["unload yes"])
        subprocess.run([self.launcher, "--data", folder, "scans", "1", "--good", "1-24", "--thin", "25-36"], check=True, stdout=subprocess.DEVNULL)
        copies(folder, 2, 10000)
        lines = os.path.join(self.scratch, "frames.jsonl")
        with open(lines, "w") as file:
            subprocess.run([self.launcher, "--data", folder, "frames", "--json"], check=True, stdout=file)
        shutil.rmtree(os.path.join(folder, "index"))  # find would take its frames from what was just made
        first = self.whole([self.launcher, "--data", folder, "find", "cox"])
        copies(folder, 10001, 10100)
        hundred = self.whole([self.launcher, "--data", folder, "find", "cox"])
        self.row("find after 100 new rolls", hundred / first, 0.2, "x", f"of the first time; {hundred:.2f} s against {first:.1f} s")
        for rolls in range(10001, 10101):
            os.remove(os.path.join(folder, "rolls", "finished", f"R{rolls:04d}.journal"))
            os.remove(os.path.join(folder, "reviews", f"R{rolls:04d}.journal"))
        self.whole([self.launcher, "--data", folder, "find", "cox"])
        for words, where in (("cox", "note like '%cox%'"), ("bw400 f2.8 judged thin", "stock = 'bw400' and fNumber = 2.8 and verdict = 'thin'"),
                             ("error over 1 since 2026-01", "abs(errorStops) > 1 and \"at\" >= timestamp '2026-01-01'")):
            query = f"select roll, frame, scan from read_json('{lines}', format = 'newline_delimited') where {where}"
            ours, theirs = [], []
            for _ in range(max(3, self.runs // 3)):
                ours.append(self.whole([self.launcher, "--data", folder, "find", *words.split()]))
                theirs.append(self.whole([*ask, query]))
            base = statistics.median(theirs)
            self.spread(f"find {words}, 360,000 frames", [it / base for it in ours], 1, "x",
                        f"of DuckDB on the same JSON lines; {statistics.median(ours):.2f} s against {base:.2f} s, both with the start of Java")
            self.row(f"find {words}, in seconds", statistics.median(ours), 2, " s", "")

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
        self.row("memory after 36 frames", statistics.median(ours) / statistics.median(theirs), 1.3, "x",
                 f"of an empty Java main; {statistics.median(ours) / 1024:.0f} MiB against {statistics.median(theirs) / 1024:.0f} MiB, at their peaks")

    def against(self, older):
        """This build and an older one in turns. A jar is started as a jar, and so is this one's then."""
        java = self.javas[min(self.javas)][0]
        environment = {"JAVA_HOME": os.path.dirname(os.path.dirname(java))}
        if older.endswith(".jar"):
            builds = [self.as_jar(java, os.path.join(self.home, "takeup.jar")), self.as_jar(java, os.path.abspath(older))]
        else:
            builds = [[os.path.join(self.home, "bin", "takeup")], [os.path.join(os.path.abspath(older), "bin", "takeup")]]
            for build in builds:
                subprocess.run([*build, "--warm"], env={**os.environ, **environment}, check=True, stdout=subprocess.DEVNULL)
        folders = []
        for build in builds:
            folder = tempfile.mkdtemp(dir=self.scratch)
            subprocess.run([*build, "--data", folder, "line"], text=True, check=True, stdout=subprocess.DEVNULL,
                           input="\n".join(["cam 645", "load cn400", "m 5.6 125"] + ["."] * 36 + ["unload yes"]) + "\n")
            subprocess.run([*build, "--data", folder, "scans", "1", "--good", "1-24", "--thin", "25-36"], check=True, stdout=subprocess.DEVNULL)
            folders.append(folder)
        paints, keys = ([], []), ([], [])
        for turn in range(self.runs + 1):
            for i, build in enumerate(builds):
                paint = self.first_paint([*build, "--data", folders[i]], environment)
                if turn:
                    paints[i].append(paint)
        for i, kind in enumerate(("wall", "CPU")):
            self.compare(f"first paint, {kind}", [it[i] for it in paints[0]], [it[i] for it in paints[1]], 1.05)
        for _ in range(3):
            for i, build in enumerate(builds):
                keys[i].extend(it / 1000 for it in self.keys([*build, "--data", folders[i]], (80, 24), 120)[0])
        self.compare("key to painted cell", *keys, 1.05)
        frames = [subprocess.Popen([*build, "--data", folders[i], "line"], stdin=subprocess.PIPE, stdout=subprocess.PIPE)
                  for i, build in enumerate(builds)]
        times = ([], [])
        for line in frames:
            answer(line, "load cn400")
        for turn in range(600):
            for i, line in enumerate(frames):
                if turn % 36 == 35:
                    answer(line, "unload yes")
                    answer(line, "load cn400")
                began = time.perf_counter()
                answer(line)
                if turn >= 300:
                    times[i].append(time.perf_counter() - began)
        for line in frames:
            line.stdin.close()
            line.wait()
        self.compare("an acknowledged frame, with its sync", *times, 1.05)
        for command in (["--version"], ["paths"], ["rolls"], ["roll", "1"], ["completion", "--words", "rolls"]):
            cpu = ([], [])
            for _ in range(self.runs):
                for i, build in enumerate(builds):
                    cpu[i].append(cpu_of([*build, *(command if command == ["--version"] else [*command, "--data", folders[i]])]))
            self.compare(f"takeup {' '.join(command)}, CPU", *cpu, 0.5)
        for folder in folders:
            copies(folder, 1001, 2000)
        for command in (["rolls", "--json"], ["review", "--json"], ["order", "list", "--json"], ["frames", "--json"]):
            taken = ([], [])
            for _ in range(4):
                for i, build in enumerate(builds):
                    taken[i].append(self.whole([*build, "--data", folders[i], *command]))
            self.compare(f"1,000 rolls: {' '.join(command)}, again", taken[0][1:], taken[1][1:], 1.05)

    def as_jar(self, java, jar):
        """How a jar is started; one without the libraries and profiles of its package beside it has those of this build."""
        beside = os.path.dirname(jar)
        if os.path.isdir(os.path.join(beside, "lib")) and os.path.isdir(os.path.join(beside, "profiles")):
            return [java, "-jar", jar]
        with zipfile.ZipFile(jar) as content:
            manifest = content.read("META-INF/MANIFEST.MF").decode().replace("\r\n", "\n").replace("\n ", "")
        main = next(line.split(":", 1)[1].strip() for line in manifest.split("\n") if line.startswith("Main-Class:"))
        home = tempfile.mkdtemp(dir=self.scratch)
        shutil.copy(jar, os.path.join(home, "takeup.jar"))
        for part in ("lib", "profiles"):
            shutil.copytree(os.path.join(self.home, part), os.path.join(home, part))
        classes = os.pathsep.join([os.path.join(home, "takeup.jar"), os.path.join(home, "lib", "*")])
        return [java, f"-Dtakeup.home={home}", "-cp", classes, main]

    def compare(self, what, ours, theirs, most):
        base = statistics.median(theirs)
        self.spread(f"{what}, against the older build", [it / base for it in ours], most, "x",
                    f"{1000 * statistics.median(ours):.2f} ms against {1000 * base:.2f} ms")


def peak_kib(pid):
    with open(f"/proc/{pid}/status") as status:
        return next(int(line.split()[1]) for line in status if line.startswith("VmHWM:"))


def used(command):
    """Seconds that a program took, and its largest size in KiB."""
    began = time.perf_counter()
    process = subprocess.Popen(command, stdout=subprocess.DEVNULL)
    status, usage = os.wait4(process.pid, 0)[1:]
    process.returncode = os.waitstatus_to_exitcode(status)
    if process.returncode:
        raise SystemExit(f"{' '.join(command)} ended with status {process.returncode}")
    return time.perf_counter() - began, usage.ru_maxrss


def cpu_of(command):
    """Seconds of CPU that a program and those that it started took."""
    before = resource.getrusage(resource.RUSAGE_CHILDREN)
    subprocess.run(command, check=True, stdout=subprocess.DEVNULL)
    after = resource.getrusage(resource.RUSAGE_CHILDREN)
    return after.ru_utime + after.ru_stime - before.ru_utime - before.ru_stime


def machine(javas):
    """What this was measured on."""
    model = ""
    if os.path.exists("/proc/cpuinfo"):
        with open("/proc/cpuinfo") as info:
            model = next((line.split(":", 1)[1].strip() for line in info if line.startswith("model name")), "")
    return (f"{datetime.date.today()}, {os.cpu_count()} cores{' of ' + model if model else ''}, {platform.system()} {platform.release()}, "
            f"Java {' and '.join(str(it) for it in sorted(javas))}, load {os.getloadavg()[0]:.1f} at the beginning")


def newest(folder):
    """The newest jar below a folder, by its name; nothing where there is none."""
    jars = [os.path.join(at, name) for at, _, names in os.walk(folder) for name in names if name.endswith(".jar")]
    return max(jars, default="")


def copies(folder, first, last):
    """The roll R0001, its export and what was decided about it, under further numbers."""
    kept = []
    for place, ending in (("rolls/finished", ".journal"), ("reviews", ".journal"), ("exports", ".json")):
        path = os.path.join(folder, place, "R0001" + ending)
        if os.path.exists(path):
            with open(path, "rb") as file:
                kept.append((place, ending, file.read()))
    for number in range(first, last + 1):
        for place, ending, content in kept:
            with open(os.path.join(folder, place, f"R{number:04d}{ending}"), "wb") as file:
                file.write(renamed(content, f"R{number:04d}") if place == "rolls/finished" else content)


# Asks DuckDB one query and prints what it answers, a row a line.
ASK = """
import java.sql.*;
public class Ask {
    public static void main(String[] query) throws Exception {
        try (Connection connection = DriverManager.getConnection("jdbc:duckdb:"); Statement statement = connection.createStatement()) {
            StringBuilder all = new StringBuilder();
            ResultSet rows = statement.execute(query[0]) ? statement.getResultSet() : null;
            while (rows != null && rows.next()) {
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
    arguments.add_argument("--only", default="", help="the groups whose names have that in them")
    arguments.add_argument("--against", metavar="JAR", help="an older build: its jar, or the folder of its package")
    chosen = arguments.parse_args()
    scratch = tempfile.mkdtemp(prefix="takeup-bench-")
    try:
        bench = Bench(chosen.home, chosen.runs, scratch)
        where = machine(bench.javas)
        if chosen.against:
            bench.against(chosen.against)
        else:
            for name in ("start", "key", "slow_disk", "frame", "memory", "archive", "find", "many_keys", "long_day"):
                if chosen.only in name:
                    getattr(bench, name)()
    finally:
        shutil.rmtree(scratch, ignore_errors=True)
    print(where + "\n\n| what | measured | aim | | |\n|---|---|---|---|---|")
    for row in bench.rows:
        print("| " + " | ".join(row) + " |")
    print(f"\n{sum(row[3] == 'met' for row in bench.rows)} met, {sum(row[3] == '**missed**' for row in bench.rows)} missed")
    for line in bench.left_out:
        print("left out:", line)


if __name__ == "__main__":
    main()
