package takeup.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class LetteringTest {
    @Test
    void everyGlyphOfTheProgramHasAnAsciiForm() {
        assertEquals("-|+++++++++__.ooOO##..~->>*##\"xu", Lettering.ASCII.of("─│┌┐└┘├┤┬┴┼▁▂▃▄▅▆▇█▪▫·…–→►✓▌▐▀×µ"));
        assertEquals("+/-1/2 1/3 5+2/3", Lettering.ASCII.of("±½ ⅓ 5⅔"));
    }

    @Test
    void whatGrowsLongerTakesTheBlanksBehindItAndTheFrameStaysStraight() {
        spells(Lettering.ASCII, "│ Zoë        │ 5 left │", "| Zo\\u{eb}   | 5 left |");
        spells(Lettering.ASCII, "│ f/5.6½  │", "| f/5.6+1/2 |");
        spells(Lettering.ASCII, "│ 漕     │ x", "| \\u{6f15} | x");
    }

    @Test
    void aConsoleWithAPoorFontKeepsTheLettersOfNotes() {
        spells(Lettering.PLAIN_GLYPHS, "► Zoë ▂▄", "> Zoë _o");
    }

    @Test
    void theCursorStaysBehindWhatWasTyped() {
        Grid grid = Grid.of(30, 1);
        grid.put(0, 0, "; Zoë", Look.PROMPT);
        grid.cursor(5, 0);
        assertEquals(10, Lettering.ASCII.of(grid).cursorColumn());
    }

    @Test
    void looksGoWithTheirLetters() {
        Grid grid = Grid.of(30, 1);
        grid.put(0, 0, "ë", Look.ALARM);
        assertEquals(Look.ALARM, Lettering.ASCII.of(grid).look(5, 0));
    }

    private static void spells(Lettering lettering, String line, String expected) {
        Grid grid = Grid.of(40, 1);
        grid.put(0, 0, line, Look.NORMAL);
        assertEquals(expected, lettering.of(grid).text());
    }
}
