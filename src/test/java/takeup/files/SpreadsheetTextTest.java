package takeup.files;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A table is read in the encodings that spreadsheets save in. */
class SpreadsheetTextTest {
    private static final String TABLE = "time;moment\r\n16:30;Sch\u00f6ne Siegerehrung\r\n";

    @TempDir
    Path scratch;

    @ParameterizedTest
    @ValueSource(strings = {"UTF-8", "UTF-16LE", "UTF-16BE", "ISO-8859-1", "windows-1252"})
    void theWordsAreTheSameInEachEncoding(String encoding) throws IOException {
        Charset charset = Charset.forName(encoding);
        assertEquals(TABLE, read(TABLE.getBytes(charset)));
        if (encoding.startsWith("UTF")) {
            assertEquals(TABLE, read(("\ufeff" + TABLE).getBytes(charset)));
        }
    }

    private String read(byte[] bytes) throws IOException {
        Path file = Files.write(scratch.resolve("day.csv"), bytes);
        return InputFile.textOfSpreadsheet(file, 1 << 20);
    }
}
