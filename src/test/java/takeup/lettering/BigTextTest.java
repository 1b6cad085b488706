package takeup.lettering;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import takeup.grid.Grid;
import takeup.grid.TextRole;

class BigTextTest {
    private static final String LETTERS = "0123456789f/.sm-+";

    @Test
    void everySignOfAFrameNumberAndOfAPairLooksDifferent() {
        Set<String> large = new HashSet<>();
        Set<String> small = new HashSet<>();
        for (String letter : LETTERS.split("")) {
            assertTrue(large.add(large(letter)), letter + " looks like another one");
            assertTrue(small.add(small(letter)), letter + " looks like another one when it is small");
        }
    }

    @ParameterizedTest(name = "\"{0}\" is as wide as it was said to be")
    @ValueSource(strings = {"7", "36", "123", "-3", "f/5.6 1/125", "f/11 4m10s", "f/2.8 0.8s"})
    void aTextTakesTheColumnsItWasMeasuredAt(String text) {
        for (int scale = 1; scale <= 4; scale++) {
            Grid grid = Grid.of(300, 20);
            BigText.draw(grid, 0, 0, text, scale, TextRole.READOUT);
            assertEquals(BigText.width(text, scale), last(grid), text);
            assertEquals(5 * scale, grid.text().split("\n").length, text);
        }
        Grid grid = Grid.of(100, 4);
        BigText.drawSmall(grid, 0, 0, text, TextRole.READOUT);
        assertEquals(BigText.smallWidth(text), last(grid), text);
        assertEquals(3, grid.text().split("\n").length, text);
    }

    @Test
    void whatIsBeyondTheEdgeIsLeftOutAndAnUnknownSignIsAGap() {
        Grid grid = Grid.of(5, 3);
        BigText.draw(grid, 3, 1, "88", 1, TextRole.READOUT);
        BigText.drawSmall(grid, -2, -1, "8\u00bd8", TextRole.READOUT);
        assertEquals(5, grid.columns());
        assertEquals("", large("\u00bd"));
    }

    private static String large(String text) {
        Grid grid = Grid.of(20, 5);
        BigText.draw(grid, 0, 0, text, 1, TextRole.READOUT);
        return grid.text();
    }

    private static String small(String text) {
        Grid grid = Grid.of(20, 3);
        BigText.drawSmall(grid, 0, 0, text, TextRole.READOUT);
        return grid.text();
    }

    /** One past the last column that is drawn on. */
    private static int last(Grid grid) {
        int last = 0;
        for (String line : grid.text().split("\n")) {
            last = Math.max(last, line.length());
        }
        return last;
    }
}
