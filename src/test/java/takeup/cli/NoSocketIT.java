package takeup.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import takeup.Outside;

/**
 * The program opens no socket: the kernel's own record of a whole day, of the screen and of the commands holds none of
 * its own.
 */
class NoSocketIT {
    @TempDir
    static Path scratch;

    private static List<String> javas = List.of();

    /**
     * Java asks once which kinds of socket there are when it loads the library for channels; what any Java program does
     * is no doing of this one.
     */
    @BeforeAll
    static void needsARecord() throws IOException {
        Outside.needs("strace", "python3");
        Path log = scratch.resolve("control");
        List<String> control = strace(
                log,
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:-UsePerfData",
                "-cp",
                Path.of("target/test-classes").toAbsolutePath().toString(),
                NoSocketIT.class.getName(),
                scratch.resolve("file").toString());
        Installed.Ended ended = Installed.run(Installed.process(scratch, Map.of(), control), "");
        assertEquals(0, ended.status(), ended.toString());
        javas = calls(log);
        assertTrue(
                javas.stream().noneMatch(it -> it.contains("AF_INET") && !it.startsWith("socket(")),
                "none of Java's own is ever connected: " + javas);
    }

    @Test
    void aWholeDayInThePipeOpensNone() throws IOException {
        StringBuilder day = new StringBuilder();
        for (String line : Installed.resource("whole-roll.txt")) {
            day.append(line.startsWith("> ") ? line.substring(2) + "\n" : "");
        }
        assertTrue(day.toString().lines().count() > 50);
        none(day.toString(), "line", "--data", "day", "--clock", "2026-09-12T15:00+02:00");
    }

    @Test
    void noCommandOpensOne() throws IOException {
        Installed.run(scratch, "cam 35\nload bw400\n8 125\n", List.of("line", "--data", "small"));
        for (String command :
                List.of("roll 1 --json --data small", "meter ev10 --camera 645 --stock cn400", "check small")) {
            none("", command.split(" "));
        }
    }

    @Test
    void theScreenOpensNone() throws IOException {
        Path log = scratch.resolve("screen");
        List<String> command = new ArrayList<>(List.of("python3", "-c", """
            import os, pty, select, sys, time
            pid, tty = pty.fork()
            if pid == 0:
                os.execvp(sys.argv[1], sys.argv[1:])
            typed = [b'cam 35\\r', b'load bw400\\r', b'8 125\\r', b' ', b'quit\\r']
            while True:
                if not select.select([tty], [], [], 0.7)[0]:
                    os.write(tty, typed.pop(0) if typed else b'\\x03')
                    continue
                try:
                    if not os.read(tty, 65536): break
                except OSError: break
            sys.exit(os.waitstatus_to_exitcode(os.waitpid(pid, 0)[1]))
            """));
        command.addAll(strace(log, takeup()));
        command.addAll(List.of("--data", "screen-day"));
        Installed.Ended ended = Installed.run(Installed.process(scratch, Map.of(), command), "");
        assertEquals(0, ended.status(), ended.toString());
        assertTrue(Files.readString(scratch.resolve("screen-day/rolls/open/R0001.journal"))
                        .lines()
                        .filter(it -> it.contains("\"event\":\"frame\""))
                        .count()
                == 2);
        noneIn(log);
    }

    /** A Java program that opens a file through a channel and does nothing else. */
    public static void main(String[] arguments) throws IOException {
        try (FileChannel channel =
                FileChannel.open(Path.of(arguments[0]), StandardOpenOption.WRITE, StandardOpenOption.CREATE)) {
            channel.force(false);
        }
    }

    private static List<String> strace(Path log, String... command) {
        List<String> all = new ArrayList<>(
                List.of("strace", "--seccomp-bpf", "-f", "-qq", "-e", "trace=network,execve", "-o", log.toString()));
        all.addAll(List.of(command));
        return all;
    }

    private static final String UNFINISHED = " <unfinished ...>";
    private static final String RESUMED = " resumed>";

    private static String takeup() {
        return Path.of(System.getProperty("takeup.home", "target/takeup")).toAbsolutePath() + "/bin/takeup";
    }

    private static void none(String input, String... arguments) throws IOException {
        Path log = scratch.resolve("log");
        List<String> command = strace(log, takeup());
        command.addAll(List.of(arguments));
        Installed.Ended ended = Installed.run(Installed.process(scratch, Map.of(), command), input);
        assertTrue(ended.status() < 2, ended.toString());
        noneIn(log);
    }

    private static void noneIn(Path log) throws IOException {
        List<String> left = new ArrayList<>(calls(log));
        javas.forEach(left::remove);
        assertEquals(List.of(), left, "besides what Java itself does as it loads: " + javas);
    }

    /** What the kernel was asked for that has to do with a network, without the numbers of processes and files. */
    private static List<String> calls(Path log) throws IOException {
        List<String> lines = Files.readAllLines(log);
        assertTrue(
                lines.stream().anyMatch(it -> it.contains("execve(") && it.contains("java")),
                "the record begins with the start of the program: " + lines);
        List<String> calls = new ArrayList<>();
        Map<String, String> unfinished = new HashMap<>();
        for (String line : lines) {
            String process = line.substring(0, line.indexOf(' '));
            String call = line.substring(line.indexOf(' ') + 1).strip();
            // A call that another process came between is told in two lines.
            if (call.endsWith(UNFINISHED)) {
                unfinished.put(process, call.substring(0, call.length() - UNFINISHED.length()));
                continue;
            }
            if (call.startsWith("<... ") && unfinished.containsKey(process)) {
                call = unfinished.remove(process) + call.substring(call.indexOf(RESUMED) + RESUMED.length());
                call = call.replaceAll(" +", " ").replace(" )", ")");
            }
            int end = call.lastIndexOf(") = ");
            if (!call.startsWith("execve(")
                    && !call.startsWith("<... execve")
                    && !call.startsWith("---")
                    && !call.startsWith("+++")) {
                String whole = end < 0 ? call : call.substring(0, end + 1);
                calls.add(
                        whole.startsWith("socket(")
                                ? whole
                                : whole.replaceFirst("\\(\\d+", "(")
                                        .replaceAll("0x[0-9a-f]+", "0x")
                                        .replaceAll("\\[\\d+, \\d+]", "[]"));
            }
        }
        return calls;
    }
}
