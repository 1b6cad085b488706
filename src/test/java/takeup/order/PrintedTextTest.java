package takeup.order;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What people typed is printed as they typed it, and what the program says of a push needs no sign. */
class PrintedTextTest {
    /** The Persian word has a zero width non-joiner, the crew of two a zero width joiner and a skin tone. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "+1 212 555 0100",
                "=4412+1",
                "+1 stop maybe",
                "MQ 1+1",
                "-1",
                "f/5.6+3/10",
                "\u0645\u06cc\u200c\u062e\u0648\u0627\u0647\u0645",
                "\ud83d\udc69\ud83c\udffd\u200d\ud83d\ude92 rows",
                "\u2764\ufe0f",
                "\u8239\u306e\u4e0a"
            })
    void nobodysWordsAreRewritten(String typed) {
        assertEquals(typed, PrintedText.of(typed));
    }

    /** The controls of writing direction; Unicode Standard Annex 9, section 2. */
    @ParameterizedTest
    @ValueSource(
            strings = {"61c", "200e", "200f", "202a", "202b", "202c", "202d", "202e", "2066", "2067", "2068", "2069"})
    void whatTurnsTheWritingDirectionIsShown(String hex) {
        assertEquals("a\\u{" + hex + "}b", PrintedText.of("a" + Character.toString(Integer.parseInt(hex, 16)) + "b"));
    }

    @Test
    void whatSteersAPrinterIsShownAndALineBreakIsABlank() {
        assertEquals("\\u{1b}[2J", PrintedText.of("\u001b[2J"));
        assertEquals("one two three", PrintedText.of(" one\ntwo\u2028three\t"));
        assertEquals("\\u{d800} alone", PrintedText.of("\ud800 alone"));
    }

    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource({
        "0, NORMAL",
        "1, PUSH 1 STOP",
        "2, PUSH 2 STOPS",
        "0.5, PUSH 0.5 STOPS",
        "-1, PULL 1 STOP",
        "-0.333, PULL 0.3 STOPS",
        "0.04, NORMAL"
    })
    void developmentIsToldInWords(double stops, String order) {
        assertEquals(order + " (rated 200, box 400)", new LabDevelopment("C-41", stops, 200, 400).words());
    }
}
