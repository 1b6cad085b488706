package takeup.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WidthTest {
    /** Unicode 14, EastAsianWidth.txt (W and F are wide) and UnicodeData.txt (Mn and Me sit on a letter). */
    @ParameterizedTest(name = "{0} takes {1} columns")
    @CsvSource({
        "f/11, 4",
        "é, 1",
        "½, 1",
        "─, 1",
        "█, 1",
        "►, 1",
        "漕艇, 4",
        "ﾎﾞ, 2",
        "ボ, 2",
        "한국, 4",
        "Ａ, 2",
        "\uD83D\uDEA3, 2",
        "⚡, 2",
        "☀, 1",
        "シ\u3099, 2",
        "ش, 1",
        "\uD842\uDFB7, 2",
        "a\u0301\u0302, 1",
        "〈, 2",
        "⚓, 2"
    })
    void columnsAreThoseOfTheStandard(String text, int columns) {
        assertEquals(columns, Width.of(text));
    }

    @Test
    void whatIsShownAsAnEscapeIsMeasuredAsOne() {
        assertEquals(6, Width.of("\u001b"));
    }

    @ParameterizedTest(name = "{0} in {1} columns is {2}")
    @CsvSource({
        "bow seat, 8, bow seat",
        "bow seat, 7, bow se…",
        "bow seat, 1, …",
        "bow seat, 0, ''",
        "漕艇部, 6, 漕艇部",
        "漕艇部, 5, 漕艇…",
        "漕艇部, 4, 漕…",
        "e\u0301e\u0301e\u0301, 2, e\u0301…"
    })
    void aCutTextFitsAndSaysThatItWasCut(String text, int columns, String cut) {
        assertEquals(cut, Width.cut(text, columns));
    }

    @Test
    void aPaddedTextTakesExactlyItsColumns() {
        assertEquals("漕艇 ", Width.pad("漕艇", 5));
        assertEquals("漕… ", Width.pad("漕艇部", 4));
        assertEquals("   7", Width.padLeft("7", 4));
    }
}
