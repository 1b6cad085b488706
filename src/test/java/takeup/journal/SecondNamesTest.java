package takeup.journal;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.OffsetDateTime;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import takeup.roll.NoteEvent;
import takeup.roll.RollId;

/** A journal that bears a second name, as in a backup that was made of links: what lies there is not written to. */
class SecondNamesTest {
    private static final OffsetDateTime AT = OffsetDateTime.parse("2026-09-12T15:10:03+02:00");
    private static final RollId R1 = new RollId("R", 1);
    private static final RollId R2 = new RollId("R", 2);
    private static final String TOLD =
            "R0001.journal had a second name elsewhere, as in a backup made of links; it is a file of its own now, "
                    + "and the other stays as it was";

    @TempDir
    Path folder;

    private Path journal;
    private Path backup;

    @BeforeEach
    void aRollWithOneNote() throws IOException {
        journal = folder.resolve("day/rolls/open/R0001.journal");
        backup = folder.resolve("backup");
        try (Writer writer = writer()) {
            note(writer, 1, R1);
        }
    }

    private Writer writer() throws IOException {
        return Writer.take(folder.resolve("day"));
    }

    private static void note(Writer writer, int number, RollId... rolls) throws IOException {
        Batch batch = new Batch(number, AT);
        for (RollId roll : rolls) {
            batch.add(roll, new NoteEvent.Noted("record " + number));
        }
        writer.append(batch);
    }

    private int records(RollId roll) {
        JournalRecords<?> found = new Archive(folder.resolve("day")).roll(roll);
        assertEquals(List.of(), found.problems());
        return found.records().size();
    }

    @Test
    void theBackupOfBeforeTheStartStaysAsItWasAndThatIsToldOnce() throws IOException {
        Files.createLink(backup, journal);
        byte[] before = Files.readAllBytes(backup);
        try (Writer writer = writer()) {
            note(writer, 2, R1);
            assertEquals(List.of(TOLD), writer.remarks());
            note(writer, 3, R1);
            assertEquals(List.of(), writer.remarks());
        }
        assertArrayEquals(before, Files.readAllBytes(backup));
        assertEquals(3, records(R1));
    }

    @Test
    void soDoesTheBackupThatIsMadeWhileTheProgramRuns() throws IOException {
        try (Writer writer = writer()) {
            note(writer, 2, R1);
            Files.createLink(backup, journal);
            byte[] before = Files.readAllBytes(backup);
            note(writer, 3, R1);
            assertEquals(List.of(TOLD), writer.remarks());
            assertArrayEquals(before, Files.readAllBytes(backup));
        }
        assertEquals(3, records(R1));
    }

    @Test
    void anEndThatIsCutOffStaysInTheBackup() throws IOException {
        Files.writeString(journal, "{\"n\":2,\"st", StandardCharsets.US_ASCII, StandardOpenOption.APPEND);
        Files.createLink(backup, journal);
        byte[] before = Files.readAllBytes(backup);
        try (Writer writer = writer()) {
            note(writer, 2, R1);
        }
        assertArrayEquals(before, Files.readAllBytes(backup));
        assertEquals(2, records(R1));
    }

    /** The half of a line that goes to two journals is taken back by the next start. */
    @Test
    void halfALineIsTakenOutOfTheJournalAndStaysInTheBackup() throws IOException {
        try (Writer writer = writer()) {
            note(writer, 2, R2);
        }
        byte[] own = JournalLines.of(2, 3, AT, "{\"event\":\"note\",\"words\":\"half\"}");
        Files.writeString(
                folder.resolve("day/unfinished"),
                "takeup-unfinished 1\nrolls/open/R0001.journal " + Files.size(journal) + "\n"
                        + new String(own, StandardCharsets.UTF_8)
                        + "rolls/open/R0002.journal 0\n");
        Files.write(journal, own, StandardOpenOption.APPEND);
        Files.createLink(backup, journal);
        byte[] before = Files.readAllBytes(backup);
        writer().close();
        assertArrayEquals(before, Files.readAllBytes(backup));
        assertEquals(1, records(R1));
    }
}
