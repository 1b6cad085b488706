package takeup.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class GridTest {
    private final Grid grid = Grid.of(10, 2);

    @Test
    void aTextStandsWhereItWasPut() {
        assertEquals(7, grid.put(3, 1, "f/11", TextRole.READOUT));
        shows("\n   f/11");
        assertEquals(TextRole.READOUT, grid.role(6, 1));
        assertEquals(TextRole.NORMAL, grid.role(7, 1));
    }

    @Test
    void whatLiesBeyondTheEdgesIsLeftOut() {
        grid.put(-2, 0, "regatta day", TextRole.NORMAL);
        grid.put(6, 1, "regatta", TextRole.NORMAL);
        grid.put(0, 2, "below", TextRole.NORMAL);
        grid.put(0, -1, "above", TextRole.NORMAL);
        shows("gatta day\n      rega");
    }

    @Test
    void aTextKeepsToItsWidth() {
        assertEquals(3, grid.put(0, 0, "stroke", TextRole.NORMAL, 3));
        assertEquals(0, grid.put(0, 1, "stroke", TextRole.NORMAL, 0));
        shows("str");
    }

    @Test
    void halfAWideCharacterAtTheEdgeIsABlank() {
        grid.put(7, 0, "漕艇|", TextRole.NORMAL);
        grid.put(-1, 1, "漕x", TextRole.NORMAL);
        shows("       漕\n x");
    }

    @Test
    void overwritingHalfAWideCharacterBlanksTheOtherHalf() {
        grid.put(0, 0, "漕艇", TextRole.NORMAL);
        grid.put(1, 0, "xy", TextRole.NORMAL);
        shows(" xy");
        assertEquals(" ", grid.cell(3, 0).text());
    }

    @Test
    void marksSitOnTheirLetterAndDoNotPileUp() {
        grid.put(0, 0, "e\u0301t", TextRole.NORMAL);
        grid.put(0, 1, "a" + "\u0301".repeat(50) + "b", TextRole.NORMAL);
        assertEquals("e\u0301", grid.cell(0, 0).text());
        assertEquals("t", grid.cell(1, 0).text());
        assertEquals(5, grid.cell(0, 1).text().length());
        assertEquals("b", grid.cell(1, 1).text());
    }

    @Test
    void aMarkOnNothingIsShown() {
        grid.put(0, 0, "\u0301a", TextRole.NORMAL);
        shows("\\u{301}a");
    }

    @Test
    void controlCharactersNeverReachACell() {
        grid.put(0, 0, "a\u001b[2J", TextRole.NORMAL);
        shows("a\\u{1b}[2J");
    }

    @Test
    void fillingBlanksARowInItsRole() {
        grid.put(0, 0, "stroke", TextRole.NORMAL);
        grid.fill(0, TextRole.BAR);
        grid.fill(8, 1, 5, TextRole.CHOSEN);
        shows("");
        assertEquals(TextRole.BAR, grid.role(9, 0));
        assertEquals(TextRole.NORMAL, grid.role(7, 1));
        assertEquals(TextRole.CHOSEN, grid.role(9, 1));
    }

    @Test
    void aCursorBeyondTheEdgeIsHidden() {
        grid.cursor(9, 1);
        assertEquals(9, grid.cursorColumn());
        grid.cursor(10, 1);
        assertEquals(-1, grid.cursorColumn());
        assertEquals(-1, grid.cursorRow());
    }

    @Test
    void anEmptyGridIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> Grid.of(0, 24));
    }

    private void shows(String text) {
        assertEquals(text, grid.text());
    }
}
