package takeup.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import takeup.exposure.Reciprocity.Point;

/** The four models by themselves; the films' own numbers are tested with their profiles. */
class ReciprocityTest {
    /** Colour negative in general: digitaltruth.com, Reciprocity (start assumed). */
    private static final Reciprocity.Opening COLOUR = opening(0.5, 0, 1, 1, 10, 2, 100, 2.5);

    /** snowinsummer.co.uk, Film reciprocity: 10 s with an exponent of 1.31 is printed as 20.4 s. */
    @Test
    void aPowerGivesThePrintedTime() {
        assertEquals(20.4, new Reciprocity.Power(1.31, 1).corrected(10).orElseThrow(), 0.05);
    }

    /** A power of a time below one second would be shorter than the time: 0.5^1.31 = 0.40. */
    @ParameterizedTest(name = "{0} s stays {0} s")
    @ValueSource(doubles = {0.01, 0.5, 0.9, 1, 1.005})
    void upToTheThresholdNothingIsAdded(double seconds) {
        assertEquals(seconds, new Reciprocity.Power(1.31, 1).corrected(seconds).orElseThrow());
        assertEquals(seconds, new Reciprocity.Power(1.31, 1).worth(seconds));
    }

    @ParameterizedTest(name = "from {0} s on, {1} s is never corrected to less")
    @CsvSource({"0.25,0.3", "0.25,0.9", "0.25,4", "5,5.1", "5,60"})
    void aPowerNeverShortens(double from, double metered) {
        Reciprocity.Power power = new Reciprocity.Power(1.3, from);
        assertTrue(power.corrected(metered).orElseThrow() >= metered);
        assertEquals(metered, power.worth(power.corrected(metered).orElseThrow()), 1e-9 * metered);
    }

    /** From 5 s on a power of 1.3 jumps to 5^1.3 = 8.1 s: what lies between is worth 5 s, neither less nor more. */
    @Test
    void aTimeInsideTheJumpIsWorthTheThreshold() {
        assertEquals(5, new Reciprocity.Power(1.3, 5).worth(6.5), 1e-9);
    }

    /**
     * t = metered * 2^n(t), solved by hand at the published points: in 10 s two stops are lost, so 10 s is right for 10
     * / 2^2 = 2.5 s; 100 s for 100 / 2^2.5 = 17.678 s; 1 s for 1/2 s, where the shortest answer is 1/2 s itself.
     */
    @ParameterizedTest(name = "{0} s of light need {1} s")
    @CsvSource({"0.25,0.25", "0.5,0.5", "2.5,10", "17.677670,100"})
    void keepingTheApertureTakesTheShortestTimeThatIsEnough(double metered, double corrected) {
        assertEquals(corrected, COLOUR.corrected(metered).orElseThrow(), 1e-5 * corrected);
    }

    /**
     * Opening the lens by n(metered) and lengthening the time are two answers: 2.5 s and 1.4 stops, or 10 s. 1 + log10
     * 2.5 = 1.398.
     */
    @Test
    void openingTheLensIsReadAtTheTimeThatIsKept() {
        assertEquals(1.39794, COLOUR.openStops(2.5).orElseThrow(), 1e-5);
        assertEquals(OptionalDouble.empty(), COLOUR.openStops(0.5));
        assertEquals(OptionalDouble.empty(), new Reciprocity.Power(1.3, 1).openStops(2.5));
    }

    /** A sum that ends in 0.5000001 instead of 0.5 is no long exposure: one second would be a stop more. */
    @Test
    void theLastDigitOfASumIsNoLongExposure() {
        assertEquals(0.5, COLOUR.corrected(0.5000001).orElseThrow(), 1e-3);
    }

    @ParameterizedTest(name = "{0} s")
    @ValueSource(doubles = {0.1, 0.5, 0.6, 1, 2, 2.5, 7, 17.6, 30, 200})
    void theWayBackUndoesTheWayThere(double metered) {
        assertEquals(0, Stops.of(COLOUR.worth(COLOUR.corrected(metered).orElseThrow()) / metered), Stops.TOLERANCE);
    }

    /**
     * Two stops lost for each doubling of the time: twice as long gives a quarter of the speed, so past 1 s no time is
     * long enough. Where a later line is gentler again, there is one.
     */
    @Test
    void whereLongerOnlyLosesMoreThereIsNoAnswer() {
        assertEquals(OptionalDouble.empty(), opening(1, 0, 2, 2).corrected(1.5));
        // n(8) = 2 + 1: 8 s is right for 8 / 2^3 = 1 s, and from there half a stop is lost a doubling: 32 s for 32 /
        // 2^4 = 2 s.
        assertEquals(32, opening(1, 0, 2, 2, 8, 3).corrected(2).orElseThrow(), 1e-9);
    }

    /**
     * For stops the metered or the corrected time; for a table the metered one; for none what is past upToSeconds;
     * never for a power.
     */
    @Test
    void whatLiesPastTheLastPointIsAGuess() {
        assertFalse(COLOUR.beyond(17.6));
        assertTrue(COLOUR.beyond(18));
        Reciprocity.Table table = new Reciprocity.Table(List.of(new Point(1, 1), new Point(10, 60)));
        assertFalse(table.beyond(10.05));
        assertTrue(table.beyond(10.1));
        assertTrue(new Reciprocity.None(OptionalDouble.of(10)).beyond(10.1));
        assertFalse(new Reciprocity.None(OptionalDouble.of(10)).beyond(10));
        assertFalse(new Reciprocity.None(OptionalDouble.empty()).beyond(10_000));
        assertFalse(new Reciprocity.Power(1.3, 1).beyond(10_000));
    }

    /**
     * A power law is a straight line on log-log axes, so a table of two of its points gives the law between and past
     * them.
     */
    @ParameterizedTest(name = "{0} s")
    @ValueSource(doubles = {1.5, 4, 10, 80, 300})
    void aTableOfAPowerIsThatPower(double metered) {
        Reciprocity.Table table = new Reciprocity.Table(
                List.of(new Point(1, 1), new Point(10, Math.pow(10, 1.3)), new Point(100, Math.pow(100, 1.3))));
        double expected = Math.pow(metered, 1.3);
        assertEquals(expected, table.corrected(metered).orElseThrow(), 1e-9 * expected);
        assertEquals(metered, table.worth(expected), 1e-9 * metered);
    }

    @Test
    void pointsThatMakeNoLineAreRefused() {
        refused(() -> opening(0.5, 1, 1, 2));
        refused(() -> opening(1, 0, 1, 1));
        refused(() -> opening(1, 0, 2, 1, 4, 0.5));
        refused(() -> opening(1, 0));
        refused(() -> new Reciprocity.Table(List.of(new Point(1, 2), new Point(10, 60))));
        refused(() -> new Reciprocity.Table(List.of(new Point(1, 1), new Point(10, 9))));
        refused(() -> new Reciprocity.Table(List.of(new Point(1, 1), new Point(2, 40), new Point(10, 40))));
        refused(() -> new Reciprocity.Power(0.9, 1));
        refused(() -> new Reciprocity.Power(1.3, 0));
        refused(() -> new Point(0, 0));
        refused(() -> new Point(1, -1));
    }

    private static void refused(Runnable making) {
        assertThrows(IllegalArgumentException.class, making::run);
    }

    private static Reciprocity.Opening opening(double... pairs) {
        Point[] points = new Point[pairs.length / 2];
        for (int i = 0; i < points.length; i++) {
            points[i] = new Point(pairs[2 * i], pairs[2 * i + 1]);
        }
        return new Reciprocity.Opening(List.of(points));
    }
}
