package takeup.options;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;
import takeup.console.CommandFailed;
import takeup.text.CsvFormat;

/** The signs of a table, chosen one by one or together. */
class CsvOptionsTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
        --bom                                  | ,   | . | true
        --separator=;                          | ;   | . | false
        --separator=tab --decimal=comma        | TAB | , | false
        --european                             | ;   | , | true
        --european --separator=tab             | TAB | , | true
        --european --decimal=point             | ;   | . | true
        """)
    void theSignsAreThoseThatWereAskedFor(String typed, String separator, String decimal, boolean hasMark) {
        CsvFormat format = of(typed);
        String between = separator.replace("TAB", "\t");
        assertEquals("5" + decimal + "6" + between + "8\r\n", format.row(List.of(format.number("5.6"), "8")));
        assertEquals(hasMark ? "\ufeff" : "", format.start());
    }

    @Test
    void oneSignForBothAndOtherSignsAreRefused() {
        assertThrows(CommandFailed.class, () -> of("--decimal=comma"));
        assertThrows(CommandFailed.class, () -> of("--separator=x"));
    }

    private static CsvFormat of(String typed) {
        CsvOptions options = new CsvOptions();
        new CommandLine(CommandLine.Model.CommandSpec.forAnnotatedObject(options)).parseArgs(typed.split(" "));
        return options.format();
    }
}
