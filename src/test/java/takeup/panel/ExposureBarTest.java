package takeup.panel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import takeup.advice.ExposureInHand;
import takeup.grid.Grid;
import takeup.screen.Screen;
import takeup.session.Playing;
import takeup.session.Session;

/** A bar of 17 cells for a film that bears one stop under and three over: four cells a stop, box speed in the fifth. */
class ExposureBarTest {
    @ParameterizedTest(name = "{0} stops over box")
    @CsvSource(delimiter = '|', textBlock = """
         0   | thin ────┼──────────── dense
         1   | thin ────┼████──────── dense
         1.3 | thin ────┼█████─────── dense
         1.4 | thin ────┼█████▌────── dense
         3   | thin ────┼████████████ dense
         4   | thin ────┼███████████> DENSE
        -0.5 | thin ──██┼──────────── dense
        -0.4 | thin ──▐█┼──────────── dense
        -1   | thin ████┼──────────── dense
        -2   | THIN <███┼──────────── dense
        """)
    void theBarReachesFromBoxSpeedToTheSum(double sum, String expected) {
        Grid grid = Grid.of(40, 1);
        new ExposureBar(-1, 3, sum, ExposureBar.Ends.THIN_DENSE).inline(grid, 0, 0, 17 + 11);
        assertEquals(expected, grid.text());
    }

    /**
     * Reversal film that bears half a stop either way, and a film that bears nothing under: the bar still has two sides
     * or one.
     */
    @ParameterizedTest(name = "from {0} to {1}, {2}")
    @CsvSource(delimiter = '|', textBlock = """
        -0.5 | 0.5 |  0.25 | thin ────┼██── dense
        -0.5 | 0.5 | -0.25 | thin ──██┼──── dense
         0   | 2   |  1    | thin ┼████──── dense
         0   | 2   | -1    | THIN <──────── dense
        """)
    void theEndsAreThoseOfTheFilm(double low, double high, double sum, String expected) {
        Grid grid = Grid.of(40, 1);
        new ExposureBar(low, high, sum, ExposureBar.Ends.THIN_DENSE).inline(grid, 0, 0, 9 + 11);
        assertEquals(expected, grid.text());
    }

    @Test
    void theRulerCountsTheStopsFromBoxSpeed() {
        Grid grid = Grid.of(50, 2);
        new ExposureBar(-1, 3, 1.5, ExposureBar.Ends.THIN_DENSE).ruler(grid, 0, 0, 41);
        // Ten cells a stop: box speed in cell 10, the stops in 20 and 30; 3 would stand where dense does.
        assertEquals(
                "thin     box        1         2     dense",
                grid.text().lines().findFirst().orElseThrow());
        assertEquals(
                "┴─────────┼███████████████────┴─────────┴",
                grid.text().lines().skip(1).findFirst().orElseThrow());
    }

    @Test
    void withoutRoomThereIsNoBarAndNothingElseIsDrawnOver() {
        Grid grid = Grid.of(18, 1);
        new ExposureBar(-1, 3, 1, ExposureBar.Ends.THIN_DENSE).inline(grid, 0, 0, 18);
        assertEquals("", grid.text());
    }

    /**
     * Pushed a stop, the film tolerates a stop less over and a stop more under: the same exposure is developed further.
     */
    @Test
    void aPushedRollGetsThinLaterAndDenseSooner() {
        Session plain = Playing.of("cam 35", "load bw400 @400", "m 5.6 125", "set 5.6 125")
                .shoot();
        Session pushed = Playing.of("cam 35", "load bw400 @800 push 1", "m 5.6 125", "set 5.6 125")
                .shoot();
        ExposureBar a = ExposureBar.of(
                plain.shown().rollInHand().orElseThrow(),
                ExposureInHand.overBox(plain.shown()).orElseThrow());
        ExposureBar b = ExposureBar.of(
                pushed.shown().rollInHand().orElseThrow(),
                ExposureInHand.overBox(pushed.shown()).orElseThrow());
        assertEquals(a.low() - 1, b.low(), 1e-9);
        assertEquals(a.high() - 1, b.high(), 1e-9);
        assertEquals(0, a.sum(), 0.01);
        assertEquals(-1, b.sum(), 0.01);
    }

    @Test
    void withoutAReadingThereIsNoBar() {
        assertTrue(
                ExposureInHand.overBox(Playing.medium("4 125").shoot().shown()).isEmpty());
        assertTrue(
                !Screen.render(Playing.medium("4 125").shoot(), 80, 24).text().contains("thin "));
    }
}
