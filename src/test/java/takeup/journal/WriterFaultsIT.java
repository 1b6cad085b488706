package takeup.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import takeup.Outside;
import takeup.roll.NoteEvent;
import takeup.roll.RollEvent;
import takeup.roll.RollRecord;

/**
 * The writer on a disk that fails: the system is made to say so by strace, and a full disk is played by a limit of the
 * shell.
 */
class WriterFaultsIT {
    /** A call and the path that it is about: {@code fsync(5</path>)}, {@code rename("/path", ...)}. */
    private static final Pattern CALL =
            Pattern.compile("^[0-9]+ +(write|pwrite64|fdatasync|fsync|rename|mkdir)\\([^<\"]*[<\"]([^>\"]*)[>\"]");

    @TempDir
    Path folder;

    @BeforeAll
    static void asks() {
        Outside.needs("sh", "strace");
    }

    private Path journal() {
        return folder.resolve("rolls/open/" + OtherProgram.ROLL + ".journal");
    }

    private static List<String> saved(int to) {
        return IntStream.rangeClosed(1, to).mapToObj(Integer::toString).toList();
    }

    /** The first record forces a whole new file (fsync), each further one its own lines (fdatasync). */
    @ParameterizedTest(name = "{0} number {1} fails")
    @CsvSource({"fdatasync, 1", "fdatasync, 2", "fdatasync, 5", "fdatasync, 1+2", "fdatasync, 9"})
    void aForceThatFailsIsNeverAskedAgainOnThatFileAndNothingIsLostOrDoubled(String call, String when)
            throws IOException {
        Path log = folder.resolve("strace.log");
        List<String> said = said(
                10,
                "strace",
                "--seccomp-bpf",
                "-f",
                "-y",
                "-o",
                log.toString(),
                "-e",
                "trace=fdatasync,fsync,rename",
                "-e",
                "inject=" + call + ":error=EIO:when=" + when);
        List<String> told =
                said.stream().filter(it -> it.startsWith("the disk")).toList();
        assertEquals(when.equals("1+2") ? 5 : 1, told.size(), said.toString());
        assertEquals(
                "the disk reported an error in R0001.journal; all of it was written anew and is safe: copy the "
                        + "data folder to another disk",
                told.get(0));
        assertEquals(
                List.of(),
                said.stream().filter(it -> it.startsWith("not saved")).toList());
        assertEquals(saved(10), said.stream().filter(it -> it.matches("[0-9]+")).toList());
        check(10);
        boolean failed = false;
        for (String line : Files.readAllLines(log)) {
            failed |= line.contains("EIO");
            assertFalse(
                    failed && line.contains("fdatasync") && !line.contains("EIO"),
                    "forced again on the channel that failed: " + line);
            failed &= !line.contains("rename");
        }
    }

    /** Each sync, rename, opening and removal of a short day in turn fails once. */
    @ParameterizedTest(name = "{0} number {1} fails with {2}")
    @CsvSource({
        "fsync, 1, EIO",
        "fsync, 2, EIO",
        "fsync, 3, EIO",
        "fsync, 6, EIO",
        "fsync, 7, EIO",
        "fsync, 8, EIO",
        "rename, 1, EROFS",
        "rename, 1, ENOSPC",
        "link, 1, EPERM",
        "ftruncate, 1, EIO"
    })
    void aCallThatFailsAnywhereCostsNoAcknowledgedRecord(String call, String when, String error) throws IOException {
        List<String> said = said(
                6,
                "strace",
                "--seccomp-bpf",
                "-f",
                "-o",
                "/dev/null",
                "-e",
                "trace=" + call,
                "-e",
                "inject=" + call + ":error=" + error + ":when=" + when);
        List<String> acknowledged =
                said.stream().filter(it -> it.matches("[0-9]+")).toList();
        assertEquals(saved(acknowledged.size()), acknowledged, said.toString());
        if (said.contains("taken")) {
            assertEquals(6, acknowledged.size(), said.toString());
            check(6);
        } else {
            assertFalse(Files.exists(journal()));
        }
    }

    /**
     * Power may go at any moment: no name is given and nothing said before the bytes are on the disk, and then the
     * name.
     */
    @Test
    void whatIsSaidToBeSavedWasForcedAndWhatGotItsNameWasForcedBefore() throws IOException {
        Path log = folder.resolve("strace.log");
        Path data = folder.toRealPath().resolve("data");
        try (OtherProgram other = OtherProgram.start(
                data,
                5,
                "strace",
                "--seccomp-bpf",
                "-f",
                "-y",
                "-o",
                log.toString(),
                "-e",
                "trace=write,pwrite64,fdatasync,fsync,rename,mkdir")) {
            other.endInput();
            assertEquals("done", other.lines().get(6));
        }
        Set<String> unsafe = new HashSet<>();
        int forced = 0;
        int said = 0;
        for (String line : Files.readAllLines(log)) {
            Matcher call = CALL.matcher(line);
            if (!call.find()) {
                continue;
            }
            String path = call.group(2);
            switch (call.group(1)) {
                case "fsync", "fdatasync" -> forced += unsafe.remove(path) ? 1 : 0;
                case "mkdir" -> unsafe.add(Path.of(path).getParent().toString());
                case "rename" -> {
                    assertFalse(unsafe.contains(path), "named before it was forced: " + line);
                    unsafe.add(Path.of(path).getParent().toString());
                }
                default -> {
                    if (path.startsWith(data.toString()) && !path.endsWith("/lock")) {
                        unsafe.add(path);
                    } else if (line.contains("write(1<")) {
                        assertEquals(Set.of(), unsafe, "said before it was safe: " + line);
                        said++;
                    }
                }
            }
        }
        assertTrue(forced > 8 && said >= 7, forced + " forced, " + said + " said");
    }

