#!/usr/bin/env python3
"""Runs a program in a bare pseudo-terminal that answers no query, and types into it: manners.py COLUMNSxROWS PROGRAM... < STEPS

A step a line: "bytes HEX" sends bytes at once, "torn GAP HEX" one by one so many milliseconds apart, "see WORDS" waits up to
20 s until these words came out, "pause MS" waits. At the end of the steps the terminal is closed if the program still runs.
All that came out goes to standard output, then a line with the exit status.
"""
import os
import pty
import select
import struct
import subprocess
import sys
import time
import fcntl
import termios

columns, rows = sys.argv[1].split("x")
main, other = pty.openpty()
fcntl.ioctl(other, termios.TIOCSWINSZ, struct.pack("HHHH", int(rows), int(columns), 0, 0))
program = subprocess.Popen(sys.argv[2:], stdin=other, stdout=other, stderr=other, start_new_session=True,
                           preexec_fn=lambda: fcntl.ioctl(0, termios.TIOCSCTTY, 0))
os.close(other)
out = b""


def hear(seconds):
    """Reads for so long, or until the program is gone."""
    global out
    end = time.monotonic() + seconds
    while (left := end - time.monotonic()) > 0:
        if select.select([main], [], [], left)[0]:
            try:
                out += os.read(main, 65536)
            except OSError:
                return


def see(words):
    global out
    mark = words.encode()
    end = time.monotonic() + 20
    while mark not in out[see.start:] and time.monotonic() < end:
        hear(0.02)
    if mark not in out[see.start:]:
        print("waited in vain for: " + words)
    see.start = max(see.start, out.rfind(mark))


see.start = 0
for line in sys.stdin:
    word, _, rest = line.rstrip("\n").partition(" ")
    if word == "see":
        see(rest)
    elif word == "pause":
        hear(int(rest) / 1000)
    elif word == "bytes":
        data = bytes.fromhex(rest)
        while data:
            if select.select([], [main], [], 5)[1]:
                sent = os.write(main, data[:1024])
                data = data[sent:]
            hear(0.001)
    elif word == "torn":
        gap, _, text = rest.partition(" ")
        for one in bytes.fromhex(text):
            os.write(main, bytes([one]))
            hear(int(gap) / 1000)
hear(0.3)
if program.poll() is None:
    os.close(main)
status = program.wait(20)
sys.stdout.buffer.write(out)
print("\nstatus", status)
