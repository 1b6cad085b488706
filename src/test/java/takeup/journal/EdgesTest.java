package takeup.journal;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import takeup.day.DayEvent;
import takeup.disk.FileSystem;
import takeup.disk.FolderInUse;
import takeup.disk.Folders;
import takeup.disk.IoErrorText;
import takeup.disk.MemoryFileSystem;
import takeup.records.FastIsoParser;
import takeup.records.RollEventJson;
import takeup.review.ReviewEvent;
import takeup.roll.Exposure;
import takeup.roll.Frame;
import takeup.roll.NoteEvent;
import takeup.roll.Roll;
import takeup.roll.RollEvent;
import takeup.roll.RollId;
import takeup.roll.RollRecord;

/**
 * The far ends of the journal room: the largest journal, the last bytes of a disk, names that nearly fit, calls that
 * fail where no day takes them.
 */
class EdgesTest {
    private static final OffsetDateTime AT = OffsetDateTime.parse("2026-09-12T15:10:03+02:00");
    private static final RollId R1 = new RollId("R", 1);
    private static final Path FOLDER = RegattaDay.FOLDER;
    private static final Path JOURNAL = FOLDER.resolve("rolls/open/R0001.journal");

    @TempDir
    Path folder;

    private final MemoryFileSystem drive = new MemoryFileSystem();

    private static void note(Writer writer, int step, String words) throws IOException {
        Batch batch = new Batch(step, AT);
        batch.add(R1, new NoteEvent.Noted(words));
        writer.append(batch);
    }

    private static byte[] line(int n) {
        return JournalLines.of(n, n, AT, "{\"event\":\"note\",\"words\":\"record " + n + "\"}");
    }

    /** Lets the first so many calls of a kind fail. */
    private void fails(String call, int times, IOException with) {
        int[] left = {times};
        drive.fault((made, path) -> {
            if (made.equals(call) && left[0]-- > 0) {
                throw with;
            }
        });
    }

    private void put(byte[]... lines) {
        for (Path path : DataLayout.of(FOLDER).folders()) {
            drive.put(path.getParent());
            drive.put(path);
        }
        drive.put(JOURNAL, EventsGoRoundTest.concat(EventsGoRoundTest.concat(lines)));
    }

    /** 1,000,000 records, and 16 MiB: what the reader would not read is not written. */
    @Test
    void aJournalThatIsFullRefusesInWordsAndTakesWhatStillFits() throws IOException {
        put(JournalLines.header(), line(999_999));
        try (Writer writer = Writer.take(drive, FOLDER)) {
            note(writer, 1, "the last that fits");
            assertEquals(
                    "R0001.journal is as large as a journal can be; unload the roll, or go on tomorrow",
                    assertThrows(IOException.class, () -> note(writer, 2, "one more"))
                            .getMessage());
        }
        assertEquals(2, new Archive(drive, FOLDER).roll(R1).records().size());
        byte[] rubbish = new byte[(16 << 20) - JournalLines.header().length - line(1).length - line(2).length];
        Arrays.fill(rubbish, (byte) 'x');
        rubbish[rubbish.length - 1] = '\n';
        put(JournalLines.header(), line(1), rubbish);
        try (Writer writer = Writer.take(drive, FOLDER)) {
            assertThrows(IOException.class, () -> note(writer, 2, "record 2 and more"));
            note(writer, 2, "record 2");
        }
        assertEquals(16 << 20, drive.size(JOURNAL));
        assertEquals(2, new Archive(drive, FOLDER).roll(R1).records().size());
    }

    @Test
    void aStepOfWhichOnlyTheNumberIsTheSameIsWrittenToo() throws IOException {
        try (Writer writer = Writer.take(drive, FOLDER)) {
            note(writer, 7, "one");
            note(writer, 7, "one");
            note(writer, 7, "two");
        }
        assertEquals(2, new Archive(drive, FOLDER).roll(R1).records().size());
    }

    /** 50 MiB is the border; 0 is what a system says that does not know. */
    @ParameterizedTest(name = "{0} bytes are free: {1} remarks")
    @CsvSource({"52428800, 0", "52428799, 1", "1, 1", "0, 0"})
    void littleRoomIsToldOnce(long room, int remarks) throws IOException {
        try (Writer writer = Writer.take(drive, FOLDER)) {
            drive.room(room);
            note(writer, 1, "one");
            note(writer, 2, "two");
            assertEquals(
                    remarks == 0
                            ? List.of()
                            : List.of("less than 50 MB are free on this disk: free some space before it is full"),
                    writer.remarks());
        }
    }

