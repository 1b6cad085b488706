package takeup.journal;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import takeup.disk.FileSystem;
import takeup.disk.MemoryFileSystem;
import takeup.records.RollEventJson;
import takeup.roll.NoteEvent;
import takeup.roll.RollEvent;
import takeup.roll.RollId;
import takeup.roll.RollRecord;

/**
 * A whole roll on a disk that rots: bits flip, lines are cut, doubled and swapped. No wrong value is shown, every
 * record whose own bytes are whole is kept, the place of each damage is named, and damaged bytes are kept aside before
 * anything is appended. {@code -Dflips=100000} and {@code -Dlines=10000} ask for more than the usual 2,000 and 500.
 */
@Tag("slow")
class DamageTest {
    private static final int FLIPS = Integer.getInteger("flips", 2000);
    private static final int LINES = Integer.getInteger("lines", 500);
    private static final RollId ROLL = new RollId("R", 1);
    private static final Path PATH = RegattaDay.FOLDER.resolve("rolls/open/R0001.journal");
    private static final RollEvent AFTER = new NoteEvent.Noted("after the damage");

    private final RegattaDay day = RegattaDay.whole();
    private final List<RollRecord> records = new ArrayList<>();
    private final List<byte[]> lines = new ArrayList<>();

    @BeforeEach
    void write() throws IOException {
        lines.add(JournalLines.header());
        for (Object record : day.records(day.lines().size()).get("R0001")) {
            RollRecord recorded = (RollRecord) record;
            records.add(recorded);
            lines.add(JournalLines.of(
                    records.size(), recorded.step(), recorded.at(), RollEventJson.text(recorded.event())));
        }
        assertTrue(records.size() > 40);
    }

    private static byte[] joined(List<byte[]> lines) {
        return EventsGoRoundTest.concat(lines.toArray(byte[][]::new));
    }

    /** One of many, with the random numbers of its own; the answer is counted. */
    private interface Round {
        boolean run(Random random, boolean goesOn) throws IOException;
    }

    /** To go on with a journal takes as long as to read it four times: every eighth one is gone on with. */
    private static long rounds(int count, Round round) {
        return IntStream.range(0, count)
                .parallel()
                .filter(number -> {
                    try {
                        return round.run(new Random(number), number % 8 == 0);
                    } catch (IOException e) {
                        throw new UncheckedIOException(e);
                    }
                })
                .count();
    }

    @Test
    void aFlippedBitCostsAtMostItsOwnRecordAndIsNamedByLineAndRecordAndFrame() {
        byte[] file = joined(lines);
        long frames = rounds(FLIPS, (random, goesOn) -> flip(file, random, goesOn));
        assertTrue(frames > FLIPS / 3, "only " + frames + " frames were named");
    }

    private boolean flip(byte[] file, Random random, boolean goesOn) throws IOException {
        int at = random.nextInt(file.length);
        int line = 0;
        for (int end = lines.get(0).length; at >= end; end += lines.get(line).length) {
            line++;
        }
        byte[] damaged = file.clone();
        damaged[at] ^= (byte) (1 << random.nextInt(8));
        String where = "byte " + at + " of the file, in line " + (line + 1) + ", is " + damaged[at];
        boolean costsNone = line < 2 || file[at] == '\n';
        List<RollRecord> whole = new ArrayList<>(records);
        if (!costsNone) {
            whole.remove(line - 1);
        }
        List<String> problems = read(damaged, whole, where);
        assertTrue(problems.get(0).startsWith("R0001.journal:" + (line + 1) + ": "), where + problems);
        if (goesOn) {
            goOn(damaged, whole, where);
        }
        if (costsNone || line == records.size()) {
            return false;
        }
        String missing = "record " + line + " is missing";
        assertTrue(problems.stream().anyMatch(it -> it.contains(missing)), where + problems);
        boolean isKnown = isPlainFrame(line - 1) && isPlainFrame(line) && isPlainFrame(line - 2);
        if (isKnown) {
            int number =
                    ((RollEvent.Added) records.get(line - 1).event()).frame().number();
            assertTrue(
                    problems.stream().anyMatch(it -> it.contains(missing + ": frame " + number + " is not in the log")),
                    where + problems);
        }
        return isKnown;
    }

