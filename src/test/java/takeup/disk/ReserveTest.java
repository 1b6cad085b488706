package takeup.disk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import takeup.journal.Writer;

/** The room that is kept for the last frames on a full disk. */
class ReserveTest {
    @TempDir
    Path folder;

    @Test
    void theReserveIsAFileOf256KibibytesAndIsGivenUpOnce() throws IOException {
        Reserve reserve = Reserve.of(FileSystem.REAL, folder);
        assertEquals(262_144, Files.size(folder.resolve("reserve")));
        assertTrue(reserve.release());
        assertFalse(Files.exists(folder.resolve("reserve")));
        assertFalse(reserve.release());
    }

    @Test
    void theNextStartPutsItBack() throws IOException {
        Reserve.of(FileSystem.REAL, folder).release();
        Writer.take(folder).close();
        assertTrue(Files.exists(folder.resolve("reserve")));
    }

    @Test
    void aFullDiskIsToldFromOtherTrouble() {
        assertTrue(IoErrorText.isFull(new IOException("No space left on device")));
        assertFalse(IoErrorText.isFull(new IOException("Input/output error")));
    }
}
