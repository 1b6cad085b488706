package takeup.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CsvCellTest {
    /** The signs: OWASP, "CSV Injection". */
    @ParameterizedTest(name = "{0} becomes {1}")
    @CsvSource(quoteCharacter = '`', delimiter = '|', ignoreLeadingAndTrailingWhitespace = false, textBlock = """
        bow seat|"bow seat"
        =1+1|"'=1+1"
        +1|"'+1"
        -2|"'-2"
        @cox|"'@cox"
        \uff1d1|"'\uff1d1"
          =1|"'  =1"
        \\t=1|"'\\t=1"
        \\tbow|"'\\tbow"
        \\rbow|"\\u{d}bow"
        bow\\r=1|"bow\\u{d}=1"
        \\n=1|"'\\n'=1"
        bow\\n=1|"bow\\n'=1"
        bow\\r\\n @1|"bow\\n' @1"
        f/8 =1|"f/8 =1"
        1/250|"1/250"
        a "b", c|"a ""b"", c"
        =a, b|"'=a, b"
        \\u001b[2J|"\\u{1b}[2J"
        """)
    void aCellThatCouldRunAsAFormulaIsText(String words, String cell) {
        assertEquals(written(cell), CsvCell.text(written(words)));
    }

    private static String written(String shown) {
        return shown.replace("\\t", "\t")
                .replace("\\n", "\n")
                .replace("\\r", "\r")
                .replace("\\u001b", "\u001b");
    }

    /** RFC 4180, section 2: cells are separated by commas, rows end in CR LF. */
    @Test
    void aRowIsItsCellsWithCommas() {
        assertEquals("7,f/8,\r\n", CsvFormat.PLAIN.row(List.of("7", "f/8", "")));
    }
}
