"""Runs a full-screen program in a terminal of its own, does something to it, and says what became of both.

terminal.py DATA ACTION PROGRAM [ARGUMENT...]

One roll with one frame is logged first. The answer is one JSON object: the exit status (negative for a signal that nobody
caught), whether the modes of the terminal came back as they were, what the program wrote after it was told to end, how many
frames and undos the roll's journal holds, and whether a thread dump was seen.
"""
import errno, fcntl, json, os, pathlib, pty, select, signal, struct, sys, termios, time

data, action, program = sys.argv[1], sys.argv[2], sys.argv[3:]
journal = pathlib.Path(data, "rolls/open/R0001.journal")
PATIENCE = 30

master, slave = pty.openpty()
fcntl.ioctl(slave, termios.TIOCSWINSZ, struct.pack("HHHH", 24, 80, 0, 0))
before = termios.tcgetattr(slave)
told, tell = os.pipe()
if os.fork() == 0:
    # What a shell is to a job: it leads the session, so that the job can be stopped.
    os.setsid()
    fcntl.ioctl(slave, termios.TIOCSCTTY, 0)
    signal.signal(signal.SIGTTOU, signal.SIG_IGN)
    signal.signal(signal.SIGHUP, signal.SIG_IGN)
    job = os.fork()
    if job == 0:
        os.setpgid(0, 0)
        os.tcsetpgrp(slave, os.getpid())
        signal.signal(signal.SIGTTOU, signal.SIG_DFL)
        signal.signal(signal.SIGHUP, signal.SIG_DFL)
        for end in (0, 1, 2):
            os.dup2(slave, end)
        os.closerange(3, 100)
        # Whoever was started in the background ignores INT, and so would all that it starts.
        signal.signal(signal.SIGINT, signal.SIG_DFL)
        os.execvp(program[0], program)
    os.write(tell, b"%d\n" % job)
    os.close(slave)
    os.close(master)
    os.write(tell, b"%d\n" % os.waitstatus_to_exitcode(os.waitpid(job, 0)[1]))
    os._exit(0)
os.close(tell)
answers = os.fdopen(told, buffering=1)
child = int(answers.readline())

written = bytearray()
status = None


def listen(seconds):
    """Reads what the program writes, and notices its end."""
    global status
    until = time.monotonic() + seconds
    while time.monotonic() < until:
        if master >= 0 and select.select([master], [], [], 0.02)[0]:
            try:
                written.extend(os.read(master, 65536))
            except OSError as gone:
                if gone.errno != errno.EIO:
                    raise
        elif master < 0:
            time.sleep(0.02)
        if status is None and select.select([answers], [], [], 0)[0]:
            status = int(answers.readline())
            until = min(until, time.monotonic() + 0.1)


def until(what, true):
    end = time.monotonic() + PATIENCE
    while not true():
        if time.monotonic() > end:
            print(json.dumps({"waited": what, "written": written[-2000:].decode("utf-8", "replace")}))
            os.kill(child, signal.SIGKILL)
            sys.exit(1)
        listen(0.05)


def records(kind):
    return journal.read_text().count('"event":"%s"' % kind) if journal.exists() else 0


def press(keys):
    os.write(master, keys)
    listen(0.05)


def frame(number):
    press(b"8 125\r")
    until("frame %d" % number, lambda: records("frame") == number)


def went_on(how):
    """Stopped, its terminal used by somebody else, and continued."""
    os.kill(child, how)
    until("the stop", lambda: pathlib.Path("/proc/%d/stat" % child).read_text().rsplit(")", 1)[1].split()[0] == "T")
    termios.tcsetattr(slave, termios.TCSANOW, before)
    mark = len(written)
    os.kill(child, signal.SIGCONT)
    until("the picture", lambda: b"R0001" in written[mark:] and b"\x1b[?1049h" in written[mark:])
    until("the modes", lambda: termios.tcgetattr(slave)[3] & (termios.ICANON | termios.ECHO | termios.ISIG) == 0)
    frame(2)


if action == "no-java":
    until("the end", lambda: status is not None)
    print(json.dumps({"status": status, "modes": termios.tcgetattr(slave) == before, "after": written.decode("utf-8", "replace")}))
    sys.exit()
until("the screen", lambda: b"\x1b[?1049h" in written and b"645 reflex" in written)
press(b"cam 35\r")
press(b"load bw400\r")
frame(1)
listen(0.2)
mark = len(written)
if action == "quit":
    press(b"quit\r")
elif action == "ctrl-c":
    press(b"\x03")
    listen(0.3)
    press(b"\x03")
elif action in ("TERM", "HUP", "INT"):
    os.kill(child, getattr(signal, "SIG" + action))
elif action == "gone":
    os.close(slave)
    os.close(master)
    master = -1
elif action == "error":
    press(b"frames\r")
elif action in ("STOP", "TSTP"):
    went_on(getattr(signal, "SIG" + action))
    press(b"quit\r")
elif action == "keys":
    press(b"\x1c\x13\x11")
    os.kill(child, signal.SIGQUIT)
    listen(0.5)
    frame(2)
    press(b"\x1a")
    until("the undo", lambda: records("undo") == 1)
    frame(3)
    press(b"quit\r")
until("the end", lambda: status is not None)

print(json.dumps({
    "status": status,
    "modes": master < 0 or termios.tcgetattr(slave) == before,
    "after": written[mark:].decode("utf-8", "replace"),
    "frames": records("frame"),
    "undos": records("undo"),
    "dump": b"thread dump" in written or b"Heap" in written,
}))
