package takeup.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** The yardstick of the other tests: known colours come out as they must. */
class ColourVisionTest {
    @Test
    void greysStayGreyForEveryEye() {
        for (double[][] eye : ColourVision.ALL) {
            for (double share : ColourVision.seen(0x808080, eye)) {
                assertEquals(0.2159, share, 0.0002); // ((128/255 + 0.055) / 1.055)^2.4
            }
        }
    }

    /** L* of white is 100 and of black 0: CIE 15. */
    @Test
    void whiteAndBlackAreAHundredApart() {
        for (double[][] eye : ColourVision.ALL) {
            assertEquals(100, ColourVision.apart(0xffffff, 0x000000, eye), 0.05);
        }
    }

    /**
     * Red and green of the same lightness: the pair that the commonest two kinds of eyes confuse, and the rarest does
     * not.
     */
    @Test
    void aRedAndAGreenComeTogetherForProtanAndDeutanEyesAlone() {
        int red = 0xc85a5a;
        int green = 0x7d8c3c;
        double usual = ColourVision.apart(red, green, ColourVision.ALL.get(0));
        assertTrue(ColourVision.apart(red, green, ColourVision.ALL.get(2)) < usual / 2, "deutan");
        assertTrue(ColourVision.apart(red, green, ColourVision.ALL.get(3)) > usual / 2, "tritan");
    }
}
