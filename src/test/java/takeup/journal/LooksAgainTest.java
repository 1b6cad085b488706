package takeup.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import takeup.disk.MemoryFileSystem;
import takeup.roll.NoteEvent;
import takeup.roll.RollId;

/** What was written anew is looked at once more before it is called safe: its length, and whose file it is. */
class LooksAgainTest {
    private static final RollId R1 = new RollId("R", 1);
    private static final Path JOURNAL = RegattaDay.FOLDER.resolve("rolls/open/R0001.journal");

    private final MemoryFileSystem drive = new MemoryFileSystem();

    private static void note(Writer writer, int number) throws IOException {
        Batch batch = new Batch(number, OffsetDateTime.parse("2026-09-12T15:10:03+02:00"));
        batch.add(R1, new NoteEvent.Noted("record " + number));
        writer.append(batch);
    }

    private int records() {
        return new Archive(drive, RegattaDay.FOLDER).roll(R1).records().size();
    }

    /** The file is put there in the middle of the call that opens the new journal, as a syncing tool would. */
    @Test
    void aJournalThatIsChangedAgainAtOnceIsNotCalledSafe() throws IOException {
        try (Writer writer = Writer.take(drive, RegattaDay.FOLDER)) {
            note(writer, 1);
            drive.put(JOURNAL, "another program's\n".getBytes());
            drive.fault((call, path) -> {
                if (call.equals("open") && path.equals(JOURNAL)) {
                    drive.put(JOURNAL, "and once more\n".getBytes());
                }
            });
            IOException refused = assertThrows(IOException.class, () -> note(writer, 2));
            assertTrue(refused.getMessage().contains("changed by another program"), refused.getMessage());
            drive.fault((call, path) -> {});
            note(writer, 3);
        }
        assertEquals(2, records());
    }

    @Test
    void aJournalThatWasChangedOnceIsWrittenAnewAndThatIsSaid() throws IOException {
        try (Writer writer = Writer.take(drive, RegattaDay.FOLDER)) {
            note(writer, 1);
            drive.put(JOURNAL, "another program's\n".getBytes());
            note(writer, 2);
            assertEquals(
                    List.of("R0001.journal was moved, deleted or changed by another program; all of it was written "
                            + "anew"),
                    writer.remarks());
        }
        assertEquals(2, records());
    }

    /** A disk that says yes to bytes which it does not keep: the shorter file never takes the journal's place. */
    @Test
    void aFileThatIsShorterThanWhatWasWrittenToItIsNotPutInPlace() throws IOException {
        try (Writer writer = Writer.take(drive, RegattaDay.FOLDER)) {
            note(writer, 1);
            writer.export(R1, "{\"revision\": 1}\n");
            Path part = RegattaDay.FOLDER.resolve("exports/.R0001.json.part");
            drive.fault((call, path) -> {
                if (call.equals("force") && path.equals(part)) {
                    drive.cut(part, 4);
                }
            });
            IOException refused = assertThrows(IOException.class, () -> writer.export(R1, "{\"revision\": 2}\n"));
            assertTrue(refused.getMessage().startsWith("of the 16 bytes of .R0001.json.part the disk holds 4"));
            drive.fault((call, path) -> {});
            assertEquals(
                    "{\"revision\": 1}\n", new String(drive.read(RegattaDay.FOLDER.resolve("exports/R0001.json"))));
        }
    }
}
