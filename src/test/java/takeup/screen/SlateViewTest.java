package takeup.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import takeup.grid.Cell;
import takeup.grid.CharacterSet;
import takeup.grid.ColourDepth;
import takeup.grid.Grid;
import takeup.grid.PixelPair;
import takeup.grid.PixelShape;
import takeup.message.Key;
import takeup.roll.RollId;
import takeup.scans.QrReader;
import takeup.scans.ScreenClock;
import takeup.scans.Slate;
import takeup.session.Playing;

/** The slate on the screen, photographed. */
class SlateViewTest {
    @ParameterizedTest(name = "{0} x {1}")
    @CsvSource({"80, 24", "40, 20", "120, 40", "211, 60"})
    void whatTheScreenShowsIsReadAsTheFrameThatWasLogged(int columns, int rows) {
        Grid grid = Screen.render(Playing.medium("4 125", "slate").shoot(), columns, rows);
        assertEquals(
                Optional.of(new Slate(new RollId("R", 1), 2)),
                QrReader.slate(PhotographedSheet.straight(dots(grid), 6)));
    }

    @Test
    void theSlateOfAFrameThatWasRenumberedStillSaysWhatWasPhotographed() {
        Grid grid = Screen.render(
                Playing.medium("4 125", "4 125", "slate", "drop 1", "slate show")
                        .shoot(),
                80,
                24);
        assertEquals(
                Optional.of(new Slate(new RollId("R", 1), 3)),
                QrReader.slate(PhotographedSheet.straight(dots(grid), 6)));
    }

    @ParameterizedTest(name = "{0} x {1}")
    @CsvSource({"80, 24", "120, 40"})
    void theClockOnTheScreenIsReadToTheSecond(int columns, int rows) {
        Playing day = Playing.of("slate clock");
        Grid grid = Screen.render(day.shoot(), columns, rows);
        assertEquals(
                Optional.of(new ScreenClock(day.shoot().now())),
                QrReader.clock(PhotographedSheet.straight(dots(grid), 6)));
        assertEquals(Optional.empty(), day.press(Key.Name.ESCAPE).shoot().view().sheet());
    }

    @Test
    void promptAndKeysStayAndTheAnswerSaysWhatToDo() {
        String text = Screen.render(Playing.medium("slate").shoot(), 120, 40).text();
        assertTrue(text.contains("Frame 1 on R0001: slate.") && text.contains("Photograph this sheet"), text);
        assertTrue(text.contains("Space same again") && text.contains("Esc shoot") && text.contains("\n>"), text);
    }

    @Test
    void aWindowThatIsTooSmallForTheCodeSaysWhatItNeeds() {
        String text = Screen.render(Playing.medium("slate").shoot(), 50, 16).text();
        assertTrue(
                text.contains("the code needs 33 columns and 20 rows")
                        && text.replaceAll("[▀\\s]+", " ").contains("make the window larger, or its letters smaller"),
                text);
    }

    /** What a terminal without half cells makes of it: both dots of a cell in their mean colour. */
    @ParameterizedTest(name = "{0} x {1}")
    @CsvSource({"66, 36", "120, 40", "211, 60"})
    void inWholeCellsTheSlateIsReadToo(int columns, int rows) {
        Grid grid = Screen.render(Playing.medium("4 125", "slate").shoot(), columns, rows, PixelShape.WHOLE_CELL);
        for (int row = 0; row < rows - 3; row++) {
            for (int column = 0; column < columns; column++) {
                PixelPair ink = grid.cell(column, row).pixels();
                assertEquals(ink.top(), ink.bottom(), "a cell that is half light at " + column + ", " + row);
            }
        }
        assertEquals(
                Optional.of(new Slate(new RollId("R", 1), 2)),
                QrReader.slate(PhotographedSheet.straight(dots(grid), 6)));
        assertEquals(-1, grid.text().indexOf("the code needs"));
    }

    @ParameterizedTest(name = "{0} x {1}")
    @CsvSource({"80, 24", "65, 36", "66, 35", "40, 12"})
    void withoutHalfCellsASmallWindowShowsNoGreyCodeAndSaysWhatItNeeds(int columns, int rows) {
        Grid grid = Screen.render(Playing.medium("4 125", "slate").shoot(), columns, rows, PixelShape.WHOLE_CELL);
        assertTrue(grid.text().contains("the code needs 66 columns and 36 rows"), grid.text());
        for (int row = 0; row < rows - 3; row++) {
            for (int column = 0; column < columns; column++) {
                assertEquals(
                        grid.cell(column, row).pixels().top(),
                        grid.cell(column, row).pixels().bottom());
            }
        }
    }

    @Test
    void withoutColourHalvesAreStillDrawn() {
        assertEquals("▀", new PixelPair(0xffffff, 0).written(ColourDepth.NONE, CharacterSet.UNICODE));
        assertEquals("▄", new PixelPair(0, 0xffffff).written(ColourDepth.NONE, CharacterSet.UNICODE));
        assertEquals("█", new PixelPair(0xffffff, 0xffffff).written(ColourDepth.NONE, CharacterSet.UNICODE));
        assertEquals(" ", new PixelPair(0, 0).written(ColourDepth.NONE, CharacterSet.UNICODE));
    }

    private static boolean[][] dots(Grid grid) {
        boolean[][] dark = new boolean[2 * grid.rows()][grid.columns()];
        for (int row = 0; row < grid.rows(); row++) {
            for (int column = 0; column < grid.columns(); column++) {
                Cell cell = grid.cell(column, row);
                dark[2 * row][column] = !cell.isPicture() || cell.pixels().top() == 0;
                dark[2 * row + 1][column] = !cell.isPicture() || cell.pixels().bottom() == 0;
            }
        }
        return dark;
    }
}
