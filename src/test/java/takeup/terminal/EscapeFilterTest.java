package takeup.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.googlecode.lanterna.input.InputDecoder;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import takeup.message.Key;

/**
 * A slow line: what arrives, with the silences in milliseconds between, {@code ^} for Escape. No time passes in truth.
 */
class EscapeFilterTest {
    @ParameterizedTest(name = "an arrow in pieces {0} ms apart is an arrow")
    @ValueSource(ints = {0, 1, 10, 25, 50, 62, 80, 100, 110})
    void aTornArrowIsAnArrow(int gap) {
        reads("Up, x", "^", gap, "[", gap, "A", 5000, "x");
        reads("Down, x", "^", gap, "O", gap, "B", 5000, "x");
        reads("F5, Home, x", "^", gap, "[", gap, "1", gap, "5", gap, "~", gap, "^", gap, "[", gap, "H", 5000, "x");
        assertEquals(
                List.of(Key.pasted("4"), Key.typed("x")),
                keys(
                        "^", gap, "[", gap, "2", gap, "0", gap, "0", gap, "~", gap, "4", gap, "^", gap, "[", gap, "2",
                        gap, "0", gap, "1", gap, "~", 5000, "x"));
    }

    @Test
    void aTornFunctionKeyMayPauseForATenthOfASecondOnceItHasBegun() {
        reads("F5", "^[", 140, "1", 140, "5", 140, "~");
    }

    @Test
    void aLoneEscapeActsWithinThreeTenthsOfASecond() {
        SlowLine line = new SlowLine("^", 5000, "x");
        EscapeFilter gate = new EscapeFilter(line, line::pass);
        try {
            assertEquals(EscapeSequence.ESCAPE, gate.read());
        } catch (IOException impossible) {
            throw new AssertionError(impossible);
        }
        assertTrue(line.now >= 100 && line.now <= 300, line.now + " ms");
    }

    @Test
    void aLoneEscapeActsInTimeWhereEachSleepLastsLonger() throws IOException {
        SlowLine line = new SlowLine("^", 5000, "x");
        EscapeFilter gate = new EscapeFilter(line, millis -> line.pass(millis + 17));
        assertEquals(EscapeSequence.ESCAPE, gate.read());
        assertTrue(line.now >= 100 && line.now <= 160, line.now + " ms");
    }

    @Test
    void aLoneEscapeIsTheKey() {
        reads("Esc, x", "^", 1000, "x");
        reads("Esc, Esc, x", "^^", 1000, "x");
    }

    @Test
    void altIsTheCharacterThatComesAtOnce() {
        reads("Alt-x", "^x");
        reads("Esc, x", "^", 32, "x");
        reads("Esc, 4, Space", "^", 62, "4", 20, " ");
        reads("Esc, Esc, x", "^", 62, "^", 62, "x");
    }

    @Test
    void enterAtOnceAfterEscapeIsEnter() {
        reads("Esc, Enter, x", "^\r", 1000, "x");
        reads("Esc, Enter, x", "^\nx");
        reads("Esc, Enter, x", "^", 10, "\r", 1000, "x");
        reads("4, Esc, Enter, Esc, Enter", "4^\r^\r");
        reads("Esc, Up", "^", 200, "^[A");
    }

    @ParameterizedTest(name = "the rest of a key, {0} ms late, is no letter")
    @ValueSource(ints = {122, 150, 200, 300})
    void theRestOfATornKeyNeverBecomesLetters(int gap) {
        reads("Esc, x", "^", gap, "[A", 1000, "x");
        reads("Esc, x", "^", gap, "[15~", 1000, "x");
        reads("Esc, x", "^", gap, "OP", 1000, "x");
    }

    @ParameterizedTest(name = "a sequence that stops for {0} ms writes nothing")
    @ValueSource(ints = {152, 200, 300, 400})
    void aSequenceThatStopsWritesNothing(int gap) {
        reads("x", "^[", gap, "A", 1000, "x");
        reads("x", "^[1", gap, ";5", gap, "u", 1000, "x");
        reads("x", "^]11;rgb:11", gap, "11/2222^\\", 1000, "x");
        reads("x", "^[<0;3", gap, "3;12M", 1000, "x");
    }

    @Test
    void aSequenceThatNeverEndsDoesNotMakeTheProgramDeaf() {
        reads("4, Space, 8", "^[", 600, "4 8");
        reads("4", "^]", 600, "4");
    }

    @Test
    void aBracketTypedAfterEscapeIsTyped() {
        reads("Esc, [, A", "^", 400, "[A");
        reads("Esc, O, f, f", "^", 150, "O", 110, "f", 90, "f");
    }

    @Test
    void aKeyThatComesIntoATornSequenceIsStillRead() {
        reads("Up, x", "^[1", 20, "^[A", 500, "x");
        reads("Enter, x", "^[1", 20, "\n", 500, "x");
    }

    @Test
    void aTornPasteIsOnePaste() {
        assertEquals(
                List.of(Key.pasted("4 125\nq"), Key.typed("x")),
                keys("^[2", 50, "00~4 1", 300, "25\nq^", 50, "[20", 90, "1~", 400, "x"));
    }

