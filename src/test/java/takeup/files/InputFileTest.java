package takeup.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Text that somebody else wrote: what is taken, and what is refused before it is read. */
class InputFileTest {
    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"", "bow seat", "caf\u00e9 at the boathouse\n"})
    void theMarkThatSomeEditorsPutInFrontIsNoPartOfTheText(String text) throws IOException {
        assertEquals(text, InputFile.text(file(text.getBytes(StandardCharsets.UTF_8)), 100));
        assertEquals(text, InputFile.text(file(("\ufeff" + text).getBytes(StandardCharsets.UTF_8)), 100));
    }

    @Test
    void theLastByteThatFitsIsRead() throws IOException {
        assertEquals(" ".repeat(100), InputFile.text(file(new byte[100]), 100).replace('\0', ' '));
        check(InputFile.Fault.TOO_LARGE, file(new byte[101]));
    }

    /** C0 AF is a slash in a form that is too long for it: a lenient reader of UTF-8 takes it for one. */
    @Test
    void whatIsNotUtf8IsRefused() throws IOException {
        check(InputFile.Fault.NOT_UTF8, file(new byte[] {(byte) 0xc0, (byte) 0xaf}));
        check(InputFile.Fault.NOT_UTF8, file("caf\u00e9".getBytes(StandardCharsets.ISO_8859_1)));
    }

    @Test
    void aFolderIsRefusedAndWhatIsNotThereToo() {
        check(InputFile.Fault.NOT_A_FILE, folder);
        check(InputFile.Fault.NOT_A_FILE, folder.resolve("gone.txt"));
    }

    private Path file(byte[] bytes) throws IOException {
        return Files.write(folder.resolve("plan.txt"), bytes);
    }

    private static void check(InputFile.Fault fault, Path path) {
        InputFile.Unusable refused = assertThrows(InputFile.Unusable.class, () -> InputFile.text(path, 100));
        assertEquals(fault, refused.fault());
        assertEquals(path.getFileName() + " " + fault.words(), refused.getMessage());
    }
}
