package takeup.journal;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import takeup.disk.FolderInUse;
import takeup.disk.IoErrorText;
import takeup.disk.MemoryFileSystem;
import takeup.roll.NoteEvent;
import takeup.roll.RollId;

/**
 * What happens around a writer while it works: its lock and its folders go away, lines rot, the clock runs wild, the
 * disk speaks German.
 */
class OthersHandsTest {
    private static final OffsetDateTime AT = OffsetDateTime.parse("2026-09-12T15:10:03+02:00");
    private static final RollId R1 = new RollId("R", 1);
    private static final RollId R2 = new RollId("R", 2);
    private static final RollId R3 = new RollId("R", 3);

    @TempDir
    Path folder;

    private static void note(Writer writer, RollId roll, int number) throws IOException {
        Batch batch = new Batch(number, AT);
        batch.add(roll, new NoteEvent.Noted("record " + number));
        writer.append(batch);
    }

    private int records(RollId roll) {
        JournalRecords<?> opened = new Archive(folder).roll(roll);
        return opened.problems().isEmpty() ? opened.records().size() : -1;
    }

    @Test
    void aLockFileThatWasDeletedIsBackWithTheNextRecord() throws Exception {
        try (Writer writer = Writer.take(folder)) {
            note(writer, R1, 1);
            Files.delete(folder.resolve("lock"));
            note(writer, R1, 2);
            assertEquals(
                    List.of("the lock file was deleted or replaced by another program; it is back"), writer.remarks());
            assertThrows(FolderInUse.class, () -> Writer.take(folder));
            try (OtherProgram other = OtherProgram.start(folder, 0)) {
                assertEquals(List.of(), other.lines(), "another program got the folder");
            }
            note(writer, R1, 3);
            assertEquals(List.of(), writer.remarks());
        }
        Writer.take(folder).close();
        assertEquals(3, records(R1));
    }

    @Test
    void whileAnotherProgramHasTheFolderNothingIsWrittenBetweenItsLines() throws Exception {
        try (Writer writer = Writer.take(folder)) {
            note(writer, R2, 1);
            Files.delete(folder.resolve("lock"));
            try (OtherProgram other = OtherProgram.start(folder, 2)) {
                assertEquals("taken", other.line());
                assertEquals(
                        "another takeup (process " + other.pid() + ") is writing in this folder",
                        assertThrows(FolderInUse.class, () -> note(writer, R2, 2))
                                .getMessage());
                assertEquals(1, records(R2));
                other.kill();
            }
            note(writer, R2, 2);
            assertEquals(2, records(R2));
        }
    }

    @Test
    void aLockFileThatCannotBeMadeAgainKeepsNoFrameFromTheDisk() throws IOException {
        MemoryFileSystem drive = new MemoryFileSystem();
        try (Writer writer = Writer.take(drive, folder)) {
            drive.forgetHolds();
            drive.fault((call, path) -> {
                if (call.equals("hold")) {
                    throw new FileSystemException(path.toString(), null, "Read-only file system");
                }
            });
            note(writer, R1, 1);
            note(writer, R1, 2);
            assertEquals(
                    List.of(
                            "the lock file was deleted and cannot be made again: start no second takeup in this folder"),
                    writer.remarks());
            drive.fault((call, path) -> {});
            note(writer, R1, 3);
            assertEquals(
                    List.of("the lock file was deleted or replaced by another program; it is back"), writer.remarks());
        }
        assertEquals(3, new Archive(drive, folder).roll(R1).records().size());
    }

    @Test
    void aFolderThatHeldNoJournalGoesAwayWithoutAWord() throws IOException {
        try (Writer writer = Writer.take(folder)) {
            note(writer, R1, 1);
            note(writer, R2, 2);
            writer.settleFinished(R2);
        }
        try (Writer writer = Writer.take(folder)) {
            Files.move(folder.resolve("exports"), folder.resolve("elsewhere"));
            note(writer, R1, 3);
            assertEquals(List.of(), writer.remarks());
        }
        assertEquals(2, records(R1));
        assertEquals(1, records(R2));
    }