    private boolean isPlainFrame(int at) {
        return at >= 0
                && at < records.size()
                && records.get(at).event() instanceof RollEvent.Added added
                && added.origin() == RollEvent.Origin.LOGGED;
    }

    @Test
    void cutDoubledAndSwappedLinesCostNoRecordButTheOneThatWasCut() {
        assertEquals(LINES, rounds(LINES, this::change));
    }

    private boolean change(Random random, boolean goesOn) throws IOException {
        List<byte[]> changed = new ArrayList<>(lines);
        List<RollRecord> whole = new ArrayList<>(records);
        int line = 1 + random.nextInt(records.size());
        boolean isTold = true;
        int what = random.nextInt(4);
        switch (what) {
            case 0 -> {
                int from = random.nextInt(lines.get(line).length - 1);
                int to = from + 1 + random.nextInt(lines.get(line).length - 1 - from);
                changed.set(
                        line,
                        EventsGoRoundTest.concat(
                                Arrays.copyOf(lines.get(line), from),
                                Arrays.copyOfRange(lines.get(line), to, lines.get(line).length)));
                whole.remove(line - 1);
            }
            case 1 -> {
                changed.remove(line);
                whole.remove(line - 1);
                isTold = line < records.size();
            }
            case 2 -> changed.add(1 + random.nextInt(records.size()), lines.get(line));
            default -> {
                int other = 1 + (line + random.nextInt(records.size() - 1)) % records.size();
                Collections.swap(changed, line, other);
                isTold = line != other;
            }
        }
        String where = "change " + what + " of line " + (line + 1);
        List<String> problems = read(joined(changed), whole, where);
        assertEquals(isTold, !problems.isEmpty(), where + problems);
        if (goesOn) {
            goOn(joined(changed), whole, where);
        }
        return true;
    }

    private static MemoryFileSystem drive(byte[] file) {
        MemoryFileSystem drive = new MemoryFileSystem();
        drive.put(RegattaDay.FOLDER);
        drive.put(RegattaDay.FOLDER.resolve("rolls"));
        drive.put(PATH.getParent());
        drive.put(PATH, file);
        return drive;
    }

    private static List<String> read(byte[] file, List<RollRecord> whole, String where) {
        JournalRecords<RollRecord> opened = new Archive(drive(file), RegattaDay.FOLDER).roll(ROLL);
        assertEquals(whole.size(), opened.records().size(), where + opened.problems());
        for (int i = 0; i < whole.size(); i++) {
            assertEquals(whole.get(i), opened.records().get(i), where);
        }
        return opened.problems();
    }

    /** The next record goes behind what is there, and what could not be read lies aside by then. */
    private void goOn(byte[] file, List<RollRecord> whole, String where) throws IOException {
        MemoryFileSystem drive = drive(file);
        try (Writer writer = Writer.take(drive, RegattaDay.FOLDER)) {
            Batch batch = new Batch(2000, records.get(0).at());
            batch.add(ROLL, AFTER);
            writer.append(batch);
            assertEquals(List.of(), writer.remarks(), where);
        }
        JournalLines.Content content = JournalReader.read("R0001.journal", file);
        byte[] after = drive.read(PATH);
        assertArrayEquals(
                Arrays.copyOf(file, (int) content.goodBytes()), Arrays.copyOf(after, (int) content.goodBytes()), where);
        List<RollRecord> all = new ArrayList<>(whole);
        all.add(new RollRecord(2000, records.get(0).at(), AFTER));
        read(after, all, where);
        Path aside = PATH.resolveSibling("R0001.journal.damaged-1");
        byte[] kept = drive.kind(aside) == FileSystem.Kind.FILE ? drive.read(aside) : new byte[0];
        assertArrayEquals(ofChecked(file, content.goodBytes()), kept, where);
    }

    /** The lines that are no record as they stand, found by themselves: what stands between two line feeds. */
    private byte[] ofChecked(byte[] file, long good) {
        ByteArrayOutputStream unread = new ByteArrayOutputStream();
        int start = 0;
        for (int at = 0; at < good; at++) {
            if (file[at] == '\n') {
                byte[] line = Arrays.copyOfRange(file, start, at + 1);
                if (lines.stream().noneMatch(it -> Arrays.equals(it, line))) {
                    unread.writeBytes(line);
                }
                start = at + 1;
            }
        }
        return unread.toByteArray();
    }
}
