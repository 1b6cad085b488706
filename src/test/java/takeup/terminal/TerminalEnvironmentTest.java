package takeup.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import java.util.Optional;
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

    /** As stty -g of GNU coreutils 9.1 and of FreeBSD 14 print them; anything else might be read as an option. */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "4500:5:bf:8a3b:3:1c:7f:15:4:0:1:0:11:13:1a:0:12:f:17:16:0:0, true",
        "gfmt1:cflag=4b00:iflag=6b02:lflag=200005cf:oflag=3:discard=f, true",
        "-F/dev/tty1:, false",
        "1:2 sane, false",
        "sane, false",
        "'', false"
    })
    void whatIsHandedOverAsModesIsModesAndNothingElse(String text, boolean areModes) {
        assertEquals(areModes, Stty.areModes(text));
    }

    @Test
    void whatIsNoModesIsAskedOfTheTerminalItself() {
        assertEquals(Optional.empty(), Stty.handedOver(""));
        assertEquals(Optional.empty(), Stty.handedOver("sane\n24 80\n17"));
        assertEquals(Optional.empty(), Stty.handedOver("4500:5\n24 80"));
        assertEquals(Optional.empty(), Stty.handedOver("4500:5\n24 80\nnobody"));
    }
}