    @ParameterizedTest(name = "with {0} bytes free a reserve is made: {1}")
    @CsvSource({"1048577, true", "1048576, false"})
    void aReserveIsMadeWhereFourOfThemWouldFit(long room, boolean made) throws IOException {
        drive.room(room);
        Writer.take(drive, FOLDER).close();
        assertEquals(made, drive.names(FOLDER).contains("reserve"));
        assertEquals(made ? 262_144 : 0, made ? drive.size(FOLDER.resolve("reserve")) : 0);
    }

    @Test
    void journalsThatCannotBeMendedAtOnceAreMendedWithTheNextStep() throws IOException {
        RollId second = new RollId("R", 2);
        try (Writer writer = Writer.take(drive, FOLDER)) {
            note(writer, 1, "one");
            Batch batch = new Batch(2, AT);
            batch.add(second, new NoteEvent.Noted("other"));
            writer.append(batch);
            drive.delete(JOURNAL);
            drive.delete(JOURNAL.resolveSibling("R0002.journal"));
            drive.fault((call, path) -> {
                if (call.equals("create") && path.toString().contains("R0002")) {
                    throw new IOException("Input/output error");
                }
            });
            note(writer, 3, "three");
            assertEquals(
                    List.of("R0001.journal was moved, deleted or changed by another program; all of it was "
                            + "written anew"),
                    writer.remarks());
            drive.fault((call, path) -> {});
            note(writer, 4, "four");
            assertEquals(1, writer.remarks().size());
        }
        assertEquals(3, new Archive(drive, FOLDER).roll(R1).records().size());
        assertEquals(1, new Archive(drive, FOLDER).roll(second).records().size());
    }

    /**
     * After a failed force the system may have dropped what it was to write: the file is never forced again, and the
     * next one holds all.
     */
    @Test
    void aFileThatCannotBeForcedIsWrittenAnewAtOnceAndTheFrameIsSafe() throws IOException {
        String told = "the disk reported an error in R0001.journal; all of it was written anew and is safe: copy the "
                + "data folder to another disk";
        try (Writer writer = Writer.take(drive, FOLDER)) {
            note(writer, 1, "one");
            Object before = drive.key(JOURNAL);
            fails("force", 1, new IOException("Input/output error"));
            note(writer, 2, "two");
            assertEquals(List.of(told), writer.remarks());
            assertFalse(before.equals(drive.key(JOURNAL)), "it is another file");
            assertEquals(List.of("R0001.journal"), drive.names(JOURNAL.getParent()));
            note(writer, 3, "three");
            assertEquals(List.of(), writer.remarks());
            fails("force", 2, new IOException("Input/output error"));
            assertEquals(
                    "Input/output error",
                    assertThrows(IOException.class, () -> note(writer, 4, "four"))
                            .getMessage());
            assertEquals(3, new Archive(drive, FOLDER).roll(R1).records().size());
            note(writer, 4, "four");
            assertEquals(List.of(told), writer.remarks());
        }
        assertEquals(4, new Archive(drive, FOLDER).roll(R1).records().size());
    }

    @Test
    void whatIsPutAsideWhenThatCannotBeDoneKeepsNobodyFromGoingOn() throws IOException {
        byte[] damaged = line(1);
        damaged[40] ^= 3; // one flipped bit alone would be turned back
        for (String call : List.of("create", "names", "kind")) {
            put(JournalLines.header(), damaged, line(2), "{\"n\":3".getBytes(StandardCharsets.US_ASCII));
            try (Writer writer = Writer.take(drive, FOLDER)) {
                drive.fault((made, path) -> {
                    boolean aside = path.toString().contains("damaged")
                            || path.toString().contains("torn")
                            || made.equals("names");
                    if (made.equals(call) && aside) {
                        throw new IOException("Input/output error");
                    }
                });
                note(writer, 3, "three");
            } finally {
                drive.fault((made, path) -> {});
            }
            assertEquals(2, new Archive(drive, FOLDER).roll(R1).records().size(), call);
        }
    }

