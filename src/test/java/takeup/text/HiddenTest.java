package takeup.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What a terminal may obey or an eye overlook. The kinds of the code points: Unicode Character Database, general
 * category and names.
 */
class HiddenTest {
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "1f, true",
        "20, false",
        "7e, false",
        "7f, true",
        "9f, true",
        "a0, false",
        "ad, true",
        "e9, false",
        "115e, false",
        "115f, true",
        "1160, true",
        "1161, false",
        "200b, true",
        "2028, true",
        "2029, true",
        "202e, true",
        "2066, true",
        "3164, true",
        "d800, true",
        "e000, true",
        "feff, true",
        "ffa0, true",
        "ffff, true",
        "1f6a3, false",
        "e0001, true"
    })
    void isAControlAFormatOrABlankThatLooksLikeNothing(String point, boolean hidden) {
        assertEquals(hidden, Hidden.is(Integer.parseInt(point, 16)));
    }

    /** What is taken for shown without being looked up is no control, no format, and no mark on a letter. */
    @Test
    void whatTheScreenIsDrawnWithIsShown() {
        Set<Integer> shown = Set.of(
                (int) Character.DASH_PUNCTUATION,
                (int) Character.INITIAL_QUOTE_PUNCTUATION,
                (int) Character.FINAL_QUOTE_PUNCTUATION,
                (int) Character.START_PUNCTUATION,
                (int) Character.OTHER_PUNCTUATION,
                (int) Character.OTHER_SYMBOL,
                (int) Character.MATH_SYMBOL);
        int count = 0;
        for (int point = 0; point <= Character.MAX_CODE_POINT; point++) {
            if (Hidden.isOfTheScreen(point)) {
                assertTrue(shown.contains(Character.getType(point)), Integer.toHexString(point));
                count++;
            }
        }
        assertEquals(24 + 256, count);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            bow seat         | bow seat              | 8
            b\u001bow        | b\\u{1b}ow            | 1
            🚣\u202e2-\u0007. | 🚣\\u{202e}2-\\u{7}.   | 2
            2-\u0000-         | 2-\\u{0}-             | 2
            """)
    void isShownAsAnEscapeAndAllElseAsItIs(String text, String shown, int first) {
        assertEquals(shown, Hidden.shown(text));
        assertEquals(first, Hidden.first(text));
    }

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
        assertEquals("bow\\u{" + hex + "}seat", Hidden.shown(text));
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
        assertEquals(text, Hidden.shown(text));
    }

    @Test
    void aTitleThatWouldRenameTheWindowIsOnlyText() {
        assertEquals("\\u{1b}]0;regatta\\u{7}", Hidden.shown("\u001b]0;regatta\u0007"));
    }
}
