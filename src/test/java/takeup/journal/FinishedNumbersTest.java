package takeup.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import takeup.disk.MemoryFileSystem;
import takeup.roll.NoteEvent;
import takeup.roll.RollId;

/** The names of finished rolls are read after the start, and nothing is lost by that. */
class FinishedNumbersTest {
    private static final RollId R1 = new RollId("R", 1);
    private static final RollId R2 = new RollId("R", 2);
    private static final RollId R3 = new RollId("R", 3);
    private static final Path FINISHED = RegattaDay.FOLDER.resolve("rolls/finished");

    private final MemoryFileSystem drive = new MemoryFileSystem();
    private final List<Path> listed = new ArrayList<>();

    @BeforeEach
    void oneRollIsFinished() throws IOException {
        try (Writer writer = take()) {
            note(writer, R1, 1);
            writer.settleFinished(R1);
        }
        drive.fault((call, path) -> {
            if (call.equals("names")) {
                listed.add(path);
            }
        });
    }

    private Writer take() throws IOException {
        return Writer.take(drive, RegattaDay.FOLDER);
    }

    private static void note(Writer writer, RollId roll, int number) throws IOException {
        Batch batch = new Batch(number, OffsetDateTime.parse("2026-09-12T15:10:03+02:00"));
        batch.add(roll, new NoteEvent.Noted("record " + number));
        writer.append(batch);
    }

    private void unreadable() {
        drive.fault((call, path) -> {
            if (call.equals("names") && path.equals(FINISHED)) {
                throw new FileSystemException(path.toString(), null, "Input/output error");
            }
        });
    }

    @Test
    void theStartDoesWithoutThemAndTheyAreReadOnce() throws IOException {
        try (Writer writer = take()) {
            assertFalse(listed.contains(FINISHED), listed::toString);
            writer.know();
            writer.know();
            assertTrue(writer.rolls().contains(R1));
            note(writer, R2, 2);
            assertEquals(1, listed.stream().filter(FINISHED::equals).count());
        }
    }

    @Test
    void whoAsksForOneBeforeWaitsForThem() throws IOException {
        try (Writer writer = take()) {
            assertEquals(1, writer.rolls().highest("R"));
            assertTrue(listed.contains(FINISHED));
        }
    }

    @Test
    void whileTheyCannotBeReadNoRollIsBegunButThoseInCamerasGoOn() throws IOException {
        try (Writer writer = take()) {
            note(writer, R2, 2);
        }
        try (Writer writer = take()) {
            unreadable();
            assertThrows(IOException.class, writer::know);
            note(writer, R2, 3);
            assertThrows(IOException.class, () -> note(writer, R3, 4));
            assertEquals(List.of(R2), new Archive(drive, RegattaDay.FOLDER).openRolls());
            drive.fault((call, path) -> {});
            note(writer, R3, 4);
            assertEquals(List.of(R2, R3), new Archive(drive, RegattaDay.FOLDER).openRolls());
        }
    }

    /** It may have given a roll the number of a finished one. */
    @Test
    void whoWentOnWithoutThemBeginsNoRollAnyMore() throws IOException {
        try (Writer writer = take()) {
            unreadable();
            assertEquals(0, writer.rolls().highest("R"));
            drive.fault((call, path) -> {});
            assertEquals(0, writer.rolls().highest("R"));
            IOException refused = assertThrows(IOException.class, () -> note(writer, R1, 2));
            assertEquals(
                    "rolls/finished could not be read at the start: leave, and start takeup again",
                    refused.getMessage());
        }
        try (Writer writer = take()) {
            note(writer, R2, 2);
        }
    }
}
