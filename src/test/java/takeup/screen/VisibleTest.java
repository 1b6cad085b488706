package takeup.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class VisibleTest {
    @ParameterizedTest(name = "U+{0} is shown as an escape")
    @ValueSource(
            strings = {
                "0", "7", "9", "a", "d", "1b", "1f", "7f", "80", "85", "9b", "9f", // C0, DEL, C1
                "61c", "200e", "200f", "202a", "202b", "202c", "202d", "202e", "2066", "2067", "2068",
                "2069", // direction
                "200b", "200c", "200d", "2060", "feff", "ad", // no width
                "2028", "2029", "e000", "f8ff", "10fffd", "378", "fffe", "e0041",
                "fff9", // separators, private, unassigned, format
                "d800", "dfff", // halves of characters
                "115f", "1160", "3164", "ffa0"
            }) // letters that look like blanks
    void nothingThatSteersOrHidesIsLeft(String hex) {
        String text = "bow" + new String(Character.toChars(Integer.parseInt(hex, 16))) + "seat";
        assertEquals("bow\\u{" + hex + "}seat", Visible.of(text));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "bow seat, f/2.8",
                "Łódź 4−",
                "e\u0301",
                "شراع",
                "漕艇",
                "\uD83D\uDEA3",
                "½ ± ° µ \u00a0",
                "\\u{1b}",
                "☀\uFE0F"
            })
    void allElseStaysLetterForLetter(String text) {
        assertEquals(text, Visible.of(text));
    }

    @Test
    void aTitleThatWouldRenameTheWindowIsOnlyText() {
        assertEquals("\\u{1b}]0;regatta\\u{7}", Visible.of("\u001b]0;regatta\u0007"));
    }

    @Test
    void inAsciiNothingBecomesAQuestionMark() {
        assertEquals(
                "\\u{15a}luza - 5.6+1/2 ~ f/8 +/-1/3 \\u{6f15}\\u{1f6a3}",
                Visible.ascii("Śluza ─ 5.6½ … f/8 ±⅓ 漕\uD83D\uDEA3"));
    }
}