    @Test
    void aPasteWhoseEndIsLostEndsWithASilence() {
        assertEquals(List.of(Key.pasted("4 125"), Key.typed("x")), keys("^[200~4 125", 5000, "x"));
    }

    @ParameterizedTest(name = "in pieces of {0} bytes, {1} ms apart")
    @CsvSource({"10000, 0", "4095, 1", "64, 0", "64, 3", "17, 2", "1000, 40"})
    void aLongTextFromATerminalThatMarksNoPasteIsAPasteAllTheSame(int size, int gap) {
        String text = "4 125 ; bow seat\r x3\r\t8 250 é\r".repeat(400).substring(0, 10_000);
        List<Object> script = new ArrayList<>();
        for (int at = 0; at < text.length(); at += size) {
            script.addAll(List.of(text.substring(at, Math.min(text.length(), at + size)), gap));
        }
        script.addAll(List.of(1000, "x"));
        assertEquals(List.of(Key.pasted(text.replace('\r', '\n')), Key.typed("x")), keys(script.toArray()));
    }

    @Test
    void marksInsideAnUnmarkedPasteDoNotEndIt() {
        String text = "4 125\r".repeat(100);
        assertEquals(
                List.of(Key.pasted(text.replace('\r', '\n').repeat(2)), Key.typed("x")),
                keys(text + "^[201~" + text + "^[A", 1000, "x"));
    }

    @Test
    void aMarkedPasteIsOnePasteHoweverLong() {
        String text = "4 125\n".repeat(2000);
        assertEquals(List.of(Key.pasted(text), Key.typed("x")), keys("^[200~" + text + "^[201~", 1000, "x"));
    }

    @Test
    void whatHandsTypeAheadWhileTheMachineIsBusyIsTyped() {
        int lines = 30;
        List<Key> keys = keys("4 125\r".repeat(lines), 1000, "x");
        assertEquals(6 * lines + 1, keys.size());
        assertEquals(
                lines, keys.stream().filter(it -> it.name() == Key.Name.ENTER).count());
        reads("Up, ".repeat(200) + "x", "^[A".repeat(200), 1000, "x");
    }

    @Test
    void aTornLetterIsOneLetter() {
        reads("漕, x", new byte[] {(byte) 0xe6}, 300, new byte[] {(byte) 0xbc}, 300, new byte[] {(byte) 0x95}, 300, "x");
    }

    @Test
    void bytesThatAreNoLetterWriteNothing() {
        reads("a, b", "a", 0, new byte[] {(byte) 0xff, (byte) 0xc3}, 0, "b");
    }

    @Test
    void anEndlessReportIsReadAndThrownAway() {
        reads("x", "^]52;c;" + "A".repeat(20_000) + "^\\", 0, "x");
    }

    @Test
    void theEndInsideASequenceIsTheEnd() {
        reads("", "^[1");
        reads("a, Esc", "a^");
    }

    private static void reads(String expected, Object... script) {
        List<String> names = new ArrayList<>();
        for (Key key : keys(script)) {
            names.add(key.toString());
        }
        assertEquals(expected, String.join(", ", names));
    }

    private static List<Key> keys(Object... script) {
        SlowLine line = new SlowLine(script);
        InputDecoder decoder =
                new InputDecoder(new InputStreamReader(new EscapeFilter(line, line::pass), StandardCharsets.UTF_8));
        decoder.addProfile(new KeyPatterns());
        Keyboard keyboard = new Keyboard(decoder, line::pass);
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

    /** Pieces, each with the moment it arrives at. A read waits for the next one by letting the time jump there. */
    private static final class SlowLine extends InputStream {
        private record Piece(int at, int value) {}

        private final List<Piece> pieces = new ArrayList<>();
        private int next;
        private int now;

        SlowLine(Object... script) {
            int at = 0;
            for (Object part : script) {
                if (part instanceof Integer silence) {
                    at += silence;
                } else {
                    byte[] bytes = part instanceof byte[] raw
                            ? raw
                            : part.toString().replace('^', '\u001b').getBytes(StandardCharsets.UTF_8);
                    for (byte one : bytes) {
                        pieces.add(new Piece(at, one & 0xff));
                    }
                }
            }
        }

        int pass(int millis) {
            now += millis;
            return millis;
        }

        @Override
        public int available() {
            int many = 0;
            while (many < 4096 && next + many < pieces.size() && pieces.get(next + many).at <= now) {
                many++;
            }
            return many;
        }

        @Override
        public int read() {
            if (next == pieces.size()) {
                return -1;
            }
            now = Math.max(now, pieces.get(next).at);
            return pieces.get(next++).value;
        }

        @Override
        public int read(byte[] to, int from, int length) {
            int first = read();
            if (first < 0) {
                return -1;
            }
            to[from] = (byte) first;
            int many = 1;
            while (many < length && available() > 0) {
                to[from + many++] = (byte) read();
            }
            return many;
        }
    }
}