    @Test
    void aFileThatWasThereWhileItsCopyWasHalfWrittenIsNotLeftHalf() throws IOException {
        byte[] torn = "{\"n\":3".getBytes(StandardCharsets.US_ASCII);
        put(JournalLines.header(), line(1), torn);
        try (Writer writer = Writer.take(drive, FOLDER)) {
            int[] writes = {1};
            drive.fault((made, path) -> {
                if (made.equals("write") && writes[0]-- > 0) {
                    throw new IOException("No space left on device");
                }
            });
            note(writer, 3, "three");
        }
        assertFalse(drive.names(JOURNAL.getParent()).contains("R0001.journal.torn-1"));
        assertEquals(2, new Archive(drive, FOLDER).roll(R1).records().size());
    }

    @Test
    void aFolderThatAnotherMakesAtTheSameMomentIsThere() throws IOException {
        drive.fault((call, path) -> {
            if (call.equals("makeFolder") && path.equals(FOLDER)) {
                drive.put(FOLDER);
                throw new FileAlreadyExistsException(path.toString());
            }
        });
        Folders.make(drive, FOLDER.resolve("rolls"));
        assertEquals(FileSystem.Kind.FOLDER, drive.kind(FOLDER.resolve("rolls")));
    }

    @Test
    void foldersOnTwoDisksAreRefusedInWords() throws IOException {
        try (Writer writer = Writer.take(drive, FOLDER)) {
            note(writer, 1, "one");
            fails("link", 99, new FileSystemException("x", null, "Operation not permitted"));
            writer.settleFinished(R1);
            drive.fault((call, path) -> {
                if (call.equals("link") || call.equals("move")) {
                    throw call.equals("link")
                            ? new IOException("this disk knows no links")
                            : new AtomicMoveNotSupportedException(
                                    path.toString(), "there", "Invalid cross-device link");
                }
            });
            assertEquals(
                    "the folders of one data folder must lie on one disk: R0001.journal",
                    assertThrows(IOException.class, () -> writer.settleOpen(R1)).getMessage());
            drive.fault((call, path) -> {});
            assertEquals(1, new Archive(drive, FOLDER).roll(R1).records().size());
        }
    }

    @Test
    void decisionsAboutScansThatCannotBeReadOrWrittenAreSaidInWords() throws IOException {
        put(JournalLines.header());
        List<ReviewEvent> decided = List.of(new ReviewEvent.Unknown("framed", "{\"event\":\"framed\"}"));
        Archive archive = new Archive(drive, FOLDER);
        try (Writer writer = Writer.take(drive, FOLDER)) {
            drive.room(0);
            fails("create", 1, new IOException("Auf dem Gerät ist kein Speicherplatz mehr verfügbar"));
            assertEquals(
                    "the disk is full; free some space",
                    IoErrorText.words(assertThrows(IOException.class, () -> writer.append(R1, AT, decided))));
            writer.append(R1, AT, decided);
            assertEquals(decided, archive.reviewOf(R1).records());
        }
        fails("kind", 1, new IOException("Input/output error"));
        assertEquals(
                List.of("R0001.journal:1: cannot be read: the disk reports an error (Input/output error); copy "
                        + "the data folder to another disk"),
                archive.reviewOf(R1).problems());
    }

    /** The mark of the day that was written on while the clock had gone back; whatever else lies there is none. */
    @Test
    void onlyAWholeDateInAPlainFileNamesTheDayThatTheClockWentBackTo() throws IOException {
        put(JournalLines.header());
        Path mark = FOLDER.resolve("went-back-to");
        Archive archive = new Archive(drive, FOLDER);
        assertEquals(Optional.empty(), archive.wentBackTo());
        for (String text : List.of("2026-09-11", "2026-09-11\n", "2026-02-30", "")) {
            drive.put(mark, text.getBytes(StandardCharsets.US_ASCII));
            assertEquals(text.equals("2026-09-11"), archive.wentBackTo().isPresent(), text);
        }
        drive.put(mark, "2026-09-11".getBytes(StandardCharsets.US_ASCII));
        fails("read", 1, new IOException("Input/output error"));
        assertEquals(Optional.empty(), archive.wentBackTo());
        assertEquals(Optional.of(LocalDate.of(2026, 9, 11)), archive.wentBackTo());
        drive.delete(mark);
        drive.put(mark);
        assertEquals(Optional.empty(), archive.wentBackTo());
    }

