package takeup.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class CharacterSetTest {
    @Test
    void everyGlyphOfTheProgramHasAnAsciiForm() {
        assertEquals("-|+++++++++__.ooOO##..~->>*##\"xu", CharacterSet.ASCII.of("─│┌┐└┘├┤┬┴┼▁▂▃▄▅▆▇█▪▫·…–→►✓▌▐▀×µ"));
        assertEquals("+/-1/2 1/3 5+2/3", CharacterSet.ASCII.of("±½ ⅓ 5⅔"));
    }

    @Test
    void inAsciiNothingBecomesAQuestionMark() {
        assertEquals(
                "\\u{15a}luza - 5.6+1/2 ~ f/8 +/-1/3 \\u{6f15}\\u{1f6a3}",
                CharacterSet.ASCII.of("Śluza ─ 5.6½ … f/8 ±⅓ 漕\uD83D\uDEA3"));
    }

    @Test
    void whatGrowsLongerTakesTheBlanksBehindItAndTheFrameStaysStraight() {
        spells(CharacterSet.ASCII, "│ Zoë        │ 5 left │", "| Zo\\u{eb}   | 5 left |");
        spells(CharacterSet.ASCII, "│ f/5.6½  │", "| f/5.6+1/2 |");
        spells(CharacterSet.ASCII, "│ 漕     │ x", "| \\u{6f15} | x");
    }

    @Test
    void aConsoleWithAPoorFontKeepsTheLettersOfNotes() {
        spells(CharacterSet.PLAIN_GLYPHS, "► Zoë ▂▄", "> Zoë _o");
    }

    @Test
    void theCursorStaysBehindWhatWasTyped() {
        Grid grid = Grid.of(30, 1);
        grid.put(0, 0, "; Zoë", TextRole.PROMPT);
        grid.cursor(5, 0);
        assertEquals(10, CharacterSet.ASCII.of(grid).cursorColumn());
    }

    @Test
    void rolesGoWithTheirLetters() {
        Grid grid = Grid.of(30, 1);
        grid.put(0, 0, "ë", TextRole.ALARM);
        assertEquals(TextRole.ALARM, CharacterSet.ASCII.of(grid).role(5, 0));
    }

    private static void spells(CharacterSet lettering, String line, String expected) {
        Grid grid = Grid.of(40, 1);
        grid.put(0, 0, line, TextRole.NORMAL);
        assertEquals(expected, lettering.of(grid).text());
    }
}
