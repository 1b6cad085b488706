package takeup.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import takeup.grid.CharacterSet;
import takeup.grid.ColourDepth;
import takeup.grid.Size;

class TerminalEnvironmentTest {
    /** The order LC_ALL, LC_CTYPE, LANG: POSIX.1-2017, Base Definitions, 8.2; an empty one counts as not set. */
    @ParameterizedTest
    @CsvSource(
            nullValues = "-",
            value = {
                "'', '', en_GB.UTF-8, UNICODE", "'', '', en_GB.utf8, UNICODE", "'', '', en_GB.ISO-8859-1, ASCII",
                        "'', '', '', ASCII",
                "C, '', en_GB.UTF-8, ASCII", "'', C.UTF-8, C, UNICODE", "'', C, en_GB.UTF-8, ASCII",
                        "tr_TR.UTF-8, C, C, UNICODE"
            })
    void theFirstLocaleVariableThatIsSetDecides(String all, String ctype, String lang, CharacterSet lettering) {
        assertEquals(lettering, new TerminalEnvironment("xterm", "", "", all, ctype, lang, false).characterSet());
    }

    @Test
    void asciiCanBeAskedFor() {
        assertEquals(
                CharacterSet.ASCII,
                TerminalEnvironment.of(Map.of("LANG", "en_GB.UTF-8"), true).characterSet());
    }

    @Test
    void theKernelsConsoleGetsPlainGlyphs() {
        assertEquals(
                CharacterSet.PLAIN_GLYPHS,
                TerminalEnvironment.of(Map.of("TERM", "linux", "LANG", "en_GB.UTF-8"), false)
                        .characterSet());
    }

    @ParameterizedTest
    @CsvSource({
        "xterm, truecolor, '', TRUE",
        "xterm, 24bit, '', TRUE",
        "xterm-256color, '', '', INDEXED",
        "linux, '', '', SIXTEEN",
        "xterm, truecolor, 1, NONE"
    })
    void coloursAreAskedForAsFarAsTheTerminalGoes(String term, String colorTerm, String noColor, ColourDepth depth) {
        assertEquals(depth, new TerminalEnvironment(term, colorTerm, noColor, "", "", "", false).depth());
    }

    @Test
    void aDumbTerminalCannotBeDrawnOn() {
        assertEquals(
                false, TerminalEnvironment.of(Map.of("TERM", "dumb"), false).canMoveItsCursor());
        assertEquals(false, TerminalEnvironment.of(Map.of(), false).canMoveItsCursor());
        assertEquals(
                true, TerminalEnvironment.of(Map.of("TERM", "xterm"), false).canMoveItsCursor());
    }

    @ParameterizedTest(name = "stty size says {0}")
    @CsvSource({"24 80, 80, 24", "'40 132\n', 132, 40", "0 0, 80, 24", "'', 80, 24", "no tty, 80, 24"})
    void aTerminalThatDoesNotTellItsSizeIsTakenFor80By24(String answer, int columns, int rows) {
        assertEquals(new Size(columns, rows), Stty.size(answer));
    }
}
