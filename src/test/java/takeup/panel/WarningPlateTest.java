package takeup.panel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import takeup.grid.Grid;
import takeup.grid.TextRole;
import takeup.screen.Screen;
import takeup.session.Playing;

/** The most urgent warning in large letters, and the pair in large figures. */
class WarningPlateTest {
    @ParameterizedTest(name = "{0}: {1} in {2} columns")
    @CsvSource(delimiter = '|', nullValues = "none", textBlock = """
            ; a roll without a reading     | NO READING | 50
            ; a roll without a reading     | NO LIGHT   | 36
            ; a roll without a reading     | NO EV      | 25
            ; a roll without a reading     | none       | 10
            m 5.6 125                      | none       | 50
            m 5.6 125, 4 125 x15           | FEW LEFT   | 50
            m 5.6 125, 4 125 x15           | 1 LEFT     | 33
            m 5.6 125, 4 125 x17           | none       | 50
            """)
    void itIsInTheFullestWordsThatFit(String lines, String text, int columns) {
        Playing day = Playing.medium(lines.startsWith(";") ? new String[] {} : lines.split(", "));
        assertEquals(
                Optional.ofNullable(text), WarningPlate.of(day.shoot(), columns).map(WarningPlate::text));
    }

    @ParameterizedTest(name = "at {0}x{1}")
    @CsvSource({"80,24", "120,40"})
    void whatIsNotSavedComesBeforeAllAndIsAnAlarm(int columns, int rows) {
        Playing day =
                Playing.medium("m 5.6 125", "4 125 x15").disk(Playing.Disk.FULL).space();
        Grid grid = Screen.render(day.shoot(), columns, rows);
        int row = 0;
        while (!grid.text().lines().toList().get(row).matches(".*(NOT SAVED|UNSAVED).*")) {
            row++;
        }
        int column = grid.text().lines().toList().get(row).indexOf("NOT SAVED");
        assertTrue(row < 10, "beside the names, not only in the row above the prompt");
        for (int y = row - WarningPlate.ROWS + 1; y <= row; y++) {
            assertEquals(TextRole.ALARM, grid.cell(column, y).role(), "row " + y);
        }
        assertTrue(grid.text().contains("FEW LEFT"), "the others are words");
    }

    @Test
    void itsPlainWordStandsInItsRim() {
        Grid grid = Screen.render(Playing.medium().shoot(), 80, 24);
        int row = 0;
        while (!grid.text().lines().toList().get(row).contains("NO READING")) {
            row++;
        }
        int column = grid.text().lines().toList().get(row).indexOf("NO READING");
        for (int y = row - WarningPlate.ROWS + 1; y <= row; y++) {
            assertEquals(TextRole.CAUTION, grid.cell(column, y).role(), "row " + y);
        }
    }

    @Test
    void aFractionOfAStopKeepsThePairLarge() {
        Grid grid = Grid.of(60, 4);
        new PairFigures(grid, 1, 0, 50, PairFigures.Pair.RIGHT).draw("f/5.6+3/10 1/125", PairFigures.Height.THREE_ROWS);
        String text = grid.text();
        assertTrue(text.contains("+3/10") && text.contains("█▀▀"), text);
    }
}
