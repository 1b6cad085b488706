package takeup.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is being typed, kept beside the journals. */
class DraftFileTest {
    @TempDir
    Path folder;

    @Test
    void whatIsTypedIsKeptUntilTheLineIsEmpty() throws IOException {
        Archive archive = new Archive(folder);
        assertEquals(Optional.empty(), archive.draft());
        try (Writer writer = Writer.take(folder)) {
            writer.draft("4 125 ; \u0642\u0627\u0631\u0628\n8 60");
            assertEquals(Optional.of("4 125 ; \u0642\u0627\u0631\u0628\n8 60"), archive.draft());
            writer.draft("");
        }
        assertEquals(Optional.empty(), archive.draft());
        assertFalse(Files.exists(folder.resolve("draft")));
    }

    @Test
    void aDraftThatCannotBeReadIsNoReasonNotToStart() throws IOException {
        Files.write(folder.resolve("draft"), new byte[] {(byte) 0xc3, 0x28});
        assertEquals(Optional.empty(), new Archive(folder).draft());
        Files.delete(folder.resolve("draft"));
        Files.createDirectory(folder.resolve("draft"));
        assertEquals(Optional.empty(), new Archive(folder).draft());
    }
}
