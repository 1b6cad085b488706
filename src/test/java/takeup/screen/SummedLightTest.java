package takeup.screen;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import takeup.session.Playing;

/** All light on a frame as one number on the screen: ambient and flash, and the exposures of a frame that is open. */
class SummedLightTest {
    private static String text(Playing day, int columns, int rows) {
        return Screen.render(day.shoot(), columns, rows).text();
    }

    /**
     * EI 400, EV 13 asks for 15, f/11 1/30 is 12: 3 over. The flash is right at 20 x 2 x 1/2 / 3 = f/6.67: 1.5 under at
     * f/11. log2(2^3 + 2^-1.53) = 3.1.
     */
    @ParameterizedTest
    @CsvSource({"80,24", "120,40"})
    void theSumStandsBesideThePairWithItsParts(int columns, int rows) {
        String text = text(
                Playing.of("cam 645", "load cn400 @400", "m ev13", "flash gn20m 3m 1/4", "set 11 1/30"), columns, rows);
        assertTrue(text.contains("3.1 over (ambient 3.0 over, flash 1.5 under)"), text);
        assertFalse(text.contains("no light reading"), text);
    }

    /** EV 10 at EI 200 asks for f/4 1/125; 1/250 is half of it, and another half makes it right. */
    @ParameterizedTest
    @CsvSource({"80,24", "120,40"})
    void anOpenFrameShowsHowManyExposuresItHasAndTheSumSoFar(int columns, int rows) {
        String text = text(Playing.medium("m ev10", "bias -1", "4 250", "double"), columns, rows);
        assertTrue(text.contains("1 of 2, 1.0 under; with this on meter"), text);
        assertTrue(text.contains("DOUBLE"), text);
        assertFalse(text.contains("THIN"), text);
    }
}