    /** The shell's limit gives a short write, and then an error, as a full disk does. */
    @Test
    void halfARecordThatAFullDiskLeavesIsCutAtOnceAndTheRestIsWhole() throws IOException {
        List<String> said = said(1000, "sh", "-c", "ulimit -f 8; exec \"$@\"", "sh");
        int acknowledged = said.size() - 2 - 3;
        assertTrue(acknowledged > 10 && acknowledged < 100, said.toString());
        assertEquals(3, said.stream().filter(it -> it.startsWith("not saved")).count());
        check(acknowledged);
        try (Writer writer = Writer.take(folder)) {
            Batch batch = new Batch(
                    acknowledged + 1,
                    new Archive(folder).roll(OtherProgram.ROLL).records().get(0).at());
            batch.add(OtherProgram.ROLL, new NoteEvent.Noted("record " + (acknowledged + 1)));
            writer.append(batch);
        }
        check(acknowledged + 1);
    }

    @Test
    void halfARecordLeftByAnEarlierFullDiskIsCutWithoutAnyRoomToCopyIt() throws IOException {
        said(3);
        byte[] whole = Files.readAllBytes(journal());
        Files.write(
                journal(),
                "{\"n\":4,\"step\":4,\"at\":\"2026-09-12T15".getBytes(java.nio.charset.StandardCharsets.US_ASCII),
                StandardOpenOption.APPEND);
        List<String> said = said(1, "sh", "-c", "ulimit -f 0; exec \"$@\"", "sh");
        assertEquals("taken", said.get(0));
        assertTrue(said.get(1).startsWith("not saved"), said.toString());
        assertEquals(whole.length, Files.size(journal()));
        check(3);
        assertFalse(Files.exists(journal().resolveSibling("R0001.journal.torn-1")));
    }

    /**
     * Killed at each system call that writes, forces, moves or removes, in turn: what was said to be saved is there.
     * With {@code --seccomp-bpf} strace sends a signal at the first call alone.
     */
    @ParameterizedTest(name = "killed at {0}")
    @CsvSource({"write, 30, 5", "fdatasync, 6, 5", "fsync, 9, 9", "rename, 1, 1"})
    void aKillAtAnyCallLosesNothingThatWasAcknowledged(String call, int most, int least)
            throws IOException, InterruptedException {
        int killed = 0;
        int kept = 0;
        for (int at = 1; at <= most; at += most > 10 ? 3 : 1) {
            Path data = folder.resolve(call + at);
            Path output = folder.resolve("said-" + call + at);
            try (OtherProgram other = OtherProgram.start(
                    data,
                    6,
                    "sh",
                    "-c",
                    "exec \"$@\" > '" + output + "' < /dev/null",
                    "sh",
                    "strace",
                    "-f",
                    "-o",
                    "/dev/null",
                    "-e",
                    "trace=" + call,
                    "-e",
                    "inject=" + call + ":signal=KILL:when=" + at)) {
                other.awaitEnd();
            }
            List<String> said = Files.readAllLines(output);
            killed += said.contains("done") ? 0 : 1;
            int acknowledged =
                    (int) said.stream().filter(it -> it.matches("[0-9]+")).count();
            kept += acknowledged;
            Writer.take(data).close();
            Archive archive = new Archive(data);
            int found = archive.openRolls().isEmpty()
                    ? 0
                    : archive.roll(OtherProgram.ROLL).records().size();
            assertTrue(
                    found == acknowledged || found == acknowledged + 1,
                    "at " + call + " " + at + ": " + found + " of " + acknowledged);
        }
        assertTrue(killed >= least, "killed only " + killed + " times");
        assertTrue(
                kept > 0 || !List.of("write", "fdatasync").contains(call),
                "all was over before anything was acknowledged");
    }

    private List<String> said(int records, String... behind) throws IOException {
        try (OtherProgram other = OtherProgram.start(folder, records, behind)) {
            other.endInput();
            return other.lines();
        }
    }

    private void check(int records) {
        JournalRecords<RollRecord> read = new Archive(folder).roll(OtherProgram.ROLL);
        List<RollEvent> expected = new ArrayList<>();
        for (int number = 1; number <= records; number++) {
            expected.add(new NoteEvent.Noted("record " + number));
        }
        assertEquals(expected, read.records().stream().map(RollRecord::event).toList());
        assertEquals(List.of(), read.problems());
    }
}