    @Test
    void onlyADayOlderThanTheNewestIsMarkedAsTheOneThatIsGoneOnWith() throws IOException {
        try (Writer writer = Writer.take(drive, FOLDER)) {
            for (int day : new int[] {12, 13, 13, 11}) {
                assertFalse(drive.names(FOLDER).contains("went-back-to"), "on the " + day);
                Batch batch = new Batch(day, AT.withDayOfMonth(day));
                batch.add(new DayEvent.GuideDismissed());
                writer.append(batch);
            }
        }
        assertEquals("2026-09-11", new String(drive.read(FOLDER.resolve("went-back-to")), StandardCharsets.US_ASCII));
    }

    @Test
    void aJournalWhoseFirstRecordCouldNotBeWrittenIsNotBegunWhenTheOthersAreMended() throws IOException {
        RollId second = new RollId("R", 2);
        try (Writer writer = Writer.take(drive, FOLDER)) {
            note(writer, 1, "one");
            drive.fault((call, path) -> {
                if (call.equals("create") && path.toString().contains("R0002")) {
                    throw new IOException("Input/output error");
                }
            });
            Batch batch = new Batch(2, AT);
            batch.add(second, new NoteEvent.Noted("other"));
            assertThrows(IOException.class, () -> writer.append(batch));
            drive.fault((call, path) -> {});
            drive.delete(JOURNAL);
            note(writer, 3, "three");
            assertEquals(
                    List.of("R0001.journal was moved, deleted or changed by another program; all of it was "
                            + "written anew"),
                    writer.remarks());
            assertEquals(List.of("R0001.journal"), drive.names(JOURNAL.getParent()));
            writer.append(batch);
        }
        assertEquals(1, new Archive(drive, FOLDER).roll(second).records().size());
    }

    /**
     * A file whose very first bytes are the beginning of a record that was never ended, and then of one that is whole.
     */
    @Test
    void aWholeRecordBehindAHalfOneOnTheFirstLineIsRead() {
        byte[] half = JournalLines.START.getBytes(StandardCharsets.US_ASCII);
        for (byte[] before : List.of(half, EventsGoRoundTest.concat(half, half))) {
            JournalLines.Content content =
                    JournalReader.read("R0001.journal", EventsGoRoundTest.concat(before, line(1), line(2)));
            assertEquals(
                    List.of(1, 2),
                    content.lines().stream().map(JournalLines.Line::n).toList());
            assertEquals(
                    List.of(
                            "R0001.journal:1: this line is damaged; what is whole in it is kept",
                            "R0001.journal:1: the line that names the format is missing; the records are read "
                                    + "all the same"),
                    content.problems());
        }
    }

    @ParameterizedTest(name = "{0} damaged lines")
    @CsvSource({"1000, 1000", "1001, 1001", "1004, 1001"})
    void aThousandDamagedLinesAreToldOneByOneAndTheRestTogether(int lines, int problems) {
        byte[] file = EventsGoRoundTest.concat(
                JournalLines.header(), "x\n".repeat(lines).getBytes(StandardCharsets.US_ASCII));
        List<String> told = JournalReader.read("R0001.journal", file).problems();
        assertEquals(problems, told.size());
        String last = "R0001.journal:" + (lines + 1) + ": "
                + (lines == 1000
                        ? "this line is damaged and is left out"
                        : "up to here " + (lines - 1000) + " more lines are damaged");
        assertEquals(last, told.get(told.size() - 1));
    }

    @Test
    void aRollWhosePlaceCannotBeToldIsAProblemInWords() {
        put(JournalLines.header(), line(1));
        fails("kind", 1, new IOException("Input/output error"));
        assertEquals(
                List.of("R0001.journal:1: cannot be read: the disk reports an error (Input/output error); copy "
                        + "the data folder to another disk"),
                new Archive(drive, FOLDER).roll(R1).problems());
    }

    @Test
    void aDraftOfBlanksAndOneTooLongAreNone() throws IOException {
        put(JournalLines.header());
        Path draft = FOLDER.resolve("draft");
        for (int letters : new int[] {1, 200_000, 200_001}) {
            drive.put(draft, "x".repeat(letters).getBytes(StandardCharsets.US_ASCII));
            assertEquals(letters <= 200_000, new Archive(drive, FOLDER).draft().isPresent(), letters + " letters");
        }
        drive.put(draft, " \n".getBytes(StandardCharsets.US_ASCII));
        assertEquals(Optional.empty(), new Archive(drive, FOLDER).draft());
    }