    @ParameterizedTest
    @ValueSource(strings = {"rolls/open", "rolls"})
    void afterTheFolderOfTheJournalsWasMovedAllThatWereWrittenToAreBackAndTheOthersAreNamed(String moved)
            throws IOException {
        try (Writer writer = Writer.take(folder)) {
            note(writer, R1, 1);
            note(writer, R2, 2);
            note(writer, R3, 3);
        }
        try (Writer writer = Writer.take(folder)) {
            note(writer, R1, 4);
            note(writer, R2, 5);
            Files.move(folder.resolve(moved), folder.resolve("elsewhere"));
            note(writer, R1, 6);
            assertEquals(
                    List.of(
                            "R0001.journal was moved, deleted or changed by another program; all of it was "
                                    + "written anew",
                            "R0002.journal was moved, deleted or changed by another program; all of it was "
                                    + "written anew",
                            "a folder of the journals was moved or deleted by another program, and with it "
                                    + "R0003: leave, and put that folder's files back where they were"),
                    writer.remarks());
            note(writer, R1, 7);
            assertEquals(List.of(), writer.remarks());
        }
        assertEquals(4, records(R1));
        assertEquals(2, records(R2));
        assertEquals(List.of(R1, R2), new Archive(folder).openRolls());
    }

    @Test
    void aFolderOfFinishedRollsThatIsMovedIsNoticedTooThoughNothingIsWrittenThere() throws IOException {
        try (Writer writer = Writer.take(folder)) {
            note(writer, R1, 1);
            writer.settleFinished(R1);
        }
        try (Writer writer = Writer.take(folder)) {
            Files.move(folder.resolve("rolls/finished"), folder.resolve("elsewhere"));
            note(writer, R2, 2);
            assertEquals(1, writer.remarks().size());
        }
    }

    @Test
    void damagedLinesAreKeptAsideOnceBeforeTheJournalIsGoneOnWith() throws IOException {
        try (Writer writer = Writer.take(folder)) {
            for (int number = 1; number <= 3; number++) {
                note(writer, R1, number);
            }
        }
        Path path = folder.resolve("rolls/open/R0001.journal");
        byte[] bytes = Files.readAllBytes(path);
        int at = new String(bytes, StandardCharsets.US_ASCII).indexOf("record 2");
        bytes[at] = 'R';
        Files.write(path, bytes);
        for (int number = 4; number <= 6; number++) {
            try (Writer writer = Writer.take(folder)) {
                note(writer, R1, number);
            }
        }
        String line =
                new String(bytes, StandardCharsets.US_ASCII).lines().toList().get(2) + "\n";
        assertEquals(line, Files.readString(path.resolveSibling("R0001.journal.damaged-1")));
        assertFalse(Files.exists(path.resolveSibling("R0001.journal.damaged-2")));
        bytes = Files.readAllBytes(path);
        bytes[bytes.length - 20] ^= 1;
        Files.write(path, bytes);
        try (Writer writer = Writer.take(folder)) {
            note(writer, R1, 7);
        }
        String last =
                new String(bytes, StandardCharsets.US_ASCII).lines().toList().get(6) + "\n";
        assertEquals(line + last, Files.readString(path.resolveSibling("R0001.journal.damaged-2")));
    }

