package takeup.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import takeup.disk.Folders;
import takeup.roll.RollId;

/** Reading the data folder: what is a journal, what is not, and that nothing is changed by it. */
class ArchiveTest {
    private static final RollId R1 = new RollId("R", 1);

    @TempDir
    Path folder;

    private void file(String name, byte[] bytes) throws IOException {
        Folders.make(folder.resolve(name).getParent());
        Files.write(folder.resolve(name), bytes);
    }

    @Test
    void aFolderThatIsNotThereHoldsNothing() throws IOException {
        Archive archive = new Archive(folder.resolve("none"));
        assertEquals(List.of(), archive.openRolls());
        assertEquals(List.of(), archive.finishedRolls());
        assertEquals(List.of(), archive.days());
        assertTrue(Files.notExists(folder.resolve("none")));
    }

    @Test
    void onlyTheNamesThatTheWriterGivesAreJournals() throws IOException {
        for (String name : List.of(
                "R0001.journal",
                "AB0012.journal",
                "R12345.journal",
                "r0002.journal",
                "R3.journal",
                "R0004.journal.torn-1",
                ".R0005.journal.part",
                ".R0006.journal",
                "R0007 (copy).journal",
                "R0008.json",
                "R00009.journal",
                "ABCD0001.journal",
                "R0000.journal",
                "notes.txt")) {
            file("rolls/open/" + name, JournalLines.header());
            file("rolls/finished/" + name, JournalLines.header());
        }
        for (String name : List.of(
                "2026-09-13.journal",
                "2026-09-12.journal",
                "2026-02-30.journal",
                "2026-9-12.journal",
                "today.journal",
                "2026-09-14.journal.other-1",
                "+2026-09-15.journal",
                "2026-09-16T10.journal")) {
            file("days/" + name, JournalLines.header());
        }
        Archive archive = new Archive(folder);
        List<RollId> rolls = List.of(new RollId("AB", 12), R1, new RollId("R", 12345));
        assertEquals(rolls, archive.openRolls());
        assertEquals(rolls, archive.finishedRolls());
        assertEquals(rolls, List.copyOf(archive.rolls()));
        try (Writer writer = Writer.take(folder)) {
            assertEquals(rolls, List.copyOf(writer.rolls()));
        }
        assertEquals(List.of(LocalDate.of(2026, 9, 12), LocalDate.of(2026, 9, 13)), archive.days());
    }

    @Test
    void aFileInPlaceOfAFolderIsSaidAndNotSkipped() throws IOException {
        file("rolls/open", new byte[0]);
        assertThrows(IOException.class, () -> new Archive(folder).openRolls());
        assertThrows(IOException.class, () -> Writer.take(folder));
    }

    @Test
    void aRollThatIsNotThereIsAProblemWithItsPlace() {
        check(R1, "R0001.journal:1: cannot be read: " + folder.resolve("rolls/open/R0001.journal") + " is not there");
    }

    @Test
    void aFolderOrAnEndlessFileInPlaceOfAJournalIsAProblemWithoutBeingRead() throws IOException {
        Folders.make(folder.resolve("rolls/open/R0001.journal"));
        check(R1, "R0001.journal:1: cannot be read: R0001.journal is no plain file");
        Path large = folder.resolve("rolls/open/R0002.journal");
        try (FileChannel sparse = FileChannel.open(large, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            sparse.write(ByteBuffer.wrap(new byte[1]), 1L << 30);
        }
        check(new RollId("R", 2), "R0002.journal:1: cannot be read: R0002.journal is larger than any journal can be");
    }

    @Test
    void missingRecordsAreNamedByTheirNumbers() throws IOException {
        OffsetDateTime at = OffsetDateTime.parse("2026-09-12T15:10+02:00");
        byte[][] lines = new byte[9][];
        for (int n = 1; n <= 9; n++) {
            lines[n - 1] = JournalLines.of(n, n, at, "{\"event\":\"unloaded\"}");
        }
        file("rolls/open/R0001.journal", EventsGoRoundTest.concat(JournalLines.header(), lines[1], lines[2], lines[8]));
        check(
                R1,
                "R0001.journal:2: in front of this line record 1 is missing; the others are whole",
                "R0001.journal:4: in front of this line records 4 to 8 are missing; the others are whole");
    }

    @Test
    void aRecordThatCannotBeUnderstoodIsLeftOutAndTheOthersAreKept() throws IOException {
        OffsetDateTime at = OffsetDateTime.parse("2026-09-12T15:10+02:00");
        file(
                "rolls/open/R0001.journal",
                EventsGoRoundTest.concat(
                        JournalLines.header(),
                        JournalLines.of(1, 1, at, "{\"event\":\"counter\",\"shown\":\"nine\"}"),
                        JournalLines.of(2, 2, at, "{\"event\":\"frame\",\"how\":\"guessed\",\"frame\":{}}"),
                        JournalLines.of(3, 3, at, "{\"event\":\"unloaded\"}")));
        check(
                R1,
                "R0001.journal:2: record 1 cannot be understood and is left out: a number is expected",
                "R0001.journal:3: record 2 cannot be understood and is left out: number is missing");
        assertEquals(1, new Archive(folder).roll(R1).records().size());
    }

    @Test
    void readingADamagedFolderChangesNothingInIt() throws IOException {
        byte[] torn = Arrays.copyOf(JournalLines.header(), 50);
        file("rolls/open/R0001.journal", torn);
        file("rolls/open/.R0002.journal.part", torn);
        Archive archive = new Archive(folder);
        archive.roll(R1);
        archive.openRolls();
        archive.dayOf(LocalDate.of(2026, 9, 12));
        try (Stream<Path> all = Files.walk(folder)) {
            assertEquals(
                    List.of("R0001.journal", ".R0002.journal.part"),
                    all.filter(Files::isRegularFile)
                            .map(it -> it.getFileName().toString())
                            .sorted(Comparator.reverseOrder())
                            .toList());
        }
        org.junit.jupiter.api.Assertions.assertArrayEquals(
                torn, Files.readAllBytes(folder.resolve("rolls/open/R0001.journal")));
    }

    private void check(RollId roll, String... problems) {
        assertEquals(List.of(problems), new Archive(folder).roll(roll).problems());
    }
}