    @ParameterizedTest(name = "R0001.journal.{0}: {1}")
    @CsvSource(delimiter = '|', textBlock = """
            torn-1    | rolls/open/R0001.journal.torn-1: 3 bytes that were cut off the end of R0001.journal; they were never confirmed on screen. Delete it once nothing in it is needed
            torn-9    | rolls/open/R0001.journal.torn-9: 3 bytes that were cut off the end of R0001.journal; they were never confirmed on screen. Delete it once nothing in it is needed
            torn-1!   | rolls/open/R0001.journal.torn-1!: by its name no journal, so that it is not read
            other-20  | rolls/open/R0001.journal.other-20: another file that lay in the place of R0001.journal; compare the two. Delete it once nothing in it is needed
            damaged-3 | rolls/open/R0001.journal.damaged-3: a copy of the damaged lines of R0001.journal. Delete it once nothing in it is needed
            torn-1:   | rolls/open/R0001.journal.torn-1:: by its name no journal, so that it is not read
            torn-     | rolls/open/R0001.journal.torn-: by its name no journal, so that it is not read
            broken-1  | rolls/open/R0001.journal.broken-1: by its name no journal, so that it is not read
            """)
    void aFileBesideAJournalIsKnownByItsWholeName(String ending, String says) throws IOException {
        put(JournalLines.header());
        drive.put(JOURNAL.resolveSibling("R0001.journal." + ending), new byte[] {1, 2, 3});
        assertEquals(List.of(says), new Archive(drive, FOLDER).leftOvers());
    }

    @Test
    void aLockHeldByWhoeverDidNotSignItWithANumberIsRefusedWithoutOne() throws IOException {
        Folders.make(folder);
        for (String signed : List.of("", "not ours", "12/4", "12:4", "1090\n")) {
            Files.writeString(folder.resolve("lock"), signed);
            try (FileChannel other = FileChannel.open(folder.resolve("lock"), StandardOpenOption.WRITE)) {
                other.lock();
                assertEquals(
                        "another takeup" + (signed.startsWith("1090") ? " (process 1090)" : "")
                                + " is writing in this folder",
                        assertThrows(FolderInUse.class, () -> Writer.take(folder))
                                .getMessage());
            }
        }
    }

    @Test
    void theRealDiskTellsAFileFromAFolderFromADeviceAndFromNothing() throws IOException {
        assertEquals(FileSystem.Kind.FOLDER, FileSystem.REAL.kind(folder));
        assertEquals(FileSystem.Kind.NOTHING, FileSystem.REAL.kind(folder.resolve("none")));
        assertEquals(FileSystem.Kind.NOTHING, FileSystem.REAL.kind(folder.resolve("none/below")));
        Files.writeString(folder.resolve("file"), "x");
        assertEquals(FileSystem.Kind.FILE, FileSystem.REAL.kind(folder.resolve("file")));
        assertEquals(FileSystem.Kind.NOTHING, FileSystem.REAL.kind(folder.resolve("file/below/it")));
        Files.createSymbolicLink(folder.resolve("round"), folder.resolve("round"));
        assertEquals(FileSystem.Kind.LINK, FileSystem.REAL.kind(folder.resolve("round")));
        assertEquals(folder.resolve("round"), FileSystem.REAL.target(folder.resolve("round")));
        if (Files.exists(Path.of("/dev/null"))) {
            assertEquals(FileSystem.Kind.OTHER, FileSystem.REAL.kind(Path.of("/dev/null")));
        }
        assertEquals(List.of("file", "round"), FileSystem.REAL.names(folder));
        assertEquals(folder.toFile().getUsableSpace() > 0, FileSystem.REAL.room(folder) > 0);
    }

    @Test
    void eventsThatNobodyCouldReadBackAreRefusedBeforeAnythingIsWritten() throws IOException {
        try (Writer writer = Writer.take(drive, FOLDER)) {
            for (String text : List.of("not JSON", "{\"event\":\"slate\"}\n", "{\"event\":\"slate\"")) {
                Batch roll = new Batch(1, AT);
                roll.add(R1, new RollEvent.Unknown("slate", text));
                assertThrows(IllegalArgumentException.class, () -> writer.append(roll), text);
                Batch onDay = new Batch(1, AT);
                onDay.add(new DayEvent.Unknown("slate", text));
                assertThrows(IllegalArgumentException.class, () -> writer.append(onDay), text);
            }
        }
        assertEquals(List.of(), new Archive(drive, FOLDER).openRolls());
        assertEquals(List.of(), new Archive(drive, FOLDER).days());
    }

