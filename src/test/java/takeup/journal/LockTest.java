package takeup.journal;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import takeup.disk.FolderInUse;
import takeup.disk.Folders;
import takeup.roll.NoteEvent;
import takeup.roll.RollEvent;
import takeup.roll.RollRecord;

/** One writer for a folder: in this program, in others, and none left over from the dead. */
@Tag("slow")
class LockTest {
    @TempDir
    Path folder;

    @Test
    void aSecondWriterInTheSameProgramIsRefusedWithItsNumber() throws IOException {
        try (Writer writer = Writer.take(folder)) {
            check(folder, ProcessHandle.current().pid());
            check(folder.resolve("rolls/.."), ProcessHandle.current().pid());
            assertEquals(List.of(), writer.remarks());
        }
        Writer.take(folder).close();
    }

    /**
     * Closing a second channel on the lock file would free the lock for other programs, and nobody would hear of it.
     */
    @Test
    void aRefusedSecondWriterDoesNotFreeTheLockOfTheFirst() throws Exception {
        try (Writer writer = Writer.take(folder)) {
            check(folder, ProcessHandle.current().pid());
            try (OtherProgram other = OtherProgram.start(folder, 0)) {
                assertEquals(List.of(), other.lines(), "another program got the folder");
            }
            assertEquals(List.of(), writer.remarks());
        }
    }

    @Test
    void theFolderOfAnotherProgramIsRefusedUntilThatOneIsKilled() throws Exception {
        try (OtherProgram other = OtherProgram.start(folder, 3)) {
            assertEquals("taken", other.line());
            check(folder, other.pid());
            check(folder, other.pid());
            other.kill();
            Writer.take(folder).close();
        }
    }

    @Test
    void whatWasAcknowledgedBeforeAKillIsAllThereAndCanBeGoneOnWith() throws Exception {
        List<String> said = new ArrayList<>();
        try (OtherProgram other = OtherProgram.start(folder, 100_000)) {
            while (said.size() < 200) {
                said.add(other.line());
            }
            other.kill();
            said.addAll(other.lines());
        }
        JournalRecords<RollRecord> read = new Archive(folder).roll(OtherProgram.ROLL);
        int acknowledged = said.size() - 1;
        assertTrue(
                read.records().size() == acknowledged || read.records().size() == acknowledged + 1,
                read.records().size() + " of " + acknowledged);
        for (int i = 0; i < read.records().size(); i++) {
            assertEquals(
                    new NoteEvent.Noted("record " + (i + 1)),
                    read.records().get(i).event());
        }
        try (Writer writer = Writer.take(folder)) {
            Batch batch = new Batch(1_000_000, read.records().get(0).at());
            batch.add(OtherProgram.ROLL, new RollEvent.Unloaded());
            writer.append(batch);
        }
        JournalRecords<RollRecord> after = new Archive(folder).roll(OtherProgram.ROLL);
        assertEquals(List.of(), after.problems());
        assertEquals(read.records().size() + 1, after.records().size());
    }

    /** The lock of a folder that holds no journals, such as that of the orders. */
    @Test
    void aFolderOfAnotherKindIsLockedTooAndFreeAgainOnceItIsClosed() throws IOException {
        Path lock = folder.resolve("orders/lock");
        try (Closeable held = Folders.lock(lock)) {
            assertEquals(
                    "another takeup (process " + ProcessHandle.current().pid() + ") is writing in this folder",
                    assertThrows(FolderInUse.class, () -> Folders.lock(lock)).getMessage());
            assertTrue(Files.exists(lock), held.toString());
        }
        Folders.lock(lock).close();
    }

    @Test
    void aLockFileOfRubbishKeepsNobodyOutAndIsNotWrittenOver() throws IOException {
        byte[] rubbish = new byte[100_000];
        Files.write(folder.resolve("lock"), rubbish);
        Writer.take(folder).close();
        assertArrayEquals(rubbish, Files.readAllBytes(folder.resolve("lock")), "it could be somebody's own file");
    }

    private static void check(Path folder, long holder) {
        assertEquals(
                "another takeup (process " + holder + ") is writing in this folder",
                assertThrows(FolderInUse.class, () -> Writer.take(folder)).getMessage());
    }
}