    @ParameterizedTest(name = "a year {0}")
    @CsvSource({"10000", "999999999", "-1"})
    void beyondFourDigitsIsTheClocksMistakeAndIsSaid(int year) throws IOException {
        try (Writer writer = Writer.take(folder)) {
            Batch batch = new Batch(1, AT.withYear(year));
            batch.add(R1, new NoteEvent.Noted("record 1"));
            assertEquals(
                    "the clock says the year " + year + "; set it right",
                    assertThrows(IOException.class, () -> writer.append(batch)).getMessage());
        }
        assertEquals(List.of(), new Archive(folder).openRolls());
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 999, 9999})
    void theFirstAndTheLastYearsOfFourDigitsAreWrittenAndRead(int year) throws IOException {
        try (Writer writer = Writer.take(folder)) {
            Batch batch = new Batch(1, AT.withYear(year));
            batch.add(R1, new NoteEvent.Noted("record 1"));
            writer.append(batch);
        }
        assertEquals(
                AT.withYear(year), new Archive(folder).roll(R1).records().get(0).at());
    }

    /**
     * German: the words of the C library for ENOSPC, EIO and EROFS. With no room left the first is recognised; the
     * others are no matter of room.
     */
    @ParameterizedTest(name = "{0}, {1} bytes free")
    @CsvSource(delimiter = '|', textBlock = """
            Auf dem Ger\u00e4t ist kein Speicherplatz mehr verf\u00fcgbar | 0       | the disk is full; free some space
            Auf dem Ger\u00e4t ist kein Speicherplatz mehr verf\u00fcgbar | 65535   | the disk is full; free some space
            Auf dem Ger\u00e4t ist kein Speicherplatz mehr verf\u00fcgbar | 65536   | Auf dem Ger\u00e4t ist kein Speicherplatz mehr verf\u00fcgbar
            Input/output error                                            | 0       | the disk reports an error (Input/output error); copy the data folder to another disk
            Read-only file system                                         | 0       | the disk can only be read; choose another data folder (--data DIR) or make it writable
            """)
    void aFullDiskIsKnownInAnyLanguageByTheRoomThatIsLeft(String says, long room, String words) {
        assertEquals(words, IoErrorText.words(IoErrorText.named(new IOException(says), room)));
        assertEquals(
                words.startsWith("Auf") ? "/d/a: " + words : words,
                IoErrorText.words(IoErrorText.named(new FileSystemException("/d/a", null, says), room)));
        NoSuchFileException gone = new NoSuchFileException("/d/a");
        assertEquals(gone, IoErrorText.named(gone, 0));
        FileSystemException silent = new FileSystemException("/d/a");
        assertEquals(silent, IoErrorText.named(silent, 0));
    }

    @Test
    void theReserveIsGivenUpForADiskThatSaysInGermanThatItIsFull() throws IOException {
        MemoryFileSystem drive = new MemoryFileSystem();
        try (Writer writer = Writer.take(drive, folder)) {
            drive.room(0);
            int[] refusals = {1};
            drive.fault((call, path) -> {
                if (call.equals("write") && refusals[0]-- > 0) {
                    throw new IOException("Auf dem Ger\u00e4t ist kein Speicherplatz mehr verf\u00fcgbar");
                }
            });
            note(writer, R1, 1);
            assertEquals(
                    List.of("the disk is full: what was kept in reserve takes the next frames; free some space now"),
                    writer.remarks());
            assertFalse(drive.names(folder).contains("reserve"));
            refusals[0] = 1;
            assertEquals(
                    "the disk is full; free some space",
                    IoErrorText.words(assertThrows(IOException.class, () -> note(writer, R1, 2))));
            refusals[0] = 1;
            assertEquals(
                    "the disk is full; free some space",
                    IoErrorText.words(assertThrows(IOException.class, () -> writer.export(R1, "{}"))));
        }
    }

    @Test
    void theJournalOfALaterVersionIsNeitherSettledNorExported() throws IOException {
        Path path = folder.resolve("rolls/open/R0001.journal");
        byte[] later = EventsGoRoundTest.concat(
                JournalLines.sealed("{\"n\":0,\"format\":\"takeup-journal\",\"version\":2}"),
                JournalLines.of(1, 1, AT, "{\"event\":\"unloaded\"}"));
        try (Writer writer = Writer.take(folder)) {
            Files.write(path, later);
            assertThrows(LaterVersion.class, () -> writer.settleFinished(R1));
            assertThrows(LaterVersion.class, () -> writer.export(R1, "{}"));
            assertEquals(
                    "R0001.journal was written by a later version of takeup; it is not touched",
                    assertThrows(LaterVersion.class, () -> note(writer, R1, 2)).getMessage());
        }
        assertArrayEquals(later, Files.readAllBytes(path));
        assertTrue(new Archive(folder).finishedRolls().isEmpty());
    }
}