    @Test
    void aFrameThatCameIntoTheLogInAWayThatIsNotKnownIsLeftOut() {
        RegattaDay day = RegattaDay.brief();
        RollRecord frame = (RollRecord) day.records(5).get("R0001").get(1);
        put(
                JournalLines.header(),
                JournalLines.of(1, 1, AT, RollEventJson.text(frame.event()).replace("\"logged\"", "\"guessed\"")),
                line(2));
        JournalRecords<RollRecord> opened = new Archive(drive, FOLDER).roll(R1);
        assertEquals(1, opened.records().size());
        assertEquals(
                List.of("R0001.journal:2: record 1 cannot be understood and is left out: how guessed is not known"),
                opened.problems());
    }

    /** One letter wrong in each place where a time has a mark of its own. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "2026-09-12T15:10:03+02:00:0x",
                "2026-09-12T15:10:03+02:00.00",
                "2026-09-12T15:10:03+02-00",
                "2026-09-12T15.10:03+02:00",
                "2026-09-12T15:10.03+02:00",
                "2026-09-12T15:10:03:5+02:00",
                "2026-09-12X15:10:03+02:00",
                "2026-09-12T15:10:0+02:00",
                "+2026-09-12T15:10Z",
                "2026-09-12T15:10+02:00:00:00",
                "2026-09-12T15:1:Z",
                "2026-09-12T15Z"
            })
    void aTimeWithAWrongMarkIsNone(String text) {
        assertEquals(Optional.empty(), FastIsoParser.time(text));
    }

    @Test
    void severalMovesToOneRollAreEachSeenAndAFrameOfNoKnownTimeIsLeftAlone() {
        RegattaDay day = RegattaDay.brief();
        List<RollRecord> from = new ArrayList<>();
        List<RollRecord> to = new ArrayList<>();
        day.records(17).get("R0001").forEach(it -> from.add((RollRecord) it));
        day.records(17).get("R0002").forEach(it -> to.add((RollRecord) it));
        var frames = Roll.of(from).orElseThrow().frames();
        for (int i = 0; i < 2; i++) {
            var frame = frames.get(2 * i);
            to.add(new RollRecord(
                    90 + i,
                    AT,
                    new RollEvent.Added(
                            new Frame(
                                    3 + i,
                                    OptionalInt.of(frame.loggedAs()),
                                    frame.kind(),
                                    frame.exposure(),
                                    frame.further(),
                                    frame.note()),
                            RollEvent.Origin.MOVED,
                            OptionalInt.empty())));
        }
        var unknown = Frame.of(9, Frame.Kind.UNLOGGED, Exposure.UNKNOWN, Optional.empty());
        from.add(new RollRecord(89, AT, new RollEvent.Added(unknown, RollEvent.Origin.LOGGED, OptionalInt.empty())));
        to.add(new RollRecord(92, AT, new RollEvent.Added(unknown, RollEvent.Origin.MOVED, OptionalInt.empty())));
        List<InterruptedMove> found = InterruptedMove.among(new TreeMap<>(Map.of(R1, from, new RollId("R", 2), to)));
        assertEquals(
                List.of("frame 1 of R0001 is on R0002 too", "frame 3 of R0001 is on R0002 too"),
                found.stream().map(InterruptedMove::words).toList());
        assertEquals(
                List.of(90L, 91L), found.stream().map(it -> it.rest().step()).toList());
    }

    @Test
    void theBytesOfAJournalAreKeptToTheLastOneWhenItIsWrittenAnew() throws IOException {
        put(JournalLines.header(), line(1), line(2));
        byte[] before = drive.read(JOURNAL);
        try (Writer writer = Writer.take(drive, FOLDER)) {
            note(writer, 3, "three");
            drive.delete(JOURNAL);
            note(writer, 4, "four");
        }
        byte[] after = drive.read(JOURNAL);
        assertArrayEquals(before, Arrays.copyOf(after, before.length));
        assertTrue(after.length > before.length);
    }
}
