package takeup.disk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The names in a folder on a real disk. */
class FolderNamesTest {
    @TempDir
    Path scratch;

    @Test
    void allNamesAreThereHoweverMany() throws IOException {
        TreeSet<String> made = new TreeSet<>();
        for (int number = 1; number <= 300; number++) {
            String name = "R0" + number + ".journal";
            Files.createFile(scratch.resolve(name));
            made.add(name);
        }
        Files.createDirectory(scratch.resolve(".hidden"));
        made.add(".hidden");
        assertEquals(made, new TreeSet<>(FileSystem.REAL.names(scratch)));
        assertEquals(List.of(), FileSystem.REAL.names(scratch.resolve(".hidden")));
    }

    @Test
    void aFolderThatIsNotThereHoldsNoNames() throws IOException {
        assertEquals(List.of(), FileSystem.REAL.names(scratch.resolve("none")));
    }

    /** An archive that cannot be listed is not an empty one. */
    @Test
    void whatIsNoFolderSaysSo() throws IOException {
        Path file = Files.createFile(scratch.resolve("file"));
        assertThrows(NotDirectoryException.class, () -> FileSystem.REAL.names(file));
    }
}
