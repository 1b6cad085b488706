package takeup.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.googlecode.lanterna.input.InputDecoder;
import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import takeup.message.Key;

class KeyboardTest {
    /**
     * Keys as terminals send them: ctlseqs, "PC-Style Function Keys"; console_codes(4); {@code ^} stands for Escape.
     */
    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource({
        "^[A, Up",
        "^[B, Down",
        "^[C, Right",
        "^[D, Left",
        "^OA, Up",
        "^[H, Home",
        "^[F, End",
        "^[1~, Home",
        "^[4~, End",
        "^OH, Home",
        "^[5~, PgUp",
        "^[6~, PgDn",
        "^[3~, Del",
        "^[Z, Shift-Tab",
        "^[1;5C, Right",
        "^[1;2A, Up",
        "^^[A, Up",
        "^OP, F1",
        "^OQ, F2",
        "^OR, F3",
        "^OS, F4",
        "^[15~, F5",
        "^[17~, F6",
        "^[18~, F7",
        "^[19~, F8",
        "^[20~, F9",
        "^[21~, F10",
        "^[23~, F11",
        "^[24~, F12",
        "^[11~, F1",
        "^[13~, F3",
        "^[[A, F1",
        "^[[C, F3",
        "^[[E, F5",
        "^[1;2Q, unknown key",
        "^x, Alt-x",
        "^é, Alt-é",
        "^, Esc"
    })
    void aKeyIsReadAsWhatIsPrintedOnIt(String sent, String key) {
        reads(sent.replace('^', '\u001b'), key);
    }

    /** Answers and reports that a terminal may send at any time: ctlseqs; fixterms for the keys ending in u. */
    @ParameterizedTest(name = "{0} writes nothing")
    @CsvSource(
            delimiter = '|',
            value = {
                "^[I", "^[O", "^[97;5u", "^[27;5;97~", "^[<0;33;12M", "^[<0;33;12m", "^[<35;200;100M", "^[M !!",
                        "^]11;rgb:1111/2222/3333^\\",
                "^]10;rgb:ffff/ffff/ffff#", "^[12;40R", "^[1;1R", "^[1;4R", "^[?1;2c", "^[>41;354;0c", "^P1+r524742^\\",
                        "^_Gi=31;OK^\\", "^[8;24;80t",
                "^[?997;1n", "^[2~", "^[99~", "^[1;2;3;4X", "^[ q"
            })
    void whatIsNotAKeyNeverBecomesLetters(String sent) {
        reads(sent.replace('^', '\u001b').replace('#', '\u0007'), "unknown key");
    }

    @Test
    void controlKeysAreKeysAndNothingElse() {
        reads(
                "\u0003\u001a\u0013\u001c\u0011\u0019\u0000",
                "Ctrl-C",
                "Ctrl-Z",
                "Ctrl-S",
                "Ctrl-\\",
                "Ctrl-Q",
                "Ctrl-Y",
                "Ctrl-Space");
        reads("\n\r\t\u007f\b ", "Enter", "Enter", "Tab", "Backspace", "Backspace", "Space");
    }

    @Test
    void twoSurrogatesAreOneKey() {
        reads("a\uD83D\uDEA3b", "a", "\uD83D\uDEA3", "b");
    }

    @Test
    void aLoneSurrogateIsNoKey() {
        reads("a\uD83Db\uDEA3c", "a", "b", "c");
    }

    @Test
    void whatIsPastedIsOneKeyAndRunsNothing() {
        assertEquals(
                List.of(Key.pasted("4 125\n\tbow\uD83D\uDEA3 q"), Key.typed("x")),
                keys("\u001b[200~4 125\n\tbow\uD83D\uDEA3 q\u001b[201~x"));
    }

    @Test
    void keysInsideAPasteDoNothing() {
        assertEquals(List.of(Key.pasted("ab")), keys("\u001b[200~a\u001b[A\u001bz\u001a\u0003b\u001b[201~"));
    }

    @Test
    void aPasteWithoutItsEndEndsWithTheInput() {
        assertEquals(List.of(Key.pasted("4 125")), keys("\u001b[200~4 125"));
    }

    @Test
    void theEndOfAPasteAloneIsNoKey() {
        reads("\u001b[201~a", "a");
    }

    private static void reads(String sent, String... expected) {
        List<String> read = new ArrayList<>();
        for (Key key : keys(sent)) {
            read.add(key.toString());
        }
        assertEquals(List.of(expected), read);
    }

    private static List<Key> keys(String sent) {
        InputDecoder decoder = new InputDecoder(new StringReader(sent));
        decoder.addProfile(new KeyPatterns());
        Keyboard keyboard = new Keyboard(decoder, millis -> millis);
        List<Key> keys = new ArrayList<>();
        try {
            for (Key key = keyboard.read(); key != null; key = keyboard.read()) {
                keys.add(key);
            }
        } catch (IOException | InterruptedException impossible) {
            throw new AssertionError(impossible);
        }
        return keys;
    }
}
