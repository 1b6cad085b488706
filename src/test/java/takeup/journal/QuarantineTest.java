package takeup.journal;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import takeup.disk.MemoryFileSystem;
import takeup.disk.Quarantine;
import takeup.roll.NoteEvent;
import takeup.roll.RollEvent;
import takeup.roll.RollId;
import takeup.roll.RollRecord;

/**
 * What makes room in a journal's place lies beside it, forced, before its old place is touched; and a roll that lies
 * twice.
 */
class QuarantineTest {
    private static final OffsetDateTime AT = OffsetDateTime.parse("2026-09-12T15:10:03+02:00");
    private static final RollId R1 = new RollId("R", 1);
    private static final Path OPEN = RegattaDay.FOLDER.resolve("rolls/open/R0001.journal");
    private static final Path FINISHED = RegattaDay.FOLDER.resolve("rolls/finished/R0001.journal");
    private static final byte[] TORN = "{\"n\":3".getBytes(StandardCharsets.US_ASCII);

    private final MemoryFileSystem drive = new MemoryFileSystem();
    private final List<String> calls = new ArrayList<>();

    @BeforeEach
    void folders() {
        for (Path folder : DataLayout.of(RegattaDay.FOLDER).folders()) {
            drive.put(folder.getParent());
            drive.put(folder);
        }
        drive.fault((call, path) -> calls.add(call + " " + RegattaDay.FOLDER.relativize(path)));
    }

    private static byte[] line(int n, String words) {
        return JournalLines.of(n, n, AT, "{\"event\":\"note\",\"words\":\"" + words + "\"}");
    }

    private static byte[] journal(byte[]... lines) {
        return EventsGoRoundTest.concat(JournalLines.header(), EventsGoRoundTest.concat(lines));
    }

    private static byte[] damaged(byte[] line) {
        byte[] changed = line.clone();
        changed[40] ^= 1;
        return changed;
    }

    private void goOn(int step) throws IOException {
        try (Writer writer = Writer.take(drive, RegattaDay.FOLDER)) {
            Batch batch = new Batch(step, AT);
            batch.add(R1, new NoteEvent.Noted("step " + step));
            writer.append(batch);
        }
    }

    private int after(int from, String call) {
        int at = from;
        while (at < calls.size() && !calls.get(at).equals(call)) {
            at++;
        }
        assertTrue(at < calls.size(), call + " is not among " + calls.subList(from, calls.size()));
        return at;
    }

    @Test
    void theCopyOfATornEndIsOnTheDiskUnderItsNameBeforeTheEndIsCutOff() throws IOException {
        drive.put(OPEN, journal(line(1, "one"), TORN));
        goOn(3);
        int copied = after(0, "force rolls/open/R0001.journal.torn-1");
        int named = after(copied, "forceNames rolls/open");
        after(named, "truncate rolls/open/R0001.journal");
        assertArrayEquals(TORN, drive.read(OPEN.resolveSibling("R0001.journal.torn-1")));
    }

    @Test
    void aFileThatStandsInAJournalsPlaceIsOnTheDiskUnderAnotherNameBeforeItsOwnIsTaken() throws IOException {
        try (Writer writer = Writer.take(drive, RegattaDay.FOLDER)) {
            Batch batch = new Batch(1, AT);
            batch.add(R1, new NoteEvent.Noted("one"));
            writer.append(batch);
            drive.delete(OPEN);
            drive.put(OPEN, journal(line(1, "another's")));
            Batch next = new Batch(2, AT);
            next.add(R1, new NoteEvent.Noted("two"));
            calls.clear();
            writer.append(next);
        }
        int linked = after(0, "link rolls/open/R0001.journal.other-1");
        int named = after(linked, "forceNames rolls/open");
        after(named, "move rolls/open/.R0001.journal.part");
        assertArrayEquals(journal(line(1, "another's")), drive.read(OPEN.resolveSibling("R0001.journal.other-1")));
    }

