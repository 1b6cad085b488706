package takeup.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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
}
