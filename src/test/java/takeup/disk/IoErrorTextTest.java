package takeup.disk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.io.IOException;
import java.nio.channels.ClosedChannelException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The disk's complaints in plain words, each with what to do where something can be done. */
class IoErrorTextTest {
    static Stream<Arguments> complaints() {
        return Stream.of(
                Arguments.of(new IOException("No space left on device"), "the disk is full; free some space"),
                Arguments.of(
                        new FileSystemException("/d/a", null, "No space left on device"),
                        "the disk is full; free some space"),
                Arguments.of(new IOException("Disk quota exceeded"), "the disk is full; free some space"),
                Arguments.of(
                        new FileSystemException("/d/a", null, "Read-only file system"),
                        "the disk can only be read; choose another data folder (--data DIR) or make it writable"),
                Arguments.of(
                        new IOException("Input/output error"),
                        "the disk reports an error (Input/output error); copy the data folder to another disk"),
                Arguments.of(
                        new IOException("No locks available"),
                        "this folder's disk cannot lock files, as some network folders; choose a folder on this "
                                + "machine (--data DIR)"),
                Arguments.of(
                        new AccessDeniedException("/d/a"),
                        "no permission for /d/a; make it yours, or choose another data folder (--data DIR)"),
                Arguments.of(new NoSuchFileException("/d/a"), "/d/a is not there"),
                Arguments.of(new NotDirectoryException("/d/a"), "/d/a cannot be used (NotDirectoryException)"),
                Arguments.of(new IOException("R0001.journal is no plain file"), "R0001.journal is no plain file"),
                Arguments.of(new FileSystemException(null), "the file was closed (FileSystemException)"),
                Arguments.of(new ClosedChannelException(), "the file was closed (ClosedChannelException)"));
    }

    @ParameterizedTest(name = "{1}")
    @MethodSource("complaints")
    void isSaidInWords(IOException complaint, String words) {
        assertEquals(words, IoErrorText.words(complaint));
    }

    /** Where there is no room for what to do, the name of a file is still whole. */
    @Test
    void theReasonAloneLeavesOutWhatToDo() {
        assertEquals("the disk is full", IoErrorText.reason(new IOException("Disk quota exceeded")));
        assertEquals("no permission for /d/R1.journal", IoErrorText.reason(new AccessDeniedException("/d/R1.journal")));
        assertEquals("the file was closed", IoErrorText.reason(new ClosedChannelException()));
    }

    /**
     * A system that speaks another language is believed by the room that is left: below 64 KiB what gives no other
     * reason is a full disk.
     */
    static Stream<Arguments> reasons() {
        return Stream.of(
                Arguments.of(new IOException("Auf dem Gerät ist kein Speicherplatz mehr verfügbar"), true),
                Arguments.of(new FileSystemException("/d/a", null, "Plus de place"), true),
                Arguments.of(new FileSystemException("/d/a"), false),
                Arguments.of(new AccessDeniedException("/d/a"), false),
                Arguments.of(new ClosedChannelException(), false),
                Arguments.of(new IOException("Read-only file system"), false),
                Arguments.of(new IOException("Input/output error"), false));
    }

    @ParameterizedTest(name = "{0}: {1}")
    @MethodSource("reasons")
    void whatIsSaidInAnotherLanguageIsAFullDiskWhereThereIsNoRoom(IOException complaint, boolean full) {
        assertEquals(full, IoErrorText.isFull(IoErrorText.named(complaint, 65_535)));
        assertSame(complaint, IoErrorText.named(complaint, 65_536));
        IOException known = new IOException("No space left on device");
        assertSame(known, IoErrorText.named(known, 0));
    }
}