    /** The beginning of what is put in its place needs no copy; what goes on behind it is another's. */
    @ParameterizedTest(name = "a file of {0} records, {1} before it: kept aside {2}")
    @CsvSource({"1, 1, false", "2, 2, false", "2, 1, true", "1, 2, false"})
    void whatFollowsHoldsTooIsNotKeptTwice(int there, int following, boolean kept) throws IOException {
        byte[][] lines = {line(1, "one"), line(2, "two")};
        drive.put(OPEN, journal(Arrays.copyOf(lines, there)));
        Quarantine.other(drive, OPEN, journal(Arrays.copyOf(lines, following)));
        assertEquals(kept, drive.names(OPEN.getParent()).contains("R0001.journal.other-1"));
    }

    @Test
    void damagedLinesThatLieAsideAlreadyAreNotCopiedOnceMore() throws IOException {
        byte[] bad = damaged(line(1, "one"));
        drive.put(OPEN, journal(bad, line(2, "two")));
        drive.put(OPEN.resolveSibling("R0001.journal.damaged-1"), damaged(line(7, "earlier")));
        drive.put(OPEN.resolveSibling("R0001.journal.damaged-2"), bad);
        goOn(3);
        assertFalse(drive.names(OPEN.getParent()).contains("R0001.journal.damaged-3"));
        drive.delete(OPEN.resolveSibling("R0001.journal.damaged-2"));
        goOn(4);
        assertArrayEquals(bad, drive.read(OPEN.resolveSibling("R0001.journal.damaged-2")));
    }

    private JournalRecords<RollRecord> opened() {
        return new Archive(drive, RegattaDay.FOLDER).roll(R1);
    }

    private static List<RollEvent> notes(String... words) {
        return Arrays.stream(words)
                .map(it -> (RollEvent) new NoteEvent.Noted(it))
                .toList();
    }

    @Test
    void ofTwoJournalsOfOneRollTheLongerOneCountsAndTheDamageOfBothIsTold() {
        drive.put(OPEN, journal(line(1, "one"), line(2, "two"), line(3, "three")));
        drive.put(FINISHED, journal(line(1, "one"), damaged(line(2, "two"))));
        assertEquals(
                notes("one", "two", "three"),
                opened().records().stream().map(RollRecord::event).toList());
        assertEquals(
                List.of(
                        "R0001.journal:3: this line is damaged and is left out; the record before it is number 1",
                        "R0001.journal:1: it lies with the open and with the finished rolls; the longer one counts"),
                opened().problems());
        drive.put(FINISHED, journal(line(1, "one"), line(2, "two"), line(3, "three"), line(4, "four")));
        drive.put(OPEN, journal(damaged(line(1, "one")), line(2, "two")));
        assertEquals(4, opened().records().size());
        assertEquals(
                "R0001.journal:2: this line is damaged and is left out",
                opened().problems().get(0));
    }

    @Test
    void ofTwoEquallyLongJournalsTheOpenOneCounts() {
        drive.put(OPEN, journal(line(1, "one"), line(2, "of the open one")));
        drive.put(FINISHED, journal(line(1, "one"), line(2, "of the finished one")));
        assertEquals(
                notes("one", "of the open one"),
                opened().records().stream().map(RollRecord::event).toList());
    }

    @Test
    void aJournalThatLiesInBothPlacesAlikeLeavesNoCopyWhenTheRollIsSettled() throws IOException {
        drive.put(OPEN, journal(line(1, "one")));
        drive.put(FINISHED, journal(line(1, "one")));
        try (Writer writer = Writer.take(drive, RegattaDay.FOLDER)) {
            writer.settleFinished(R1);
        }
        assertEquals(List.of(), drive.names(OPEN.getParent()));
        assertEquals(List.of("R0001.journal"), drive.names(FINISHED.getParent()));
    }
}
